package org.setpower.command.tabs;

import static org.setpower.command.message.CommandMessages.say;

import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetView;
import com.sun.star.uno.Exception;
import java.util.ArrayList;
import java.util.List;
import org.setpower.command.Command;
import org.setpower.command.CommandContext;
import org.setpower.command.CommandRequest;
import org.setpower.command.document.CalcDocument;
import org.setpower.command.message.UserMessageException;
import org.setpower.ui.Dialog;
import org.setpower.uno.Uno;

/** Shows a hidden tab: lists, incidents, assumptions. The tab that asks the plan stays hidden. */
public final class ShowTabsCommand implements Command {
  private static final String TITLE = "Show tabs";
  private static final String PLAN = "Plan";
  private static final int WIDTH = 200;
  private static final int HEIGHT = 130;

  @Override
  public void runInteractive(CommandContext desk) throws Exception {
    List<String> hidden = hidden(desk.book());
    try (Dialog dialog = new Dialog(desk, TITLE, WIDTH, HEIGHT)) {
      dialog.form().label(Dialog.GAP, Dialog.GAP, dialog.inside(), 10, "~Hidden tabs");
      int bottom = Dialog.buttonsAt(HEIGHT);
      Object list =
          dialog
              .form()
              .add(
                  "ListBox",
                  "list",
                  Dialog.GAP,
                  18,
                  dialog.inside(),
                  bottom - 18 - Dialog.GAP,
                  Uno.property("StringItemList", hidden.toArray(String[]::new)),
                  Uno.property("MultiSelection", true),
                  Uno.property("SelectedItems", new short[] {0}));
      dialog.end(WIDTH - 2 * Dialog.GAP - 120, bottom, 60, "~Show", true, true);
      dialog.end(WIDTH - Dialog.GAP - 60, bottom, 60, "~Cancel", false, false);
      if (dialog.show()) {
        for (short chosen : (short[]) Uno.get(list, "SelectedItems")) {
          show(desk, hidden.get(chosen));
        }
      }
    }
  }

  @Override
  public boolean isEnabled(CommandContext desk) throws Exception {
    return desk.mayWrite() && !desk.book().origin().isEmpty() && !hidden(desk.book()).isEmpty();
  }

  @Override
  public String runHeadless(CommandContext desk, CommandRequest order) throws Exception {
    List<String> hidden = hidden(desk.book());
    if (!order.has("tab")) {
      return String.join("\n", hidden);
    }
    String tab = order.text("tab");
    if (!hidden.contains(tab)) {
      throw new UserMessageException("There is no hidden tab “{}”.", tab);
    }
    show(desk, tab);
    return say("The tab “{}” is shown.", tab);
  }

  private static List<String> hidden(CalcDocument book) throws Exception {
    List<String> hidden = new ArrayList<>();
    for (XSpreadsheet sheet : book.all()) {
      String name = CalcDocument.name(sheet);
      if (!(Boolean) Uno.get(sheet, "IsVisible") && !PLAN.equals(name)) {
        hidden.add(name);
      }
    }
    return hidden;
  }

  private static void show(CommandContext desk, String tab) throws Exception {
    XSpreadsheet sheet = desk.book().sheet(tab);
    Uno.set(sheet, "IsVisible", true);
    XSpreadsheetView view = Uno.as(XSpreadsheetView.class, desk.controller());
    if (view != null) {
      view.setActiveSheet(sheet);
    }
  }
}
