package io.github.readfall.window.model;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.job.Proofer;
import io.github.readfall.job.StripProof;
import io.github.readfall.plan.EpisodePlan;
import io.github.readfall.plan.EpisodePlanner;
import io.github.readfall.series.Episode;
import io.github.readfall.series.Surroundings;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.json.ReadLayout;
import io.github.readfall.window.canvas.StripScene;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * The open episode, and the latest results computed from it.
 *
 * <p>After each key the new words are shown in the old places ({@link Proofer#retouched}); after a
 * pause, the strip as {@code check} has it. Results for an older text are discarded.
 *
 * <p>All methods are called on the event thread, and so are listeners.
 */
public final class EpisodeModel {

  private final Proofer proofer;
  private final ModelThreads threads;
  private final LatestJob quick;
  private final LatestJob thorough;
  private final Function<EpisodeSnapshot, StripScene> picture;
  private final List<BiConsumer<EpisodeSnapshot, StripScene>> listeners = new ArrayList<>();
  private final List<Consumer<StripProof>> settledListeners = new ArrayList<>();
  private final List<Consumer<Throwable>> faultListeners = new ArrayList<>();
  private Optional<Surroundings> surroundings = Optional.empty();
  private Optional<EpisodeSnapshot> shown = Optional.empty();
  private final List<Runnable> waiting = new ArrayList<>();
  private Optional<Settled> settled = Optional.empty();
  private String text = "";
  private long opening;
  private long version;
  private long shownVersion;

  /** A strip that was checked, and the surroundings that it was made with. */
  private record Settled(StripProof proof, Surroundings around) {}

  /**
   * A model without an episode.
   *
   * @param picture makes the scene that views show, on any thread
   */
  public EpisodeModel(
      Proofer proofer, ModelThreads threads, Function<EpisodeSnapshot, StripScene> picture) {
    this.proofer = proofer;
    this.threads = threads;
    this.picture = picture;
    this.quick = new LatestJob(threads.quick());
    this.thorough = new LatestJob(threads.thorough());
  }

  /** Takes an episode, in place of the former one. */
  public void open(Surroundings around, String words) {
    clear();
    surroundings = Optional.of(around);
    text = words;
    settle();
  }

  /** Closes the episode. */
  public void clear() {
    opening++;
    version++;
    surroundings = Optional.empty();
    shown = Optional.empty();
    settled = Optional.empty();
    waiting.clear();
    text = "";
  }

  /** Sets the text of the script. */
  public void setText(String words) {
    if (words.equals(text) || surroundings.isEmpty()) {
      return;
    }
    text = words;
    version++;
    if (settled.isPresent() && shown.isPresent()) {
      Job job = job(surroundings.get());
      StripProof before = settled.get().proof();
      EpisodeSnapshot last = shown.get();
      quick.offer(guarded(() -> retouch(job, before, last)));
      threads.later().run(guarded(() -> threads.events().execute(() -> settle(job))));
    } else {
      settle();
    }
  }

  /** Sets the surroundings of the script: house style, faces or layout have changed. */
  public void setSurroundings(Surroundings around) {
    surroundings = Optional.of(around);
    version++;
    settle();
  }

  /** Sets the layout, which was changed by hand. */
  public void setLayout(Optional<ReadLayout> other) {
    surroundings.ifPresent(around -> setSurroundings(around.withLaid(other)));
  }

  public Optional<Surroundings> surroundings() {
    return surroundings;
  }

  /** Whether the strip is placed and checked for the present text and surroundings. */
  public boolean isSettled() {
    return surroundings.isEmpty()
        || shown.filter(last -> last.isSettled() && shownVersion == version).isPresent();
  }

  /** Runs something as soon as the strip is settled; never, if the episode is closed before. */
  public void whenSettled(Runnable then) {
    if (isSettled() && waiting.isEmpty()) {
      then.run();
    } else {
      waiting.add(then);
    }
  }

  /** The strip that was checked last; out of date while the model is not settled. */
  public Optional<StripProof> proof() {
    return settled.map(Settled::proof);
  }

  /** The latest snapshot; empty until the first strip is computed. */
  public Optional<EpisodeSnapshot> shown() {
    return shown;
  }

  /** Adds a listener for each newer snapshot and its scene. */
  public void onSnapshot(BiConsumer<EpisodeSnapshot, StripScene> listener) {
    listeners.add(listener);
  }

  /**
   * Adds a listener for every strip that is placed and checked; called after the snapshot's
   * listeners.
   */
  public void onSettled(Consumer<StripProof> listener) {
    settledListeners.add(listener);
  }

  /** Adds a listener for internal errors. */
  public void onFault(Consumer<Throwable> listener) {
    faultListeners.add(listener);
  }

  /**
   * One version of an open episode.
   *
   * @param before the last strip, if only words and layout have changed since
   */
  private record Job(
      long opening,
      long version,
      Surroundings surroundings,
      String text,
      Optional<StripProof> before) {}

  private Job job(Surroundings around) {
    Optional<StripProof> before =
        settled
            .filter(last -> last.around().faces().equals(around.faces()))
            .filter(last -> last.around().style().equals(around.style()))
            .map(Settled::proof);
    return new Job(opening, version, around, text, before);
  }

  private void settle() {
    surroundings.ifPresent(around -> settle(job(around)));
  }

  private void settle(Job job) {
    if (job.version() == version) {
      thorough.offer(guarded(() -> prove(job)));
    }
  }

  private void retouch(Job job, StripProof before, EpisodeSnapshot last) {
    Episode episode = job.surroundings().with(job.text());
    Galley galley = proofer.retouched(episode, before);
    EpisodeSnapshot next =
        new EpisodeSnapshot(job.text(), episode, galley, last.plan(), last.findings(), false);
    StripScene made = picture.apply(next);
    threads.events().execute(() -> publish(job, next, made, Optional.empty()));
  }

  private void prove(Job job) {
    Episode episode = job.surroundings().with(job.text());
    StripProof proof =
        job.before()
            .map(before -> proofer.checkAgain(episode, before))
            .orElseGet(() -> proofer.check(episode));
    EpisodePlan plan =
        EpisodePlanner.plan(proof.galley().set(), Optional.of(proof.layout()), OptionalInt.empty());
    List<Finding> findings =
        Stream.concat(proof.findings().stream(), plan.findings().stream()).distinct().toList();
    EpisodeSnapshot next =
        new EpisodeSnapshot(job.text(), proof.episode(), proof.galley(), plan, findings, true);
    StripScene made = picture.apply(next);
    threads.events().execute(() -> publish(job, next, made, Optional.of(proof)));
  }

  /**
   * Shows every result while the user types or drags, but none after a later one; a settled strip
   * is shown only if it has the present text.
   */
  private void publish(Job job, EpisodeSnapshot next, StripScene made, Optional<StripProof> proof) {
    boolean isLate = job.opening() != opening || job.version() < shownVersion;
    if (isLate || (proof.isPresent() && !job.text().equals(text))) {
      return;
    }
    shownVersion = job.version();
    proof.ifPresent(found -> settled = Optional.of(new Settled(found, job.surroundings())));
    shown = Optional.of(next);
    listeners.forEach(listener -> listener.accept(next, made));
    proof.ifPresent(found -> settledListeners.forEach(listener -> listener.accept(found)));
    while (isSettled() && !waiting.isEmpty()) {
      waiting.remove(0).run(); // which may change the strip: the next waits for that
    }
  }

  private Runnable guarded(Runnable work) {
    return () -> {
      try {
        work.run();
      } catch (RuntimeException | Error fault) {
        threads.events().execute(() -> faultListeners.forEach(l -> l.accept(fault)));
      }
    };
  }
}
