package org.setpower;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.lang.management.ManagementFactory;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.setpower.cable.CableSize;
import org.setpower.cable.Conductor;
import org.setpower.cable.InstallationMethod;
import org.setpower.pack.Chemistry;
import org.setpower.pack.OpenCircuit;
import org.setpower.pack.PlateFeed;

/** A look-up in a table that has been read makes no objects; texts of sizes are kept, not all. */
class AllocationTest {
  private static final int CALLS = 10_000;

  static {
    CableSize.parse("12 AWG"); // before other texts fill what is kept
  }

  /** Bytes a call, those of the measurement itself spread over all calls. */
  private static double bytes(Supplier<Object> lookUp) {
    assumeThat(ManagementFactory.getThreadMXBean())
        .isInstanceOf(com.sun.management.ThreadMXBean.class);
    var threads = (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
    long id = Thread.currentThread().getId();
    Object seen = lookUp.get();
    long before = threads.getThreadAllocatedBytes(id);
    for (int i = 0; i < CALLS; i++) {
      seen = lookUp.get();
    }
    long after = threads.getThreadAllocatedBytes(id);
    assertThat(seen).isNotNull();
    return (after - before) / (double) CALLS;
  }

  @Test
  void a_size_that_was_read_before() {
    assertThat(bytes(() -> CableSize.parse("12 AWG"))).isLessThan(1);
  }

  @Test
  void texts_of_how_it_lies_and_of_outputs_that_were_read_before() {
    assertThat(InstallationMethod.parse("laid", "drum 3 layers"))
        .isSameAs(InstallationMethod.parse("laid", "drum 3 layers"));
    assertThat(PlateFeed.outputs("outputs", "12/24"))
        .isSameAs(PlateFeed.outputs("outputs", "12/24"));
  }

  @Test
  void the_conductor_of_a_size() {
    CableSize size = CableSize.parse("2.5 mm²");
    assertThat(bytes(() -> Conductor.of(size))).isLessThan(1);
  }

  @Test
  void the_volts_of_a_charge() {
    OpenCircuit curve = OpenCircuit.of(Chemistry.LI_ION);
    assertThat(bytes(() -> curve.volts(0.62) > 3 ? curve : null)).isLessThan(1);
    assertThat(bytes(() -> OpenCircuit.of(Chemistry.LI_ION))).isLessThan(1);
  }

  @Test
  void texts_of_sizes_are_kept_up_to_a_bound() {
    for (int i = 0; i < 5_000; i++) {
      CableSize.parse((i + 1) + ".5 kcmil");
    }
    String late = "251 kcmil";
    assertThat(CableSize.parse(late)).isEqualTo(CableSize.parse(late));
    assertThat(CableSize.parse(late)).isNotSameAs(CableSize.parse(late));
  }
}
