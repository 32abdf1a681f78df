package org.setpower.base;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** A constant that users write as a word of the trade. */
public interface TextEnum {
  /** The word as it is shown and documented. */
  String word();

  /** Other ways to write it. */
  default List<String> alsoWritten() {
    return List.of();
  }

  /**
   * The words of one enum; case, spaces and hyphens do not matter. The enum is looked at when a
   * word is first read, so that declaring a list costs nothing.
   */
  final class Lookup<E extends Enum<E> & TextEnum> {
    private final Class<E> type;
    private Content<E> content;

    public Lookup(Class<E> type) {
      this.type = type;
    }

    /** Two threads at once may both make it; they make the same. */
    private Content<E> content() {
      Content<E> made = content;
      if (made == null) {
        made = new Content<>(type);
        content = made;
      }
      return made;
    }

    /** The constant for a word, or a refusal that lists the known words. */
    public E read(String name, String text) {
      Map<String, E> byWord = content().byWord;
      E constant = byWord.get(text);
      if (constant == null) {
        constant = byWord.get(plain(text));
      }
      if (constant == null) {
        throw new EvaluationException(BaseErrorCode.UNKNOWN_WORD, name, shortened(text), list());
      }
      return constant;
    }

    /** The documented words, in order. */
    public List<String> known() {
      return content().known;
    }

    private String list() {
      return known().stream().map(w -> '"' + w + '"').collect(Collectors.joining(", "));
    }

    private static String plain(String text) {
      return text.length() > 200
          ? ""
          : text.toLowerCase(Locale.ROOT).replaceAll("[\\s\\u00a0‐-–-]+", "");
    }

    /** The words and their constants; not changed after creation. */
    private static final class Content<E extends Enum<E> & TextEnum> {
      private final Map<String, E> byWord = new LinkedHashMap<>();
      private final List<String> known;

      Content(Class<E> type) {
        for (E constant : type.getEnumConstants()) {
          put(constant.word(), constant);
          constant.alsoWritten().forEach(w -> put(w, constant));
        }
        known = Arrays.stream(type.getEnumConstants()).map(TextEnum::word).toList();
      }

      private void put(String word, E constant) {
        byWord.put(word, constant);
        byWord.put(plain(word), constant);
      }
    }
  }

  /** Text of a user, cut to what fits a sentence. */
  static String shortened(String text) {
    return text.length() <= 40 ? text : text.substring(0, 39) + "…";
  }
}
