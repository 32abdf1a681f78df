package org.setpower.text;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Which form of a text goes with a count: the header {@code Plural-Forms} of a PO file, whose rule
 * is an expression of C in n (GNU gettext manual, "Additional functions for plural forms").
 */
final class PluralForms {
  private static final Pattern HEADER =
      Pattern.compile("\\s*nplurals\\s*=\\s*([1-9])\\s*;\\s*plural\\s*=([^;]{1,400});?\\s*");
  private static final Pattern TOKEN =
      Pattern.compile("\\s*(\\d{1,9}|n|\\|\\||&&|[=!<>]=|[<>?:()%*/+!-])\\s*");

  /** The operators of two sides, the weakest first. */
  private static final String[] LEVELS = {"\\|\\|", "&&", "==|!=", "<|>|<=|>=", "\\+|-", "%|\\*|/"};

  /** Two forms, one for 1: English, and every language whose file says nothing. */
  static final PluralForms OF_ENGLISH = of("nplurals=2; plural=(n != 1);");

  private final int count;
  private final String rule;

  private PluralForms(int count, String rule) {
    this.count = count;
    this.rule = rule;
    for (int n = 0; n <= 200; n++) {
      form(n);
    }
  }

  static PluralForms of(String header) {
    Matcher matcher = HEADER.matcher(header);
    if (!matcher.matches()) {
      throw new IllegalStateException("Plural-Forms not understood: " + header);
    }
    return new PluralForms(Integer.parseInt(matcher.group(1)), matcher.group(2).strip());
  }

  /** How many forms each text has. */
  int count() {
    return count;
  }

  /** The number of the form for a count, from 0 on. */
  int form(long n) {
    Evaluation evaluation = new Evaluation(Math.abs(n));
    long form = evaluation.choice();
    if (!evaluation.token.isEmpty() || form < 0 || form >= count) {
      throw new IllegalStateException("Plural-Forms not understood: " + rule);
    }
    return (int) form;
  }

  private final class Evaluation {
    private final Matcher tokens = TOKEN.matcher(rule);
    private final long n;
    private int at;
    private String token = "";

    Evaluation(long n) {
      this.n = n;
      next();
    }

    private String next() {
      String before = token;
      if (at < rule.length() && !tokens.region(at, rule.length()).lookingAt()) {
        throw new IllegalStateException("Plural-Forms not understood: " + rule);
      }
      token = at < rule.length() ? tokens.group(1) : "";
      at = at < rule.length() ? tokens.end() : at;
      return before;
    }

    private void expect(String sign) {
      if (!next().equals(sign)) {
        throw new IllegalStateException("Plural-Forms not understood: " + rule);
      }
    }

    long choice() {
      long condition = level(0);
      if (!token.equals("?")) {
        return condition;
      }
      next();
      long yes = choice();
      expect(":");
      long no = choice();
      return condition != 0 ? yes : no;
    }

    private long level(int level) {
      if (level == LEVELS.length) {
        return value();
      }
      long left = level(level + 1);
      while (token.matches(LEVELS[level])) {
        left = apply(next(), left, level(level + 1));
      }
      return left;
    }

    private long apply(String operator, long a, long b) {
      return switch (operator) {
        case "||" -> a != 0 || b != 0 ? 1 : 0;
        case "&&" -> a != 0 && b != 0 ? 1 : 0;
        case "==" -> a == b ? 1 : 0;
        case "!=" -> a != b ? 1 : 0;
        case "<" -> a < b ? 1 : 0;
        case ">" -> a > b ? 1 : 0;
        case "<=" -> a <= b ? 1 : 0;
        case ">=" -> a >= b ? 1 : 0;
        case "+" -> a + b;
        case "-" -> a - b;
        case "*" -> a * b;
        default -> divided(operator, a, b);
      };
    }

    private long divided(String operator, long a, long b) {
      if (b == 0) {
        throw new IllegalStateException("Plural-Forms not understood: " + rule);
      }
      return operator.equals("%") ? a % b : a / b;
    }

    private long value() {
      String value = next();
      if (value.equals("n")) {
        return n;
      } else if (value.equals("!")) {
        return value() == 0 ? 1 : 0;
      } else if (value.equals("(")) {
        long inside = choice();
        expect(")");
        return inside;
      } else if (value.matches("\\d+")) {
        return Long.parseLong(value);
      }
      throw new IllegalStateException("Plural-Forms not understood: " + rule);
    }
  }
}
