package io.github.readfall.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;

import io.github.readfall.draw.DrawnCache;
import io.github.readfall.draw.Layer;
import io.github.readfall.draw.StripLayers;
import io.github.readfall.draw.render.MarksHash;
import io.github.readfall.lettering.typeset.Labels;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.lettering.typeset.Typesetter;
import io.github.readfall.series.Episode;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.series.Surroundings;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import io.github.readfall.type.font.FontShelf;
import io.github.readfall.type.font.OpenFaces;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Who types sees at once what setting everything anew would give. */
class RetouchedTest {

  private static final Path SCRIPT = Path.of("sample-scripts/overdue-tide/ep01/script.txt");

  private final FontShelf faces;
  private final Surroundings around;
  private final String text;
  private final Proofer proofer;
  private final StripProof before;

  RetouchedTest() throws Exception {
    faces = OpenFaces.shelf();
    around = Surroundings.read(EpisodeFiles.at(SCRIPT).get(0), faces);
    text = Files.readString(SCRIPT);
    proofer = new Proofer(faces, () -> 0);
    before = proofer.check(around.with(text));
  }

  @ParameterizedTest
  @CsvSource({
    "Nobody *steals* tides., Nobody *steals* tides. Not even here.",
    "PIM (thought): Ah., PIM (thought): Ah! And a line\\n\\nPIM: of its own.",
    "Language: en, Language: de",
    "Old Odda (elder), Old Odda (tiny)",
  })
  void everyBalloonIsSetAsIfNothingHadBeenKnown(String old, String now) {
    Episode episode = around.with(text.replace(old, now.replace("\\n", "\n")));
    Galley galley = proofer.retouched(episode, before);
    List<SetBalloon> anew =
        new Typesetter(episode.shelf(), episode.style()).set(episode.script()).balloons();
    assertEquals(shown(anew), shown(galley.set().balloons()));
    assertEquals(anew.size(), galley.balloons().size());
  }

  private static String shown(List<SetBalloon> balloons) {
    return balloons.stream().map(RetouchedTest::shown).collect(Collectors.joining("\n"));
  }

  /** A balloon in words, without what differs with every opening of a font file. */
  private static String shown(SetBalloon balloon) {
    List<String> lines =
        balloon.lines().stream()
            .map(line -> line.line().text() + " " + line.xPx() + " " + line.baselinePx())
            .toList();
    return balloon.cue() + " " + balloon.look() + " " + balloon.outline() + " " + lines;
  }

  @Test
  void whatIsNotTouchedIsTheSameInTheSamePlace() {
    Episode episode = around.with(text.replace("*steals*", "*ever steals*"));
    Galley galley = proofer.retouched(episode, before);
    int touched = 0;
    for (int i = 0; i < galley.balloons().size(); i++) {
      PlacedBalloon was = before.galley().balloons().get(i);
      PlacedBalloon is = galley.balloons().get(i);
      if (is.cue().text().plain().contains("ever steals")) {
        touched++;
        assertNotSame(was.set(), is.set());
      } else {
        assertSame(was.set(), is.set());
        assertEquals(was.box(), is.box());
      }
    }
    assertEquals(1, touched);
  }

  @Test
  void whatWasDrawnBeforeIsDrawnTheSame() {
    Episode episode = around.with(text.replace("*steals*", "*ever steals*"));
    Galley galley = proofer.retouched(episode, before);
    Labels labels = new Labels(episode.shelf(), episode.style());
    DrawnCache drawn = new DrawnCache();
    StripLayers.of(before.galley(), before.findings(), labels, drawn);
    StripLayers anew = StripLayers.of(galley, List.of(), labels);
    StripLayers again = StripLayers.of(galley, List.of(), labels, drawn);
    for (Layer layer : Layer.values()) {
      assertEquals(MarksHash.of(anew.marks(layer)), MarksHash.of(again.marks(layer)));
    }
  }
}
