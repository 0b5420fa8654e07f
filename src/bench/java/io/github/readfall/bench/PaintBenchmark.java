package io.github.readfall.bench;

import ar.com.hjg.pngj.ImageInfo;
import ar.com.hjg.pngj.ImageLineByte;
import ar.com.hjg.pngj.PngWriter;
import io.github.readfall.art.ArtFiles;
import io.github.readfall.art.ArtStore;
import io.github.readfall.art.StripArt;
import io.github.readfall.base.finding.Finding;
import io.github.readfall.draw.StripLayers;
import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.lettering.typeset.Labels;
import io.github.readfall.rules.RuleBook;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.window.canvas.PaintStats;
import io.github.readfall.window.canvas.StripPane;
import io.github.readfall.window.canvas.StripScene;
import io.github.readfall.window.canvas.Zoom;
import java.awt.Point;
import java.io.IOException;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import javax.swing.JFrame;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;
import javax.swing.Timer;

/**
 * Scrolls through a strip of 1 600 × 200 400 px with art and a thousand balloons, every layer on,
 * in a window of 1 100 × 900 px, and prints the cost of painting: percentiles of the time for one
 * call, in milliseconds, tiles with a stand-in, tiles with boxes only, the largest heap and the
 * heap after a full collection, and the processor time of the event thread for one frame. A display
 * is needed:
 *
 * <pre>java -Xmx512m -cp … io.github.readfall.bench.PaintBenchmark</pre>
 */
public final class PaintBenchmark {

  private static final int PANELS = 334;
  private static final int PAGE_PX = 16_700;
  private static final int PAGES = 12;
  private static final int WIDTH_PX = 1600;
  private static final int SECONDS = 6;
  private static final int FRAME_MS = 16;
  private static final int MIB = 1 << 20;
  private static final List<Integer> SPEEDS = List.of(400, 2_500, 15_000);

  private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

  private final PrintStream out;
  private final StripPane pane;
  private final List<PaintStats> paintings = new ArrayList<>();
  private final List<Long> frames = new ArrayList<>();
  private long lastCpu;
  private long mostHeap;

  private PaintBenchmark(PrintStream out, StripScene scene) {
    this.out = out;
    this.pane = new StripPane();
    pane.show(scene);
    pane.onPaint(
        painting -> {
          paintings.add(painting);
          long cpu = THREADS.getCurrentThreadCpuTime();
          frames.add(cpu - lastCpu);
          lastCpu = cpu;
        });
    JFrame frame = new JFrame("Readfall");
    frame.setUndecorated(true);
    frame.setContentPane(pane);
    frame.setSize(1100, 900);
    frame.setVisible(true);
  }

  /** Measures and prints. */
  public static void main(String[] arguments) throws Exception {
    System.exit(run(System.out));
  }

  private static int run(PrintStream out) throws Exception {
    Path folder = Files.createDirectories(Path.of("target/bench/art"));
    draw(folder);
    var set = Strips.set(Strips.crowdedScript(PANELS));
    Galley galley = Strips.galley(set, Strips.crowded(set, PANELS));
    Labels labels = new Labels(Cues.shelf(), HouseStyle.DEFAULT);
    long start = System.nanoTime();
    List<Finding> findings = RuleBook.check(galley);
    print(out, "checking %.0f ms", ms(start));
    start = System.nanoTime();
    StripLayers layers = StripLayers.of(galley, findings, labels);
    print(out, "layers with %d findings %.0f ms", findings.size(), ms(start));
    start = System.nanoTime();
    StripLayers.of(galley, findings, labels);
    print(out, "layers again %.0f ms", ms(start));
    StripArt art = StripArt.of(ArtFiles.in(folder), WIDTH_PX);
    ArtStore store = ArtStore.of(art);
    start = System.nanoTime();
    store.fill((read, of) -> true);
    print(out, "reading %d px of art %.1f s", art.heightPx(), ms(start) / 1000);
    start = System.nanoTime();
    StripScene scene = StripScene.of(galley, layers, Optional.of(store));
    print(out, "scene of %d balloons %.0f ms", galley.balloons().size(), ms(start));
    PaintBenchmark[] made = new PaintBenchmark[1];
    SwingUtilities.invokeAndWait(() -> made[0] = new PaintBenchmark(out, scene));
    Thread.sleep(2000);
    made[0].scrollAll();
    store.close();
    return 0;
  }

  private static double ms(long start) {
    return (System.nanoTime() - start) / 1e6;
  }

  private static void print(PrintStream out, String form, Object... figures) {
    out.println(String.format(Locale.ROOT, form, figures));
  }

  private void scrollAll() throws Exception {
    print(
        out,
        "%-14s %7s %6s %6s %6s %6s %6s %8s %8s %6s %6s %8s",
        "zoom",
        "px/s",
        "paints",
        "50 %",
        "95 %",
        "99 %",
        "most",
        "missing",
        "blank",
        "MiB",
        "live",
        "cpu 95 %");
    for (Zoom zoom :
        List.of(new Zoom.FitWidth(), new Zoom.ActualPixels(), new Zoom.PhoneSize(360))) {
      SwingUtilities.invokeAndWait(() -> pane.setZoom(zoom));
      for (int speed : SPEEDS) {
        SwingUtilities.invokeAndWait(() -> pane.getViewport().setViewPosition(new Point(0, 0)));
        Thread.sleep(700);
        scroll(zoom, speed);
      }
    }
  }

  /** Scrolls down at a number of user-interface pixels a second, and starts again at the end. */
  private void scroll(Zoom zoom, int speed) throws Exception {
    CountDownLatch done = new CountDownLatch(1);
    mostHeap = 0;
    SwingUtilities.invokeAndWait(
        () -> {
          paintings.clear();
          frames.clear();
          lastCpu = THREADS.getCurrentThreadCpuTime();
          long start = System.nanoTime();
          Timer timer = new Timer(FRAME_MS, null);
          timer.addActionListener(
              event -> {
                double seconds = (System.nanoTime() - start) / 1e9;
                step((long) (seconds * speed));
                if (seconds > SECONDS) {
                  timer.stop();
                  done.countDown();
                }
              });
          timer.start();
        });
    done.await(1, TimeUnit.MINUTES);
    SwingUtilities.invokeAndWait(() -> report(zoom, speed));
  }

  private void step(long y) {
    JViewport viewport = pane.getViewport();
    int most = Math.max(1, pane.view().getHeight() - viewport.getHeight());
    viewport.setViewPosition(new Point(0, (int) (y % most)));
    long used = ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed();
    mostHeap = Math.max(mostHeap, used);
  }

  private void report(Zoom zoom, int speed) {
    double[] ms = paintings.stream().mapToDouble(p -> p.nanos() / 1e6).sorted().toArray();
    print(
        out,
        "%-14s %7d %6d %6.1f %6.1f %6.1f %6.1f %8.2f %8.2f %6d %6d %8.1f",
        zoom.getClass().getSimpleName(),
        speed,
        ms.length,
        ms[ms.length / 2],
        ms[ms.length * 95 / 100],
        ms[ms.length * 99 / 100],
        ms[ms.length - 1],
        paintings.stream().mapToInt(PaintStats::missingTiles).average().orElse(0),
        paintings.stream().mapToInt(PaintStats::blankTiles).average().orElse(0),
        mostHeap / MIB,
        live() / MIB,
        frames.stream()
            .mapToDouble(nanos -> nanos / 1e6)
            .sorted()
            .toArray()[frames.size() * 95 / 100]);
  }

  private static long live() {
    System.gc();
    return ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed();
  }

  /** Pages with washes of colour, hatching and a little grain. */
  private static void draw(Path folder) throws IOException {
    for (int page = 1; page <= PAGES; page++) {
      Path file = folder.resolve("page" + page + ".png");
      if (!Files.exists(file)) {
        draw(file, page);
      }
    }
  }

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
