package io.github.readfall.export.raster;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.Pixels;
import io.github.readfall.draw.render.Alike;
import io.github.readfall.draw.render.SvgWriter;
import io.github.readfall.strip.galley.Galley;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class LayerFilesTest {

  private static final int ROUNDING = 3; // of 255: three layers, each rounded to eight bits
  private static final Galley GALLEY = Drawn.galley(Drawn.EVERY_MANNER);
  private static final String PAGE = "ep01-en-page-01";

  private static final Map<String, byte[]> FILES = files(SvgWriter.Letters.OUTLINES);

  private static Map<String, byte[]> files(SvgWriter.Letters letters) {
    try {
      return Drawn.files(new LayerFiles(Drawn.strip(GALLEY), letters));
    } catch (Exception e) {
      throw new AssertionError(e);
    }
  }

  @Test
  void layersOnEachOtherAreTheLetteringOverAnyColour() throws Exception {
    for (Color art : List.of(Color.WHITE, new Color(0x3a7040), Color.BLACK)) {
      BufferedImage stack = Alike.over(art, image("-balloons"));
      Graphics2D g = stack.createGraphics();
      g.drawImage(image("-tails"), 0, 0, null);
      g.drawImage(image("-text"), 0, 0, null);
      BufferedImage whole = Alike.over(art, image("-lettering"));
      int by = Alike.farthest(stack, whole);
      assertTrue(by <= ROUNDING, () -> "at " + Alike.worst(stack, whole) + " by " + by);
    }
  }

  private static BufferedImage image(String layer) throws Exception {
    return Drawn.read(Drawn.file(FILES, PAGE + layer + ".png"));
  }

  @Test
  void eachLayerHoldsItsOwnAndTheRestIsClear() throws Exception {
    double whole = inkShare(image("-lettering"));
    double balloons = inkShare(image("-balloons"));
    double tails = inkShare(image("-tails"));
    double text = inkShare(image("-text"));
    assertTrue(balloons > 0.5 * whole && balloons < whole, "balloons " + balloons);
    assertTrue(tails > 0 && tails < 0.1 * whole, "tails " + tails);
    assertTrue(text > 0 && text < 0.5 * whole, "text " + text);
  }

  private static double inkShare(BufferedImage image) {
    int[] pixels = Pixels.of(image);
    return (double) IntStream.of(pixels).filter(pixel -> pixel >>> 24 != 0).count() / pixels.length;
  }

  @Test
  void filesAreNamedBeforeTheyAreMadeAndAreTheSameEachTime() throws Exception {
    LayerFiles batch = new LayerFiles(Drawn.strip(GALLEY), SvgWriter.Letters.OUTLINES);
    assertEquals(batch.names(), new ArrayList<>(FILES.keySet()));
    Map<String, byte[]> again = Drawn.files(batch);
    FILES.forEach((name, bytes) -> assertArrayEquals(bytes, Drawn.file(again, name), name));
  }

  @Test
  void svgHasTheSameLayersAsGroupsAndNoPaper() throws Exception {
    String svg = svg(FILES);
    int balloons = svg.indexOf("<g id=\"balloons\"><title>Balloons</title>");
    int tails = svg.indexOf("<g id=\"tails\"><title>Tails</title>");
    int text = svg.indexOf("<g id=\"text\"><title>Text</title>");
    assertTrue(0 < balloons && balloons < tails && tails < text, "groups");
    assertTrue(!svg.contains("<rect"), "paper");
    assertTrue(!svg.contains("<text"), "letters need a font");
    assertEquals(GALLEY.balloons().size(), svg.split("role=\"img\"", -1).length - 1);
  }

  @Test
  void liveTextSaysWhatIsSaidInReadingOrderAndNamesItsFaces() throws Exception {
    String svg = svg(files(SvgWriter.Letters.LIVE));
    String said =
        svg.substring(svg.indexOf("<g id=\"text\">"))
            .replaceAll("<title>[^<]*</title>", "")
            .replaceAll("</text>", " ")
            .replaceAll("<[^>]*>", "")
            .strip();
    String expected =
        String.join(
            " ",
            GALLEY.balloons().stream()
                .flatMap(balloon -> balloon.set().lines().stream())
                .map(line -> line.line().text())
                .toList());
    assertEquals(expected, said.replace("&amp;", "&"));
    assertTrue(svg.contains("font-family=\"Grandstander\""), "the face's own name");
  }

  private static String svg(Map<String, byte[]> files) {
    return new String(Drawn.file(files, "ep01-en-lettering.svg"), StandardCharsets.UTF_8);
  }
}
