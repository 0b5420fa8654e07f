package io.github.readfall.app;

import io.github.readfall.keeping.Remembered;
import io.github.readfall.keeping.RememberedFile;
import io.github.readfall.series.UnusablePath;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;

/** What the window remembers; written after every change. */
final class Memory {

  private final RememberedFile file;
  private final Executor disk;
  private final Consumer<String> troubled;
  private final Optional<String> trouble;
  private Remembered now;

  /**
   * What a file holds.
   *
   * @param disk writes it
   * @param troubled hears when that cannot be done
   */
  Memory(RememberedFile file, Executor disk, Consumer<String> troubled) {
    RememberedFile.Read read = file.read();
    this.file = file;
    this.disk = disk;
    this.troubled = troubled;
    this.trouble = read.trouble();
    this.now = read.remembered();
  }

  /** A sentence where the file could not be read. */
  Optional<String> trouble() {
    return trouble;
  }

  Remembered now() {
    return now;
  }

  /** Remembers something else. */
  void change(UnaryOperator<Remembered> change) {
    Remembered next = change.apply(now);
    if (!next.equals(now)) {
      now = next;
      disk.execute(() -> write(next));
    }
  }

  private void write(Remembered what) {
    try {
      file.write(what);
    } catch (UnusablePath e) {
      troubled.accept(String.valueOf(e.getMessage()));
    }
  }
}
