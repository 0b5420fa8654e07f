package io.github.readfall.window.model;

import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.base.wording.Wording;
import io.github.readfall.lettering.style.StyleText;
import io.github.readfall.lettering.toml.TomlValue;
import io.github.readfall.lettering.toml.UnchangeableText;
import io.github.readfall.series.Episode;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.series.StyleFile;
import java.util.Optional;
import java.util.concurrent.Executor;

/**
 * The house style of the open series: shown, tried on a balloon, and changed in its file one value
 * at a time. All methods are called on the event thread, and so is the listener.
 */
public final class StyleModel {

  private final ModelThreads threads;
  private final Executor disk;
  private final LatestJob specimens;
  private final StyleModelListener listener;
  private final String sample;
  private final BackgroundFailures failures;
  private Optional<StyleFile> file = Optional.empty();
  private Optional<Episode> episode = Optional.empty();
  private Optional<StyleSubject> subject = Optional.empty();
  private Optional<Step> last = Optional.empty();
  private StyleSnapshot shown = StyleSnapshot.BUILT_IN;
  private int writing;
  private long opening;

  /** The text of a file before and after a change. */
  private record Step(String before, String after) {
    Step back() {
      return new Step(/* before= */ after, /* after= */ before);
    }
  }

  /**
   * A model without a style.
   *
   * @param disk reads and writes, one job after the other
   * @param sample the words on a balloon if the script has none
   */
  public StyleModel(
      ModelThreads threads, Executor disk, StyleModelListener listener, String sample) {
    this.threads = threads;
    this.disk = disk;
    this.specimens = new LatestJob(threads.thorough());
    this.listener = listener;
    this.sample = sample;
    this.failures = new BackgroundFailures(threads.events(), listener::failed);
  }

  /** Takes the style of an episode's series, in place of the former one. */
  public void open(EpisodeFiles files) {
    opening++;
    file = StyleFile.of(files);
    episode = Optional.empty();
    last = Optional.empty();
    show(StyleSnapshot.BUILT_IN);
    readAgain();
  }

  /** Reads the file again, which other programs may have changed. */
  public void readAgain() {
    file.ifPresent(
        from -> {
          long of = opening;
          disk.execute(failures.guarded(() -> read(from, of)));
        });
  }

  private void read(StyleFile from, long of) {
    try {
      StyleSnapshot read = StyleSnapshot.of(from.text());
      threads.events().execute(() -> take(read, of));
    } catch (UnusablePath e) {
      threads.events().execute(() -> listener.refused(String.valueOf(e.getMessage())));
    }
  }

  /** Takes a style that was read; while one is being written, it is out of date. */
  private void take(StyleSnapshot read, long of) {
    if (of == opening && writing == 0 && !read.isLike(shown)) {
      last = last.filter(step -> isText(read, step.after()));
      show(read);
    }
  }

  private static boolean isText(StyleSnapshot style, String text) {
    return style.text().map(StyleText::text).filter(text::equals).isPresent();
  }

  private void show(StyleSnapshot next) {
    shown = next;
    listener.shown(next);
    specimen(next);
  }

  /** Sets the episode whose words are shown, and makes the specimen again. */
  public void setEpisode(Episode one) {
    episode = Optional.of(one);
    specimen(shown);
  }

  /** Shows another voice, manner or limit. */
  public void selectSubject(StyleSubject one) {
    subject = Optional.of(one);
    specimen(shown);
  }

  /** The latest snapshot of the style. */
  public StyleSnapshot shown() {
    return shown;
  }

  /** Whether there is a change to undo. */
  public boolean canRevert() {
    return last.isPresent();
  }

  private void specimen(StyleSnapshot style) {
    specimen(() -> style);
  }

  /** A style that may have to be computed. */
  private interface Trial {
    StyleSnapshot style() throws UnchangeableText;
  }

  private void specimen(Trial trial) {
    episode.ifPresent(
        like ->
            subject.ifPresent(
                of -> specimens.offer(failures.guarded(() -> specimen(of, trial, like)))));
  }

  private void specimen(StyleSubject of, Trial trial, Episode like) {
    try {
      StyleSnapshot style = trial.style();
      Optional<Specimen> made = Specimen.of(of, style.style(), like, sample);
      threads
          .events()
          .execute(
              () -> {
                if (subject.filter(of::equals).isPresent()) {
                  listener.previewed(style, made);
                }
              });
    } catch (UnchangeableText e) {
      return; // reported when the value is written
    }
  }

  /** Shows the effect of a value, or of the built-in one if empty. Nothing is written. */
  public void preview(StyleEntry entry, Optional<TomlValue> value) {
    StyleSnapshot now = shown;
    specimen(() -> now.with(entry, value));
  }

  /** Writes a value, or removes it from the file if empty; nothing else changes in the file. */
  public void write(StyleEntry entry, Optional<TomlValue> value) {
    try {
      StyleSnapshot next = shown.with(entry, value);
      Optional<String> before = shown.text().map(StyleText::text);
      Optional<String> after = next.text().map(StyleText::text);
      if (before.isPresent() && after.isPresent() && !before.equals(after)) {
        Step step = new Step(before.get(), after.get());
        store(next, step, Optional.of(step));
      } else {
        specimen(shown);
      }
    } catch (UnchangeableText e) {
      listener.refused(String.valueOf(e.getMessage()));
    }
  }

  /** Undoes the last change: the file is as before, to the byte. */
  public void revert() {
    last.ifPresent(step -> store(StyleSnapshot.of(step.before()), step.back(), Optional.empty()));
  }

  private void store(StyleSnapshot next, Step step, Optional<Step> undo) {
    file.ifPresent(
        to -> {
          last = undo;
          writing++;
          show(next);
          long of = opening;
          disk.execute(
              failures.guarded(
                  () -> {
                    Optional<String> problem = problem(to, step);
                    threads.events().execute(() -> stored(problem, of));
                  }));
        });
  }

  private static Optional<String> problem(StyleFile to, Step step) {
    try {
      return to.replace(step.before(), step.after())
          ? Optional.empty()
          : Optional.of(Wording.of("style.overtaken", to.path()));
    } catch (UnusablePath e) {
      return Optional.of(String.valueOf(e.getMessage()));
    }
  }

  private void stored(Optional<String> problem, long of) {
    writing--;
    if (of != opening) {
      return;
    }
    if (problem.isPresent()) {
      last = Optional.empty();
      listener.refused(problem.get());
      readAgain();
    } else {
      listener.written();
    }
  }
}
