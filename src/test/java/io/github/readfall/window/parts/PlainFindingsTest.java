package io.github.readfall.window.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.art.ArtFiles;
import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Phrase;
import io.github.readfall.job.PanelsProof;
import io.github.readfall.job.Proofer;
import io.github.readfall.job.StripProof;
import io.github.readfall.job.polyglot.EditionReader;
import io.github.readfall.rules.RuleBook;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.type.font.OpenFaces;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the window says of findings names no id, coordinate, key, file or command. */
class PlainFindingsTest {

  private static final Path FIXTURES = Path.of("src/test/resources/rules");

  /** An id, a place, a table or key of series.toml, a file of the series, a command or option. */
  private static final Pattern TECHNICAL =
      Pattern.compile(
          "\\bp\\d+-\\d+|\\b\\d+, \\d+\\b|\\b([Cc]ut at|strip at|below|above) \\d+ px"
              + "|\\[[a-z]+[.\\]]|-arcmin\\b|\\b(leading|reads) (=|under)|\\bbleed\\b|\\bparked\\b"
              + "|\\.(toml|json|xlf)\\b|\\breadfall [a-z]|--[a-z]|\\bunit p?\\d");

  private final Proofer proofer = new Proofer(OpenFaces.shelf(), () -> 0);
  private final Path scratch;
  private final Set<String> seen = new TreeSet<>();
  private final Set<String> technical = new TreeSet<>();

  PlainFindingsTest(@TempDir Path scratch) {
    this.scratch = scratch;
  }

  @Test
  void everyRuleIsSaidInPlainWords() throws Exception {
    for (Path folder : flagging()) {
      look(proofer.check(episode(folder)));
    }
    Set<String> rules =
        RuleBook.all().stream().map(rule -> rule.spec().id()).collect(Collectors.toSet());
    rules.remove("legible/face-licence"); // its fixtures make fonts
    rules.removeAll(seen);
    assertEquals(Set.of(), rules);
    assertEquals(
        new TreeSet<>(
            Set.of(
                "flow/ambiguous",
                "flow/inverted",
                "flow/jump",
                "flow/text-before-picture",
                "flow/wrong-panel",
                "language/direction",
                "legible/contrast",
                "legible/fallback",
                "legible/glyph-missing",
                "legible/leading",
                "legible/size",
                "legible/small-voice",
                "space/cut",
                "space/margin",
                "space/outside",
                "voice/unknown",
                "words/dashes")),
        technical);
  }

  @Test
  void otherFindingsAreSaidInPlainWords() throws Exception {
    Path series = Files.createDirectory(scratch.resolve("series"));
    Files.writeString(series.resolve("series.toml"), "[voices.ILSE]\nface = \"No Such Face\"\n");
    Path folder = Files.createDirectory(series.resolve("ep01"));
    Files.writeString(
        folder.resolve("script.txt"),
        """
        PANEL 1
        ILSE: It is late, and dark, and nobody has told me how long we are to wait here.
        WOUTER: It is late, and dark, and nobody has told me how long we are to wait here.

        PANEL 2
        ILSE: And now, will anybody come?
        """);
    layOut(folder, "{\"panel\": 1, \"box\": [100, 100, 700, 250]}");
    look(proofer.check(EpisodeFiles.at(folder).get(0)));
    layOut(
        folder,
        """
        {"panel": 1, "box": [100, 100, 700, 250]}, {"panel": 2, "box": [100, 400, 700, 250]},
        {"panel": 3, "box": [100, 700, 700, 250]}
        """);
    EpisodeFiles files = EpisodeFiles.at(folder).get(0);
    StripProof proof = proofer.check(files);
    look(proof);
    Path art = Files.createDirectory(folder.resolve("art"));
    drawBoxes(art.resolve("page-1.png"));
    PanelsProof panels =
        proofer.panels(proof.episode(), ArtFiles.of(files.script()), UnaryOperator.identity());
    panels.findings().forEach(finding -> look(finding, balloons(proof)));
    translate(folder.resolve("lang"));
    new EditionReader(Optional.empty())
        .read(files, proof.episode(), "de")
        .findings()
        .forEach(finding -> look(finding, balloons(proof)));
    Set<String> expected =
        Set.of(
            "art/panel-extra",
            "art/scaled",
            "language/gone",
            "language/missing",
            "language/stale",
            "layout/cue-gone",
            "layout/panel-gone",
            "layout/panel-missing",
            "layout/width",
            "place/room",
            "voice/face-missing");
    assertTrue(seen.containsAll(expected), seen.toString());
  }

  private static void layOut(Path folder, String panels) throws IOException {
    Files.writeString(
        folder.resolve("layout.json"),
        """
        {"strip": {"widthPx": 1500, "heightPx": 1000}, "panels": [%s],
         "balloons": [{"id": "p7-1", "cue": {"panel": 7, "speaker": "ILSE", "text": "Gone."}}]}
        """
            .formatted(panels));
  }

  /** Three boxes for two panels, on a page narrower than the strip. */
  private static void drawBoxes(Path page) throws IOException {
    BufferedImage image = new BufferedImage(800, 1300, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = image.createGraphics();
    pen.setColor(Color.WHITE);
    pen.fillRect(0, 0, 800, 1300);
    pen.setColor(Color.BLACK);
    for (int top = 50; top < 1200; top += 400) {
      pen.drawRect(50, top, 700, 320);
      pen.drawRect(51, top + 1, 698, 318);
    }
    pen.dispose();
    ImageIO.write(image, "png", page.toFile());
  }

  private static void translate(Path folder) throws IOException {
    Files.createDirectory(folder);
    Files.writeString(
        folder.resolve("de.xlf"),
        """
        <xliff xmlns="urn:oasis:names:tc:xliff:document:2.0" version="2.0" srcLang="en" trgLang="de">
          <file id="f1">
            <unit id="p2-1"><segment>
              <source>And now, will nobody come?</source><target>Kommt niemand?</target></segment></unit>
            <unit id="p9-1"><segment>
              <source>Far away.</source><target>Weit weg.</target></segment></unit>
          </file>
        </xliff>
        """);
  }

  private static List<Path> flagging() throws IOException {
    try (Stream<Path> all = Files.walk(FIXTURES, 3)) {
      return all.filter(path -> path.getFileName().toString().startsWith("flags-"))
          .filter(path -> !Files.exists(path.resolve("fonts.txt")))
          .sorted()
          .toList();
    }
  }

  private EpisodeFiles episode(Path fixture) throws Exception {
    Path series = Files.createTempDirectory(scratch, "series");
    Path episode = Files.createDirectory(series.resolve("ep01"));
    for (String name : List.of("series.toml", "script.txt", "layout.json")) {
      if (Files.exists(fixture.resolve(name))) {
        Path to = name.equals("series.toml") ? series : episode;
        Files.copy(fixture.resolve(name), to.resolve(name));
      }
    }
    return EpisodeFiles.at(episode).get(0);
  }

  private static SeenBalloons balloons(StripProof proof) {
    return new SeenBalloons(proof.episode().script(), proof.galley());
  }

  private void look(StripProof proof) {
    proof.findings().forEach(finding -> look(finding, balloons(proof)));
  }

  private void look(Finding finding, Phrase.Balloons shown) {
    seen.add(finding.rule());
    Finding plain = finding.inWindow(shown);
    List<String> said = new ArrayList<>(List.of(plain.message(), plain.advice()));
    finding.fix().ifPresent(fix -> said.add(fix.sentence().inWindow(shown)));
    for (String sentence : said) {
      assertFalse(TECHNICAL.matcher(sentence).find(), finding.rule() + ": " + sentence);
      assertTrue(sentence.isEmpty() || sentence.endsWith("."), sentence);
    }
    if (TECHNICAL.matcher(finding.message() + " " + finding.advice()).find()) {
      technical.add(finding.rule());
    }
  }
}
