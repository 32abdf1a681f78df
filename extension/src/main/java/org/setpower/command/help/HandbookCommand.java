package org.setpower.command.help;

import com.sun.star.system.SystemShellExecuteException;
import com.sun.star.system.SystemShellExecuteFlags;
import com.sun.star.system.XSystemShellExecute;
import com.sun.star.uno.Exception;
import org.setpower.command.Command;
import org.setpower.command.CommandContext;
import org.setpower.command.CommandRequest;
import org.setpower.command.export.ExportValuesCommand;
import org.setpower.ui.TextWindow;

/**
 * Opens the handbook, which ships with the extension, in the browser. Where there is none, the
 * office does not notice on every system, so the place of the file is shown in any case.
 */
public final class HandbookCommand implements Command {
  private static final String FIRST_PAGE = "handbook/index.html";

  @Override
  public void runInteractive(CommandContext desk) throws Exception {
    String page = desk.shipped(FIRST_PAGE);
    try {
      desk.service(XSystemShellExecute.class, "com.sun.star.system.SystemShellExecute")
          .execute(page, "", SystemShellExecuteFlags.URIS_ONLY);
    } catch (SystemShellExecuteException noBrowser) {
      // the window says what to do
    }
    TextWindow.line(
        desk,
        "User guide",
        "If no browser opens, open ~this file in one:",
        ExportValuesCommand.path(page));
  }

  @Override
  public String runHeadless(CommandContext desk, CommandRequest order) {
    return desk.shipped(FIRST_PAGE);
  }
}
