package org.setpower.ui;

import com.sun.star.datatransfer.DataFlavor;
import com.sun.star.datatransfer.UnsupportedFlavorException;
import com.sun.star.datatransfer.XTransferable;
import com.sun.star.datatransfer.clipboard.XClipboard;
import com.sun.star.uno.Exception;
import com.sun.star.uno.Type;
import org.setpower.command.CommandContext;

/** Text on the clipboard. */
final class Clipboard {
  private static final String TEXT = "text/plain;charset=utf-16";

  private Clipboard() {}

  static void put(CommandContext desk, String text) throws Exception {
    desk.service(XClipboard.class, "com.sun.star.datatransfer.clipboard.SystemClipboard")
        .setContents(new Text(text), null);
  }

  private record Text(String text) implements XTransferable {
    @Override
    public Object getTransferData(DataFlavor flavor) throws UnsupportedFlavorException {
      if (!isDataFlavorSupported(flavor)) {
        throw new UnsupportedFlavorException();
      }
      return text;
    }

    @Override
    public DataFlavor[] getTransferDataFlavors() {
      return new DataFlavor[] {new DataFlavor(TEXT, "text", new Type(String.class))};
    }

    @Override
    public boolean isDataFlavorSupported(DataFlavor flavor) {
      return flavor.MimeType.startsWith("text/plain") && flavor.MimeType.contains("utf-16");
    }
  }
}
