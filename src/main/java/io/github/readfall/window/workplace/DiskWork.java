package io.github.readfall.window.workplace;

import io.github.readfall.series.autosave.OpenText;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import javax.swing.SwingUtilities;

/**
 * Does what must wait for a disk, with the script that is open, and goes on with what came of it in
 * the window.
 *
 * @param disk the thread that waits
 * @param open the script that is open, if there is one; asked on the event thread
 */
record DiskWork(Executor disk, Supplier<Optional<OpenText>> open) {

  /** Does something; nothing where no script is open. */
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
