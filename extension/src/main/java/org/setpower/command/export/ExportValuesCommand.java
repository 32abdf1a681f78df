package org.setpower.command.export;

import static org.setpower.command.message.CommandMessages.plural;
import static org.setpower.command.message.CommandMessages.say;

import com.sun.star.awt.XTextComponent;
import com.sun.star.frame.XStorable;
import com.sun.star.system.SystemShellExecuteFlags;
import com.sun.star.system.XSystemShellExecute;
import com.sun.star.ui.dialogs.XFolderPicker2;
import com.sun.star.uno.Exception;
import com.sun.star.util.XStringSubstitution;
import java.net.URI;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.setpower.command.Command;
import org.setpower.command.CommandContext;
import org.setpower.command.CommandRequest;
import org.setpower.command.FileStore;
import org.setpower.command.document.JobCell;
import org.setpower.command.message.CommandCancelledException;
import org.setpower.command.message.Progress;
import org.setpower.command.message.UserMessageException;
import org.setpower.ui.Dialog;
import org.setpower.ui.ErrorReporting;
import org.setpower.ui.Form;
import org.setpower.ui.MessageBoxes;
import org.setpower.ui.ProgressWindow;
import org.setpower.uno.Uno;

/** Asks which copies without our formulas are wanted, and writes them. */
public final class ExportValuesCommand implements Command {
  private static final String TITLE = "Export values-only copy";
  private static final String WRITTEN = "Copy written";
  private static final int LINE_HEIGHT = 10;

  /** What of a folder's name fits in a line of that window. */
  private static final int LETTERS = 50;

  private static final int WIDTH = 280;
  private static final int HEIGHT = 250;

  @Override
  public void runInteractive(CommandContext desk) throws Exception {
    desk.book();
    Wanted wanted = ask(desk);
    if (wanted == null || !mayReplace(desk, wanted.targets)) {
      return;
    }
    int[] cells = new int[1];
    try {
      ProgressWindow.during(desk, TITLE, progress -> cells[0] = write(desk, wanted, progress));
    } catch (CommandCancelledException cancelled) {
      MessageBoxes.say(desk, cancelled.getMessage());
      return;
    }
    end(desk, sentence(wanted.targets, cells[0]), wanted.targets.values().iterator().next());
  }

  /** Says where the files are, and opens the first or its folder. */
  private static void end(CommandContext desk, String sentence, String file) throws Exception {
    int lines = sentence.lines().mapToInt(l -> 1 + l.length() / LETTERS).sum();
    int height = 42 + LINE_HEIGHT * lines;
    try (Dialog dialog = new Dialog(desk, WRITTEN, WIDTH, height)) {
      dialog.form().text(Dialog.GAP, Dialog.GAP, dialog.inside(), LINE_HEIGHT * lines, sentence);
      int bottom = Dialog.buttonsAt(height);
      dialog.end(WIDTH - Dialog.GAP - 60, bottom, 60, "C~lose", true, true);
      dialog.button(
          "open", Dialog.GAP, bottom, 60, "~Open", ErrorReporting.in(desk, () -> open(desk, file)));
      dialog.button(
          "folder",
          2 * Dialog.GAP + 60,
          bottom,
          80,
          "Open ~folder",
          ErrorReporting.in(desk, () -> open(desk, file.substring(0, file.lastIndexOf('/') + 1))));
      dialog.show();
    }
  }

  private static void open(CommandContext desk, String url) throws Exception {
    desk.service(XSystemShellExecute.class, "com.sun.star.system.SystemShellExecute")
        .execute(url, "", SystemShellExecuteFlags.URIS_ONLY);
  }

  @Override
  public boolean isEnabled(CommandContext desk) {
    return desk.hasBook();
  }

  @Override
  public String runHeadless(CommandContext desk, CommandRequest order) throws Exception {
    String to = order.text("to");
    if (to.endsWith("/") || new FileStore(desk).access().isFolder(to)) {
      Path name = Path.of(name(desk));
      to = to.replaceFirst("/*$", "/") + name.toUri().toString().replaceFirst(".*/", "");
    }
    Map<ValuesExport.Kind, String> targets = new EnumMap<>(ValuesExport.Kind.class);
    for (String format : order.text("formats").split(",")) {
      ValuesExport.Kind kind = kind(format);
      targets.put(kind, to + "." + kind.suffix());
    }
    Set<String> tabs = new LinkedHashSet<>();
    if (order.has("tabs")) {
      tabs.addAll(List.of(order.text("tabs").split(";")));
    }
    Wanted wanted = new Wanted(targets, tabs, order.has("working"));
    return sentence(targets, write(desk, wanted, Progress.NONE));
  }

  private record Wanted(
      Map<ValuesExport.Kind, String> targets, Set<String> tabs, boolean withWorking) {}

  private static int write(CommandContext desk, Wanted wanted, Progress progress) throws Exception {
    return new ValuesExport(
            desk.context(), desk.document(), wanted.tabs, wanted.withWorking, progress)
        .write(wanted.targets);
  }

  private static ValuesExport.Kind kind(String suffix) {
    for (ValuesExport.Kind kind : ValuesExport.Kind.values()) {
      if (kind.suffix().equals(suffix)) {
        return kind;
      }
    }
    throw new UserMessageException("“{}” is none of {}.", suffix, "ods, xlsx, pdf");
  }

  private static String sentence(Map<ValuesExport.Kind, String> targets, int cells) {
    return plural("Written, with {} cell as a value:", "Written, with {} cells as values:", cells)
        + "\n"
        + targets.values().stream()
            .map(ExportValuesCommand::path)
            .collect(Collectors.joining("\n"));
  }

  /** The address of a file as people write it. */
  public static String path(String url) {
    return url.startsWith("file:") ? Path.of(URI.create(url)).toString() : url;
  }

  private static Wanted ask(CommandContext desk) throws Exception {
    try (Dialog dialog = new Dialog(desk, TITLE, WIDTH, HEIGHT)) {
      dialog
          .form()
          .label(
              Dialog.GAP,
              Dialog.GAP,
              dialog.inside(),
              30,
              "For people without Set Power: all formulas become values and all cells are locked."
                  + " Hidden sheets, rows and columns are left out, and rows that a filter hides."
                  + " This document is not changed.");
      Map<ValuesExport.Kind, Object> checks = new LinkedHashMap<>();
      checks.put(
          ValuesExport.Kind.ODS,
          dialog.form().check("ods", 40, "~OpenDocument spreadsheet (.ods)", false));
      checks.put(
          ValuesExport.Kind.XLSX, dialog.form().check("xlsx", 56, "~Excel workbook (.xlsx)", true));
      checks.put(
          ValuesExport.Kind.PDF,
          dialog.form().check("pdf", 72, "~PDF, as it prints (.pdf)", false));
      Object working =
          dialog
              .form()
              .check("working", 88, "The ~working of each figure as a note in its cell", false);
      List<String> visible = ValuesExport.visible(desk.book());
      dialog.form().label(Dialog.GAP, 109, 48, 40, "~Sheets (Ctrl+click for several)");
      Object tabs =
          dialog
              .form()
              .add(
                  "ListBox",
                  "tabs",
                  56,
                  106,
                  WIDTH - 56 - Dialog.GAP,
                  62,
                  Uno.property("MultiSelection", true),
                  Uno.property("StringItemList", visible.toArray(String[]::new)),
                  Uno.property("SelectedItems", upTo(visible.size())));
      dialog.form().label(Dialog.GAP, 177, 48, 10, "~Folder");
      Object folder =
          dialog
              .form()
              .edit("folder", 56, 174, WIDTH - 56 - 2 * Dialog.GAP - 60, folder(desk).toString());
      dialog.button(
          "choose",
          WIDTH - Dialog.GAP - 60,
          174,
          60,
          "C~hoose…",
          ErrorReporting.in(desk, () -> choose(desk, dialog)));
      dialog.form().label(Dialog.GAP, 197, 48, 10, "~Name");
      Object name = dialog.form().edit("name", 56, 194, WIDTH - 56 - Dialog.GAP, name(desk));
      int bottom = Dialog.buttonsAt(HEIGHT);
      dialog.end(WIDTH - 2 * Dialog.GAP - 120, bottom, 60, "W~rite", true, true);
      dialog.end(WIDTH - Dialog.GAP - 60, bottom, 60, "~Cancel", false, false);
      if (!dialog.show()) {
        return null;
      }
      Set<String> chosen = new LinkedHashSet<>();
      for (short at : (short[]) Uno.get(tabs, "SelectedItems")) {
        chosen.add(visible.get(at));
      }
      return wanted(
          checks,
          chosen,
          Form.isTicked(working),
          (String) Uno.get(folder, "Text"),
          (String) Uno.get(name, "Text"));
    }
  }

  private static short[] upTo(int count) {
    short[] all = new short[count];
    for (short i = 0; i < count; i++) {
      all[i] = i;
    }
    return all;
  }

  private static Wanted wanted(
      Map<ValuesExport.Kind, Object> checks,
      Set<String> tabs,
      boolean withWorking,
      String folder,
      String name)
      throws Exception {
    Map<ValuesExport.Kind, String> targets = new EnumMap<>(ValuesExport.Kind.class);
    for (Map.Entry<ValuesExport.Kind, Object> check : checks.entrySet()) {
      if (Form.isTicked(check.getValue())) {
        Path file = Path.of(folder, name.strip() + "." + check.getKey().suffix());
        targets.put(check.getKey(), file.toUri().toString());
      }
    }
    if (targets.isEmpty() || name.isBlank()) {
      throw new UserMessageException(
          "Tick at least one kind of file and give it a name; nothing was written.");
    }
    if (tabs.isEmpty()) {
      throw new UserMessageException("Choose at least one sheet; nothing was written.");
    }
    return new Wanted(targets, tabs, withWorking);
  }

  /** Where the document lies; of a new one the user's folder. */
  private static Path folder(CommandContext desk) throws Exception {
    Path file = file(desk);
    if (file != null) {
      return file.getParent();
    }
    String work =
        desk.service(XStringSubstitution.class, "com.sun.star.util.PathSubstitution")
            .getSubstituteVariableValue("$(work)");
    return Path.of(URI.create(work));
  }

  private static Path file(CommandContext desk) {
    XStorable stored = Uno.as(XStorable.class, desk.document());
    return stored.hasLocation() && stored.getLocation().startsWith("file:")
        ? Path.of(URI.create(stored.getLocation()))
        : null;
  }

  /** The name of the job, else of the file. */
  private static String name(CommandContext desk) throws Exception {
    String job = JobCell.PRODUCTION.in(desk.book()).replaceAll("[\\p{Cntrl}\\\\/:*?\"<>|]+", " ");
    if (!job.isBlank()) {
      return say("{} values", job.strip());
    }
    Path file = file(desk);
    return say(
        "{} values",
        file == null ? "Set Power" : file.getFileName().toString().replaceFirst("\\.[^.]*$", ""));
  }

  private static void choose(CommandContext desk, Dialog dialog) throws Exception {
    XFolderPicker2 picker =
        desk.service(XFolderPicker2.class, "com.sun.star.ui.dialogs.FolderPicker");
    XTextComponent folder = Uno.as(XTextComponent.class, dialog.part("folder"));
    picker.setDisplayDirectory(Path.of(folder.getText()).toUri().toString());
    if (picker.execute() == 1) {
      folder.setText(path(picker.getDirectory()));
    }
  }

  private static boolean mayReplace(CommandContext desk, Map<ValuesExport.Kind, String> targets)
      throws Exception {
    FileStore files = new FileStore(desk);
    StringBuilder there = new StringBuilder();
    for (String target : targets.values()) {
      if (files.exists(target)) {
        there.append('\n').append(path(target));
      }
    }
    return there.isEmpty() || MessageBoxes.ask(desk, say("Replace what is there?") + there);
  }
}
