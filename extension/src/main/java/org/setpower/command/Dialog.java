package org.setpower.command;

import com.sun.star.awt.ActionEvent;
import com.sun.star.awt.PushButtonType;
import com.sun.star.awt.XActionListener;
import com.sun.star.awt.XButton;
import com.sun.star.awt.XControl;
import com.sun.star.awt.XControlContainer;
import com.sun.star.awt.XControlModel;
import com.sun.star.awt.XDialog;
import com.sun.star.awt.XToolkit;
import com.sun.star.awt.XWindow;
import com.sun.star.beans.PropertyValue;
import com.sun.star.container.XNameContainer;
import com.sun.star.lang.EventObject;
import com.sun.star.lang.XComponent;
import com.sun.star.lang.XMultiServiceFactory;
import com.sun.star.uno.Exception;

/**
 * A window made of the office's own parts, in its colours and fonts. Places and sizes are in the
 * unit of dialogs, which grows with the font. A label stands before what it labels, in the order of
 * the tab key, so that a screen reader finds it; a tilde marks the letter for the keyboard.
 */
final class Dialog implements AutoCloseable {
  /** The height of a line of controls. */
  static final int LINE = 14;

  /** The distance between controls, and to the border. */
  static final int GAP = 6;

  private static final short OK = 1;

  private final Desk desk;
  private final XControlModel model;
  private final XControl control;
  private final int width;
  private short tabIndex;

  Dialog(Desk desk, String title, int width, int height) throws Exception {
    this.desk = desk;
    this.width = width;
    model = desk.service(XControlModel.class, "com.sun.star.awt.UnoControlDialogModel");
    Uno.set(model, "Title", title);
    Uno.set(model, "PositionX", 60);
    Uno.set(model, "PositionY", 40);
    Uno.set(model, "Width", width);
    Uno.set(model, "Height", height);
    control = desk.service(XControl.class, "com.sun.star.awt.UnoControlDialog");
    control.setModel(model);
  }

  /** Where the last line of buttons stands. */
  static int buttonsAt(int height) {
    return height - LINE - GAP;
  }

  int inside() {
    return width - 2 * GAP;
  }

  /** A part of the kind {@code Edit}, {@code ListBox} …; gives its model. */
  Object add(String kind, String name, int x, int y, int wide, int high, PropertyValue... more)
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

  void label(int x, int y, int wide, int high, String text) throws Exception {
    add(
        "FixedText",
        "label" + tabIndex,
        x,
        y,
        wide,
        high,
        Uno.property("Label", text),
        Uno.property("MultiLine", high > LINE));
  }

  /** A line to type in. */
  Object edit(String name, int x, int y, int wide, String text) throws Exception {
    return add("Edit", name, x, y, wide, LINE, Uno.property("Text", text));
  }

  /** The model of a part. */
  Object model(String name) throws Exception {
    return Uno.as(XNameContainer.class, model).getByName(name);
  }

  Object check(String name, int y, String label, boolean ticked) throws Exception {
    return add(
        "CheckBox",
        name,
        GAP,
        y,
        inside(),
        LINE,
        Uno.property("Label", label),
        Uno.property("State", (short) (ticked ? 1 : 0)));
  }

  static boolean isTicked(Object check) throws Exception {
    return ((Short) Uno.get(check, "State")) == 1;
  }

  /** A button that ends the dialog: yes if {@code ok}. */
  void end(int x, int y, int wide, String label, boolean ok) throws Exception {
    add(
        "Button",
        ok ? "ok" : "cancel",
        x,
        y,
        wide,
        LINE,
        Uno.property("Label", label),
        Uno.property("DefaultButton", ok),
        Uno.property(
            "PushButtonType", (short) (ok ? PushButtonType.OK : PushButtonType.CANCEL).getValue()));
  }

  /** A button that does something while the dialog stays. */
  void button(String name, int x, int y, int wide, String label, Runnable action) throws Exception {
    add("Button", name, x, y, wide, LINE, Uno.property("Label", label));
    Uno.as(XButton.class, part(name))
        .addActionListener(
            new XActionListener() {
              @Override
              public void actionPerformed(ActionEvent event) {
                action.run();
              }

              @Override
              public void disposing(EventObject source) {
                // goes with the dialog
              }
            });
  }

  XControl part(String name) {
    return Uno.as(XControlContainer.class, control).getControl(name);
  }

  /** Shows it until it is ended; whether it was with yes. */
  boolean show() throws Exception {
    Uno.as(XWindow.class, control).setVisible(false);
    control.createPeer(desk.service(XToolkit.class, "com.sun.star.awt.Toolkit"), desk.window());
    return Uno.as(XDialog.class, control).execute() == OK;
  }

  /** Ends it from outside. */
  void end() {
    Uno.as(XDialog.class, control).endExecute();
  }

  @Override
  public void close() {
    Uno.as(XComponent.class, control).dispose();
  }
}
