package org.setpower.command.menu;

import com.sun.star.frame.DispatchDescriptor;
import com.sun.star.frame.XDispatch;
import com.sun.star.frame.XDispatchProvider;
import com.sun.star.frame.XFrame;
import com.sun.star.lang.XInitialization;
import com.sun.star.uno.XComponentContext;
import com.sun.star.util.URL;
import java.util.function.Supplier;
import org.setpower.command.Command;
import org.setpower.command.message.CommandMessages;
import org.setpower.uno.Uno;
import org.setpower.uno.UnoService;

/**
 * What the office asks for an address of ours in a menu or on a toolbar, {@code
 * org.setpower:explain}: the command behind it, and whether it is enabled.
 */
public final class Dispatcher extends UnoService implements XDispatchProvider, XInitialization {
  /** What the addresses begin with. */
  static final String PROTOCOL = "org.setpower:";

  private static final String SERVICE = "org.setpower.Dispatcher";

  private final XComponentContext context;
  private XFrame frame;

  /** Created by the office. */
  public Dispatcher(XComponentContext context) {
    super(SERVICE);
    this.context = context;
    CommandMessages.as(context);
  }

  /** The services this class answers for. */
  public static String[] services() {
    return new String[] {SERVICE};
  }

  @Override
  public void initialize(Object[] arguments) {
    frame = arguments.length == 0 ? null : Uno.as(XFrame.class, arguments[0]);
  }

  @Override
  public XDispatch queryDispatch(URL url, String target, int flags) {
    if (frame == null || !url.Complete.startsWith(PROTOCOL)) {
      return null;
    }
    Supplier<Command> known = CommandRegistry.KNOWN.get(url.Complete.substring(PROTOCOL.length()));
    return known == null ? null : new FrameCommand(context, frame, known.get());
  }

  @Override
  public XDispatch[] queryDispatches(DispatchDescriptor[] requests) {
    XDispatch[] answers = new XDispatch[requests.length];
    for (int i = 0; i < answers.length; i++) {
      DispatchDescriptor request = requests[i];
      answers[i] = queryDispatch(request.FeatureURL, request.FrameName, request.SearchFlags);
    }
    return answers;
  }
}
