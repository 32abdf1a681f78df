package org.setpower.registry;

import java.util.ArrayList;
import java.util.List;

/** The functions of one part of the trade, in the order of their declaration. */
public final class FunctionGroup {
  private final String prefix;
  private final String title;
  private final List<FunctionSpec> functions = new ArrayList<>();

  public FunctionGroup(String prefix, String title) {
    this.prefix = prefix;
    this.title = title;
  }

  /** Starts the declaration of {@code PREFIX.NAME}; its last step enters it here. */
  public FunctionSpec function(String name) {
    return new FunctionSpec(this, prefix + "." + name);
  }

  void enter(FunctionSpec spec) {
    functions.add(spec);
  }

  /** The part before the dot: {@code CABLE}. */
  public String prefix() {
    return prefix;
  }

  /** What the group is about: "wire and runs". */
  public String title() {
    return title;
  }

  public List<FunctionSpec> functions() {
    return List.copyOf(functions);
  }
}
