package org.setpower.command.help;

import com.sun.star.uno.Exception;
import java.nio.charset.StandardCharsets;
import org.setpower.command.Command;
import org.setpower.command.CommandContext;
import org.setpower.command.CommandRequest;
import org.setpower.command.FileStore;
import org.setpower.command.message.CommandMessages;
import org.setpower.registry.groups.SheetFunctions;
import org.setpower.ui.TextWindow;

/** Version, licence and libraries. */
public final class AboutCommand implements Command {
  @Override
  public void runInteractive(CommandContext desk) throws Exception {
    TextWindow.show(desk, "About Set Power", "~Version, licence, libraries", text(desk), "");
  }

  @Override
  public String runHeadless(CommandContext desk, CommandRequest order) throws Exception {
    return text(desk);
  }

  private static String text(CommandContext desk) throws Exception {
    return "Set Power Sheets "
        + SheetFunctions.VERSION.call()
        + "\n\n"
        + shipped(desk, "NOTICE.txt")
        + "\n"
        + shipped(desk, "about-" + CommandMessages.language() + ".txt");
  }

  private static String shipped(CommandContext desk, String file) throws Exception {
    return new String(new FileStore(desk).read(desk.shipped(file)), StandardCharsets.UTF_8);
  }
}
