package org.setpower.command;

import com.sun.star.system.SystemShellExecuteException;
import com.sun.star.system.SystemShellExecuteFlags;
import com.sun.star.system.XSystemShellExecute;
import com.sun.star.uno.Exception;

/** Opens the handbook, which ships with the extension, in the browser. */
final class Handbook implements Command {
  private static final String FIRST_PAGE = "handbook/index.html";

  @Override
  public void openly(Desk desk) throws Exception {
    String page = desk.shipped(FIRST_PAGE);
    try {
      desk.service(XSystemShellExecute.class, "com.sun.star.system.SystemShellExecute")
          .execute(page, "", SystemShellExecuteFlags.URIS_ONLY);
    } catch (SystemShellExecuteException e) {
      throw new Sorry("No browser could be started. The handbook is here:\n{}", Copy.path(page))
          .because(e);
    }
  }

  @Override
  public String quietly(Desk desk, Order order) {
    return desk.shipped(FIRST_PAGE);
  }
}
