package io.github.readfall.series.autosave;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.Endurance;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Kills a program that types, at seeded moments (SIGKILL where there are signals), and looks at
 * what is left: the script is whole, and all that was typed until a second before is there. What
 * was lost is written to target/kills.txt.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class KeepingKillIT {

  private static final long SECOND_NANOS = TimeUnit.SECONDS.toNanos(1);

  /** The typist may have handed over a few keys more than it could say. */
  private static final int UNSAID = 3;

  private final List<String> report = new ArrayList<>();
  private long worstNanos;

  private record Said(String what, int keys, long atNanos) {}

  static LongStream seeds() {
    return LongStream.rangeClosed(1, Endurance.rounds(5, 50));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void whatWasTypedASecondAgoOutlivesAKillWhileTyping(long seed, @TempDir Path folder)
      throws Exception {
    long afterMillis = new SplittableRandom(seed).nextLong(1100, 2300);
    outlives(
        folder, "typing", seed, 2_000, (int) seed % 2 * 25, "typed", 1, afterMillis * 1_000_000);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void whatWasTypedOutlivesAKillWhileSaving(long seed, @TempDir Path folder) throws Exception {
    SplittableRandom random = new SplittableRandom(1000 + seed);
    int saving = random.nextInt(2, 5);
    outlives(folder, "saving", seed, 40_000, 12, "saving", saving, random.nextLong(30_000_000));
  }

  /** Kills it a while after it has said something for the so manyth time. */
  private void outlives(
      Path folder,
      String name,
      long seed,
      int lines,
      int saveEvery,
      String word,
      int times,
      long afterNanos)
      throws Exception {
    String start = Typing.start(lines);
    Path script = Files.writeString(folder.resolve("script.txt"), start);
    Path state = folder.resolve("state");
    List<Said> said = new ArrayList<>();
    Process typist = typist(script, state, seed, saveEvery);
    CompletableFuture<Long> killedAt = new CompletableFuture<>();
    try (BufferedReader out =
        new BufferedReader(
            new InputStreamReader(typist.getInputStream(), StandardCharsets.UTF_8))) {
      for (String line = out.readLine(); line != null; line = out.readLine()) {
        Said now = said(line);
        said.add(now);
        if (now.what().equals(word) && keys(said, word).size() == times) {
          new Thread(() -> killedAt.complete(kill(typist, now.atNanos() + afterNanos))).start();
        }
      }
    } finally {
      typist.destroyForcibly();
    }
    typist.waitFor();
    look(name, seed, start, script, state, said, killedAt.get(1, TimeUnit.SECONDS));
  }

  private static Process typist(Path script, Path state, long seed, int saveEvery)
      throws IOException {
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-Xmx256m",
            "-XX:TieredStopAtLevel=1",
            "-cp",
            System.getProperty("java.class.path"),
            Typist.class.getName(),
            script.toString(),
            state.toString(),
            String.valueOf(seed),
            String.valueOf(saveEvery))
        .redirectError(ProcessBuilder.Redirect.INHERIT)
        .start();
  }

  private static Said said(String line) {
    int space = line.indexOf(' ');
    assertNotEquals("trouble", line.substring(0, space), line);
    return new Said(
        line.substring(0, space), Integer.parseInt(line.substring(space + 1)), System.nanoTime());
  }

  private static long kill(Process process, long atNanos) {
    for (long left = atNanos - System.nanoTime(); left > 0; left = atNanos - System.nanoTime()) {
      LockSupport.parkNanos(left);
    }
    long now = System.nanoTime();
    boolean unused =
        process.toHandle().destroyForcibly(); // the process itself would close its output
    return now;
  }

  private void look(
      String name, long seed, String start, Path script, Path state, List<Said> said, long killedAt)
      throws Exception {
    int most = said.stream().mapToInt(Said::keys).max().orElse(0) + UNSAID;
    List<Integer> same = Typing.keysFor(Files.readString(script), seed, start, most);
    List<Integer> whole = keys(said, "saving");
    whole.add(0);
    int onDisk = same.stream().filter(whole::contains).findFirst().orElse(-1);
    assertNotEquals(-1, onDisk, () -> "the script is of " + same + ", begun to save were " + whole);
    List<Integer> saved = keys(said, "saved");
    assertTrue(
        saved.isEmpty() || last(same) >= last(saved), () -> "of " + same + " came back " + saved);
    int kept = last(same);
    try (SideFileLocks claims = SideFileLocks.in(state);
        OpenText again = OpenText.open(script, claims, new FakeLater(), s -> {})) {
      assertEquals(List.of(), again.remarks());
      assertTrue(again.recovered().size() <= 1, "only one window fell");
      for (Recovered recovered : again.recovered()) {
        List<Integer> offered = Typing.keysFor(recovered.text(), seed, start, most);
        assertTrue(
            !offered.isEmpty() && last(offered) > onDisk,
            () -> "offered is " + offered + ", the script has " + onDisk);
        kept = last(offered);
      }
    }
    onlyKnownFiles(script.resolveSibling("."));
    tell(name, seed, said, kept, onDisk, killedAt);
    int needed =
        said.stream()
            .filter(s -> s.what().equals("typed") && s.atNanos() <= killedAt - SECOND_NANOS)
            .mapToInt(Said::keys)
            .max()
            .orElse(0);
    assertTrue(kept >= needed, "key " + needed + " was typed a second ago, kept is " + kept);
  }

  private static int last(List<Integer> keys) {
    return keys.get(keys.size() - 1);
  }

  private static List<Integer> keys(List<Said> said, String what) {
    List<Integer> keys = new ArrayList<>();
    said.stream().filter(s -> s.what().equals(what)).forEach(s -> keys.add(s.keys()));
    return keys;
  }

  private static void onlyKnownFiles(Path folder) throws IOException {
    String known = "state|script\\.txt|script\\.unsaved\\.txt|\\.script\\..*\\.part";
    try (Stream<Path> files = Files.list(folder)) {
      List<Path> unknown =
          files.filter(file -> !file.getFileName().toString().matches(known)).toList();
      assertEquals(List.of(), unknown);
    }
  }

  private void tell(String name, long seed, List<Said> said, int kept, int onDisk, long killedAt) {
    long lost =
        said.stream()
            .filter(s -> s.what().equals("typed") && s.keys() > kept)
            .mapToLong(s -> killedAt - s.atNanos())
            .max()
            .orElse(0);
    worstNanos = Math.max(worstNanos, lost);
    int typed = keys(said, "typed").size();
    report.add(
        String.format(
            Locale.ROOT,
            "%s %d: typed %d, saved %d, kept %d, lost the last %.0f ms",
            name,
            seed,
            typed,
            onDisk,
            kept,
            Math.max(0, lost) / 1e6));
  }

  @AfterAll
  void writeDown() throws IOException {
    report.add(String.format(Locale.ROOT, "worst: the last %.0f ms", worstNanos / 1e6));
    Files.write(
        Path.of("target", "kills.txt"),
        report,
        StandardOpenOption.CREATE,
        StandardOpenOption.TRUNCATE_EXISTING);
  }
}
