package org.setpower.templates.spec;

import org.setpower.text.Words;

/** One cell with its label before it and its help behind it. */
public final class Field extends Item<Field> {
  private Object initial;
  private boolean spoken;

  private Field(String heading, boolean input) {
    super(heading, input);
  }

  /** A cell to fill. */
  public static Field input(String heading) {
    return new Field(heading, true);
  }

  /** A cell that is worked out. */
  public static Field result(String heading, Formula formula) {
    return new Field(heading, false).by(formula);
  }

  /** What stands in it when the template is new. */
  public Field is(Object value) {
    initial = value;
    return this;
  }

  /** What stands in it when the template is new, for people to read: in their language. */
  public Field says(String sentence) {
    spoken = true;
    return is(sentence);
  }

  public Object initial(Words words) {
    return spoken ? words.of((String) initial) : initial;
  }

  @Override
  Field self() {
    return this;
  }

  @Override
  public String text(CellContext place) {
    return place.layout().address(this);
  }
}
