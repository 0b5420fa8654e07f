package io.github.readfall.bench;

import ar.com.hjg.pngj.ImageInfo;
import ar.com.hjg.pngj.ImageLineByte;
import ar.com.hjg.pngj.PngWriter;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Runs the program's command panels on one very tall strip in a small heap. It writes the strip as
 * it draws it, so it needs little memory itself.
 */
public final class PanelsProcess {

  private static final int WIDTH = 1600;
  private static final int PANEL = 1200;
  private static final int GUTTER = 240;
  private static final int MARGIN = 60;

  private PanelsProcess() {}

  /**
   * Draws a strip, finds its panels, and prints how long that took.
   *
   * @param args the launcher's jar, a folder for the strip, its height in pixels, and the heap as
   *     {@code -Xmx} takes it, e.g. {@code 256m}
   */
  public static void main(String[] args) throws IOException, InterruptedException {
    Path folder = Files.createDirectories(Path.of(args[1]));
    int height = Integer.parseInt(args[2]);
    Path art = folder.resolve("strip.png");
    int panels = draw(art, height);
    StringBuilder script = new StringBuilder("Title: Tall\n");
    for (int i = 1; i <= panels; i++) {
      script.append("\nPANEL ").append(i).append("\n\nILSE: Number ").append(i).append(".\n");
    }
    Files.writeString(folder.resolve("script.txt"), script.toString());
    List<String> command =
        new ArrayList<>(List.of("java", "-Xmx" + args[3], "-jar", args[0], "panels"));
    command.add(folder.toString());
    command.add(art.toString());
    long start = System.nanoTime();
    Process process =
        new ProcessBuilder(command)
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("said.txt").toFile())
            .start();
    int status = process.waitFor();
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    out.printf(
        Locale.ROOT,
        "%d x %d px, %d panels, %.0f MB: status %d after %.1f s with %s of heap%n",
        WIDTH,
        height,
        panels,
        Files.size(art) / 1e6,
        status,
        (System.nanoTime() - start) / 1e9,
        args[3]);
  }

  private static int draw(Path file, int height) {
    ImageInfo info = new ImageInfo(WIDTH, height, 8, false);
    PngWriter writer = new PngWriter(file.toFile(), info, true);
    writer.setCompLevel(2);
    ImageLineByte line = new ImageLineByte(info);
    int panels = 0;
    for (int y = 0; y < height; y++) {
      int inTurn = y % (PANEL + GUTTER);
      boolean inside = inTurn >= GUTTER && y - inTurn + GUTTER + PANEL <= height;
      panels += inside && inTurn == GUTTER ? 1 : 0;
      row(line.getScanlineByte(), y, inside);
      writer.writeRow(line);
    }
    writer.end();
    return panels;
  }

  /** Draws a row of a panel, a gradient with a pattern, or of the white around it. */
  private static void row(byte[] rgb, int y, boolean inside) {
    for (int x = 0; x < WIDTH; x++) {
      boolean paper = !inside || x < MARGIN || x >= WIDTH - MARGIN;
      int pattern = ((x * x + 3 * y * y) >> 9) & 63;
      rgb[3 * x] = (byte) (paper ? 255 : 40 + pattern);
      rgb[3 * x + 1] = (byte) (paper ? 255 : 90 + (x >> 4));
      rgb[3 * x + 2] = (byte) (paper ? 255 : 140 + pattern / 2);
    }
  }
}
