package org.setpower.command.help;

import com.sun.star.uno.Exception;
import java.nio.charset.StandardCharsets;
import org.setpower.command.Command;
import org.setpower.command.Desk;
import org.setpower.command.FileStore;
import org.setpower.command.Order;
import org.setpower.command.message.Say;
import org.setpower.registry.groups.SheetFunctions;
import org.setpower.ui.TextWindow;

/** Version, licence and libraries. */
public final class About implements Command {
  @Override
  public void openly(Desk desk) throws Exception {
    TextWindow.show(desk, "About Set power", "~Version, licence, libraries", text(desk), "");
  }

  @Override
  public String quietly(Desk desk, Order order) throws Exception {
    return text(desk);
  }

  private static String text(Desk desk) throws Exception {
    return "Set Power Sheets "
        + SheetFunctions.VERSION.call()
        + "\n\n"
        + shipped(desk, "NOTICE.txt")
        + "\n"
        + shipped(desk, "about-" + Say.language() + ".txt");
  }

  private static String shipped(Desk desk, String file) throws Exception {
    return new String(new FileStore(desk).read(desk.shipped(file)), StandardCharsets.UTF_8);
  }
}
