package io.github.readfall.dist;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Draws with the packaged program, as a process of its own. */
class DrawIT {

  private static final Path HOME = Path.of("target", "readfall").toAbsolutePath();
  private static final String DRAW =
      "\"%s\" draw \"%s\""
          .formatted(
              HOME.resolve("bin/readfall"), HOME.resolve("sample-scripts/overdue-tide/ep01"));

  private final Path folder;

  DrawIT(@TempDir Path folder) {
    this.folder = folder;
  }

  /** Ended as by a closed terminal, right after the files were listed; what was there stays. */
  @Test
  void whoIsInterruptedLeavesNothingHalfWritten() throws Exception {
    Files.createDirectory(folder.resolve("drawn"));
    Path old = Files.writeString(folder.resolve("drawn").resolve("ep01-en-strip.png"), "old");

    Ran ran =
        Ran.script(
            folder,
            Map.of(),
            DRAW
                + " --as png,layers --to drawn --replace >listed 2>said & pid=$!;"
                + " until grep -q 'will write' listed; do sleep 0.05; done;"
                + " kill -TERM $pid; wait $pid; echo $?; ls -A drawn");

    assertEquals("143\nep01-en-strip.png\n", ran.out(), ran.err());
    assertEquals("old", Files.readString(old));
  }

  /** Those that hold text; pictures are held to it where they are made. */
  @Test
  void whatHoldsTextIsTheSameTwiceInAnyLocale() throws Exception {
    String all = " --as proof,phone,transcript,svg --language en,de --to ";

    Ran first = Ran.script(folder, Map.of(), DRAW + all + "first");
    Ran second = Ran.script(folder, Map.of("LC_ALL", "C"), DRAW + all + "second");

    assertEquals(0, first.status(), first.err());
    assertEquals(0, second.status(), second.err());
    Ran same = Ran.script(folder, Map.of(), "diff -r first second; ls first | wc -l");
    assertEquals("9", same.out().strip());
  }
}
