package io.github.readfall;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Checks that docs/glossary.md defines every word once, in alphabetical order. */
class GlossaryTest {

  private static final int AT_LEAST = 50;

  @Test
  void wordsAreInAlphabeticalOrder() throws IOException {
    List<String> words = words();
    assertTrue(words.size() > AT_LEAST, "only " + words.size() + " words were read");
    assertEquals(words.stream().sorted().toList(), words);
  }

  @Test
  void noWordIsDefinedTwice() throws IOException {
    Set<String> seen = new HashSet<>();
    assertEquals(List.of(), words().stream().filter(word -> !seen.add(word)).toList());
  }

  private static List<String> words() throws IOException {
    return Files.readAllLines(Path.of("docs/glossary.md")).stream()
        .filter(line -> line.startsWith("| "))
        .skip(1) // the table's header
        .map(line -> line.split("\\|", -1)[1].strip().toLowerCase(Locale.ROOT))
        .toList();
  }
}
