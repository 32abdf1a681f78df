package org.setpower.templates.uno;

import com.sun.star.lang.XMultiServiceFactory;
import com.sun.star.sheet.XHeaderFooterContent;
import com.sun.star.text.XText;
import com.sun.star.text.XTextContent;
import org.setpower.templates.spec.Style;

/** The line at the foot of each printed page: document, sheet, page and date. */
final class Footer {
  private static final String FIELD = "com.sun.star.text.TextField.";

  private final Object document;
  private final Object page;

  Footer(Object document, Object page) {
    this.document = document;
    this.page = page;
  }

  void write() {
    XHeaderFooterContent content =
        Uno.as(XHeaderFooterContent.class, Uno.get(page, "RightPageFooterContent"));
    fill(content.getLeftText(), FIELD + "DocInfo.Title");
    fill(content.getCenterText(), FIELD + "SheetName");
    fill(
        content.getRightText(),
        FIELD + "PageNumber",
        " / ",
        FIELD + "PageCount",
        "  ·  ",
        FIELD + "DateTime");
    Uno.set(page, "RightPageFooterContent", content);
  }

  private void fill(XText text, String... pieces) {
    text.setString("");
    for (String piece : pieces) {
      var end = text.createTextCursor();
      end.gotoEnd(false);
      Uno.set(end, "CharHeight", 8f);
      Uno.set(end, "CharFontName", Style.FONT);
      if (piece.startsWith(FIELD)) {
        Object field =
            Uno.ask(() -> Uno.as(XMultiServiceFactory.class, document).createInstance(piece));
        if (piece.endsWith("DateTime")) {
          Uno.set(field, "IsDate", true);
        }
        Uno.tell(() -> text.insertTextContent(end, Uno.as(XTextContent.class, field), false));
      } else {
        text.insertString(end, piece, false);
      }
    }
  }
}
