package org.setpower.command.settings;

import static org.setpower.command.message.CommandMessages.say;

import com.sun.star.uno.Exception;
import java.util.EnumMap;
import java.util.Map;
import org.setpower.command.CommandContext;
import org.setpower.ui.Dialog;
import org.setpower.ui.Form;
import org.setpower.uno.Uno;

/** The settings as lines of a window: a label, and a list or a field. */
final class SettingsForm {
  static final int HEIGHT = 20 * Setting.values().length + 42;

  private static final String SHEET_DECIDES = "as the sheet says";
  private static final int LABEL = 140;

  private final UserSettings settings;
  private final Map<Setting, Object> models = new EnumMap<>(Setting.class);

  /** Adds the lines to a form of a width. */
  SettingsForm(CommandContext desk, Form form, int width) throws Exception {
    settings = new UserSettings(desk);
    int y = Dialog.GAP;
    form.label(
        Dialog.GAP,
        y,
        width - 2 * Dialog.GAP,
        28,
        "Used when a new sheet is made. Blank: what the sheet itself says. Sheets that exist stay"
            + " as they are.");
    y += 34;
    for (Setting setting : Setting.values()) {
      form.label(Dialog.GAP, y + 3, LABEL, 10, setting.label());
      int x = Dialog.GAP + LABEL + Dialog.GAP;
      models.put(setting, line(form, setting, x, y, width - x - Dialog.GAP));
      y += 20;
    }
    load();
  }

  private static Object line(Form form, Setting setting, int x, int y, int wide) throws Exception {
    if (setting.choices().isEmpty()) {
      return form.edit(setting.key(), x, y, wide, "");
    }
    String[] items = new String[setting.choices().size() + 1];
    items[0] = say(SHEET_DECIDES);
    for (int i = 1; i < items.length; i++) {
      items[i] = setting.choices().get(i - 1);
    }
    return form.add(
        "ListBox",
        setting.key(),
        x,
        y,
        wide,
        Dialog.LINE,
        Uno.property("Dropdown", true),
        Uno.property("StringItemList", items));
  }

  /** Shows what is kept. */
  void load() throws Exception {
    for (Map.Entry<Setting, Object> line : models.entrySet()) {
      String value = settings.get(line.getKey());
      if (line.getKey().choices().isEmpty()) {
        Uno.set(line.getValue(), "Text", value);
      } else {
        short place = (short) (line.getKey().choices().indexOf(value) + 1);
        Uno.set(line.getValue(), "SelectedItems", new short[] {place});
      }
    }
  }

  /** Keeps what is shown. */
  void save() throws Exception {
    for (Map.Entry<Setting, Object> line : models.entrySet()) {
      settings.set(line.getKey(), shown(line.getKey(), line.getValue()));
    }
  }

  private static String shown(Setting setting, Object model) throws Exception {
    if (setting.choices().isEmpty()) {
      return ((String) Uno.get(model, "Text")).strip();
    }
    short[] selected = (short[]) Uno.get(model, "SelectedItems");
    return selected.length == 0 || selected[0] == 0 ? "" : setting.choices().get(selected[0] - 1);
  }
}
