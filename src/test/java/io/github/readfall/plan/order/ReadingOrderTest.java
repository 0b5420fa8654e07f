package io.github.readfall.plan.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.base.finding.Phrase;
import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.lettering.style.ReadingSide;
import io.github.readfall.strip.PanelBox;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReadingOrderTest {

  private static final PanelBox TALL = panel(1, 0, 0, 1600, 2000);

  @ParameterizedTest
  @CsvSource({
    // second balloon's x and y, which is met first from the left and from the right, why from there
    "600, 0, 1, 2, LEADING, LEADING",
    "600, 14, 1, 2, LEADING, LEADING",
    "600, -14, 1, 2, LEADING, LEADING",
    "600, 15, 1, 1, A_LITTLE_HIGHER, HIGHER_BUT_TRAILING",
    "600, 50, 1, 1, A_LITTLE_HIGHER, HIGHER_BUT_TRAILING",
    "600, 51, 1, 1, HIGHER, HIGHER",
    "600, -15, 2, 2, HIGHER_BUT_TRAILING, A_LITTLE_HIGHER",
    "600, -50, 2, 2, HIGHER_BUT_TRAILING, A_LITTLE_HIGHER",
    "600, -51, 2, 2, HIGHER, HIGHER",
    "20, 10, 1, 1, SAME_COLUMN, SAME_COLUMN",
    "20, 30, 1, 1, A_LITTLE_HIGHER, A_LITTLE_HIGHER",
    "20, 200, 1, 1, HIGHER, HIGHER",
  })
  void theHigherThenTheLeading(
      double x,
      double y,
      int fromLeft,
      int fromRight,
      ReadingReason whyLeft,
      ReadingReason whyRight) {
    Box first = new Box(0, 1000, 400, 100);
    Box second = new Box(x, 1000 + y, 400, 120);
    check(new Eye(ReadingSide.LTR).balloons(first, second), fromLeft, whyLeft);
    check(new Eye(ReadingSide.RTL).balloons(first, second), fromRight, whyRight);
  }

  private static void check(ReadFirst meeting, int first, ReadingReason why) {
    assertEquals(first == 1, meeting.inOrder());
    assertEquals(why, meeting.why());
  }

  @Test
  void eachPanelOfARowIsReadToItsEnd() {
    List<PanelBox> row = List.of(panel(1, 0, 0, 700, 1000), panel(2, 800, 0, 700, 1000));
    List<ReadBalloon> stops =
        List.of(
            stop("p1-1", 1, 100, 100),
            stop("p1-2", 1, 100, 800),
            stop("p2-1", 2, 900, 50),
            stop("p2-2", 2, 900, 700));
    ReadingOrder order = ReadingOrder.of(row, stops, ReadingSide.LTR);
    assertEquals(List.of("p1-1", "p1-2", "p2-1", "p2-2"), order.metIds());
    ReadingOrder fromTheRight = ReadingOrder.of(row, stops, ReadingSide.RTL);
    assertEquals(List.of("p2-1", "p2-2", "p1-1", "p1-2"), fromTheRight.metIds());
    assertEquals(List.of(), fromTheRight.displaced(), "a row is a matter of its panels");
    assertEquals(List.of(new Displaced(1, List.of(0))), fromTheRight.panels().displaced());
  }

  @Test
  void aBalloonThatStraysIsMetWhereItLies() {
    List<PanelBox> stack = List.of(panel(1, 0, 0, 1600, 500), panel(2, 0, 700, 1600, 500));
    List<ReadBalloon> stops =
        List.of(stop("p1-1", 1, 100, 100), stop("p1-2", 1, 100, 1000), stop("p2-1", 2, 100, 800));
    ReadingOrder order = ReadingOrder.of(stack, stops, ReadingSide.LTR);
    assertEquals(List.of("p1-1", "p2-1", "p1-2"), order.metIds());
    assertEquals(List.of(new Displaced(1, List.of(2))), order.displaced(), "the one that strays");
    Phrase reason = order.reason(1, 2, Phrase.of("A"), Phrase.of("B"));
    assertEquals("B begins higher, so it is read first", reason.inReports());
  }

  @Test
  void insetsMayBeMetBeforeOrAfterTheirFrames() {
    List<PanelBox> nested = List.of(panel(1, 0, 0, 1600, 1500), panel(2, 100, 100, 600, 600));
    List<ReadBalloon> stops = List.of(stop("p1-1", 1, 800, 1200), stop("p2-1", 2, 150, 150));
    ReadingOrder order = ReadingOrder.of(nested, stops, ReadingSide.LTR);
    assertEquals(List.of("p1-1", "p2-1"), order.metIds());
    assertFalse(order.isCompared(0, 1));
    assertEquals(List.of(), order.panels().displaced());
  }

  @Test
  void whatGoesInACircleIsLeftToTheScript() {
    List<ReadBalloon> rising =
        List.of(stop("p1-1", 1, 0, 1020), stop("p1-2", 1, 500, 1010), stop("p1-3", 1, 1000, 1000));
    ReadingOrder order = ReadingOrder.of(List.of(TALL), rising, ReadingSide.LTR);
    assertEquals(List.of("p1-1", "p1-2", "p1-3"), order.metIds());
    assertEquals(List.of(new Displaced(0, List.of(2))), order.open());
    assertEquals(List.of(), order.displaced());
  }

  @Test
  void aCircleHidesNoTrueInversion() {
    List<ReadBalloon> stops =
        List.of(
            stop("p1-1", 1, 0, 1020),
            stop("p1-2", 1, 500, 1010),
            stop("p1-3", 1, 1000, 1000),
            stop("p1-4", 1, 500, 200));
    ReadingOrder order = ReadingOrder.of(List.of(TALL), stops, ReadingSide.LTR);
    assertEquals(List.of("p1-4", "p1-1", "p1-2", "p1-3"), order.metIds());
    assertEquals(List.of(new Displaced(3, List.of(0, 1, 2))), order.displaced());
  }

  @Test
  void theEyeEntersEveryPanelAndComesByEveryBalloon() {
    List<PanelBox> stack =
        List.of(panel(1, 0, 0, 1600, 500), panel(2, 0, 700, 1600, 500), panel(3, 0, 1300, 1600, 9));
    List<ReadBalloon> stops = List.of(stop("p1-1", 1, 100, 100), stop("p2-1", 2, 100, 800));
    assertEquals(
        List.of(
            new PathPoint(new XY(1600, 0), 1, ""),
            new PathPoint(new XY(300, 150), 1, "p1-1"),
            new PathPoint(new XY(1600, 700), 2, ""),
            new PathPoint(new XY(300, 850), 2, "p2-1"),
            new PathPoint(new XY(1600, 1300), 3, "")),
        ReadingOrder.of(stack, stops, ReadingSide.RTL).path());
  }

  @Test
  void balloonsOfAPanelWithoutAPlaceAreMetAsTheyLie() {
    List<ReadBalloon> stops = List.of(stop("p1-1", 1, 100, 700), stop("p2-1", 2, 100, 100));
    ReadingOrder order = ReadingOrder.of(List.of(), stops, ReadingSide.LTR);
    assertEquals(List.of("p2-1", "p1-1"), order.metIds());
    assertEquals(1, order.displaced().size());
  }

  @RepeatedTest(50)
  void stackedPanelsAreMetFromTheTop(RepetitionInfo run) {
    SplittableRandom random = new SplittableRandom(run.getCurrentRepetition());
    List<PanelBox> panels = new ArrayList<>();
    List<Integer> numbers = new ArrayList<>(IntStream.rangeClosed(1, 40).boxed().toList());
    double top = 0;
    while (!numbers.isEmpty()) {
      int number = numbers.remove(random.nextInt(numbers.size()));
      double height = random.nextInt(100, 900);
      panels.add(panel(number, random.nextInt(400), top, random.nextInt(500, 1200), height));
      top += height + random.nextInt(300);
    }
    List<Integer> fromTheTop =
        panels.stream()
            .sorted(Comparator.comparingDouble(panel -> panel.box().y()))
            .map(PanelBox::panel)
            .toList();
    ReadingSide side = random.nextBoolean() ? ReadingSide.LTR : ReadingSide.RTL;
    assertEquals(
        fromTheTop, PanelFlow.of(panels, side).met().stream().map(PanelBox::panel).toList());
  }

  @RepeatedTest(200)
  void mirroredStripsReadFromTheOtherSideAreTheSame(RepetitionInfo run) {
    Strip strip = Strip.random(run.getCurrentRepetition());
    ReadingOrder order = ReadingOrder.of(strip.panels, strip.stops, ReadingSide.LTR);
    Strip mirrored = strip.mirrored();
    ReadingOrder other = ReadingOrder.of(mirrored.panels, mirrored.stops, ReadingSide.RTL);
    assertEquals(order.met(), other.met());
    assertEquals(order.displaced(), other.displaced());
    assertEquals(order.panels().displaced(), other.panels().displaced());
  }

  @RepeatedTest(200)
  void whenAllThatIsDisplacedIsGoneNothingIsInverted(RepetitionInfo run) {
    Strip strip = Strip.random(run.getCurrentRepetition());
    ReadingOrder order = ReadingOrder.of(strip.panels, strip.stops, ReadingSide.LTR);
    assertEquals(strip.stops.size(), new HashSet<>(order.met()).size());
    Set<Integer> moved = new HashSet<>();
    order.displaced().forEach(displaced -> moved.add(displaced.index()));
    for (int b = 0; b < strip.stops.size(); b++) {
      for (int a = 0; a < b; a++) {
        boolean inverted = order.isInverted(a, b);
        assertFalse(inverted && !moved.contains(a) && !moved.contains(b), a + " " + b);
        ReadFirst meeting = order.meeting(a, b);
        assertEquals(inverted, order.isCompared(a, b) && !meeting.inOrder());
      }
    }
    for (Displaced displaced : order.displaced()) {
      for (int other : displaced.others()) {
        assertTrue(order.isInverted(displaced.index(), other));
      }
    }
  }

  /** In one panel the fewest moves are the fewest by trial of every subset. */
  @RepeatedTest(100)
  void noFewerBalloonsOfAPanelCouldMove(RepetitionInfo run) {
    SplittableRandom random = new SplittableRandom(run.getCurrentRepetition());
    List<ReadBalloon> stops = Strip.stops(1, TALL.box(), 8, random);
    ReadingOrder order = ReadingOrder.of(List.of(TALL), stops, ReadingSide.LTR);
    int most =
        IntStream.range(0, 1 << stops.size())
            .filter(kept -> staysInOrder(order, kept))
            .map(Integer::bitCount)
            .max()
            .orElseThrow();
    assertEquals(stops.size() - most, order.displaced().size());
  }

  private static boolean staysInOrder(ReadingOrder order, int kept) {
    for (int b = 0; b < order.stops().size(); b++) {
      for (int a = 0; a < b; a++) {
        if ((kept >> a & 1) == 1 && (kept >> b & 1) == 1 && order.isInverted(a, b)) {
          return false;
        }
      }
    }
    return true;
  }

  private record Strip(List<PanelBox> panels, List<ReadBalloon> stops) {

    /** Stacks, rows, staggered and nested panels with balloons in and about them. */
    static Strip random(int seed) {
      SplittableRandom random = new SplittableRandom(seed);
      List<PanelBox> panels = new ArrayList<>();
      List<ReadBalloon> stops = new ArrayList<>();
      int top = 0;
      for (int number = 1; number <= 10; number++) {
        int height = 10 * random.nextInt(20, 90);
        int x = 10 * random.nextInt(80);
        int width = 10 * random.nextInt(20, 80);
        PanelBox panel = panel(number, x, Math.max(0, top), width, height);
        panels.add(panel);
        stops.addAll(stops(number, panel.box(), random.nextInt(5), random));
        top += 10 * random.nextInt(-40, 110);
      }
      return new Strip(panels, stops);
    }

    static List<ReadBalloon> stops(int panel, Box box, int count, SplittableRandom random) {
      return IntStream.range(0, count)
          .mapToObj(
              i ->
                  new ReadBalloon(
                      "p" + panel + "-" + (i + 1),
                      panel,
                      new Box(
                          box.x() + 10 * random.nextInt((int) box.width() / 10),
                          box.y() + 10 * random.nextInt(-10, (int) box.height() / 10),
                          10 * random.nextInt(10, 50),
                          10 * random.nextInt(10, 30)),
                      false))
          .toList();
    }

    Strip mirrored() {
      return new Strip(
          panels.stream()
              .map(panel -> panel.at(PublishedLayoutsTest.mirrored(panel.box())))
              .toList(),
          stops.stream().map(s -> s.at(PublishedLayoutsTest.mirrored(s.box()))).toList());
    }
  }

  private static PanelBox panel(int number, double x, double y, double width, double height) {
    return new PanelBox(number, new Box(x, y, width, height));
  }

  private static ReadBalloon stop(String id, int panel, double x, double y) {
    return new ReadBalloon(id, panel, new Box(x, y, 400, 100), false);
  }
}
