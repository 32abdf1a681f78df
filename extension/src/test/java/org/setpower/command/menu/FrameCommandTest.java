package org.setpower.command.menu;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.frame.XController;
import com.sun.star.frame.XFrame;
import com.sun.star.frame.XStatusListener;
import com.sun.star.util.URL;
import com.sun.star.view.XSelectionSupplier;
import java.lang.reflect.InvocationHandler;
import java.lang.reflect.Proxy;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.setpower.command.help.AboutCommand;

/** The office calls from several threads. */
class FrameCommandTest {
  /** How long a thread waits among the listeners for another one that must not come. */
  private static final long MILLIS = 300;

  private final ExecutorService threads = Executors.newFixedThreadPool(2);
  private final AtomicInteger added = new AtomicInteger();
  private final AtomicInteger removed = new AtomicInteger();
  private final AtomicInteger together = new AtomicInteger();
  private final Semaphore second = new Semaphore(0);
  private final AtomicInteger inside = new AtomicInteger();
  private Runnable whenAdded = () -> {};

  @AfterEach
  void end() {
    threads.shutdownNow();
  }

  private static Object fake(InvocationHandler answers, Class<?>... types) {
    return Proxy.newProxyInstance(FrameCommandTest.class.getClassLoader(), types, answers);
  }

  private FrameCommand command() {
    Object controller =
        fake(
            (proxy, method, arguments) -> {
              switch (method.getName()) {
                case "addSelectionChangeListener" -> {
                  added.incrementAndGet();
                  whenAdded.run();
                }
                case "removeSelectionChangeListener" -> removed.incrementAndGet();
                default -> {}
              }
              return null;
            },
            XController.class,
            XSelectionSupplier.class);
    XFrame frame = (XFrame) fake((proxy, method, arguments) -> controller, XFrame.class);
    return new FrameCommand(null, frame, new AboutCommand());
  }

  /** A listener that stays a while where it is looked up, until another one is there too. */
  private XStatusListener slowListener() {
    int number = new Object().hashCode();
    return (XStatusListener)
        fake(
            (proxy, method, arguments) ->
                switch (method.getName()) {
                  case "hashCode" -> {
                    stay();
                    yield number;
                  }
                  case "equals" -> proxy == arguments[0];
                  default -> null;
                },
            XStatusListener.class);
  }

  private void stay() throws InterruptedException {
    if (inside.incrementAndGet() > 1) {
      together.incrementAndGet();
      second.release();
    } else if (second.tryAcquire(MILLIS, TimeUnit.MILLISECONDS)) {
      together.incrementAndGet();
    }
    inside.decrementAndGet();
  }

  @Test
  void two_threads_are_never_among_the_listeners_at_once() throws Exception {
    FrameCommand command = command();
    XStatusListener one = slowListener();
    XStatusListener other = slowListener();
    atOnce(
        () -> command.addStatusListener(one, new URL()),
        () -> command.addStatusListener(other, new URL()));
    assertThat(together).as("threads that met").hasValue(0);
    assertThat(added).hasValue(1);
    atOnce(
        () -> command.removeStatusListener(one, new URL()),
        () -> command.removeStatusListener(other, new URL()));
    assertThat(together).as("threads that met").hasValue(0);
    assertThat(removed).hasValue(1);
  }

  private void atOnce(Runnable one, Runnable other) throws Exception {
    Future<?> first = threads.submit(one);
    Future<?> last = threads.submit(other);
    first.get(20, TimeUnit.SECONDS);
    last.get(20, TimeUnit.SECONDS);
  }

  /** The office may hold its own lock in another thread, which then waits for ours. */
  @Test
  void the_office_is_asked_to_report_selections_outside_the_lock() throws Exception {
    FrameCommand command = command();
    AtomicInteger done = new AtomicInteger();
    whenAdded =
        () -> {
          Future<?> selection = threads.submit(() -> command.selectionChanged(null));
          try {
            selection.get(20, TimeUnit.SECONDS);
            done.incrementAndGet();
          } catch (java.util.concurrent.TimeoutException held) {
            selection.cancel(true);
          } catch (InterruptedException | java.util.concurrent.ExecutionException e) {
            throw new IllegalStateException(e);
          }
        };
    command.addStatusListener(slowListener(), new URL());
    assertThat(done).hasValue(1);
  }
}
