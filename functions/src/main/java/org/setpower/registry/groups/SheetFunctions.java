package org.setpower.registry.groups;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.Properties;
import org.setpower.base.BaseErrorCode;
import org.setpower.base.EvaluationException;
import org.setpower.base.TextEnum;
import org.setpower.base.Unit;
import org.setpower.registry.ArgumentParsers;
import org.setpower.registry.FunctionGroup;
import org.setpower.registry.FunctionSpec;
import org.setpower.registry.Parameter;

/** SHEET: functions about the functions. */
public final class SheetFunctions {
  private SheetFunctions() {}

  static final FunctionGroup GROUP =
      new FunctionGroup("SHEET", "reasons, calculation steps, version");

  /** What SHEET.WHY returns for a cell without an error. */
  public static final String FINE = "fine";

  private static final Parameter<String> FUNCTION_NAME =
      Parameter.of(
          "function_name",
          "Name of a function, such as \"CABLE.DROP\"",
          Unit.NONE,
          Parameter.Shape.SINGLE,
          ArgumentParsers::asText);

  private static final Parameter<Object[]> ARGUMENTS =
      Parameter.of(
              "arguments",
              "The arguments of that function, in its order",
              Unit.NONE,
              Parameter.Shape.REST,
              (name, raw) -> ((Object[][]) raw)[0])
          .orElse(new Object[0], "");

  public static final FunctionSpec WHY =
      GROUP
          .function("WHY")
          .description("Returns the reason why a function gives an error, or \"fine\"")
          .parameters(FUNCTION_NAME, ARGUMENTS)
          .returnsText("Reason")
          .source("the function named")
          .example("=SHEET.WHY(\"CABLE.AREA\";\"12 AWG\")", FINE)
          .implementation(a -> why(a.get(FUNCTION_NAME), a.get(ARGUMENTS)));

  public static final FunctionSpec WORKING =
      GROUP
          .function("WORKING")
          .description("Returns the calculation of a function, step by step")
          .parameters(FUNCTION_NAME, ARGUMENTS)
          .returnsTable("Steps", "symbol", "words", "value", "unit", "source")
          .source("the function named")
          .example("=SHEET.WORKING(\"CABLE.AREA\";\"2.5 mm²\")", "size")
          .implementation(a -> working(a.get(FUNCTION_NAME), a.get(ARGUMENTS)));

  public static final FunctionSpec VERSION =
      GROUP
          .function("VERSION")
          .description("Returns the version of the functions")
          .returnsText("Version")
          .source("this extension")
          .implementation(a -> Version.NUMBER);

  private static Object[][] working(String functionName, Object[] arguments) {
    return named(functionName).working(arguments).stream()
        .map(s -> new Object[] {s.symbol(), s.name(), s.value(), s.unit().symbol(), s.source()})
        .toArray(Object[][]::new);
  }

  private static FunctionSpec named(String functionName) {
    return FunctionRegistry.find(functionName)
        .filter(f -> f != WORKING)
        .orElseThrow(
            () ->
                new EvaluationException(
                    BaseErrorCode.NO_SUCH_FUNCTION, TextEnum.shortened(functionName)));
  }

  private static String why(String functionName, Object[] arguments) {
    FunctionSpec spec = named(functionName);
    try {
      Object result = spec.call(arguments);
      return result instanceof Object[][] cells ? firstRefusal(cells) : FINE;
    } catch (EvaluationException refusal) {
      return refusal.getMessage();
    }
  }

  private static String firstRefusal(Object[][] cells) {
    return Arrays.stream(cells)
        .flatMap(Arrays::stream)
        .filter(EvaluationException.class::isInstance)
        .findFirst()
        .map(r -> ((EvaluationException) r).getMessage())
        .orElse(FINE);
  }

  /** The version, written by the build. */
  private static final class Version {
    static final String NUMBER = read();

    private static String read() {
      try (InputStream in = SheetFunctions.class.getResourceAsStream("version.properties")) {
        Properties properties = new Properties();
        properties.load(in);
        return properties.getProperty("version");
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }
}
