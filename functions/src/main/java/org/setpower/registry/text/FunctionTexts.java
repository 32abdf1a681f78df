package org.setpower.registry.text;

import java.util.List;
import java.util.Set;
import org.setpower.base.Unit;
import org.setpower.registry.FunctionSpec;
import org.setpower.registry.Parameter;
import org.setpower.registry.groups.FunctionRegistry;
import org.setpower.text.MessageCatalog;

/**
 * The words of the wizard in a language. Names of functions and arguments, and the words that
 * arguments accept, are English everywhere.
 */
public final class FunctionTexts {
  private static final String REQUIRED = "required";
  private static final String IF_LEFT_OUT = "if left out";

  private final MessageCatalog words;

  FunctionTexts(MessageCatalog words) {
    this.words = words;
  }

  /** The texts in a language, as {@link MessageCatalog#in} finds it. */
  public static FunctionTexts into(String locale) {
    return new FunctionTexts(MessageCatalog.in(locale, MessageCatalog.Speaker.FUNCTIONS));
  }

  /** The sentence of a function. */
  public String sentence(FunctionSpec f) {
    return words.of(f.sentence());
  }

  /** The words of its result. */
  public String resultWords(FunctionSpec f) {
    return words.of(f.resultWords());
  }

  /** The phrase of an argument. */
  public String phrase(Parameter<?> p) {
    return words.of(p.phrase());
  }

  /** As {@link Parameter#description()}: phrase, unit, what counts when it is left out. */
  public String description(Parameter<?> p) {
    String fallback = p.fallbackWords();
    String written = words.isEnglish() ? fallback : fallback.replaceAll("(\\d)\\.(\\d)", "$1,$2");
    String unit = p.unit().symbol();
    return p.description(
        phrase(p),
        isWord(p.unit()) ? words.of(unit) : unit,
        words.of(REQUIRED),
        words.of(IF_LEFT_OUT),
        inWords(p) ? words.of(fallback) : written);
  }

  /** The words themselves, after everything has been asked for. */
  public MessageCatalog asked() {
    for (FunctionSpec f : FunctionRegistry.all()) {
      sentence(f);
      resultWords(f);
      f.parameters().forEach(this::description);
    }
    for (Unit unit : Unit.values()) {
      if (isWord(unit)) {
        words.of(unit.symbol());
      }
    }
    return words;
  }

  /** Texts that stay English. */
  public Set<String> missing() {
    return asked().missing();
  }

  /** Texts of the file that no function says. */
  public List<String> orphaned() {
    return List.copyOf(asked().orphaned());
  }

  private static boolean isWord(Unit unit) {
    return unit.symbol().matches("\\p{Lower}{4,}");
  }

  /** Whether a default is said in words, not as a number or an accepted word. */
  private static boolean inWords(Parameter<?> p) {
    String words = p.fallbackWords();
    return words.matches(".*\\p{Lower}{3}.*")
        && !p.words().contains(words)
        && !anyNumber(p.phrase()).contains("\"" + anyNumber(words) + "\"");
  }

  /** A phrase that names "bunched 6" names "bunched 2" too. */
  private static String anyNumber(String text) {
    return text.replaceAll("\\d+", "#");
  }
}
