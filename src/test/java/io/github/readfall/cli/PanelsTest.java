package io.github.readfall.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The command panels, from art on disk to a strip that passes the check. */
class PanelsTest {

  private static final JsonMapper JSON = JsonMapper.builder().build();
  private static final String SCRIPT =
      """
      Title: The Long Ebb
      Cast: Ilse, Wouter

      PANEL 1  long shot

      CAPTION: Nobody had turned the wheel since spring.

      PANEL 2

      ILSE: It is counting again.

      PANEL 3  tall

      WOUTER: Then let it count.
      """;

  private final Path folder;

  PanelsTest(@TempDir Path folder) throws IOException {
    this.folder = folder;
    Files.writeString(folder.resolve("script.txt"), SCRIPT);
    Files.createDirectories(folder.resolve("art"));
  }

  /** Pages of one strip 1600 px wide, cut at some heights. */
  private void art(int[][] boxes, int height, int... cuts) throws IOException {
    BufferedImage strip = new BufferedImage(1600, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = strip.createGraphics();
    g.setColor(new Color(250, 246, 240));
    g.fillRect(0, 0, 1600, height);
    for (int[] box : boxes) {
      g.setColor(new Color(70 + box[1] % 90, 120, 150));
      g.fillRect(box[0], box[1], box[2], box[3]);
      g.setColor(new Color(220, 160, 60));
      g.fillOval(box[0] + box[2] / 3, box[1] + box[3] / 2, box[2] / 4, box[3] / 3);
    }
    g.dispose();
    int top = 0;
    for (int page = 0; page <= cuts.length; page++) {
      int bottom = page < cuts.length ? cuts[page] : height;
      ImageIO.write(
          strip.getSubimage(0, top, 1600, bottom - top),
          "png",
          folder.resolve("art").resolve((page + 1) + ".png").toFile());
      top = bottom;
    }
  }

  private final int[][] three = {
    {80, 100, 1440, 900}, {80, 1150, 1440, 800}, {200, 2100, 1100, 1500}
  };

  private final List<String> threeBoxes =
      Arrays.stream(three).map(Arrays::toString).map(box -> box.replace(" ", "")).toList();

  private JsonNode layout() throws IOException {
    return JSON.readTree(Files.readString(folder.resolve("layout.json")));
  }

  private static List<String> boxes(JsonNode strip) {
    return strip.path("panels").valueStream().map(panel -> panel.path("box").toString()).toList();
  }

  private static List<String> rules(JsonNode report) {
    return report.path("findings").valueStream().map(f -> f.path("rule").asString()).toList();
  }

  private boolean isWritten() {
    return Files.exists(folder.resolve("layout.json"));
  }

  @Test
  void panelsAreFoundAcrossPagesAndTheStripCanBePlacedAndChecked() throws IOException {
    art(three, 3700, 1500, 2600);
    Ran found = Ran.of("panels", folder, "--fail-on", "note");
    assertEquals(0, found.status(), found.out() + found.err());
    assertTrue(found.out().contains("wrote " + folder.resolve("layout.json")), found.out());
    assertTrue(found.out().contains("clear gutters all round"), found.out());
    assertEquals(threeBoxes, boxes(layout()));
    assertEquals(3700, layout().at("/strip/heightPx").asInt());
    assertEquals(0, Ran.of("place", folder).status());
    assertEquals(threeBoxes, boxes(layout()));
    Ran checked = Ran.of("check", folder);
    assertEquals(0, checked.status(), checked.out());
    String placed = Files.readString(folder.resolve("layout.json"));
    assertEquals(0, Ran.of("panels", folder).status());
    assertEquals(placed, Files.readString(folder.resolve("layout.json")), "nothing has moved");
  }

  @Test
  void whatWasPlannedMovesOntoTheArt() throws IOException {
    assertEquals(0, Ran.of("place", folder).status());
    JsonNode planned = layout();
    art(three, 3700);
    assertEquals(0, Ran.of("panels", folder).status());
    JsonNode now = layout();
    assertEquals(3, now.path("balloons").size());
    double wasBelow =
        planned.at("/balloons/2/box/1").asDouble() - planned.at("/panels/2/box/1").asDouble();
    double isBelow = now.at("/balloons/2/box/1").asDouble() - now.at("/panels/2/box/1").asDouble();
    assertTrue(wasBelow > 0 && isBelow > 0 && isBelow < 1500, wasBelow + " " + isBelow);
    assertTrue(Files.exists(folder.resolve("layout.previous.json")));
    assertEquals(0, Ran.of("place", folder).status());
  }

  @Test
  void theReportSaysHowCertainEachIsAndWhatDoesNotGoTogether() throws IOException {
    art(new int[][] {three[0], {80, 1150, 1440, 800}}, 2100);
    JsonNode report = JSON.readTree(Ran.of("panels", folder, "--json").out());
    assertEquals("panels", report.path("command").asString());
    assertEquals(2, report.at("/strip/panels").size());
    JsonNode first = report.at("/strip/panels/0");
    assertTrue(first.path("certainty").asDouble() > 0.8, first.toString());
    assertFalse(first.path("because").asString().isEmpty());
    assertEquals(List.of("art/panel-missing"), rules(report));
    assertEquals(1, Ran.of("panels", folder, "--fail-on", "warning").status());
    art(new int[][] {three[0], three[1], three[2], {80, 3700, 1440, 700}}, 4500);
    assertTrue(
        rules(JSON.readTree(Ran.of("panels", folder, "--json").out())).contains("art/panel-extra"));
  }

  @Test
  void artOfAnotherWidthIsScaledAndSaid() throws IOException {
    art(three, 3700);
    BufferedImage large = ImageIO.read(folder.resolve("art/1.png").toFile());
    BufferedImage small = new BufferedImage(800, 1850, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = small.createGraphics();
    g.drawImage(large, 0, 0, 800, 1850, null);
    g.dispose();
    Path elsewhere = folder.resolve("half.png");
    ImageIO.write(small, "png", elsewhere.toFile());
    JsonNode report = JSON.readTree(Ran.of("panels", folder, elsewhere, "--json").out());
    assertEquals(List.of("art/scaled"), rules(report));
    JsonNode box = report.at("/strip/panels/1/box");
    for (int i = 0; i < 4; i++) {
      assertEquals(three[1][i], box.path(i).asDouble(), 6);
    }
  }

  @Test
  void aPageThatSeemsToBeMissingIsSaid() throws IOException {
    art(three, 3700, 1100, 2000);
    Files.move(folder.resolve("art/3.png"), folder.resolve("art/4.png"));
    JsonNode report = JSON.readTree(Ran.of("panels", folder, "--json").out());
    assertEquals(List.of("art/page-missing"), rules(report));
  }

  @Test
  void aPictureOfThePanelsIsDrawn() throws IOException {
    art(three, 3700);
    Path png = folder.resolve("found.png");
    assertEquals(0, Ran.of("panels", folder, "--picture", png).status());
    BufferedImage drawn = ImageIO.read(png.toFile());
    assertEquals(1600, drawn.getWidth());
    assertEquals(3700, drawn.getHeight());
    assertTrue((drawn.getRGB(800, 350) & 0xffffff) != 0xffffff, "the art is not to be seen");
    Path svg = folder.resolve("found.svg");
    assertEquals(0, Ran.of("panels", folder, "--picture", svg).status());
    assertTrue(Files.size(svg) < 400_000, "" + Files.size(svg));
  }

  @Test
  void aScriptWithoutPanelsHasNothingWritten() throws IOException {
    Files.writeString(folder.resolve("script.txt"), "Title: Nothing yet\n");
    art(three, 3700);
    Ran ran = Ran.of("panels", folder);
    assertEquals(0, ran.status(), ran.err());
    assertTrue(ran.out().contains("art/panel-extra"), ran.out());
    assertFalse(isWritten());
  }

  private void isRefused(String word) {
    Ran ran = Ran.of("panels", folder);
    assertTrue(ran.isRefusedInOneSentence(), ran.toString());
    assertTrue(ran.err().contains(word), ran.err());
    assertFalse(isWritten());
  }

  @Test
  void artThatCannotBeReadIsRefusedInOneSentenceAndNothingIsWritten() throws IOException {
    isRefused("There is no art");
    art(three, 3700);
    Path page = folder.resolve("art/1.png");
    byte[] whole = Files.readAllBytes(page);
    Files.write(page, Arrays.copyOf(whole, whole.length / 2));
    isRefused("1.png");
    Files.write(page, declared(100_000, 100_000));
    isRefused("100000 x 100000");
    Files.writeString(page, "no picture");
    isRefused("1.png");
    Files.delete(page);
    Files.write(folder.resolve("art/1.webp"), new byte[] {1});
    isRefused("1.webp");
    Ran named = Ran.of("panels", folder, folder.resolve("nowhere.png"));
    assertTrue(named.isRefusedInOneSentence(), named.toString());
  }

  /** The head of a PNG that says how large it is, and nothing else (PNG, W3C 2003, 11.2.2). */
  private static byte[] declared(int width, int height) throws IOException {
    ByteArrayOutputStream chunk = new ByteArrayOutputStream();
    DataOutputStream data = new DataOutputStream(chunk);
    data.write("IHDR".getBytes(StandardCharsets.US_ASCII));
    data.writeInt(width);
    data.writeInt(height);
    data.write(new byte[] {8, 2, 0, 0, 0});
    CRC32 crc = new CRC32();
    crc.update(chunk.toByteArray());
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    DataOutputStream out = new DataOutputStream(file);
    out.write(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'});
    out.writeInt(13);
    out.write(chunk.toByteArray());
    out.writeInt((int) crc.getValue());
    return file.toByteArray();
  }

  @Test
  void aLayoutWithAFaultIsNotOverwritten() throws IOException {
    art(three, 3700);
    Path layout = folder.resolve("layout.json");
    String faulty =
        "{\"readfall-layout\": 1, \"strip\": {\"widthPx\": 1600, \"heightPx\": 900},"
            + " \"panels\": [{\"panel\": 1, \"box\": [0, \"x\", 5, 5]}]}";
    Files.writeString(layout, faulty);
    Ran ran = Ran.of("panels", folder);
    assertTrue(ran.isRefusedInOneSentence(), ran.toString());
    assertEquals(faulty, Files.readString(layout));
  }

  @Test
  void balloonsAreRatherPlacedWhereTheArtIsCalm() throws IOException {
    Files.writeString(
        folder.resolve("script.txt"), "PANEL 1\n\nCAPTION: Nobody had turned it since spring.\n");
    BufferedImage strip = new BufferedImage(1600, 1800, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = strip.createGraphics();
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, 1600, 1800);
    g.setColor(new Color(120, 150, 170));
    g.fillRect(80, 100, 1440, 1600);
    g.setColor(Color.BLACK);
    for (int y = 200; y < 420; y += 6) {
      g.fillRect(80, y, 1440, 3);
    }
    g.dispose();
    ImageIO.write(strip, "png", folder.resolve("art/1.png").toFile());
    assertEquals(0, Ran.of("panels", folder).status());
    assertEquals(0, Ran.of("place", folder).status());
    double calm = layout().at("/balloons/0/box/1").asDouble();
    Files.delete(folder.resolve("art/1.png"));
    assertEquals(0, Ran.of("place", folder, "--afresh").status());
    double anyhow = layout().at("/balloons/0/box/1").asDouble();
    assertTrue(calm > 400 && anyhow < 400, calm + " with the art, " + anyhow + " without");
  }
}
