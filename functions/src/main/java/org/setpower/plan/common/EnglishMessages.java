package org.setpower.plan.common;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.text.DecimalFormat;
import java.text.Format;
import java.text.MessageFormat;
import java.text.NumberFormat;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.MonthDay;
import java.time.chrono.IsoChronology;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.FormatStyle;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.setpower.plan.finding.Finding;
import org.setpower.text.DateText;

/**
 * The English sentences, from {@code findings.properties}. Numbers and dates are written as the
 * locale writes them; the words are English whatever the locale.
 */
public class EnglishMessages implements Messages {
  private static final int MOST_DECIMALS = 3;
  private static final double LEAST = 1e-4;

  private final Properties sentences = new Properties();
  private final Map<List<Object>, MessageFormat> formats = new ConcurrentHashMap<>();

  public EnglishMessages() {
    try (InputStream in = EnglishMessages.class.getResourceAsStream("findings.properties")) {
      sentences.load(new InputStreamReader(in, StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException("findings.properties", e);
    }
  }

  /** All keys that have a sentence. */
  public Set<String> keys() {
    return sentences.stringPropertyNames();
  }

  @Override
  public String sentence(Finding finding, Locale locale) {
    return formatted(pattern(finding.key().key()), finding.arguments(), locale);
  }

  @Override
  public String phrase(Phrase phrase, Locale locale) {
    return formatted(phrase.pattern(), phrase.arguments(), locale);
  }

  private String formatted(String pattern, List<Object> arguments, Locale locale) {
    Object[] shown = arguments.stream().map(a -> shown(a, locale)).toArray();
    MessageFormat format =
        formats.computeIfAbsent(
            List.of(pattern, locale), k -> new MessageFormat(text(pattern), locale));
    // a format is not for two threads at once
    MessageFormat own = (MessageFormat) format.clone();
    tellApart(own, shown);
    return own.format(shown);
  }

  /** Adds decimals where two figures that differ, such as a value and its limit, read the same. */
  private static void tellApart(MessageFormat format, Object... arguments) {
    Format[] formats = format.getFormatsByArgumentIndex();
    for (int i = 0; i < Math.min(formats.length, arguments.length); i++) {
      for (int j = i + 1; j < Math.min(formats.length, arguments.length); j++) {
        if (formats[i] instanceof DecimalFormat one
            && formats[j] instanceof DecimalFormat other
            && arguments[i] instanceof Number value
            && arguments[j] instanceof Number limit
            && one.getMultiplier() == other.getMultiplier()) {
          tellApart(one, value.doubleValue(), other, limit.doubleValue());
        }
      }
    }
  }

  private static void tellApart(
      DecimalFormat one, double value, DecimalFormat other, double limit) {
    double apart = Math.abs(value - limit) * one.getMultiplier();
    for (int more = 0; more < MOST_DECIMALS && apart > LEAST && apart < 1; more++) {
      if (rounded(one, value) != rounded(other, limit)) {
        return;
      }
      one.setMaximumFractionDigits(one.getMaximumFractionDigits() + 1);
      other.setMaximumFractionDigits(other.getMaximumFractionDigits() + 1);
    }
  }

  private static double rounded(DecimalFormat format, double value) {
    double unit = Math.pow(10, format.getMaximumFractionDigits());
    return Math.rint(value * format.getMultiplier() * unit) / unit;
  }

  @Override
  public String text(String english) {
    return english;
  }

  /** The English sentence of a key, as a pattern. */
  final String pattern(String key) {
    String pattern = sentences.getProperty(key);
    if (pattern == null) {
      throw new IllegalStateException("no sentence for " + key);
    }
    return pattern;
  }

  private Object shown(Object argument, Locale locale) {
    if (argument instanceof InputColumn column) {
      return column.heading(this);
    }
    if (argument instanceof InputTable<?> table) {
      return text(table.heading());
    }
    if (argument instanceof ResultTable<?> table) {
      return text(table.heading());
    }
    if (argument instanceof Phrase phrase) {
      return phrase(phrase, locale);
    }
    if (argument instanceof Finding finding) {
      return sentence(finding, locale);
    }
    if (argument instanceof LocalDate date) {
      return DateText.of(date, locale);
    }
    if (argument instanceof InputColumn.TypedDate typed) {
      String pattern =
          DateTimeFormatterBuilder.getLocalizedDateTimePattern(
              FormatStyle.SHORT, null, IsoChronology.INSTANCE, locale);
      return DateTimeFormatter.ofPattern(pattern.replaceAll("y+", "uuuu"), locale)
          .format(typed.date());
    }
    if (argument instanceof MonthDay day) {
      return DateText.of(day, locale);
    }
    if (argument instanceof BigDecimal amount) {
      // money: as many digits as its currency has
      NumberFormat digits = NumberFormat.getNumberInstance(locale);
      digits.setMinimumFractionDigits(Math.max(0, amount.scale()));
      digits.setMaximumFractionDigits(Math.max(0, amount.scale()));
      return digits.format(amount);
    }
    if (argument instanceof LocalTime time) {
      return DateTimeFormatter.ofPattern("HH:mm", locale).format(time);
    }
    return argument;
  }
}
