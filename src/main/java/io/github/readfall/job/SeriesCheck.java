package io.github.readfall.job;

import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.rules.voice.SeriesBook;
import io.github.readfall.rules.voice.SeriesStrip;
import io.github.readfall.series.EpisodeFiles;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Checks the episodes of a series side by side. */
public final class SeriesCheck {

  private final Proofer proofer;
  private final int threads;
  private final Progress progress;

  /** Receives the progress of a long piece of work. */
  public interface Progress {

    /**
     * One more is done.
     *
     * @param done how many are, from 1
     * @param all how many there are
     */
    void done(int done, int all);
  }

  /**
   * A check.
   *
   * @param threads number of episodes checked at once; at least 1
   */
  public SeriesCheck(Proofer proofer, int threads, Progress progress) {
    this.proofer = proofer;
    this.threads = threads;
    this.progress = progress;
  }

  /**
   * Checks every episode.
   *
   * @throws UnusablePath if the files of one cannot be read at all
   */
  public SeriesProof check(List<EpisodeFiles> episodes) throws UnusablePath {
    ExecutorService pool = Executors.newFixedThreadPool(threads);
    try {
      List<Future<StripProof>> running = new ArrayList<>();
      for (EpisodeFiles files : episodes) {
        Callable<StripProof> check = () -> proofer.check(files);
        running.add(pool.submit(check));
      }
      List<StripProof> proofs = new ArrayList<>();
      for (Future<StripProof> one : running) {
        proofs.add(result(one));
        progress.done(proofs.size(), running.size());
      }
      return new SeriesProof(proofs, SeriesBook.check(strips(proofs)));
    } finally {
      pool.shutdownNow();
    }
  }

  private static List<SeriesStrip> strips(List<StripProof> proofs) {
    return proofs.stream().map(proof -> new SeriesStrip(script(proof), proof.galley())).toList();
  }

  /** The script's path, as reports name it. */
  private static String script(StripProof proof) {
    return proof.episode().path().toString().replace('\\', '/');
  }

  private static StripProof result(Future<StripProof> one) throws UnusablePath {
    try {
      return one.get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new UnusablePath("The check was broken off.");
    } catch (ExecutionException e) {
      if (e.getCause() instanceof UnusablePath unusable) {
        throw unusable;
      }
      throw new IllegalStateException(e.getCause());
    }
  }
}
