package org.setpower.addin;

import com.sun.star.lang.XSingleComponentFactory;
import com.sun.star.lib.uno.helper.Factory;
import org.setpower.command.Commands;
import org.setpower.command.Dispatcher;
import org.setpower.command.SettingsPage;

/** What the office's Java loader asks for: the factories of this jar's components. */
public final class Registration {
  private Registration() {}

  /** Called by the office with the name of an implementation from setpower.components. */
  public static XSingleComponentFactory __getComponentFactory(String implementation) {
    if (implementation.equals(FunctionsAddIn.class.getName())) {
      return Factory.createComponentFactory(FunctionsAddIn.class, AddIn.services());
    }
    if (implementation.equals(Commands.class.getName())) {
      return Factory.createComponentFactory(Commands.class, Commands.services());
    }
    if (implementation.equals(Dispatcher.class.getName())) {
      return Factory.createComponentFactory(Dispatcher.class, Dispatcher.services());
    }
    return implementation.equals(SettingsPage.class.getName())
        ? Factory.createComponentFactory(SettingsPage.class, SettingsPage.services())
        : null;
  }
}
