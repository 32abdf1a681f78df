package org.setpower.templates;

import com.sun.star.lang.XComponent;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.setpower.office.Office;
import org.setpower.templates.example.TemplateDefinition;
import org.setpower.templates.lighting.LightingPlan;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.spec.WorkbookSpec;
import org.setpower.templates.uno.ExampleLoader;
import org.setpower.templates.uno.WorkbookWriter;
import org.setpower.text.MessageCatalog;

/** The examples of the scenario with their big tables filled to the last row. */
public final class FullExamples {
  private final TemplateDefinition workbook;
  private final Map<String, List<Map<String, String>>> rows = new LinkedHashMap<>();

  private FullExamples(TemplateDefinition workbook) {
    this.workbook = workbook;
  }

  /** All of them. */
  public static List<FullExamples> all() {
    return List.of(lighting());
  }

  /** 200 loads, 100 runs, 60 packs. */
  public static FullExamples lighting() {
    FullExamples stress = new FullExamples(new LightingPlan());
    stress.repeat("Loads", "lighting-loads", 200);
    stress.repeat("Packs", "lighting-packs", 60);
    List<Map<String, String>> runs = stress.repeat("Runs", "lighting-runs", 100);
    for (int i = firstTime(runs, "To"); i < runs.size(); i++) {
      runs.get(i).put("To", "spare line " + (i + 1));
      runs.get(i).put("Length", String.valueOf(5 + i % 46));
    }
    return stress;
  }

  /** The row from which on the rows of the scenario come again. */
  private static int firstTime(List<Map<String, String>> rows, String key) {
    String first = rows.get(0).get(key);
    int again = 1;
    while (!rows.get(again).get(key).equals(first)) {
      again++;
    }
    return again;
  }

  private List<Map<String, String>> repeat(String tab, String name, int room) {
    List<Map<String, String>> lines = scenario(name);
    List<Map<String, String>> many = new ArrayList<>();
    for (int i = 0; i < room; i++) {
      many.add(new LinkedHashMap<>(lines.get(i % lines.size())));
    }
    rows.put(tab, many);
    return many;
  }

  /** The file name without its ending. */
  public String name() {
    return workbook.template().fileName() + "-stress";
  }

  /** What it is filled with: the rows of a tab's table, by their headings. */
  public List<Map<String, String>> rows(String tab) {
    return rows.get(tab);
  }

  /** The rows of a table of the scenario, by their headings. */
  public static List<Map<String, String>> scenario(String table) {
    return ExampleLoader.lines(table);
  }

  /** Draws it into a folder; gives its file. */
  public Path draw(Office office, Path folder) throws IOException {
    return fill(office, WorkbookWriter.of(office, workbook.template()), folder);
  }

  /** Fills the drawn template, found in a folder, and stores it in another; gives its file. */
  public Path fill(Office office, Path templates, Path folder) throws IOException {
    WorkbookSpec template = workbook.template();
    XComponent document = office.open(templates.resolve(template.fileName() + ".ots"));
    return fill(office, WorkbookWriter.over(document, template, MessageCatalog.english()), folder);
  }

  private Path fill(Office office, WorkbookWriter drawing, Path folder) throws IOException {
    ExampleLoader filling = new ExampleLoader(drawing);
    workbook.fill(filling);
    rows.forEach((tab, lines) -> filling.rows(table(tab), name(), lines));
    filling.calculated();
    drawing.properties(workbook.exampleTitle());
    drawing.finish();
    Path file = folder.resolve(name() + ".ods");
    office.store(drawing.document(), "calc8", file);
    Office.discard(drawing.document());
    return file;
  }

  private TableSpec table(String tab) {
    return workbook.template().tabs().stream()
        .filter(t -> t.name().equals(tab))
        .flatMap(t -> t.tables().stream())
        .filter(TableSpec.class::isInstance)
        .map(TableSpec.class::cast)
        .findFirst()
        .orElseThrow();
  }

  /** Arguments: the packed extension, the folder to draw all of them into. */
  public static void main(String[] arguments) throws IOException {
    try (Office office = Office.start(Path.of(arguments[0]))) {
      for (FullExamples stress : all()) {
        System.out.println(stress.draw(office, Path.of(arguments[1])));
      }
    }
  }
}
