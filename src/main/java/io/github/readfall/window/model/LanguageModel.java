package io.github.readfall.window.model;

import io.github.readfall.job.StripProof;
import io.github.readfall.job.polyglot.Edition;
import io.github.readfall.job.polyglot.EditionFitter;
import io.github.readfall.job.polyglot.FittedEdition;
import io.github.readfall.languages.translate.Translation;
import io.github.readfall.window.canvas.StripScene;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * The episode that is worked on in its other languages, set into the outlines of its strip.
 *
 * <p>When the strip is settled its translations are read and fitted one after the other, those that
 * are seen first; after an edit only the cue that was edited is. Work that has been overtaken is
 * dropped. All methods are called on the thread of the window, and listeners are told on it.
 */
public final class LanguageModel {

  private final ModelThreads threads;
  private final Translations translations;
  private final LatestJob quick;
  private final LatestJob thorough;
  private final Function<EditionSnapshot, StripScene> picture;
  private final BackgroundFailures faults;
  private final List<Consumer<EditionSnapshot>> fittedListeners = new ArrayList<>();
  private final List<BiConsumer<EditionSnapshot, StripScene>> pictureListeners = new ArrayList<>();
  private final Map<String, Fit> fits = new HashMap<>();
  private Optional<Strip> strip = Optional.empty();
  private Optional<Job> underWay = Optional.empty();
  private Set<String> seen = Set.of();
  private long version;
  private long read;

  /** A strip that translations are fitted into. */
  private record Strip(long version, StripProof proof, EditionFitter fitter) {}

  /** A translation to be fitted. */
  private record Job(Strip strip, Translation translation, boolean isSeen) {}

  /** A translation as it was fitted. */
  private record Fit(Strip strip, EditionSnapshot edition) {}

  /**
   * A desk with no strip on it.
   *
   * @param translations of the episode
   * @param picture makes what views show, on any thread
   * @param fault hears of faults of our own
   */
  public LanguageModel(
      ModelThreads threads,
      Translations translations,
      Function<EditionSnapshot, StripScene> picture,
      Consumer<Throwable> fault) {
    this.threads = threads;
    this.translations = translations;
    this.picture = picture;
    this.quick = new LatestJob(threads.quick());
    this.thorough = new LatestJob(threads.thorough());
    this.faults = new BackgroundFailures(threads.events(), fault);
    translations.onChange(this::changed);
  }

  /** The strip is another now, or its script says something else. */
  public void settled(StripProof proof) {
    version++;
    Strip next = new Strip(version, proof, new EditionFitter(proof.galley(), proof.layout()));
    translations.read(
        proof.episode().script(),
        () -> {
          strip = Optional.of(next);
          read = next.version();
          work();
        });
  }

  /** Reads what others have written of the translations since. */
  public void readAgain() {
    strip.ifPresent(last -> translations.read(last.proof().episode().script(), this::work));
  }

  private void changed() {
    List<String> languages = translations.all().stream().map(Translation::language).toList();
    fits.keySet().retainAll(languages);
    if (languages.isEmpty()) {
      strip = Optional.empty();
    }
    work();
  }

  /** How the episode last went into the outlines in a language; empty until that is known. */
  public Optional<FittedEdition> fitted(String language) {
    return Optional.ofNullable(fits.get(language)).map(fit -> fit.edition().fitted());
  }

  /** Whether nothing is left to be worked out. */
  public boolean isSettled() {
    return version == read && next().isEmpty();
  }

  /** Pictures of these languages are wanted, now and after every change. */
  public void setShownLanguages(Set<String> languages) {
    Set<String> before = seen;
    seen = Set.copyOf(languages);
    for (String language : seen) {
      Fit fit = fits.get(language);
      if (!before.contains(language) && fit != null) {
        threads.quick().execute(faults.guarded(() -> paint(fit.edition())));
      }
    }
    work();
  }

  private void paint(EditionSnapshot edition) {
    StripScene made = picture.apply(edition);
    threads.events().execute(() -> show(edition, made));
  }

  private void show(EditionSnapshot edition, StripScene made) {
    if (fitted(edition.language()).filter(edition.fitted()::equals).isPresent()) {
      pictureListeners.forEach(listener -> listener.accept(edition, made));
    }
  }

  /** Works on what is not known yet: what somebody waits for first. */
  private void work() {
    next()
        .ifPresent(
            job -> {
              Optional<FittedEdition> before = known(job);
              if (before.isPresent()) {
                quick.offer(faults.guarded(() -> again(job, before.get())));
              } else if (underWay.filter(job::equals).isEmpty()) {
                underWay = Optional.of(job);
                thorough.offer(faults.guarded(() -> fit(job)));
              }
            });
  }

  /** The first that is not fitted as it is now; those that are seen come first. */
  private Optional<Job> next() {
    return strip.flatMap(
        now ->
            Stream.concat(
                    translations.all().stream().filter(this::isSeen), translations.all().stream())
                .map(translation -> new Job(now, translation, isSeen(translation)))
                .filter(job -> known(job).filter(fit -> isOf(fit, job.translation())).isEmpty())
                .findFirst());
  }

  private boolean isSeen(Translation translation) {
    return seen.contains(translation.language());
  }

  private static boolean isOf(FittedEdition fitted, Translation translation) {
    return fitted.edition().translation().equals(translation);
  }

  /** How a translation, perhaps with other words, went into the same strip. */
  private Optional<FittedEdition> known(Job job) {
    return Optional.ofNullable(fits.get(job.translation().language()))
        .filter(fit -> fit.strip().version() == job.strip().version())
        .map(fit -> fit.edition().fitted());
  }

  private void fit(Job job) {
    Edition edition = Edition.of(job.strip().proof().episode(), job.translation());
    publishLater(job, job.strip().fitter().fit(edition));
  }

  private void again(Job job, FittedEdition before) {
    Edition edition =
        before.edition().saying(job.translation(), job.strip().proof().episode().script());
    publishLater(job, job.strip().fitter().again(edition, before));
  }

  private void publishLater(Job job, FittedEdition fitted) {
    EditionSnapshot edition = new EditionSnapshot(job.strip().proof().episode(), fitted);
    Optional<StripScene> made =
        job.isSeen() ? Optional.of(picture.apply(edition)) : Optional.empty();
    threads.events().execute(() -> publish(job, edition, made));
  }

  /** Who types fast sees every step that was worked out. */
  private void publish(Job job, EditionSnapshot edition, Optional<StripScene> made) {
    underWay = underWay.filter(other -> !other.equals(job));
    if (strip.filter(now -> now.version() == job.strip().version()).isPresent()) {
      fits.put(edition.language(), new Fit(job.strip(), edition));
      fittedListeners.forEach(listener -> listener.accept(edition));
      made.ifPresentOrElse(p -> show(edition, p), () -> paintIfSeen(edition));
      work();
    }
  }

  /** It may have come to be seen while it was worked out. */
  private void paintIfSeen(EditionSnapshot edition) {
    if (seen.contains(edition.language())) {
      threads.quick().execute(faults.guarded(() -> paint(edition)));
    }
  }

  /** Tells of every edition that has been fitted. */
  public void onFitted(Consumer<EditionSnapshot> listener) {
    fittedListeners.add(listener);
  }

  /** Tells of every edition that is seen, and gives the picture of it. */
  public void onScene(BiConsumer<EditionSnapshot, StripScene> listener) {
    pictureListeners.add(listener);
  }
}
