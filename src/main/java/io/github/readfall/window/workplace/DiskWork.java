package io.github.readfall.window.workplace;

import io.github.readfall.series.autosave.OpenText;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import javax.swing.SwingUtilities;

/**
 * Runs work that waits for the disk, and passes its result to the event thread.
 *
 * @param disk the thread that waits
 * @param open the open text, if any; called on the event thread
 */
record DiskWork(Executor disk, Supplier<Optional<OpenText>> open) {

  /** Runs work with the open text; nothing if none is open. */
  <T> void run(Function<OpenText, T> work, Consumer<T> then) {
    open.get()
        .ifPresent(
            kept ->
                disk.execute(
                    () -> {
                      T result = work.apply(kept);
                      SwingUtilities.invokeLater(() -> then.accept(result));
                    }));
  }
}
