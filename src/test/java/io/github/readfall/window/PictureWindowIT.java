package io.github.readfall.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import io.github.readfall.draw.render.Alike;
import java.awt.GraphicsEnvironment;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The pictures of the window in docs match the window. */
class PictureWindowIT {

  private static final boolean ACCEPT = "accept".equals(System.getProperty("golden"));

  /**
   * The greatest mean difference, of 255: letters are smoothed a little differently on each
   * machine.
   */
  private static final double MOST_OFF = 2.5;

  @ParameterizedTest
  @CsvSource({
    "window-light, docs/pictures/strip, light, 1, 9, flow/inverted, none, none, none",
    "window-dark, sample-scripts/overdue-tide/ep01, dark, 1, 95, none, none, none, none",
    "window-double, docs/pictures/strip, light, 2, 12, space/crowded, none, none, none",
    "window-languages, sample-scripts/overdue-tide/ep01, light, 1, 84, none, de, en, none",
    "window-readers, sample-scripts/overdue-tide/ep01, light, 1, 9, none, none, none, readers 4",
    "window-style, sample-scripts/overdue-tide/ep01, light, 1, 95, none, none, none, style sea",
    "window-plan, sample-scripts/overdue-tide/ep01, light, 1, 95, none, none, none, plan 2",
    "window-strip, docs/pictures/strip, light, 1, 12, space/crowded, none, none, strip p2-2"
  })
  void theWindowLooksAsTheDocsShowIt(
      String name,
      Path episode,
      String theme,
      String scale,
      String line,
      String rule,
      String language,
      String beside,
      String shows,
      @TempDir Path folder)
      throws Exception {
    assumeFalse(
        GraphicsEnvironment.isHeadless(), "there is no display: no picture of the window was made");
    Path copy = copied(episode, folder.resolve(episode.getFileName()));
    if (!language.equals("none")) {
      copyTranslations(episode.resolve("lang"), copy.resolve("lang"));
    }
    Path taken = folder.resolve(name + ".png");
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-Dsun.java2d.uiScale=" + scale,
                "-cp",
                System.getProperty("java.class.path"),
                PhotographedWindow.class.getName(),
                folder.resolve("state").toString(),
                copy.resolve("script.txt").toString(),
                theme,
                line,
                rule,
                taken.toString(),
                language,
                beside,
                shows)
            .inheritIO()
            .start();
    assertEquals(0, process.waitFor());
    Path kept = Path.of("docs/pictures", name + ".png");
    if (ACCEPT) {
      Files.copy(taken, kept, StandardCopyOption.REPLACE_EXISTING);
    }
    double off =
        255 * Alike.meanDifference(ImageIO.read(kept.toFile()), ImageIO.read(taken.toFile()));
    assertTrue(off <= MOST_OFF, () -> name + " differs by " + off + " of 255");
  }

  /** A copy of the episode, and of its series only the style. */
  private static Path copied(Path episode, Path to) throws IOException {
    Files.createDirectories(to);
    for (String file : new String[] {"script.txt", "layout.json"}) {
      if (Files.exists(episode.resolve(file))) {
        Files.copy(episode.resolve(file), to.resolve(file));
      }
    }
    Path style = episode.resolveSibling("series.toml");
    if (Files.exists(style)) {
      Files.copy(style, to.resolveSibling("series.toml"));
    }
    return to;
  }

  private static void copyTranslations(Path from, Path to) throws IOException {
    Files.createDirectories(to);
    try (DirectoryStream<Path> files = Files.newDirectoryStream(from, "*.xlf")) {
      for (Path file : files) {
        Files.copy(file, to.resolve(file.getFileName()));
      }
    }
  }
}
