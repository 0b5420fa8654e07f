package io.github.readfall.export.raster;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import io.github.readfall.base.geom.Box;
import io.github.readfall.lettering.style.Delivery;
import io.github.readfall.lettering.style.SliceFormat;
import io.github.readfall.lettering.typeset.SetLine;
import io.github.readfall.script.CueKind;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A program that knows nothing of us reads the dialogue of the English sample as a phone of 360 dp
 * and 3 px to the dp shows it, 1 080 px wide: Tesseract, each balloon as one block of text. Only
 * upright dialogue counts: no effects, no captions, no letters that lean. The face is all capitals,
 * so case does not count; nor does the form of quotation marks, dashes and ellipses.
 */
class ReadByMachineTest {

  private static final int SCREEN_PX = 360 * 3;
  private static final double LEAST_SHARE = 0.97;
  private static final int PAD_PX = 24;

  private final Path folder;

  ReadByMachineTest(@TempDir Path folder) {
    this.folder = folder;
  }

  @Test
  void nearlyEveryLetterOfTheDialogueIsRead() throws Exception {
    assumeTrue(
        WholeStripTest.has("tesseract"),
        "tesseract is not installed (Debian: tesseract-ocr, tesseract-ocr-eng)");
    Galley galley = Drawn.galley(Drawn.SAMPLE);
    BufferedImage strip = onPhone(galley);
    List<PlacedBalloon> upright =
        galley.balloons().stream().filter(ReadByMachineTest::isUprightDialogue).toList();
    assertTrue(upright.size() >= 20, upright.size() + " balloons");
    List<String> read = read(crops(upright, strip, SCREEN_PX / galley.widthPx()));
    assertEquals(upright.size(), read.size());
    int letters = 0;
    int wrong = 0;
    StringBuilder misread = new StringBuilder();
    for (int i = 0; i < read.size(); i++) {
      String said = plain(text(upright.get(i)));
      String seen = plain(read.get(i));
      int by = distance(said, seen);
      letters += said.length();
      wrong += by;
      misread.append(by == 0 ? "" : "\n" + by + ": " + said + " / " + seen);
    }
    double share = 1 - (double) wrong / letters;
    assertTrue(share >= LEAST_SHARE, share + " of " + letters + " characters were read:" + misread);
  }

  private static boolean isUprightDialogue(PlacedBalloon balloon) {
    return balloon.cue().kind() == CueKind.DIALOGUE
        && balloon.set().types().stream()
            .allMatch(type -> type.slantDeg() == 0 && !type.face().file().italic());
  }

  private static BufferedImage onPhone(Galley galley) throws Exception {
    Delivery phone = new Delivery(SCREEN_PX, 4000, 100_000_000, 1_000_000, SliceFormat.PNG, 95);
    SliceFiles slices = new SliceFiles(Drawn.strip(galley), "phone-", phone);
    Map<String, byte[]> files = Drawn.files(slices);
    int heightPx = (int) Math.ceil(galley.heightPx() * SCREEN_PX / galley.widthPx()) + 1;
    BufferedImage all = new BufferedImage(SCREEN_PX, heightPx, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = all.createGraphics();
    int top = 0;
    for (byte[] file : files.values()) {
      BufferedImage slice = Drawn.read(file);
      g.drawImage(slice, 0, top, null);
      top += slice.getHeight();
    }
    return all;
  }

  /** The lines of each balloon without its outline, on white. */
  private List<Path> crops(List<PlacedBalloon> balloons, BufferedImage strip, double scale)
      throws Exception {
    List<Path> files = new ArrayList<>();
    for (PlacedBalloon balloon : balloons) {
      Box box = lines(balloon);
      int x = (int) Math.floor(box.x() * scale);
      int y = (int) Math.floor(box.y() * scale);
      int width = (int) Math.ceil(box.width() * scale);
      int height = (int) Math.ceil(box.height() * scale);
      BufferedImage crop =
          new BufferedImage(width + 2 * PAD_PX, height + 2 * PAD_PX, BufferedImage.TYPE_INT_RGB);
      Graphics2D g = crop.createGraphics();
      g.setColor(Color.WHITE);
      g.fillRect(0, 0, crop.getWidth(), crop.getHeight());
      g.translate(PAD_PX - x, PAD_PX - y);
      for (SetLine line : balloon.set().lines()) {
        Box own = box(balloon, line);
        g.setClip(
            new Rectangle2D.Double(
                own.x() * scale, own.y() * scale, own.width() * scale, own.height() * scale));
        g.drawImage(strip, 0, 0, null);
      }
      g.dispose();
      Path file = folder.resolve(balloon.id() + ".png");
      ImageIO.write(crop, "png", file.toFile());
      files.add(file);
    }
    return files;
  }

  private static Box lines(PlacedBalloon balloon) {
    return balloon.set().lines().stream()
        .map(line -> box(balloon, line))
        .reduce(Box::union)
        .orElseThrow();
  }

  /** A line, with less round it than it keeps from the outline. */
  private static Box box(PlacedBalloon balloon, SetLine line) {
    var box = line.line().box();
    double x = balloon.at().x() + line.xPx();
    double y = balloon.at().y() + line.baselinePx();
    return Box.ofEdges(x + box.left(), y + box.top(), x + box.right(), y + box.bottom())
        .grownBy(balloon.set().marginPx() / 3);
  }

  /** All in one run of the program, which parts what it read by form feeds. */
  private List<String> read(List<Path> files) throws Exception {
    Path list =
        Files.writeString(
            folder.resolve("list.txt"),
            String.join("\n", files.stream().map(Path::toString).toList()) + "\n");
    ProcessBuilder tesseract =
        new ProcessBuilder(
                "tesseract",
                list.toString(),
                folder.resolve("read").toString(),
                "--psm",
                "6",
                "-l",
                "eng")
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("log.txt").toFile());
    tesseract
        .environment()
        .put("OMP_THREAD_LIMIT", "1"); // several threads only wait for each other
    Process process = tesseract.start();
    assertTrue(process.waitFor(120, TimeUnit.SECONDS), "too slow");
    assertEquals(0, process.exitValue(), Files.readString(folder.resolve("log.txt")));
    String text = Files.readString(folder.resolve("read.txt"));
    return List.of(text.split("\f")).subList(0, files.size());
  }

  private static String text(PlacedBalloon balloon) {
    return String.join(
        " ", balloon.set().lines().stream().map(line -> line.line().text()).toList());
  }

  private static String plain(String text) {
    return text.toLowerCase(Locale.ROOT)
        .replaceAll("[\u2018\u2019\u02bc`]", "'")
        .replaceAll("[\u201c\u201d]", "\"")
        .replace("\u2026", "...")
        .replaceAll("\\s*[\u2013\u2014-]+\\s*", "-")
        .replaceAll("\\s+", " ")
        .strip();
  }

  /** After Levenshtein 1966: the fewest letters to put in, take out or change. */
  private static int distance(String a, String b) {
    int[] above = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      above[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int[] row = new int[b.length() + 1];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int change = above[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        row[j] = Math.min(change, Math.min(above[j], row[j - 1]) + 1);
      }
      above = row;
    }
    return above[b.length()];
  }
}
