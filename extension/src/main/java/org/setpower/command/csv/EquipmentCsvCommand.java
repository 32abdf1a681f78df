package org.setpower.command.csv;

import static org.setpower.command.message.CommandMessages.say;

import com.sun.star.lang.XInitialization;
import com.sun.star.ui.dialogs.TemplateDescription;
import com.sun.star.ui.dialogs.XFilePicker3;
import com.sun.star.uno.Exception;
import java.util.List;
import java.util.Locale;
import org.setpower.command.Command;
import org.setpower.command.CommandContext;
import org.setpower.command.CommandRequest;
import org.setpower.command.FileStore;
import org.setpower.command.document.UndoStep;
import org.setpower.command.export.ExportValuesCommand;
import org.setpower.command.message.UserMessageException;
import org.setpower.ui.Dialog;
import org.setpower.ui.ErrorReporting;
import org.setpower.ui.Form;
import org.setpower.ui.MessageBoxes;
import org.setpower.ui.TextWindow;
import org.setpower.uno.Uno;

/**
 * Exports the lists of the sheet Kit as CSV and imports them, so that a rental house keeps one list
 * for all files.
 */
public final class EquipmentCsvCommand implements Command {
  private static final String TITLE = "Equipment list (CSV)";
  private static final int WIDTH = 260;
  private static final int HEIGHT = 144;

  @Override
  public void runInteractive(CommandContext desk) throws Exception {
    List<EquipmentTable> tables = EquipmentTable.of(desk.book());
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
                  "StringItemList",
                  tables.stream().map(EquipmentTable::title).toArray(String[]::new)),
              Uno.property("SelectedItems", new short[] {0}));
      dialog.button(
          "write",
          Dialog.GAP,
          bottom,
          84,
          "~Write file…",
          ErrorReporting.in(desk, () -> writeOpenly(desk, tables.get(chosen(list)))));
      dialog.button(
          "read",
          2 * Dialog.GAP + 84,
          bottom,
          84,
          "~Read file…",
          ErrorReporting.in(desk, () -> readOpenly(desk, tables)));
      dialog.end(WIDTH - Dialog.GAP - 60, bottom, 60, "C~lose", false, true);
      dialog.show();
    }
  }

  @Override
  public boolean isEnabled(CommandContext desk) throws Exception {
    return desk.mayWrite() && EquipmentTable.areIn(desk.book());
  }

  private static int chosen(Object list) throws Exception {
    short[] selected = (short[]) Uno.get(list, "SelectedItems");
    if (selected.length == 0) {
      throw new UserMessageException("Choose a list first.");
    }
    return selected[0];
  }

  @Override
  public String runHeadless(CommandContext desk, CommandRequest order) throws Exception {
    List<EquipmentTable> tables = EquipmentTable.of(desk.book());
    if (order.has("read")) {
      EquipmentCsvImport reading = reading(desk, tables, order.text("read"));
      take(desk, reading);
      return reading.report();
    }
    String title = order.text("list");
    for (EquipmentTable table : tables) {
      if (table.title().equals(title)) {
        return write(desk, table, order.text("write"));
      }
    }
    throw new UserMessageException("There is no list “{}” on the sheet {}.", title, say("Kit"));
  }

  private static void writeOpenly(CommandContext desk, EquipmentTable table) throws Exception {
    String name = "kit-" + table.title().toLowerCase(Locale.ROOT).replaceAll("\\W+", "-") + ".csv";
    String url = pick(desk, TemplateDescription.FILESAVE_AUTOEXTENSION, name);
    if (url != null) {
      MessageBoxes.say(desk, write(desk, table, url));
    }
  }

  private static void readOpenly(CommandContext desk, List<EquipmentTable> tables)
      throws Exception {
    String url = pick(desk, TemplateDescription.FILEOPEN_SIMPLE, "");
    if (url == null) {
      return;
    }
    EquipmentCsvImport reading = reading(desk, tables, url);
    String action = reading.isUseful() ? "~Import valid rows" : "";
    if (TextWindow.show(desk, TITLE, "What the ~file holds", reading.report(), action)) {
      take(desk, reading);
    }
  }

  private static String pick(CommandContext desk, short kind, String name) throws Exception {
    XFilePicker3 picker = desk.service(XFilePicker3.class, "com.sun.star.ui.dialogs.FilePicker");
    Uno.as(XInitialization.class, picker).initialize(new Object[] {kind});
    picker.appendFilter("CSV (*.csv)", "*.csv");
    if (!name.isEmpty()) {
      picker.setDefaultName(name);
    }
    return picker.execute() == 1 ? picker.getFiles()[0] : null;
  }

  private static String write(CommandContext desk, EquipmentTable table, String url)
      throws Exception {
    List<Object[]> rows = table.rows();
    new FileStore(desk).write(url, CsvText.write(table.headings(), rows));
    return say(
        "{} rows of {} written:\n{}", rows.size(), table.title(), ExportValuesCommand.path(url));
  }

  private static EquipmentCsvImport reading(
      CommandContext desk, List<EquipmentTable> tables, String url) throws Exception {
    FileStore files = new FileStore(desk);
    if (!files.exists(url)) {
      throw new UserMessageException("There is no file {}.", ExportValuesCommand.path(url));
    }
    return EquipmentCsvImport.of(CsvText.read(files.read(url)), tables, CsvHeadings.shipped(desk));
  }

  private static void take(CommandContext desk, EquipmentCsvImport reading) throws Exception {
    if (reading.isUseful()) {
      UndoStep.in(desk.book(), TITLE, reading::write);
    }
  }
}
