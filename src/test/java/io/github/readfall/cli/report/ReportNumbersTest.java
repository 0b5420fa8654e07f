package io.github.readfall.cli.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.awt.font.GlyphVector;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import tools.jackson.databind.JsonNode;

/** Holds the numbers of reports to each other, and to what Java reads from the font files alone. */
class ReportNumbersTest {

  /** A share of a letter's height by which its curves may be flattened before it is measured. */
  private static final double FLATTENED = 0.002;

  private static final double ROUNDING = 0.0006; // numbers are rounded to a thousandth
  private static final double INCH_MM = 25.4;
  private static final double DP_PER_INCH = 160;

  private final FaceProbe faces = new FaceProbe();

  @TestFactory
  Stream<DynamicTest> aLineIsAsWideAsItsRunsTogether() {
    return eachBalloon(
        (fitted, balloon) ->
            lines(balloon)
                .forEach(
                    line -> {
                      List<JsonNode> runs = runs(line);
                      double sum = runs.stream().mapToDouble(run -> px(run, "advancePx")).sum();
                      assertEquals(sum, px(line, "advancePx"), ROUNDING * (1 + runs.size()));
                    }));
  }

  @TestFactory
  Stream<DynamicTest> aRunIsAsWideAsJavaSetsItAlone() {
    return eachBalloon(
        (fitted, balloon) ->
            lines(balloon)
                .flatMap(line -> runs(line).stream())
                .filter(run -> !run.has("barred")) // its bars widen it
                .forEach(
                    run -> {
                      double alone =
                          set(run, balloon).getGlyphPosition(glyphs(run, balloon)).getX();
                      double tolerance = 0.001 * alone + 0.05; // 0.1 %, and Java's float positions
                      assertEquals(alone, px(run, "advancePx"), tolerance, run.toString());
                    }));
  }

  @TestFactory
  Stream<DynamicTest> linesLieInsideTheBoxOfTheOutline() {
    return eachBalloon(
        (fitted, balloon) -> {
          Rectangle2D box = box(balloon);
          lines(balloon)
              .forEach(
                  line -> {
                    double closedUp = line.path("closedUpPx").asDouble(0);
                    double right = px(line, "xPx") + px(line, "advancePx") - closedUp;
                    assertTrue(px(line, "xPx") >= box.getMinX() - ROUNDING, line.toString());
                    assertTrue(right <= box.getMaxX() + 2 * ROUNDING, line.toString());
                    assertTrue(px(line, "baselinePx") >= box.getMinY(), line.toString());
                    assertTrue(px(line, "baselinePx") <= box.getMaxY() + ROUNDING, line.toString());
                  });
        });
  }

  @TestFactory
  Stream<DynamicTest> baselinesAreALeadingApart() {
    return eachBalloon(
        (fitted, balloon) -> {
          List<JsonNode> lines = lines(balloon).toList();
          for (int i = 1; i < lines.size(); i++) {
            assertEquals(
                px(balloon, "leadingPx"),
                px(lines.get(i), "baselinePx") - px(lines.get(i - 1), "baselinePx"),
                3 * ROUNDING);
          }
        });
  }

  @TestFactory
  Stream<DynamicTest> leadingIsTheHouseStylesShareOfTheEm() {
    // Em of leading over the style's own, by language: house defaults, no source.
    Map<String, Double> factors = Map.of("ja", 1.15, "ko", 1.05, "ar", 1.25, "th", 1.3);
    return eachBalloon(
        (fitted, balloon) -> {
          double style = fitted.path().contains("shapes") ? 1.3 : 1.15;
          double factor = factors.getOrDefault(balloon.path("language").asString(), 1.0);
          assertEquals(style * factor, px(balloon, "leadingPx") / px(balloon, "fontPx"), 1e-4);
        });
  }

  @TestFactory
  Stream<DynamicTest> theEmInDpIsTheStripsShareOfThePhone() {
    return eachBalloon(
        (fitted, balloon) ->
            assertEquals(
                px(balloon, "fontPx") * dpPerPx(fitted), px(balloon, "fontDp"), 2 * ROUNDING));
  }

  /** The angle of a height seen from a distance is 2 atan(h / 2d); a dp is 1/160 inch. */
  @TestFactory
  Stream<DynamicTest> theCapitalsAngleIsThatOfTheInkOfAnH() {
    return eachBalloon(
        (fitted, balloon) -> {
          List<Double> angles =
              lines(balloon)
                  .flatMap(line -> runs(line).stream())
                  .mapToDouble(
                      run ->
                          faces.topEm(run.path("face").asString(), "H")
                              * px(run.has("fontPx") ? run : balloon, "fontPx"))
                  .map(px -> arcmin(px, fitted))
                  .boxed()
                  .toList();
          double stated = px(balloon, "capArcmin");
          assertTrue(
              angles.stream().anyMatch(angle -> Math.abs(angle - stated) < FLATTENED * angle),
              stated + " is none of " + angles);
        });
  }

  @Test
  void dialogueSubtendsSeventeenMinutesOfArcAndItsWhispersLess() {
    List<String> sizes =
        Fitted.of("src/test/resources/report/scripts/bare.txt")
            .balloons()
            .map(balloon -> balloon.path("manner") + " " + balloon.path("capArcmin"))
            .toList();
    assertTrue(sizes.contains("[] 17.2"), sizes.toString());
    assertTrue(sizes.contains("[\"whisper\"] 14.62"), sizes.toString());
  }

  @TestFactory
  Stream<DynamicTest> theOutlinesBoxIsWhatItsPathReaches() {
    return eachBalloon(
        (fitted, balloon) -> {
          String path = balloon.path("outline").path("path").asString();
          Rectangle2D box = box(balloon);
          assertEquals(0, box.getX(), ROUNDING);
          assertEquals(0, box.getY(), ROUNDING);
          if (path.isEmpty()) {
            assertEquals("none", balloon.path("outline").path("shape").asString());
            return;
          }
          Rectangle2D bounds = SvgOutline.parse(path).bounds();
          assertEquals(box.getMinX(), bounds.getMinX(), 0.05);
          assertEquals(box.getMinY(), bounds.getMinY(), 0.05);
          assertEquals(box.getMaxX(), bounds.getMaxX(), 0.05);
          assertEquals(box.getMaxY(), bounds.getMaxY(), 0.05);
        });
  }

  @TestFactory
  Stream<DynamicTest> theInkOfEveryLineAsJavaSetsItKeepsItsMargin() {
    return eachBalloon(
        (fitted, balloon) -> {
          String path = balloon.path("outline").path("path").asString();
          lines(balloon)
              .map(line -> ink(line, balloon))
              .filter(ink -> !ink.isEmpty())
              .forEach(
                  ink -> {
                    double depth =
                        path.isEmpty()
                            ? depth(box(balloon), ink)
                            : SvgOutline.parse(path).depth(ink);
                    assertTrue(depth >= px(balloon, "marginPx") - 1, depth + " at " + ink);
                  });
        });
  }

  @TestFactory
  Stream<DynamicTest> balloonsStandInScriptOrderWithIdsThatCount() {
    return Fitted.all().stream()
        .map(
            fitted ->
                dynamicTest(
                    fitted.path(),
                    () -> {
                      List<Integer> order =
                          fitted
                              .balloons()
                              .map(b -> b.path("id").asString().substring(1).split("-", -1))
                              .map(id -> Integer.parseInt(id[0]) * 1000 + Integer.parseInt(id[1]))
                              .toList();
                      assertEquals(order.stream().sorted().distinct().toList(), order);
                    }));
  }

  /** Where an effect has no outline its box bounds its ink: what sticks out is below 0. */
  private static double depth(Rectangle2D box, Rectangle2D ink) {
    return Math.min(
        Math.min(ink.getMinX() - box.getMinX(), box.getMaxX() - ink.getMaxX()),
        Math.min(ink.getMinY() - box.getMinY(), box.getMaxY() - ink.getMaxY()));
  }

  private Rectangle2D ink(JsonNode line, JsonNode balloon) {
    Rectangle2D ink = new Rectangle2D.Double();
    double pen = px(line, "xPx");
    for (JsonNode run : runs(line)) {
      GlyphVector set = set(run, balloon);
      Rectangle2D own = FaceProbe.ink(set, px(run, "slantDeg"));
      double tracking = balloon.path("trackingPx").asDouble(0);
      int letters = set.getNumGlyphs();
      if (!own.isEmpty()) {
        Rectangle2D placed =
            new Rectangle2D.Double(
                pen + own.getX(),
                px(line, "baselinePx") + own.getY(),
                own.getWidth() + tracking * (letters - 1),
                own.getHeight());
        ink = ink.isEmpty() ? placed : ink.createUnion(placed);
      }
      pen += px(run, "advancePx") + tracking * letters;
    }
    return ink;
  }

  private GlyphVector set(JsonNode run, JsonNode balloon) {
    double fontPx = run.path("fontPx").asDouble(px(balloon, "fontPx"));
    return faces.set(run.path("face").asString(), run.path("text").asString(), fontPx);
  }

  private int glyphs(JsonNode run, JsonNode balloon) {
    return set(run, balloon).getNumGlyphs();
  }

  private static double arcmin(double heightPx, Fitted fitted) {
    double heightMm = heightPx * dpPerPx(fitted) * INCH_MM / DP_PER_INCH;
    double distanceMm = fitted.report().path("target").path("distanceMm").asDouble();
    return Math.toDegrees(2 * Math.atan(heightMm / (2 * distanceMm))) * 60;
  }

  /** The strip is as wide as the screen: 1600 px on 360 dp, in the script of shapes 1200 on 320. */
  private static double dpPerPx(Fitted fitted) {
    double widthPx = fitted.path().contains("shapes") ? 1200 : 1600;
    return fitted.report().path("target").path("widthDp").asDouble() / widthPx;
  }

  private static Rectangle2D box(JsonNode balloon) {
    JsonNode box = balloon.path("outline").path("box");
    return new Rectangle2D.Double(
        box.path(0).asDouble(),
        box.path(1).asDouble(),
        box.path(2).asDouble(),
        box.path(3).asDouble());
  }

  private static double px(JsonNode node, String field) {
    assertTrue(node.path(field).isNumber(), field + " is missing in " + node);
    return node.path(field).asDouble();
  }

  private static Stream<JsonNode> lines(JsonNode balloon) {
    return balloon.path("lines").valueStream();
  }

  private static List<JsonNode> runs(JsonNode line) {
    return line.path("runs").valueStream().toList();
  }

  private interface Check {
    void of(Fitted fitted, JsonNode balloon);
  }

  private static Stream<DynamicTest> eachBalloon(Check check) {
    return Fitted.all().stream()
        .flatMap(
            fitted ->
                fitted
                    .balloons()
                    .map(
                        balloon ->
                            dynamicTest(fitted.nameOf(balloon), () -> check.of(fitted, balloon))));
  }
}
