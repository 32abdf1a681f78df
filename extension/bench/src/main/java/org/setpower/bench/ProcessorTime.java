package org.setpower.bench;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.setpower.office.Office;

/**
 * What an office has worked so far: the time that its threads had a processor, which other programs
 * hardly change; by the clock where /proc does not tell.
 */
final class ProcessorTime {
  private final long clock = System.nanoTime();
  private final Map<Path, Long> threads = new HashMap<>();

  private ProcessorTime() {}

  /** The point before an office starts. */
  static ProcessorTime none() {
    return new ProcessorTime();
  }

  static ProcessorTime of(Office office) throws IOException {
    ProcessorTime work = new ProcessorTime();
    for (ProcessHandle process : office.processes()) {
      work.read(Path.of("/proc", String.valueOf(process.pid()), "task"));
    }
    return work;
  }

  private void read(Path tasks) throws IOException {
    if (Files.isDirectory(tasks)) {
      try (DirectoryStream<Path> all = Files.newDirectoryStream(tasks)) {
        for (Path thread : all) {
          threads.put(thread, worked(thread.resolve("schedstat")));
        }
      }
    }
  }

  /** Nanoseconds of one thread; 0 where it has ended meanwhile. */
  private static long worked(Path schedstat) {
    try {
      return Long.parseLong(Files.readString(schedstat).split(" ")[0]);
    } catch (IOException | NumberFormatException gone) {
      return 0;
    }
  }

  /** Seconds of work up to a later point. */
  double secondsUntil(ProcessorTime later) {
    if (later.threads.isEmpty()) {
      return secondsByTheClockUntil(later);
    }
    long nanos = 0;
    for (Map.Entry<Path, Long> thread : later.threads.entrySet()) {
      nanos += Math.max(0, thread.getValue() - threads.getOrDefault(thread.getKey(), 0L));
    }
    return nanos / 1e9;
  }

  double secondsByTheClockUntil(ProcessorTime later) {
    return (later.clock - clock) / 1e9;
  }

  /**
   * What something takes when nothing comes between: a quarter of the figures are lower. Higher
   * ones contain the compiling of Java beside it, the lowest may lack a thread that has ended.
   */
  static double usual(List<Double> figures) {
    return figures.stream().sorted().skip(figures.size() / 4).findFirst().orElse(Double.NaN);
  }
}
