package org.setpower.plan.common;

import java.lang.reflect.Constructor;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A table of results, declared by a record with {@link Table} whose components have {@link Result}.
 */
public final class ResultTable<R extends Record> {
  /** In a cell of a row without anything else: what follows begins a page. It shows nothing. */
  public static final String NEW_PAGE = "\u00A0";

  private static final Map<Class<?>, Class<?>> BOXED =
      Map.of(int.class, Integer.class, double.class, Double.class, boolean.class, Boolean.class);

  private final Table declaration;
  private final int rows;
  private final List<ResultColumn> columns;
  private final Map<String, Integer> places = new HashMap<>();
  private final List<Method> accessors = new ArrayList<>();
  private final Constructor<R> constructor;

  /**
   * @param rows that a sheet has room for
   * @param from what the columns are made of that do not say it themselves
   */
  ResultTable(Class<R> type, int rows, List<String> from) {
    declaration = type.getAnnotation(Table.class);
    this.rows = rows;
    try {
      constructor =
          type.getDeclaredConstructor(
              Arrays.stream(type.getRecordComponents())
                  .map(RecordComponent::getType)
                  .toArray(Class<?>[]::new));
    } catch (NoSuchMethodException e) {
      throw new IllegalStateException(type.getName(), e);
    }
    List<ResultColumn> all = new ArrayList<>();
    for (RecordComponent component : type.getRecordComponents()) {
      Result result = component.getAnnotation(Result.class);
      Result full = result.like() == Record.class ? result : declared(result.like(), component);
      accessors.add(component.getAccessor());
      all.add(
          new ResultColumn(
              declaration.key(),
              result.key(),
              or(result.heading(), full.heading()),
              full.unit(),
              BOXED.getOrDefault(component.getType(), component.getType()),
              full.translated(),
              full.form(),
              result.from().length == 0 ? from : List.of(result.from()),
              or(result.rule(), full.rule())));
    }
    columns = List.copyOf(all);
    for (int i = 0; i < all.size(); i++) {
      places.put(all.get(i).path(), i);
    }
  }

  private static Result declared(Class<? extends Record> like, RecordComponent component) {
    String key = component.getAnnotation(Result.class).key();
    return Arrays.stream(like.getRecordComponents())
        .filter(c -> c.getType() == component.getType())
        .map(c -> c.getAnnotation(Result.class))
        .filter(r -> r.key().equals(key))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException(like.getName() + " has no " + key));
  }

  private static String or(String own, String otherwise) {
    return own.isEmpty() ? otherwise : own;
  }

  /** The table that a record declares. */
  public static <R extends Record> ResultTable<R> of(Class<R> type) {
    return new ResultTable<>(type, type.getAnnotation(Table.class).rows(), List.of());
  }

  /**
   * The same.
   *
   * @param from what the columns are made of that do not say it themselves
   */
  public static <R extends Record> ResultTable<R> of(Class<R> type, List<String> from) {
    return new ResultTable<>(type, type.getAnnotation(Table.class).rows(), from);
  }

  public String key() {
    return declaration.key();
  }

  public String heading() {
    return declaration.heading();
  }

  /** Rows that a sheet has room for. */
  public int rows() {
    return rows;
  }

  public List<ResultColumn> columns() {
    return columns;
  }

  /** A row with its first cells only: a heading, or one that is withheld. */
  public R row(Object... first) {
    try {
      return constructor.newInstance(Arrays.copyOf(first, columns.size()));
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(key(), e);
    }
  }

  /** Where the column of a path stands; null if there is none. */
  Integer place(String path) {
    return places.get(path);
  }

  /** A cell of a row, as the component holds it; null for a blank row. */
  Object value(Record row, int column) {
    if (row == null) {
      return null;
    }
    try {
      return accessors.get(column).invoke(row);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(columns.get(column).path(), e);
    }
  }
}
