package io.github.readfall.export.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.base.files.CannotWrite;
import io.github.readfall.base.geom.XY;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The art under the lettering, as PDFBox shows it. */
class ProofArtTest {

  private static final int WIDTH = 800;
  private static final int PAGE = 3500;
  private static final int STRIPE = 100;
  private static final int CLOSE = 24; // in 1/255: what JPEG does to a plain colour
  private static final String SCRIPT =
      "PANEL 1  height 3000\nA quay.\nILSE: One.\n\nPANEL 2  height 3000\nA gull.\nILSE: Two.\n";

  private final Path temp;

  ProofArtTest(@TempDir Path temp) {
    this.temp = temp;
  }

  /** Every hundred pixels another colour, all down the strip. */
  private static Color stripe(int y) {
    int index = y / STRIPE;
    return new Color(40 + 37 * index % 200, 40 + 91 * index % 200, 40 + 53 * index % 200);
  }

  private void drawArt() throws Exception {
    Path folder = Files.createDirectories(temp.resolve("art"));
    for (int page = 0; page < 2; page++) {
      BufferedImage image = new BufferedImage(WIDTH, PAGE, BufferedImage.TYPE_INT_RGB);
      Graphics2D g = image.createGraphics();
      for (int y = 0; y < PAGE; y += STRIPE) {
        g.setColor(stripe(page * PAGE + y));
        g.fillRect(0, y, WIDTH, STRIPE);
      }
      g.dispose();
      ImageIO.write(image, "png", folder.resolve("page" + page + ".png").toFile());
    }
    Files.writeString(temp.resolve("series.toml"), "[strip]\nwidth = " + WIDTH + "\n");
  }

  @Test
  void artLiesUnderTheStripWhereItBelongs() throws Exception {
    drawArt();
    Made made = Made.of(Made.strip(temp, SCRIPT));
    Paper paper = Paper.of(made.strip().galley());
    List<Segment> segments = Segment.of(made.strip().galley(), paper);
    try (PDDocument document = Loader.loadPDF(made.pdf())) {
      int looked = 0;
      for (Segment segment : segments) {
        BufferedImage page =
            new PDFRenderer(document).renderImageWithDPI(1 + segment.index(), 144, ImageType.RGB);
        double first = Math.ceil(segment.topPx() / STRIPE) * STRIPE + STRIPE / 2.0;
        for (double y = first; y < Math.min(segment.bottomPx(), 2 * PAGE); y += STRIPE) {
          XY at = new XY(Paper.SIDE + paper.stripPt() - 2, paper.yPt(y, segment));
          int rgb = page.getRGB((int) (2 * at.x()), (int) (2 * at.y()));
          assertClose(stripe((int) y), new Color(rgb), "at " + y);
          looked++;
        }
      }
      assertTrue(looked > 50, "only " + looked + " stripes were looked at");
    }
  }

  private static void assertClose(Color wanted, Color found, String where) {
    int off =
        Math.max(
            Math.abs(wanted.getRed() - found.getRed()),
            Math.max(
                Math.abs(wanted.getGreen() - found.getGreen()),
                Math.abs(wanted.getBlue() - found.getBlue())));
    assertTrue(off < CLOSE, wanted + " is " + found + " " + where);
  }

  /** Pieces small enough for any program, no finer than paper shows, each once in the file. */
  @Test
  void artIsInPiecesThatPaperCanShow() throws Exception {
    drawArt();
    Made made = Made.of(Made.strip(temp, SCRIPT));
    Paper paper = Paper.of(made.strip().galley());
    Set<COSBase> pictures = new HashSet<>();
    int segments = Segment.of(made.strip().galley(), paper).size();
    try (PDDocument document = Loader.loadPDF(made.pdf())) {
      for (PDPage page : document.getPages()) {
        for (COSName name : page.getResources().getXObjectNames()) {
          PDImageXObject picture = (PDImageXObject) page.getResources().getXObject(name);
          assertTrue(picture.getHeight() <= 2048, "rows " + picture.getHeight());
          assertEquals(Math.ceil(paper.stripPt() * 200 / 72), picture.getWidth());
          assertEquals("jpg", picture.getSuffix());
          pictures.add(picture.getCOSObject());
        }
      }
    }
    assertEquals(segments + 1, pictures.size(), "one more where a page of art ends");
  }

  @Test
  void aDamagedPageIsSaidAndNothingIsWritten() throws Exception {
    drawArt();
    Path page = temp.resolve("art/page1.png");
    byte[] whole = Files.readAllBytes(page);
    Files.write(page, java.util.Arrays.copyOf(whole, whole.length / 2));
    ProofBatch batch = new ProofBatch(List.of(Made.strip(temp, SCRIPT)));
    CannotWrite refused =
        assertThrows(
            CannotWrite.class,
            () -> batch.writeTo(name -> new ByteArrayOutputStream(), (done, of) -> {}));
    assertTrue(refused.getMessage().contains("page1.png"), refused.getMessage());
  }
}
