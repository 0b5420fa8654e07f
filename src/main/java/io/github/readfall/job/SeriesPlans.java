package io.github.readfall.job;

import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.lettering.typeset.Typesetter;
import io.github.readfall.plan.EpisodePlan;
import io.github.readfall.plan.EpisodePlanner;
import io.github.readfall.plan.SeriesAverage;
import io.github.readfall.series.Episode;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.type.font.FontShelf;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.LongSupplier;

/** Plans episodes, each beside the others of its series; every episode is set once. */
final class SeriesPlans {

  private final Proofer proofer;
  private final FontShelf bundled;
  private final LongSupplier nanos;
  private final OtherLanguages languages;
  private final Map<Path, EpisodePlan> known = new HashMap<>();

  SeriesPlans(Proofer proofer, FontShelf bundled, LongSupplier nanos, OtherLanguages languages) {
    this.languages = languages;
    this.proofer = proofer;
    this.bundled = bundled;
    this.nanos = nanos;
  }

  List<PlanProof> of(List<EpisodeFiles> episodes, OptionalInt parts) throws UnusablePath {
    List<PlanProof> alone = new ArrayList<>();
    for (EpisodeFiles files : episodes) {
      alone.add(alone(files, parts));
    }
    List<PlanProof> proofs = new ArrayList<>();
    for (int i = 0; i < alone.size(); i++) {
      PlanProof proof = alone.get(i);
      Optional<SeriesAverage> others = SeriesAverage.of(others(episodes.get(i)));
      proofs.add(new PlanProof(proof.fit(), proof.plan(), others));
    }
    return proofs;
  }

  private PlanProof alone(EpisodeFiles files, OptionalInt parts) throws UnusablePath {
    FitProof fit = proofer.fit(files, languages);
    Stopwatch watch = new Stopwatch(nanos);
    EpisodePlan plan = EpisodePlanner.plan(fit.set(), fit.episode().layout(), parts);
    watch.mark();
    known.put(whole(files), plan);
    Timings timings = fit.timings().withPlacing(watch.ms(0));
    return new PlanProof(fit.with(plan.findings(), timings), plan, Optional.empty());
  }

  /** The plans of the other episodes of a series; one that cannot be read does not count. */
  private List<EpisodePlan> others(EpisodeFiles files) {
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
      return Optional.of(EpisodePlanner.plan(set, episode.layout(), OptionalInt.empty()));
    } catch (UnusablePath e) {
      return Optional.empty();
    }
  }

  private static Path whole(EpisodeFiles files) {
    return files.script().toAbsolutePath().normalize();
  }
}
