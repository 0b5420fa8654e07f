package io.github.readfall.base.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Test;

final class WordingTest {

  @Test
  void noKeyIsWrittenTwice() throws IOException {
    Set<String> seen = new HashSet<>();
    List<String> twice = keys().stream().filter(key -> !seen.add(key)).toList();

    assertTrue(seen.size() > 100, "no words at all");
    assertEquals(List.of(), twice);
  }

  private static List<String> keys() throws IOException {
    try (InputStream in =
        Objects.requireNonNull(WordingTest.class.getResourceAsStream("words.properties"))) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .filter(line -> !line.startsWith("#") && line.contains("="))
          .map(line -> line.substring(0, line.indexOf('=')).strip())
          .toList();
    }
  }
}
