package org.setpower.ui;

import static org.setpower.command.message.CommandMessages.say;

import com.sun.star.awt.ActionEvent;
import com.sun.star.awt.ItemEvent;
import com.sun.star.awt.PushButtonType;
import com.sun.star.awt.XActionListener;
import com.sun.star.awt.XButton;
import com.sun.star.awt.XControl;
import com.sun.star.awt.XControlContainer;
import com.sun.star.awt.XControlModel;
import com.sun.star.awt.XDialog;
import com.sun.star.awt.XDialog2;
import com.sun.star.awt.XItemListener;
import com.sun.star.awt.XListBox;
import com.sun.star.awt.XToolkit;
import com.sun.star.awt.XWindow;
import com.sun.star.lang.EventObject;
import com.sun.star.lang.XComponent;
import com.sun.star.uno.Exception;
import java.util.function.IntConsumer;
import org.setpower.command.CommandContext;
import org.setpower.uno.Uno;

/**
 * A window with a {@link Form} and buttons. Places and sizes are in the unit of dialogs, which
 * grows with the font.
 */
public final class Dialog implements AutoCloseable {
  /** The height of a line of controls. */
  public static final int LINE = 14;

  /** The distance between controls, and to the border. */
  public static final int GAP = 6;

  private static final short OK = 1;

  private final CommandContext desk;
  private final XControlModel model;
  private final XControl control;
  private final int width;
  private final Form form;

  public Dialog(CommandContext desk, String title, int width, int height) throws Exception {
    this.desk = desk;
    this.width = width;
    model = desk.service(XControlModel.class, "com.sun.star.awt.UnoControlDialogModel");
    Uno.set(model, "Title", say(title));
    Uno.set(model, "PositionX", 60);
    Uno.set(model, "PositionY", 40);
    Uno.set(model, "Width", width);
    Uno.set(model, "Height", height);
    control = desk.service(XControl.class, "com.sun.star.awt.UnoControlDialog");
    control.setModel(model);
    form = new Form(model, width);
  }

  /** Where the last line of buttons stands. */
  public static int buttonsAt(int height) {
    return height - LINE - GAP;
  }

  public Form form() {
    return form;
  }

  public int inside() {
    return width - 2 * GAP;
  }

  /** A button that ends the dialog with yes, or with no; the enter key presses the usual one. */
  public void end(int x, int y, int wide, String label, boolean ok, boolean usual)
      throws Exception {
    form.add(
        "Button",
        ok ? "ok" : "cancel",
        x,
        y,
        wide,
        LINE,
        Uno.property("Label", say(label)),
        Uno.property("DefaultButton", usual),
        Uno.property(
            "PushButtonType", (short) (ok ? PushButtonType.OK : PushButtonType.CANCEL).getValue()));
  }

  /** A button that does something while the dialog stays. */
  public void button(String name, int x, int y, int wide, String label, Runnable action)
      throws Exception {
    form.add("Button", name, x, y, wide, LINE, Uno.property("Label", say(label)));
    Uno.as(XButton.class, part(name)).addActionListener(action(action));
  }

  private static XActionListener action(Runnable action) {
    return new XActionListener() {
      @Override
      public void actionPerformed(ActionEvent event) {
        action.run();
      }

      @Override
      public void disposing(EventObject source) {
        // goes with the dialog
      }
    };
  }

  /** Follows what is chosen in a list; a double click there ends the dialog with yes. */
  public void listens(String list, IntConsumer chosen) {
    XListBox box = Uno.as(XListBox.class, part(list));
    box.addItemListener(
        new XItemListener() {
          @Override
          public void itemStateChanged(ItemEvent event) {
            if (event.Selected >= 0) {
              chosen.accept(event.Selected);
            }
          }

          @Override
          public void disposing(EventObject source) {
            // goes with the dialog
          }
        });
    box.addActionListener(action(() -> Uno.as(XDialog2.class, control).endDialog(OK)));
  }

  public XControl part(String name) {
    return Uno.as(XControlContainer.class, control).getControl(name);
  }

  /** Shows it until it is ended; whether it was with yes. */
  public boolean show() throws Exception {
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
