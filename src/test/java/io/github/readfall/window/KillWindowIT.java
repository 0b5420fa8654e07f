package io.github.readfall.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import io.github.readfall.Endurance;
import io.github.readfall.series.autosave.BackgroundThread;
import io.github.readfall.series.autosave.OpenText;
import io.github.readfall.series.autosave.SideFileLocks;
import java.awt.AWTException;
import java.awt.GraphicsEnvironment;
import java.awt.Robot;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A window that is killed loses only what was typed in its last second. */
class KillWindowIT {

  private static final String SCRIPT = "Title: Ebb\n\nPANEL 1\nThe mill.\n\nILSE: It turns ";
  private static final long MOST_LOST_NANOS = TimeUnit.SECONDS.toNanos(1);

  private final Path folder;

  KillWindowIT(@TempDir Path folder) {
    this.folder = folder;
  }

  /** Five times in every build; more often in an endurance test. */
  static IntStream seeds() {
    return IntStream.range(0, Endurance.rounds(5, 50));
  }

  /** A letter and the time when it was typed. */
  private record Typed(char letter, long nanos) {}

  @ParameterizedTest
  @MethodSource("seeds")
  void whatWasTypedASecondBeforeTheEndIsThere(int seed) throws Exception {
    assumeFalse(GraphicsEnvironment.isHeadless(), "there is no display: no window was killed");
    SplittableRandom random = new SplittableRandom(seed);
    Path script = Files.writeString(folder.resolve("script.txt"), SCRIPT);
    Path state = folder.resolve("state");
    Process process = start(state, script);
    Robot robot = aim(process);
    List<Typed> typed = type(robot, random, 20 + random.nextInt(40));
    if (random.nextBoolean()) {
      save(robot);
      typed.addAll(type(robot, random, random.nextInt(12)));
      save(robot);
    }
    robot.delay(random.nextInt(120));
    long end = System.nanoTime();
    process.toHandle().destroyForcibly(); // waiting on the process handle would close its output
    process.waitFor();
    check(state, script, typed, end);
  }

  private static Process start(Path state, Path script) throws IOException {
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:TieredStopAtLevel=1",
            "-cp",
            System.getProperty("java.class.path"),
            KilledWindow.class.getName(),
            state.toString(),
            script.toString())
        .redirectError(ProcessBuilder.Redirect.INHERIT)
        .start();
  }

  /** Waits until the window can be typed into, and puts the caret at the end of the script. */
  private static Robot aim(Process process) throws IOException, AWTException {
    BufferedReader out =
        new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    String line = out.readLine();
    assertTrue(line != null && line.startsWith("ready "), "said " + line);
    String[] parts = line.split(" ", -1);
    Robot robot = new Robot();
    robot.mouseMove(Integer.parseInt(parts[1]), Integer.parseInt(parts[2]));
    robot.mousePress(InputEvent.BUTTON1_DOWN_MASK);
    robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
    robot.delay(300);
    press(robot, KeyEvent.VK_CONTROL, KeyEvent.VK_END);
    robot.delay(50);
    return robot;
  }

  private static List<Typed> type(Robot robot, SplittableRandom random, int letters) {
    List<Typed> typed = new ArrayList<>();
    for (int i = 0; i < letters; i++) {
      char letter = (char) ('a' + random.nextInt(26));
      press(robot, KeyEvent.getExtendedKeyCodeForChar(letter));
      typed.add(new Typed(letter, System.nanoTime()));
      robot.delay(10 + random.nextInt(60));
    }
    return typed;
  }

  private static void save(Robot robot) {
    press(robot, KeyEvent.VK_CONTROL, KeyEvent.VK_S);
  }

  private static void press(Robot robot, int... codes) {
    for (int code : codes) {
      robot.keyPress(code);
    }
    for (int i = codes.length - 1; i >= 0; i--) {
      robot.keyRelease(codes[i]);
    }
  }

  private static void check(Path state, Path script, List<Typed> typed, long end) throws Exception {
    StringBuilder all = new StringBuilder(SCRIPT);
    typed.forEach(one -> all.append(one.letter()));
    String onDisk = Files.readString(script);
    assertTrue(all.toString().startsWith(onDisk) && onDisk.startsWith(SCRIPT), onDisk);
    try (SideFileLocks claims = SideFileLocks.in(state);
        BackgroundThread later = new BackgroundThread("test");
        OpenText kept = OpenText.open(script, claims, later, sentence -> {})) {
      String newest = kept.recovered().isEmpty() ? onDisk : kept.recovered().get(0).text();
      assertEquals(all.substring(0, newest.length()), newest);
      int there = newest.length() - SCRIPT.length();
      if (there < typed.size()) {
        long lost = end - typed.get(there).nanos();
        assertTrue(lost <= MOST_LOST_NANOS, () -> "lost " + lost / 1_000_000 + " ms");
      }
    }
  }
}
