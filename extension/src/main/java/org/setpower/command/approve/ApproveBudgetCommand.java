package org.setpower.command.approve;

import static org.setpower.command.message.CommandMessages.plural;

import com.sun.star.table.XCell;
import com.sun.star.table.XCellRange;
import com.sun.star.table.XColumnRowRange;
import com.sun.star.text.XText;
import com.sun.star.uno.Exception;
import java.math.BigDecimal;
import java.text.NumberFormat;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.setpower.command.Command;
import org.setpower.command.CommandContext;
import org.setpower.command.CommandRequest;
import org.setpower.command.document.UndoStep;
import org.setpower.command.message.CommandMessages;
import org.setpower.command.message.UserMessageException;
import org.setpower.command.plan.PlanFile;
import org.setpower.plan.budget.BudgetApproval;
import org.setpower.plan.budget.BudgetPlan;
import org.setpower.plan.common.InputColumn;
import org.setpower.plan.common.InputTable;
import org.setpower.plan.common.Messages;
import org.setpower.text.DateText;
import org.setpower.ui.MessageBoxes;
import org.setpower.uno.Uno;

/** Writes what each line is planned to cost as its approved budget, and the day. */
public final class ApproveBudgetCommand implements Command {
  private static final String TITLE = "Approve budget";
  private static final String LINES = "lines";
  private static final String PROJECT = "project";
  private static final int NAMED = 8;

  @Override
  public void runInteractive(CommandContext desk) throws Exception {
    desk.refuseReadOnly();
    PlanFile file = file(desk);
    BudgetApproval approval = approval(file);
    LocalDate today = LocalDate.now();
    String question =
        plural(
            "Approve the budget of {} line as planned on {}: {} and {} of contingency?",
            "Approve the budget of {} lines as planned on {}: {} and {} of contingency?",
            approval.amounts().size(),
            shown(today),
            shown(approval, approval.total()),
            shown(approval, approval.contingency()));
    if (MessageBoxes.ask(desk, question + checks(approval))) {
      MessageBoxes.say(desk, approve(desk, file, approval, today));
    }
  }

  @Override
  public boolean isEnabled(CommandContext desk) throws Exception {
    return desk.mayWrite()
        && PlanFile.of(desk.book()).filter(p -> p.model() == BudgetPlan.MODEL).isPresent();
  }

  /** Option: {@code date} as 2027-02-01, else today. */
  @Override
  public String runHeadless(CommandContext desk, CommandRequest order) throws Exception {
    desk.refuseReadOnly();
    PlanFile file = file(desk);
    try {
      LocalDate day = order.has("date") ? LocalDate.parse(order.text("date")) : LocalDate.now();
      return approve(desk, file, approval(file), day);
    } catch (DateTimeParseException e) {
      throw new UserMessageException(
          "“{}” is not a date: write it as 2027-02-01.", order.text("date"));
    }
  }

  private static PlanFile file(CommandContext desk) throws Exception {
    PlanFile file =
        PlanFile.of(desk.book())
            .filter(p -> p.model() == BudgetPlan.MODEL)
            .orElseThrow(
                () -> new UserMessageException("This file is no power budget of Set Power."));
    String fault = file.fault();
    if (!fault.isEmpty()) {
      throw new UserMessageException("The budget cannot be read: {}", fault);
    }
    return file;
  }

  /** What is to be written; refuses a budget that may not be approved. */
  private static BudgetApproval approval(PlanFile file) throws Exception {
    BudgetApproval approval = BudgetPlan.approval(file.read());
    if (approval.approved() != null) {
      throw new UserMessageException(
          "The budget was approved on {}. Have later amounts approved as changes, or clear its day"
              + " on Project first. Nothing was changed.",
          shown(approval.approved()));
    }
    if (!approval.stops().isEmpty()) {
      String sentences = Messages.in(CommandMessages.tag()).sentences(approval.stops(), locale());
      throw new UserMessageException("Correct Project first: {}", sentences);
    }
    if (!approval.withheld().isEmpty()) {
      throw new UserMessageException(
          "Lines that are a stop: {}. Correct or clear them first. Nothing was changed.",
          named(approval.withheld()));
    }
    if (approval.amounts().isEmpty()) {
      throw new UserMessageException("Budget lines is empty. Nothing was changed.");
    }
    return approval;
  }

  private static String named(List<Integer> rows) {
    return rows.stream().limit(NAMED).map(String::valueOf).collect(Collectors.joining(", "))
        + (rows.size() > NAMED ? ", …" : "");
  }

  private static String approve(
      CommandContext desk, PlanFile file, BudgetApproval approval, LocalDate day) throws Exception {
    UndoStep.allOrNothing(
        desk.book(), TITLE, () -> desk.book().withoutCalculation(() -> write(file, approval, day)));
    return plural(
            "Budget of {} line approved on {}: {} and {} of contingency.",
            "Budget of {} lines approved on {}: {} and {} of contingency.",
            approval.amounts().size(),
            shown(day),
            shown(approval, approval.total()),
            shown(approval, approval.contingency()))
        + checks(approval);
  }

  /** Which lines are a check: nobody approves them unseen. */
  private static String checks(BudgetApproval approval) {
    return approval.checks().isEmpty()
        ? ""
        : "\n" + CommandMessages.say("Lines that are a check: {}.", named(approval.checks()));
  }

  private static void write(PlanFile file, BudgetApproval approval, LocalDate day)
      throws Exception {
    XCellRange budgets = file.typed(table(file, LINES), "budget");
    // cell by cell: LibreOffice 7.4 does not undo setDataArray where cells were blank
    for (BudgetApproval.Amount amount : approval.amounts()) {
      budgets.getCellByPosition(0, amount.row() - 1).setValue(amount.planned().doubleValue());
    }
    setting(file, "approvedTotal").setValue(approval.total().doubleValue());
    if (approval.contingency().signum() == 0) {
      setting(file, "approvedContingency").setFormula("");
    } else {
      setting(file, "approvedContingency").setValue(approval.contingency().doubleValue());
    }
    String noted = approval.approvals(noted(approval, day));
    XCellRange list = file.typed(table(file, PROJECT), "approvals");
    Uno.as(XText.class, list.getCellByPosition(0, 0)).setString(noted);
    Uno.set(Uno.as(XColumnRowRange.class, list).getRows(), "OptimalHeight", true);
    setting(file, "approvalKey").setValue(approval.key(day, noted));
    file.typed(table(file, PROJECT), "approved")
        .getCellByPosition(0, 0)
        .setValue(InputColumn.serial(day) - file.days());
  }

  /** What stays of an approval when a later one takes its place. */
  private static String noted(BudgetApproval approval, LocalDate day) {
    return CommandMessages.say(
        "{}: {} and {} of contingency",
        shown(day),
        shown(approval, approval.total()),
        shown(approval, approval.contingency()));
  }

  private static XCell setting(PlanFile file, String key) throws Exception {
    return file.typed(table(file, PROJECT), key).getCellByPosition(0, 0);
  }

  private static InputTable<?> table(PlanFile file, String key) {
    return file.model().inputs().stream()
        .filter(t -> t.key().equals(key))
        .findFirst()
        .orElseThrow();
  }

  private static Locale locale() {
    return Locale.forLanguageTag(CommandMessages.tag());
  }

  private static String shown(BudgetApproval approval, BigDecimal amount) {
    NumberFormat format = NumberFormat.getInstance(locale());
    format.setMinimumFractionDigits(amount.scale());
    format.setMaximumFractionDigits(amount.scale());
    return format.format(amount) + " " + approval.currency();
  }

  private static String shown(LocalDate day) {
    return DateText.of(day, locale());
  }
}
