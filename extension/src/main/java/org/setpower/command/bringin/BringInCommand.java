package org.setpower.command.bringin;

import static org.setpower.command.message.CommandMessages.say;

import com.sun.star.uno.Exception;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.setpower.command.Command;
import org.setpower.command.CommandContext;
import org.setpower.command.CommandRequest;
import org.setpower.command.plan.PlanFile;
import org.setpower.plan.transfer.TransferChange;
import org.setpower.plan.transfer.TransferOptions;
import org.setpower.plan.transfer.TransferWay;
import org.setpower.ui.MessageBoxes;

/** Brings rows of another file of ours in: what differs since last time is shown and decided. */
public final class BringInCommand implements Command {
  @Override
  public boolean isEnabled(CommandContext desk) throws Exception {
    return desk.mayWrite()
        && PlanFile.of(desk.book()).filter(p -> !TransferWay.into(p.model()).isEmpty()).isPresent();
  }

  @Override
  public void runInteractive(CommandContext desk) throws Exception {
    desk.refuseReadOnly();
    PlanFile target = BringIn.target(desk.book());
    SourceChoice.Chosen chosen = new SourceChoice(desk, target).ask();
    if (chosen == null) {
      return;
    }
    BringIn comparison;
    try (SourceFile source = chosen.open(desk, target)) {
      TransferOptions options = options(desk, chosen.onlyShort(), chosen.daysOfUse());
      String replaced = source.name();
      List<String> before = BringIn.files(desk.book(), source.way(target));
      if (!before.isEmpty() && !before.contains(replaced)) {
        String last = before.get(before.size() - 1);
        boolean isSame =
            MessageBoxes.ask(
                desk,
                say(
                    "“{}” was brought in before. Is “{}” a newer state of it? Yes compares with the"
                        + " rows that came from it; No adds its rows beside them.",
                    last,
                    replaced));
        replaced = isSame ? last : replaced;
      }
      comparison = new BringIn(target, source, options, replaced);
      if (!comparison.unknown().isEmpty()) {
        boolean isCancelled =
            !new NamesDialog(desk, comparison.unknown(), comparison.items()).ask();
        if (isCancelled) {
          return;
        }
        comparison.compare();
      }
    }
    // the file is closed: what is decided and written does not depend on it any more
    Set<TransferChange> accepted = Set.of();
    if (!comparison.differences().isEmpty()) {
      accepted = new DifferencesDialog(desk, comparison.head(), comparison.differences()).ask();
    }
    if (accepted != null) {
      MessageBoxes.say(desk, comparison.write(accepted));
    }
  }

  /**
   * Options: {@code file}, its address; {@code short} only what is short; {@code days} of use as
   * out and back; {@code beside} a file that was brought in before; {@code as} an item, which the
   * file calls {@code name}; {@code list} what differs and write nothing; {@code yes} and {@code
   * no} to differences whose sentence contains a text.
   */
  @Override
  public String runHeadless(CommandContext desk, CommandRequest order) throws Exception {
    desk.refuseReadOnly();
    PlanFile target = BringIn.target(desk.book());
    BringIn comparison;
    try (SourceFile source = SourceFile.open(desk, order.text("file"), target)) {
      TransferOptions options = options(desk, order.has("short"), order.has("days"));
      String replaced = source.name();
      List<String> before = BringIn.files(desk.book(), source.way(target));
      if (!before.isEmpty() && !before.contains(replaced) && !order.has("beside")) {
        replaced = before.get(before.size() - 1);
      }
      comparison = new BringIn(target, source, options, replaced);
      if (order.has("as")) {
        comparison.items().say(order.text("name"), order.text("as"));
        comparison.compare();
      }
    }
    if (order.has("list")) {
      return listed(comparison);
    }
    Set<TransferChange> accepted = new LinkedHashSet<>();
    for (Difference difference : comparison.differences()) {
      boolean isYes = difference.change().isUsual();
      isYes |= order.has("yes") && difference.sentence().contains(order.text("yes"));
      isYes &= !order.has("no") || !difference.sentence().contains(order.text("no"));
      if (isYes) {
        accepted.add(difference.change());
      }
    }
    return comparison.write(accepted);
  }

  private static String listed(BringIn comparison) {
    StringBuilder lines = new StringBuilder(comparison.head());
    for (Difference difference : comparison.differences()) {
      lines.append('\n').append(difference.sentence());
    }
    return lines.toString();
  }

  private static TransferOptions options(CommandContext desk, boolean onlyShort, boolean days)
      throws Exception {
    String language = PlanFile.of(desk.book()).orElseThrow().locale().getLanguage();
    return new TransferOptions(onlyShort, days, TransferWords.in(language));
  }
}
