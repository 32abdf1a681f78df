package org.setpower.office;

import com.sun.star.beans.PropertyValue;
import com.sun.star.bridge.XBridge;
import com.sun.star.bridge.XBridgeFactory;
import com.sun.star.comp.helper.Bootstrap;
import com.sun.star.connection.NoConnectException;
import com.sun.star.connection.XConnector;
import com.sun.star.container.XEnumeration;
import com.sun.star.frame.XComponentLoader;
import com.sun.star.frame.XDesktop;
import com.sun.star.frame.XStorable;
import com.sun.star.lang.XComponent;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.uno.XComponentContext;
import com.sun.star.util.CloseVetoException;
import com.sun.star.util.XCloseable;
import com.sun.star.util.XModifiable;
import com.sun.star.util.XStringSubstitution;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;

/**
 * A running office of our own: headless, fresh profile, free port, ended by {@link #close()}.
 *
 * <p>Settings, as system property ({@code setpower.office}) or environment variable ({@code
 * SETPOWER_OFFICE}):
 *
 * <ul>
 *   <li>{@code SETPOWER_OFFICE}: the soffice to start;
 *   <li>{@code SETPOWER_USER}: the ordinary user it runs as when we are root (nobody);
 *   <li>{@code SETPOWER_OFFICE_ROOT}: the root folder of another system (chroot) it lives in.
 * </ul>
 *
 * The office sees no file of ours but those in its work folder: {@link #open}, {@link #store} and
 * {@link #copyIn} carry files in and out. An office that lives longer than its time limit is ended,
 * so that a hanging call fails instead of waiting for ever.
 */
public final class Office implements AutoCloseable {
  /** How long an office may live unless told otherwise. */
  public static final Duration LIFE = Duration.ofMinutes(15);

  private static final Duration INIT = Duration.ofSeconds(90);
  private static final Duration INSTALL = Duration.ofSeconds(120);
  private static final Duration CONNECT = Duration.ofSeconds(60);
  private static final Duration END = Duration.ofSeconds(15);

  private final OfficeHost host = new OfficeHost();
  private final Thread atExit = new Thread(this::leaveNothing);
  private final CompletableFuture<Void> lifeLimit = new CompletableFuture<>();
  private final boolean showsWindows;
  private Process process;
  private XBridge bridge;
  private XComponentContext context;

  private Office(boolean showsWindows) {
    this.showsWindows = showsWindows;
  }

  /** Starts an office with these extensions (.oxt) installed. */
  public static Office start(Path... extensions) throws IOException {
    return start(LIFE, extensions);
  }

  /** Starts an office that is ended after {@code life} at the latest. */
  public static Office start(Duration life, Path... extensions) throws IOException {
    return start(new Office(false), life, extensions);
  }

  /**
   * Starts an office whose dialogs are open until somebody ends them, on a screen that nobody sees;
   * the others answer every dialog at once with cancel.
   */
  public static Office startWithWindows(Path... extensions) throws IOException {
    return start(new Office(true), LIFE, extensions);
  }

  private static Office start(Office office, Duration life, Path... extensions) throws IOException {
    try {
      List<Path> all = List.of(extensions);
      ProfileStore.fill(office.host, all, () -> office.prepare(all));
      Runtime.getRuntime().addShutdownHook(office.atExit);
      office
          .lifeLimit
          .orTimeout(life.toMillis(), TimeUnit.MILLISECONDS)
          .exceptionally(late -> office.endNow());
      office.launch();
      return office;
    } catch (IOException | RuntimeException e) {
      office.close();
      throw e;
    }
  }

  private void prepare(List<Path> extensions) throws IOException {
    if (!host.run(INIT, "soffice", "--headless", "--norestore", "--terminate_after_init")) {
      throw failure("The office did not set up its profile");
    }
    for (Path extension : extensions) {
      add(extension);
    }
  }

  private void add(Path extension) throws IOException {
    String copy = host.inside(host.copyIn(extension));
    if (!host.run(INSTALL, "unopkg", "add", "-s", "-f", copy)) {
      throw failure(
          "The office did not install "
              + extension.getFileName()
              + " (Java functions need the package libreoffice-java-common)");
    }
  }

  /** Ends the office, installs an extension into the same profile, and starts it again. */
  public void install(Path extension) throws IOException {
    end();
    add(extension);
    launch();
  }

  /** Ends the office, removes an extension from the same profile, and starts it again. */
  public void remove(String identifier) throws IOException {
    end();
    if (!host.run(INSTALL, "unopkg", "remove", identifier)) {
      throw failure("The office did not remove " + identifier);
    }
    launch();
  }

  /** Ends the office and starts it again with the same profile; gives how long the start took. */
  public Duration restart() throws IOException {
    end();
    long began = System.nanoTime();
    launch();
    return Duration.ofNanos(System.nanoTime() - began);
  }

  /** The processes that it works in at present. */
  public List<ProcessHandle> processes() {
    return process.descendants().toList();
  }

  private void launch() throws IOException {
    String where = "socket,host=127.0.0.1,port=" + freePort() + ",tcpNoDelay=1";
    process =
        host.start(
            "soffice",
            List.of(
                showsWindows ? "--nofirststartwizard" : "--headless",
                "--norestore",
                "--nologo",
                "--nodefault",
                "--accept=" + where + ";urp;"));
    connect(where);
    String user = substitute("$(user)");
    if (!user.equals(host.url(host.profile()) + "/user")) {
      throw failure("Another office answered on our port, with the profile " + user);
    }
  }

  private Void endNow() {
    kill();
    return null;
  }

  private static int freePort() throws IOException {
    try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      return socket.getLocalPort();
    }
  }

  private void connect(String where) throws IOException {
    long end = System.nanoTime() + CONNECT.toNanos();
    try {
      XComponentContext local = Bootstrap.createInitialComponentContext((Map<String, Object>) null);
      XConnector connector = create(local, XConnector.class, "com.sun.star.connection.Connector");
      while (bridge == null) {
        try {
          bridge =
              create(local, XBridgeFactory.class, "com.sun.star.bridge.BridgeFactory")
                  .createBridge("", "urp", connector.connect(where), null);
        } catch (NoConnectException notYet) {
          if (!process.isAlive() || System.nanoTime() > end) {
            throw failure("The office did not start");
          }
          Thread.sleep(50);
        }
      }
      context =
          UnoRuntime.queryInterface(
              XComponentContext.class, bridge.getInstance("StarOffice.ComponentContext"));
    } catch (IOException | RuntimeException e) {
      throw e;
    } catch (Exception e) {
      throw new IOException("no connection to the office", e);
    }
  }

  private IOException failure(String what) {
    String printed = host.printed();
    return new IOException(what + (printed.isEmpty() ? "." : ". It printed: " + printed));
  }

  private String substitute(String variable) throws IOException {
    try {
      return service(XStringSubstitution.class, "com.sun.star.util.PathSubstitution")
          .getSubstituteVariableValue(variable);
    } catch (com.sun.star.container.NoSuchElementException e) {
      throw new IOException(e);
    }
  }

  private static <T> T create(XComponentContext from, Class<T> type, String service) {
    try {
      Object made = from.getServiceManager().createInstanceWithContext(service, from);
      return UnoRuntime.queryInterface(type, made);
    } catch (com.sun.star.uno.Exception e) {
      throw new IllegalStateException("the office has no " + service, e);
    }
  }

  /** The office's component context. */
  public XComponentContext context() {
    return context;
  }

  /** A service of the office. */
  public <T> T service(Class<T> type, String name) {
    return create(context, type, name);
  }

  private XDesktop desktop() {
    return service(XDesktop.class, "com.sun.star.frame.Desktop");
  }

  /** A new, empty spreadsheet; shown, as frozen panes are lost in a hidden one. */
  public XComponent newSpreadsheet() throws IOException {
    return load("private:factory/scalc");
  }

  /** Opens a copy of a file (.ods, .xlsx, …), or a new document from a template (.ots). */
  public XComponent open(Path file) throws IOException {
    return load(host.url(host.copyIn(file)));
  }

  private XComponent load(String url) throws IOException {
    try {
      XComponent document =
          UnoRuntime.queryInterface(XComponentLoader.class, desktop())
              .loadComponentFromURL(
                  url,
                  "_blank",
                  0,
                  new PropertyValue[] {property("AsTemplate", url.endsWith(".ots"))});
      if (document == null) {
        throw new IOException("the office did not open " + url);
      }
      return document;
    } catch (com.sun.star.uno.Exception e) {
      throw new IOException("the office did not open " + url, e);
    }
  }

  /** Stores a copy of a document with an export filter: {@code calc8}, {@code calc_pdf_Export}… */
  public void store(XComponent document, String filter, Path target) throws IOException {
    Path stored = host.work().resolve("stored-" + target.getFileName());
    try {
      UnoRuntime.queryInterface(XStorable.class, document)
          .storeToURL(
              host.url(stored), new PropertyValue[] {property("FilterName", (Object) filter)});
    } catch (com.sun.star.uno.Exception e) {
      throw new IOException("the office did not store " + target, e);
    }
    Files.createDirectories(target.toAbsolutePath().getParent());
    Files.copy(stored, target, StandardCopyOption.REPLACE_EXISTING);
    Files.delete(stored);
  }

  /** Copies a file to where the office can read it and gives its address there. */
  public String copyIn(Path file) throws IOException {
    return host.url(host.copyIn(file));
  }

  /** The folder that holds the profile and every file the office sees. */
  public Path workFolder() {
    return host.work();
  }

  /** A new folder that the office may write into. */
  public Path newFolder() throws IOException {
    return host.newFolder();
  }

  /** The address under which the office knows a file of its work folder. */
  public String address(Path file) {
    return host.url(file);
  }

  private static PropertyValue property(String name, Object value) {
    PropertyValue property = new PropertyValue();
    property.Name = name;
    property.Value = value;
    return property;
  }

  /** Closes a document without asking, changed or not. */
  public static void discard(XComponent document) {
    try {
      XModifiable modifiable = UnoRuntime.queryInterface(XModifiable.class, document);
      if (modifiable != null) {
        modifiable.setModified(false);
      }
      XCloseable closeable = UnoRuntime.queryInterface(XCloseable.class, document);
      if (closeable != null) {
        closeable.close(true);
      }
    } catch (CloseVetoException | com.sun.star.beans.PropertyVetoException e) {
      throw new IllegalStateException("the document does not close", e);
    }
  }

  /** Ends the office and deletes its work folder. */
  @Override
  public void close() {
    lifeLimit.complete(null);
    end();
    try {
      Runtime.getRuntime().removeShutdownHook(atExit);
    } catch (IllegalStateException alreadyAtExit) {
      // then it does no harm
    }
    host.deleteWork();
  }

  private void end() {
    try {
      if (context != null && process.isAlive()) {
        leave();
      }
    } catch (com.sun.star.uno.Exception | RuntimeException e) {
      kill();
    } finally {
      if (process != null) {
        OfficeHost.endsWithin(END, process);
      }
      bridge = null;
      context = null;
    }
  }

  private void leave() throws com.sun.star.uno.Exception {
    XDesktop desktop = desktop();
    XEnumeration documents = desktop.getComponents().createEnumeration();
    while (documents.hasMoreElements()) {
      discard(UnoRuntime.queryInterface(XComponent.class, documents.nextElement()));
    }
    desktop.terminate();
    UnoRuntime.queryInterface(XComponent.class, bridge).dispose();
  }

  /** What is left to do for an office that still runs when this Java machine ends. */
  private void leaveNothing() {
    kill();
    host.deleteWork();
  }

  /** Ends the process at once, as a power cut would. */
  public void kill() {
    if (process != null) {
      OfficeHost.endsWithin(Duration.ZERO, process);
    }
  }
}
