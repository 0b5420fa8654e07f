package io.github.readfall.export.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.Pixels;
import io.github.readfall.base.geom.XY;
import io.github.readfall.base.viewing.Colour;
import io.github.readfall.draw.Drawing;
import io.github.readfall.draw.FitSheet;
import io.github.readfall.draw.Mark;
import io.github.readfall.draw.render.Alike;
import io.github.readfall.draw.render.Java2dPainter;
import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.lettering.typeset.Labels;
import io.github.readfall.lettering.typeset.Sample;
import io.github.readfall.lettering.typeset.Typesetter;
import io.github.readfall.script.Keywords;
import io.github.readfall.script.Script;
import io.github.readfall.script.read.ScriptReader;
import io.github.readfall.type.font.Face;
import io.github.readfall.type.font.FaceFile;
import io.github.readfall.type.font.FontShelf;
import io.github.readfall.type.font.GlyphRow;
import io.github.readfall.type.text.PlacedRun;
import io.github.readfall.type.text.SizedFace;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What other programs make of a page, beside what Java2D paints of the same marks. */
class PdfPainterTest {

  private static final FontShelf SHELF = Sample.shelf();
  private static final Labels LABELS = new Labels(SHELF, HouseStyle.DEFAULT);
  private static final double ALIKE = 0.01;
  private static final double HALF_PIXEL = 0.5;
  private static final int FINER = 3;
  private static final double ENOUGH_INK = 30; // whole black pixels: a full stop has fewer
  private static final Path CFF_FOLDER = Path.of("src/test/resources/font");

  private final Path temp;

  PdfPainterTest(@TempDir Path temp) {
    this.temp = temp;
  }

  private static Drawing sheet(String script) {
    Script read = new ScriptReader().read(script, Keywords.ENGLISH).script();
    return FitSheet.of(new Typesetter(SHELF, HouseStyle.DEFAULT).set(read), LABELS);
  }

  private static Drawing everyShape() throws IOException {
    return sheet(Files.readString(Path.of("docs/pictures/balloons.txt")));
  }

  /** Strip pixels are so many points that the drawing fills the page. */
  private static double scale(Drawing drawing) {
    return Math.min(Paper.WIDTH / drawing.widthPx(), Paper.HEIGHT / drawing.heightPx());
  }

  private static byte[] printed(Drawing drawing) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (Book book = new Book("Test", "en", 1, LABELS.line("x", 7, false))) {
      Sheet sheet = book.add();
      sheet.decoration(
          () ->
              sheet.at(
                  new XY(0, 0),
                  scale(drawing),
                  () -> drawing.marks().forEach(mark -> mark.paintOn(sheet.painter()))));
      book.writeTo(out);
    }
    return out.toByteArray();
  }

  private static BufferedImage painted(Drawing drawing) {
    BufferedImage image =
        new BufferedImage(drawing.widthPx(), drawing.heightPx(), BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, image.getWidth(), image.getHeight());
    Java2dPainter painter = new Java2dPainter(g);
    drawing.marks().forEach(mark -> mark.paintOn(painter));
    g.dispose();
    return image;
  }

  private static BufferedImage byPdfBox(Drawing drawing, byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      float dpi = (float) (72 / scale(drawing));
      return new PDFRenderer(document).renderImageWithDPI(0, dpi, ImageType.RGB);
    }
  }

  /** Painted finer and then made smaller, for Poppler begins each glyph at a whole pixel. */
  private BufferedImage byPoppler(Drawing drawing, byte[] pdf) throws IOException {
    Path file = Files.write(temp.resolve("page.pdf"), pdf);
    String dpi = Double.toString(FINER * 72 / scale(drawing));
    Path image = temp.resolve("page");
    Tool.run("pdftoppm", "-r", dpi, "-singlefile", file.toString(), image.toString());
    return smaller(Files.readAllBytes(temp.resolve("page.ppm")));
  }

  /** Of a portable pixmap (netpbm, "ppm", P6): quicker to make and to read than a PNG. */
  private static BufferedImage smaller(byte[] ppm) {
    String[] head = new String(ppm, 0, 64, StandardCharsets.US_ASCII).split("\\s", 5);
    assertEquals("P6 255", head[0] + " " + head[3]);
    int fullWidth = Integer.parseInt(head[1]);
    int first = String.join(" ", List.of(head).subList(0, 4)).length() + 1;
    int width = fullWidth / FINER;
    int height = Integer.parseInt(head[2]) / FINER;
    int[] pixels = new int[width * height];
    int[] sums = new int[3 * width];
    for (int y = 0; y < height; y++) {
      Arrays.fill(sums, 0);
      for (int row = 0; row < FINER; row++) {
        int at = first + 3 * (FINER * y + row) * fullWidth;
        for (int sample = 0; sample < 3 * FINER * width; sample += 3) {
          int sum = sample / (3 * FINER) * 3;
          sums[sum] += ppm[at + sample] & 0xff;
          sums[sum + 1] += ppm[at + sample + 1] & 0xff;
          sums[sum + 2] += ppm[at + sample + 2] & 0xff;
        }
      }
      for (int x = 0; x < width; x++) {
        int of = FINER * FINER;
        pixels[y * width + x] =
            ((sums[3 * x] / of) << 16) | ((sums[3 * x + 1] / of) << 8) | (sums[3 * x + 2] / of);
      }
    }
    BufferedImage small = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    small.getRaster().setDataElements(0, 0, width, height, pixels);
    return small;
  }

  /** Mean difference of all channels, as a share of their range. */
  private static double difference(BufferedImage a, BufferedImage b) {
    int width = Math.min(a.getWidth(), b.getWidth());
    int height = Math.min(a.getHeight(), b.getHeight());
    return Alike.meanDifference(
        a.getSubimage(0, 0, width, height), b.getSubimage(0, 0, width, height));
  }

  private static Stream<Mark.Glyphs> glyphs(List<Mark> marks) {
    return marks.stream()
        .flatMap(
            mark ->
                mark instanceof Mark.Group group
                    ? glyphs(group.marks())
                    : mark instanceof Mark.Glyphs run ? Stream.of(run) : Stream.empty());
  }

  /** The pixels that each glyph may paint. */
  private static List<Rectangle> cells(Drawing drawing) {
    List<Rectangle> cells = new ArrayList<>();
    glyphs(drawing.marks())
        .forEach(
            mark -> {
              PlacedRun run = mark.run();
              SizedFace type = run.type();
              for (int i = 0; i < run.glyphs().size(); i++) {
                AffineTransform place =
                    AffineTransform.getTranslateInstance(
                        mark.at().x() + run.glyphXPx(i), mark.at().y() - run.glyphYPx(i));
                place.scale(type.pxPerUnit(), type.pxPerUnit());
                Rectangle cell =
                    place
                        .createTransformedShape(
                            type.face().outline(run.glyphs().glyph(i), type.slantDeg()))
                        .getBounds();
                cell.grow(2, 2);
                cells.add(cell);
              }
            });
    return cells;
  }

  /** The middle of what is dark in a cell, and how much that is. */
  private static double[] ink(BufferedImage image, Rectangle cell) {
    double sum = 0;
    double x = 0;
    double y = 0;
    Rectangle seen = cell.intersection(new Rectangle(image.getWidth(), image.getHeight()));
    int[] pixels = Pixels.of(image.getSubimage(seen.x, seen.y, seen.width, seen.height));
    for (int i = 0; i < pixels.length; i++) {
      double dark = (255 - (pixels[i] >> 8 & 0xff)) / 255.0;
      sum += dark;
      x += dark * (seen.x + i % seen.width);
      y += dark * (seen.y + i / seen.width);
    }
    return new double[] {x / sum, y / sum, sum};
  }

  /** How far the glyph that is shifted most is from where it should be. */
  private static double worstShift(Drawing drawing, BufferedImage ours, BufferedImage other) {
    double worst = 0;
    int compared = 0;
    for (Rectangle cell : cells(drawing)) {
      double[] a = ink(ours, cell);
      double[] b = ink(other, cell);
      if (a[2] > ENOUGH_INK) {
        worst = Math.max(worst, Math.hypot(a[0] - b[0], a[1] - b[1]));
        compared++;
      }
    }
    assertTrue(compared > 5, "only " + compared + " glyphs were compared");
    return worst;
  }

  private static void assertAlike(Drawing drawing, BufferedImage other) {
    BufferedImage ours = painted(drawing);
    double difference = difference(ours, other);
    assertTrue(difference < ALIKE, "differs by " + difference);
    double shift = worstShift(drawing, ours, other);
    assertTrue(shift < HALF_PIXEL, "a glyph is shifted by " + shift + " px");
  }

  @Test
  void everyShapeLooksInPdfBoxAsItDoesOnTheScreen() throws IOException {
    Drawing drawing = everyShape();
    assertAlike(drawing, byPdfBox(drawing, printed(drawing)));
  }

  @Test
  void leaningAndLargeLettersLookInPopplerAsTheyDoOnTheScreen() throws IOException {
    Drawing drawing = sheet("PANEL 1\n\nILSE (thought): It is *counting* again.\nSFX: KRRANK\n");
    assertAlike(drawing, byPoppler(drawing, printed(drawing)));
  }

  /** Marks above and below letters, letters that change with their neighbours, and both ways. */
  @Test
  void scriptsOfTheWorldLookInPopplerAsTheyDoOnTheScreen() throws IOException {
    for (String script :
        List.of(
            "Language: th\n\nPANEL 1\n\nA: ที่นี่ น้ำขึ้นปู่ย่ารู้ 12 ครั้ง\n",
            "Language: hi\n\nPANEL 1\n\nA: क्षत्रिय की प्रार्थना में शक्ति है\n",
            "Language: ar\n\nPANEL 1\n\nA: الماء يعود 12 مرة إلى هنا، لا تخف\n",
            "Language: vi\n\nPANEL 1\n\nA: Nước đã về từ *hôm qua*\n")) {
      Drawing drawing = sheet(script);
      assertAlike(drawing, byPoppler(drawing, printed(drawing)));
    }
  }

  private static Drawing inTidemark(double slantDeg) throws Exception {
    Face face = SHELF.with(CFF_FOLDER).shelf().open(tidemark());
    String text = "HAVA oxo";
    GlyphRow row = face.shape(text.toCharArray(), 0, text.length(), false);
    SizedFace type = new SizedFace(face, 60, slantDeg);
    PlacedRun run = new PlacedRun(type, row, text, 0, row.advance() * type.pxPerUnit(), 3);
    Mark mark = new Mark.Glyphs(run, new XY(40, 120), new Colour(0));
    return new Drawing("Test", "en", 500, 200, Colour.WHITE, List.of(mark));
  }

  private static FaceFile tidemark() throws Exception {
    return SHELF.with(CFF_FOLDER).shelf().files().stream()
        .filter(file -> file.family().equals("Tidemark"))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aFaceWithCffOutlinesIsEmbeddedWholeAndCanBeRead() throws Exception {
    for (double slant : new double[] {0, 11}) {
      Drawing drawing = inTidemark(slant);
      byte[] pdf = printed(drawing);
      assertAlike(drawing, byPdfBox(drawing, pdf));
      assertAlike(drawing, byPoppler(drawing, pdf));
      try (PDDocument document = Loader.loadPDF(pdf)) {
        assertEquals("HAVA oxo", new PDFTextStripper().getText(document).strip());
      }
    }
    Path file = temp.resolve("page.pdf");
    String fonts = Tool.run("pdffonts", file.toString());
    assertTrue(
        fonts.matches("(?s).*Tidemark\\S*\\s+CID Type 0C \\(OT\\)\\s+\\S+\\s+yes no  yes.*"),
        fonts);
    assertEquals("HAVA oxo", Tool.run("pdftotext", file.toString(), "-").strip());
  }
}
