package org.setpower.command.bringin;

import static org.setpower.command.message.CommandMessages.say;

import com.sun.star.awt.ItemEvent;
import com.sun.star.awt.XItemListener;
import com.sun.star.awt.XListBox;
import com.sun.star.lang.EventObject;
import com.sun.star.uno.Exception;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.setpower.command.CommandContext;
import org.setpower.plan.transfer.TransferChange;
import org.setpower.ui.Dialog;
import org.setpower.ui.ErrorReporting;
import org.setpower.ui.Form;
import org.setpower.uno.Uno;

/**
 * Lists what differs and takes a yes or no for each. The answer stands before the words of a line,
 * so that a screen reader reads it; lines are chosen and answered by keyboard alone.
 */
final class DifferencesDialog {
  private static final int WIDTH = 440;
  private static final int HEIGHT = 250;
  private static final int HEAD = 30;
  private static final int DETAIL = 34;
  private static final int BUTTON = 62;

  private final CommandContext desk;
  private final String head;
  private final List<Difference> differences;
  private final boolean[] isAccepted;
  private XListBox list;
  private Object detail;

  DifferencesDialog(CommandContext desk, String head, List<Difference> differences) {
    this.desk = desk;
    this.head = head;
    this.differences = differences;
    isAccepted = new boolean[differences.size()];
    for (int i = 0; i < isAccepted.length; i++) {
      isAccepted[i] = differences.get(i).change().isUsual();
    }
  }

  /** What is to be written; null where the user does not want to. */
  Set<TransferChange> ask() throws Exception {
    try (Dialog dialog = new Dialog(desk, "What differs", WIDTH, HEIGHT)) {
      Form form = dialog.form();
      form.text(Dialog.GAP, Dialog.GAP, dialog.inside(), HEAD, head);
      int labelAt = 2 * Dialog.GAP + HEAD;
      form.label(Dialog.GAP, labelAt, dialog.inside(), 10, "~What is written: yes or no");
      int top = labelAt + 12;
      int bottom = Dialog.buttonsAt(HEIGHT);
      int detailAt = bottom - DETAIL - Dialog.GAP;
      form.add(
          "ListBox",
          "list",
          Dialog.GAP,
          top,
          dialog.inside(),
          detailAt - top - Dialog.GAP - 12,
          Uno.property("MultiSelection", true),
          Uno.property("StringItemList", lines()),
          Uno.property("SelectedItems", new short[] {0}));
      form.label(Dialog.GAP, detailAt - 12, dialog.inside(), 10, "~The chosen line in full");
      detail =
          form.add(
              "Edit",
              "detail",
              Dialog.GAP,
              detailAt,
              dialog.inside(),
              DETAIL,
              Uno.property("MultiLine", true),
              Uno.property("ReadOnly", true),
              Uno.property("VScroll", true),
              Uno.property("Text", differences.get(0).sentence()));
      list = Uno.as(XListBox.class, dialog.part("list"));
      list.addItemListener(new Shown());
      int x = Dialog.GAP;
      answer(dialog, "yes", x, bottom, "~Yes", true, false);
      answer(dialog, "no", x + BUTTON + 3, bottom, "~No", false, false);
      answer(dialog, "all", x + 2 * (BUTTON + 3), bottom, "Yes to ~all", true, true);
      answer(dialog, "none", x + 3 * (BUTTON + 3), bottom, "No to a~ll", false, true);
      int wide = 76;
      dialog.end(WIDTH - 2 * Dialog.GAP - 2 * wide, bottom, wide, "~Bring in", true, true);
      dialog.end(WIDTH - Dialog.GAP - wide, bottom, wide, "~Cancel", false, false);
      return dialog.show() ? accepted() : null;
    }
  }

  private Set<TransferChange> accepted() {
    Set<TransferChange> accepted = new LinkedHashSet<>();
    for (int i = 0; i < isAccepted.length; i++) {
      if (isAccepted[i]) {
        accepted.add(differences.get(i).change());
      }
    }
    return accepted;
  }

  private String[] lines() {
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < isAccepted.length; i++) {
      lines.add(line(i));
    }
    return lines.toArray(String[]::new);
  }

  private String line(int i) {
    TransferChange change = differences.get(i).change();
    boolean isKnown = change.kind() == TransferChange.Kind.GONE;
    return (isKnown ? "–" : isAccepted[i] ? say("yes") : say("no"))
        + "   "
        + differences.get(i).sentence();
  }

  private void answer(
      Dialog dialog, String name, int x, int y, String label, boolean yes, boolean all)
      throws Exception {
    dialog.button(name, x, y, BUTTON, label, ErrorReporting.in(desk, () -> answer(yes, all)));
  }

  private void answer(boolean yes, boolean all) {
    short[] chosen = list.getSelectedItemsPos();
    short[] answered = chosen;
    if (all) {
      answered = new short[isAccepted.length];
      for (short i = 0; i < answered.length; i++) {
        answered[i] = i;
      }
    }
    for (short i : answered) {
      if (differences.get(i).change().isOpen()) {
        isAccepted[i] = yes;
        list.removeItems(i, (short) 1);
        list.addItem(line(i), i);
      }
    }
    list.selectItemsPos(chosen, true);
  }

  /** Shows the whole sentence of the line that is chosen. */
  private final class Shown implements XItemListener {
    @Override
    public void itemStateChanged(ItemEvent event) {
      short[] chosen = list.getSelectedItemsPos();
      if (chosen.length > 0) {
        String sentence = differences.get(chosen[chosen.length - 1]).sentence();
        ErrorReporting.in(desk, () -> Uno.set(detail, "Text", sentence)).run();
      }
    }

    @Override
    public void disposing(EventObject source) {
      // goes with the dialog
    }
  }
}
