package org.setpower.command.newfile;

import static org.setpower.command.message.CommandMessages.say;

import com.sun.star.container.XIndexAccess;
import com.sun.star.document.XEmbeddedObjectSupplier;
import com.sun.star.document.XUndoManagerSupplier;
import com.sun.star.frame.XComponentLoader;
import com.sun.star.lang.XComponent;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.table.XTableChartsSupplier;
import com.sun.star.uno.Exception;
import com.sun.star.util.XModifiable;
import java.util.List;
import org.setpower.command.Command;
import org.setpower.command.CommandContext;
import org.setpower.command.CommandRequest;
import org.setpower.command.document.CalcDocument;
import org.setpower.command.message.UserMessageException;
import org.setpower.command.print.PageFormat;
import org.setpower.command.settings.Setting;
import org.setpower.command.settings.UserSettings;
import org.setpower.ui.Dialog;
import org.setpower.ui.Form;
import org.setpower.uno.Uno;

/** A new document from one of the shipped sheets, with the user's settings filled in. */
public final class NewFileCommand implements Command {
  private static final String TITLE = "New sheet";
  private static final int WIDTH = 240;
  private static final int HEIGHT = 200;
  private static final int PURPOSE = 34;

  @Override
  public void runInteractive(CommandContext desk) throws Exception {
    List<ShippedTemplates.Item> items = ShippedTemplates.of(desk);
    int chosen = ask(desk, items);
    if (chosen >= 0) {
      open(desk, items.get(chosen));
    }
  }

  @Override
  public String runHeadless(CommandContext desk, CommandRequest order) throws Exception {
    List<ShippedTemplates.Item> items = ShippedTemplates.of(desk);
    if (!order.has("title")) {
      return String.join("\n", items.stream().map(ShippedTemplates.Item::title).toList());
    }
    String title = order.text("title");
    for (ShippedTemplates.Item item : items) {
      if (item.title().equals(title)) {
        open(desk, item);
        return title;
      }
    }
    throw new UserMessageException("There is no sheet “{}”.", title);
  }

  private static int ask(CommandContext desk, List<ShippedTemplates.Item> items) throws Exception {
    try (Dialog dialog = new Dialog(desk, TITLE, WIDTH, HEIGHT)) {
      dialog.form().label(Dialog.GAP, Dialog.GAP, dialog.inside(), 10, "~Start from");
      int bottom = Dialog.buttonsAt(HEIGHT);
      int below = bottom - PURPOSE - Dialog.GAP;
      Object list =
          dialog
              .form()
              .add(
                  "ListBox",
                  "list",
                  Dialog.GAP,
                  18,
                  dialog.inside(),
                  below - 18 - Dialog.GAP,
                  Uno.property(
                      "StringItemList",
                      items.stream().map(NewFileCommand::line).toArray(String[]::new)),
                  Uno.property("SelectedItems", new short[] {0}));
      Object purpose =
          dialog.form().text(Dialog.GAP, below, dialog.inside(), PURPOSE, purpose(items.get(0)));
      dialog.listens("list", i -> Form.setText(purpose, purpose(items.get(i))));
      dialog.end(WIDTH - 2 * Dialog.GAP - 120, bottom, 60, "C~reate", true, true);
      dialog.end(WIDTH - Dialog.GAP - 60, bottom, 60, "~Cancel", false, false);
      short[] chosen = dialog.show() ? (short[]) Uno.get(list, "SelectedItems") : new short[0];
      return chosen.length == 0 ? -1 : chosen[0];
    }
  }

  private static String line(ShippedTemplates.Item item) {
    return item.isEmpty() ? item.title() : say("Example: {}", item.title());
  }

  private static String purpose(ShippedTemplates.Item item) {
    return item.isEmpty()
        ? item.purpose()
        : say("Filled in for an invented production, to look at and to change.");
  }

  /** As a new document without a name, so that what is shipped stays as it is. */
  private static void open(CommandContext desk, ShippedTemplates.Item item) throws Exception {
    XComponent document = load(desk, item);
    if (document == null) {
      throw new UserMessageException(
          "Cannot open “{}”: its file is damaged. Reinstall the extension.", item.title());
    }
    if (item.isEmpty()) {
      UserSettings settings = new UserSettings(desk);
      settings.fill(new CalcDocument(document));
      PageFormat.of(new CalcDocument(document));
      boolean isShown = HouseLogo.place(desk, document, settings.get(Setting.HOUSE_LOGO));
      Uno.as(XUndoManagerSupplier.class, document).getUndoManager().clear();
      unchanged(document);
      if (!isShown) {
        throw new UserMessageException(
            "The logo “{}” cannot be read. Choose another file under Set Power ▸ Settings….",
            settings.get(Setting.HOUSE_LOGO));
      }
    }
  }

  /** Null if it cannot be read. */
  private static XComponent load(CommandContext desk, ShippedTemplates.Item item) throws Exception {
    try {
      return Uno.as(XComponentLoader.class, desk.desktop())
          .loadComponentFromURL(
              item.url(), "_blank", 0, Uno.properties(Uno.property("AsTemplate", true)));
    } catch (com.sun.star.io.IOException | com.sun.star.lang.IllegalArgumentException damaged) {
      return null;
    }
  }

  /**
   * Closing an empty new file must not ask to save it. A chart that is drawn later still makes the
   * office ask.
   */
  private static void unchanged(XComponent document) throws Exception {
    for (XSpreadsheet sheet : new CalcDocument(document).all()) {
      XIndexAccess charts =
          Uno.as(XIndexAccess.class, Uno.as(XTableChartsSupplier.class, sheet).getCharts());
      for (int i = 0; i < charts.getCount(); i++) {
        Object chart =
            Uno.as(XEmbeddedObjectSupplier.class, charts.getByIndex(i)).getEmbeddedObject();
        Uno.as(XModifiable.class, chart).setModified(false);
      }
    }
    Uno.as(XModifiable.class, document).setModified(false);
  }
}
