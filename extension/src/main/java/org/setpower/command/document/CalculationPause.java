package org.setpower.command.document;

import com.sun.star.document.XUndoAction;
import com.sun.star.sheet.XCalculatable;

/**
 * Stops the calculation of a document and starts it again. An action for either end of an undo
 * step: nothing is calculated after each of its cells, whether it is undone or redone. A plan with
 * 900 cells took more than a minute to undo.
 */
final class CalculationPause {
  private final XCalculatable calculation;
  private boolean automatic;

  CalculationPause(XCalculatable calculation) {
    this.calculation = calculation;
  }

  void begin() {
    automatic = calculation.isAutomaticCalculationEnabled();
    calculation.enableAutomaticCalculation(false);
  }

  void end() {
    calculation.enableAutomaticCalculation(automatic);
  }

  /** What stands first in an undo step, so that it is undone last. */
  XUndoAction first(String title) {
    return new StepEnd(title, this::begin, this::end);
  }

  /** What stands last in an undo step, so that it is undone first. */
  XUndoAction last(String title) {
    return new StepEnd(title, this::end, this::begin);
  }
}
