package io.github.readfall.window.help;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.swing.KeyStroke;
import org.junit.jupiter.api.Test;

/** What the help says of the keys that stand in no menu. */
class ViewKeysTest {

  @Test
  void everyRowHasKeysAndWords() {
    for (KeyRow row : ViewKeys.ALL) {
      assertFalse(row.strokes().isEmpty(), row.does());
      assertFalse(row.strokes().stream().anyMatch(stroke -> stroke == null), row.does());
      assertFalse(row.whereInWords().isBlank() || row.doesInWords().isBlank(), row.does());
    }
  }

  @Test
  void noPartHasAKeyForTwoActions() {
    Set<String> taken = new HashSet<>();
    List<String> twice = new ArrayList<>();
    for (KeyRow row : ViewKeys.ALL) {
      for (KeyStroke stroke : row.strokes()) {
        if (!taken.add(row.where() + " " + stroke)) {
          twice.add(row.where() + " " + stroke);
        }
      }
    }
    assertEquals(List.of(), twice);
  }

  @Test
  void theDocsSayWhatTheHelpSays() throws Exception {
    String docs = Files.readString(Path.of("docs/window.md"));
    List<String> missing = new ArrayList<>();
    for (KeyRow row : ViewKeys.ALL) {
      String line =
          "| " + row.keys() + " | " + row.whereInWords() + ": " + row.doesInWords() + " |";
      if (!docs.contains(line)) {
        missing.add(line);
      }
    }
    assertEquals(List.of(), missing);
  }
}
