package io.github.readfall.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.Pixels;
import io.github.readfall.draw.render.Alike;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;

class PictureTest {

  private final Path folder;
  private final Path script;

  PictureTest(@TempDir Path folder) throws IOException {
    this.folder = folder;
    this.script =
        Files.writeString(
            folder.resolve("some.txt"), "Language: en\n\nPANEL 1\nILSE: Good morning, mill.\n");
  }

  @Test
  void aPngIsAsWideAsTheStripAndHasInkOnIt() throws IOException {
    Path file = folder.resolve("out.PNG");
    assertEquals(0, Ran.of("fit", script, "--picture", file).status());
    BufferedImage image = ImageIO.read(file.toFile());
    assertEquals(1600, image.getWidth());
    assertTrue(image.getHeight() > 300, "only " + image.getHeight() + " px high");
    int ink = 0xFF111111; // the colour that letters have unless a voice says otherwise
    assertTrue(IntStream.of(Pixels.of(image)).anyMatch(pixel -> pixel == ink));
  }

  @Test
  void anSvgIsWellFormedAndHasTheStripsWidth() throws Exception {
    Path file = folder.resolve("out.svg");
    assertEquals(0, Ran.of("fit", script, "--picture", file).status());
    Element svg =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(file.toFile())
            .getDocumentElement();
    assertEquals("svg", svg.getTagName());
    assertTrue(svg.getAttribute("viewBox").startsWith("0 0 1600 "), svg.getAttribute("viewBox"));
  }

  @Test
  void aPictureLeavesStandardOutputToTheReport() {
    Ran ran = Ran.of("fit", script, "--json", "--picture", folder.resolve("out.svg"));
    assertTrue(ran.out().startsWith("{"), ran.out());
    assertTrue(ran.out().stripTrailing().endsWith("}"), ran.out());
    assertEquals("", ran.err());
  }

  @ParameterizedTest
  @ValueSource(strings = {"out.jpg", "out", "out.png.txt", "png", ""})
  void anotherEndingIsRefusedAndNothingIsWritten(String name) throws IOException {
    Ran ran = Ran.of("fit", script, "--picture", folder.resolve(name));
    assertTrue(ran.isRefusedInOneSentence(), ran.toString());
    assertEquals(List.of("some.txt"), names());
  }

  @Test
  void aFolderThatIsNotThereIsRefused() throws IOException {
    Ran ran = Ran.of("fit", script, "--picture", folder.resolve("none").resolve("out.png"));
    assertTrue(ran.isRefusedInOneSentence(), ran.toString());
    assertEquals(List.of("some.txt"), names());
  }

  @Test
  void aFolderOfThatNameIsRefusedAndKept() throws IOException {
    Path taken = Files.createDirectory(folder.resolve("out.png"));
    Files.writeString(taken.resolve("inside"), "kept");
    Ran ran = Ran.of("fit", script, "--picture", taken);
    assertTrue(ran.isRefusedInOneSentence(), ran.toString());
    assertTrue(ran.err().contains("is a folder"), ran.err());
    assertEquals("kept", Files.readString(taken.resolve("inside")));
    assertEquals(List.of("out.png", "some.txt"), names());
  }

  @Test
  void theFolderMayNotBeAFile() {
    assertTrue(
        Ran.of("fit", script, "--picture", script.resolve("out.svg")).isRefusedInOneSentence());
  }

  @Test
  void anOldPictureIsReplacedWhole() throws IOException {
    Path file = folder.resolve("out.svg");
    Ran.of("fit", script, "--picture", file);
    byte[] first = Files.readAllBytes(file);
    Files.writeString(file, "x".repeat(first.length * 2));
    Ran.of("fit", script, "--picture", file);
    assertArrayEquals(first, Files.readAllBytes(file));
    assertEquals(List.of("out.svg", "some.txt"), names());
  }

  @Test
  void theScriptItselfIsNeverOverwrittenByARefusedPicture() throws IOException {
    String before = Files.readString(script);
    assertTrue(Ran.of("fit", script, "--picture", script).isRefusedInOneSentence());
    assertEquals(before, Files.readString(script));
  }

  @Test
  void aSeriesOfSeveralEpisodesHasNoOnePicture() throws IOException {
    for (String name : List.of("a", "b")) {
      Files.createDirectory(folder.resolve(name));
      Files.copy(script, folder.resolve(name).resolve("script.txt"));
    }
    Ran ran = Ran.of("fit", folder, "--picture", folder.resolve("out.png"));
    assertTrue(ran.isRefusedInOneSentence(), ran.toString());
    assertTrue(Files.notExists(folder.resolve("out.png")));
  }

  @Test
  void anEmptyScriptStillMakesAPicture() throws IOException {
    Path empty = Files.writeString(folder.resolve("empty.txt"), "");
    assertEquals(0, Ran.of("fit", empty, "--picture", folder.resolve("out.png")).status());
    assertTrue(ImageIO.read(folder.resolve("out.png").toFile()).getHeight() > 0);
  }

  /** How far two pictures are apart on average, of 255; antialiasing differs between machines. */
  private static double difference(BufferedImage a, BufferedImage b) {
    return 255 * Alike.meanDifference(a, b);
  }

  @Test
  void theDocumentedStripIsWhatTheToolDraws() throws IOException {
    Path file = folder.resolve("strip.png");
    Ran.of("check", Path.of("docs/pictures/strip"), "--picture", file);
    double difference =
        difference(
            ImageIO.read(file.toFile()), ImageIO.read(Path.of("docs/pictures/strip.png").toFile()));
    assertTrue(difference < 0.5, "draw docs/pictures/strip.png anew: " + difference);
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> String.valueOf(file.getFileName())).sorted().toList();
    }
  }
}
