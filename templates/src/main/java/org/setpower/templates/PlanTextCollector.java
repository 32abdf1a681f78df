package org.setpower.templates;

import java.util.stream.Stream;
import org.setpower.plan.common.InputColumn;
import org.setpower.templates.layout.PlanLayout;
import org.setpower.templates.plan.InputCells;
import org.setpower.templates.plan.PlanChart;
import org.setpower.templates.plan.PlanFields;
import org.setpower.templates.plan.PlanFigures;
import org.setpower.templates.plan.PlanLetter;
import org.setpower.templates.plan.PlanList;
import org.setpower.templates.plan.PlanNotes;
import org.setpower.templates.plan.PlanPart;
import org.setpower.templates.plan.PlanTab;
import org.setpower.templates.plan.PlanTable;
import org.setpower.templates.plan.PlanText;
import org.setpower.templates.plan.PlanWorkbook;
import org.setpower.templates.spec.FieldSpec;
import org.setpower.templates.uno.PlanFiller;
import org.setpower.templates.uno.PlanWriter;
import org.setpower.text.MessageCatalog;

/**
 * Everything that stands on the tabs of a workbook, as text: to see which texts are translated, and
 * whether a drawing is out of date.
 */
public final class PlanTextCollector {
  private final MessageCatalog words;
  private final StringBuilder all = new StringBuilder();

  private PlanTextCollector(MessageCatalog words) {
    this.words = words;
  }

  /** The words of a language, after all templates have asked for their texts. */
  static MessageCatalog asked(String language) {
    MessageCatalog words = MessageCatalog.in(language, MessageCatalog.Speaker.SHEETS);
    TemplateRegistry.plans().forEach(w -> ask(w.workbook(), words));
    return words;
  }

  /** Argument: a language. Prints lines for its file: the texts that are missing. */
  public static void main(String[] arguments) {
    asked(arguments[0])
        .missing()
        .forEach(
            text -> System.out.println(MessageCatalog.entry(MessageCatalog.Speaker.SHEETS, text)));
  }

  /** Asks these words for all texts; gives all that stands on it. */
  static String ask(PlanWorkbook workbook, MessageCatalog words) {
    PlanTextCollector texts = new PlanTextCollector(words);
    PlanLayout layout = new PlanLayout(workbook, words);
    texts.note(workbook.fileName(), workbook.version(), layout.ranges(), layout.tops());
    texts.note(layout.names().answer(words.tag()), layout.formulas().all());
    PlanWriter.TEXTS.forEach(texts::say);
    texts.say(workbook.title());
    texts.say(workbook.purpose());
    for (PlanTab tab : workbook.tabs()) {
      texts.say(tab.name());
      texts.say(tab.lead());
      texts.note(tab.isHidden(), tab.isPage(), tab.isPaper(), layout.widths(tab));
      texts.note(tab.isUpright(), tab.isSent());
      if (tab.isFlowing()) {
        texts.note("flowing");
      }
      if (tab.printed() > 0) {
        texts.note(tab.printed());
      }
      for (PlanPart part : tab.parts()) {
        texts.say(part.title());
        texts.ask(part);
        if (part instanceof PlanTable table && !table.translated().isEmpty()) {
          PlanFiller.initial(workbook, table).forEach(l -> texts.say(l.get(table.translated())));
        }
        texts.columns(layout, part);
      }
    }
    return texts.all.toString();
  }

  private void note(Object... what) {
    Stream.of(what).forEach(one -> all.append(one).append('\n'));
  }

  private void say(String text) {
    note(words.of(text));
  }

  private void columns(PlanLayout layout, PlanPart part) {
    if (part instanceof PlanTable table) {
      layout.columns(table).forEach(c -> note(c.heading(), c.format(), c.grouped()));
    } else if (part instanceof PlanList list) {
      layout.columns(list).forEach(c -> note(c.heading(), c.format(), c.width()));
      note(list.kind(), list.looks());
    } else if (part instanceof PlanLetter letter) {
      note(letter.lines(), letter.labels(), letter.values());
    } else if (part instanceof PlanFigures figures) {
      figures.columns().stream()
          .map(layout.workbook()::result)
          .forEach(c -> note(layout.label(c), InputCells.format(c)));
    }
  }

  private void ask(PlanPart part) {
    if (part instanceof PlanTable table) {
      table.inputs().columns().forEach(this::ask);
    } else if (part instanceof PlanFields fields) {
      fields.columns().forEach(this::ask);
    } else if (part instanceof PlanNotes notes) {
      for (FieldSpec cell : notes.cells()) {
        say(cell.heading());
        say(cell.help());
        note(cell.error(words));
      }
    } else if (part instanceof PlanChart chart) {
      say(chart.axis());
      note(chart.rows(), chart.names(), chart.series());
    } else if (part instanceof PlanText text) {
      text.lines().forEach(this::say);
    }
  }

  private void ask(InputColumn column) {
    note(InputCells.help(column, words), InputCells.of(column).error(words));
  }
}
