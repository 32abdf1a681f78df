package org.setpower.templates;

import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.setpower.templates.example.PlanTemplate;

/**
 * Which files a drawing is made from. A workbook has a package of its own, which no other workbook
 * reads, and so has its plan: a change in these draws that workbook again and no other.
 */
final class DrawingInputs {
  private static final Set<String> BOOKS =
      TemplateRegistry.plans().stream().map(DrawingInputs::folder).collect(Collectors.toSet());

  private static final Set<String> PLANS =
      TemplateRegistry.plans().stream().map(DrawingInputs::plan).collect(Collectors.toSet());

  /** The plans whose classes another plan uses. */
  private static final Map<String, String> USED =
      Map.of(
          "org/setpower/plan/travel/", "org/setpower/plan/register/",
          "org/setpower/plan/lighting/", "org/setpower/plan/batteryday/");

  /** Commands that a drawing calls, to set print ranges, and what they need. */
  private static final String CALLED = "command/([A-Z]|document/|menu/|message/|plan/|print/).*";

  private final String own;
  private final Set<String> others;

  DrawingInputs(PlanTemplate workbook) {
    own = folder(workbook);
    String plan = plan(workbook);
    others =
        PLANS.stream()
            .filter(p -> !p.equals(plan) && !p.equals(USED.get(plan)))
            .collect(Collectors.toSet());
  }

  /** Whether the workbook in English is made from this file: its own, or one shared by all. */
  boolean make(String file) {
    return file.startsWith(own) || isShared(file);
  }

  /** Whether this file draws: a class that all workbooks share. */
  static boolean draw(String file) {
    return file.endsWith(".class") && isShared(file);
  }

  /** Whether a file of the packed extension works while the workbook is drawn. */
  boolean work(String file) {
    return !file.matches("(handbook|icons)/.*|LICENSE|.*\\.txt|.*\\.po|description\\.xml")
        && !file.matches("org/setpower/(ui/.*|(?!" + CALLED + ")command/.*)")
        && others.stream().noneMatch(file::startsWith);
  }

  private static boolean isShared(String file) {
    return BOOKS.stream().noneMatch(file::startsWith);
  }

  static String folder(PlanTemplate workbook) {
    return folder(workbook.getClass());
  }

  private static String plan(PlanTemplate workbook) {
    return folder(workbook.workbook().model().getClass());
  }

  private static String folder(Class<?> one) {
    return one.getPackageName().replace('.', '/') + "/";
  }
}
