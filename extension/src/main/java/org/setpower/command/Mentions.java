package org.setpower.command;

import com.sun.star.beans.XPropertySet;
import com.sun.star.container.XIndexAccess;
import com.sun.star.container.XNameAccess;
import com.sun.star.sheet.ValidationType;
import com.sun.star.sheet.XConditionalFormats;
import com.sun.star.sheet.XNamedRange;
import com.sun.star.sheet.XNamedRanges;
import com.sun.star.sheet.XSheetCondition;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XUniqueCellFormatRangesSupplier;
import com.sun.star.uno.Exception;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.setpower.sheet.Catalogue;

/**
 * Where a document mentions our functions: in a formula itself, or through a name that expands to
 * one, and outside of cells in names, conditional formats and rules for input.
 */
final class Mentions {
  private final Book book;
  private final List<XNamedRanges> lists = new ArrayList<>();
  private final Set<String> names = new LinkedHashSet<>();
  private Pattern named;

  Mentions(Book book) throws Exception {
    this.book = book;
    lists.add(Uno.as(XNamedRanges.class, Uno.get(book.document(), "NamedRanges")));
    for (XSpreadsheet sheet : book.all()) {
      lists.add(Uno.as(XNamedRanges.class, Uno.get(sheet, "NamedRanges")));
    }
    while (names.addAll(namesOfOurs())) {
      String any = names.stream().map(Pattern::quote).collect(Collectors.joining("|"));
      named = Pattern.compile("(?<![\\w.])(?:" + any + ")(?![\\w.(])", Pattern.CASE_INSENSITIVE);
    }
  }

  private Set<String> namesOfOurs() throws Exception {
    Set<String> found = new LinkedHashSet<>();
    for (XNamedRanges list : lists) {
      for (String name : list.getElementNames()) {
        if (in(Uno.as(XNamedRange.class, list.getByName(name)).getContent())) {
          found.add(name.toUpperCase(Locale.ROOT));
        }
      }
    }
    return found;
  }

  /** Whether a formula uses a function of ours, itself or through a name. */
  boolean in(String formula) {
    return OurCall.mentionedIn(formula) || (named != null && named.matcher(formula).find());
  }

  /** Takes away the names, conditional formats and input rules that mention us. */
  void clearOutsideCells() throws Exception {
    for (XSpreadsheet sheet : book.all()) {
      clearFormats(sheet);
      clearInputRules(sheet);
    }
    for (XNamedRanges list : lists) {
      for (String name : Uno.as(XNameAccess.class, list).getElementNames()) {
        if (names.contains(name.toUpperCase(Locale.ROOT))) {
          list.removeByName(name);
        }
      }
    }
  }

  /** Formulas of conditional formats come as users write them. */
  private boolean asShown(String formula) {
    String upper = formula.toUpperCase(Locale.ROOT);
    return in(formula) || Catalogue.all().stream().anyMatch(f -> upper.contains(f.name() + "("));
  }

  private void clearFormats(XSpreadsheet sheet) throws Exception {
    XConditionalFormats all =
        Uno.as(XConditionalFormats.class, Uno.get(sheet, "ConditionalFormats"));
    for (Object format : all.getConditionalFormats()) {
      if (mentionsUs(Uno.as(XIndexAccess.class, format))) {
        all.removeByID((Integer) Uno.get(format, "ID"));
      }
    }
  }

  private boolean mentionsUs(XIndexAccess entries) throws Exception {
    for (int i = 0; i < entries.getCount(); i++) {
      XPropertySet entry = Uno.as(XPropertySet.class, entries.getByIndex(i));
      for (String formula : new String[] {"Formula1", "Formula2"}) {
        if (entry.getPropertySetInfo().hasPropertyByName(formula)
            && asShown(String.valueOf(Uno.get(entry, formula)))) {
          return true;
        }
      }
    }
    return false;
  }

  private void clearInputRules(XSpreadsheet sheet) throws Exception {
    XIndexAccess formats =
        Uno.as(XUniqueCellFormatRangesSupplier.class, sheet).getUniqueCellFormatRanges();
    for (int i = 0; i < formats.getCount(); i++) {
      Object range = formats.getByIndex(i);
      Object rule = Uno.get(range, "Validation");
      XSheetCondition condition = Uno.as(XSheetCondition.class, rule);
      if (condition != null && (in(condition.getFormula1()) || in(condition.getFormula2()))) {
        Uno.set(rule, "Type", ValidationType.ANY);
        condition.setFormula1("");
        condition.setFormula2("");
        Uno.set(range, "Validation", rule);
      }
    }
  }
}
