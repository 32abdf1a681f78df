package org.setpower.plan.common;

import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.setpower.base.TextEnum;
import org.setpower.plan.finding.CommonFinding;
import org.setpower.plan.finding.Finding;

/**
 * A table to fill, declared once: a record with {@link Table} whose components have {@link Input}.
 * It reads a range whose first row holds the column keys and whose last row is the end row, so that
 * an inserted column or an older file never shifts a figure.
 */
public final class InputTable<T extends Record> {
  /** What the first cell of the end row holds: a range that lost its end may have lost rows. */
  public static final String END = "end of table";

  private final Table declaration;
  private final Constructor<T> constructor;
  private final List<Part> parts = new ArrayList<>();
  private final List<InputColumn> columns;

  /** The columns of one component: one, or as many as its list has. */
  private record Part(int first, int count, boolean list) {}

  private InputTable(Class<T> type) {
    declaration = type.getAnnotation(Table.class);
    RecordComponent[] components = type.getRecordComponents();
    try {
      constructor =
          type.getDeclaredConstructor(
              Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new));
    } catch (NoSuchMethodException e) {
      throw new IllegalStateException(type.getName(), e);
    }
    List<InputColumn> all = new ArrayList<>();
    for (RecordComponent component : components) {
      Input input = component.getAnnotation(Input.class);
      boolean list = component.getType() == List.class;
      parts.add(new Part(all.size(), input.count(), list));
      for (int i = 1; i <= input.count(); i++) {
        all.add(column(input, list ? Double.class : component.getType(), list ? "" + i : ""));
      }
    }
    columns = List.copyOf(all);
  }

  /** The table that a record declares. */
  public static <T extends Record> InputTable<T> of(Class<T> type) {
    return new InputTable<>(type);
  }

  private InputColumn column(Input input, Class<?> type, String number) {
    Input full = input.like() == Record.class ? input : declared(input.like(), input.key(), type);
    String heading = or(input.heading(), full.heading());
    return new InputColumn(
        key(),
        input.key() + number,
        number.isEmpty() ? heading : heading + " " + number,
        full.unit(),
        type,
        full.min(),
        full.max(),
        full.form(),
        words(type),
        or(input.blank(), full.blank()),
        or(input.help(), full.help()),
        full.rowOf());
  }

  private static Input declared(Class<? extends Record> like, String key, Class<?> type) {
    return Arrays.stream(like.getRecordComponents())
        .filter(c -> c.getType() == type && c.getAnnotation(Input.class).key().equals(key))
        .map(c -> c.getAnnotation(Input.class))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException(like.getName() + " has no " + key));
  }

  private static String or(String own, String otherwise) {
    return own.isEmpty() ? otherwise : own;
  }

  private static List<String> words(Class<?> type) {
    if (type == Boolean.class) {
      return List.of("yes", "no");
    }
    return type.isEnum()
        ? Arrays.stream(type.getEnumConstants()).map(c -> ((TextEnum) c).word()).toList()
        : List.of();
  }

  public String key() {
    return declaration.key();
  }

  public String heading() {
    return declaration.heading();
  }

  @Override
  public String toString() {
    return key();
  }

  /** Rows that a sheet has room for. */
  public int rows() {
    return declaration.rows();
  }

  /** Whether it has one row that stands upright: keys in the first column, cells in the second. */
  public boolean isUpright() {
    return declaration.upright();
  }

  /** The columns in the order of the record. */
  public List<InputColumn> columns() {
    return columns;
  }

  /** The column of a key. */
  public InputColumn column(String key) {
    return columns.stream().filter(c -> c.key().equals(key)).findFirst().orElseThrow();
  }

  /**
   * The layout of tables, a row a column: path and {@link InputColumn#layout()}. A sheet keeps it,
   * so that a newer version knows what its cells mean.
   */
  public static Object[][] layout(Collection<InputTable<?>> tables) {
    return tables.stream()
        .flatMap(t -> t.columns.stream())
        .map(c -> new Object[] {c.path(), c.layout()})
        .toArray(Object[][]::new);
  }

  /**
   * A hash over keys, types, units and domains, by which a file of another layout is recognised.
   */
  public static String layoutHash(Collection<InputTable<?>> tables) {
    String layout =
        Arrays.stream(layout(tables))
            .map(row -> row[1].toString())
            .collect(Collectors.joining("\n"));
    try {
      byte[] hash =
          MessageDigest.getInstance("SHA-256").digest(layout.getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(hash, 0, 8);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  /**
   * Reads a range. Never throws: what cannot be read becomes a finding of its row, or the fault of
   * the whole range.
   *
   * @param range {@code Object[][]} of null, "", Double, String; "#" stands for an error
   */
  public InputRows<T> read(Object range) {
    if (!(range instanceof Object[][] typed) || typed.length < 2 || typed[0] == null) {
      return new InputRows<>(
          this, List.of(), Optional.of(Finding.of(CommonFinding.UNREADABLE_TABLE, this)));
    }
    Object[][] cells = isUpright() ? turned(typed) : typed;
    int last = cells.length - 1;
    int[] places = places(cells[0]);
    Optional<Finding> fault = fault(cells[0], places);
    if (fault.isEmpty() && !END.equals(InputColumn.trimmed(cell(cells[last], 0)))) {
      fault = Optional.of(Finding.of(CommonFinding.NO_END_ROW, this));
    }
    List<InputRow<T>> rows = new ArrayList<>(last);
    for (int i = 1; i < last; i++) {
      rows.add(fault.isPresent() ? blank(i) : row(i, cells[i], places));
    }
    return new InputRows<>(this, List.copyOf(rows), fault);
  }

  /** Keys of the first column become the row of keys, cells of the second the only row. */
  private static Object[][] turned(Object[][] cells) {
    int n = cells.length - 1;
    Object[][] turned = new Object[3][n];
    for (int i = 0; i < n; i++) {
      turned[0][i] = cell(cells[i], 0);
      turned[1][i] = cell(cells[i], 1);
    }
    turned[2][0] = cell(cells[n], 0);
    return turned;
  }

  private static Object cell(Object[] row, int place) {
    return row == null || place < 0 || place >= row.length ? null : row[place];
  }

  /** Where each column stands in the range; −1 for one that does not. */
  private int[] places(Object[] keys) {
    Map<Object, Integer> places = new HashMap<>();
    for (int i = keys.length - 1; i >= 0; i--) { // the first of two counts
      places.put(InputColumn.trimmed(keys[i]), i);
    }
    return columns.stream().mapToInt(c -> places.getOrDefault(c.key(), -1)).toArray();
  }

  private Optional<Finding> fault(Object[] keys, int[] places) {
    Set<String> wrong = new HashSet<>();
    Set<Integer> known = Arrays.stream(places).boxed().collect(Collectors.toSet());
    for (int i = 0; i < keys.length; i++) {
      if (!known.contains(i)) { // no column of ours, or a second time
        Object trimmed = InputColumn.trimmed(keys[i]);
        wrong.add(trimmed == null ? "(blank)" : TextEnum.shortened(trimmed.toString()));
      }
    }
    for (int i = 0; i < places.length; i++) {
      if (places[i] < 0) {
        wrong.add(columns.get(i).key());
      }
    }
    String list = wrong.stream().sorted().limit(5).collect(Collectors.joining(", "));
    return wrong.isEmpty()
        ? Optional.empty()
        : Optional.of(Finding.of(CommonFinding.WRONG_KEYS, this, list));
  }

  /** A row in which nothing is typed. */
  public T none() {
    try {
      return constructor.newInstance(parts.stream().map(p -> p.list ? List.of() : null).toArray());
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(declaration.key(), e);
    }
  }

  private InputRow<T> blank(int number) {
    return new InputRow<>(number, null, List.of(), Set.of(), Map.of());
  }

  private InputRow<T> row(int number, Object[] cells, int[] places) {
    Map<String, Object> typed = null; // most rows of a sheet are blank
    for (int i = 0; i < places.length; i++) {
      Object cell = InputColumn.trimmed(cell(cells, places[i]));
      if (cell != null) {
        typed = typed == null ? new LinkedHashMap<>() : typed;
        typed.put(columns.get(i).key(), cell);
      }
    }
    if (typed == null) {
      return blank(number);
    }
    List<Finding> findings = new ArrayList<>(0);
    Set<String> unreadable = new HashSet<>(0);
    Object[] values = new Object[parts.size()];
    for (int i = 0; i < values.length; i++) {
      Part part = parts.get(i);
      values[i] =
          part.list
              ? list(part, typed, findings, unreadable)
              : value(columns.get(part.first), typed, findings, unreadable);
    }
    try {
      return new InputRow<>(
          number,
          constructor.newInstance(values),
          List.copyOf(findings),
          Set.copyOf(unreadable),
          typed);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(declaration.key(), e);
    }
  }

  private List<Object> list(
      Part part, Map<String, Object> typed, List<Finding> findings, Set<String> unreadable) {
    List<Object> read = new ArrayList<>(0);
    for (int k = part.first; k < part.first + part.count; k++) {
      Object value = value(columns.get(k), typed, findings, unreadable);
      if (value != null) {
        read.add(value);
      }
    }
    return List.copyOf(read);
  }

  private static Object value(
      InputColumn column,
      Map<String, Object> typed,
      List<Finding> findings,
      Set<String> unreadable) {
    Object cell = typed.get(column.key());
    if (cell == null) {
      if (column.isRequired()) {
        findings.add(Finding.of(CommonFinding.BLANK_CELL, column));
      }
      return null;
    }
    Object value = column.read(cell, findings);
    if (value == null) {
      unreadable.add(column.key());
    }
    return value;
  }
}
