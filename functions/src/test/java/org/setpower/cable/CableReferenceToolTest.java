package org.setpower.cable;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.setpower.ReferenceTool;
import org.setpower.base.PhaseSystem;

/** Runs against the circuit simulator ngspice, gauges against GNU units. */
class CableReferenceToolTest {
  private static final double MAINS = 50;

  /** A run and its load. */
  private record Circuit(String size, double length, PhaseSystem system, double pf, double load) {
    CableRun run() {
      return CableRun.of(CableSize.parse(size), length, system, pf, 60, 1);
    }

    boolean isThreePhase() {
      return system == PhaseSystem.THREE;
    }
  }

  private static final List<Circuit> AMPS =
      List.of(
          new Circuit("12 AWG", 10, PhaseSystem.DC, 1, 8.33),
          new Circuit("2.5 mm²", 50, PhaseSystem.ONE, 0.97, 2.9),
          new Circuit("16 mm²", 45, PhaseSystem.ONE, 0.8, 40),
          new Circuit("4/0 AWG", 120, PhaseSystem.ONE, 0.6, 150),
          new Circuit("35 mm²", 70, PhaseSystem.THREE, 0.95, 63),
          new Circuit("2/0 AWG", 90, PhaseSystem.THREE, 0.85, 130));

  /** Real part of the volts across the cable, seen from the current's own load voltage. */
  @Test
  void drop_agrees_with_a_simulated_circuit() {
    StringBuilder net = new StringBuilder("drop\n");
    StringBuilder prints = new StringBuilder();
    for (int i = 0; i < AMPS.size(); i++) {
      Circuit c = AMPS.get(i);
      double lag = -Math.toDegrees(Math.acos(c.pf));
      if (c.isThreePhase()) {
        conductor(net, "a" + i, "0", c.run());
        conductor(net, "b" + i, "0", c.run());
        net.append(text("Ia%d 0 a%d AC %.15g %.15g\n", i, i, c.load, lag));
        net.append(text("Ib%d 0 b%d AC %.15g %.15g\n", i, i, c.load, lag - 120));
        prints.append(text("let d = v(a%d)-v(b%d)\n", i, i));
      } else {
        conductor(net, "a" + i, "b" + i, c.run());
        conductor(net, "b" + i, "0", c.run());
        net.append(text("Ia%d 0 a%d AC %.15g %.15g\n", i, i, c.load, lag));
        prints.append(text("let d = v(a%d)\n", i));
      }
      prints.append(text("let re%d = real(d)\nlet im%d = imag(d)\nprint re%d im%d\n", i, i, i, i));
    }
    Map<String, Double> printed =
        ReferenceTool.ngspice(
            net + text(".control\nset numdgt=15\nac lin 1 %s %s\n", MAINS, MAINS) + prints);
    for (int i = 0; i < AMPS.size(); i++) {
      Circuit c = AMPS.get(i);
      double turned = c.isThreePhase() ? Math.toRadians(-30) : 0;
      double real =
          printed.get("re" + i) * Math.cos(turned) - printed.get("im" + i) * Math.sin(turned);
      assertThat(c.run().drop(c.load))
          .as(c.toString())
          .isCloseTo(real, Percentage.withPercentage(1e-4));
    }
  }

  private static void conductor(StringBuilder net, String from, String to, CableRun run) {
    net.append(text("R%s %s m%s %.15g\n", from, from, from, run.ohms()));
    double henry = run.reactance() / (2 * Math.PI * MAINS);
    net.append(
        henry > 0
            ? text("L%s m%s %s %.15g\n", from, from, to, henry)
            : text("V%s m%s %s 0\n", from, from, to));
  }

  private static final List<Circuit> WATTS =
      List.of(
          new Circuit("12 AWG", 10, PhaseSystem.DC, 1, 200),
          new Circuit("12 AWG", 10, PhaseSystem.DC, 1, 1100),
          new Circuit("2 AWG", 40, PhaseSystem.DC, 1, 900),
          new Circuit("2.5 mm²", 60, PhaseSystem.ONE, 0.95, 3000),
          new Circuit("16 mm²", 45, PhaseSystem.ONE, 0.5, 6000),
          new Circuit("35 mm²", 300, PhaseSystem.THREE, 0.9, 40000),
          new Circuit("4/0 AWG", 500, PhaseSystem.THREE, 0.7, 60000));

  private static double supply(Circuit c) {
    return switch (c.system) {
      case DC -> 24;
      case ONE -> 230;
      case THREE -> 400;
    };
  }

  /**
   * A load of constant watts as a source whose current depends on its volts. An alternating circuit
   * is simulated as two direct ones, one for the real and one for the imaginary part.
   */
  @Test
  void end_volts_agree_with_a_simulated_circuit() {
    StringBuilder net = new StringBuilder("constant watts\n");
    net.append(".options reltol=1e-12 abstol=1e-14 vntol=1e-12 itl1=500\n");
    StringBuilder prints = new StringBuilder(".control\nset numdgt=15\nop\n");
    for (int i = 0; i < WATTS.size(); i++) {
      Circuit c = WATTS.get(i);
      double phases = c.isThreePhase() ? 3 : 1;
      double conductors = c.isThreePhase() ? 1 : 2;
      double volts = supply(c) / (c.isThreePhase() ? Math.sqrt(3) : 1);
      double p = c.load / phases;
      double q = p * Math.tan(Math.acos(c.pf));
      double r = conductors * c.run().ohms();
      double x = conductors * c.run().reactance();
      net.append(text("Vs%1$d s%1$d 0 %2$.15g\n", i, volts));
      net.append(text("Rr%1$d s%1$d a%1$d %2$.15g\n", i, r));
      net.append(text("Bxr%1$d a%1$d m%1$d V=-(%2$.15g)*I(Vi%1$d)\n", i, x));
      net.append(text("Vr%1$d m%1$d u%1$d 0\n", i));
      net.append(text("Ri%1$d 0 b%1$d %2$.15g\n", i, r));
      net.append(text("Bxi%1$d b%1$d n%1$d V=(%2$.15g)*I(Vr%1$d)\n", i, x));
      net.append(text("Vi%1$d n%1$d w%1$d 0\n", i));
      String square = text("(V(u%1$d)*V(u%1$d)+V(w%1$d)*V(w%1$d))", i);
      net.append(
          text("Blr%1$d u%1$d 0 I=(%2$.15g*V(u%1$d)+%3$.15g*V(w%1$d))/", i, p, q) + square + "\n");
      net.append(
          text("Bli%1$d w%1$d 0 I=(%2$.15g*V(w%1$d)-%3$.15g*V(u%1$d))/", i, p, q) + square + "\n");
      net.append(text(".nodeset V(u%1$d)=%2$.15g V(m%1$d)=%2$.15g V(a%1$d)=%2$.15g\n", i, volts));
      prints.append(
          text("let e%1$d = sqrt(V(u%1$d)*V(u%1$d)+V(w%1$d)*V(w%1$d))\nprint e%1$d\n", i));
    }
    Map<String, Double> printed = ReferenceTool.ngspice(net.toString() + prints);
    for (int i = 0; i < WATTS.size(); i++) {
      Circuit c = WATTS.get(i);
      double lineToPhase = c.isThreePhase() ? Math.sqrt(3) : 1;
      assertThat(c.run().endVolts(c.load, supply(c)))
          .as(c.toString())
          .isCloseTo(printed.get("e" + i) * lineToPhase, Percentage.withPercentage(1e-4));
    }
  }

  @Test
  void areas_of_gauges_agree_with_units() {
    List<CableSize> gauges = CableSize.series(CableSize.Family.AWG);
    for (CableSize gauge : gauges) {
      int n = (int) gauge.value();
      String printed =
          ReferenceTool.run("units", "units", "-t", "-o", "%.15g", "wiregauge(" + n + ")", "mm")
              .strip();
      double diameter = Double.parseDouble(printed);
      assertThat(gauge.area())
          .as(gauge.toString())
          .isCloseTo(Math.PI / 4 * diameter * diameter, within(1e-9 * gauge.area()));
    }
  }

  private static String text(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }
}
