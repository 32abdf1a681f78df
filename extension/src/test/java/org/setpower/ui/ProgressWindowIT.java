package org.setpower.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.sun.star.lang.XMultiComponentFactory;
import com.sun.star.uno.XComponentContext;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.setpower.addin.SharedOffice;
import org.setpower.command.CommandContext;
import org.setpower.command.ShownWindow;
import org.setpower.office.Office;

/** Long work where its window cannot be shown. */
@ExtendWith(SharedOffice.class)
class ProgressWindowIT {
  /** The office without the service that shows windows. */
  private static XComponentContext withoutToolkit(XComponentContext whole) {
    XMultiComponentFactory factory = whole.getServiceManager();
    Object less =
        fake(
            XMultiComponentFactory.class,
            factory,
            (name) -> {
              if ("com.sun.star.awt.Toolkit".equals(name)) {
                throw new com.sun.star.uno.RuntimeException("no screen");
              }
            });
    return (XComponentContext)
        Proxy.newProxyInstance(
            ProgressWindowIT.class.getClassLoader(),
            new Class<?>[] {XComponentContext.class},
            (proxy, method, arguments) ->
                method.getName().equals("getServiceManager")
                    ? less
                    : method.invoke(whole, arguments));
  }

  /** Looks at the first argument of each call. */
  private interface Look {
    void at(Object first);
  }

  private static Object fake(Class<?> type, Object real, Look look) {
    return Proxy.newProxyInstance(
        ProgressWindowIT.class.getClassLoader(),
        new Class<?>[] {type},
        (proxy, method, arguments) -> {
          look.at(arguments == null ? null : arguments[0]);
          try {
            return method.invoke(real, arguments);
          } catch (InvocationTargetException e) {
            throw e.getCause();
          }
        });
  }

  private static long workers() {
    return Thread.getAllStackTraces().keySet().stream()
        .filter(t -> t.getName().equals(ProgressWindow.THREAD))
        .count();
  }

  @Test
  void the_work_is_ended_and_no_thread_stays(Office office) throws Exception {
    CommandContext desk = new CommandContext(withoutToolkit(office.context()), null);
    AtomicInteger steps = new AtomicInteger();
    assertThatThrownBy(
            () ->
                ProgressWindow.during(
                    desk,
                    "Restore formulas",
                    progress -> {
                      for (int i = 0; i < 100; i++) {
                        progress.at(i, "step");
                        steps.incrementAndGet();
                        LockSupport.parkNanos(20_000_000);
                      }
                    }))
        .hasMessageContaining("no screen");
    assertThat(steps).as("steps after there was no window").hasValueLessThan(100);
    ShownWindow.until("the end of the worker", () -> workers() == 0 ? true : null);
  }
}
