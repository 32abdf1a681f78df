package org.setpower.command.bringin;

import static org.setpower.command.message.CommandMessages.say;

import com.sun.star.awt.XListBox;
import com.sun.star.uno.Exception;
import java.util.List;
import java.util.TreeMap;
import org.setpower.command.CommandContext;
import org.setpower.plan.finding.Identity;
import org.setpower.ui.Dialog;
import org.setpower.ui.ErrorReporting;
import org.setpower.ui.Form;
import org.setpower.uno.Uno;

/** Asks which items of the price list the names of another file are. None has to be answered. */
final class NamesDialog {
  private static final int WIDTH = 400;
  private static final int HEIGHT = 220;
  private static final int HEAD = 30;
  private static final int BUTTON = 76;

  private final CommandContext desk;
  private final List<String> names;
  private final List<String> items;
  private final ItemList list;

  NamesDialog(CommandContext desk, List<String> names, ItemList list) {
    this.desk = desk;
    this.names = names;
    this.list = list;
    TreeMap<String, String> sorted = new TreeMap<>();
    list.items().forEach(i -> sorted.put(Identity.padded(i.toLowerCase(java.util.Locale.ROOT)), i));
    items = List.copyOf(sorted.values());
  }

  /** Whether to go on; what was answered is in the list. */
  boolean ask() throws Exception {
    try (Dialog dialog = new Dialog(desk, "Names of another file", WIDTH, HEIGHT)) {
      Form form = dialog.form();
      form.text(
          Dialog.GAP,
          Dialog.GAP,
          dialog.inside(),
          HEAD,
          say(
              "{} lacks these names. Choose a name and the item that it is, then Same item: it is"
                  + " found by that name from now on. Names left over are listed as not known.",
              list.heading()));
      int half = (dialog.inside() - Dialog.GAP) / 2;
      int right = 2 * Dialog.GAP + half;
      int top = 2 * Dialog.GAP + HEAD;
      int bottom = Dialog.buttonsAt(HEIGHT);
      list(form, "names", Dialog.GAP, top, half, "~Name there", bottom, names);
      list(form, "items", right, top, half, "~Item here", bottom, items);
      dialog.button(
          "same",
          Dialog.GAP,
          bottom,
          BUTTON,
          "~Same item",
          ErrorReporting.in(desk, () -> answer(dialog)));
      dialog.end(WIDTH - 2 * Dialog.GAP - 2 * BUTTON, bottom, BUTTON, "C~ontinue", true, true);
      dialog.end(WIDTH - Dialog.GAP - BUTTON, bottom, BUTTON, "~Cancel", false, false);
      return dialog.show();
    }
  }

  private static void list(
      Form form, String name, int x, int top, int wide, String label, int bottom, List<String> all)
      throws Exception {
    form.label(x, top, wide, 10, label);
    form.add(
        "ListBox",
        name,
        x,
        top + 12,
        wide,
        bottom - top - 12 - Dialog.GAP,
        Uno.property("StringItemList", all.toArray(String[]::new)),
        Uno.property("SelectedItems", new short[] {0}));
  }

  private void answer(Dialog dialog) {
    XListBox there = Uno.as(XListBox.class, dialog.part("names"));
    short name = there.getSelectedItemPos();
    short item = Uno.as(XListBox.class, dialog.part("items")).getSelectedItemPos();
    if (name >= 0 && item >= 0) {
      list.say(names.get(name), items.get(item));
      there.removeItems(name, (short) 1);
      there.addItem(names.get(name) + " = " + items.get(item), name);
      there.selectItemPos((short) Math.min(name + 1, names.size() - 1), true);
    }
  }
}
