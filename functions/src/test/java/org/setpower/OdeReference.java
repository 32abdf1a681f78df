package org.setpower;

import java.util.function.ToDoubleFunction;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketedUnivariateSolver;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.events.AdaptableInterval;
import org.hipparchus.ode.events.ODEEventDetector;
import org.hipparchus.ode.events.ODEEventHandler;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;

/** Smooth differential equations by a library's integrator. */
public final class OdeReference {
  private OdeReference() {}

  /** How fast the values change. */
  @FunctionalInterface
  public interface Rates {
    double[] at(double[] values);
  }

  /** When it stopped, and the values then. */
  public record End(double time, double[] values) {}

  /** The values after a time. */
  public static double[] after(double time, double[] start, Rates rates) {
    return integrate(time, time, start, rates, values -> 1).values();
  }

  /** The moment at which {@code stop} falls to 0, and the values then; looked for up to a time. */
  public static End until(
      ToDoubleFunction<double[]> stop, double mostTime, double[] start, Rates rates) {
    return integrate(mostTime, mostTime / 1000, start, rates, stop);
  }

  private static End integrate(
      double time,
      double longestStep,
      double[] start,
      Rates rates,
      ToDoubleFunction<double[]> stop) {
    DormandPrince853Integrator integrator =
        new DormandPrince853Integrator(time * 1e-14, longestStep, 1e-14, 1e-14);
    integrator.addEventDetector(new Stop(stop, time));
    OrdinaryDifferentialEquation equation =
        new OrdinaryDifferentialEquation() {
          @Override
          public int getDimension() {
            return start.length;
          }

          @Override
          public double[] computeDerivatives(double t, double[] y) {
            return rates.at(y);
          }
        };
    ODEStateAndDerivative end = integrator.integrate(equation, new ODEState(0, start), time);
    return new End(end.getTime(), end.getPrimaryState());
  }

  private record Stop(ToDoubleFunction<double[]> sign, double time) implements ODEEventDetector {
    @Override
    public AdaptableInterval getMaxCheckInterval() {
      return AdaptableInterval.of(time / 100);
    }

    @Override
    public int getMaxIterationCount() {
      return 200;
    }

    @Override
    public BracketedUnivariateSolver<UnivariateFunction> getSolver() {
      return new BracketingNthOrderBrentSolver(0, time * 1e-15, 0, 5);
    }

    @Override
    public ODEEventHandler getHandler() {
      return (state, detector, rising) -> Action.STOP;
    }

    @Override
    public double g(ODEStateAndDerivative state) {
      return sign.applyAsDouble(state.getPrimaryState());
    }
  }
}
