package io.github.readfall.draw.render;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.github.weisj.jsvg.parser.LoaderContext;
import com.github.weisj.jsvg.parser.SVGLoader;
import io.github.readfall.Pixels;
import io.github.readfall.base.geom.Path;
import io.github.readfall.base.geom.XY;
import io.github.readfall.base.viewing.Colour;
import io.github.readfall.draw.Drawing;
import io.github.readfall.draw.FitSheet;
import io.github.readfall.draw.Mark;
import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.lettering.typeset.Labels;
import io.github.readfall.lettering.typeset.Sample;
import io.github.readfall.lettering.typeset.Typesetter;
import io.github.readfall.script.Keywords;
import io.github.readfall.script.Script;
import io.github.readfall.script.read.ScriptReader;
import io.github.readfall.type.font.FontShelf;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** What the pictures show, read back by decoders that are not ours. */
class PictureTest {

  private static final int METRES_AT_350_DPI = 13_780; // 350 / 0.0254, rounded
  private static final int ROUNDING = 4; // in 1/255
  private static final int ANTIALIASING = 64; // in 1/255: the edge of a clipped curve
  private static final int SEAM = 40; // pixels in one row that would show
  private static final Drawing SHEET = sheet();

  private static Drawing sheet() {
    FontShelf shelf = Sample.shelf();
    HouseStyle style = HouseStyle.DEFAULT;
    try {
      String text = Files.readString(java.nio.file.Path.of("docs/pictures/balloons.txt"));
      Script script = new ScriptReader().read(text, Keywords.ENGLISH).script();
      return FitSheet.of(new Typesetter(shelf, style).set(script), new Labels(shelf, style));
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  private static byte[] bytes(PictureFormat format, Drawing drawing) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    format.write(drawing, 350, out);
    return out.toByteArray();
  }

  private static BufferedImage painted(Drawing drawing) {
    BufferedImage image =
        new BufferedImage(drawing.widthPx(), drawing.heightPx(), BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setColor(new Color(drawing.paper().rgb()));
    g.fillRect(0, 0, image.getWidth(), image.getHeight());
    Java2dPainter painter = new Java2dPainter(g);
    drawing.marks().forEach(mark -> mark.paintOn(painter));
    return image;
  }

  @Test
  void pngIsWhatIsPaintedInOnePieceWithoutSeams() throws IOException {
    BufferedImage read = ImageIO.read(new ByteArrayInputStream(bytes(PictureFormat.PNG, SHEET)));
    BufferedImage whole = painted(SHEET);
    assertTrue(Alike.farthest(whole, read) <= ANTIALIASING, () -> "" + Alike.worst(whole, read));
    int[] expected = Pixels.of(whole);
    int[] found = Pixels.of(read);
    for (int y = 0; y < whole.getHeight(); y++) {
      int different = 0;
      for (int i = y * whole.getWidth(); i < (y + 1) * whole.getWidth(); i++) {
        different += Alike.farthest(expected[i], found[i]) > ROUNDING ? 1 : 0;
      }
      assertTrue(different < SEAM, "row " + y + ": " + different + " pixels");
    }
  }

  @Test
  void pngStatesItsResolution() throws IOException {
    byte[] png = bytes(PictureFormat.PNG, SHEET);
    String latin = new String(png, StandardCharsets.ISO_8859_1);
    int chunk = latin.indexOf("pHYs");
    assertTrue(chunk > 0, "no pHYs chunk");
    assertEquals(METRES_AT_350_DPI, ByteBuffer.wrap(png).getInt(chunk + 4));
  }

  /** The independent renderer is JSVG. */
  @Test
  void svgLooksLikeThePng() throws IOException {
    byte[] svg = bytes(PictureFormat.SVG, SHEET);
    var document =
        new SVGLoader().load(new ByteArrayInputStream(svg), null, LoaderContext.createDefault());
    assertNotNull(document);
    BufferedImage image =
        new BufferedImage(SHEET.widthPx(), SHEET.heightPx(), BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    document.render(null, g);
    double difference = Alike.meanDifference(painted(SHEET), image);
    assertTrue(difference < 0.01, "mean difference " + difference);
  }

  @Test
  void theSamePictureHasTheSameBytes() throws IOException {
    for (PictureFormat format : PictureFormat.values()) {
      assertArrayEquals(bytes(format, SHEET), bytes(format, sheet()), format.name());
    }
  }

  @Test
  void theDocumentedPictureIsWhatTheToolDraws() throws IOException {
    BufferedImage kept = ImageIO.read(java.nio.file.Path.of("docs/pictures/balloons.png").toFile());
    assertEquals(SHEET.widthPx(), kept.getWidth());
    assertEquals(SHEET.heightPx(), kept.getHeight());
    double difference = Alike.meanDifference(painted(SHEET), kept);
    assertTrue(difference < 0.01, "draw docs/pictures/balloons.png anew: " + difference);
  }

  @Test
  void svgKeepsWhatABalloonSaysForThoseWhoCannotSeeIt() throws IOException {
    String svg = new String(bytes(PictureFormat.SVG, SHEET), StandardCharsets.UTF_8);
    assertTrue(svg.contains("<g id=\"p1-1\" role=\"img\"><title>NOBODY HAD"), "no title");
  }

  @Test
  void svgLeavesOutWhatNoXmlMayHold() throws IOException {
    Path dot = new Path(List.of(new Path.Move(new XY(0, 0)), new Path.Close()));
    Mark.Group group =
        new Mark.Group("g", "a\u0001<b>&\uFFFE\ud800", List.of(new Mark.Fill(dot, Colour.WHITE)));
    Drawing drawing = new Drawing("t", "en", 10, 10, Colour.WHITE, List.of(group));
    String svg = new String(bytes(PictureFormat.SVG, drawing), StandardCharsets.UTF_8);
    assertTrue(svg.contains("<title>a&lt;b&gt;&amp;</title>"), svg);
  }
}
