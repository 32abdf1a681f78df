package org.setpower.ui;

import static org.setpower.command.message.CommandMessages.say;

import com.sun.star.beans.PropertyValue;
import com.sun.star.container.XNameContainer;
import com.sun.star.lang.XMultiServiceFactory;
import com.sun.star.uno.Exception;
import org.setpower.uno.Uno;

/**
 * The parts of a window, of the office's own kinds, in its colours and fonts. A label stands before
 * what it labels, in the order of the tab key, so that a screen reader finds it; a tilde marks the
 * letter for the keyboard.
 */
public final class Form {
  private final Object model;
  private final int width;
  private short tabIndex;

  /** The model of a dialog or of a page, and its width. */
  public Form(Object model, int width) {
    this.model = model;
    this.width = width;
  }

  /** A part of the kind {@code Edit}, {@code ListBox} …; gives its model. */
  public Object add(
      String kind, String name, int x, int y, int wide, int high, PropertyValue... more)
      throws Exception {
    Object part =
        Uno.as(XMultiServiceFactory.class, model)
            .createInstance("com.sun.star.awt.UnoControl" + kind + "Model");
    Uno.set(part, "PositionX", x);
    Uno.set(part, "PositionY", y);
    Uno.set(part, "Width", wide);
    Uno.set(part, "Height", high);
    Uno.set(part, "TabIndex", tabIndex++);
    for (PropertyValue property : more) {
      Uno.set(part, property.Name, property.Value);
    }
    Uno.as(XNameContainer.class, model).insertByName(name, part);
    return part;
  }

  public void label(int x, int y, int wide, int high, String text) throws Exception {
    add(
        "FixedText",
        "label" + tabIndex,
        x,
        y,
        wide,
        high,
        Uno.property("Label", say(text)),
        Uno.property("MultiLine", high > Dialog.LINE));
  }

  /**
   * Text that labels nothing: a tilde in it, as of a folder, is no letter for the keyboard; gives
   * its model.
   */
  public Object text(int x, int y, int wide, int high, String text) throws Exception {
    return add(
        "FixedText",
        "text" + tabIndex,
        x,
        y,
        wide,
        high,
        Uno.property("Label", withoutKeys(text)),
        Uno.property("MultiLine", true),
        Uno.property("NoLabel", true));
  }

  /** Another text in the place of one. */
  public static void setText(Object text, String now) {
    try {
      Uno.set(text, "Label", withoutKeys(now));
    } catch (Exception e) {
      throw new IllegalStateException(e);
    }
  }

  private static String withoutKeys(String text) {
    return text.replace("~", "~~");
  }

  /** A line to type in. */
  public Object edit(String name, int x, int y, int wide, String text) throws Exception {
    return add("Edit", name, x, y, wide, Dialog.LINE, Uno.property("Text", text));
  }

  /** The model of a part. */
  Object model(String name) throws Exception {
    return Uno.as(XNameContainer.class, model).getByName(name);
  }

  public Object check(String name, int y, String label, boolean ticked) throws Exception {
    return add(
        "CheckBox",
        name,
        Dialog.GAP,
        y,
        width - 2 * Dialog.GAP,
        Dialog.LINE,
        Uno.property("Label", say(label)),
        Uno.property("State", (short) (ticked ? 1 : 0)));
  }

  public static boolean isTicked(Object check) throws Exception {
    return ((Short) Uno.get(check, "State")) == 1;
  }
}
