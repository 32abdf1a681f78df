package org.setpower.templates;

import org.setpower.sheet.Words;

/** Asks for every text that a drawing writes, to see which are translated. */
public final class Texts {
  private final Layout layout;
  private final Words words;

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

  /** Asks these words for all texts of a template. */
  static void ask(Template template, Words words) {
    words.of(template.title());
    Texts texts = new Texts(template, words);
    template.tabs().forEach(texts::ask);
    template.stamp().text(texts.layout.place());
    Drawing.missing(texts.layout);
  }

  private void ask(Tab tab) {
    layout.name(tab);
    words.of(tab.title());
    words.of(tab.lead());
    for (Block block : tab.blocks()) {
      words.of(block.title());
      if (block instanceof Fields f) {
        f.fields().forEach(this::ask);
      } else if (block instanceof Rows r) {
        ask(r);
      } else if (block instanceof Figures f) {
        f.figures().forEach(this::ask);
      } else if (block instanceof Lines l) {
        l.lines().forEach(line -> line.text(layout.place()));
      } else if (block instanceof BarChart c) {
        words.of(c.axis());
      } else if (block instanceof Grid g) {
        g.formula().text(layout.place());
      }
    }
  }

  private void ask(Figure figure) {
    words.of(figure.label());
    figure.value().text(layout.place());
    figure.note().text(layout.place());
  }

  private void ask(Rows rows) {
    Layout.Place place = layout.place(rows);
    for (Column column : rows.columns()) {
      ask(column, place);
      if (!column.isInput() && rows instanceof Table) {
        Table.guarded(column, place);
      }
    }
    if (rows instanceof Answers answers) {
      answers.stateText("0", place);
    } else if (rows instanceof Table table) {
      Filling.ask(table, words);
    }
  }

  private void ask(Field field) {
    ask(field, layout.place());
    if (!field.isInput()) {
      field.formula().text(layout.place());
    }
  }

  private void ask(Item<?> item, Layout.Place place) {
    if (!(item instanceof Column c && c.isWorking())) {
      item.headingText(place);
    }
    if (item.isInput()) {
      item.error(words);
    }
    words.of(item.help());
  }
}
