package org.setpower.command.repair;

import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.uno.Exception;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.setpower.command.document.CalcDocument;
import org.setpower.command.message.UserMessageException;

/**
 * Whether the tabs of a document are those of its template. Formulas are compared by the names of
 * tabs, so formulas put into another tab under that name would destroy it.
 */
final class SheetIdentities {
  private SheetIdentities() {}

  /** Refuses a document in which a tab is renamed, copied, exchanged or missing. */
  static void check(CalcDocument book, TemplateFormulas right) throws Exception {
    // Some templates have one title on two tabs.
    Map<String, List<String>> byTitle =
        right.tabs().stream()
            .filter(t -> !t.title().isEmpty())
            .collect(
                Collectors.groupingBy(
                    TemplateFormulas.Tab::title,
                    Collectors.mapping(TemplateFormulas.Tab::name, Collectors.toList())));
    for (XSpreadsheet sheet : book.all()) {
      String name = CalcDocument.name(sheet);
      List<String> wanted = byTitle.getOrDefault(TemplateFormulas.title(sheet), List.of(name));
      if (!wanted.contains(name)) {
        Optional<String> absent =
            wanted.stream().filter(w -> !book.sheets().hasByName(w)).findFirst();
        throw absent.isPresent() ? renamed(name, absent.get()) : twice(book, name, wanted.get(0));
      }
    }
    for (TemplateFormulas.Tab tab : right.tabs()) {
      if (!book.sheets().hasByName(tab.name())) {
        throw new UserMessageException(
            "The tab “{}” is missing, so formulas cannot be restored. If it was renamed, give it"
                + " that name again; if it was deleted, begin a new sheet and copy what is typed,"
                + " table by table. Nothing was changed.",
            tab.name());
      }
    }
  }

  private static UserMessageException renamed(String name, String wanted) {
    return new UserMessageException(
        "The tab “{}” is named “{}” here, so formulas cannot be restored. Give it the name “{}”"
            + " again, then repeat the command. Nothing was changed.",
        wanted,
        name,
        wanted);
  }

  /** Two tabs with one title: one is a copy, or two have exchanged their names. */
  private static UserMessageException twice(CalcDocument book, String name, String wanted)
      throws Exception {
    String title = TemplateFormulas.title(book.sheet(name));
    if (TemplateFormulas.title(book.sheet(wanted)).equals(title)) {
      return new UserMessageException(
          "The tab “{}” is a copy of “{}”, so it is not certain which one is meant. Move the copy"
              + " into a document of its own, then repeat the command. Nothing was changed.",
          name,
          wanted);
    }
    return new UserMessageException(
        "The tab “{}” holds what belongs to “{}”: tabs have exchanged their names. Give each its"
            + " own name again, then repeat the command. Nothing was changed.",
        name,
        wanted);
  }
}
