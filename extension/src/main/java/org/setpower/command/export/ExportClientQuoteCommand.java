package org.setpower.command.export;

import static org.setpower.command.message.CommandMessages.say;

import com.sun.star.frame.XComponentLoader;
import com.sun.star.frame.XStorable;
import com.sun.star.lang.XComponent;
import com.sun.star.sheet.XCalculatable;
import com.sun.star.sheet.XPrintAreas;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCell;
import com.sun.star.text.XText;
import com.sun.star.ui.dialogs.XFolderPicker2;
import com.sun.star.uno.Exception;
import com.sun.star.util.XCloseable;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.setpower.command.Command;
import org.setpower.command.CommandContext;
import org.setpower.command.CommandRequest;
import org.setpower.command.FileStore;
import org.setpower.command.document.CalcDocument;
import org.setpower.command.document.UndoStep;
import org.setpower.command.message.UserMessageException;
import org.setpower.command.plan.PlanFile;
import org.setpower.plan.common.InputTable;
import org.setpower.plan.common.Messages;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.quote.QuoteFinding;
import org.setpower.plan.quote.QuotePlan;
import org.setpower.plan.quote.QuoteResults;
import org.setpower.plan.quote.QuoteResults.DocumentLine;
import org.setpower.plan.quote.QuoteResults.Letter;
import org.setpower.plan.quote.SentQuote;
import org.setpower.templates.layout.PlanLayout;
import org.setpower.ui.MessageBoxes;
import org.setpower.uno.Uno;

/**
 * Writes the client's pages of a quote as PDF and .xlsx: a new document with what the client may
 * see, never a copy of the desk's. It refuses while the quote may not be issued.
 */
public final class ExportClientQuoteCommand implements Command {
  private static final String TITLE = "Export client quote";
  private static final String LIST = "Top_document";
  private static final String CLOSING = "Top_closing";
  private static final String CHANGED =
      "This quote was exported with other content under the same number and revision. Fill in the"
          + " next Revision and what it replaces on Project.";
  private static final List<String> SUFFIXES = List.of("pdf", "xlsx");
  private static final Map<String, String> FILTERS =
      Map.of("pdf", "calc_pdf_Export", "xlsx", "Calc MS Excel 2007 XML");

  @Override
  public boolean isEnabled(CommandContext desk) throws Exception {
    return desk.hasBook() && quote(desk.book()).isPresent();
  }

  @Override
  public void runInteractive(CommandContext desk) throws Exception {
    PlanFile file = file(desk);
    String name = issued(file);
    if (isChanged(file)
        && !MessageBoxes.ask(desk, say(CHANGED) + "\n" + say("Export it all the same?"))) {
      return;
    }
    XFolderPicker2 picker =
        desk.service(XFolderPicker2.class, "com.sun.star.ui.dialogs.FolderPicker");
    picker.setTitle(String.join(" ", targets(name).values())); // what the folder is for
    String location = Uno.as(XStorable.class, desk.document()).getLocation();
    if (location != null && location.startsWith("file:")) {
      picker.setDisplayDirectory(location.replaceFirst("/[^/]*$", ""));
    }
    if (picker.execute() != 1) {
      return;
    }
    String to = picker.getDirectory().replaceFirst("/*$", "/") + encoded(name);
    FileStore files = new FileStore(desk);
    StringBuilder there = new StringBuilder();
    for (String target : targets(to).values()) {
      if (files.exists(target)) {
        there.append('\n').append(ExportValuesCommand.path(target));
      }
    }
    if (there.isEmpty() || MessageBoxes.ask(desk, say("Replace what is there?") + there)) {
      MessageBoxes.say(desk, write(desk, file, to));
    }
  }

  @Override
  public String runHeadless(CommandContext desk, CommandRequest order) throws Exception {
    PlanFile file = file(desk);
    String name = issued(file);
    if (!order.text("again", "").equals("yes") && isChanged(file)) {
      throw new UserMessageException("{} Nothing was written.", say(CHANGED));
    }
    String to = order.text("to");
    if (to.endsWith("/") || new FileStore(desk).access().isFolder(to)) {
      to = to.replaceFirst("/*$", "/") + encoded(name);
    }
    return write(desk, file, to);
  }

  private static Optional<PlanFile> quote(CalcDocument book) throws Exception {
    Optional<PlanFile> file = PlanFile.of(book).filter(f -> f.model() == QuotePlan.MODEL);
    return file.isPresent() && file.get().address(LIST) != null ? file : Optional.empty();
  }

  private static PlanFile file(CommandContext desk) throws Exception {
    return quote(desk.book())
        .orElseThrow(
            () -> new UserMessageException("This document is not a rental quote of Set Power."));
  }

  /** The name of the files; refuses where the quote may not be issued. */
  private static String issued(PlanFile file) throws Exception {
    if (!file.fault().isEmpty()) {
      throw new UserMessageException("{} Nothing was written.", file.fault());
    }
    PlanResult result = file.calculated();
    List<DocumentLine> lines = result.rows(QuoteResults.DOCUMENT);
    boolean mayIssue =
        result.faults().isEmpty()
            && Boolean.TRUE.equals(result.rows(QuoteResults.SUMMARY).get(0).mayIssue());
    if (!mayIssue) {
      Messages messages = Messages.in(file.locale().toLanguageTag());
      String why =
          lines.isEmpty()
              ? messages.sentences(result.faults(), file.locale())
              : messages.sentences(lines.get(0).reasons(), file.locale());
      throw new UserMessageException("{} Nothing was written.", why);
    }
    Letter letter = result.rows(QuoteResults.LETTER).get(0);
    String number = letter.quoteNumber() == null ? "" : " " + letter.quoteNumber();
    String revision = letter.quoteRevision() == null ? "" : "-" + letter.quoteRevision();
    return (Messages.in(file.locale().toLanguageTag()).text("Quote") + number + revision)
        .replaceAll("[\\p{Cntrl}\\\\/:*?\"<>|]+", "-");
  }

  private static String encoded(String name) {
    return Path.of(name).toUri().toString().replaceFirst(".*/", "");
  }

  private static Map<String, String> targets(String to) {
    Map<String, String> targets = new LinkedHashMap<>();
    SUFFIXES.forEach(s -> targets.put(s, to + "." + s));
    return targets;
  }

  private static String write(CommandContext desk, PlanFile file, String to) throws Exception {
    Uno.as(XCalculatable.class, desk.document()).calculate();
    PlanResult result = file.calculated();
    CellRangeAddress list = file.address(LIST);
    Map<Integer, String> kinds = new HashMap<>();
    int row = list.StartRow;
    for (DocumentLine line : result.rows(QuoteResults.DOCUMENT)) {
      kinds.put(++row, line.kind().word());
    }
    int decimals = result.rows(QuoteResults.SUMMARY).get(0).decimals();
    XSpreadsheet tab = desk.book().sheet(list.Sheet);
    CellRangeAddress[] printed = Uno.as(XPrintAreas.class, tab).getPrintAreas();
    XComponent made =
        Uno.as(XComponentLoader.class, desk.desktop())
            .loadComponentFromURL(
                "private:factory/scalc", "_blank", 0, Uno.properties(Uno.property("Hidden", true)));
    try {
      String title = ExportValuesCommand.path(to).replaceFirst(".*[/\\\\]", "");
      new ClientPage(desk, tab, new CalcDocument(made), kinds, decimals)
          .write(
              CalcDocument.name(tab),
              title,
              printed.length == 0 ? PlanLayout.FIRST_ROW : printed[0].StartRow,
              file.address(CLOSING).StartRow);
      store(desk, made, to);
      keep(desk, file);
    } finally {
      Uno.as(XCloseable.class, made).close(true);
    }
    return say("Written for the client:")
        + targets(to).values().stream()
            .map(t -> "\n" + ExportValuesCommand.path(t))
            .collect(Collectors.joining());
  }

  /** Whether the document was exported under this revision with other content. */
  private static boolean isChanged(PlanFile file) throws Exception {
    return file.calculated().rows(QuoteResults.ORDER).get(0).reasons().stream()
        .map(Finding::key)
        .anyMatch(k -> k == QuoteFinding.SENT_TOTAL || k == QuoteFinding.SENT_OTHER);
  }

  /** Writes into the order what was exported; who only reads the document keeps it as it is. */
  private static void keep(CommandContext desk, PlanFile file) throws Exception {
    Optional<SentQuote> sent = QuotePlan.sent(file.read());
    if (desk.mayWrite() && sent.isPresent()) {
      UndoStep.allOrNothing(
          desk.book(),
          TITLE,
          () -> {
            Uno.as(XText.class, cell(file, "sentRevision")).setString(sent.get().revision());
            cell(file, "sentTotal").setValue(sent.get().total().doubleValue());
            cell(file, "sentKey").setValue(sent.get().key());
          });
    }
  }

  private static XCell cell(PlanFile file, String key) throws Exception {
    InputTable<?> order =
        file.model().inputs().stream()
            .filter(t -> t.key().equals("order"))
            .findFirst()
            .orElseThrow();
    return file.typed(order, key).getCellByPosition(0, 0);
  }

  private static void store(CommandContext desk, XComponent made, String to) throws Exception {
    FileStore files = new FileStore(desk);
    Map<String, String> places = new LinkedHashMap<>();
    try {
      for (Map.Entry<String, String> target : targets(to).entrySet()) {
        String part = FileStore.part(target.getValue());
        places.put(part, target.getValue());
        try {
          Uno.as(XStorable.class, made)
              .storeToURL(
                  part, Uno.properties(Uno.property("FilterName", FILTERS.get(target.getKey()))));
        } catch (com.sun.star.io.IOException e) {
          throw FileStore.unwritable("." + target.getKey(), e);
        }
      }
      files.moveAll(places);
    } finally {
      for (String part : places.keySet()) {
        files.remove(part);
      }
    }
  }
}
