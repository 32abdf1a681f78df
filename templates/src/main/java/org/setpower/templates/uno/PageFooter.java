package org.setpower.templates.uno;

import com.sun.star.lang.XMultiServiceFactory;
import com.sun.star.sheet.XHeaderFooterContent;
import com.sun.star.text.XText;
import com.sun.star.text.XTextContent;
import org.setpower.templates.spec.CellStyle;

/**
 * The line at the foot of each printed page: document, sheet and page. The date stands at its head:
 * here LibreOffice writes it in the figures of the office's country, whatever format is asked for.
 */
final class PageFooter {
  private static final String FIELD = "com.sun.star.text.TextField.";

  private final Object document;
  private final Object page;

  PageFooter(Object document, Object page) {
    this.document = document;
    this.page = page;
  }

  void write() {
    XHeaderFooterContent content =
        UnoAccess.as(XHeaderFooterContent.class, UnoAccess.get(page, "RightPageFooterContent"));
    fill(content.getLeftText(), FIELD + "DocInfo.Title");
    fill(content.getCenterText(), FIELD + "SheetName");
    fill(content.getRightText(), FIELD + "PageNumber", " / ", FIELD + "PageCount");
    UnoAccess.set(page, "RightPageFooterContent", content);
  }

  /** Only the number of the page. */
  void number() {
    XHeaderFooterContent content =
        UnoAccess.as(XHeaderFooterContent.class, UnoAccess.get(page, "RightPageFooterContent"));
    content.getLeftText().setString("");
    content.getCenterText().setString("");
    fill(content.getRightText(), FIELD + "PageNumber");
    UnoAccess.set(page, "RightPageFooterContent", content);
  }

  private void fill(XText text, String... pieces) {
    text.setString("");
    for (String piece : pieces) {
      var end = text.createTextCursor();
      end.gotoEnd(false);
      UnoAccess.set(end, "CharHeight", 8f);
      UnoAccess.set(end, "CharFontName", CellStyle.FONT);
      if (piece.startsWith(FIELD)) {
        Object field =
            UnoAccess.ask(
                () -> UnoAccess.as(XMultiServiceFactory.class, document).createInstance(piece));
        UnoAccess.tell(
            () -> text.insertTextContent(end, UnoAccess.as(XTextContent.class, field), false));
      } else {
        text.insertString(end, piece, false);
      }
    }
  }
}
