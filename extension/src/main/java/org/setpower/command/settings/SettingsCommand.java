package org.setpower.command.settings;

import com.sun.star.uno.Exception;
import java.util.StringJoiner;
import org.setpower.command.Command;
import org.setpower.command.CommandContext;
import org.setpower.command.CommandRequest;
import org.setpower.ui.Dialog;

/** The settings in a window of their own; they are also a page of Tools - Options. */
public final class SettingsCommand implements Command {
  private static final int WIDTH = 310;
  private static final int HEIGHT = SettingsForm.HEIGHT + Dialog.LINE + Dialog.GAP;

  @Override
  public void runInteractive(CommandContext desk) throws Exception {
    try (Dialog dialog = new Dialog(desk, "Settings of Set Power", WIDTH, HEIGHT)) {
      SettingsForm form = new SettingsForm(desk, dialog.form(), WIDTH);
      int bottom = Dialog.buttonsAt(HEIGHT);
      dialog.end(WIDTH - 2 * Dialog.GAP - 120, bottom, 60, "~OK", true, true);
      dialog.end(WIDTH - Dialog.GAP - 60, bottom, 60, "C~ancel", false, false);
      if (dialog.show()) {
        form.save();
      }
    }
  }

  @Override
  public String runHeadless(CommandContext desk, CommandRequest order) throws Exception {
    UserSettings settings = new UserSettings(desk);
    StringJoiner all = new StringJoiner("\n");
    for (Setting setting : Setting.values()) {
      if (order.has(setting.key())) {
        settings.set(setting, order.text(setting.key()));
      }
      all.add(setting.key() + "=" + settings.get(setting));
    }
    return all.toString();
  }
}
