package org.setpower.command.rows;

import com.sun.star.uno.Exception;
import org.setpower.command.Command;
import org.setpower.command.Desk;
import org.setpower.command.Order;

/** Blank rows below the selected ones, as many as are selected. */
public final class AddRows implements Command {
  @Override
  public void openly(Desk desk) throws Exception {
    TableRows rows = TableRows.chosen(desk, null);
    rows.addBelow();
    rows.show(desk, true);
  }

  @Override
  public boolean makesSense(Desk desk) throws Exception {
    return TableRows.areSelected(desk);
  }

  @Override
  public String quietly(Desk desk, Order order) throws Exception {
    return TableRows.chosen(desk, order).addBelow();
  }
}
