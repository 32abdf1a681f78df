package org.setpower.command.menu;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.frame.XController;
import com.sun.star.frame.XFrame;
import com.sun.star.frame.XStatusListener;
import com.sun.star.util.URL;
import com.sun.star.view.XSelectionSupplier;
import java.lang.reflect.InvocationHandler;
import java.lang.reflect.Proxy;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.setpower.command.help.AboutCommand;

/** The office calls from several threads. */
class FrameCommandTest {
  private static final int THREADS = 2;
  private static final int ROUNDS = 3_000;

  private final AtomicInteger added = new AtomicInteger();
  private final AtomicInteger removed = new AtomicInteger();

  private static Object fake(InvocationHandler answers, Class<?>... types) {
    return Proxy.newProxyInstance(FrameCommandTest.class.getClassLoader(), types, answers);
  }

  private Object controller() {
    return fake(
        (proxy, method, arguments) -> {
          switch (method.getName()) {
            case "addSelectionChangeListener" -> added.incrementAndGet();
            case "removeSelectionChangeListener" -> removed.incrementAndGet();
            default -> {}
          }
          return null;
        },
        XController.class,
        XSelectionSupplier.class);
  }

  private static XStatusListener listener() {
    int number = new Object().hashCode();
    return (XStatusListener)
        fake(
            (proxy, method, arguments) ->
                switch (method.getName()) {
                  case "hashCode" -> number;
                  case "equals" -> proxy == arguments[0];
                  default -> null;
                },
            XStatusListener.class);
  }

  @Test
  void the_selection_is_heard_once_however_many_threads_ask() throws Exception {
    Object controller = controller();
    AtomicInteger arrived = new AtomicInteger();
    XFrame frame =
        (XFrame)
            fake(
                (proxy, method, arguments) -> {
                  arrived.incrementAndGet();
                  while (arrived.get() < THREADS) { // leave together
                    Thread.onSpinWait();
                  }
                  return controller;
                },
                XFrame.class);
    ExecutorService threads = Executors.newFixedThreadPool(THREADS);
    try {
      for (int round = 1; round <= ROUNDS; round++) {
        arrived.set(0);
        FrameCommand command = new FrameCommand(null, frame, new AboutCommand());
        List<Future<?>> all = new ArrayList<>();
        List<XStatusListener> listeners = new ArrayList<>();
        for (int i = 0; i < THREADS; i++) {
          XStatusListener listener = listener();
          listeners.add(listener);
          all.add(threads.submit(() -> command.addStatusListener(listener, new URL())));
        }
        for (Future<?> one : all) {
          one.get(20, TimeUnit.SECONDS);
        }
        assertThat(added).as("after round %d", round).hasValue(round);
        listeners.forEach(l -> command.removeStatusListener(l, new URL()));
        assertThat(removed).hasValue(round);
      }
    } finally {
      threads.shutdownNow();
    }
  }
}
