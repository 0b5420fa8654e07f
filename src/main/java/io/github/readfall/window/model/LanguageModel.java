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
 * The open episode in its other languages, set into the outlines of its strip.
 *
 * <p>When the strip is settled its translations are read and fitted one after the other, the shown
 * ones first; after an edit only the edited cue is fitted again. Results for an older strip or
 * translation are discarded. All methods are called on the event thread, and so are listeners.
 */
public final class LanguageModel {

  private final ModelThreads threads;
  private final Translations translations;
  private final LatestJob quick;
  private final LatestJob thorough;
  private final Function<EditionSnapshot, StripScene> picture;
  private final BackgroundFailures failures;
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

  /** A fitted translation. */
  private record Fit(Strip strip, EditionSnapshot edition) {}

  /**
   * A model without a strip.
   *
   * @param translations of the episode
   * @param picture makes the scene that views show, on any thread
   * @param fault is given internal errors
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
    this.failures = new BackgroundFailures(threads.events(), fault);
    translations.onChange(this::changed);
  }

  /** Takes another strip, or the same with another script. */
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

  /** Reads the translations again, which other programs may have changed. */
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

  /** The latest fit of the episode in a language; empty until it is known. */
  public Optional<FittedEdition> fitted(String language) {
    return Optional.ofNullable(fits.get(language)).map(fit -> fit.edition().fitted());
  }

  /** Whether nothing is left to be fitted. */
  public boolean isSettled() {
    return version == read && next().isEmpty();
  }

  /** Sets the languages whose scenes are wanted, now and after every change. */
  public void setShownLanguages(Set<String> languages) {
    Set<String> before = seen;
    seen = Set.copyOf(languages);
    for (String language : seen) {
      Fit fit = fits.get(language);
      if (!before.contains(language) && fit != null) {
        threads.quick().execute(failures.guarded(() -> paint(fit.edition())));
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

  /** Fits the next translation, the most urgent first. */
  private void work() {
    next()
        .ifPresent(
            job -> {
              Optional<FittedEdition> before = known(job);
              if (before.isPresent()) {
                quick.offer(failures.guarded(() -> again(job, before.get())));
              } else if (underWay.filter(job::equals).isEmpty()) {
                underWay = Optional.of(job);
                thorough.offer(failures.guarded(() -> fit(job)));
              }
            });
  }

  /** The first translation without a present fit; shown ones come first. */
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

  /** The fit of a translation, perhaps with other words, in the same strip. */
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

  /** Shows every fit of the present strip, even if the translation has changed since. */
  private void publish(Job job, EditionSnapshot edition, Optional<StripScene> made) {
    underWay = underWay.filter(other -> !other.equals(job));
    if (strip.filter(now -> now.version() == job.strip().version()).isPresent()) {
      fits.put(edition.language(), new Fit(job.strip(), edition));
      fittedListeners.forEach(listener -> listener.accept(edition));
      made.ifPresentOrElse(p -> show(edition, p), () -> paintIfSeen(edition));
      work();
    }
  }

  /** Makes the scene if the language came to be shown while it was fitted. */
  private void paintIfSeen(EditionSnapshot edition) {
    if (seen.contains(edition.language())) {
      threads.quick().execute(failures.guarded(() -> paint(edition)));
    }
  }

  /** Adds a listener for every fitted edition. */
  public void onFitted(Consumer<EditionSnapshot> listener) {
    fittedListeners.add(listener);
  }

  /** Adds a listener for every shown edition and its scene. */
  public void onScene(BiConsumer<EditionSnapshot, StripScene> listener) {
    pictureListeners.add(listener);
  }
}
