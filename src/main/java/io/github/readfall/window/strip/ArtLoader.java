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
  private static final long SILENT_NANOS = 400_000_000;

  private final Executor reading =
      Executors.newSingleThreadExecutor(
          work -> {
            Thread thread = new Thread(work, "readfall-art");
            thread.setDaemon(true);
            return thread;
          });

  private final Consumer<Optional<ArtStore>> changed;
  private final Consumer<Notice> tell;
  private final Runnable done;
  private Optional<ArtStore> current = Optional.empty();
  private int wanted;

  /**
   * A loader without art.
   *
   * @param changed is given the art when more of it has been read
   * @param tell shows progress, and what cannot be read
   * @param done is called when no more progress will be shown
   */
  public ArtLoader(Consumer<Optional<ArtStore>> changed, Consumer<Notice> tell, Runnable done) {
    this.changed = changed;
    this.tell = tell;
    this.done = done;
  }

  /** Reads the art of an episode, in place of the former art. */
  public void load(EpisodeFiles files, int stripWidthPx) {
    stop();
    int number = wanted;
    reading.execute(() -> read(files, stripWidthPx, number));
  }

  /** Stops reading, and discards what was read. */
  public void stop() {
    wanted++;
    current.ifPresent(ArtStore::close);
    current = Optional.empty();
    changed.accept(Optional.empty());
    done.run();
  }

  private void read(EpisodeFiles files, int stripWidthPx, int number) {
    StripArt art = StripArt.of(ArtFiles.of(files.script()), stripWidthPx);
    complain(art.problems());
    if (art.pages().isEmpty()) {
      return;
    }
    try {
      ArtStore store = ArtStore.of(art);
      SwingUtilities.invokeLater(() -> begun(store, number));
      long start = System.nanoTime();
      boolean whole = store.fill((read, of) -> goesOn(store, start, 100L * read / of));
      SwingUtilities.invokeLater(() -> ended(store, whole));
    } catch (UnreadableArt e) {
      complain(List.of(String.valueOf(e.getMessage())));
    }
  }

  private void begun(ArtStore store, int number) {
    if (number == wanted) {
      current = Optional.of(store);
      changed.accept(current);
    } else {
      store.close();
    }
  }

  private boolean goesOn(ArtStore store, long start, long percent) {
    if (System.nanoTime() - start > SILENT_NANOS) {
      Notice notice =
          new Notice(
              "art",
              Wording.of("art.reading", percent),
              List.of(new Notice.Action(Wording.of("art.stop"), this::stop)));
      SwingUtilities.invokeLater(
          () -> {
            if (current.filter(store::equals).isPresent()) {
              tell.accept(notice);
              changed.accept(current);
            }
          });
    }
    return true;
  }

  private void ended(ArtStore store, boolean whole) {
    complain(store.problems());
    if (current.filter(store::equals).isPresent()) {
      done.run();
      if (whole) {
        changed.accept(current);
      }
    }
  }

  private void complain(List<String> problems) {
    if (!problems.isEmpty()) {
      Notice notice = Notice.of("art.problem", String.join(" ", problems));
      SwingUtilities.invokeLater(() -> tell.accept(notice));
    }
  }
}
