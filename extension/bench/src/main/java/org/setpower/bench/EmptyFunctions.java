package org.setpower.bench;

import com.sun.star.lang.XServiceInfo;
import com.sun.star.lang.XSingleComponentFactory;
import com.sun.star.lib.uno.helper.Factory;
import com.sun.star.lib.uno.helper.WeakBase;
import java.util.Arrays;

/** An add-in that computes nothing: what a call costs before we do anything. */
public final class EmptyFunctions extends WeakBase implements XEmpty, XServiceInfo {
  private static final String SERVICE = "org.setpower.bench.Empty";
  private static final Double ZERO = 0.0;

  /** Called by the office's Java loader. */
  public static XSingleComponentFactory __getComponentFactory(String implementation) {
    return implementation.equals(EmptyFunctions.class.getName())
        ? Factory.createComponentFactory(EmptyFunctions.class, new String[] {SERVICE})
        : null;
  }

  @Override
  public Object emptyDrop(Object a, Object b, Object c, Object d, Object e, Object f, Object g) {
    return c instanceof Object[][] range ? zeros(range.length) : ZERO;
  }

  private static Object[][] zeros(int rows) {
    Object[][] column = new Object[rows][];
    Arrays.setAll(column, row -> new Object[] {ZERO});
    return column;
  }

  @Override
  public Object emptyEndVolts(
      Object a, Object b, Object c, Object d, Object e, Object f, Object g, Object h) {
    return ZERO;
  }

  @Override
  public String getImplementationName() {
    return getClass().getName();
  }

  @Override
  public boolean supportsService(String name) {
    return SERVICE.equals(name);
  }

  @Override
  public String[] getSupportedServiceNames() {
    return new String[] {SERVICE};
  }
}
