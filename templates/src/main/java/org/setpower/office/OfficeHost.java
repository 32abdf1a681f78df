package org.setpower.office;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;

/**
 * Where the office's programs run: which user, under which root folder, with which work folder. The
 * work folder holds the profile, the HOME and every file the office sees; it is the office's own.
 */
final class OfficeHost {
  private static final String DEFAULT_USER = "nobody";
  private static final List<String> PLACES =
      List.of("/usr/bin/soffice", "/usr/lib/libreoffice/program/soffice");

  private final Path root;
  private final Path soffice;
  private final Path work;
  private final List<String> prefix;

  /** Finds the programs and makes the work folder. */
  OfficeHost() {
    root = Path.of(setting("SETPOWER_OFFICE_ROOT", "/"));
    soffice = findSoffice();
    try {
      Path temporary =
          root.getNameCount() == 0
              ? Path.of(System.getProperty("java.io.tmpdir"))
              : root.resolve("tmp");
      work = Files.createTempDirectory(temporary, "setpower-office-").toRealPath();
      prefix = isRoot(work) ? asOrdinaryUser(setting("SETPOWER_USER", DEFAULT_USER)) : List.of();
      own(Files.createDirectory(work.resolve("home")));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static String setting(String name, String otherwise) {
    String property = System.getProperty(name.toLowerCase(Locale.ROOT).replace('_', '.'));
    String value = property != null ? property : System.getenv(name);
    return value == null || value.isBlank() ? otherwise : value;
  }

  private Path findSoffice() {
    String named = setting("SETPOWER_OFFICE", "");
    for (String place : named.isEmpty() ? PLACES : List.of(named)) {
      if (Files.isExecutable(outside(place))) {
        return Path.of(place);
      }
    }
    throw new OfficeMissing(
        "There is no LibreOffice Calc at "
            + (named.isEmpty() ? String.join(" or ", PLACES) : named)
            + ": install the package libreoffice-calc, or set SETPOWER_OFFICE to your soffice.");
  }

  /** A path of the office's, as this process sees it. */
  private Path outside(String path) {
    return root.resolve(path.substring(1));
  }

  /** A path of this process, as the office sees it. */
  String inside(Path path) {
    return "/" + root.relativize(path);
  }

  String url(Path path) {
    return Path.of(inside(path)).toUri().toString().replaceFirst("/$", "");
  }

  private static boolean isRoot(Path ownFile) throws IOException {
    return ownFile.getFileSystem().supportedFileAttributeViews().contains("unix")
        && Files.getAttribute(ownFile, "unix:uid").equals(0);
  }

  /** The command before each program: as root the office runs as an ordinary user. */
  private List<String> asOrdinaryUser(String user) throws IOException {
    int uid = number("id", "-u", user);
    int gid = number("id", "-g", user);
    Files.setAttribute(work, "unix:uid", uid);
    Files.setAttribute(work, "unix:gid", gid);
    return root.getNameCount() == 0
        ? List.of("setpriv", "--reuid=" + uid, "--regid=" + gid, "--clear-groups")
        : List.of("chroot", "--userspec=" + uid + ":" + gid, root.toString());
  }

  private static int number(String... command) throws IOException {
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    String answer = new String(process.getInputStream().readAllBytes()).strip();
    if (!answer.matches("\\d+")) {
      throw new IllegalStateException(
          "The user " + command[2] + " is not known here: set SETPOWER_USER to an ordinary user.");
    }
    return Integer.parseInt(answer);
  }

  /** Hands a file of this process over to the office's user. */
  private Path own(Path file) throws IOException {
    if (!prefix.isEmpty()) {
      Files.setAttribute(file, "unix:uid", Files.getAttribute(work, "unix:uid"));
      Files.setAttribute(file, "unix:gid", Files.getAttribute(work, "unix:gid"));
    }
    return file;
  }

  Path work() {
    return work;
  }

  /** Where the office keeps its settings and its extensions. */
  Path profile() {
    return work.resolve("profile");
  }

  /** Copies a file into the work folder. */
  Path copyIn(Path file) throws IOException {
    Path copy = work.resolve(file.getFileName());
    return own(Files.copy(file, copy, StandardCopyOption.REPLACE_EXISTING));
  }

  /** A new folder of the office's in the work folder. */
  Path newFolder() throws IOException {
    return own(Files.createTempDirectory(work, "folder-"));
  }

  /** Starts a program of the office; what it prints goes to a log in the work folder. */
  Process start(String program, List<String> arguments) throws IOException {
    Path file = soffice.resolveSibling(program);
    if (!Files.isExecutable(outside(file.toString()))) {
      throw new OfficeMissing(
          "There is no " + program + " beside " + soffice + ": install libreoffice-java-common.");
    }
    List<String> command = new ArrayList<>(prefix);
    command.add(file.toString());
    command.add("-env:UserInstallation=" + url(profile()));
    command.addAll(arguments);
    ProcessBuilder builder = new ProcessBuilder(command);
    builder.environment().keySet().removeAll(List.of("DISPLAY", "TMPDIR", "XDG_RUNTIME_DIR"));
    builder.environment().put("HOME", inside(work.resolve("home")));
    builder.environment().put("LC_ALL", "C.UTF-8");
    builder.environment().put("SAL_USE_VCLPLUGIN", "svp");
    // What it would give to another program stands in its log.
    builder.environment().put("DESKTOP_LAUNCH", "echo opened");
    return builder
        .directory(work.toFile())
        .redirectErrorStream(true)
        .redirectOutput(ProcessBuilder.Redirect.appendTo(log().toFile()))
        .redirectInput(ProcessBuilder.Redirect.from(Path.of("/dev/null").toFile()))
        .start();
  }

  /** Runs a program of the office to its end; true if it ended well and in time. */
  boolean run(Duration limit, String program, String... arguments) throws IOException {
    Process process = start(program, List.of(arguments));
    return endsWithin(limit, process) && process.exitValue() == 0;
  }

  /** Waits for a process; at the limit it and its children are ended. */
  static boolean endsWithin(Duration limit, Process process) {
    List<ProcessHandle> tree = tree(process);
    try {
      if (process.waitFor(limit.toMillis(), TimeUnit.MILLISECONDS)) {
        return true;
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    tree.addAll(tree(process));
    tree.forEach(ProcessHandle::destroyForcibly);
    tree.forEach(OfficeHost::waitForEnd);
    return false;
  }

  /** So that nothing writes into the work folder any more; an end by force takes milliseconds. */
  private static void waitForEnd(ProcessHandle process) {
    process.onExit().completeOnTimeout(process, 2, TimeUnit.SECONDS).join();
  }

  private static List<ProcessHandle> tree(Process process) {
    List<ProcessHandle> tree = new ArrayList<>(process.descendants().toList());
    tree.add(process.toHandle());
    return tree;
  }

  private Path log() {
    return work.resolve("office.log");
  }

  /** What the programs printed so far. */
  String printed() {
    try {
      return Files.exists(log()) ? Files.readString(log()).strip() : "";
    } catch (IOException e) {
      return "(no log: " + e + ")";
    }
  }

  void deleteWork() {
    delete(work);
  }

  /** Deletes a folder with all that is in it. */
  static void delete(Path folder) {
    try {
      Files.walkFileTree(
          folder,
          new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes a) throws IOException {
              Files.deleteIfExists(file);
              return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFileFailed(Path file, IOException e) {
              return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult postVisitDirectory(Path dir, IOException e) throws IOException {
              Files.deleteIfExists(dir);
              return FileVisitResult.CONTINUE;
            }
          });
    } catch (IOException e) {
      throw new UncheckedIOException("could not delete " + folder, e);
    }
  }
}
