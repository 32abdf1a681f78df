package org.setpower.command.settings;

import com.sun.star.awt.XContainerWindowEventHandler;
import com.sun.star.awt.XControl;
import com.sun.star.awt.XWindow;
import com.sun.star.uno.XComponentContext;
import org.setpower.command.CommandContext;
import org.setpower.command.message.CommandMessages;
import org.setpower.ui.ErrorReporting;
import org.setpower.ui.Form;
import org.setpower.uno.Uno;
import org.setpower.uno.UnoService;

/** The page of Tools - Options: the office shows an empty page and reports its events. */
public final class SettingsPage extends UnoService implements XContainerWindowEventHandler {
  private static final String SERVICE = "org.setpower.SettingsPage";
  private static final String EVENT = "external_event";

  private final CommandContext desk;
  private SettingsForm form;

  /** Created by the office. */
  public SettingsPage(XComponentContext context) {
    super(SERVICE);
    desk = new CommandContext(context, null);
    CommandMessages.as(context);
  }

  /** The services this class answers for. */
  public static String[] services() {
    return new String[] {SERVICE};
  }

  @Override
  public boolean callHandlerMethod(XWindow window, Object event, String method) {
    if (!EVENT.equals(method)) {
      return false;
    }
    ErrorReporting.run(desk, () -> happened(window, String.valueOf(event)));
    return true;
  }

  private void happened(XWindow window, String event) throws com.sun.star.uno.Exception {
    switch (event) {
      case "initialize" -> {
        Object model = Uno.as(XControl.class, window).getModel();
        int width = (Integer) Uno.get(model, "Width");
        form = new SettingsForm(desk, new Form(model, width), width);
      }
      case "back" -> form.load();
      case "ok" -> form.save();
      default -> {
        // nothing else concerns the page
      }
    }
  }

  @Override
  public String[] getSupportedMethodNames() {
    return new String[] {EVENT};
  }
}
