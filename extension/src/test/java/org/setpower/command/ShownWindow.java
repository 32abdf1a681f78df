package org.setpower.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.accessibility.AccessibleRole;
import com.sun.star.awt.Key;
import com.sun.star.awt.KeyEvent;
import com.sun.star.awt.XCallback;
import com.sun.star.awt.XExtendedToolkit;
import com.sun.star.awt.XRequestCallback;
import com.sun.star.awt.XToolkitRobot;
import com.sun.star.awt.XWindow;
import com.sun.star.script.XLibraryContainer;
import com.sun.star.script.provider.XScriptProvider;
import com.sun.star.script.provider.XScriptProviderFactory;
import com.sun.star.uno.Any;
import com.sun.star.uno.UnoRuntime;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.setpower.office.Office;

/**
 * A window that somebody opened, as a screen reader sees it and as a keyboard drives it: through
 * the office's own accessible tree and its own way of pressing keys. In LibreOffice 26.8 a window
 * has no {@code XAccessible} any more, so that this works up to 25.2 only.
 */
public final class ShownWindow {
  /** An office that takes a window apart has ended when it was asked for its windows then. */
  private static final int SETTLING = 200;

  private static final short ALERT = AccessibleRole.ALERT;
  private static final short DIALOG = AccessibleRole.DIALOG;
  private static final long PATIENCE = 20_000;
  private static final String LIBRARY = "ScreenReader";

  private final Office office;
  private final CompletableFuture<Void> opener;
  private final String title;

  private ShownWindow(Office office, String title, CompletableFuture<Void> opener) {
    this.office = office;
    this.title = title;
    this.opener = opener;
  }

  /** Something that shows a window and returns when it is closed. */
  @FunctionalInterface
  interface Opening {
    void run() throws Exception;
  }

  /** One control. */
  record Part(short role, boolean takesFocus, boolean hasFocus, int x, int y, String name) {
    private static Part of(String line) {
      String[] cells = line.split("\t", -1);
      return new Part(
          Short.parseShort(cells[0]),
          Boolean.parseBoolean(cells[1]),
          Boolean.parseBoolean(cells[2]),
          Integer.parseInt(cells[3]),
          Integer.parseInt(cells[4]),
          cells[5]);
    }
  }

  /** Opens it in a thread of its own and waits until it is there. */
  static ShownWindow open(Office office, Opening opening) throws Exception {
    learn(office);
    List<String> before = titles(office);
    CompletableFuture<Void> opener =
        CompletableFuture.runAsync(
            () -> {
              try {
                opening.run();
              } catch (Exception e) {
                throw new IllegalStateException(e);
              }
            });
    return next(office, before, opener);
  }

  /** The window that comes when this one is closed. */
  ShownWindow followedBy() throws Exception {
    return next(office, List.of(title), opener);
  }

  private static ShownWindow next(
      Office office, List<String> before, CompletableFuture<Void> opener) throws Exception {
    String title =
        until(
            "a window",
            () -> {
              if (opener.isDone()) {
                opener.join();
                throw new AssertionError("no window was shown");
              }
              List<String> now = titles(office);
              now.removeAll(before);
              return now.isEmpty() ? null : now.get(0);
            });
    ShownWindow window = new ShownWindow(office, title, opener);
    until("the focus on something with a name", window::inFront);
    return window;
  }

  /** What has the focus; there is no window manager that gives it to a new window. */
  private Part inFront() throws Exception {
    Part part = focused();
    int number = part == null ? number() : -1;
    if (number >= 0) {
      Object top =
          office.service(XExtendedToolkit.class, "com.sun.star.awt.Toolkit").getTopWindow(number);
      UnoRuntime.queryInterface(XWindow.class, top).setFocus();
    }
    return part;
  }

  /** The titles of the dialogs that are open. */
  private static List<String> titles(Office office) throws Exception {
    return new ArrayList<>(
        ask(office, "Windows")
            .lines()
            .map(l -> l.split("\t", -1))
            .filter(l -> Short.parseShort(l[1]) == DIALOG || Short.parseShort(l[1]) == ALERT)
            .map(l -> l[2])
            .filter(t -> !t.isBlank()) // one that is being made has none yet
            .toList());
  }

  private static void learn(Office office) throws Exception {
    XLibraryContainer libraries =
        office.service(
            XLibraryContainer.class, "com.sun.star.script.ApplicationScriptLibraryContainer");
    if (!libraries.hasByName(LIBRARY)) {
      libraries.createLibrary(LIBRARY).insertByName("Module1", program());
    }
  }

  private static String program() throws IOException {
    try (InputStream in = ShownWindow.class.getResourceAsStream("screen-reader.bas")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private static String ask(Office office, String function, Object... arguments) throws Exception {
    XScriptProvider scripts =
        office
            .service(
                XScriptProviderFactory.class,
                "com.sun.star.script.provider.MasterScriptProviderFactory")
            .createScriptProvider("");
    String address =
        "vnd.sun.star.script:"
            + LIBRARY
            + ".Module1."
            + function
            + "?language=Basic&location=application";
    return String.valueOf(
        scripts.getScript(address).invoke(arguments, new short[1][0], new Object[1][0]));
  }

  String title() {
    return title;
  }

  /** Everything in it, in the order of the tree. */
  List<Part> parts() throws Exception {
    int number = number();
    return number < 0 ? List.of() : ask(office, "Parts", number).lines().map(Part::of).toList();
  }

  private int number() throws Exception {
    for (String line : ask(office, "Windows").lines().toList()) {
      String[] cells = line.split("\t", -1);
      if (cells[2].equals(title)) {
        return Integer.parseInt(cells[0]);
      }
    }
    return -1;
  }

  /**
   * Presses a key of com.sun.star.awt.Key, and releases it where the press has not closed the
   * window: the release for a window that is gone ends the office.
   */
  void press(short key) throws Exception {
    KeyEvent event = new KeyEvent();
    event.Source =
        office.service(XExtendedToolkit.class, "com.sun.star.awt.Toolkit").getTopWindow(number());
    event.KeyCode = key;
    XToolkitRobot robot = office.service(XToolkitRobot.class, "com.sun.star.awt.Toolkit");
    robot.keyPress(event);
    waitForEvents(); // the press
    waitForEvents(); // the closing that it asked for
    if (titles(office).contains(title)) {
      robot.keyRelease(event);
    }
  }

  /** Waits until the office has done all events that it has been sent so far. */
  private void waitForEvents() throws Exception {
    CompletableFuture<Void> done = new CompletableFuture<>();
    XCallback callback = nothing -> done.complete(null);
    office
        .service(XRequestCallback.class, "com.sun.star.awt.AsyncCallback")
        .addCallback(callback, Any.VOID);
    done.get(PATIENCE, TimeUnit.MILLISECONDS);
  }

  /**
   * What has the focus, with its name; null if nothing that has a name has it. Of parts within each
   * other, such as a list and the line in it, the outer one.
   */
  Part focused() throws Exception {
    return parts().stream().filter(p -> p.hasFocus && !p.name.isBlank()).findFirst().orElse(null);
  }

  /** The stops of the tab key, from the one that has the focus until that comes round again. */
  List<Part> walk() throws Exception {
    List<Part> stops = new ArrayList<>();
    Part first = focused();
    for (Part at = first; stops.isEmpty() || !at.equals(first); at = next(at)) {
      stops.add(at);
      if (parts().stream().filter(Part::takesFocus).count() == 1) {
        return stops;
      }
      assertThat(stops).as("a walk that ends").hasSizeLessThan(60);
    }
    return stops;
  }

  /** Goes to a button with the tab key and presses the space bar. */
  void push(String button) throws Exception {
    Part at = focused();
    for (int i = 0; !at.name.equals(button); i++) {
      assertThat(i).as("stops before " + button).isLessThan(10);
      at = next(at);
    }
    press(Key.SPACE);
  }

  private Part next(Part from) throws Exception {
    press(Key.TAB);
    return until(
        "the next stop with a name after " + from,
        () -> {
          Part now = focused();
          return now == null || now.equals(from) ? null : now;
        });
  }

  /** Waits until the window is gone and what opened it has returned. */
  void isClosed() throws Exception {
    opener.get(PATIENCE, TimeUnit.MILLISECONDS);
    Thread.sleep(SETTLING);
    assertThat(titles(office)).doesNotContain(title);
  }

  /** Waits for something. */
  public static <T> T until(String what, Callable<T> look) throws Exception {
    long end = System.currentTimeMillis() + PATIENCE;
    while (System.currentTimeMillis() < end) {
      T found = look.call();
      if (found != null) {
        return found;
      }
      Thread.sleep(30);
    }
    throw new AssertionError(what + " did not come");
  }
}
