package org.setpower.templates;

import com.sun.star.beans.XPropertySet;
import com.sun.star.lang.Locale;
import com.sun.star.uno.UnoRuntime;

/** Short words for the office's interfaces; its checked exceptions become unchecked. */
final class Uno {
  /** The locale of number format codes. */
  static final Locale ENGLISH = new Locale("en", "US", "");

  private Uno() {}

  /** Something that talks to the office. */
  @FunctionalInterface
  interface Talk<T> {
    T get() throws com.sun.star.uno.Exception;
  }

  /** Something that talks to the office and answers nothing. */
  @FunctionalInterface
  interface Order {
    void run() throws com.sun.star.uno.Exception;
  }

  static <T> T ask(Talk<T> talk) {
    try {
      return talk.get();
    } catch (com.sun.star.uno.Exception e) {
      throw new IllegalStateException(e.getClass().getSimpleName() + ": " + e.getMessage(), e);
    }
  }

  static void tell(Order order) {
    ask(
        () -> {
          order.run();
          return null;
        });
  }

  static <T> T as(Class<T> type, Object object) {
    return UnoRuntime.queryInterface(type, object);
  }

  static void set(Object object, String property, Object value) {
    tell(() -> as(XPropertySet.class, object).setPropertyValue(property, value));
  }

  static Object get(Object object, String property) {
    return ask(() -> as(XPropertySet.class, object).getPropertyValue(property));
  }
}
