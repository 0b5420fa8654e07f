package io.github.readfall.window.canvas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.base.geom.Box;
import io.github.readfall.plan.EpisodeOverview;
import io.github.readfall.plan.PartSpan;
import io.github.readfall.plan.Split;
import io.github.readfall.strip.Cuts;
import java.awt.Graphics2D;
import java.awt.event.ActionEvent;
import java.awt.event.MouseEvent;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.swing.KeyStroke;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tests of the overview, painted into pictures without a window. */
class OverviewPaneTest {

  private static final Cuts CUTS = new Cuts(List.of(9000.0), false, List.of(5000.0, 15_000.0));

  private static EpisodeOverview overview(double heightPx, Cuts cuts, int... words) {
    double screenPx = heightPx / words.length;
    List<EpisodeOverview.Step> curve =
        IntStream.range(0, words.length)
            .mapToObj(
                i ->
                    new EpisodeOverview.Step(
                        i + 1, i * screenPx, (i + 1) * screenPx, words[i], words[i] * 0.3))
            .toList();
    List<Box> panels = List.of(new Box(80, 200, 1440, 1000));
    List<Box> balloons = List.of(new Box(200, 300, 500, 300));
    return new EpisodeOverview(
        new Box(0, 0, 1600, heightPx), panels, balloons, cuts, curve, 60, 120_000);
  }

  private static OverviewPane view(EpisodeOverview overview) {
    OverviewPane view = new OverviewPane();
    view.setSize(320, 600);
    view.show(Optional.of(overview));
    return view;
  }

  private static List<Integer> painted(OverviewPane view) {
    BufferedImage image = new BufferedImage(320, 600, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    view.paint(g);
    g.dispose();
    return IntStream.of(image.getRGB(0, 0, 320, 600, null, 0, 320)).boxed().toList();
  }

  @ParameterizedTest
  @CsvSource({
    "DOWN, 5500",
    "UP, 4500",
    "PAGE_DOWN, 6800",
    "PAGE_UP, 3200",
    "HOME, 0",
    "END, 18000"
  })
  void keysAskForAnotherPartOfTheStrip(String key, double topPx) throws Exception {
    assertEquals(List.of(topPx), Strips.onEvents(() -> pressed(key, 5000, 7000)));
  }

  @ParameterizedTest
  @CsvSource({"UP, 100, 2100, 0", "DOWN, 17900, 19900, 18000", "END, 0, 30000, 0"})
  void nobodyIsAskedBeyondTheEnds(String key, double topPx, double bottomPx, double asked)
      throws Exception {
    assertEquals(List.of(asked), Strips.onEvents(() -> pressed(key, topPx, bottomPx)));
  }

  private static List<Double> pressed(String key, double topPx, double bottomPx) {
    OverviewPane view = view(overview(20_000, CUTS, 10, 70));
    view.markVisible(new VisiblePart(topPx, bottomPx));
    List<Double> asked = new ArrayList<>();
    view.onScrollRequest(asked::add);
    Object action = view.getInputMap().get(KeyStroke.getKeyStroke(key));
    view.getActionMap().get(action).actionPerformed(new ActionEvent(view, 0, ""));
    return asked;
  }

  @Test
  void aClickBringsItsPlaceIntoTheMiddle() throws Exception {
    List<Double> asked =
        Strips.onEvents(
            () -> {
              OverviewPane view = view(overview(20_000, CUTS, 10, 70));
              view.markVisible(new VisiblePart(0, 2000));
              List<Double> requests = new ArrayList<>();
              view.onScrollRequest(requests::add);
              for (int y : new int[] {0, 300, 599}) {
                view.dispatchEvent(
                    new MouseEvent(view, MouseEvent.MOUSE_PRESSED, 0, 0, 50, y, 1, false));
              }
              return requests;
            });
    assertEquals(0, asked.get(0));
    assertTrue(asked.get(1) > 7000 && asked.get(1) < 11_000, asked.toString());
    assertEquals(18_000, asked.get(2));
  }

  /** The frame is its own inverse, so that a click goes to the place where it is seen. */
  @ParameterizedTest
  @CsvSource({"320, 600, 13", "200, 260, 13", "300, 400, 26", "900, 2000, 13"})
  void aPlaceThatIsPaintedIsThePlaceThatIsClicked(int width, int height, double em) {
    EpisodeOverview overview = overview(20_000, CUTS, 10, 70);
    OverviewFrame frame = OverviewFrame.in(width, height, em, overview);
    for (double y : new double[] {0, 1, 7777, 20_000}) {
      assertEquals(y, frame.stripPx(frame.y(y)), 1e-6);
    }
    assertTrue(frame.strip().bottom() <= height);
    assertTrue(frame.strip().right() < frame.curve().x());
    assertTrue(frame.x(70) <= width, "the fullest screen is in it");
    assertTrue(frame.x(60) <= width, "the limit is in it");
  }

  @Test
  void aShortStripIsNotBlownUp() {
    OverviewFrame frame = OverviewFrame.in(320, 600, 13, overview(1600, Cuts.NONE, 3));
    assertEquals(frame.strip().width(), frame.strip().height(), 1e-9);
  }

  /** WCAG 2.2, 1.4.1: a difference in colour must be one in form as well. */
  @Test
  void endsOfPagesAndSlicesDifferInForm() throws Exception {
    List<Double> same = List.of(10_000.0);
    Strips.onEvents(
        () -> {
          List<Integer> none = painted(view(overview(20_000, Cuts.NONE, 10, 20)));
          List<Integer> page =
              painted(view(overview(20_000, new Cuts(same, false, List.of()), 10, 20)));
          List<Integer> slice =
              painted(view(overview(20_000, new Cuts(List.of(), false, same), 10, 20)));
          assertNotEquals(none, page);
          assertNotEquals(none, slice);
          assertNotEquals(page, slice);
          return none;
        });
  }

  @Test
  void theVisiblePartAndTheJointsOfPartsAreMarked() throws Exception {
    Strips.onEvents(
        () -> {
          OverviewPane view = view(overview(20_000, CUTS, 10, 20));
          List<Integer> before = painted(view);
          view.markVisible(new VisiblePart(4000, 6000));
          List<Integer> seen = painted(view);
          assertNotEquals(before, seen);
          Split.Part part = new Split.Part(1, 1, 1000, 3, 1, "");
          view.showParts(
              List.of(
                  new PartSpan(1, 0, 12_000, 1, part), new PartSpan(2, 12_000, 20_000, 1, part)));
          assertNotEquals(seen, painted(view));
          return seen;
        });
  }

  @Test
  void aWordyScreenIsMarkedByASign() throws Exception {
    Strips.onEvents(
        () -> {
          EpisodeOverview wordy = overview(20_000, CUTS, 10, 61);
          EpisodeOverview allowed =
              new EpisodeOverview(
                  wordy.strip(),
                  wordy.panels(),
                  wordy.balloons(),
                  wordy.cuts(),
                  wordy.curve(),
                  61,
                  wordy.tallestPx());
          assertTrue(dark(painted(view(wordy))) > dark(painted(view(allowed))) + 20);
          return wordy;
        });
  }

  private static long dark(List<Integer> pixels) {
    return pixels.stream().filter(rgb -> (rgb & 255) < 90).count();
  }

  @Test
  void anEmptyOverviewIsPaintedAndRequestsNothing() throws Exception {
    List<Double> asked =
        Strips.onEvents(
            () -> {
              OverviewPane view = new OverviewPane();
              view.setSize(320, 600);
              List<Double> requests = new ArrayList<>();
              view.onScrollRequest(requests::add);
              view.markVisible(new VisiblePart(0, 0));
              painted(view);
              view.dispatchEvent(
                  new MouseEvent(view, MouseEvent.MOUSE_PRESSED, 0, 0, 50, 300, 1, false));
              return requests;
            });
    assertEquals(List.of(), asked);
  }
}
