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
 * The episode that is worked on, and what was last worked out from it.
 *
 * <p>Whoever types sees first the new words in the old places ({@link Proofer#retouched}), then,
 * when the fingers rest, the strip as {@code check} has it. Work that has been overtaken is
 * dropped.
 *
 * <p>All methods are called on the thread of the window, and listeners are told on it.
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

  /** A strip that was checked, and from what. */
  private record Settled(StripProof proof, Surroundings around) {}

  /**
   * A desk with nothing on it.
   *
   * @param picture makes what views show, on any thread
   */
  public EpisodeModel(
      Proofer proofer, ModelThreads threads, Function<EpisodeSnapshot, StripScene> picture) {
    this.proofer = proofer;
    this.threads = threads;
    this.picture = picture;
    this.quick = new LatestJob(threads.quick());
    this.thorough = new LatestJob(threads.thorough());
  }

  /** Lays an episode on the desk, in place of what was there. */
  public void open(Surroundings around, String words) {
    clear();
    surroundings = Optional.of(around);
    text = words;
    settle();
  }

  /** Clears the desk. */
  public void clear() {
    opening++;
    version++;
    surroundings = Optional.empty();
    shown = Optional.empty();
    settled = Optional.empty();
    waiting.clear();
    text = "";
  }

  /** The script has other words now. */
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

  /** What surrounds the script is another now: the house style, faces or layout have changed. */
  public void setSurroundings(Surroundings around) {
    surroundings = Optional.of(around);
    version++;
    settle();
  }

  /** The strip is laid out in another way now, as it is worked on by hand. */
  public void setLayout(Optional<ReadLayout> other) {
    surroundings.ifPresent(around -> setSurroundings(around.withLaid(other)));
  }

  public Optional<Surroundings> surroundings() {
    return surroundings;
  }

  /** Whether what is known is placed and checked, and of the words as they are now. */
  public boolean isSettled() {
    return surroundings.isEmpty()
        || shown.filter(last -> last.isSettled() && shownVersion == version).isPresent();
  }

  /** Does something as soon as the strip is settled; never, if the desk is cleared before. */
  public void whenSettled(Runnable then) {
    if (isSettled() && waiting.isEmpty()) {
      then.run();
    } else {
      waiting.add(then);
    }
  }

  /** The strip that was checked last; a moment old where the desk is not settled. */
  public Optional<StripProof> proof() {
    return settled.map(Settled::proof);
  }

  /** What is known; empty until the first strip is there. */
  public Optional<EpisodeSnapshot> shown() {
    return shown;
  }

  /** Tells of every newer state, and gives the picture of it. */
  public void onSnapshot(BiConsumer<EpisodeSnapshot, StripScene> listener) {
    listeners.add(listener);
  }

  /** Tells of every strip that is placed and checked, after it has been shown. */
  public void onSettled(Consumer<StripProof> listener) {
    settledListeners.add(listener);
  }

  /** Tells of faults of our own, so that they are not swallowed. */
  public void onFault(Consumer<Throwable> listener) {
    faultListeners.add(listener);
  }

  /**
   * One version of an episode that was opened.
   *
   * @param before what of it is still good where only words and layout have changed
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
   * Who types or pulls fast sees every step that was worked out, none after a later one; but a
   * strip that is settled must be of the words as they are now.
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
