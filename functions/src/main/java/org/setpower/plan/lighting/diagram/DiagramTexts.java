package org.setpower.plan.lighting.diagram;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.setpower.cable.CableSize;
import org.setpower.plan.common.Messages;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Verdict;
import org.setpower.plan.lighting.input.CableType;
import org.setpower.plan.lighting.input.LegWord;
import org.setpower.plan.lighting.input.MeasureSystem;
import org.setpower.plan.lighting.input.NeutralBond;
import org.setpower.text.DateText;
import org.setpower.text.MessageCatalog;

/** Writes names and figures as the language and the units of a document have them. */
final class DiagramTexts {
  private static final String DOT = " · ";

  private final Messages messages;
  private final Locale locale;
  private final MeasureSystem units;

  DiagramTexts(Messages messages, Locale locale, MeasureSystem units) {
    this.messages = messages;
    this.locale = locale;
    this.units = units;
  }

  String say(DiagramWord word, Object... values) {
    return MessageCatalog.fill(messages.text(word.english()), values);
  }

  String number(double value, String pattern) {
    return new DecimalFormat(pattern, DecimalFormatSymbols.getInstance(locale)).format(value);
  }

  private String number(double value) {
    return number(value, "0.##");
  }

  private String amps(double value) {
    return number(value, "0.0") + " A";
  }

  private String percent(double share) {
    return number(100 * share, "0.0") + " %";
  }

  String date(LocalDate date) {
    return DateText.of(date, locale);
  }

  /** Sentences of stops, each behind the word. */
  List<String> stops(List<Finding> findings) {
    return findings.stream()
        .map(f -> Verdict.STOP.code() + ": " + messages.sentence(f, locale))
        .distinct()
        .toList();
  }

  static String join(List<String> parts) {
    return String.join(DOT, parts.stream().filter(p -> p != null && !p.isEmpty()).toList());
  }

  /** C16, 30 mA S. */
  String guard(DiagramNode.Guard guard) {
    List<String> parts = new ArrayList<>();
    if (guard.hasBreaker()) {
      String curve = guard.curve() == null ? "" : guard.curve().word();
      parts.add(curve + number(guard.breaker()) + (curve.isEmpty() ? " A" : ""));
    }
    if (guard.hasRcd()) {
      String type = guard.rcdType() == null ? "" : " " + guard.rcdType().word();
      parts.add(number(guard.rcd()) + " mA" + type);
    }
    return join(parts);
  }

  /** L2 7.0 A. */
  String flow(DiagramNode node) {
    return Double.isNaN(node.amps()) || node.legs() == 0
        ? ""
        : LegWord.text(node.legs()) + " " + amps(node.amps());
  }

  /** L1 7.0, L2 6.1, L3 0.0, N 4.2 A. */
  String legs(DiagramNode.Supply supply) {
    List<String> parts = new ArrayList<>();
    for (int leg = 0; leg < supply.amps().size(); leg++) {
      if (!Double.isNaN(supply.amps().get(leg))) {
        parts.add("L" + (leg + 1) + " " + number(supply.amps().get(leg), "0.0"));
      }
    }
    if (!parts.isEmpty() && !Double.isNaN(supply.neutral())) {
      parts.add("N " + number(supply.neutral(), "0.0"));
    }
    return parts.isEmpty() ? "" : join(parts) + " A";
  }

  /** 3PH 400 V. */
  String system(DiagramNode.Supply supply) {
    String type = supply.type() == null ? "" : supply.type().word();
    String system = supply.system() == null ? "" : supply.system().word();
    String volts = Double.isNaN(supply.volts()) ? "" : " " + number(supply.volts()) + " V";
    return join(List.of(type, system + volts));
  }

  /** 100 kVA, neutral bonded here. */
  String generator(DiagramNode.Supply supply) {
    String size = Double.isNaN(supply.kva()) ? "" : number(supply.kva()) + " kVA";
    String bond =
        supply.bond() == NeutralBond.GENERATOR
            ? say(DiagramWord.BOND_HERE)
            : supply.bond() == NeutralBond.DISTRO ? say(DiagramWord.BOND_DISTRO) : "";
    return join(List.of(size, bond));
  }

  String peak(DiagramNode.Supply supply) {
    if (supply.peakAt().isEmpty()) {
      return "";
    }
    String date = supply.peakOn() == null ? "" : date(supply.peakOn()) + " ";
    return say(DiagramWord.PEAK, date + supply.peakAt());
  }

  /** 3G2.5, 25 m, 1.4 %, total 2.9 %. */
  String cable(DiagramNode.Cable cable) {
    List<String> parts = new ArrayList<>();
    parts.add(conductors(cable));
    if (!Double.isNaN(cable.length())) {
      parts.add(number(cable.length()) + (units == MeasureSystem.US ? " ft" : " m"));
    }
    if (!Double.isNaN(cable.own()) && !Double.isNaN(cable.total())) {
      parts.add(percent(cable.own()) + ", " + say(DiagramWord.TOTAL, percent(cable.total())));
    }
    return join(parts);
  }

  private String conductors(DiagramNode.Cable cable) {
    if (cable.size() == null) {
      return "";
    }
    String size = size(cable.size());
    boolean metric = cable.size().family() == CableSize.Family.METRIC;
    int count = cable.cores().count();
    String one =
        cable.type() == CableType.MULTI_CIRCUIT
            ? say(DiagramWord.MULTI) + " " + size
            : metric && !cable.cores().isSingle()
                ? count + "G" + number(cable.size().value())
                : count + " × " + size;
    return cable.parallel() > 1 ? cable.parallel() + " × (" + one + ")" : one;
  }

  private String size(CableSize size) {
    return size.family() == CableSize.Family.METRIC
        ? number(size.value()) + " mm²"
        : size.toString();
  }

  /** 2 × LED. */
  String load(DiagramLoad load) {
    String item = load.item() == null || load.item().isBlank() ? "?" : load.item();
    String off = load.off() && load.verdict() != Verdict.STOP ? DOT + say(DiagramWord.OFF) : "";
    return Double.isNaN(load.quantity()) ? item : number(load.quantity()) + " × " + item + off;
  }

  /** A name that is longer than this is shortened. */
  static String fit(String name, double points, int most) {
    if (Font.width(name, points, true) <= most) {
      return name;
    }
    int length = name.length();
    while (length > 1 && Font.width(name.substring(0, length) + "…", points, true) > most) {
      length--;
    }
    length -= Character.isHighSurrogate(name.charAt(length - 1)) && length > 1 ? 1 : 0;
    return name.substring(0, length) + "…";
  }

  /** Numbers that follow each other as a range: A1-2…4, A1-6. */
  static List<String> ranges(List<String> outlets) {
    List<String> ranges = new ArrayList<>();
    String prefix = null;
    int first = 0;
    int last = 0;
    for (String outlet : outlets) {
      int digits = outlet.length();
      while (digits > 0
          && outlet.length() - digits < 4
          && Character.isDigit(outlet.charAt(digits - 1))) {
        digits--;
      }
      boolean counted = digits < outlet.length();
      String own = outlet.substring(0, digits);
      int number = counted ? Integer.parseInt(outlet.substring(digits)) : 0;
      if (counted && own.equals(prefix) && number == last + 1) {
        last = number;
        ranges.set(ranges.size() - 1, own + first + (last == first + 1 ? ", " : "…") + last);
      } else {
        ranges.add(outlet);
        prefix = counted ? own : null;
        first = number;
        last = number;
      }
    }
    return ranges;
  }
}
