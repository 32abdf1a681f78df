package org.setpower.addin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.sun.star.beans.UnknownPropertyException;
import com.sun.star.beans.XPropertySet;
import com.sun.star.uno.Any;
import com.sun.star.util.Date;
import java.lang.reflect.Proxy;
import java.util.concurrent.Callable;
import org.junit.jupiter.api.Test;
import org.setpower.base.EvaluationException;
import org.setpower.registry.FunctionSpec;
import org.setpower.registry.groups.FunctionRegistry;

/**
 * A document whose calendar cannot be read: in an office of its own it always can, see CalendarIT.
 */
class DocumentCalendarTest {
  private static final FunctionSpec LIMIT = FunctionRegistry.find("FLIGHT.LIMIT").orElseThrow();

  private static Object day(Callable<Object> nullDate) {
    XPropertySet document =
        (XPropertySet)
            Proxy.newProxyInstance(
                DocumentCalendarTest.class.getClassLoader(),
                new Class<?>[] {XPropertySet.class},
                (proxy, method, arguments) -> nullDate.call());
    Object[] arguments = {74.0, "power bank", null, null, 46_108.0};
    return DocumentCalendar.of(document).inOurs(LIMIT, arguments)[4];
  }

  /** 1904-01-01 is day 1462 of the usual calendar: from memory, as in every spreadsheet. */
  @Test
  void days_are_counted_from_the_day_of_the_document() {
    assertThat(day(() -> new Date((short) 30, (short) 12, (short) 1899))).isEqualTo(46_108.0);
    assertThat(day(() -> new Date((short) 1, (short) 1, (short) 1904))).isEqualTo(47_570.0);
  }

  @Test
  void a_calendar_that_cannot_be_read_is_refused_not_guessed() {
    assertRefused(
        () -> {
          throw new UnknownPropertyException("NullDate");
        });
    assertRefused(() -> Any.VOID);
    assertRefused(() -> new Date((short) 0, (short) 0, (short) 0));
  }

  private static void assertRefused(Callable<Object> nullDate) {
    assertThatThrownBy(() -> day(nullDate))
        .isInstanceOf(EvaluationException.class)
        .hasMessageContaining("type the date as text");
  }
}
