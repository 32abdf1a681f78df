package org.setpower.base;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/**
 * Texts and what they were read as, because the cells of a sheet repeat the same few texts. Keeps
 * at most {@value #MOST_TEXTS}; later ones are read each time. A text that is refused is not kept.
 */
public final class BoundedCache<T> {
  private static final int MOST_TEXTS = 1024;

  private final Map<String, T> byText = new ConcurrentHashMap<>();

  /** What the text was read as before, or what the reader makes of it. */
  public T read(String text, Function<String, T> reader) {
    T known = byText.get(text);
    if (known == null) {
      known = reader.apply(text);
      if (byText.size() < MOST_TEXTS) {
        byText.put(text, known);
      }
    }
    return known;
  }
}
