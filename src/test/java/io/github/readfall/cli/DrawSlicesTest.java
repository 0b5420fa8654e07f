package io.github.readfall.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DrawSlicesTest {

  private static final Path EPISODE =
      Path.of("src/test/resources/strips/good/captions-in-every-corner");

  private final Path folder;

  DrawSlicesTest(@TempDir Path folder) {
    this.folder = folder;
  }

  private Ran draw(Object... more) {
    Object[] args = new Object[6 + more.length];
    args[0] = "draw";
    args[1] = EPISODE;
    args[2] = "--as";
    args[3] = "slices";
    args[4] = "--to";
    args[5] = folder;
    System.arraycopy(more, 0, args, 6, more.length);
    return Ran.of(args);
  }

  @Test
  void slicesLeftFromAnEarlierDrawingAreTakenAwayOrNamed() throws Exception {
    Path stale =
        Files.writeString(folder.resolve("captions-in-every-corner-en-slice-077.jpg"), "old");
    Path foreign =
        Files.writeString(folder.resolve("captions-in-every-corner-de-slice-077.jpg"), "old");

    Ran first = draw();
    assertEquals(0, first.status(), first.err());
    assertTrue(first.err().contains("slice-077.jpg is left from an earlier export"), first.err());
    assertTrue(Files.exists(stale));
    Path slice = folder.resolve("captions-in-every-corner-en-slice-001.png");
    assertTrue(Files.exists(slice));

    assertTrue(draw().err().contains("--replace"));

    Ran again = draw("--replace");
    assertEquals(0, again.status(), again.err());
    assertTrue(again.err().contains("removed " + stale), again.err());
    assertFalse(Files.exists(stale));
    assertTrue(Files.exists(foreign));
    assertTrue(Files.exists(slice));
  }

  @Test
  void anotherDeliveryHasFilesOfItsOwn() {
    Ran narrow = draw("--delivery", "narrow");
    assertEquals(0, narrow.status(), narrow.err());
    assertTrue(Files.exists(folder.resolve("captions-in-every-corner-en-narrow-slice-001.jpg")));
  }

  @Test
  void aDeliveryThatNobodyNamedIsRefused() {
    Ran wide = draw("--delivery", "wide");
    assertTrue(wide.isRefusedInOneSentence(), wide.out() + wide.err());
    assertTrue(wide.err().contains("narrow, tall"), wide.err());
  }
}
