package org.setpower.command.update;

import static org.setpower.command.message.CommandMessages.say;

import com.sun.star.frame.XComponentLoader;
import com.sun.star.frame.XModel;
import com.sun.star.lang.XComponent;
import com.sun.star.uno.Exception;
import com.sun.star.util.XCloseable;
import java.util.List;
import org.setpower.command.Command;
import org.setpower.command.CommandContext;
import org.setpower.command.CommandRequest;
import org.setpower.command.bringin.BroughtSheet;
import org.setpower.command.document.CalcDocument;
import org.setpower.command.document.ReportSheet;
import org.setpower.command.message.UserMessageException;
import org.setpower.command.newfile.ShippedTemplates;
import org.setpower.command.plan.PlanFile;
import org.setpower.ui.MessageBoxes;
import org.setpower.uno.Uno;

/**
 * Opens a new file from the template of this version and takes over what is typed in an older one,
 * which stays as it is.
 */
public final class UpdateFileCommand implements Command {
  /** The sheet with what found no place. */
  public static final String SHEET = "Not taken over";

  @Override
  public void runInteractive(CommandContext desk) throws Exception {
    MessageBoxes.say(desk, update(desk, desk.book(), ""));
  }

  @Override
  public boolean isEnabled(CommandContext desk) throws Exception {
    return desk.hasBook() && PlanFile.of(desk.book()).isPresent();
  }

  /** Options: the address of an older file, else the active one; that of a template. */
  @Override
  public String runHeadless(CommandContext desk, CommandRequest order) throws Exception {
    String template = order.text("template", "");
    if (!order.has("file")) {
      return update(desk, desk.book(), template);
    }
    XComponent old = load(desk, order.text("file"), false);
    try {
      return update(desk, new CalcDocument(old), template);
    } finally {
      Uno.as(XCloseable.class, old).close(true);
    }
  }

  private static String update(CommandContext desk, CalcDocument book, String template)
      throws Exception {
    PlanFile old = plan(book);
    if (FileUpdate.isCurrent(old)) {
      return say("This file has the layout of this version: there is nothing to update.");
    }
    String url = template.isEmpty() ? template(desk, book) : template;
    XComponent document = load(desk, url, true);
    CalcDocument fresh = new CalcDocument(document);
    PlanFile plan = plan(fresh);
    if (plan.model() != old.model()) {
      throw new UserMessageException("The template of this version is one of another plan.");
    }
    FileUpdate update = FileUpdate.of(old, plan);
    BroughtSheet.copy(book, fresh);
    if (!update.lost().isEmpty()) {
      report(fresh, book, update.lost());
    }
    return said(update);
  }

  private static PlanFile plan(CalcDocument book) throws Exception {
    return PlanFile.of(book)
        .orElseThrow(
            () ->
                new UserMessageException(
                    "This file is not calculated by a plan: there is nothing to update."));
  }

  private static String said(FileUpdate update) {
    String copied = say("Cells taken over: {}. The older file was not changed.", update.copied());
    return update.lost().isEmpty()
        ? copied
        : copied
            + " "
            + say(
                "Cells not taken over as they are: {}. The sheet “{}” lists them.",
                update.lost().size(),
                say(SHEET));
  }

  private static void report(CalcDocument fresh, CalcDocument old, List<FileUpdate.Lost> lost)
      throws Exception {
    ReportSheet sheet = ReportSheet.named(fresh, SHEET, 45, 60, 40, 120);
    String title = Uno.as(XModel.class, old.document()).getURL();
    Object[][] rows = new Object[lost.size() + 2][];
    rows[0] = new Object[] {say("Not taken over from {}", title), "", "", ""};
    rows[1] = new Object[] {say("Cell"), say("Column"), say("Value"), say("Reason")};
    for (int i = 0; i < lost.size(); i++) {
      rows[i + 2] = lost.get(i).cells();
    }
    sheet.write(0, rows);
    sheet.bold(0, 1);
    sheet.bold(1, 4);
    sheet.wrap(3);
  }

  /** The shipped template that the file was made from, in its language. */
  private static String template(CommandContext desk, CalcDocument book) throws Exception {
    String origin = book.origin();
    String name = origin.replaceFirst(" [^ ]*$", "");
    String url = ShippedTemplates.template(desk, book.language(), name + ".ots");
    if (origin.isEmpty() || url.isEmpty()) {
      throw new UserMessageException("This version has no template for this file.");
    }
    return url;
  }

  /** A new document without a name, or an older file that nobody sees and nothing is written to. */
  private static XComponent load(CommandContext desk, String url, boolean asNew) throws Exception {
    XComponent document =
        Uno.as(XComponentLoader.class, desk.desktop())
            .loadComponentFromURL(
                url,
                "_blank",
                0,
                Uno.properties(
                    Uno.property("AsTemplate", asNew),
                    Uno.property("ReadOnly", !asNew),
                    Uno.property("Hidden", !asNew)));
    if (document == null) {
      throw new UserMessageException("The office could not open “{}”.", url);
    }
    return document;
  }
}
