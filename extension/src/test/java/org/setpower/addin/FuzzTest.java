package org.setpower.addin;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.junit.jupiter.api.Test;
import org.junit.platform.commons.logging.Logger;
import org.junit.platform.commons.logging.LoggerFactory;

/**
 * {@link Fuzz} in blocks of calls, each with a seed of its own. The long form is {@code
 * extension/bin/fuzz}: it writes down every finished block and goes on behind the last.
 */
class FuzzTest {
  private static final int BLOCK = 20_000;
  private static final long MOST_GROWTH = 16 << 20;

  private final Logger log = LoggerFactory.getLogger(FuzzTest.class);

  @Test
  void no_call_ends_otherwise_than_declared() throws IOException {
    int blocks = Math.max(1, Integer.getInteger("fuzz.calls", BLOCK) / BLOCK);
    long seed = Long.getLong("fuzz.seed", 1);
    Done done = new Done(System.getProperty("fuzz.done"));
    Fuzz fuzz = new Fuzz();
    long before = 0;
    for (int block = done.count(); block < blocks; block++) {
      fuzz.run(BLOCK, seed * 1_000_003 + block);
      done.add("%d calls, seed %d, block %d".formatted(BLOCK, seed, block));
      before = before == 0 ? usedBytes() : before;
    }
    long more = before == 0 ? 0 : usedBytes() - before;
    if (before != 0) {
      log.info(() -> String.join("\n", fuzz.report()));
    }
    log.info(
        () ->
            "%,d calls, all as declared; heap %+,d kB"
                .formatted((long) blocks * BLOCK, more / 1024));
    assertThat(more).isLessThan(MOST_GROWTH);
  }

  private static long usedBytes() {
    System.gc();
    return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
  }

  /** The blocks that earlier runs have finished, one a line; nothing where no file is named. */
  private record Done(String file) {
    int count() throws IOException {
      return file == null || Files.notExists(Path.of(file))
          ? 0
          : Files.readAllLines(Path.of(file)).size();
    }

    void add(String line) throws IOException {
      if (file != null) {
        Path path = Path.of(file).toAbsolutePath();
        Files.createDirectories(path.getParent());
        Files.writeString(path, line + "\n", StandardOpenOption.CREATE, StandardOpenOption.APPEND);
      }
    }
  }
}
