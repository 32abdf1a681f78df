package org.setpower.text;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Properties;
import java.util.TreeMap;
import org.setpower.base.Unit;
import org.setpower.registry.FunctionSpec;
import org.setpower.registry.Parameter;
import org.setpower.registry.PlanFunction;
import org.setpower.registry.groups.FunctionRegistry;

/**
 * The words of the wizard in another language. Names of functions and arguments, and the words that
 * arguments accept, are English everywhere. What has no translation stays English.
 *
 * <p>The texts stand in {@code words_<language>.properties} under these keys:
 *
 * <ul>
 *   <li>{@code CABLE.DROP} – the sentence; {@code CABLE.DROP.result} – the words of the result
 *   <li>{@code amps} – the phrase of an argument. Where functions use one name for different
 *       things: {@code amps@CABLE.BREAKER}, which holds for all that use the phrase of that one
 *   <li>{@code amps.default}, {@code amps.default@CABLE.BREAKER} – what counts when it is left out,
 *       where that is said in words
 *   <li>{@code unit.share} – a unit that is a word
 *   <li>{@code required} – stands behind an argument that must be there
 *   <li>{@code if_left_out} – stands before what counts when one is left out
 * </ul>
 */
public final class FunctionTexts {
  /** The languages, as ISO 639 codes. */
  public static final List<String> LANGUAGES = List.of("de", "fr", "es");

  private static final String REQUIRED = "required";
  private static final String IF_LEFT_OUT = "if_left_out";

  private final Map<String, String> texts = new TreeMap<>();

  /** What the functions say under the name of an argument, and which of them say it. */
  private final Map<String, Map<String, List<FunctionSpec>>> meanings = new LinkedHashMap<>();

  private final Map<String, String> english = new LinkedHashMap<>();

  FunctionTexts(Properties file) {
    file.stringPropertyNames().forEach(key -> texts.put(key, file.getProperty(key).strip()));
    for (FunctionSpec f : FunctionRegistry.all()) {
      english.put(f.name(), f.sentence());
      english.put(f.name() + ".result", f.resultWords());
      for (Parameter<?> p : f.parameters()) {
        note(name(p), p.phrase(), f);
        if (inWords(p)) {
          note(name(p) + ".default", p.fallbackWords(), f);
        }
      }
    }
    meanings.forEach((name, those) -> those.keySet().forEach(t -> english.put(key(name, t), t)));
    english.put(REQUIRED, "required");
    english.put(IF_LEFT_OUT, "if left out");
    for (Unit unit : Unit.values()) {
      if (unit.symbol().matches("\\p{Lower}{4,}")) {
        english.put("unit." + unit.symbol(), unit.symbol());
      }
    }
  }

  /** The name under which its texts stand: all tables of plans have one. */
  private static String name(Parameter<?> p) {
    return p.name().endsWith(PlanFunction.TABLE) ? "table" : p.name();
  }

  private void note(String name, String text, FunctionSpec f) {
    meanings
        .computeIfAbsent(name, n -> new LinkedHashMap<>())
        .computeIfAbsent(text, t -> new ArrayList<>())
        .add(f);
  }

  /** Reads the texts of one of the {@link #LANGUAGES}. */
  public static FunctionTexts into(String language) {
    Properties file = new Properties();
    String name = "words_" + language + ".properties";
    try (Reader reader =
        new InputStreamReader(
            FunctionTexts.class.getResourceAsStream(name), StandardCharsets.UTF_8)) {
      file.load(reader);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return new FunctionTexts(file);
  }

  /** The sentence of a function. */
  public String sentence(FunctionSpec f) {
    return text(f.name()).orElse(f.sentence());
  }

  /** The words of its result. */
  public String resultWords(FunctionSpec f) {
    return text(f.name() + ".result").orElse(f.resultWords());
  }

  /** The phrase of an argument. */
  public String phrase(Parameter<?> p) {
    return meaning(name(p), p.phrase()).orElse(p.phrase());
  }

  /** As {@link Parameter#description()}: phrase, unit, what counts when it is left out. */
  public String description(Parameter<?> p) {
    String words =
        inWords(p)
            ? meaning(name(p) + ".default", p.fallbackWords()).orElse(p.fallbackWords())
            : p.fallbackWords().replaceAll("(\\d)\\.(\\d)", "$1,$2");
    String unit = p.unit().symbol();
    return p.description(
        phrase(p),
        text("unit." + unit).orElse(unit),
        text(REQUIRED).orElse(english.get(REQUIRED)),
        text(IF_LEFT_OUT).orElse(english.get(IF_LEFT_OUT)),
        words);
  }

  /** All English texts by key. */
  public Map<String, String> english() {
    return Map.copyOf(english);
  }

  /** The text under a key of {@link #english()}, if it is translated. */
  public Optional<String> text(String key) {
    String name = key.replaceFirst("@.*", "");
    return meanings.containsKey(name)
        ? meaning(name, english.get(key))
        : Optional.ofNullable(texts.get(key));
  }

  /** Keys of texts that stay English. */
  public List<String> missing() {
    return english.keySet().stream().filter(key -> text(key).isEmpty()).toList();
  }

  /** Keys of the file that belong to nothing in the catalogue. */
  public List<String> orphaned() {
    return texts.keySet().stream().filter(key -> !belongs(key)).toList();
  }

  /** A name alone whose meaning has split belongs still: its texts count as missing. */
  private boolean belongs(String key) {
    String[] parts = key.split("@", 2);
    if (parts.length == 1) {
      return english.containsKey(key) || meanings.containsKey(key);
    }
    return meanings.getOrDefault(parts[0], Map.of()).values().stream()
        .flatMap(List::stream)
        .anyMatch(f -> f.name().equals(parts[1]));
  }

  /** Whether a default is said in words, not as a number or an accepted word. */
  private static boolean inWords(Parameter<?> p) {
    String words = p.fallbackWords();
    return words.matches(".*\\p{Lower}{3}.*")
        && !p.words().contains(words)
        && !p.phrase().contains("\"" + words + "\"");
  }

  private String key(String name, String text) {
    Map<String, List<FunctionSpec>> those = meanings.get(name);
    return those.size() == 1 ? name : name + "@" + those.get(text).get(0).name();
  }

  private Optional<String> meaning(String name, String text) {
    Map<String, List<FunctionSpec>> those = meanings.getOrDefault(name, Map.of());
    if (those.size() == 1 && texts.containsKey(name)) {
      return Optional.of(texts.get(name));
    }
    return those.getOrDefault(text, List.of()).stream()
        .map(f -> texts.get(name + "@" + f.name()))
        .filter(Objects::nonNull)
        .findFirst();
  }
}
