package org.setpower.templates;

import org.setpower.templates.layout.Layout;
import org.setpower.templates.spec.Answers;
import org.setpower.templates.spec.BarChart;
import org.setpower.templates.spec.Block;
import org.setpower.templates.spec.CellContext;
import org.setpower.templates.spec.Column;
import org.setpower.templates.spec.Field;
import org.setpower.templates.spec.Fields;
import org.setpower.templates.spec.Figure;
import org.setpower.templates.spec.Figures;
import org.setpower.templates.spec.Findings;
import org.setpower.templates.spec.Grid;
import org.setpower.templates.spec.Item;
import org.setpower.templates.spec.Lines;
import org.setpower.templates.spec.Rows;
import org.setpower.templates.spec.Tab;
import org.setpower.templates.spec.Table;
import org.setpower.templates.spec.Template;
import org.setpower.templates.uno.Drawing;
import org.setpower.templates.uno.Filling;
import org.setpower.text.Words;

/**
 * Everything that stands on the sheets of a template, as text: to see which texts are translated,
 * and whether a drawing is out of date.
 */
public final class Texts {
  private final Layout layout;
  private final Words words;
  private final StringBuilder all = new StringBuilder();

  private Texts(Template template, Words words) {
    this.words = words;
    layout = new Layout(template, words);
  }

  /** The words of a language, after all templates have asked for their texts. */
  static Words asked(String language) {
    Words words = Words.in(language, Texts.class);
    Shelf.all().forEach(w -> ask(w.template(), words));
    return words;
  }

  /** Argument: a language. Prints lines for its file: the texts that are missing. */
  public static void main(String[] arguments) {
    asked(arguments[0]).missing().forEach(text -> System.out.println(Words.line(text, "")));
  }

  /** Asks these words for all texts of a template; gives all that stands on it. */
  static String ask(Template template, Words words) {
    Texts texts = new Texts(template, words);
    texts.note(template.fileName(), template.version(), words.of(template.title()));
    template.tabs().forEach(texts::ask);
    texts.note(template.stamp().text(texts.layout.place()), Drawing.missing(texts.layout));
    texts.note(texts.layout.mendFirst(), words.of(Drawing.LINE_IN_ERROR));
    texts.note(texts.layout.names(), texts.layout.shared());
    return texts.all.toString();
  }

  private void note(Object... what) {
    for (Object one : what) {
      all.append(one).append('\n');
    }
  }

  private void ask(Tab tab) {
    note(layout.name(tab), words.of(tab.title()), words.of(tab.lead()), layout.widths(tab));
    note(tab.ink(), tab.isPortrait(), tab.isHidden(), tab.isGrid());
    if (!tab.isGrid()) {
      note(Findings.first(Findings.explained(tab)).text(layout.place()));
    }
    for (Block block : tab.blocks()) {
      note(words.of(block.title()), block.height(), tab.pages().contains(block));
      if (block instanceof Fields f) {
        f.fields().forEach(this::ask);
      } else if (block instanceof Rows r) {
        ask(r);
      } else if (block instanceof Figures f) {
        f.figures().forEach(this::ask);
      } else if (block instanceof Lines l) {
        note(l.style());
        l.lines().forEach(line -> note(line.text(layout.place())));
      } else if (block instanceof BarChart c) {
        note(words.of(c.axis()), c.lines(), c.categories());
        c.series().forEach(s -> note(s.all().text(layout.place())));
      } else if (block instanceof Grid g) {
        note(g.formula().text(layout.place()), g.rows(), g.columns());
      }
    }
  }

  private void ask(Figure figure) {
    note(words.of(figure.label()), figure.format(), figure.value().text(layout.place()));
    note(figure.note().text(layout.place()));
  }

  private void ask(Rows rows) {
    CellContext place = layout.place(rows);
    for (Column column : rows.columns()) {
      ask(column, place);
      note(column.width(), column.isWorking());
      if (!column.isInput() && rows instanceof Table) {
        note(Table.guarded(column, place));
      }
    }
    if (rows instanceof Answers answers) {
      note(answers.stateText("0", place), answers.arrayText("0", "A1:A1", place));
    } else if (rows instanceof Table table) {
      note(table.lines(), Filling.ask(table, words));
    }
  }

  private void ask(Field field) {
    ask(field, layout.place());
    note(field.isInput() ? field.initial(words) : field.formula().text(layout.place()));
  }

  private void ask(Item<?> item, CellContext place) {
    if (!(item instanceof Column column)) {
      note(item.headingText(place));
    } else if (!column.isWorking()) {
      note(layout.headingText(column));
    }
    note(item.isInput() ? item.error(words) : "", words.of(item.help()), item.format());
    note(item.words(), item.wordsFrom() == null ? "" : item.wordsFrom().all().text(place));
  }
}
