package io.github.readfall.window.model;

import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.languages.translate.State;
import io.github.readfall.languages.translate.TranslatedCue;
import io.github.readfall.languages.translate.Translation;
import io.github.readfall.script.Script;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;

/**
 * The translations of the open episode: read, edited and saved. All methods are called on the event
 * thread, and so are listeners.
 */
public final class Translations {

  private final Executor events;
  private final Executor disk;
  private final LatestJob reading;
  private final Consumer<String> troubled;
  private final BackgroundFailures failures;
  private final List<Runnable> listeners = new ArrayList<>();
  private final Drafts drafts = new Drafts();
  private final Map<String, Translation> translations = new LinkedHashMap<>();
  private Optional<TranslationFiles> files = Optional.empty();
  private Optional<Script> script = Optional.empty();
  private long version;

  /**
   * No translations yet.
   *
   * @param events the event thread
   * @param disk reads and saves, one job after the other
   * @param troubled is given a sentence if something could not be read or saved
   * @param fault is given internal errors
   */
  public Translations(
      Executor events, Executor disk, Consumer<String> troubled, Consumer<Throwable> fault) {
    this.events = events;
    this.disk = disk;
    this.reading = new LatestJob(disk);
    this.troubled = troubled;
    this.failures = new BackgroundFailures(events, fault);
  }

  /** Takes the translations of another episode; they are read when its script is known. */
  public void open(TranslationFiles from) {
    clear();
    files = Optional.of(from);
  }

  /** Closes the translations. Unsaved changes are discarded. */
  public void clear() {
    version++;
    files = Optional.empty();
    script = Optional.empty();
    translations.clear();
    drafts.clear();
    listeners.forEach(Runnable::run);
  }

  /**
   * Reads the translations of a script.
   *
   * @param now the script as it is now
   * @param then is run when they are read, unless another script has been set in the meantime
   */
  public void read(Script now, Runnable then) {
    version++;
    long wanted = version;
    files.ifPresent(from -> reading.offer(failures.guarded(() -> read(from, now, wanted, then))));
  }

  private void read(TranslationFiles from, Script now, long wanted, Runnable then) {
    List<Translation> found = new ArrayList<>();
    List<String> troubles = new ArrayList<>();
    try {
      for (String language : from.languages()) {
        try {
          found.add(from.read(language, now));
        } catch (UnusablePath e) {
          troubles.add(String.valueOf(e.getMessage()));
        }
      }
    } catch (UnusablePath e) {
      troubles.add(String.valueOf(e.getMessage()));
    }
    events.execute(
        () -> {
          if (wanted == version) {
            troubles.forEach(troubled);
            script = Optional.of(now);
            take(found);
            then.run();
          }
        });
  }

  private void take(List<Translation> found) {
    translations.clear();
    found.forEach(read -> translations.put(read.language(), drafts.over(read)));
    listeners.forEach(Runnable::run);
  }

  /** All translations, in the order in which they are offered. */
  public List<Translation> all() {
    return List.copyOf(translations.values());
  }

  /** The translation into a language. */
  public Optional<Translation> in(String language) {
    return Optional.ofNullable(translations.get(language));
  }

  /** Sets the words of a cue in a language. */
  public void typed(String language, String cueId, String words) {
    change(language, cueId, cue -> cue.target().equals(words) ? cue : cue.saying(words));
  }

  /** Sets the state of a cue in a language. */
  public void mark(String language, String cueId, State state) {
    change(language, cueId, cue -> cue.state() == state ? cue : cue.marked(state));
  }

  private void change(String language, String cueId, UnaryOperator<TranslatedCue> edit) {
    Optional<TranslatedCue> before = in(language).flatMap(whole -> whole.cue(cueId));
    Optional<TranslatedCue> after = before.map(edit);
    if (!after.equals(before)) {
      after.ifPresent(cue -> put(language, cue));
      listeners.forEach(Runnable::run);
    }
  }

  private void put(String language, TranslatedCue cue) {
    drafts.put(new Drafts.Draft(language, cue));
    translations.computeIfPresent(language, (tag, whole) -> whole.with(cue));
  }

  /** Whether there are unsaved changes. */
  public boolean hasUnsaved() {
    return !drafts.isEmpty();
  }

  /**
   * Saves the unsaved changes.
   *
   * @param then is run when that has been tried
   */
  public void save(Runnable then) {
    for (Drafts.Draft draft : drafts.all()) {
      files.ifPresent(
          to ->
              script.ifPresent(now -> disk.execute(failures.guarded(() -> save(to, now, draft)))));
    }
    disk.execute(() -> events.execute(then));
  }

  private void save(TranslationFiles to, Script now, Drafts.Draft draft) {
    try {
      to.save(draft.language(), now, draft.cue());
      events.execute(() -> saved(draft));
    } catch (UnusablePath e) {
      events.execute(() -> troubled.accept(String.valueOf(e.getMessage())));
    }
  }

  private void saved(Drafts.Draft draft) {
    drafts.saved(draft);
    listeners.forEach(Runnable::run);
  }

  /** Adds a listener that is called when a translation has changed or a change has been saved. */
  public void onChange(Runnable listener) {
    listeners.add(listener);
  }
}
