package org.setpower.uno;

import com.sun.star.beans.PropertyValue;
import com.sun.star.beans.XPropertySet;
import com.sun.star.uno.AnyConverter;
import com.sun.star.uno.Exception;
import com.sun.star.uno.UnoRuntime;

/** Short words for what every call into the office needs. */
public final class Uno {
  private Uno() {}

  /** The object's interface; null if it has none. */
  public static <T> T as(Class<T> type, Object object) {
    return UnoRuntime.queryInterface(type, object);
  }

  /** A property; null where it is void. */
  public static Object get(Object object, String property) throws Exception {
    Object value = as(XPropertySet.class, object).getPropertyValue(property);
    return AnyConverter.isVoid(value) ? null : value;
  }

  public static void set(Object object, String property, Object value) throws Exception {
    as(XPropertySet.class, object).setPropertyValue(property, value);
  }

  public static PropertyValue property(String name, Object value) {
    PropertyValue property = new PropertyValue();
    property.Name = name;
    property.Value = value;
    return property;
  }

  public static PropertyValue[] properties(PropertyValue... some) {
    return some;
  }
}
