package org.setpower.templates.example;

import org.setpower.templates.spec.Template;
import org.setpower.templates.uno.Filling;

/** A declared file and how its example is filled. */
public interface Workbook {
  /** What is in it. */
  Template template();

  /** Fills it with the scenario. */
  void fill(Filling filling);

  /** The title of the filled example. */
  String exampleTitle();
}
