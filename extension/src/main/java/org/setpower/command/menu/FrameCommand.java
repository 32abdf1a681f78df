package org.setpower.command.menu;

import com.sun.star.beans.PropertyValue;
import com.sun.star.frame.FeatureStateEvent;
import com.sun.star.frame.XController;
import com.sun.star.frame.XDispatch;
import com.sun.star.frame.XFrame;
import com.sun.star.frame.XStatusListener;
import com.sun.star.lang.EventObject;
import com.sun.star.lang.XComponent;
import com.sun.star.lib.uno.helper.WeakBase;
import com.sun.star.uno.Any;
import com.sun.star.uno.Type;
import com.sun.star.uno.XComponentContext;
import com.sun.star.util.URL;
import com.sun.star.view.XSelectionChangeListener;
import com.sun.star.view.XSelectionSupplier;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.setpower.command.Command;
import org.setpower.command.CommandContext;
import org.setpower.ui.ErrorReporting;
import org.setpower.uno.Uno;

/**
 * A command in one window: runs it there, and notifies menus and toolbars whether it is enabled.
 */
final class FrameCommand extends WeakBase implements XDispatch, XSelectionChangeListener {
  private final XComponentContext context;
  private final XFrame frame;
  private final Command command;
  private final Map<XStatusListener, URL> listeners = new LinkedHashMap<>();
  private XSelectionSupplier heard;

  FrameCommand(XComponentContext context, XFrame frame, Command command) {
    this.context = context;
    this.frame = frame;
    this.command = command;
  }

  private CommandContext desk() {
    XController controller = frame.getController();
    return new CommandContext(
        context, controller == null ? null : Uno.as(XComponent.class, controller.getModel()));
  }

  @Override
  public void dispatch(URL url, PropertyValue[] arguments) {
    CommandContext desk = desk();
    ErrorReporting.run(desk, () -> command.runInteractive(desk));
  }

  @Override
  public void addStatusListener(XStatusListener listener, URL url) {
    XSelectionSupplier selection = Uno.as(XSelectionSupplier.class, frame.getController());
    boolean isFirst;
    synchronized (listeners) {
      listeners.put(listener, url);
      isFirst = heard == null && selection != null;
      heard = isFirst ? selection : heard;
    }
    if (isFirst) { // outside the lock: the office may be waiting for it with its own one
      selection.addSelectionChangeListener(this);
    }
    listener.statusChanged(status(url, isEnabled()));
  }

  @Override
  public void removeStatusListener(XStatusListener listener, URL url) {
    XSelectionSupplier last;
    synchronized (listeners) {
      listeners.remove(listener);
      last = listeners.isEmpty() ? heard : null;
      heard = listeners.isEmpty() ? null : heard;
    }
    if (last != null) {
      last.removeSelectionChangeListener(this);
    }
  }

  @Override
  public void selectionChanged(EventObject event) {
    List<Map.Entry<XStatusListener, URL>> all;
    synchronized (listeners) {
      all = List.copyOf(listeners.entrySet());
    }
    boolean enabled = isEnabled();
    all.forEach(l -> l.getKey().statusChanged(status(l.getValue(), enabled)));
  }

  @Override
  public void disposing(EventObject event) {
    synchronized (listeners) {
      heard = null;
    }
  }

  private FeatureStateEvent status(URL url, boolean enabled) {
    return new FeatureStateEvent(this, url, "", enabled, false, new Any(Type.VOID, null));
  }

  /** In doubt yes: the command itself reports what is missing. */
  private boolean isEnabled() {
    try {
      return command.isEnabled(desk());
    } catch (Exception | LinkageError e) {
      return true;
    }
  }
}
