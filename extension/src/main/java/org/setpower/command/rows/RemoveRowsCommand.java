package org.setpower.command.rows;

import com.sun.star.uno.Exception;
import org.setpower.command.Command;
import org.setpower.command.CommandContext;
import org.setpower.command.CommandRequest;

/** Deletes the selected rows of a table. */
public final class RemoveRowsCommand implements Command {
  @Override
  public void runInteractive(CommandContext desk) throws Exception {
    TableRows rows = TableRows.chosen(desk, null);
    rows.remove();
    rows.show(desk, false);
  }

  @Override
  public boolean isEnabled(CommandContext desk) throws Exception {
    return TableRows.areSelected(desk);
  }

  @Override
  public String runHeadless(CommandContext desk, CommandRequest order) throws Exception {
    return TableRows.chosen(desk, order).remove();
  }
}
