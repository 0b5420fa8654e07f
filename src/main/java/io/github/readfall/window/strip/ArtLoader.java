package io.github.readfall.window.strip;

import io.github.readfall.art.ArtFiles;
import io.github.readfall.art.ArtStore;
import io.github.readfall.art.StripArt;
import io.github.readfall.art.UnreadableArt;
import io.github.readfall.base.wording.Wording;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.window.parts.Notice;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;

/** Reads the strip's art in the background, and reports its progress. */
public final class ArtLoader {

  /** The shortest reading whose progress is shown. House default, no source. */
  private static final long SHOWN_AFTER_NANOS = 400_000_000;

  private final Executor reading =
      Executors.newSingleThreadExecutor(
          work -> {
            Thread thread = new Thread(work, "readfall-art");
            thread.setDaemon(true);
            return thread;
          });

  private final Consumer<Optional<ArtStore>> changed;
  private final Consumer<Notice> notices;
  private final Runnable done;
  private Optional<ArtStore> current = Optional.empty();
  private int latest;

  /**
   * A loader without art.
   *
   * @param changed is given the art when more of it has been read
   * @param notices shows progress, and what cannot be read
   * @param done is called when no more progress will be shown
   */
  public ArtLoader(Consumer<Optional<ArtStore>> changed, Consumer<Notice> notices, Runnable done) {
    this.changed = changed;
    this.notices = notices;
    this.done = done;
  }

  /** Reads the art of an episode, in place of the former art. */
  public void load(EpisodeFiles files, int stripWidthPx) {
    stop();
    int number = latest;
    reading.execute(() -> read(files, stripWidthPx, number));
  }

  /** Stops reading, and discards what was read. */
  public void stop() {
    latest++;
    current.ifPresent(ArtStore::close);
    current = Optional.empty();
    changed.accept(Optional.empty());
    done.run();
  }

  private void read(EpisodeFiles files, int stripWidthPx, int number) {
    StripArt art = StripArt.of(ArtFiles.of(files.script()), stripWidthPx);
    report(art.problems());
    if (art.pages().isEmpty()) {
      return;
    }
    try {
      ArtStore store = ArtStore.of(art);
      SwingUtilities.invokeLater(() -> begin(store, number));
      long start = System.nanoTime();
      boolean whole = store.fill((read, of) -> progress(store, start, 100L * read / of));
      SwingUtilities.invokeLater(() -> end(store, whole));
    } catch (UnreadableArt e) {
      report(List.of(String.valueOf(e.getMessage())));
    }
  }

  private void begin(ArtStore store, int number) {
    if (number == latest) {
      current = Optional.of(store);
      changed.accept(current);
    } else {
      store.close();
    }
  }

  private boolean progress(ArtStore store, long start, long percent) {
    if (System.nanoTime() - start > SHOWN_AFTER_NANOS) {
      Notice notice =
          new Notice(
              "art",
              Wording.of("art.reading", percent),
              List.of(new Notice.Action(Wording.of("art.stop"), this::stop)));
      SwingUtilities.invokeLater(
          () -> {
            if (current.filter(store::equals).isPresent()) {
              notices.accept(notice);
              changed.accept(current);
            }
          });
    }
    return true;
  }

  private void end(ArtStore store, boolean whole) {
    report(store.problems());
    if (current.filter(store::equals).isPresent()) {
      done.run();
      if (whole) {
        changed.accept(current);
      }
    }
  }

  private void report(List<String> problems) {
    if (!problems.isEmpty()) {
      Notice notice = Notice.of("art.problem", String.join(" ", problems));
      SwingUtilities.invokeLater(() -> notices.accept(notice));
    }
  }
}
