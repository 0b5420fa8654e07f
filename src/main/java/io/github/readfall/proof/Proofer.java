package io.github.readfall.proof;

import io.github.readfall.finding.Finding;
import io.github.readfall.font.FontShelf;
import io.github.readfall.galley.Galley;
import io.github.readfall.rules.RuleBook;
import io.github.readfall.series.Episode;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.series.UnusablePath;
import io.github.readfall.typeset.SetBalloon;
import io.github.readfall.typeset.SetEpisode;
import io.github.readfall.typeset.ShapedCue;
import io.github.readfall.typeset.Typesetter;
import java.util.ArrayList;
import java.util.List;
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

  private static double ms(long from, long to) {
    return (to - from) / NANOS_PER_MS;
  }
}
