package org.setpower.text;

import java.io.InputStream;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentSkipListSet;
import java.util.stream.Stream;

/**
 * What users read, in their language. The British English text in the code is the key; what is
 * missing stays as it is.
 *
 * <p>The translations are in one PO file a language beside this class, {@code de.po}; their context
 * says who speaks. A file of a country, {@code en_US.po}, holds only what differs from its
 * language. {@code {}} stands for a value; a translation that needs the values in another order
 * writes {@code {1}}, {@code {2}}.
 */
public final class MessageCatalog {
  /** The language that everything is written in. */
  public static final String ENGLISH = "en";

  /** The languages that everything is translated into: one word here and one PO file each. */
  public static final List<String> LANGUAGES = List.of("de", "fr", "es");

  /** Countries whose words differ from their language in some places: one PO file each. */
  public static final List<String> COUNTRIES = List.of("en-US");

  /** Who speaks: the context of a text in the files. */
  public enum Speaker {
    FUNCTIONS,
    /** The results, findings and reasons of whole plans. */
    PLANS,
    SHEETS,
    COMMANDS;

    String context() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  private static final Map<String, MessageCatalog> READ = new ConcurrentHashMap<>();

  private final String language;
  private final String tag;
  private final Map<String, List<String>> texts;
  private final PluralForms plurals;

  /** Texts of another speaker, where this one has none. */
  private final Map<String, List<String>> others;

  private final Set<String> asked = new ConcurrentSkipListSet<>();

  private MessageCatalog(
      String tag,
      Map<String, List<String>> texts,
      PluralForms plurals,
      Map<String, List<String>> others) {
    this.tag = tag;
    language = tag.replaceFirst("-.*", "");
    this.texts = texts;
    this.plurals = plurals;
    this.others = others;
  }

  /** The English words themselves. */
  public static MessageCatalog english() {
    return new MessageCatalog(ENGLISH, Map.of(), PluralForms.OF_ENGLISH, Map.of());
  }

  /**
   * The words of a language; the file is read once. A text of the country comes before that of the
   * language; English where there is neither. Sheets show headings of plans: what they do not
   * translate themselves is looked up there.
   *
   * @param locale an ISO 639 code, with or without a country: de, de-AT
   */
  public static MessageCatalog in(String locale, Speaker speaker) {
    String known = known(locale);
    MessageCatalog read = READ.get(known + " " + speaker);
    if (read == null) {
      read = find(known, speaker);
      if (!read.texts.isEmpty()) { // what a cell holds as a language may be anything
        READ.put(known + " " + speaker, read);
      }
    }
    return new MessageCatalog(read.tag, read.texts, read.plurals, read.others);
  }

  /** The country, where it has a file of its own, else the language: en-US, de for de-AT. */
  public static String known(String locale) {
    String[] parts = locale.split("[-_]", -1);
    String country = parts[0] + "-" + parts[parts.length - 1];
    return COUNTRIES.contains(country) ? country : parts[0];
  }

  private static MessageCatalog find(String known, Speaker speaker) {
    String language = known.replaceFirst("-.*", "");
    InputStream file = open(language);
    MessageCatalog found = file == null ? english() : from(file, language, speaker);
    if (!known.equals(language)) {
      Map<String, List<String>> both = new HashMap<>(found.texts);
      both.putAll(from(open(known), language, speaker).texts);
      found = new MessageCatalog(known, Map.copyOf(both), found.plurals, Map.of());
    }
    return speaker == Speaker.SHEETS
        ? new MessageCatalog(found.tag, found.texts, found.plurals, in(known, Speaker.PLANS).texts)
        : found;
  }

  private static InputStream open(String locale) {
    boolean safe = locale.matches("[A-Za-z]{2,3}(-[A-Za-z]{2})?");
    return safe ? MessageCatalog.class.getResourceAsStream(file(locale)) : null;
  }

  /** All languages and countries that have a file. */
  public static List<String> files() {
    return Stream.concat(LANGUAGES.stream(), COUNTRIES.stream()).toList();
  }

  /** The name of the file of a language or country. */
  public static String file(String locale) {
    return locale.replace('-', '_') + ".po";
  }

  /** The words of a language, from a PO file that is open; closes it. */
  public static MessageCatalog from(InputStream in, String language, Speaker speaker) {
    PoFile file = PoFile.read(in, speaker.context());
    return new MessageCatalog(language, file.texts(), file.plurals(), Map.of());
  }

  /** The ISO 639 code of the language. */
  public String language() {
    return language;
  }

  /** The language, with its country where that has words of its own: de, en-US. */
  public String tag() {
    return tag;
  }

  /** Whether these are the texts of the code, as they stand there. */
  public boolean isKey() {
    return tag.equals(ENGLISH);
  }

  public boolean isEnglish() {
    return language.equals(ENGLISH);
  }

  /** The text in this language. */
  public String of(String english) {
    if (!english.isBlank()) {
      asked.add(english);
    }
    List<String> forms = texts.getOrDefault(english, others.get(english));
    return forms == null ? english : forms.get(0);
  }

  /** A sentence with values in the place of each {}. */
  public String say(String english, Object... values) {
    return fill(of(english), values);
  }

  /**
   * A sentence about a count, in the form that the language has for it; the count is the first
   * value.
   */
  public String plural(String one, String many, long count, Object... values) {
    asked.add(one);
    List<String> forms = texts.get(one);
    String form =
        forms != null && forms.size() == plurals.count()
            ? forms.get(plurals.form(count))
            : count == 1 ? one : many;
    Object[] all = new Object[values.length + 1];
    all[0] = count;
    System.arraycopy(values, 0, all, 1, values.length);
    return fill(form, all);
  }

  /** All forms of a translated text; none where it stays English. */
  public List<String> forms(String english) {
    return texts.getOrDefault(english, List.of());
  }

  /** The English of all texts that are translated. */
  public Set<String> translated() {
    return new TreeSet<>(texts.keySet());
  }

  /** Lines for a file: a text of a speaker, not yet translated. */
  public static String entry(Speaker speaker, String english) {
    String written =
        english
            .replace("\\", "\\\\")
            .replace("\"", "\\\"")
            .replace("\n", "\\n")
            .replace("\t", "\\t");
    return "msgctxt \"%s\"\nmsgid \"%s\"\nmsgstr \"\"\n".formatted(speaker.context(), written);
  }

  /** Puts values into the places {} in turn, or into {1}, {2} by number. */
  public static String fill(String pattern, Object... values) {
    StringBuilder text = new StringBuilder();
    int next = 0;
    for (int at = 0; at < pattern.length(); at++) {
      int end = pattern.charAt(at) == '{' ? pattern.indexOf('}', at) : -1;
      String inside = end < 0 ? "-" : pattern.substring(at + 1, end);
      if (inside.isEmpty() && next < values.length) {
        text.append(values[next++]);
        at = end;
      } else if (inside.matches("[1-9]") && Integer.parseInt(inside) <= values.length) {
        text.append(values[Integer.parseInt(inside) - 1]);
        at = end;
      } else {
        text.append(pattern.charAt(at));
      }
    }
    return text.toString();
  }

  /** All texts that have been asked for. */
  public Set<String> asked() {
    return new TreeSet<>(asked);
  }

  /** The texts asked for that have no translation. */
  public Set<String> missing() {
    Set<String> missing = asked();
    missing.removeAll(texts.keySet());
    missing.removeAll(others.keySet());
    return missing;
  }

  /** The translations that nobody asked for. */
  public Set<String> orphaned() {
    Set<String> orphaned = new TreeSet<>(texts.keySet());
    orphaned.removeAll(asked);
    return orphaned;
  }
}
