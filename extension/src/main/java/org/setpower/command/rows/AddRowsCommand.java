package org.setpower.command.rows;

import com.sun.star.uno.Exception;
import org.setpower.command.Command;
import org.setpower.command.CommandContext;
import org.setpower.command.CommandRequest;

/** Inserts as many blank rows below the selected ones as are selected. */
public final class AddRowsCommand implements Command {
  @Override
  public void runInteractive(CommandContext desk) throws Exception {
    TableRows rows = TableRows.chosen(desk, null);
    rows.addBelow();
    rows.show(desk, true);
  }

  @Override
  public boolean isEnabled(CommandContext desk) throws Exception {
    return TableRows.areSelected(desk);
  }

  @Override
  public String runHeadless(CommandContext desk, CommandRequest order) throws Exception {
    return TableRows.chosen(desk, order).addBelow();
  }
}
