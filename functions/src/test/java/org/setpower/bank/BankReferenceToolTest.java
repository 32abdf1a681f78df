package org.setpower.bank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.setpower.ReferenceTool;
import org.setpower.pack.Chemistry;
import org.setpower.pack.DeviceLoad;
import org.setpower.pack.OpenCircuit;

/** Banks as circuits, against the circuit simulator ngspice. */
class BankReferenceToolTest {
  @ParameterizedTest
  @CsvSource({
    "33.6, 45, 30.8965, 45, 28.9936, 45, 92",
    "33.6, 45, 30.8965, 75, 32, 30, 400",
    "16.8, 60, 15, 60, 14, 60, 0",
    "12.6, 6, 12.5, 8, 12.4, 12, 1500"
  })
  void packs_share_as_in_a_simulated_circuit(
      double e1, double r1, double e2, double r2, double e3, double r3, double watts) {
    double[] volts = {e1, e2, e3};
    double[] ohms = {r1 / 1000, r2 / 1000, r3 / 1000};
    StringBuilder net = new StringBuilder("share\n.options reltol=1e-9 abstol=1e-12 vntol=1e-9\n");
    for (int k = 0; k < 3; k++) {
      net.append(text("V%d e%d 0 %.15g\nR%d e%d bus %.15g\n", k, k, volts[k], k, k, ohms[k]));
    }
    net.append(text("Bload bus 0 I=%.15g/V(bus)\n.nodeset v(bus)=%.15g\n", watts, e1));
    net.append(".control\nset numdgt=12\nop\n");
    for (int k = 0; k < 3; k++) {
      net.append(text("let a%d = -i(v%d)\nprint a%d\n", k, k, k));
    }
    Map<String, Double> printed = ReferenceTool.ngspice(net.toString());
    double[] amps = CurrentSharing.amps(volts, ohms, watts);
    for (int k = 0; k < 3; k++) {
      assertThat(amps[k]).isCloseTo(printed.get("a" + k), within(1e-5));
    }
  }

  /** Each pack: its charge on a capacitor, its curve as a controlled source, its resistance. */
  @ParameterizedTest
  @EnumSource(ParallelConnection.class)
  void a_bank_lasts_as_long_as_a_simulated_circuit(ParallelConnection joined) {
    List<BankPack> members =
        List.of(
            new BankPack(1, Chemistry.LI_ION, 8, 10.2, 45, 1),
            new BankPack(2, Chemistry.LI_ION, 8, 10.2, 45, 0.62),
            new BankPack(3, Chemistry.LI_ION, 8, 5.2, 75, 0.35));
    List<BankEvent> events = BankDischarge.events(members, new DeviceLoad(92, 20, 0), joined, 25);
    double hours = events.get(events.size() - 1).hours();
    StringBuilder net =
        new StringBuilder("bank\n.options reltol=1e-7 abstol=1e-12 vntol=1e-9 method=gear\n");
    for (BankPack m : members) {
      int k = m.number();
      net.append(text("C%d q%d 0 1 IC=%.15g\n", k, k, m.charge()));
      net.append(text("Be%d e%d 0 V=8*pwl(V(q%d)%s)\n", k, k, k, points()));
      String amps = text("(V(e%d)-V(bus))/%.15g", k, m.milliohms() / 1000);
      net.append(
          text(
              "Bi%d e%d bus I=%s\n",
              k, k, joined == ParallelConnection.HOT_SWAP ? "max(0," + amps + ")" : amps));
      net.append(
          text(
              "Bq%d q%d 0 I=%s/%.15g\n",
              k,
              k,
              joined == ParallelConnection.HOT_SWAP ? "max(0," + amps + ")" : amps,
              m.ampHours()));
    }
    net.append("Bload bus 0 I=92/max(V(bus),15)\nCbus bus 0 1e-9 IC=33\n");
    net.append(
        text("Rbus bus 0 1e9\n.control\nset numdgt=12\ntran 1m %.6g 0 1m uic\n", hours + 0.02));
    net.append("meas tran dark when v(bus)=24 fall=1\n");
    Map<String, Double> printed = ReferenceTool.ngspice(net.toString());
    assertThat(hours).isCloseTo(printed.get("dark"), Percentage.withPercentage(0.01));
  }

  private static String points() {
    OpenCircuit curve = OpenCircuit.of(Chemistry.LI_ION);
    StringBuilder points = new StringBuilder();
    for (int i = 0; i <= curve.segments(); i++) {
      points.append(text(",%.15g,%.15g", curve.chargeAt(i), curve.voltsAt(i)));
    }
    return points.toString();
  }

  private static String text(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }
}
