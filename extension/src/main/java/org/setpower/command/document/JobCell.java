package org.setpower.command.document;

import com.sun.star.uno.Exception;
import java.util.List;

/** What every file says of its job, in cells that have different names from sheet to sheet. */
public enum JobCell {
  PRODUCTION("Note_Production", "Project_production", "Note_Stock"),
  REVISION("Note_Revision", "Project_revision", "Order_revision"),
  UNITS("Project_units");

  private final List<String> names;

  JobCell(String... names) {
    this.names = List.of(names);
  }

  /** The names that its cell may have. */
  public List<String> names() {
    return names;
  }

  /** What the cell shows; empty where there is none. */
  public String in(CalcDocument book) throws Exception {
    for (String name : names) {
      String shown = book.named(name);
      if (!shown.isBlank()) {
        return shown;
      }
    }
    return "";
  }
}
