package org.setpower.entry;

import com.sun.star.lang.XSingleComponentFactory;
import com.sun.star.lib.uno.helper.Factory;

/** What the office's Java loader asks for: the factories of the components of this extension. */
public final class Registration {
  private Registration() {}

  /** Called by the office with the name of an implementation from setpower.components. */
  public static XSingleComponentFactory __getComponentFactory(String implementation)
      throws ReflectiveOperationException {
    try {
      Class<?> component = Class.forName(implementation);
      Object services = component.getMethod("services").invoke(null);
      return Factory.createComponentFactory(component, (String[]) services);
    } catch (UnsupportedClassVersionError javaIsTooOld) {
      return new UnsupportedJavaStub(implementation);
    }
  }
}
