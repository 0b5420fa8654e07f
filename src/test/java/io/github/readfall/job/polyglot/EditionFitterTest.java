package io.github.readfall.job.polyglot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.Region;
import io.github.readfall.job.Proofer;
import io.github.readfall.job.StripProof;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.lettering.typeset.SetLine;
import io.github.readfall.lettering.typeset.Tightening;
import io.github.readfall.rules.legible.TightestReadable;
import io.github.readfall.series.Episode;
import io.github.readfall.strip.galley.PlacedBalloon;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Translations in the outlines of the strip they translate. */
class EditionFitterTest {

  private static final String LINE = "ILSE: The wheel has turned by itself since the spring tide.";

  private static FittedEdition fit(Episode episode, String language, String... targets) {
    StripProof proof = new Proofer(Editions.SHELF, () -> 0).check(episode);
    return new EditionFitter(proof.galley(), proof.layout())
        .fit(Editions.edition(episode, language, targets));
  }

  private static FittedCue only(String target) {
    return fit(Editions.episode(LINE), "de", target).cues().get(0);
  }

  @Test
  void shorterWordsGoInAsTheyAre() {
    FittedCue cue = only("Das Rad dreht sich von selbst.");
    assertEquals(Verdict.AS_IS, cue.verdict());
    assertEquals("fits", cue.inShort());
    assertEquals(Tightening.NONE, cue.tightening());
  }

  @Test
  void wordsALittleLongerAreTightenedAndStillLegible() {
    Episode episode = Editions.episode(LINE);
    FittedEdition fitted =
        fit(episode, "de", "Das Rad dreht sich von selbst, und zwar seit der letzten Springflut.");
    FittedCue cue = fitted.cues().get(0);
    assertEquals(Verdict.TIGHTER, cue.verdict(), cue.inShort());
    assertFalse(cue.inShort().isEmpty());
    assertTrue(legible(fitted).isEmpty(), "not legible: " + legible(fitted));
    assertTrue(isInside(cue.refit().balloon()), "ink leaves the outline");
  }

  @Test
  void wordsThatNeedALargerBalloonSayByHowMuchAndItIsEnough() {
    Episode episode = Editions.episode("ILSE: It turned by itself.");
    String words = "Es hat sich von ganz allein gedreht, immerzu.";
    FittedCue cue = fit(episode, "de", words).cues().get(0);
    assertEquals(Verdict.LARGER, cue.verdict(), cue.inShort());
    double by = cue.refit().growBy() * 1.0005;
    SetBalloon tight = cue.refit().balloon();
    Box larger = new Box(0, 0, tight.box().width() * by, tight.box().height() * by);
    Edition edition = Editions.edition(episode, "de", words);
    SetBalloon set =
        edition
            .typesetter()
            .setAgain(
                tight, edition.script(), tight.wanted().in(larger).tightened(Tightening.NONE));
    assertTrue(set.given().orElseThrow().fits());
  }

  @Test
  void wordsWithNoRoomForALargerBalloonSayHowManyLettersMustGoAndThatIsEnough() {
    Episode episode = Editions.episode("CAPTION: Low tide.");
    String words =
        "Das Wasser steht heute ungewöhnlich tief, findet die Hafenmeisterin. ".repeat(24);
    FittedCue cue = fit(episode, "de", words.strip()).cues().get(0);
    assertEquals(Verdict.SHORTER, cue.verdict(), cue.inShort());
    int left = words.strip().length() - cue.refit().lettersTooMany();
    assertTrue(left > 0, "all must go");
    FittedCue shorter = fit(episode, "de", words.strip().substring(0, left).strip()).cues().get(0);
    assertTrue(shorter.refit().goesIn(), "what is left does not go in: " + shorter.inShort());
    assertEquals("\u2212" + cue.refit().lettersTooMany(), cue.inShort());
  }

  @Test
  void anEffectMayGrowAsLongAsItIsInNobodysWay() {
    Episode episode = Editions.episode("SFX: KRRANNK");
    assertEquals(Verdict.AS_IS, fit(episode, "de", "KRRAANNNK").cues().get(0).verdict());
  }

  @Test
  void whatIsNotTranslatedIsNotJudgedButKeepsItsOwnWords() {
    Episode episode = Editions.episode(LINE, "OTTO: It is only the water.");
    FittedEdition fitted = fit(episode, "de", "", "Es ist nur das Wasser.");
    assertEquals(List.of("p1-2"), fitted.cues().stream().map(FittedCue::id).toList());
    assertEquals(
        "The wheel has turned by itself since the spring tide.",
        fitted.galley().balloons().get(0).cue().text().plain());
  }

  @Test
  void balloonsStayWhereTheyAreAndAsLargeAsTheyAre() {
    Episode episode = Editions.episode(LINE, "OTTO: It is only the water.");
    StripProof proof = new Proofer(Editions.SHELF, () -> 0).check(episode);
    FittedEdition fitted =
        new EditionFitter(proof.galley(), proof.layout())
            .fit(Editions.edition(episode, "ko", "봄 사리 뒤로 바퀴가 저절로 돈다.", "그냥 물이야."));
    List<PlacedBalloon> before = proof.galley().balloons();
    List<PlacedBalloon> after = fitted.galley().balloons();
    for (int i = 0; i < before.size(); i++) {
      assertEquals(before.get(i).box().x(), after.get(i).box().x(), 0.05);
      assertEquals(before.get(i).box().y(), after.get(i).box().y(), 0.05);
      assertEquals(before.get(i).box().width(), after.get(i).box().width(), 0.05);
    }
    assertEquals("ko", after.get(0).set().language().tag());
  }

  @Test
  void noTighteningGoesBeyondTheTightest() {
    Episode episode = Editions.episode(LINE);
    FittedEdition fitted =
        fit(episode, "de", "Das Rad dreht sich von selbst, und zwar seit der letzten Springflut.");
    SetBalloon balloon = fitted.cues().get(0).refit().balloon();
    Tightening used = balloon.wanted().tightening();
    Edition edition = fitted.edition();
    SetBalloon usual =
        edition
            .typesetter()
            .setAgain(balloon, edition.script(), balloon.wanted().tightened(Tightening.NONE));
    Tightening tightest = TightestReadable.of(usual, fitted.galley().set());
    assertTrue(used.size() >= tightest.size() - 1e-9);
    assertTrue(used.leading() >= tightest.leading() - 1e-9);
    assertTrue(used.trackingEm() >= tightest.trackingEm() - 1e-9);
  }

  private static Set<String> legible(FittedEdition fitted) {
    return fitted.findings().stream()
        .map(Finding::rule)
        .filter(rule -> rule.startsWith("legible/"))
        .collect(Collectors.toSet());
  }

  private static boolean isInside(SetBalloon balloon) {
    Region outline = Region.of(balloon.outline());
    return balloon.lines().stream()
        .map(EditionFitterTest::box)
        .map(Region::of)
        .allMatch(outline::covers);
  }

  private static Box box(SetLine line) {
    double x = line.xPx();
    double y = line.baselinePx();
    return Box.ofEdges(
        x + line.line().box().left(),
        y + line.line().box().top(),
        x + line.line().box().right(),
        y + line.line().box().bottom());
  }
}
