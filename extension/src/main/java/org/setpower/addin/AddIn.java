package org.setpower.addin;

import com.sun.star.beans.XPropertySet;
import com.sun.star.lang.IllegalArgumentException;
import com.sun.star.lang.XServiceInfo;
import com.sun.star.lib.uno.helper.WeakBase;
import com.sun.star.script.CannotConvertException;
import com.sun.star.sheet.NoConvergenceException;
import com.sun.star.uno.XComponentContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import org.setpower.base.EvaluationException;
import org.setpower.plan.common.PlanBlock;
import org.setpower.registry.FunctionSpec;

/**
 * What every generated method does: read the arguments, ask the catalogue, write the answer. Has no
 * state; Calc may create it more than once and calls it from a new thread each time.
 */
public abstract class AddIn extends WeakBase implements XServiceInfo {
  private static final String SERVICE = "org.setpower.Functions";
  private static final String WATCH = "org.setpower.PrintWatch";

  private static final AtomicBoolean IS_WATCHING = new AtomicBoolean();

  /** Outside an office. */
  AddIn() {}

  /** Created by the office, which prepares printing from the first time on. */
  AddIn(XComponentContext context) {
    if (IS_WATCHING.compareAndSet(false, true)) {
      try {
        context.getServiceManager().createInstanceWithContext(WATCH, context);
      } catch (com.sun.star.uno.Exception | RuntimeException fault) {
        System.err.println(fault); // a sheet still calculates
      }
    }
  }

  /** The services this class answers for. */
  public static String[] services() {
    return new String[] {SERVICE};
  }

  /** Answers a call of a cell. */
  final Object answer(FunctionSpec function, Object... arguments)
      throws IllegalArgumentException, CannotConvertException, NoConvergenceException {
    try {
      return ValueConverter.toCell(function.call(ValueConverter.fromCell(arguments)));
    } catch (EvaluationException refusal) {
      return ErrorMapper.show(refusal, this);
    }
  }

  /** Answers a call whose arguments may hold dates of the calling document. */
  final Object answerDated(FunctionSpec function, XPropertySet document, Object... arguments)
      throws IllegalArgumentException, CannotConvertException, NoConvergenceException {
    Object[] flat = flat(function, arguments);
    try {
      Object[] values =
          DocumentCalendar.of(document).inOurs(function, ValueConverter.fromCell(flat));
      return ValueConverter.toCell(function.call(values));
    } catch (EvaluationException refusal) {
      return ErrorMapper.show(refusal, this);
    }
  }

  /** Answers the call of a sheet's block; whatever comes, it is a block and no error. */
  final Object answerPlan(FunctionSpec function, XPropertySet document, Object... arguments) {
    Object[] values = ValueConverter.fromCell(arguments);
    List<Object> tables = new ArrayList<>(Arrays.asList(values).subList(1, values.length));
    long days = 0;
    try {
      days = DocumentCalendar.of(document).offset();
    } catch (RuntimeException unknownDays) {
      Collections.fill(tables, null);
    }
    return ValueConverter.toCell(
        PlanBlock.of(function.plan().orElseThrow(), values[0], tables, days));
  }

  /** The trailing sequence of a rest parameter, laid out after the others. */
  private static Object[] flat(FunctionSpec function, Object[] arguments) {
    if (!function.takesRest()) {
      return arguments;
    }
    int fixed = arguments.length - 1;
    Object[] rest = (Object[]) arguments[fixed];
    Object[] all = Arrays.copyOf(arguments, fixed + rest.length);
    System.arraycopy(rest, 0, all, fixed, rest.length);
    return all;
  }

  @Override
  public final String getImplementationName() {
    return getClass().getName();
  }

  @Override
  public final boolean supportsService(String name) {
    return SERVICE.equals(name);
  }

  @Override
  public final String[] getSupportedServiceNames() {
    return services();
  }
}
