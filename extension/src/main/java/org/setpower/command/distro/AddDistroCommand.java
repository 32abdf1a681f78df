package org.setpower.command.distro;

import com.sun.star.beans.PropertyValue;
import com.sun.star.uno.Exception;
import java.util.List;
import org.setpower.command.Command;
import org.setpower.command.CommandContext;
import org.setpower.command.CommandRequest;
import org.setpower.command.message.UserMessageException;
import org.setpower.plan.lighting.distro.DistroAddition;
import org.setpower.plan.lighting.distro.DistroAddition.Order;
import org.setpower.plan.lighting.distro.DistroKind;
import org.setpower.plan.lighting.input.MeasureSystem;
import org.setpower.ui.Dialog;
import org.setpower.ui.MessageBoxes;
import org.setpower.uno.Uno;

/** Adds a usual distro, its outlets and the cable run that feeds it, in one step. */
public final class AddDistroCommand implements Command {
  /** Its name in the list of undo steps, and of its window. */
  static final String TITLE = "Add distro";

  private static final int WIDTH = 230;
  private static final int LABEL = 84;
  private static final int STEP = Dialog.LINE + Dialog.GAP;
  private static final int HEIGHT = 5 * STEP + 2 * Dialog.GAP + 16 + STEP;

  @Override
  public void runInteractive(CommandContext desk) throws Exception {
    desk.refuseReadOnly();
    NewDistro distro = NewDistro.in(desk);
    DistroAddition addition = distro.addition();
    try (Dialog dialog = new Dialog(desk, TITLE, WIDTH, HEIGHT)) {
      List<DistroKind> kinds = addition.kinds();
      Object name =
          line(dialog, 0, "~Name", "Edit", "name", Uno.property("Text", addition.nextName()));
      Object kind =
          line(
              dialog,
              1,
              "~Type",
              "ListBox",
              "kind",
              Uno.property("Dropdown", true),
              Uno.property(
                  "StringItemList", kinds.stream().map(DistroKind::name).toArray(String[]::new)),
              Uno.property("SelectedItems", new short[] {0}));
      String[] places = addition.places(kinds.get(0)).toArray(String[]::new);
      Object from =
          line(
              dialog,
              2,
              "~Fed from",
              "ComboBox",
              "from",
              Uno.property("Dropdown", true),
              Uno.property("StringItemList", places),
              Uno.property("Text", places.length == 0 ? "" : places[0]));
      Object length =
          line(
              dialog,
              3,
              addition.units() == MeasureSystem.US ? "~Length (ft)" : "~Length (m)",
              "NumericField",
              "length",
              Uno.property("DecimalAccuracy", (short) 1),
              Uno.property("ValueMin", 0.0),
              Uno.property("ValueMax", 5000.0),
              Uno.property("Spin", true));
      Object size = line(dialog, 4, "Ca~ble size", "Edit", "size", Uno.property("Text", ""));
      dialog
          .form()
          .label(
              Dialog.GAP,
              Dialog.GAP + 5 * STEP,
              dialog.inside(),
              16,
              "Cable size blank: the usual cable of the type. What is written can be changed in its"
                  + " rows.");
      int bottom = Dialog.buttonsAt(HEIGHT);
      dialog.end(WIDTH - 2 * Dialog.GAP - 120, bottom, 60, "~Add", true, true);
      dialog.end(WIDTH - Dialog.GAP - 60, bottom, 60, "~Cancel", false, false);
      boolean open = true;
      while (open && dialog.show()) {
        short[] chosen = (short[]) Uno.get(kind, "SelectedItems");
        Order order =
            new Order(
                String.valueOf(Uno.get(name, "Text")),
                kinds.get(chosen.length == 0 ? 0 : chosen[0]),
                String.valueOf(Uno.get(from, "Text")),
                Uno.get(length, "Value") instanceof Double typed ? typed : null,
                String.valueOf(Uno.get(size, "Text")),
                null);
        try {
          MessageBoxes.say(desk, distro.add(desk, order));
          open = false;
        } catch (UserMessageException refused) {
          MessageBoxes.warn(desk, refused.getMessage()); // what is typed stays
        }
      }
    }
  }

  private static Object line(
      Dialog dialog, int line, String label, String kind, String name, PropertyValue... more)
      throws Exception {
    int y = Dialog.GAP + line * STEP;
    dialog.form().label(Dialog.GAP, y + 2, LABEL - Dialog.GAP, 10, label);
    return dialog.form().add(kind, name, LABEL, y, WIDTH - LABEL - Dialog.GAP, Dialog.LINE, more);
  }

  @Override
  public boolean isEnabled(CommandContext desk) throws Exception {
    return desk.mayWrite() && NewDistro.plan(desk).isPresent();
  }

  /** Options: {@code name}, {@code kind}, {@code from}, {@code length}, {@code size}. */
  @Override
  public String runHeadless(CommandContext desk, CommandRequest order) throws Exception {
    desk.refuseReadOnly();
    NewDistro distro = NewDistro.in(desk);
    String typed = order.text("length", "");
    Double length;
    try {
      length = typed.isBlank() ? null : Double.valueOf(typed); // the order refuses a blank
    } catch (NumberFormatException e) {
      throw new UserMessageException("“{}” is no number.", typed).because(e);
    }
    return distro.add(
        desk,
        new Order(
            order.text("name", distro.addition().nextName()),
            distro.kind(order.text("kind")),
            order.text("from"),
            length,
            order.text("size", ""),
            null));
  }
}
