package org.setpower.command.issues;

import static org.setpower.command.message.CommandMessages.say;

import com.sun.star.uno.Exception;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import org.setpower.command.Command;
import org.setpower.command.CommandContext;
import org.setpower.command.CommandRequest;
import org.setpower.command.document.CalcDocument;
import org.setpower.command.document.ReportSheet;
import org.setpower.command.document.UndoStep;
import org.setpower.ui.MessageBoxes;

/** Lists the open issues in a sheet of its own, which each call writes again. */
public final class ListIssuesCommand implements Command {
  public static final String SHEET = "Open issues";

  private static final String TITLE = "List open issues";
  private static final int MOST = 2_000;
  private static final int FIRST_ROW = 3;

  @Override
  public void runInteractive(CommandContext desk) throws Exception {
    MessageBoxes.say(desk, list(desk));
  }

  @Override
  public boolean isEnabled(CommandContext desk) {
    return desk.mayWrite();
  }

  @Override
  public String runHeadless(CommandContext desk, CommandRequest order) throws Exception {
    return list(desk);
  }

  private static String list(CommandContext desk) throws Exception {
    CalcDocument book = desk.book();
    List<Issue> found = IssueFinder.in(book);
    String sentence = sentence(found);
    UndoStep.in(
        book,
        TITLE,
        () -> {
          ReportSheet sheet = ReportSheet.named(book, SHEET, 18, 40, 60, 150);
          sheet.clear();
          write(sheet, found, sentence);
          sheet.show(desk.controller());
        });
    return sentence;
  }

  private static String sentence(List<Issue> found) {
    if (found.isEmpty()) {
      return say(
          "No open issues: no Set Power function returns an error, no row has the status stop or check.");
    }
    return say(
        "Stop: {}; error: {}; check: {}. Sheet “{}” lists them with reason and link.",
        count(found, Issue.Kind.STOP),
        count(found, Issue.Kind.ERROR),
        count(found, Issue.Kind.CHECK),
        say(SHEET));
  }

  private static long count(List<Issue> found, Issue.Kind kind) {
    return found.stream().filter(f -> f.kind() == kind).count();
  }

  private static void write(ReportSheet sheet, List<Issue> found, String sentence)
      throws Exception {
    String now = LocalDateTime.now().format(DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm"));
    sheet.write(
        0,
        new Object[] {sentence},
        new Object[] {say("As of {}. Call the command again after changes.", now)});
    sheet.bold(0, 1);
    if (found.isEmpty()) {
      return;
    }
    List<Issue> shown = found.subList(0, Math.min(MOST, found.size()));
    Object[][] rows = new Object[shown.size() + 1][];
    rows[0] =
        new Object[] {say("What"), say("Where (Ctrl+click)"), say("Row"), say("Reason / action")};
    for (int i = 0; i < shown.size(); i++) {
      Issue f = shown.get(i);
      rows[i + 1] = new Object[] {f.kind().word(), "", f.row(), f.reason()};
    }
    sheet.write(FIRST_ROW, rows);
    sheet.bold(FIRST_ROW, 4);
    sheet.wrap(2);
    sheet.wrap(3);
    for (int i = 0; i < shown.size(); i++) {
      Issue f = shown.get(i);
      sheet.link(1, FIRST_ROW + 1 + i, f.sheet(), CalcDocument.address(f.at()));
    }
    if (shown.size() < found.size()) {
      sheet.write(
          FIRST_ROW + 2 + shown.size(),
          new Object[] {say("… and {} more.", found.size() - shown.size())});
    }
  }
}
