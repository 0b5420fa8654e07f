package io.github.readfall.languages.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.Endurance;
import io.github.readfall.base.geom.Box;
import io.github.readfall.languages.translate.Budget;
import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.lettering.typeset.BalloonRequest;
import io.github.readfall.lettering.typeset.GivenFit;
import io.github.readfall.lettering.typeset.Sample;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.lettering.typeset.Typesetter;
import io.github.readfall.script.CueText;
import io.github.readfall.script.Script;
import io.github.readfall.type.balloon.ShapeKind;
import io.github.readfall.type.font.FontShelf;
import io.github.readfall.type.text.Language;
import io.github.readfall.type.text.Languages;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class BudgetsTest {

  private static final FontShelf SHELF = Sample.shelf();
  private static final Typesetter TYPESETTER = new Typesetter(SHELF, HouseStyle.DEFAULT);
  private static final Script SCRIPT =
      Sample.script(
          "en",
          "ILSE: We've eleven boats lying on their sides, and a pilot who's begun to cry.",
          "CAPTION: Nobody had turned the wheel since spring, and it turned now.",
          "ILSE (thought): It is counting again, and nobody asked it to.",
          "BRAM (shout): Everybody off the bridge, now!",
          "RADIO (electronic): Tide Desk, this is Harbour, where is our water?",
          "ILSE (whisper): Do not wake it, whatever you do.",
          "SFX: KRRANK");

  static List<Language> languages() {
    return Endurance.languages();
  }

  /**
   * Held to what it was not measured on: as many characters as are comfortable, of stretches that
   * start between those that were taken, set into the same boxes by the typesetter, go in.
   */
  @ParameterizedTest
  @MethodSource("languages")
  void everyOutlineHasABudgetAndAComfortableLengthGoesInNearlyAlways(Language target)
      throws Exception {
    SetEpisode source = TYPESETTER.set(SCRIPT);
    Map<String, Measured> measured = Budgets.measured(source, target, TYPESETTER);
    assertWhole(source, measured);
    Map<String, Budget> budgets = new HashMap<>();
    measured.forEach((id, one) -> budgets.put(id, one.budget()));
    Stretches others = Stretches.of(ReferenceText.of(target), Budgets.SAMPLES, 0.5);
    int longest = budgets.values().stream().mapToInt(Budget::comfortable).max().orElseThrow();
    int goesIn = 0;
    int all = 0;
    for (String text : others.ofLength(longest)) {
      for (SetBalloon balloon : set(source, target, budgets, text)) {
        Optional<GivenFit> fit = balloon.given();
        goesIn += fit.isPresent() && fit.get().fits() ? 1 : 0;
        all += fit.isPresent() ? 1 : 0;
      }
    }
    assertEquals(6 * Budgets.SAMPLES, all);
    assertTrue(goesIn >= 0.85 * all, goesIn + " of " + all);
  }

  /** Every balloon, with as much of a text as is comfortable, in the box that it has. */
  private static List<SetBalloon> set(
      SetEpisode source, Language target, Map<String, Budget> budgets, String text) {
    Map<String, BalloonRequest> boxes = new HashMap<>();
    source.balloons().forEach(b -> boxes.put(b.cue().id(), BalloonRequest.NOTHING.in(b.box())));
    Script other =
        source
            .script()
            .inLanguage(
                target.tag(),
                cue -> {
                  Budget budget = budgets.getOrDefault(cue.id(), new Budget(1, 1));
                  int end = Math.min(budget.comfortable(), text.codePointCount(0, text.length()));
                  String part = text.substring(0, text.offsetByCodePoints(0, end)).strip();
                  return new CueText(part, part, List.of());
                });
    return TYPESETTER.set(other, boxes).balloons();
  }

  /** Every cue with an outline has a budget, in script order. */
  private static void assertWhole(SetEpisode source, Map<String, Measured> measured) {
    List<String> outlined =
        source.balloons().stream()
            .filter(balloon -> balloon.look().shape() != ShapeKind.NONE)
            .map(balloon -> balloon.cue().id())
            .toList();
    assertEquals(6, outlined.size());
    assertEquals(outlined, List.copyOf(measured.keySet()));
    for (Measured m : measured.values()) {
      assertEquals(Budgets.SAMPLES, m.samples());
      assertTrue(m.least() <= m.p10() && m.p10() <= m.median(), m.toString());
      assertTrue(m.median() <= m.p90() && m.p90() <= m.most(), m.toString());
      assertEquals(new Budget(Math.max(1, m.p10()), Math.max(1, m.most())), m.budget());
    }
  }

  /** The source's own words go into their balloons: that many characters must be possible. */
  @Test
  void theMostIsAboutWhatTheSourceHasInItsOwnLanguage() throws Exception {
    SetEpisode source = TYPESETTER.set(SCRIPT);
    Map<String, Measured> measured = Budgets.measured(source, Languages.of("en"), TYPESETTER);
    for (SetBalloon balloon : source.balloons()) {
      Measured m = measured.get(balloon.cue().id());
      if (m != null) {
        int own = balloon.cue().text().characters();
        assertTrue(m.most() >= 0.85 * own && m.p10() <= own, own + " " + m);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("languages")
  void aLargerBoxHasNoSmallerBudget(Language target) throws Exception {
    Measured before = new Measured(0, 0, 0, 0, 0, 0);
    for (double scale : new double[] {0.5, 1, 1.5}) {
      Measured now = inBox(target, 600 * scale, 360 * scale);
      assertTrue(now.p10() >= before.p10(), now + " after " + before);
      assertTrue(now.median() >= before.median(), now + " after " + before);
      assertTrue(now.most() >= before.most(), now + " after " + before);
      before = now;
    }
    assertTrue(before.p10() > 10, before.toString());
  }

  private static Measured inBox(Language target, double widthPx, double heightPx)
      throws NoReferenceText {
    Script script = Sample.script("en", "ILSE: Where is our water?");
    Map<String, BalloonRequest> box =
        Map.of("p1-1", BalloonRequest.NOTHING.in(new Box(0, 0, widthPx, heightPx)));
    SetEpisode source = TYPESETTER.set(script, box);
    Measured measured = Budgets.measured(source, target, TYPESETTER).get("p1-1");
    if (measured == null) {
      throw new AssertionError("no budget");
    }
    return measured;
  }

  /** Twice the size of letters leaves room for fewer. */
  @Test
  void letteringThatExistsIsMeasuredAtItsOwnSize() throws Exception {
    Script script = Sample.script("en", "ILSE: Where is our water?");
    Box box = new Box(0, 0, 700, 420);
    BalloonRequest usual = BalloonRequest.NOTHING.in(box);
    BalloonRequest small =
        new BalloonRequest(
            Optional.empty(), Optional.of(box), OptionalDouble.of(40), OptionalDouble.empty());
    Language german = Languages.of("de");
    SetEpisode large = TYPESETTER.set(script, Map.of("p1-1", usual));
    SetEpisode little = TYPESETTER.set(script, Map.of("p1-1", small));
    assertTrue(
        comfortable(Budgets.of(little, german, TYPESETTER))
            > comfortable(Budgets.of(large, german, TYPESETTER)));
  }

  private static int comfortable(Map<String, Budget> budgets) {
    return budgets.values().iterator().next().comfortable();
  }

  @Test
  void percentilesAreValuesThatWereMeasured() {
    List<Integer> values = java.util.stream.IntStream.rangeClosed(1, 40).boxed().toList();
    assertEquals(new Measured(1, 4, 20, 36, 40, 40), Measured.of(values));
    assertEquals(new Measured(7, 7, 7, 7, 7, 1), Measured.of(List.of(7)));
  }

  @Test
  void aLanguageWithoutAReferenceTextIsRefused() {
    SetEpisode source = TYPESETTER.set(SCRIPT);
    assertThrows(NoReferenceText.class, () -> Budgets.of(source, Languages.of("sw"), TYPESETTER));
  }
}
