package org.setpower.templates;

import org.setpower.templates.layout.Layout;
import org.setpower.templates.spec.ArrayResult;
import org.setpower.templates.spec.BarChart;
import org.setpower.templates.spec.Block;
import org.setpower.templates.spec.CellContext;
import org.setpower.templates.spec.CellSpec;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.FieldBlock;
import org.setpower.templates.spec.FieldSpec;
import org.setpower.templates.spec.IssueList;
import org.setpower.templates.spec.KeyFigure;
import org.setpower.templates.spec.KeyFigures;
import org.setpower.templates.spec.MatrixBlock;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableBase;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.spec.TextBlock;
import org.setpower.templates.spec.WorkbookSpec;
import org.setpower.templates.uno.ExampleLoader;
import org.setpower.templates.uno.WorkbookWriter;
import org.setpower.text.MessageCatalog;

/**
 * Everything that stands on the sheets of a template, as text: to see which texts are translated,
 * and whether a drawing is out of date.
 */
public final class TextCollector {
  private final Layout layout;
  private final MessageCatalog words;
  private final StringBuilder all = new StringBuilder();

  private TextCollector(WorkbookSpec template, MessageCatalog words) {
    this.words = words;
    layout = new Layout(template, words);
  }

  /** The words of a language, after all templates have asked for their texts. */
  static MessageCatalog asked(String language) {
    MessageCatalog words = MessageCatalog.in(language, MessageCatalog.Speaker.SHEETS);
    TemplateRegistry.all().forEach(w -> ask(w.template(), words));
    TemplateRegistry.plans().forEach(w -> PlanTextCollector.ask(w.workbook(), words));
    return words;
  }

  /** Argument: a language. Prints lines for its file: the texts that are missing. */
  public static void main(String[] arguments) {
    asked(arguments[0])
        .missing()
        .forEach(
            text -> System.out.println(MessageCatalog.entry(MessageCatalog.Speaker.SHEETS, text)));
  }

  /** Asks these words for all texts of a template; gives all that stands on it. */
  static String ask(WorkbookSpec template, MessageCatalog words) {
    TextCollector texts = new TextCollector(template, words);
    texts.note(template.fileName(), template.version(), words.of(template.title()));
    template.tabs().forEach(texts::ask);
    texts.note(
        template.stamp().text(texts.layout.place()),
        WorkbookWriter.missingExtensionNotice(texts.layout));
    texts.note(texts.layout.errorFirstNotice(), words.of(WorkbookWriter.LINE_IN_ERROR));
    texts.note(texts.layout.names(), texts.layout.shared());
    return texts.all.toString();
  }

  private void note(Object... what) {
    for (Object one : what) {
      all.append(one).append('\n');
    }
  }

  private void ask(SheetSpec tab) {
    note(layout.name(tab), words.of(tab.title()), words.of(tab.lead()), layout.widths(tab));
    note(tab.ink(), tab.isPortrait(), tab.isHidden(), tab.isGrid());
    if (!tab.isGrid()) {
      note(IssueList.first(IssueList.explained(tab)).text(layout.place()));
    }
    for (Block block : tab.blocks()) {
      note(words.of(block.title()), block.height(), tab.pages().contains(block));
      if (block instanceof FieldBlock f) {
        f.fields().forEach(this::ask);
      } else if (block instanceof TableBase r) {
        ask(r);
      } else if (block instanceof KeyFigures f) {
        f.figures().forEach(this::ask);
      } else if (block instanceof TextBlock l) {
        note(l.style());
        l.lines().forEach(line -> note(line.text(layout.place())));
      } else if (block instanceof BarChart c) {
        note(words.of(c.axis()), c.lines(), c.categories());
        c.series().forEach(s -> note(s.all().text(layout.place())));
      } else if (block instanceof MatrixBlock g) {
        note(g.formula().text(layout.place()), g.rows(), g.columns());
      }
    }
  }

  private void ask(KeyFigure figure) {
    note(words.of(figure.label()), figure.format(), figure.value().text(layout.place()));
    note(figure.note().text(layout.place()));
  }

  private void ask(TableBase rows) {
    CellContext place = layout.place(rows);
    for (ColumnSpec column : rows.columns()) {
      ask(column, place);
      note(column.width(), column.isWorking());
      if (!column.isInput() && rows instanceof TableSpec) {
        note(TableSpec.guarded(column, place));
      }
    }
    if (rows instanceof ArrayResult answers) {
      note(answers.stateText("0", place), answers.arrayText("0", "A1:A1", place));
    } else if (rows instanceof TableSpec table) {
      note(table.linesPerRow(), ExampleLoader.ask(table, words));
    }
  }

  private void ask(FieldSpec field) {
    ask(field, layout.place());
    note(field.isInput() ? field.initial(words) : field.formula().text(layout.place()));
  }

  private void ask(CellSpec<?> item, CellContext place) {
    if (!(item instanceof ColumnSpec column)) {
      note(item.headingText(place));
    } else if (!column.isWorking()) {
      note(layout.headingText(column));
    }
    note(item.isInput() ? item.error(words) : "", words.of(item.help()), item.format());
    note(item.options(), item.wordsFrom() == null ? "" : item.wordsFrom().all().text(place));
  }
}
