package org.setpower.templates.example;

import org.setpower.templates.spec.WorkbookSpec;
import org.setpower.templates.uno.ExampleLoader;

/** A declared file and how its example is filled. */
public interface TemplateDefinition {
  /** What is in it. */
  WorkbookSpec template();

  /** Fills it with the scenario. */
  void fill(ExampleLoader filling);

  /** The title of the filled example. */
  String exampleTitle();
}
