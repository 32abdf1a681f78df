package org.setpower.plan.common;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.MessageFormat;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.setpower.plan.finding.Finding;

/**
 * The English sentences, from {@code findings.properties}. Numbers and dates are written as the
 * locale writes them; the words are English whatever the locale.
 */
public final class EnglishMessages implements Messages {
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
    Object[] shown = finding.arguments().stream().map(a -> shown(a, locale)).toArray();
    String key = finding.key().key();
    MessageFormat format =
        formats.computeIfAbsent(List.of(key, locale), k -> new MessageFormat(pattern(key), locale));
    // a format is not for two threads at once
    return ((MessageFormat) format.clone()).format(shown);
  }

  private String pattern(String key) {
    String pattern = sentences.getProperty(key);
    if (pattern == null) {
      throw new IllegalStateException("no sentence for " + key);
    }
    return pattern;
  }

  private static Object shown(Object argument, Locale locale) {
    if (argument instanceof InputColumn column) {
      return column.heading();
    }
    if (argument instanceof LocalDate date) {
      return DateTimeFormatter.ofPattern("d MMM uuuu", locale).format(date);
    }
    if (argument instanceof LocalTime time) {
      return DateTimeFormatter.ofPattern("HH:mm", locale).format(time);
    }
    return argument;
  }
}
