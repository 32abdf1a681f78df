package org.setpower.plan.common;

import java.lang.invoke.MethodType;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;

/**
 * A table of results, declared by a record with {@link Table} whose components have {@link Result}.
 */
public final class ResultTable<R extends Record> {
  private final Table declaration;
  private final List<ResultColumn> columns;
  private final List<Method> accessors = new ArrayList<>();

  private ResultTable(Class<R> type) {
    declaration = type.getAnnotation(Table.class);
    List<ResultColumn> all = new ArrayList<>();
    for (RecordComponent component : type.getRecordComponents()) {
      Result result = component.getAnnotation(Result.class);
      accessors.add(component.getAccessor());
      all.add(
          new ResultColumn(
              declaration.key(),
              result.key(),
              result.heading(),
              result.unit(),
              MethodType.methodType(component.getType()).wrap().returnType(),
              result.form(),
              List.of(result.from()),
              result.rule()));
    }
    columns = List.copyOf(all);
  }

  /** The table that a record declares. */
  public static <R extends Record> ResultTable<R> of(Class<R> type) {
    return new ResultTable<>(type);
  }

  public String key() {
    return declaration.key();
  }

  public String heading() {
    return declaration.heading();
  }

  /** Rows that a sheet has room for. */
  public int rows() {
    return declaration.rows();
  }

  public List<ResultColumn> columns() {
    return columns;
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
