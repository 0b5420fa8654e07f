package io.github.readfall.export.phone;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.art.ArtFiles;
import io.github.readfall.art.StripArt;
import io.github.readfall.base.files.Cancelled;
import io.github.readfall.base.files.OutputFolder;
import io.github.readfall.base.files.Progress;
import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.base.finding.Where;
import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.export.transcript.Original;
import io.github.readfall.export.transcript.Transcriber;
import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.lettering.typeset.Sample;
import io.github.readfall.lettering.typeset.Typesetter;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.strip.Cuts;
import io.github.readfall.strip.galley.Galley;
import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PhoneFileTest {

  private static final int WIDTH = 1600;
  private static final int HEIGHT = 9001;
  private static final Pattern PICTURE =
      Pattern.compile(
          "\\.a(\\d+)\\{background:url\\(data:image/jpeg;base64,([^)]+)\\) 0 0/100% ([0-9.]+)%");

  private final Path temp;

  PhoneFileTest(@TempDir Path temp) {
    this.temp = temp;
  }

  private static Galley galley(double heightPx) {
    return new Galley(
        new Typesetter(Sample.shelf(), HouseStyle.DEFAULT).set(Sample.script("en", "A: One.")),
        WIDTH,
        heightPx,
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        Cuts.NONE);
  }

  private static PhoneStrip strip(double heightPx, List<Finding> findings) {
    Galley galley = galley(heightPx);
    return new PhoneStrip(galley, findings, Transcriber.of(galley, new Original("en", Set.of())));
  }

  /** A page that is red at its top and blue at its end. */
  private StripArt art(int width, int height) throws Exception {
    BufferedImage page = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = page.createGraphics();
    g.setPaint(new GradientPaint(0, 0, Color.RED, 0, height, Color.BLUE));
    g.fillRect(0, 0, width, height);
    g.dispose();
    Files.createDirectories(temp.resolve("art"));
    ImageIO.write(page, "png", temp.resolve("art/01.png").toFile());
    Files.writeString(temp.resolve("script.txt"), "PANEL 1\n\nA: One.");
    return StripArt.of(ArtFiles.of(EpisodeFiles.at(temp).get(0).script()), WIDTH);
  }

  private String written(PhoneFile file) throws Exception {
    Path folder = temp.resolve("out");
    return Files.readString(
        new OutputFolder(folder, true).write(List.of(file), Progress.UNWATCHED).get(0));
  }

  @Test
  void theArtLiesInItsPlaceAtTwiceThePhonesWidth() throws Exception {
    StripArt art = art(800, 4400);
    List<PhoneStrip> strips = List.of(strip(HEIGHT, List.of()));
    List<StripPiece> pieces = PhoneStripBase.of(strips, art).pieces();
    List<MatchResult> pictures =
        PICTURE.matcher(written(new PhoneFile("e", strips, art))).results().toList();

    assertEquals(2, pieces.size());
    assertEquals(2, pictures.size());
    for (int i = 0; i < 2; i++) {
      BufferedImage picture = decoded(pictures.get(i).group(2));
      StripPiece piece = pieces.get(i);
      double shownPx = Double.parseDouble(pictures.get(i).group(3)) / 100 * piece.drawnPx();
      assertEquals(800, picture.getWidth());
      assertEquals(2 * picture.getHeight(), shownPx, 0.01 * piece.drawnPx() / 100);
      Color first = new Color(picture.getRGB(400, 4));
      double share = (piece.topPx() + 8.0) / art.heightPx();
      assertEquals(255 * share, first.getBlue(), 3); // JPEG is not exact
      assertEquals(255 * (1 - share), first.getRed(), 3);
    }
  }

  private static BufferedImage decoded(String base64) throws IOException {
    return ImageIO.read(new ByteArrayInputStream(Base64.getDecoder().decode(base64)));
  }

  @Test
  void theSameStripGivesTheSameBytes() throws Exception {
    StripArt art = art(700, 900);
    List<PhoneStrip> strips = List.of(strip(3000, List.of(found(0, 0))));
    Path folder = temp.resolve("out");
    PhoneFile file = new PhoneFile("e", strips, art);
    byte[] once =
        Files.readAllBytes(
            new OutputFolder(folder, true).write(List.of(file), Progress.UNWATCHED).get(0));
    byte[] again =
        Files.readAllBytes(
            new OutputFolder(folder, true).write(List.of(file), Progress.UNWATCHED).get(0));
    assertArrayEquals(once, again);
  }

  @Test
  void whoeverAskedForItCanEndItWhileTheArtIsRead() throws Exception {
    StripArt art = art(800, 4400);
    PhoneFile file = new PhoneFile("e", List.of(strip(HEIGHT, List.of())), art);
    Path folder = temp.resolve("out");
    assertThrows(
        Cancelled.class,
        () ->
            new OutputFolder(folder, false)
                .write(
                    List.of(file),
                    (done, of) -> {
                      throw new Cancelled();
                    }));
    assertTrue(Files.notExists(folder));
  }

  @Test
  void aStripWithoutAPanelIsAPageToo() throws Exception {
    Document page =
        Jsoup.parse(
            written(new PhoneFile("e", List.of(strip(0, List.of())), StripArt.none(WIDTH))));
    assertTrue(page.select(".piece").isEmpty());
    assertEquals(1, page.select(".transcript .said").size());
  }

  private static Finding found(double x, double y) {
    return Finding.of("a/b", Severity.WARNING, Where.everywhere(), "<b> & \"so\".", "Do <i>.")
        .at(new Box(x, y, 100, 100));
  }

  @Test
  void whatIsFoundIsTextAndNeverMarkup() throws Exception {
    Finding nowhere =
        Finding.of("c/d", Severity.NOTE, Where.everywhere(), "</style><script>x</script>", "");
    PhoneStrip strip = strip(3000, List.of(found(0, 0), nowhere));
    Document page = Jsoup.parse(written(new PhoneFile("e", List.of(strip), StripArt.none(WIDTH))));

    assertEquals("Warning: <b> & \"so\".", page.select(".told").get(0).child(0).text());
    assertEquals("Do <i>.", page.select("div.told p").get(1).text());
    assertEquals("Note: </style><script>x</script>", page.select(".unplaced li p").get(0).text());
    assertTrue(page.select("script").isEmpty());
  }

  @Test
  void everythingInThePageThatIsPointedAtIsThereOnce() throws Exception {
    Document page = Jsoup.parse(Files.readString(DrawnEpisode.sample().file("-phone.html")));
    List<String> ids = page.select("[id]").eachAttr("id");
    assertEquals(Set.copyOf(ids).size(), ids.size());
    for (Element pointing : page.select("[href^=#]")) {
      assertTrue(ids.contains(pointing.attr("href").substring(1)), pointing.outerHtml());
    }
    for (String id : page.select("[aria-labelledby]").eachAttr("aria-labelledby")) {
      assertTrue(ids.contains(id), id);
    }
    assertEquals(1, page.select("h1").size());
  }

  @Test
  void eachPartIsInItsLanguage() throws Exception {
    Document page = Jsoup.parse(Files.readString(DrawnEpisode.sample().file("-phone.html")));
    for (String language : DrawnEpisode.sample().galleys().keySet()) {
      Element part = page.select("#in-" + language).get(0);
      assertEquals(language, part.select("h2").attr("lang"));
      assertEquals(Set.of(language), Set.copyOf(part.select(".transcript .said").eachAttr("lang")));
      String direction = language.equals("ar") ? "rtl" : "ltr";
      assertEquals(Set.of(direction), Set.copyOf(part.select(".transcript .said").eachAttr("dir")));
      assertEquals(1, part.select("[role=img][aria-label]").size());
    }
  }

  @Test
  void piecesFollowOneAnotherAndSpareBalloons() {
    SplittableRandom random = new SplittableRandom(7);
    for (int run = 0; run < 200; run++) {
      int height = random.nextInt(60_000);
      List<Box> balloons = new ArrayList<>();
      for (int y = random.nextInt(900); y < height; y += 300 + random.nextInt(900)) {
        balloons.add(new Box(0, y, 400, 280));
      }
      List<StripPiece> pieces = StripPiece.of(height, balloons);
      int end = 0;
      for (StripPiece piece : pieces) {
        assertEquals(end, piece.topPx());
        assertEquals(0, piece.topPx() % StripPiece.STEP_PX);
        end += piece.heightPx();
        int cut = end;
        assertTrue(
            cut == height
                || balloons.stream()
                    .noneMatch(b -> b.y() < cut + piece.overlapPx() && b.bottom() > cut));
      }
      assertEquals(height, end);
    }
  }

  @Test
  void aPieceEndsInABalloonWhereThereIsNoOtherWay() {
    List<StripPiece> pieces = StripPiece.of(12_000, List.of(new Box(0, 0, 100, 12_000)));
    assertEquals(List.of(0, 4000, 8000), pieces.stream().map(StripPiece::topPx).toList());
  }

  @Test
  void marksOfManyFindingsInOnePlaceLieBesideEachOther() {
    Galley galley = galley(3000);
    List<Finding> findings = new ArrayList<>();
    for (int i = 0; i < 60; i++) {
      findings.add(found(i % 3, 1 + i % 2));
    }
    List<Spot> spots = Spot.of(galley, findings);
    double size = WIDTH * 28 / 320.0; // CSS px at the narrowest page
    for (int i = 0; i < spots.size(); i++) {
      XY mark = spots.get(i).mark();
      assertTrue(mark.x() >= size / 2 && mark.x() <= WIDTH - size / 2);
      for (Spot other : spots.subList(0, i)) {
        double across = Math.abs(mark.x() - other.mark().x());
        double along = Math.abs(mark.y() - other.mark().y());
        assertTrue(Math.max(across, along) >= size);
      }
    }
    assertNotEquals(spots.get(0).mark(), spots.get(1).mark());
  }
}
