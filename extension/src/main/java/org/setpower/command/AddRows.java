package org.setpower.command;

import com.sun.star.uno.Exception;

/** Blank rows below the selected ones, as many as are selected. */
final class AddRows implements Command {
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
