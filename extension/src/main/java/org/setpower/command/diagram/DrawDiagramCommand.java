package org.setpower.command.diagram;

import static org.setpower.command.message.CommandMessages.plural;

import com.sun.star.uno.Exception;
import java.util.Optional;
import org.setpower.command.Command;
import org.setpower.command.CommandContext;
import org.setpower.command.CommandRequest;
import org.setpower.command.document.CalcDocument;
import org.setpower.command.document.UndoStep;
import org.setpower.command.message.UserMessageException;
import org.setpower.command.plan.PlanFile;
import org.setpower.plan.lighting.LightingModel;
import org.setpower.plan.lighting.diagram.DiagramPlan;
import org.setpower.ui.MessageBoxes;

/** Draws the single-line diagram of the plan as it is now, in place of the former one. */
public final class DrawDiagramCommand implements Command {
  /** The step as Undo names it. */
  public static final String TITLE = "Draw diagram";

  @Override
  public void runInteractive(CommandContext desk) throws Exception {
    MessageBoxes.say(desk, draw(desk));
  }

  @Override
  public boolean isEnabled(CommandContext desk) throws Exception {
    return desk.mayWrite() && plan(desk.book()).isPresent();
  }

  @Override
  public String runHeadless(CommandContext desk, CommandRequest order) throws Exception {
    return draw(desk);
  }

  private static Optional<PlanFile> plan(CalcDocument book) throws Exception {
    return PlanFile.of(book).filter(p -> p.model() == LightingModel.MODEL);
  }

  private static String draw(CommandContext desk) throws Exception {
    desk.refuseReadOnly();
    CalcDocument book = desk.book();
    PlanFile plan =
        plan(book)
            .orElseThrow(
                () ->
                    new UserMessageException(
                        "This document has no lighting power plan, so there is nothing to draw."));
    DiagramSheet sheet = DiagramSheet.of(plan);
    int[] pages = new int[1];
    UndoStep.allOrNothing(
        book,
        TITLE,
        () -> {
          pages[0] = sheet.draw(desk);
          sheet.unhide();
        });
    sheet.show(desk.controller());
    return plural(
        "The diagram is on the tab “{2}”, {1} page. Printing draws it again.",
        "The diagram is on the tab “{2}”, {1} pages. Printing draws it again.",
        pages[0],
        sheet.name());
  }

  /**
   * Draws it before a plan is printed: again where there is one, else on the tab of a plan that has
   * sources. Its tab stays hidden if it is, for hidden tabs print too; one that was deleted is not
   * made again.
   */
  public static void beforePrinting(CommandContext desk) throws Exception {
    Optional<PlanFile> plan = plan(desk.book());
    Optional<DiagramSheet> sheet = plan.isEmpty() ? Optional.empty() : DiagramSheet.in(plan.get());
    if (sheet.isPresent() && (DiagramSheet.isDrawn(plan.get()) || hasSources(plan.get()))) {
      sheet.get().draw(desk);
    }
  }

  private static boolean hasSources(PlanFile plan) throws Exception {
    return plan.calculated().part(DiagramPlan.class).filter(d -> !d.roots().isEmpty()).isPresent();
  }
}
