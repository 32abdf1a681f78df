package org.setpower.command.settings;

import com.sun.star.lang.XMultiServiceFactory;
import com.sun.star.sheet.XCellRangeReferrer;
import com.sun.star.sheet.XNamedRanges;
import com.sun.star.table.XCell;
import com.sun.star.text.XText;
import com.sun.star.uno.Exception;
import com.sun.star.util.XChangesBatch;
import org.setpower.command.CommandContext;
import org.setpower.command.document.CalcDocument;
import org.setpower.command.message.UserMessageException;
import org.setpower.uno.Uno;

/** The defaults of the user for every new file; kept in the office's configuration. */
public final class UserSettings {
  private static final String NODE = "/org.setpower.Settings/NewSheets";

  private final CommandContext desk;

  public UserSettings(CommandContext desk) {
    this.desk = desk;
  }

  /** The value; empty where the sheet itself decides. */
  public String get(Setting setting) throws Exception {
    Object value = Uno.get(node("com.sun.star.configuration.ConfigurationAccess"), setting.key());
    return value == null ? "" : value.toString();
  }

  void set(Setting setting, String value) throws Exception {
    check(setting, value);
    Object node = node("com.sun.star.configuration.ConfigurationUpdateAccess");
    Uno.set(node, setting.key(), value);
    Uno.as(XChangesBatch.class, node).commitChanges();
  }

  private Object node(String access) throws Exception {
    return desk.service(
            XMultiServiceFactory.class, "com.sun.star.configuration.ConfigurationProvider")
        .createInstanceWithArguments(access, new Object[] {Uno.property("nodepath", NODE)});
  }

  private static void check(Setting setting, String value) {
    if (!value.isEmpty() && !setting.choices().isEmpty() && !setting.choices().contains(value)) {
      throw new UserMessageException(
          "“{}” is none of {}.", value, String.join(", ", setting.choices()));
    }
    if (!value.isEmpty() && setting.isPercent()) {
      share(value);
    }
  }

  private static double share(String percent) {
    try {
      double value = Double.parseDouble(percent.strip().replace(',', '.'));
      if (value > 0 && value <= 20) {
        return value / 100;
      }
    } catch (NumberFormatException e) {
      // told below
    }
    throw new UserMessageException(
        "“{}” is no drop limit: type per cent, more than 0, at most 20.", percent);
  }

  /** Fills the cells of a new document that have these names. */
  public void fill(CalcDocument book) throws Exception {
    XNamedRanges names = Uno.as(XNamedRanges.class, Uno.get(book.document(), "NamedRanges"));
    for (Setting setting : Setting.values()) {
      String value = get(setting);
      for (String name : setting.cells()) {
        if (!value.isEmpty() && names.hasByName(name)) {
          XCell cell =
              Uno.as(XCellRangeReferrer.class, names.getByName(name))
                  .getReferredCells()
                  .getCellByPosition(0, 0);
          if (setting.isPercent()) {
            cell.setValue(share(value));
          } else {
            Uno.as(XText.class, cell).setString(value);
          }
        }
      }
    }
  }
}
