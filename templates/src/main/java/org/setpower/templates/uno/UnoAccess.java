package org.setpower.templates.uno;

import com.sun.star.beans.XPropertySet;
import com.sun.star.lang.Locale;
import com.sun.star.uno.UnoRuntime;

/** Short words for the office's interfaces; its checked exceptions become unchecked. */
public final class UnoAccess {
  /** The locale of number format codes. */
  static final Locale ENGLISH = new Locale("en", "US", "");

  private UnoAccess() {}

  /** Something that talks to the office. */
  @FunctionalInterface
  public interface Talk<T> {
    T get() throws com.sun.star.uno.Exception;
  }

  /** Something that talks to the office and answers nothing. */
  @FunctionalInterface
  interface Order {
    void run() throws com.sun.star.uno.Exception;
  }

  public static <T> T ask(Talk<T> talk) {
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

  public static <T> T as(Class<T> type, Object object) {
    return UnoRuntime.queryInterface(type, object);
  }

  public static void set(Object object, String property, Object value) {
    tell(() -> as(XPropertySet.class, object).setPropertyValue(property, value));
  }

  public static Object get(Object object, String property) {
    return ask(() -> as(XPropertySet.class, object).getPropertyValue(property));
  }
}
