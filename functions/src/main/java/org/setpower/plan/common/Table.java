package org.setpower.plan.common;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** Names the table that a record's components are the columns of. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
public @interface Table {
  /** Stable key, such as {@code batteries}; never changed once released. */
  String key();

  /** Name in the key language. */
  String heading();

  /** Rows that a sheet has room for. */
  int rows();

  /** Whether it has one row that stands upright on its tab: keys in the first column. */
  boolean upright() default false;
}
