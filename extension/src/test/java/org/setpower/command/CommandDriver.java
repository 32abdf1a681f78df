package org.setpower.command;

import com.sun.star.beans.NamedValue;
import com.sun.star.lang.XComponent;
import com.sun.star.lang.XMultiServiceFactory;
import com.sun.star.task.XJob;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.util.XChangesBatch;
import org.setpower.office.Office;
import org.setpower.uno.Uno;

/** Calls a command as scripts do: without windows, and with an answer. */
public final class CommandDriver {
  private CommandDriver() {}

  public static String command(
      Office office, XComponent document, String command, String... options) {
    NamedValue[] arguments = new NamedValue[2 + options.length / 2];
    arguments[0] = new NamedValue("Command", command);
    arguments[1] = new NamedValue("Document", document);
    for (int i = 0; i < options.length; i += 2) {
      arguments[2 + i / 2] = new NamedValue(options[i], options[i + 1]);
    }
    try {
      return (String) office.service(XJob.class, "org.setpower.Commands").execute(arguments);
    } catch (com.sun.star.uno.Exception e) {
      throw new IllegalStateException(e);
    }
  }

  /** Switches the language of the office, as its options do. */
  public static void speak(Office office, String locale) throws com.sun.star.uno.Exception {
    Object node =
        office
            .service(XMultiServiceFactory.class, "com.sun.star.configuration.ConfigurationProvider")
            .createInstanceWithArguments(
                "com.sun.star.configuration.ConfigurationUpdateAccess",
                new Object[] {Uno.property("nodepath", "/org.openoffice.Setup/L10N")});
    Uno.set(node, "ooLocale", locale);
    UnoRuntime.queryInterface(XChangesBatch.class, node).commitChanges();
  }
}
