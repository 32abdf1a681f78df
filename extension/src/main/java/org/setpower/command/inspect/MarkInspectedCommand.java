package org.setpower.command.inspect;

import com.sun.star.uno.Exception;
import com.sun.star.util.Date;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import org.setpower.command.Command;
import org.setpower.command.CommandContext;
import org.setpower.command.CommandRequest;
import org.setpower.command.message.UserMessageException;
import org.setpower.command.plan.PlanFile;
import org.setpower.plan.register.RegisterPlan;
import org.setpower.ui.Dialog;
import org.setpower.ui.MessageBoxes;
import org.setpower.uno.Uno;

/** Enters one inspection, by hand and eye, for all selected batteries that are found fine. */
public final class MarkInspectedCommand implements Command {
  /** Its name in the list of undo steps, and of its window. */
  static final String TITLE = "Mark as inspected";

  private static final int WIDTH = 200;
  private static final int HEIGHT = 76;
  private static final int BESIDE = 100;

  @Override
  public void runInteractive(CommandContext desk) throws Exception {
    desk.refuseReadOnly();
    InspectedRows rows = InspectedRows.selected(desk);
    rows.refuseNone();
    try (Dialog dialog = new Dialog(desk, TITLE, WIDTH, HEIGHT)) {
      dialog
          .form()
          .label(Dialog.GAP, Dialog.GAP + 2, BESIDE - Dialog.GAP, 10, "~Day of the inspection");
      LocalDate day = rows.usualDay();
      int wide = WIDTH - BESIDE - Dialog.GAP;
      Object date =
          dialog
              .form()
              .add(
                  "DateField",
                  "day",
                  BESIDE,
                  Dialog.GAP,
                  wide,
                  Dialog.LINE,
                  Uno.property("Dropdown", true),
                  Uno.property("StrictFormat", false),
                  Uno.property("Date", date(day)));
      int second = 2 * Dialog.GAP + Dialog.LINE;
      dialog.form().label(Dialog.GAP, second + 2, BESIDE - Dialog.GAP, 10, "~Role, no name");
      Object role = dialog.form().edit("role", BESIDE, second, wide, "");
      int bottom = Dialog.buttonsAt(HEIGHT);
      dialog.end(WIDTH - 2 * Dialog.GAP - 120, bottom, 60, "~Mark", true, true);
      dialog.end(WIDTH - Dialog.GAP - 60, bottom, 60, "~Cancel", false, false);
      if (dialog.show()) {
        LocalDate chosen = Uno.get(date, "Date") instanceof Date d ? day(d) : null;
        MessageBoxes.say(desk, rows.mark(chosen, String.valueOf(Uno.get(role, "Text"))));
      }
    }
  }

  private static Date date(LocalDate day) {
    return new Date(
        (short) day.getDayOfMonth(), (short) day.getMonthValue(), (short) day.getYear());
  }

  private static LocalDate day(Date date) {
    return date.Day == 0 ? null : LocalDate.of(date.Year, date.Month, date.Day);
  }

  @Override
  public boolean isEnabled(CommandContext desk) throws Exception {
    return desk.mayWrite()
        && PlanFile.of(desk.book()).filter(p -> p.model() == RegisterPlan.MODEL).isPresent();
  }

  /**
   * Options: {@code cell} and {@code rows} of Batteries, else what is selected; {@code date} as
   * 2027-02-01, else the day of the register; {@code role}.
   */
  @Override
  public String runHeadless(CommandContext desk, CommandRequest order) throws Exception {
    desk.refuseReadOnly();
    InspectedRows rows =
        order.has("cell") ? InspectedRows.named(desk, order) : InspectedRows.selected(desk);
    rows.refuseNone();
    try {
      LocalDate day = order.has("date") ? LocalDate.parse(order.text("date")) : rows.usualDay();
      return rows.mark(day, order.text("role"));
    } catch (DateTimeParseException e) {
      throw new UserMessageException(
          "“{}” is not a date: write it as 2027-02-01.", order.text("date"));
    }
  }
}
