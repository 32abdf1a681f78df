package org.setpower.command.diagram;

import static org.setpower.command.message.CommandMessages.say;

import com.sun.star.document.UndoFailedException;
import com.sun.star.document.XUndoAction;
import com.sun.star.lib.uno.helper.WeakBase;
import com.sun.star.uno.Exception;
import java.util.List;

/**
 * The change of a drawing as a step of Undo: the office takes back no shapes that a command made.
 */
final class DiagramUndo extends WeakBase implements XUndoAction {
  private final DiagramShapes shapes;
  private final List<DiagramReader.Drawn> before;
  private final List<DiagramReader.Drawn> after;

  DiagramUndo(
      DiagramShapes shapes, List<DiagramReader.Drawn> before, List<DiagramReader.Drawn> after) {
    this.shapes = shapes;
    this.before = List.copyOf(before);
    this.after = List.copyOf(after);
  }

  @Override
  public String getTitle() {
    return say(DrawDiagramCommand.TITLE);
  }

  @Override
  public void undo() throws UndoFailedException {
    draw(before);
  }

  @Override
  public void redo() throws UndoFailedException {
    draw(after);
  }

  private void draw(List<DiagramReader.Drawn> pages) throws UndoFailedException {
    try {
      shapes.replace(pages);
    } catch (Exception failed) {
      throw new UndoFailedException(failed.getMessage(), this, failed);
    }
  }
}
