package org.setpower.command.document;

import com.sun.star.sheet.FormulaToken;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.setpower.registry.FunctionSpec;
import org.setpower.registry.groups.FunctionRegistry;

/**
 * A call of one of our functions within a formula.
 *
 * @param function which
 * @param arguments the tokens of each argument
 * @param isWhole whether the formula is this call and nothing else
 */
public record FunctionCall(FunctionSpec function, List<FormulaToken[]> arguments, boolean isWhole) {
  /** The prefix of our function names in files and formulas. */
  static final String PREFIX = "ORG.SETPOWER.FUNCTIONS.";

  private static final Pattern NAME =
      Pattern.compile(Pattern.quote(PREFIX) + "(\\w+)", Pattern.CASE_INSENSITIVE);

  /** Whether a formula as files hold it mentions a function of ours. */
  public static boolean mentionedIn(String formula) {
    return formula.toUpperCase(Locale.ROOT).contains(PREFIX);
  }

  /**
   * The first name of ours in a formula that this version does not know; empty if there is none.
   */
  public static String unknownIn(String formula) {
    Matcher names = NAME.matcher(formula);
    while (names.find()) {
      if (named(names.group(1)).isEmpty()) {
        return names.group(1).toUpperCase(Locale.ROOT);
      }
    }
    return "";
  }

  /** The calls in the order of reading. */
  public static List<FunctionCall> in(FormulaToken[] formula, FormulaOpcodes opcodes) {
    FormulaToken[] tokens =
        Arrays.stream(formula).filter(t -> t.OpCode != opcodes.spaces).toArray(FormulaToken[]::new);
    List<FunctionCall> calls = new ArrayList<>();
    for (int i = 0; i + 1 < tokens.length; i++) {
      Optional<FunctionSpec> ours = named(tokens[i], opcodes);
      if (ours.isPresent() && tokens[i + 1].OpCode == opcodes.open.OpCode) {
        List<FormulaToken[]> arguments = new ArrayList<>();
        int end = split(tokens, i + 2, opcodes, arguments);
        calls.add(new FunctionCall(ours.get(), arguments, i == 0 && end == tokens.length));
      }
    }
    return calls;
  }

  private static Optional<FunctionSpec> named(FormulaToken token, FormulaOpcodes opcodes) {
    if (token.OpCode != opcodes.external || !(token.Data instanceof String name)) {
      return Optional.empty();
    }
    if (!name.toUpperCase(Locale.ROOT).startsWith(PREFIX)) {
      return Optional.empty();
    }
    return named(name.substring(PREFIX.length()));
  }

  private static Optional<FunctionSpec> named(String method) {
    return FunctionRegistry.all().stream()
        .filter(f -> f.methodName().equalsIgnoreCase(method))
        .findFirst();
  }

  /** Adds the arguments from {@code start} on; gives the place behind the closing bracket. */
  private static int split(
      FormulaToken[] tokens, int start, FormulaOpcodes opcodes, List<FormulaToken[]> arguments) {
    int depth = 0;
    int from = start;
    int i = start;
    for (; i < tokens.length; i++) {
      int opcode = tokens[i].OpCode;
      if (opcode == opcodes.open.OpCode) {
        depth++;
      } else if (opcode == opcodes.close.OpCode && depth-- == 0) {
        break;
      } else if (opcode == opcodes.separator.OpCode && depth == 0) {
        arguments.add(Arrays.copyOfRange(tokens, from, i));
        from = i + 1;
      }
    }
    int end = Math.min(i, tokens.length);
    if (end > start) {
      arguments.add(Arrays.copyOfRange(tokens, from, end));
    }
    return end + 1;
  }
}
