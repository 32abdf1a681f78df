package org.setpower.bench;

import java.util.concurrent.TimeUnit;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.events.EventHandler;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.setpower.pack.Chemistry;
import org.setpower.pack.ConstantWatts;
import org.setpower.pack.Pack;
import org.setpower.registry.groups.PackFunctions;

/**
 * PACK.DISCHARGE, solved line by line, against stepping through time with an adaptive integrator.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class PackBench {
  private static final double WATTS = 92;
  private static final double CUT_OFF = 20;
  private static final double SAME = 1e-5;

  private final Pack pack = Pack.of(Chemistry.LI_ION, 8, 10.2, 45, 1, 25);
  private final Object[] cell = {8.0, 10.2, 45.0, WATTS, CUT_OFF, "Li-ion", 1.0, 1.0, 25.0, "", ""};

  /** Refuses to time two calculations that do not agree. */
  @Setup
  public void agree() {
    double solved = (Double) lastsOfCell();
    double stepped = lastsByIntegrator();
    if (Math.abs(stepped / solved - 1) > SAME) {
      throw new IllegalStateException(solved + " h solved, " + stepped + " h stepped");
    }
  }

  /** A cell's PACK.DISCHARGE. */
  @Benchmark
  public Object lastsOfCell() {
    return PackFunctions.DISCHARGE.call(cell);
  }

  /** The same hours from d(charge)/dt = −I/Ah, until the cut-off. */
  @Benchmark
  public double lastsByIntegrator() {
    DormandPrince853Integrator integrator = new DormandPrince853Integrator(1e-6, 0.1, 1e-9, 1e-9);
    integrator.addEventHandler(new CutOff(), 0.05, 1e-8, 100);
    return integrator.integrate(new Draining(), 0, new double[] {1}, 100, new double[1]);
  }

  private final class Draining implements FirstOrderDifferentialEquations {
    @Override
    public int getDimension() {
      return 1;
    }

    @Override
    public void computeDerivatives(double t, double[] charge, double[] change) {
      change[0] =
          -ConstantWatts.amps(WATTS, pack.ohms(), pack.restVolts(charge[0])) / pack.ampHours();
    }
  }

  private final class CutOff implements EventHandler {
    private double endCharge;

    @Override
    public void init(double t0, double[] charge0, double t) {
      double floor = Math.max(CUT_OFF, pack.floorVolts());
      endCharge = pack.charge(ConstantWatts.openVolts(WATTS, pack.ohms(), floor));
    }

    @Override
    public double g(double t, double[] charge) {
      return charge[0] - endCharge;
    }

    @Override
    public Action eventOccurred(double t, double[] charge, boolean increasing) {
      return Action.STOP;
    }

    @Override
    public void resetState(double t, double[] charge) {
      // stays as it is
    }
  }
}
