package io.github.readfall.bench;

import ar.com.hjg.pngj.ImageInfo;
import ar.com.hjg.pngj.ImageLineByte;
import ar.com.hjg.pngj.PngWriter;
import io.github.readfall.art.ArtFiles;
import io.github.readfall.art.StripArt;
import io.github.readfall.base.files.Progress;
import io.github.readfall.draw.render.PngStream;
import io.github.readfall.export.raster.SliceFiles;
import io.github.readfall.export.raster.StripPicture;
import io.github.readfall.lettering.style.Delivery;
import io.github.readfall.lettering.style.SliceFormat;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.script.Script;
import io.github.readfall.strip.galley.Galley;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import javax.imageio.ImageIO;

/**
 * Cuts a strip of 1 600 × 300 000 px over 60 pages of art into PNG slices, as wide as the strip and
 * 900 px wide, and prints the time, compared with only packing the pixels of the same slices with
 * the same encoder, and the largest heap.
 *
 * <pre>java -Xmx384m -cp … io.github.readfall.bench.DrawBenchmark FOLDER</pre>
 */
public final class DrawBenchmark {

  private static final int PANELS = 500;
  private static final int PAGES = 60;
  private static final int PAGE_PX = 5000;
  private static final int WIDTH_PX = 1600;
  private static final int MIB = 1 << 20;
  private static final int DPI = 350;

  private DrawBenchmark() {}

  /** Draws the art if it is missing, then measures. */
  public static void main(String[] args) throws Exception {
    Path folder = Path.of(args[0]);
    Path art = Files.createDirectories(folder.resolve("art"));
    for (int page = 1; page <= PAGES; page++) {
      Path file = art.resolve("page" + page + ".png");
      if (!Files.exists(file)) {
        draw(file, page);
      }
    }
    Script script = Strips.crowdedScript(PANELS);
    SetEpisode set = Strips.set(script);
    Galley galley = Strips.galley(set, Strips.crowded(set, PANELS));
    StripPicture strip = new StripPicture("bench", galley, StripArt.of(ArtFiles.in(art), WIDTH_PX));
    for (int width : List.of(WIDTH_PX, 900)) {
      measure(strip, width, Files.createDirectories(folder.resolve("w" + width)), System.out);
    }
  }

  private static void measure(StripPicture strip, int width, Path folder, PrintStream out)
      throws Exception {
    int height = 2000 * width / 900;
    Delivery delivery = new Delivery(width, height, 1_000_000_000L, 1_000_000, SliceFormat.PNG, 95);
    SliceFiles slices = new SliceFiles(strip, "slice-", delivery);
    pools().forEach(MemoryPoolMXBean::resetPeakUsage);
    long start = System.nanoTime();
    slices.writeTo(name -> Files.newOutputStream(folder.resolve(name)), Progress.UNWATCHED);
    double made = (System.nanoTime() - start) / 1e9;
    long most = pools().mapToLong(pool -> pool.getPeakUsage().getUsed()).sum();
    double packed = 0;
    for (String name : slices.names()) {
      packed += packing(ImageIO.read(folder.resolve(name).toFile()));
    }
    out.printf(
        Locale.ROOT,
        "%d px wide: slices %.1f s, packing alone %.1f s, ratio %.2f, heap at the most %d MiB%n",
        width,
        made,
        packed,
        made / packed,
        most / MIB);
  }

  private static Stream<MemoryPoolMXBean> pools() {
    return ManagementFactory.getMemoryPoolMXBeans().stream()
        .filter(pool -> pool.getType() == MemoryType.HEAP);
  }

  private static double packing(BufferedImage image) throws IOException {
    int width = image.getWidth();
    byte[][] rows = new byte[image.getHeight()][3 * width];
    for (int y = 0; y < rows.length; y++) {
      for (int x = 0; x < width; x++) {
        int rgb = image.getRGB(x, y);
        rows[y][3 * x] = (byte) (rgb >> 16);
        rows[y][3 * x + 1] = (byte) (rgb >> 8);
        rows[y][3 * x + 2] = (byte) rgb;
      }
    }
    long start = System.nanoTime();
    try (PngStream png =
        new PngStream(
            OutputStream.nullOutputStream(), width, rows.length, PngStream.Samples.RGB, DPI)) {
      for (byte[] row : rows) {
        png.row(row);
      }
      png.end();
    }
    return (System.nanoTime() - start) / 1e9;
  }

  /** A page with washes of colour, hatching and a little grain. */
  private static void draw(Path file, int seed) {
    ImageInfo info = new ImageInfo(WIDTH_PX, PAGE_PX, 8, false);
    PngWriter writer = new PngWriter(file.toFile(), info);
    writer.setCompLevel(1);
    SplittableRandom random = new SplittableRandom(seed);
    byte[] row = new byte[3 * WIDTH_PX];
    for (int y = 0; y < PAGE_PX; y++) {
      for (int x = 0; x < WIDTH_PX; x++) {
        boolean ink = (x + y) % 37 < 3 && y / 900 % 2 == 0;
        int wash = 120 + (x / 11 + y / 17 + seed * 40) % 110 + random.nextInt(3);
        row[3 * x] = (byte) (ink ? 30 : wash);
        row[3 * x + 1] = (byte) (ink ? 30 : wash * 9 / 10);
        row[3 * x + 2] = (byte) (ink ? 40 : wash * 7 / 10);
      }
      writer.writeRow(new ImageLineByte(info, row), y);
    }
    writer.end();
  }
}
