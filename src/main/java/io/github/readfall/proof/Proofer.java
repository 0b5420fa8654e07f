package io.github.readfall.proof;

import io.github.readfall.finding.Finding;
import io.github.readfall.font.FontShelf;
import io.github.readfall.galley.Galley;
import io.github.readfall.plan.EpisodePlan;
import io.github.readfall.plan.EpisodePlanner;
import io.github.readfall.plan.SeriesAverage;
import io.github.readfall.rules.RuleBook;
import io.github.readfall.series.Episode;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.series.UnusablePath;
import io.github.readfall.typeset.SetBalloon;
import io.github.readfall.typeset.SetEpisode;
import io.github.readfall.typeset.ShapedCue;
import io.github.readfall.typeset.Typesetter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.LongSupplier;

/** Reads, sets and checks episodes: what both faces of the program do. */
public final class Proofer {

  private static final double NANOS_PER_MS = 1e6;

  private final FontShelf bundled;
  private final LongSupplier nanos;

  /**
   * Works with the bundled faces.
   *
   * @param nanos a clock in nanoseconds, for the timings
   */
  public Proofer(FontShelf bundled, LongSupplier nanos) {
    this.bundled = bundled;
    this.nanos = nanos;
  }

  /**
   * Sets every balloon of an episode and checks what can be checked before it has a place.
   *
   * @throws UnusablePath where its files cannot be read at all
   */
  public FitProof fit(EpisodeFiles files) throws UnusablePath {
    long start = nanos.getAsLong();
    Episode episode = Episode.read(files, bundled);
    long read = nanos.getAsLong();
    Typesetter typesetter = new Typesetter(episode.shelf(), episode.style());
    List<ShapedCue> shaped = typesetter.shape(episode.script());
    long shape = nanos.getAsLong();
    List<SetBalloon> balloons = shaped.stream().map(typesetter::fit).toList();
    SetEpisode set = typesetter.episode(episode.script(), balloons);
    long fit = nanos.getAsLong();
    List<Finding> findings = new ArrayList<>(episode.findings());
    findings.addAll(set.findings());
    findings.addAll(RuleBook.check(Galley.unplaced(set)));
    long check = nanos.getAsLong();
    Timings timings = new Timings(ms(start, read), ms(read, shape), ms(shape, fit), ms(fit, check));
    return new FitProof(episode, set, findings, timings);
  }

  /**
   * Plans an episode: how tall it is, how long it is read, where to cut and split it.
   *
   * @throws UnusablePath where its files cannot be read at all
   */
  public PlanProof plan(EpisodeFiles files) throws UnusablePath {
    return plan(List.of(files), OptionalInt.empty()).get(0);
  }

  /**
   * Plans episodes, each beside the others of its series.
   *
   * @param parts how many to split each into; empty to split only what is too tall
   * @throws UnusablePath where their files cannot be read at all
   */
  public List<PlanProof> plan(List<EpisodeFiles> episodes, OptionalInt parts) throws UnusablePath {
    List<PlanProof> alone = new ArrayList<>();
    Map<Path, EpisodePlan> plans = new LinkedHashMap<>();
    for (EpisodeFiles files : episodes) {
      PlanProof proof = planAlone(files, parts);
      alone.add(proof);
      plans.put(whole(files), proof.plan());
    }
    List<PlanProof> proofs = new ArrayList<>();
    for (int i = 0; i < alone.size(); i++) {
      PlanProof proof = alone.get(i);
      List<EpisodePlan> others = others(episodes.get(i), plans);
      proofs.add(new PlanProof(proof.fit(), proof.plan(), SeriesAverage.of(others)));
    }
    return proofs;
  }

  private PlanProof planAlone(EpisodeFiles files, OptionalInt parts) throws UnusablePath {
    FitProof fit = fit(files);
    long start = nanos.getAsLong();
    EpisodePlan plan = EpisodePlanner.plan(fit.set(), Optional.empty(), parts);
    List<Finding> findings = new ArrayList<>(fit.findings());
    findings.addAll(plan.findings());
    Timings timings = fit.timings().withMoreChecks(ms(start, nanos.getAsLong()));
    FitProof all = new FitProof(fit.episode(), fit.set(), findings, timings);
    return new PlanProof(all, plan, Optional.empty());
  }

  /** The plans of the other episodes of a series; one that cannot be read does not count. */
  private List<EpisodePlan> others(EpisodeFiles files, Map<Path, EpisodePlan> known) {
    List<EpisodePlan> others = new ArrayList<>();
    for (EpisodeFiles other : files.siblings()) {
      Path script = whole(other);
      if (!known.containsKey(script)) {
        planned(other).ifPresent(plan -> known.put(script, plan));
      }
      Optional.ofNullable(known.get(script)).ifPresent(others::add);
    }
    return others;
  }

  private Optional<EpisodePlan> planned(EpisodeFiles files) {
    try {
      Episode episode = Episode.read(files, bundled);
      SetEpisode set = new Typesetter(episode.shelf(), episode.style()).set(episode.script());
      return Optional.of(EpisodePlanner.plan(set, Optional.empty(), OptionalInt.empty()));
    } catch (UnusablePath e) {
      return Optional.empty();
    }
  }

  private static Path whole(EpisodeFiles files) {
    return files.script().toAbsolutePath().normalize();
  }

  private static double ms(long from, long to) {
    return (to - from) / NANOS_PER_MS;
  }
}
