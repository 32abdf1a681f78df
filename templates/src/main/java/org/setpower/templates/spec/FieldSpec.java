package org.setpower.templates.spec;

import org.setpower.text.MessageCatalog;

/** One cell with its label before it and its help behind it. */
public final class FieldSpec extends CellSpec<FieldSpec> {
  private Object initial;
  private boolean spoken;

  private FieldSpec(String heading, boolean input) {
    super(heading, input);
  }

  /** A cell to fill. */
  public static FieldSpec input(String heading) {
    return new FieldSpec(heading, true);
  }

  /** A cell that is worked out. */
  public static FieldSpec result(String heading, Formula formula) {
    return new FieldSpec(heading, false).formula(formula);
  }

  /** What stands in it when the template is new. */
  public FieldSpec is(Object value) {
    initial = value;
    return this;
  }

  /** What stands in it when the template is new, for people to read: in their language. */
  public FieldSpec says(String sentence) {
    spoken = true;
    return is(sentence);
  }

  public Object initial(MessageCatalog words) {
    return spoken ? words.of((String) initial) : initial;
  }

  @Override
  FieldSpec self() {
    return this;
  }

  @Override
  public String text(CellContext place) {
    return place.layout().address(this);
  }
}
