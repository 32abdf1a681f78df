package org.setpower.templates;

import java.util.Set;
import java.util.stream.Collectors;

/**
 * Which files of this module a drawing is made from. A workbook has a package of its own, which no
 * other workbook reads: a change in it draws that workbook again and no other.
 */
final class DrawingInputs {
  private static final Set<String> BOOKS =
      TemplateRegistry.plans().stream().map(DrawingInputs::folder).collect(Collectors.toSet());

  private final String own;

  DrawingInputs(Object workbook) {
    own = folder(workbook);
  }

  /** Whether the workbook in English is made from this file: its own, or one shared by all. */
  boolean make(String file) {
    return file.startsWith(own) || isShared(file);
  }

  /** Whether this file draws: a class that all workbooks share. */
  static boolean draw(String file) {
    return file.endsWith(".class") && isShared(file);
  }

  /** Whether a file of the packed extension works while sheets are drawn, and is not only read. */
  static boolean work(String file) {
    return !file.matches("(handbook|icons)/.*|LICENSE|.*\\.txt|.*\\.po|description\\.xml");
  }

  private static boolean isShared(String file) {
    return BOOKS.stream().noneMatch(file::startsWith);
  }

  static String folder(Object workbook) {
    return workbook.getClass().getPackageName().replace('.', '/') + "/";
  }
}
