package org.setpower.command.trace;

import static org.setpower.command.message.CommandMessages.say;

import com.sun.star.beans.XPropertySet;
import com.sun.star.sheet.FormulaToken;
import com.sun.star.sheet.XArrayFormulaRange;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XFormulaTokens;
import com.sun.star.sheet.XSheetCellCursor;
import com.sun.star.sheet.XSheetCellRange;
import com.sun.star.table.CellAddress;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCell;
import com.sun.star.uno.Exception;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.setpower.addin.DocumentCalendar;
import org.setpower.base.CalculationStep;
import org.setpower.base.EvaluationException;
import org.setpower.command.document.CalcDocument;
import org.setpower.command.document.CellValues;
import org.setpower.command.document.FormulaOpcodes;
import org.setpower.command.document.FunctionCall;
import org.setpower.command.message.CommandMessages;
import org.setpower.command.message.UserMessageException;
import org.setpower.command.plan.PlanFile;
import org.setpower.registry.FunctionSpec;
import org.setpower.registry.Parameter;
import org.setpower.uno.Uno;

/** Traces the calculation of our functions in a cell, or the reason for their errors. */
public final class CalculationTracer {
  private final CalcDocument book;
  private final FormulaOpcodes opcodes;

  public CalculationTracer(CalcDocument book) throws Exception {
    this.book = book;
    opcodes = new FormulaOpcodes(book);
  }

  /** Everything about the calls in a cell. */
  public CalculationTrace explain(XCell cell) throws Exception {
    CellAddress at = CalcDocument.address(cell);
    String name = CalcDocument.name(book.sheet(at.Sheet)) + "." + CalcDocument.address(at);
    CalculationTrace explanation = new CalculationTrace(say("{} shows {}", name, shown(cell)));
    explanation.add("The formula", (String) Uno.get(cell, "FormulaLocal"));
    if (explainPlan(cell, explanation)) {
      return explanation;
    }
    List<FunctionCall> calls = calls(cell);
    for (FunctionCall call : calls) {
      explain(call, cell, explanation);
    }
    String unknown = unknown(cell);
    if (!unknown.isEmpty()) {
      explanation.add("Problem", unknown);
    } else if (calls.isEmpty()) {
      throw new UserMessageException(
          "{} contains no Set Power function. Select a cell with one, e.g." + " =CABLE.DROP(…).",
          name);
    }
    return explanation;
  }

  /** Explains the results of a plan that a cell shows; false if it shows none. */
  private boolean explainPlan(XCell cell, CalculationTrace explanation) throws Exception {
    Optional<PlanFile> plan = PlanFile.of(book);
    List<PlanFile.Figure> figures = plan.isEmpty() ? List.of() : plan.get().figures(cell);
    if (figures.isEmpty()) {
      return false;
    }
    PlanTracer tracer = new PlanTracer(plan.get());
    for (PlanFile.Figure figure : figures) {
      tracer.explain(figure, explanation);
    }
    return true;
  }

  private static String shown(XCell cell) {
    String shown = CalcDocument.shown(cell);
    return shown.isEmpty() ? say("nothing") : shown;
  }

  /** Why a cell with functions of ours shows an error; empty if none of them is the cause. */
  public String reason(XCell cell) throws Exception {
    String unknown = unknown(cell);
    if (!unknown.isEmpty()) {
      return unknown;
    }
    for (FunctionCall call : calls(cell)) {
      Asked asked = ask(call, cell);
      if (asked.refusal != null) {
        return call.function().name() + ": " + asked.refusal.getMessage();
      }
      if (!asked.troubles.isEmpty()) {
        return call.function().name() + ": " + String.join("; ", asked.troubles) + ".";
      }
    }
    return "";
  }

  /** The sentence about a document of a newer version; else empty. */
  private static String unknown(XCell cell) {
    String name = FunctionCall.unknownIn(cell.getFormula());
    return name.isEmpty()
        ? ""
        : say(
            "This version of Set Power does not know the function {}: the document comes from a"
                + " newer one. Install that, and the figures come back.",
            name);
  }

  List<FunctionCall> calls(XCell cell) throws Exception {
    FormulaToken[] tokens = Uno.as(XFormulaTokens.class, origin(cell)).getTokens();
    return FunctionCall.in(tokens, opcodes);
  }

  /** The cell that holds the formula: the first of an array formula, else the cell itself. */
  private XCell origin(XCell cell) throws Exception {
    CellRangeAddress block = block(cell);
    return book.cell(new CellAddress(block.Sheet, block.StartColumn, block.StartRow));
  }

  private CellRangeAddress block(XCell cell) throws Exception {
    XSheetCellRange range = Uno.as(XSheetCellRange.class, cell);
    if (Uno.as(XArrayFormulaRange.class, range).getArrayFormula().isEmpty()) {
      return Uno.as(XCellRangeAddressable.class, cell).getRangeAddress();
    }
    XSheetCellCursor cursor = range.getSpreadsheet().createCursorByRange(range);
    cursor.collapseToCurrentArray();
    return Uno.as(XCellRangeAddressable.class, cursor).getRangeAddress();
  }

  /** The result of a call in a cell. */
  private record Asked(
      List<Argument> arguments,
      List<String> troubles,
      EvaluationException refusal,
      List<CalculationStep> steps) {}

  private Asked ask(FunctionCall call, XCell cell) throws Exception {
    CellRangeAddress block = block(cell);
    CellAddress at = CalcDocument.address(cell);
    CellAddress base = new CellAddress(block.Sheet, block.StartColumn, block.StartRow);
    FunctionSpec function = call.function();
    List<Argument> arguments = new ArrayList<>();
    List<String> troubles = new ArrayList<>();
    try (ArgumentReader reader = new ArgumentReader(book, opcodes, base)) {
      for (int i = 0; i < call.arguments().size(); i++) {
        Argument argument = reader.read(call.arguments().get(i));
        if (shape(function, i) == Parameter.Shape.SINGLE) {
          argument = argument.at(at.Row - base.Row, at.Column - base.Column);
        }
        arguments.add(argument);
        if (argument.isTroubled()) {
          troubles.add(
              say("{} comes from {}: {}", name(function, i), argument.where(), argument.trouble()));
        }
      }
    }
    if (!troubles.isEmpty()) {
      return new Asked(arguments, troubles, null, List.of());
    }
    Object[] values = arguments.stream().map(Argument::value).toArray();
    XPropertySet document = Uno.as(XPropertySet.class, book.document());
    try {
      List<CalculationStep> steps =
          function.working(DocumentCalendar.of(document).inOurs(function, values));
      return new Asked(arguments, troubles, null, steps);
    } catch (EvaluationException refusal) {
      return new Asked(arguments, troubles, refusal, List.of());
    }
  }

  private static Parameter.Shape shape(FunctionSpec function, int i) {
    return i < function.parameters().size()
        ? function.parameters().get(i).shape()
        : Parameter.Shape.REST;
  }

  private static String name(FunctionSpec function, int i) {
    List<Parameter<?>> parameters = function.parameters();
    return parameters.get(Math.min(i, parameters.size() - 1)).name();
  }

  private void explain(FunctionCall call, XCell cell, CalculationTrace explanation)
      throws Exception {
    FunctionSpec function = call.function();
    Asked asked = ask(call, cell);
    explanation.add(function.name(), CommandMessages.functions().sentence(function) + ".");
    if (asked.steps.isEmpty()) {
      explainFault(function, asked, explanation);
      explanation.add("Inputs", given(function, asked.arguments));
    } else {
      int inputs = function.parameters().size();
      explanation.add("Inputs", inputs(function, asked));
      int results = function.kind() == FunctionSpec.Kind.TABLE ? rows(asked) : 1;
      int result = asked.steps.size() - results;
      explanation.add("Steps", lines(asked.steps.subList(inputs, result)));
      explanation.add("Result", results(function, asked.steps, result));
      if (call.isWhole() && differs(asked.steps.get(result), cell)) {
        explanation.add(
            "The cell shows something else",
            say(
                "Recalculate with Ctrl+Shift+F9; a cell set not to calculate keeps its old"
                    + " figure."));
      }
    }
    explanation.add("By the formula", function.formula());
    explanation.add("Source", function.source());
    explanation.add("Caution", function.caution());
  }

  private static List<CalculationTrace.Line> results(
      FunctionSpec function, List<CalculationStep> steps, int first) {
    if (function.kind() == FunctionSpec.Kind.TABLE) {
      return lines(steps.subList(first, steps.size()));
    }
    CalculationStep result = steps.get(first);
    return List.of(
        line(result, CommandMessages.functions().resultWords(function), result.source()));
  }

  private static int rows(Asked asked) {
    return (int) asked.steps.stream().filter(s -> s.symbol().matches("row \\d+")).count();
  }

  private static boolean differs(CalculationStep result, XCell cell) throws Exception {
    return result.value() instanceof Double number
        && cell.getError() == 0
        && !CellValues.isText(cell)
        && number != cell.getValue();
  }

  private static void explainFault(
      FunctionSpec function, Asked asked, CalculationTrace explanation) {
    String why = asked.refusal == null ? "" : asked.refusal.getMessage();
    explanation.add("Error", why);
    List<CalculationTrace.Line> troubles = new ArrayList<>();
    asked.troubles.forEach(
        t -> troubles.add(CalculationTrace.Line.of(say("{}. Select that cell and ask again.", t))));
    explanation.add("Error", troubles);
    List<CalculationTrace.Line> instead = new ArrayList<>();
    for (Parameter<?> parameter : function.parameters()) {
      if (why.matches("(?s).*\\b" + parameter.name() + "\\b.*")) {
        String words = String.join(", ", parameter.words());
        instead.add(
            CalculationTrace.Line.of(
                parameter.name()
                    + ": "
                    + CommandMessages.functions().description(parameter)
                    + (words.isEmpty() ? "" : ": " + words)));
      }
    }
    function
        .examples()
        .forEach(e -> instead.add(CalculationTrace.Line.of(say("like this: {}", e.formula()))));
    explanation.add("Correction", instead);
  }

  private static List<CalculationTrace.Line> given(
      FunctionSpec function, List<Argument> arguments) {
    List<CalculationTrace.Line> lines = new ArrayList<>();
    for (int i = 0; i < arguments.size(); i++) {
      Argument argument = arguments.get(i);
      Parameter<?> parameter =
          function.parameters().get(Math.min(i, function.parameters().size() - 1));
      String unit = argument.value() instanceof Double ? parameter.unit().symbol() : "";
      lines.add(
          new CalculationTrace.Line(
              parameter.name(),
              value(argument),
              unit,
              CommandMessages.functions().phrase(parameter),
              argument.where()));
    }
    return lines;
  }

  private static Object value(Argument argument) {
    if (argument.isTroubled()) {
      return "?";
    }
    if (argument.value() instanceof Object[][] range) {
      return say("{} rows × {}", range.length, range[0].length);
    }
    return argument.value() == null ? say("left out") : argument.value();
  }

  /** The inputs, with the cells they come from in the place of "given". */
  private static List<CalculationTrace.Line> inputs(FunctionSpec function, Asked asked) {
    List<CalculationTrace.Line> lines = new ArrayList<>();
    for (int i = 0; i < function.parameters().size(); i++) {
      boolean given = i < asked.arguments.size() && asked.arguments.get(i).value() != null;
      CalculationStep step = asked.steps.get(i);
      String words = CommandMessages.functions().phrase(function.parameters().get(i));
      String source = given ? asked.arguments.get(i).where() : say("default");
      lines.add(line(step, words, source));
    }
    return lines;
  }

  private static List<CalculationTrace.Line> lines(List<CalculationStep> steps) {
    return steps.stream().map(s -> line(s, s.name(), s.source())).toList();
  }

  private static CalculationTrace.Line line(CalculationStep step, String words, String source) {
    String unit = step.value() instanceof Double ? step.unit().symbol() : "";
    return new CalculationTrace.Line(step.symbol(), step.value(), unit, words, source);
  }
}
