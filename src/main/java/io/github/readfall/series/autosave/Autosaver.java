package io.github.readfall.series.autosave;

import io.github.readfall.base.files.UnusablePath;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

/**
 * Autosaves unsaved text: the newest text goes into the side file soon after the first change that
 * is not in it yet, and the file is deleted once everything in it is saved.
 */
public final class Autosaver {

  /**
   * Time from the first change to the beginning of writing, in ns: a quarter second, which leaves
   * as much for the writing before half a second is over. House default, no source.
   */
  static final long DELAY_NANOS = TimeUnit.MILLISECONDS.toNanos(250);

  /** Time from a failure to the next attempt, in ns. House default, no source. */
  static final long RETRY_NANOS = TimeUnit.SECONDS.toNanos(1);

  private final AutosaveFile side;
  private final Scheduler later;
  private final Consumer<String> troubled;

  /** Held while the side file is written, so that an older text never follows a newer one. */
  private final Object writing = new Object();

  private final Object state = new Object();
  private String newest;
  private String saved;
  private boolean due;
  private boolean ended;
  private boolean isReported;

  /**
   * Begins with nothing unsaved.
   *
   * @param saved the text on disk
   * @param later when to write; on a thread that may wait for a disk
   * @param troubled gets a sentence when autosaving begins to fail, on whatever thread that was
   */
  Autosaver(AutosaveFile side, String saved, Scheduler later, Consumer<String> troubled) {
    this.side = side;
    this.newest = saved;
    this.saved = saved;
    this.later = later;
    this.troubled = troubled;
  }

  /**
   * Reports a change. Any thread; returns at once.
   *
   * @param text all of it, as it would be saved
   */
  void changed(String text) {
    synchronized (state) {
      newest = text;
      if (due || ended) {
        return;
      }
      due = true;
    }
    later.after(DELAY_NANOS, this::keepIfDue);
  }

  /**
   * Reports that a text is about to be saved, and autosaves the newest one first, so that after a
   * crash at any moment the side file is as new as the script, or newer.
   *
   * @param text reported before, perhaps followed by others; if none was, it is the newest
   */
  void saving(String text) {
    synchronized (state) {
      if (newest.equals(saved)) {
        newest = text;
      }
    }
    boolean unused = keep();
  }

  /** All that was typed. */
  String newest() {
    synchronized (state) {
      return newest;
    }
  }

  /** Reports the text now on disk. */
  void saved(String text) {
    synchronized (state) {
      saved = text;
    }
    boolean unused = keep();
  }

  /** Returns true if there is unsaved text. */
  boolean hasUnsaved() {
    synchronized (state) {
      return !newest.equals(saved);
    }
  }

  private void keepIfDue() {
    synchronized (state) {
      if (!due || ended) {
        return;
      }
    }
    boolean unused = keep();
  }

  /** Brings the side file up to date now; whether that could be done. */
  boolean keep() {
    synchronized (writing) {
      String text;
      boolean unsaved;
      synchronized (state) {
        due = false;
        text = newest;
        unsaved = !newest.equals(saved);
      }
      try {
        if (unsaved) {
          side.write(text);
        } else {
          side.remove();
        }
        isReported = false;
        return true;
      } catch (UnusablePath e) {
        failed(String.valueOf(e.getMessage()));
        return false;
      }
    }
  }

  private void failed(String sentence) {
    boolean again;
    synchronized (state) {
      again = !due && !ended;
      due |= again;
    }
    if (again) {
      later.after(RETRY_NANOS, this::keepIfDue);
    }
    if (!isReported) {
      isReported = true;
      troubled.accept(sentence);
    }
  }

  /** Ends it, and leaves unsaved text in the side file. */
  void end() {
    synchronized (state) {
      ended = true;
    }
    boolean unused = keep();
    side.release();
  }

  /** Ends it, and discards unsaved text. */
  void endAndDrop() {
    synchronized (state) {
      newest = saved;
    }
    end();
  }
}
