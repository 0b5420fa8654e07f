package io.github.readfall.window.model;

import io.github.readfall.base.files.Cancelled;
import io.github.readfall.base.files.CannotWrite;
import io.github.readfall.base.files.OutputFolder;
import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.export.Order;
import io.github.readfall.export.Prepared;
import io.github.readfall.job.Proofer;
import io.github.readfall.series.EpisodeFiles;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/**
 * Exports an episode as it is saved: first lists the files, then writes them on request. All
 * methods are called on the event thread, and so is the listener.
 */
public final class ExportModel {

  private final EpisodeFiles files;
  private final Proofer proofer;
  private final ModelThreads threads;
  private final LatestJob thorough;
  private final BackgroundFailures failures;
  private final Consumer<ExportProgress> listener;
  private final AtomicBoolean isCancelled = new AtomicBoolean();
  private final AtomicInteger lastPercent = new AtomicInteger(-1);
  private long version;
  private Optional<Prepared> prepared = Optional.empty();

  /**
   * A model without an order.
   *
   * @param fault is given internal errors
   * @param listener is given the progress
   */
  public ExportModel(
      EpisodeFiles files,
      Proofer proofer,
      ModelThreads threads,
      Consumer<Throwable> fault,
      Consumer<ExportProgress> listener) {
    this.files = files;
    this.proofer = proofer;
    this.threads = threads;
    this.thorough = new LatestJob(threads.thorough());
    this.failures = new BackgroundFailures(threads.events(), fault);
    this.listener = listener;
  }

  /** Lists the files that an order would write into a folder. */
  public void ask(Order order, Path folder) {
    version++;
    prepared = Optional.empty();
    if (order.kinds().isEmpty()) {
      listener.accept(new ExportProgress.Idle());
      return;
    }
    listener.accept(new ExportProgress.Preparing());
    long now = version;
    thorough.offer(failures.guarded(() -> prepare(order, folder, now)));
  }

  private void prepare(Order order, Path folder, long of) {
    try {
      Prepared made = Prepared.of(order, files, proofer);
      List<Path> planned = new OutputFolder(folder, true).planned(made.batches());
      Set<Path> taken = planned.stream().filter(Files::exists).collect(Collectors.toSet());
      ifCurrent(
          of,
          () -> {
            prepared = Optional.of(made);
            listener.accept(new ExportProgress.Ready(planned, taken));
          });
    } catch (CannotWrite e) {
      refuse(of, e.inWindow());
    } catch (UnusablePath e) {
      refuse(of, String.valueOf(e.getMessage()));
    }
  }

  /** Writes the files of the last order, if they are ready to be written. */
  public void write(OutputFolder outbox) {
    prepared.ifPresent(
        made -> {
          isCancelled.set(false);
          lastPercent.set(-1);
          listener.accept(new ExportProgress.Writing(0));
          long now = version;
          thorough.offer(failures.guarded(() -> write(made, outbox, now)));
        });
  }

  private void write(Prepared made, OutputFolder outbox, long of) {
    try {
      List<Path> written = outbox.write(made.batches(), (done, all) -> at(done, all, of));
      ifCurrent(of, () -> listener.accept(new ExportProgress.Written(written)));
    } catch (CannotWrite e) {
      refuse(of, e.inWindow());
    } catch (Cancelled e) {
      refuse(of, String.valueOf(e.getMessage()));
    }
  }

  private void at(long done, long all, long of) throws Cancelled {
    if (isCancelled.get()) {
      throw new Cancelled();
    }
    int percent = (int) (100 * done / all);
    if (lastPercent.getAndSet(percent) != percent) {
      ifCurrent(of, () -> listener.accept(new ExportProgress.Writing(percent)));
    }
  }

  /** Cancels the export; none of its files remain. */
  public void stop() {
    isCancelled.set(true);
  }

  private void refuse(long of, String sentence) {
    ifCurrent(of, () -> listener.accept(new ExportProgress.Refused(sentence)));
  }

  private void ifCurrent(long of, Runnable report) {
    threads
        .events()
        .execute(
            () -> {
              if (of == version) {
                report.run();
              }
            });
  }
}
