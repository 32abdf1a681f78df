package org.setpower.templates;

/** One cell with its label before it and its help behind it. */
public final class Field extends Item<Field> {
  private Object initial;

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

  Object initial() {
    return initial;
  }

  @Override
  Field self() {
    return this;
  }

  @Override
  public String text(Layout.Place place) {
    return place.layout().address(this);
  }
}
