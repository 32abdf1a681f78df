package org.setpower.templates.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.setpower.registry.FunctionSpec;
import org.setpower.registry.Parameter;
import org.setpower.templates.spec.CellFormat;

/**
 * A function over the row's own cells. Arguments are named, so that none can stand in the place of
 * another; the order is the function's.
 */
public final class LeafColumn {
  private final String heading;
  private final FunctionSpec function;
  private final Map<String, String> arguments = new LinkedHashMap<>();
  private String number = "";
  private String unit = "";
  private CellFormat format = CellFormat.WHOLE;

  private LeafColumn(String heading, FunctionSpec function) {
    this.heading = heading;
    this.function = function;
  }

  /** A column that calls a function. */
  public static LeafColumn of(String heading, FunctionSpec function) {
    return new LeafColumn(heading, function);
  }

  /** An argument is a cell of the row, named {@code table.key}: a cell to fill or a result. */
  public LeafColumn with(String parameter, String path) {
    if (function.parameters().stream().noneMatch(p -> p.name().equals(parameter))) {
      throw new IllegalArgumentException(function.name() + " has no argument " + parameter);
    }
    arguments.put(parameter, path);
    return this;
  }

  /** It is blank while this cell of the row has no number. */
  public LeafColumn where(String path) {
    number = path;
    return this;
  }

  /** How its figures are shown. */
  public LeafColumn shown(String inUnit, CellFormat as) {
    unit = inUnit;
    format = as;
    return this;
  }

  public String heading() {
    return heading;
  }

  public String unit() {
    return unit;
  }

  public CellFormat format() {
    return format;
  }

  /** The cells of the row that it reads. */
  public List<String> paths() {
    List<String> paths = new ArrayList<>(arguments.values());
    if (!number.isEmpty()) {
      paths.add(number);
    }
    return paths;
  }

  /**
   * The formula without the equals sign.
   *
   * @param names what stands for a path in a formula
   */
  public String formula(java.util.function.UnaryOperator<String> names) {
    List<String> texts = new ArrayList<>();
    int last = 0;
    for (Parameter<?> parameter : function.parameters()) {
      String path = arguments.get(parameter.name());
      if (path == null && !parameter.isOptional()) {
        throw new IllegalStateException(function.name() + " needs " + parameter.name());
      }
      texts.add(path == null ? "" : names.apply(path));
      last = path == null ? last : texts.size();
    }
    String call = function.name() + "(" + String.join(";", texts.subList(0, last)) + ")";
    return number.isEmpty() ? call : "IF(ISNUMBER(" + names.apply(number) + ");" + call + ";\"\")";
  }
}
