package org.setpower.registry;

import org.setpower.registry.groups.Parameters;

/** The arguments of one call, read by the constants of {@link Parameters}. */
public final class Arguments {
  private final FunctionSpec spec;
  private final Object[] values;

  Arguments(FunctionSpec spec, Object[] values) {
    this.spec = spec;
    this.values = values;
  }

  /** What was given for the parameter, or its default. */
  @SuppressWarnings("unchecked") // the value at its place was read by the same parameter
  public <T> T get(Parameter<T> parameter) {
    return (T) values[spec.indexOf(parameter)];
  }
}
