package org.setpower.command.csv;

import static org.setpower.command.message.Say.say;

import com.sun.star.lang.XInitialization;
import com.sun.star.ui.dialogs.TemplateDescription;
import com.sun.star.ui.dialogs.XFilePicker3;
import com.sun.star.uno.Exception;
import java.util.List;
import java.util.Locale;
import org.setpower.command.Command;
import org.setpower.command.Desk;
import org.setpower.command.FileStore;
import org.setpower.command.Order;
import org.setpower.command.document.UndoStep;
import org.setpower.command.export.Copy;
import org.setpower.command.message.Sorry;
import org.setpower.ui.Boxes;
import org.setpower.ui.Dialog;
import org.setpower.ui.Form;
import org.setpower.ui.Safely;
import org.setpower.ui.TextWindow;
import org.setpower.uno.Uno;

/** Writes the lists of the sheet Kit as CSV and reads them, so that a house keeps one for all. */
public final class KitList implements Command {
  private static final String TITLE = "Kit list";
  private static final int WIDTH = 260;
  private static final int HEIGHT = 144;

  @Override
  public void openly(Desk desk) throws Exception {
    List<KitTable> tables = KitTable.of(desk.book());
    try (Dialog dialog = new Dialog(desk, TITLE, WIDTH, HEIGHT)) {
      Form form = dialog.form();
      form.label(
          Dialog.GAP,
          Dialog.GAP,
          dialog.inside(),
          28,
          "A list as a CSV file serves all your sheets. When a file is read, its headings tell"
              + " which list it is, and its rows replace those of the list.");
      form.label(Dialog.GAP, 40, dialog.inside(), 10, "List ~to write");
      int bottom = Dialog.buttonsAt(HEIGHT);
      Object list =
          form.add(
              "ListBox",
              "list",
              Dialog.GAP,
              52,
              dialog.inside(),
              bottom - 52 - Dialog.GAP,
              Uno.property(
                  "StringItemList", tables.stream().map(KitTable::title).toArray(String[]::new)),
              Uno.property("SelectedItems", new short[] {0}));
      dialog.button(
          "write",
          Dialog.GAP,
          bottom,
          84,
          "~Write file…",
          Safely.in(desk, () -> writeOpenly(desk, tables.get(chosen(list)))));
      dialog.button(
          "read",
          2 * Dialog.GAP + 84,
          bottom,
          84,
          "~Read file…",
          Safely.in(desk, () -> readOpenly(desk, tables)));
      dialog.end(WIDTH - Dialog.GAP - 60, bottom, 60, "C~lose", false, true);
      dialog.show();
    }
  }

  @Override
  public boolean makesSense(Desk desk) throws Exception {
    return desk.mayWrite() && KitTable.areIn(desk.book());
  }

  private static int chosen(Object list) throws Exception {
    short[] selected = (short[]) Uno.get(list, "SelectedItems");
    if (selected.length == 0) {
      throw new Sorry("Choose a list first.");
    }
    return selected[0];
  }

  @Override
  public String quietly(Desk desk, Order order) throws Exception {
    List<KitTable> tables = KitTable.of(desk.book());
    if (order.has("read")) {
      KitReading reading = reading(desk, tables, order.text("read"));
      take(desk, reading);
      return reading.report();
    }
    String title = order.text("list");
    for (KitTable table : tables) {
      if (table.title().equals(title)) {
        return write(desk, table, order.text("write"));
      }
    }
    throw new Sorry("There is no list “{}” on the sheet {}.", title, say("Kit"));
  }

  private static void writeOpenly(Desk desk, KitTable table) throws Exception {
    String name = "kit-" + table.title().toLowerCase(Locale.ROOT).replaceAll("\\W+", "-") + ".csv";
    String url = pick(desk, TemplateDescription.FILESAVE_AUTOEXTENSION, name);
    if (url != null) {
      Boxes.say(desk, write(desk, table, url));
    }
  }

  private static void readOpenly(Desk desk, List<KitTable> tables) throws Exception {
    String url = pick(desk, TemplateDescription.FILEOPEN_SIMPLE, "");
    if (url == null) {
      return;
    }
    KitReading reading = reading(desk, tables, url);
    String action = reading.isUseful() ? "~Take the good rows" : "";
    if (TextWindow.show(desk, TITLE, "What the ~file holds", reading.report(), action)) {
      take(desk, reading);
    }
  }

  private static String pick(Desk desk, short kind, String name) throws Exception {
    XFilePicker3 picker = desk.service(XFilePicker3.class, "com.sun.star.ui.dialogs.FilePicker");
    Uno.as(XInitialization.class, picker).initialize(new Object[] {kind});
    picker.appendFilter("CSV (*.csv)", "*.csv");
    if (!name.isEmpty()) {
      picker.setDefaultName(name);
    }
    return picker.execute() == 1 ? picker.getFiles()[0] : null;
  }

  private static String write(Desk desk, KitTable table, String url) throws Exception {
    List<Object[]> rows = table.rows();
    new FileStore(desk).write(url, CsvText.write(table.headings(), rows));
    return say("{} rows of {} written:\n{}", rows.size(), table.title(), Copy.path(url));
  }

  private static KitReading reading(Desk desk, List<KitTable> tables, String url) throws Exception {
    FileStore files = new FileStore(desk);
    if (!files.exists(url)) {
      throw new Sorry("There is no file {}.", Copy.path(url));
    }
    return KitReading.of(CsvText.read(files.read(url)), tables, KitHeadings.shipped(desk));
  }

  private static void take(Desk desk, KitReading reading) throws Exception {
    if (reading.isUseful()) {
      UndoStep.in(desk.book(), TITLE, reading::write);
    }
  }
}
