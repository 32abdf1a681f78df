package org.setpower.base;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** A constant that users write as a word of the trade. */
public interface Word {
  /** The word as it is shown and documented. */
  String word();

  /** Other ways to write it. */
  default List<String> alsoWritten() {
    return List.of();
  }

  /** The words of one enum; case, spaces and hyphens do not matter. */
  final class Words<E extends Enum<E> & Word> {
    private final Map<String, E> byWord = new LinkedHashMap<>();
    private final List<String> known;

    public Words(Class<E> type) {
      for (E constant : type.getEnumConstants()) {
        put(constant.word(), constant);
        constant.alsoWritten().forEach(w -> put(w, constant));
      }
      known = Arrays.stream(type.getEnumConstants()).map(Word::word).toList();
    }

    private void put(String word, E constant) {
      byWord.put(word, constant);
      byWord.put(plain(word), constant);
    }

    /** The constant for a word, or a refusal that lists the known words. */
    public E read(String name, String text) {
      E constant = byWord.get(text);
      if (constant == null) {
        constant = byWord.get(plain(text));
      }
      if (constant == null) {
        throw new Refusal(BaseReason.UNKNOWN_WORD, name, shortened(text), list());
      }
      return constant;
    }

    /** The documented words, in order. */
    public List<String> known() {
      return known;
    }

    private String list() {
      return known.stream().map(w -> '"' + w + '"').collect(Collectors.joining(", "));
    }

    private static String plain(String text) {
      return text.length() > 200
          ? ""
          : text.toLowerCase(Locale.ROOT).replaceAll("[\\s\\u00a0‐-–-]+", "");
    }
  }

  /** Text of a user, cut to what fits a sentence. */
  static String shortened(String text) {
    return text.length() <= 40 ? text : text.substring(0, 39) + "…";
  }
}
