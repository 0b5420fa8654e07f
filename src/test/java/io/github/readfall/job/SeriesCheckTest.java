package io.github.readfall.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.cli.report.JsonReport;
import io.github.readfall.cli.report.SeriesTable;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.type.font.OpenFaces;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.LongSupplier;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SeriesCheckTest {

  private static final int EPISODES = 6;
  private static final Duration LONG = Duration.ofSeconds(60);

  private final Path series;

  SeriesCheckTest(@TempDir Path series) {
    this.series = series;
  }

  /** Episodes of unequal length, so that side by side they do not end in their order. */
  @BeforeEach
  void write() throws IOException {
    Files.writeString(series.resolve("series.toml"), "[voices.elder]\nslant = 9\n");
    for (int i = 1; i <= EPISODES; i++) {
      Path folder = Files.createDirectory(series.resolve("ep0" + i));
      StringBuilder script = new StringBuilder("Title: Part " + i + "\nCast: Ilse, Wouter");
      script.append(i == 4 ? " (elder)" : "").append("\n\n");
      IntStream.rangeClosed(1, 1 + 3 * (EPISODES - i))
          .forEach(
              n -> script.append("PANEL\nThe mill.\n\nILSE: It counts ").append(n).append(".\n\n"));
      script.append("PANEL\nThe sea.\n\nWOUTER: Hush.\n\nIGNAZ: Who is there?\n");
      Files.writeString(folder.resolve("script.txt"), script);
    }
  }

  private static Proofer proofer(LongSupplier nanos) throws Exception {
    return new Proofer(OpenFaces.shelf(), nanos);
  }

  private SeriesProof checked(int threads) throws Exception {
    return new SeriesCheck(proofer(() -> 0), threads, (done, all) -> {})
        .check(EpisodeFiles.at(series));
  }

  private static String json(SeriesProof proof) {
    return new JsonReport("0.1.0").stripSeries("check", proof.episodes(), proof.findings());
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 4})
  void episodesSideBySideComeToTheSameAsOneAfterTheOther(int threads) throws Exception {
    List<StripProof> serial = new ArrayList<>();
    for (EpisodeFiles files : EpisodeFiles.at(series)) {
      serial.add(proofer(() -> 0).check(files));
    }
    SeriesProof proof = checked(threads);
    assertEquals(EPISODES, proof.episodes().size());
    assertEquals(json(new SeriesProof(serial, proof.findings())), json(proof));
  }

  @Test
  void theNumberOfThreadsDoesNotShow() throws Exception {
    SeriesProof one = checked(1);
    SeriesProof four = checked(4);
    assertEquals(json(one), json(four));
    assertEquals(SeriesTable.of(one), SeriesTable.of(four));
  }

  @Test
  void whatIsFoundBetweenEpisodesNamesTheFile() throws Exception {
    SeriesProof proof = checked(2);
    assertEquals(
        List.of("voice/strayed"), proof.findings().stream().map(found -> found.rule()).toList());
    String file = proof.findings().get(0).where().file();
    assertTrue(file.endsWith("/ep04/script.txt"), file);
    assertTrue(proof.allFindings().containsAll(proof.findings()));
    assertTrue(proof.allFindings().size() > proof.findings().size(), "the episodes' are among all");
  }

  @Test
  void progressCountsEveryEpisodeOnce() throws Exception {
    List<String> told = new ArrayList<>();
    new SeriesCheck(proofer(() -> 0), 4, (done, all) -> told.add(done + "/" + all))
        .check(EpisodeFiles.at(series));
    assertEquals(List.of("1/6", "2/6", "3/6", "4/6", "5/6", "6/6"), told);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 4})
  void oneEpisodeThatCannotBeReadIsNamed(int threads) throws Exception {
    Path broken = series.resolve("ep03/script.txt");
    Files.write(broken, new byte[] {'P', (byte) 0xC3, '(', 0, 0, 0});
    UnusablePath refused = assertThrows(UnusablePath.class, () -> checked(threads));
    assertTrue(
        String.valueOf(refused.getMessage()).contains(broken.toString()), refused.getMessage());
  }

  /** The clock stands still in the midst of the second episode, so the work cannot go on. */
  @Test
  void anInterruptedCheckEndsAtOnceAndBeginsNothingMore() throws Exception {
    CountDownLatch inTheMidst = new CountDownLatch(1);
    CountDownLatch goOn = new CountDownLatch(1);
    Set<Thread> workers = ConcurrentHashMap.newKeySet();
    AtomicInteger readings = new AtomicInteger();
    checked(1); // opens the faces, so that what follows is quick
    LongSupplier clock =
        () -> {
          workers.add(Thread.currentThread());
          if (readings.incrementAndGet() == READINGS + 2) {
            inTheMidst.countDown();
            awaitUninterruptibly(goOn);
          }
          return 0;
        };
    SeriesCheck check = new SeriesCheck(proofer(clock), 1, (done, all) -> {});
    AtomicInteger broken = new AtomicInteger();
    Thread asker =
        new Thread(
            () -> {
              try {
                check.check(EpisodeFiles.at(series));
              } catch (UnusablePath e) {
                broken.incrementAndGet();
              }
            });
    asker.start();
    inTheMidst.await();
    asker.interrupt();
    assertTimeoutPreemptively(LONG, () -> asker.join());
    assertEquals(1, broken.get(), "the check says that it was broken off");
    goOn.countDown();
    for (Thread worker : workers) {
      assertTimeoutPreemptively(LONG, () -> worker.join());
    }
    assertFalse(readings.get() > 2 * READINGS, "episodes were begun after the end");
  }

  /** How often one check of an episode looks at the clock. */
  private static final int READINGS = 6;

  private static void awaitUninterruptibly(CountDownLatch latch) {
    for (boolean waiting = true; waiting; ) {
      try {
        latch.await();
        waiting = false;
      } catch (InterruptedException e) {
        waiting = latch.getCount() > 0; // only the test lets it go on
      }
    }
  }
}
