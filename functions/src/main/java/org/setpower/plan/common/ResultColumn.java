package org.setpower.plan.common;

import java.util.List;

/**
 * A result column.
 *
 * @param table key of its table
 * @param key stable key
 * @param heading name in the key language
 * @param unit unit of the number, empty without one
 * @param type Java type of the component
 * @param translated whether its word is translated
 * @param form how a number is shown
 * @param from columns it is made of
 * @param rule how it is made of them
 */
public record ResultColumn(
    String table,
    String key,
    String heading,
    String unit,
    Class<?> type,
    boolean translated,
    NumberForm form,
    List<String> from,
    String rule) {
  /** Table and key, as {@link Answer} names it. */
  public String path() {
    return table + "." + key;
  }
}
