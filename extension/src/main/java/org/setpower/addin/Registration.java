package org.setpower.addin;

import com.sun.star.lang.XSingleComponentFactory;
import com.sun.star.lib.uno.helper.Factory;

/** What the office's Java loader asks for: the factories of this jar's components. */
public final class Registration {
  private Registration() {}

  /** Called by the office with the name of an implementation from setpower.components. */
  public static XSingleComponentFactory __getComponentFactory(String implementation) {
    return implementation.equals(FunctionsAddIn.class.getName())
        ? Factory.createComponentFactory(FunctionsAddIn.class, AddIn.services())
        : null;
  }
}
