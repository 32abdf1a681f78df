package org.setpower.command.print;

import com.sun.star.document.DocumentEvent;
import com.sun.star.document.XDocumentEventBroadcaster;
import com.sun.star.document.XDocumentEventListener;
import com.sun.star.frame.XController;
import com.sun.star.frame.XDispatchProviderInterception;
import com.sun.star.frame.XFrame;
import com.sun.star.frame.XFramesSupplier;
import com.sun.star.frame.theGlobalEventBroadcaster;
import com.sun.star.lang.EventObject;
import com.sun.star.lang.XComponent;
import com.sun.star.lang.XEventListener;
import com.sun.star.sheet.XSpreadsheetView;
import com.sun.star.uno.Exception;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.uno.XComponentContext;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import org.setpower.command.CommandContext;
import org.setpower.command.message.CommandMessages;
import org.setpower.uno.Uno;
import org.setpower.uno.UnoService;

/**
 * Waits for windows with documents of ours: their print ranges are set when they print. The office
 * has no event early enough before printing, so each such window gets a {@link PrintInterceptor}.
 * Made once, with the first function of ours that a cell calls; a document of somebody else never
 * starts Java for it.
 */
public final class PrintWatch extends UnoService implements XDocumentEventListener {
  private static final String SERVICE = "org.setpower.PrintWatch";
  private static final String SHOWN = "OnViewCreated";
  private static final Set<String> SAVING = Set.of("OnSave", "OnSaveAs", "OnSaveTo", "OnCopyTo");

  private final XComponentContext context;
  private final Map<XFrame, PrintInterceptor> watched = new HashMap<>();

  /** Created by the first function that is called. */
  public PrintWatch(XComponentContext context) throws Exception {
    super(SERVICE);
    this.context = context;
    CommandMessages.as(context);
    Uno.as(XDocumentEventBroadcaster.class, theGlobalEventBroadcaster.get(context))
        .addDocumentEventListener(this);
    CommandContext desk = new CommandContext(context, null);
    var frames = Uno.as(XFramesSupplier.class, desk.desktop()).getFrames();
    for (int i = 0; i < frames.getCount(); i++) {
      watch(Uno.as(XFrame.class, frames.getByIndex(i)).getController());
    }
  }

  /** The services this class answers for. */
  public static String[] services() {
    return new String[] {SERVICE};
  }

  @Override
  public void documentEventOccured(DocumentEvent event) {
    if (SHOWN.equals(event.EventName)) {
      watch(event.ViewController);
    } else if (SAVING.contains(event.EventName)) {
      saving(event.Source);
    }
  }

  /** No file is stored with rows that are hidden for a preview only. */
  private void saving(Object document) {
    Map<XFrame, PrintInterceptor> all;
    synchronized (watched) {
      all = new HashMap<>(watched);
    }
    all.forEach(
        (frame, interceptor) -> {
          XController view = frame.getController();
          if (view != null && UnoRuntime.areSame(view.getModel(), document)) {
            interceptor.saving();
          }
        });
  }

  private void watch(Object view) {
    XController controller = Uno.as(XController.class, view);
    if (controller == null || controller.getModel() == null || controller.getFrame() == null) {
      return;
    }
    CommandContext desk =
        new CommandContext(context, Uno.as(XComponent.class, controller.getModel()));
    XFrame frame = controller.getFrame();
    if (!desk.hasBook() || !desk.book().isFromTemplate()) {
      return;
    }
    PrintInterceptor interceptor = new PrintInterceptor(context, frame);
    PrintInterceptor known;
    synchronized (watched) {
      known = watched.putIfAbsent(frame, interceptor);
    }
    if (known == null) {
      frame.addEventListener(new Ending(frame));
      Uno.as(XDispatchProviderInterception.class, frame)
          .registerDispatchProviderInterceptor(interceptor);
    } else if (Uno.as(XSpreadsheetView.class, controller) != null) {
      known.putBack(); // its preview was closed
    }
  }

  @Override
  public void disposing(EventObject office) {
    synchronized (watched) {
      watched.clear();
    }
  }

  /** Forgets a window that is closed. */
  private final class Ending implements XEventListener {
    private final XFrame frame;

    Ending(XFrame frame) {
      this.frame = frame;
    }

    @Override
    public void disposing(EventObject event) {
      synchronized (watched) {
        watched.remove(frame);
      }
    }
  }
}
