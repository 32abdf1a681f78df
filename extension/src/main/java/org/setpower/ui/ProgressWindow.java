package org.setpower.ui;

import static org.setpower.command.message.CommandMessages.say;

import com.sun.star.uno.Exception;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicReference;
import org.setpower.command.CommandContext;
import org.setpower.command.message.CommandCancelledException;
import org.setpower.command.message.Progress;
import org.setpower.uno.Uno;

/** Runs something long beside a window that shows how far it is and can cancel it. */
public final class ProgressWindow {
  private static final int WIDTH = 220;
  private static final int HEIGHT = 64;

  /** Milliseconds in which the window is drawn before the work keeps the office busy. */
  private static final int DRAWN = 200;

  /** Milliseconds to wait for a step that is under way when the window could not be shown. */
  private static final int PATIENCE = 60_000;

  /** The name of the thread that works. */
  static final String THREAD = "setpower-progress";

  private ProgressWindow() {}

  /** Something long. */
  @FunctionalInterface
  public interface Work {
    void run(Progress progress) throws Exception;
  }

  /**
   * Returns when the work is done; throws what it threw, or {@link CommandCancelledException}.
   * Whoever cancels sees the window until the step that runs is done.
   */
  public static void during(CommandContext desk, String title, Work work) throws Exception {
    AtomicBoolean done = new AtomicBoolean();
    AtomicBoolean cancelled = new AtomicBoolean();
    AtomicBoolean closed = new AtomicBoolean();
    AtomicReference<Throwable> fault = new AtomicReference<>();
    try (Dialog dialog = new Dialog(desk, title, WIDTH, HEIGHT)) {
      dialog.form().label(Dialog.GAP, Dialog.GAP, dialog.inside(), 10, "Please wait…");
      Object bar =
          dialog
              .form()
              .add(
                  "ProgressBar",
                  "bar",
                  Dialog.GAP,
                  Dialog.GAP + 14,
                  dialog.inside(),
                  10,
                  Uno.property("ProgressValueMax", 100));
      dialog.end(WIDTH - Dialog.GAP - 60, Dialog.buttonsAt(HEIGHT), 60, "~Cancel", false, true);
      Object label = dialog.form().model("label0");
      Progress progress =
          (percent, words) -> {
            if (cancelled.get()) {
              throw new CommandCancelledException();
            }
            show(label, bar, percent, words);
          };
      Thread worker =
          new Thread(
              () -> {
                try {
                  Thread.sleep(DRAWN);
                  work.run(progress);
                } catch (Throwable e) {
                  fault.set(e);
                } finally {
                  done.set(true);
                  endUntilClosed(dialog, closed);
                }
              });
      worker.setName(THREAD);
      worker.start();
      try {
        dialog.show();
        while (!done.get()) {
          cancelled.set(true);
          Uno.set(label, "Label", say("Stopping after this step"));
          dialog.show();
        }
      } finally { // without a window, too, the work ends at its next step and nothing waits for it
        cancelled.set(true);
        closed.set(true);
        worker.join(PATIENCE);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    rethrow(fault.get());
  }

  private static void show(Object label, Object bar, int percent, String words) {
    try {
      Uno.set(label, "Label", words);
      Uno.set(bar, "ProgressValue", percent);
    } catch (Exception e) {
      throw new IllegalStateException(e);
    }
  }

  /** The window may not be open yet when the work is done already. */
  private static void endUntilClosed(Dialog dialog, AtomicBoolean closed) {
    while (!closed.get()) {
      dialog.end();
      try {
        Thread.sleep(30);
      } catch (InterruptedException e) {
        return;
      }
    }
  }

  private static void rethrow(Throwable fault) throws Exception {
    if (fault instanceof Exception e) {
      throw e;
    }
    if (fault instanceof RuntimeException e) {
      throw e;
    }
    if (fault != null) {
      throw new IllegalStateException(fault);
    }
  }
}
