package org.setpower;

import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.abort;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A program that calculates the answer independently of this project. Where it is not installed,
 * the test is reported as skipped, with its name; with the system property {@code setpower.oracles}
 * set to {@code required}, as extension/bin/check sets it, the test fails.
 */
public final class ReferenceTool {
  private static final long MOST_SECONDS = 60;
  private static final Pattern PRINTED = Pattern.compile("(?m)^([a-z0-9]+) += +(\\S+)");

  private ReferenceTool() {}

  /** What the program prints, errors included, with a text in a file as its last argument. */
  public static String read(String packageName, String text, String... command) {
    try {
      Path file = Files.createTempFile("oracle", ".txt");
      try {
        Files.writeString(file, text);
        List<String> all = new ArrayList<>(List.of(command));
        all.add(file.toString());
        return run(packageName, all.toArray(String[]::new));
      } finally {
        Files.delete(file);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * The solution file of the solver GLPK for a problem in CPLEX LP format. GLPK deletes its output
   * files before it starts, so none of them may be a device.
   */
  public static String solve(String problem) {
    try {
      Path solution = Files.createTempFile("oracle", ".sol");
      try {
        String printed = read("glpk-utils", problem, "glpsol", "-w", solution.toString(), "--lp");
        return Files.exists(solution) ? Files.readString(solution) : fail(printed);
      } finally {
        Files.deleteIfExists(solution);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * What the circuit simulator ngspice prints as "name = value", for a circuit followed by its
   * commands.
   */
  public static Map<String, Double> ngspice(String circuitAndCommands) {
    String printed = read("ngspice", circuitAndCommands + "quit\n.endc\n.end\n", "ngspice", "-b");
    Map<String, Double> values = new HashMap<>();
    Matcher m = PRINTED.matcher(printed);
    while (m.find()) {
      values.put(m.group(1), Double.valueOf(m.group(2)));
    }
    return values.isEmpty() ? fail(printed) : values;
  }

  /** What the program prints, errors included. */
  public static String run(String packageName, String... command) {
    Process process = start(packageName, command);
    try {
      String printed = new String(process.getInputStream().readAllBytes());
      if (!process.waitFor(MOST_SECONDS, TimeUnit.SECONDS)) {
        process.destroy();
        fail(command[0] + " did not end within " + MOST_SECONDS + " s");
      }
      return printed;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  private static Process start(String packageName, String... command) {
    for (String argument : command) {
      if (argument.startsWith("/dev/")) {
        throw new IllegalArgumentException(
            "an oracle must not write to "
                + argument
                + ": glpsol deletes its output files first, and as root that takes the device away"
                + " from the whole machine; use Oracle.solve or a temporary file");
      }
    }
    try {
      Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
      process.getOutputStream().close();
      return process;
    } catch (IOException e) {
      String missing =
          "The program "
              + command[0]
              + " is not installed: install the package "
              + packageName
              + ".";
      if (!"required".equals(System.getProperty("setpower.oracles"))) {
        return abort(missing);
      }
      return fail(missing);
    }
  }
}
