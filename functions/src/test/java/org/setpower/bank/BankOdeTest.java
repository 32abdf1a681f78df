package org.setpower.bank;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.assertj.core.data.Percentage;
import org.setpower.OdeReference;
import org.setpower.pack.Chemistry;
import org.setpower.pack.DeviceLoad;
import org.setpower.pack.OpenCircuit;
import org.setpower.pack.Pack;

/** Banks of unlike 8-cell packs without a lead, against a library's integrator and events. */
class BankOdeTest {
  private static final double CELLS = 8;
  private static final double FLOOR = 3.0 * CELLS;

  /** A line is left this little past its end, so that a leg never starts with a margin of 0. */
  private static final double PAST = 1e-11;

  @Provide
  Arbitrary<List<BankPack>> banks() {
    return Combinators.combine(
            Arbitraries.doubles().between(2, 25),
            Arbitraries.doubles().between(20, 120),
            Arbitraries.doubles().between(0.3, 1).ofScale(6))
        .as((ah, r, charge) -> new BankPack(0, Chemistry.LI_ION, CELLS, ah, r, charge))
        .list()
        .ofMinSize(2)
        .ofMaxSize(4)
        .map(
            list -> {
              List<BankPack> numbered = new ArrayList<>();
              for (BankPack m : list) {
                numbered.add(
                    new BankPack(
                        numbered.size() + 1,
                        m.chemistry(),
                        m.cells(),
                        m.ampHours(),
                        m.milliohms(),
                        m.charge()));
              }
              return numbered;
            });
  }

  @Property(tries = 40)
  void a_bank_goes_dark_when_the_integrator_says_so(
      @ForAll("banks") List<BankPack> members,
      @ForAll ParallelConnection joined,
      @ForAll("watts") double watts) {
    List<BankEvent> events = BankDischarge.events(members, new DeviceLoad(watts, 0, 0), joined, 25);
    double hours = events.get(events.size() - 1).hours();
    assertThat(hours)
        .isCloseTo(new Integrated(members, joined, watts).hours(), Percentage.withPercentage(1e-7));
  }

  @Provide
  Arbitrary<Double> watts() {
    return Arbitraries.doubles().between(50, 250);
  }

  /** The same bank, integrated leg by leg on lines that go on straight past their ends. */
  private static final class Integrated {
    private final List<BankPack> members;
    private final double watts;
    private final OpenCircuit curve = OpenCircuit.of(Chemistry.LI_ION);
    private final List<Integer> on = new ArrayList<>();
    private final List<Integer> waiting = new ArrayList<>();
    private final int[] line;
    private double[] charge;

    Integrated(List<BankPack> members, ParallelConnection joined, double watts) {
      this.members = members;
      this.watts = watts;
      charge = members.stream().mapToDouble(BankPack::charge).toArray();
      line = new int[charge.length];
      for (int k = 0; k < charge.length; k++) {
        line[k] = curve.segmentBelow(charge[k]);
        (joined == ParallelConnection.PARALLEL ? on : waiting).add(k);
      }
      waiting.sort(Comparator.comparingDouble(k -> -charge[k]));
    }

    double hours() {
      double hours = 0;
      while (true) {
        while (!waiting.isEmpty()
            && (on.isEmpty() || volts(charge, waiting.get(0)) >= bus(charge) - 1e-11)) {
          on.add(waiting.remove(0));
        }
        if (bus(charge) <= FLOOR + 1e-11) {
          return hours;
        }
        turn();
        OdeReference.End leg = OdeReference.until(this::margin, 100, charge, this::rates);
        hours += leg.time();
        charge = leg.values();
      }
    }

    /** Packs within rounding of a point of the curve take the line they move into. */
    private void turn() {
      double[] rates = rates(charge);
      for (int k : on) {
        if (rates[k] < 0 && charge[k] <= curve.chargeAt(line[k]) + 1e-12 && line[k] > 0) {
          line[k]--;
        } else if (rates[k] > 0
            && charge[k] >= curve.chargeAt(line[k] + 1) - 1e-12
            && line[k] < curve.segments() - 1) {
          line[k]++;
        }
      }
    }

    private double margin(double[] y) {
      double least = bus(y) - FLOOR;
      for (int k : on) {
        double low = curve.chargeAt(line[k]);
        double high = curve.chargeAt(line[k] + 1);
        least = Math.min(least, y[k] - low + PAST);
        least = Math.min(least, high - y[k] + PAST);
      }
      if (!waiting.isEmpty()) {
        least = Math.min(least, bus(y) - volts(y, waiting.get(0)));
      }
      return least;
    }

    private double volts(double[] y, int k) {
      double low = curve.chargeAt(line[k]);
      double share = (y[k] - low) / (curve.chargeAt(line[k] + 1) - low);
      return CELLS * ((1 - share) * curve.voltsAt(line[k]) + share * curve.voltsAt(line[k] + 1));
    }

    /** The node, by repetition: ΣE/R − GV = P/V. */
    private double bus(double[] y) {
      double conductance = 0;
      double amps = 0;
      for (int k : on) {
        double siemens = 1000 / members.get(k).milliohms();
        conductance += siemens;
        amps += siemens * volts(y, k);
      }
      double bus = amps / conductance;
      for (int i = 0; i < 200; i++) {
        bus = (amps - watts / bus) / conductance;
      }
      return bus;
    }

    private double[] rates(double[] y) {
      double bus = bus(y);
      double[] rates = new double[y.length];
      for (int k : on) {
        Pack pack = members.get(k).at(25);
        rates[k] = -(volts(y, k) - bus) / pack.ohms() / pack.ampHours();
      }
      return rates;
    }
  }
}
