package org.setpower.generator;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.setpower.base.ErrorCode;
import org.setpower.base.Numbers;
import org.setpower.registry.FunctionGroup;
import org.setpower.registry.FunctionSpec;
import org.setpower.registry.Parameter;
import org.setpower.registry.groups.FunctionRegistry;

/** The function reference: a page per group and a page of sources, written in a {@link Markup}. */
final class FunctionReference {
  /** What every function refuses, so that it is said once. */
  private static final String FAULTS =
      "Text where a number belongs shows #VALUE!. A value outside what is allowed, a unit or a word"
          + " that is not known, or an argument that is missing shows Err:502. A question that our"
          + " tables, rules or physics do not answer shows #N/A. SHEET.WHY(\"NAME\"; the same"
          + " arguments) gives the reason in words; nothing ever shows 0 or an empty cell for a"
          + " fault.";

  private FunctionReference() {}

  /** Page names without ending, and their texts. */
  static Map<String, HandbookPage> pages(
      Markup markup,
      Map<FunctionSpec, List<HandbookChapter.Place>> dangers,
      Map<String, HandbookChapter.Place> explained) {
    Map<String, HandbookPage> pages = new LinkedHashMap<>();
    pages.put("index", index(markup));
    for (FunctionRegistry entry : FunctionRegistry.values()) {
      if (!entry.group().functions().isEmpty()) {
        pages.put(entry.name(), group(markup, entry.group(), dangers, explained));
      }
    }
    pages.put("sources", sources(markup));
    return pages;
  }

  private static HandbookPage index(Markup m) {
    StringBuilder page = new StringBuilder(m.title("Functions"));
    page.append(m.paragraph(FAULTS));
    List<List<String>> rows = new ArrayList<>();
    for (FunctionRegistry entry : FunctionRegistry.values()) {
      for (FunctionSpec f : entry.group().functions()) {
        rows.add(List.of(m.link(f.name(), entry.name(), anchor(f)), m.text(f.sentence())));
      }
    }
    page.append(m.table(List.of("Function", ""), rows));
    page.append(m.paragraph(m.link("Where the figures come from", "sources", "")));
    return new HandbookPage("Functions", page.toString());
  }

  private static HandbookPage group(
      Markup m,
      FunctionGroup group,
      Map<FunctionSpec, List<HandbookChapter.Place>> dangers,
      Map<String, HandbookChapter.Place> explained) {
    String title = group.prefix() + ": " + group.title();
    StringBuilder page = new StringBuilder(m.title(title));
    if (explained.containsKey(group.prefix())) {
      HandbookChapter.Place how = explained.get(group.prefix());
      page.append(m.paragraph(m.link(how.heading(), "../" + how.page(), how.anchor())));
    }
    group.functions().forEach(f -> page.append(function(m, f, dangers.getOrDefault(f, List.of()))));
    return new HandbookPage(title, page.toString());
  }

  private static String function(Markup m, FunctionSpec f, List<HandbookChapter.Place> dangers) {
    StringBuilder part = new StringBuilder(m.heading(f.name(), anchor(f)));
    part.append(m.paragraph(m.text(f.sentence() + ".")));
    part.append(m.code(signature(f)));
    List<List<String>> rows = new ArrayList<>();
    for (Parameter<?> p : f.parameters()) {
      rows.add(
          List.of(
              m.text(p.name()),
              m.text(p.phrase()),
              m.text(p.unit().symbol()),
              m.text(p.isOptional() ? orNothing(p.fallbackWords()) : "needed")));
    }
    if (!rows.isEmpty()) {
      part.append(m.table(List.of("Argument", "What it is", "Unit", "If left out"), rows));
    }
    part.append(m.entry("Result", m.text(result(f))));
    if (!f.formula().isEmpty()) {
      part.append(m.entry("Formula", m.text(f.formula())));
    }
    part.append(m.entry("Source", m.text(f.source())));
    List<FunctionSpec.Example> examples = f.plan().isPresent() ? List.of() : f.examples();
    for (FunctionSpec.Example example : examples) {
      part.append(m.entry("Example", m.text(example.formula() + " gives " + shown(example))));
    }
    List<String> refusals = new ArrayList<>();
    for (ErrorCode reason : f.errorCodes()) {
      String sentence = reason.sentence().replaceAll("\\{\\d}", "…");
      refusals.add(m.text(reason.kind().shown() + ": " + sentence));
    }
    if (!refusals.isEmpty()) {
      part.append(m.entries("No answer", refusals));
    }
    if (!f.caution().isEmpty()) {
      part.append(m.entry("Caution", m.text(f.caution())));
    }
    if (!dangers.isEmpty()) {
      List<String> links = new ArrayList<>();
      dangers.forEach(d -> links.add(m.link(d.heading(), "../" + d.page(), d.anchor())));
      part.append(m.entry("Safety", String.join(" · ", links)));
    }
    return part.toString();
  }

  private static String signature(FunctionSpec f) {
    List<String> names = new ArrayList<>();
    for (Parameter<?> p : f.parameters()) {
      String name = p.name() + (p.shape() == Parameter.Shape.REST ? "…" : "");
      names.add(p.isOptional() ? "[" + name + "]" : name);
    }
    return "=" + f.name() + "(" + String.join("; ", names) + ")";
  }

  private static String result(FunctionSpec f) {
    String unit = f.unit().symbol().isEmpty() ? "" : " (" + f.unit().symbol() + ")";
    return switch (f.kind()) {
      case NUMBER -> f.resultWords() + unit;
      case TEXT -> f.resultWords() + ", as text";
      case TABLE ->
          f.resultWords() + ": an array with the columns " + String.join(", ", f.columns());
    };
  }

  private static String shown(FunctionSpec.Example example) {
    return example.result() instanceof Double d
        ? Numbers.format(d)
        : "\"" + example.result() + "\"";
  }

  private static String orNothing(String words) {
    return words.isEmpty() ? "nothing" : words;
  }

  static String anchor(FunctionSpec f) {
    return f.name().toLowerCase(java.util.Locale.ROOT).replace(".", "");
  }

  private static HandbookPage sources(Markup m) {
    StringBuilder page = new StringBuilder(m.title("Where the figures come from"));
    page.append(
        m.paragraph(
            "Every table of facts names the document of each row. \"published\": the figure was"
                + " read in that document or in a copy of it. \"trade\": common practice without a"
                + " document. \"memory\": well known but not read again for this edition. \"own\":"
                + " a bound that this project set, because no document names one."));
    List<List<String>> all = new ArrayList<>();
    List<List<String>> memory = new ArrayList<>();
    for (FactTables.Use use : FactTables.uses()) {
      List<String> row =
          List.of(
              m.text(use.table()),
              m.text(use.source()),
              m.text(use.basis()),
              m.text(String.valueOf(use.rows())));
      all.add(row);
      if (use.basis().equals("memory")) {
        memory.add(row);
      }
    }
    List<String> head = List.of("Table", "Source", "Basis", "Rows");
    page.append(m.heading("Check before you rely on it", "check"));
    page.append(
        m.paragraph("These rows are from memory. Look them up before anybody depends on them."));
    page.append(m.table(head, memory));
    page.append(m.heading("All tables", "all"));
    page.append(m.table(head, all));
    return new HandbookPage("Where the figures come from", page.toString());
  }
}
