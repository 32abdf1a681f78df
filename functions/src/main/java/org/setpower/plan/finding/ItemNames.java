package org.setpower.plan.finding;

import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The items of a list and the names by which other files call them. A name that could be two items
 * is none of them: nothing is guessed.
 */
public final class ItemNames {
  private static final String SEPARATOR = ";";

  private final Map<String, Set<String>> rows = new HashMap<>();
  private final Map<String, String> items = new HashMap<>();
  private final Map<String, String> also = new HashMap<>();

  /**
   * An item of the list.
   *
   * @param name under which it stands there; null where the row has none
   * @param also its other names, with ; between; null without one
   */
  public record Item(String name, String also) {
    private Set<String> others() {
      return names(also).map(Identity::of).collect(Collectors.toSet());
    }
  }

  /** Reads the list. */
  public ItemNames(List<Item> list) {
    for (Item item : list) {
      if (!Identity.of(item.name()).isEmpty()) {
        items.putIfAbsent(Identity.of(item.name()), item.name());
        for (String other : item.others()) {
          rows.computeIfAbsent(other, o -> new HashSet<>()).add(Identity.of(item.name()));
          also.put(other, item.name());
        }
      }
    }
  }

  private static Stream<String> names(String also) {
    return also == null
        ? Stream.empty()
        : Arrays.stream(also.split(SEPARATOR)).map(String::strip).filter(n -> !n.isEmpty());
  }

  /** What a cell of other names holds with one more. */
  public static String with(String also, String name) {
    boolean isThere = names(also).anyMatch(n -> Identity.of(n).equals(Identity.of(name)));
    return isThere
        ? also
        : Stream.concat(names(also), Stream.of(name.strip()))
            .filter(Objects::nonNull)
            .collect(Collectors.joining(SEPARATOR + " "));
  }

  /** The name in the list; the name itself where the list does not know it, or knows two. */
  public String of(String name) {
    String key = Identity.of(name);
    boolean isOther = !items.containsKey(key) && rows.getOrDefault(key, Set.of()).size() == 1;
    return isOther ? also.get(key) : name;
  }

  /** Other names of an item that are also those, or the name, of another one. */
  public List<String> unclear(Item item) {
    return names(item.also())
        .filter(
            n -> {
              String key = Identity.of(n);
              boolean isItem = items.containsKey(key) && !key.equals(Identity.of(item.name()));
              return isItem || rows.getOrDefault(key, Set.of()).size() > 1;
            })
        .toList();
  }
}
