package io.github.readfall.export.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Programs of others that read PDF. */
final class Tool {

  private Tool() {}

  /** Runs a program that .ci/run installs; the test is skipped, and Maven says so, without it. */
  static String run(String... command) {
    assumeTrue(isThere(command[0]), command[0] + " is not installed here");
    try {
      Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
      String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      assertEquals(0, process.waitFor(), String.join(" ", command) + "\n" + said);
      return said;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  private static boolean isThere(String program) {
    List<String> folders = List.of(System.getenv().getOrDefault("PATH", "").split(":", -1));
    return Stream.concat(folders.stream(), Stream.of("/usr/bin"))
        .anyMatch(folder -> Files.isExecutable(Path.of(folder, program)));
  }
}
