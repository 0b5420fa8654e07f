package io.github.readfall.window;

import io.github.readfall.base.geom.Box;
import io.github.readfall.strip.edits.StripItem;
import io.github.readfall.strip.galley.PlacedBalloon;
import io.github.readfall.type.font.FontShelf;
import io.github.readfall.window.canvas.PaintStats;
import io.github.readfall.window.canvas.StripPane;
import io.github.readfall.window.canvas.Zoom;
import io.github.readfall.window.model.EpisodeSnapshot;
import io.github.readfall.window.model.TranslationFiles;
import java.awt.Rectangle;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.FutureTask;
import javax.swing.JComponent;
import javax.swing.JScrollBar;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;

/**
 * Opens the window on a generated episode and prints, in milliseconds: from the start of the
 * process to a window that accepts typing; from a key to its letter being set in its balloon and to
 * the strip being placed and checked again; painting calls while typing and while scrolling; and
 * the heap in use after a full collection. A display is needed:
 *
 * <pre>java -Xmx512m -cp … io.github.readfall.window.WindowBenchmark FOLDER CUES [WORDS]</pre>
 *
 * <p>FOLDER receives the script, unless it has one; art in its folder {@code art} is shown. CUES is
 * the number of cues of a new script, WORDS the number of letters that are typed.
 */
public final class WindowBenchmark {

  private static final List<String> WORDS =
      List.of(
          "the", "mill", "had", "not", "turned", "since", "spring", "and", "nobody", "knew", "why",
          "it", "should", "begin", "to", "count", "again", "before", "dawn", "when", "water");

  private static final int LETTERS = 300;
  private static final int EVERY_MS = 83; // twelve letters a second
  private static final int SCROLL_STEPS = 300;
  private static final int PULLS = 200;
  private static final int PULL_MS = 40;
  private static final int FRAME_MS = 16;
  private static final int CUES_A_PANEL = 3;
  private static final int MIB = 1 << 20;

  private final PrintStream out;
  private final MainWindow window;
  private final Map<String, Long> pressed = new ConcurrentHashMap<>();
  private final List<Double> refits = Collections.synchronizedList(new ArrayList<>());
  private final List<Double> settles = Collections.synchronizedList(new ArrayList<>());
  private final List<Double> paintings = Collections.synchronizedList(new ArrayList<>());

  private final List<Double> pulls = Collections.synchronizedList(new ArrayList<>());
  private final Map<Double, Long> pulled = new ConcurrentHashMap<>();
  private String pulledId = "";

  private WindowBenchmark(PrintStream out, MainWindow window) {
    this.out = out;
    this.window = window;
    window.model().onSnapshot((shown, scene) -> shown(shown));
    window.work().strip().onPaint(this::painted);
  }

  /** Measures and prints. */
  @SuppressWarnings("SystemOut")
  public static void main(String[] args) throws Exception {
    Path folder = Files.createDirectories(Path.of(args[0]));
    Path script = folder.resolve("script.txt");
    if (!Files.exists(script)) {
      Files.writeString(script, script(Integer.parseInt(args[1])));
    }
    Launch launch =
        new Launch(
            FontShelf.bundled(Path.of("fonts-open")),
            Files.createTempDirectory("readfall"),
            Optional.of(script),
            files -> TranslationFiles.none());
    FutureTask<WindowBenchmark> made =
        new FutureTask<>(
            () -> {
              MainWindow window = ReadfallApp.window(launch, () -> {});
              WindowBenchmark benchmark = new WindowBenchmark(System.out, window);
              window.open();
              return benchmark;
            });
    SwingUtilities.invokeAndWait(made);
    made.get().run();
    Runtime.getRuntime().halt(0);
  }

  private static String script(int cues) {
    SplittableRandom random = new SplittableRandom(1);
    StringBuilder text = new StringBuilder("Title: Ebb\nCast: Ilse, Wouter\n");
    for (int cue = 0; cue < cues; cue++) {
      if (cue % CUES_A_PANEL == 0) {
        text.append("\nPANEL ").append(1 + cue / CUES_A_PANEL).append("\nThe mill.\n\n");
      }
      text.append(cue % 2 == 0 ? "ILSE:" : "WOUTER:");
      for (int words = 3 + random.nextInt(10); words > 0; words--) {
        text.append(' ').append(WORDS.get(random.nextInt(WORDS.size())));
      }
      text.append(".\n");
    }
    return text.toString();
  }

  private void run() throws Exception {
    sinceStart("window");
    await();
    sinceStart("strip placed and checked");
    print("heap after opening: %d MiB", heapMib());
    Thread.sleep(3000); // work that is still under way
    type("warming up", LETTERS / 2);
    refits.clear();
    settles.clear();
    paintings.clear();
    type("typing", LETTERS);
    percentiles("key to balloon", refits);
    percentiles("key to strip placed and checked", settles);
    percentiles("painting while typing", paintings);
    paintings.clear();
    pull();
    percentiles("pull to strip placed and checked", pulls);
    percentiles("painting while pulling", paintings);
    paintings.clear();
    scroll();
    percentiles("painting while scrolling", paintings);
    print("heap at the end: %d MiB", heapMib());
  }

  private void sinceStart(String what) {
    long start = ManagementFactory.getRuntimeMXBean().getStartTime();
    print("start to %s: %d", what, System.currentTimeMillis() - start);
  }

  private void await() throws Exception {
    FutureTask<Boolean> settled;
    do {
      Thread.sleep(10);
      settled =
          new FutureTask<>(
              () -> window.model().shown().filter(EpisodeSnapshot::isSettled).isPresent());
      SwingUtilities.invokeAndWait(settled);
    } while (!settled.get());
  }

  /** Types into one cue after the other. */
  private void type(String what, int letters) throws Exception {
    SplittableRandom random = new SplittableRandom(letters);
    for (int i = 0; i < letters; i++) {
      boolean elsewhere = i % 30 == 0;
      SwingUtilities.invokeAndWait(() -> press(elsewhere, random));
      Thread.sleep(EVERY_MS);
    }
    Thread.sleep(1500);
    print("%s: %d letters", what, letters);
  }

  private void press(boolean elsewhere, SplittableRandom random) {
    JTextComponent text = text(window.work().editor());
    if (random.nextInt(6) == 0) {
      text.dispatchEvent(
          new KeyEvent(
              text, KeyEvent.KEY_TYPED, System.currentTimeMillis(), 0, KeyEvent.VK_UNDEFINED, ' '));
    }
    if (elsewhere) {
      List<io.github.readfall.script.Cue> cues =
          window.model().shown().orElseThrow().episode().script().cues();
      var cue = cues.get(random.nextInt(cues.size()));
      window.work().editor().goTo(cue.line(), cue.speaker().length() + 4);
    }
    char letter = (char) ('a' + random.nextInt(26));
    long now = System.nanoTime();
    text.dispatchEvent(
        new KeyEvent(
            text,
            KeyEvent.KEY_TYPED,
            System.currentTimeMillis(),
            0,
            KeyEvent.VK_UNDEFINED,
            letter));
    pressed.put(window.work().editor().text(), now);
  }

  private static JTextComponent text(java.awt.Container in) {
    for (java.awt.Component child : in.getComponents()) {
      if (child instanceof JTextComponent text && "script".equals(text.getName())) {
        return text;
      }
      if (child instanceof java.awt.Container inner && text(inner) != NONE) {
        return text(inner);
      }
    }
    return NONE;
  }

  private static final JTextComponent NONE = new javax.swing.JTextArea();

  /** Drags a balloon to and fro, and prints the time of every step until the strip shows it. */
  private void pull() throws Exception {
    StripPane strip = window.work().strip();
    FutureTask<Box> found =
        new FutureTask<>(
            () -> {
              List<PlacedBalloon> all = window.model().shown().orElseThrow().galley().balloons();
              PlacedBalloon balloon = all.get(all.size() / 2);
              strip.setZoom(new Zoom.FitWidth());
              strip.showFrom(balloon.box().y() - 400);
              window.stripController().chosen().select(Set.of(new StripItem.Balloon(balloon.id())));
              pulledId = balloon.id();
              return balloon.box();
            });
    SwingUtilities.invokeAndWait(found);
    Box box = found.get();
    Thread.sleep(1000);
    mouse(MouseEvent.MOUSE_PRESSED, box, 0);
    for (int i = 1; i <= PULLS; i++) {
      int viewPx = i % 40 < 20 ? i % 40 : 40 - i % 40;
      SwingUtilities.invokeAndWait(
          () -> {
            double stripPx = Math.rint(viewPx / strip.scale());
            pulled.put(box.x() + stripPx, System.nanoTime());
          });
      mouse(MouseEvent.MOUSE_DRAGGED, box, viewPx);
      Thread.sleep(PULL_MS);
    }
    mouse(MouseEvent.MOUSE_RELEASED, box, 0);
    Thread.sleep(500);
  }

  private void mouse(int kind, Box box, int viewPx) throws Exception {
    SwingUtilities.invokeAndWait(
        () -> {
          JComponent view = window.work().strip().view();
          Rectangle there = window.work().strip().boundsOf(box);
          int button = kind == MouseEvent.MOUSE_DRAGGED ? 0 : MouseEvent.BUTTON1;
          view.dispatchEvent(
              new MouseEvent(
                  view,
                  kind,
                  System.currentTimeMillis(),
                  InputEvent.BUTTON1_DOWN_MASK,
                  (int) there.getCenterX() + viewPx,
                  (int) there.getCenterY(),
                  1,
                  false,
                  button));
        });
  }

  private void pulledIsShown(EpisodeSnapshot shown) {
    shown.galley().balloons().stream()
        .filter(balloon -> balloon.id().equals(pulledId))
        .findFirst()
        .flatMap(balloon -> Optional.ofNullable(pulled.remove(balloon.box().x())))
        .ifPresent(since -> pulls.add((System.nanoTime() - since) / 1e6));
  }

  private void shown(EpisodeSnapshot shown) {
    pulledIsShown(shown);
    Long since = pressed.get(shown.text());
    if (since != null) {
      double ms = (System.nanoTime() - since) / 1e6;
      (shown.isSettled() ? settles : refits).add(ms);
    }
  }

  private void painted(PaintStats painting) {
    paintings.add(painting.nanos() / 1e6);
  }

  private void scroll() throws Exception {
    JScrollBar bar = window.work().strip().getVerticalScrollBar();
    for (int i = 0; i <= SCROLL_STEPS; i++) {
      int step = i;
      SwingUtilities.invokeAndWait(
          () -> bar.setValue((int) ((long) bar.getMaximum() * step / SCROLL_STEPS)));
      Thread.sleep(FRAME_MS);
    }
  }

  private static long heapMib() throws InterruptedException {
    for (int i = 0; i < 3; i++) {
      System.gc();
      Thread.sleep(100);
    }
    Runtime runtime = Runtime.getRuntime();
    return (runtime.totalMemory() - runtime.freeMemory()) / MIB;
  }

  private void percentiles(String what, List<Double> times) {
    List<Double> sorted = new ArrayList<>(times);
    Collections.sort(sorted);
    if (sorted.isEmpty()) {
      print("%s: none", what);
      return;
    }
    print(
        "%s: %d times, 50 %% %.1f, 95 %% %.1f, 99 %% %.1f, most %.1f",
        what, sorted.size(), at(sorted, 0.5), at(sorted, 0.95), at(sorted, 0.99), at(sorted, 1));
  }

  private static double at(List<Double> sorted, double share) {
    return sorted.get((int) Math.min(sorted.size() - 1, share * sorted.size()));
  }

  private void print(String form, Object... figures) {
    out.printf(Locale.ROOT, form + "%n", figures);
  }
}
