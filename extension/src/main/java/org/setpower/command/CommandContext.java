package org.setpower.command;

import com.sun.star.awt.XWindowPeer;
import com.sun.star.deployment.PackageInformationProvider;
import com.sun.star.frame.XController;
import com.sun.star.frame.XDesktop;
import com.sun.star.frame.XModel;
import com.sun.star.frame.XStorable;
import com.sun.star.lang.XComponent;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.uno.Exception;
import com.sun.star.uno.XComponentContext;
import org.setpower.command.document.CalcDocument;
import org.setpower.command.message.UserMessageException;
import org.setpower.uno.Uno;

/** Where a command works: the office, and the document it was called from. */
public record CommandContext(XComponentContext context, XComponent document) {
  private static final String EXTENSION = "org.setpower.sheets";

  /** With the active document. */
  public static CommandContext inFront(XComponentContext context) throws Exception {
    CommandContext empty = new CommandContext(context, null);
    return new CommandContext(context, empty.desktop().getCurrentComponent());
  }

  public <T> T service(Class<T> type, String name) throws Exception {
    return Uno.as(type, context.getServiceManager().createInstanceWithContext(name, context));
  }

  public XDesktop desktop() throws Exception {
    return service(XDesktop.class, "com.sun.star.frame.Desktop");
  }

  public boolean hasBook() {
    return Uno.as(XSpreadsheetDocument.class, document) != null;
  }

  /** Whether there is a document with sheets that may be written to. */
  public boolean mayWrite() {
    return hasBook() && !Uno.as(XStorable.class, document).isReadonly();
  }

  /** Refuses to write into a document that is open for reading only. */
  public void refuseReadOnly() {
    if (!mayWrite()) {
      throw new UserMessageException(
          "This document is open for reading only. Save it under another name, then repeat the"
              + " command. Nothing was changed.");
    }
  }

  /** The document as sheets. */
  public CalcDocument book() {
    if (!hasBook()) {
      throw new UserMessageException("Open a spreadsheet first: this command works on its sheets.");
    }
    return new CalcDocument(document);
  }

  /** The view of the document; null if it is hidden. */
  public XController controller() {
    XModel model = Uno.as(XModel.class, document);
    return model == null ? null : model.getCurrentController();
  }

  /** The window that dialogs stand before; null if there is none. */
  public XWindowPeer window() throws Exception {
    XController controller = controller();
    var frame = controller == null ? desktop().getCurrentFrame() : controller.getFrame();
    return frame == null ? null : Uno.as(XWindowPeer.class, frame.getContainerWindow());
  }

  /** The address of a file of the extension. */
  public String shipped(String path) {
    String folder = PackageInformationProvider.get(context).getPackageLocation(EXTENSION);
    if (folder.isEmpty()) {
      throw new UserMessageException("The Set Power Sheets extension is incomplete: reinstall it.");
    }
    return folder + "/" + path;
  }
}
