package io.github.readfall.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.rules.RuleBook;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.type.font.OpenFaces;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A strip with faults of every family: its findings are kept with it and are those of a check. */
class ComposedStripTest {

  private static ComposedStrip faulty() throws Exception {
    Path strip = Path.of("src/test/resources/rules/space/overlap/flags-side-by-side");
    StripProof proof = new Proofer(OpenFaces.shelf(), () -> 0).check(EpisodeFiles.at(strip).get(0));
    return new ComposedStrip(proof.galley(), proof.layout(), List.of());
  }

  @Test
  void isJudgedOnce() throws Exception {
    ComposedStrip judged = faulty().judged();
    assertSame(judged, judged.judged());
    assertSame(
        judged.judgement().orElseThrow(), judged.lacking(List.of()).judgement().orElseThrow());
  }

  @Test
  void findsWhatACheckFinds() throws Exception {
    ComposedStrip strip = faulty();
    assertFalse(strip.faultyBalloons().isEmpty());
    assertEquals(RuleBook.check(strip.galley()), strip.judged().findings());
    assertEquals(RuleBook.check(strip.galley()), strip.findings());
  }

  @Test
  void isNoBetterThanItself() throws Exception {
    ComposedStrip strip = faulty().judged();
    assertFalse(strip.isBetterThan(strip));
    assertTrue(strip.faultyBalloons().size() >= 2);
  }
}
