package io.github.readfall.job;

import io.github.readfall.art.ArtFiles;
import io.github.readfall.art.ArtFindings;
import io.github.readfall.art.DetailMap;
import io.github.readfall.art.StripArt;
import io.github.readfall.art.StripRows;
import io.github.readfall.art.UnreadableArt;
import io.github.readfall.art.panels.FoundPanels;
import io.github.readfall.art.panels.PanelFinder;
import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.base.finding.Finding;
import io.github.readfall.job.polyglot.Edition;
import io.github.readfall.job.polyglot.EditionFitter;
import io.github.readfall.job.polyglot.FitMatrix;
import io.github.readfall.job.polyglot.FittedEdition;
import io.github.readfall.job.polyglot.SharedBalloons;
import io.github.readfall.lettering.typeset.BalloonRequest;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.lettering.typeset.ShapedCue;
import io.github.readfall.lettering.typeset.Typesetter;
import io.github.readfall.plan.PanelPlanner;
import io.github.readfall.rules.RuleBook;
import io.github.readfall.series.Episode;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.series.LayoutFile;
import io.github.readfall.strip.LaidBalloon;
import io.github.readfall.strip.Layout;
import io.github.readfall.strip.anchor.Anchoring;
import io.github.readfall.strip.galley.Compositor;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.type.font.FontShelf;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.LongSupplier;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/** Reads, sets and checks episodes for the command line and the window. */
public final class Proofer {

  private static final Way AS_LAID =
      new Way(true, (maker, set, layout) -> StripMaker.asLaid(set, layout));

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
   * @throws UnusablePath if its files cannot be read at all
   */
  public FitProof fit(EpisodeFiles files) throws UnusablePath {
    return fit(files, OtherLanguages.NONE);
  }

  /**
   * Sets every balloon of an episode so that it holds the words of other languages too.
   *
   * @throws UnusablePath if its files cannot be read at all
   */
  public FitProof fit(EpisodeFiles files, OtherLanguages others) throws UnusablePath {
    Stopwatch watch = new Stopwatch(nanos);
    Episode read = Episode.read(files, bundled);
    List<Edition> editions = others.of(files, read);
    return fit(read.with(findings(editions)), shared(read, editions, Map.of()), watch);
  }

  private static FitProof fit(Episode episode, SharedBalloons shared, Stopwatch watch) {
    watch.mark();
    SetEpisode set = set(episode, shared.wanted(Map.of()), watch);
    watch.mark();
    List<Finding> findings =
        findings(episode, set, List.of(), RuleBook.check(Galley.unplaced(set)));
    watch.mark();
    return new FitProof(episode, set, findings, shared, timings(watch));
  }

  private static List<Finding> findings(List<Edition> editions) {
    return editions.stream().flatMap(edition -> edition.findings().stream()).toList();
  }

  private static SharedBalloons shared(
      Episode episode, List<Edition> editions, Map<String, BalloonRequest> wanted) {
    return editions.isEmpty()
        ? SharedBalloons.NONE
        : SharedBalloons.of(Edition.original(episode), editions, wanted);
  }

  /**
   * Sets an episode's translations into the balloons of its strip.
   *
   * @throws UnusablePath if its files cannot be read at all
   */
  public LanguagesProof languages(EpisodeFiles files, OtherLanguages others) throws UnusablePath {
    StripProof original = check(files);
    EditionFitter fitter = new EditionFitter(original.galley(), original.layout());
    List<FittedEdition> editions =
        others.of(files, original.episode()).stream().map(fitter::fit).toList();
    return new LanguagesProof(original, FitMatrix.of(original.episode().script().cues(), editions));
  }

  /**
   * Plans an episode: how tall it is, how long it takes to read, where to cut and split it.
   *
   * @throws UnusablePath if its files cannot be read at all
   */
  public PlanProof plan(EpisodeFiles files) throws UnusablePath {
    return plan(List.of(files), OptionalInt.empty(), OtherLanguages.NONE).get(0);
  }

  /**
   * Plans episodes, each beside the others of its series.
   *
   * @param parts number of parts to split each into; empty to split only those too tall
   * @param others languages that balloons are to hold too
   * @throws UnusablePath if their files cannot be read at all
   */
  public List<PlanProof> plan(List<EpisodeFiles> episodes, OptionalInt parts, OtherLanguages others)
      throws UnusablePath {
    return new SeriesPlans(this, bundled, nanos, others).of(episodes, parts);
  }

  /**
   * Checks an episode's strip by its layout; what that leaves out is computed.
   *
   * @throws UnusablePath if its files cannot be read at all
   */
  public StripProof check(EpisodeFiles files) throws UnusablePath {
    Stopwatch watch = new Stopwatch(nanos);
    return check(readWithArt(files), watch);
  }

  /** An episode with the findings about its art. */
  private Episode readWithArt(EpisodeFiles files) throws UnusablePath {
    Episode read = Episode.read(files, bundled);
    int widthPx = read.style().strip().widthPx();
    return read.with(ArtFindings.of(StripArt.of(ArtFiles.of(files.script()), widthPx)));
  }

  /**
   * Finds an episode's panels in its art.
   *
   * @param pages of the art, from the top
   * @param watched wraps the art's rows, to report the progress of reading
   * @throws UnusablePath if its files or its art cannot be read, or if its layout has faults that
   *     would be lost when it is written
   */
  public PanelsProof panels(EpisodeFiles files, ArtFiles pages, UnaryOperator<StripRows> watched)
      throws UnusablePath {
    Episode episode = Episode.read(files, bundled);
    LayoutGuard.refuse(episode.findings(), LayoutFile.of(files));
    return panels(episode, pages, watched);
  }

  /**
   * Finds the panels of an episode that is already read.
   *
   * @param pages of the art, from the top
   * @param watched wraps the art's rows, to report the progress of reading
   * @throws UnusablePath if there is no art, or it cannot be read
   */
  public PanelsProof panels(Episode episode, ArtFiles pages, UnaryOperator<StripRows> watched)
      throws UnusablePath {
    FitProof fit = fit(episode, SharedBalloons.NONE, new Stopwatch(nanos));
    StripArt art = StripArt.of(pages, episode.style().strip().widthPx());
    if (!art.problems().isEmpty()) {
      throw new UnusablePath(art.problems().get(0));
    }
    if (art.pages().isEmpty()) {
      throw new UnusablePath(
          "There is no art to look at: put PNG or JPEG pages into "
              + ArtFiles.folder(episode.path())
              + ", or name them behind the episode.");
    }
    try {
      FoundPanels found = PanelFinder.find(watched.apply(StripRows.of(art)));
      return PanelsProof.of(fit, found, ArtFindings.of(art));
    } catch (UnreadableArt e) {
      throw new UnusablePath(String.valueOf(e.getMessage()));
    }
  }

  /** Checks the strip of an episode that is already read. */
  public StripProof check(Episode episode) {
    Stopwatch watch = new Stopwatch(nanos);
    return check(episode, watch);
  }

  private static StripProof check(Episode episode, Stopwatch watch) {
    return strip(episode, SharedBalloons.NONE, Proofer::set, watch, AS_LAID);
  }

  /**
   * Checks a strip like {@link #check(Episode)}, but sets only balloons that have changed.
   *
   * @param before the same episode as it was checked last, in the same faces
   */
  public StripProof checkAgain(Episode episode, StripProof before) {
    Setting again =
        (of, wanted, watch) -> {
          watch.mark();
          SetEpisode set =
              new Typesetter(of.shelf(), of.style())
                  .setAgain(of.script(), wanted, before.galley().set());
          watch.mark();
          return set;
        };
    return strip(episode, SharedBalloons.NONE, again, new Stopwatch(nanos), AS_LAID);
  }

  /**
   * Gives some balloons of an episode other places, and leaves all others where they are.
   *
   * @param balloons ids of their cues; one that is pinned, lettered or bleeds stays as well
   */
  public StripProof placeOnly(Episode episode, Set<String> balloons) {
    Way way = new Way(false, (maker, set, layout) -> maker.placedOnly(set, layout, balloons));
    return strip(episode, SharedBalloons.NONE, Proofer::set, new Stopwatch(nanos), way);
  }

  /** Places the balloons of an episode that is already read. */
  public StripProof place(Episode episode, PlaceOptions wish) {
    Way way = new Way(false, (maker, set, layout) -> maker.placed(set, layout, wish));
    return strip(episode, SharedBalloons.NONE, Proofer::set, new Stopwatch(nanos), way);
  }

  /**
   * Places an episode's balloons.
   *
   * @throws UnusablePath if its files cannot be read at all
   */
  public StripProof place(EpisodeFiles files, PlaceOptions wish) throws UnusablePath {
    return place(files, wish, OtherLanguages.NONE);
  }

  /**
   * Places an episode's balloons, each large enough for other languages too, except those that the
   * person has pinned or lettered.
   *
   * @throws UnusablePath if its files cannot be read at all
   */
  public StripProof place(EpisodeFiles files, PlaceOptions wish, OtherLanguages others)
      throws UnusablePath {
    return place(files, wish, others, DetailMap.NONE);
  }

  /**
   * Places an episode's balloons as above, preferably where the art is calm.
   *
   * @param detail of the episode's art
   * @throws UnusablePath if its files cannot be read at all
   */
  public StripProof place(
      EpisodeFiles files, PlaceOptions wish, OtherLanguages others, DetailMap detail)
      throws UnusablePath {
    Stopwatch watch = new Stopwatch(nanos);
    Episode original = readWithArt(files);
    List<Edition> editions = others.of(files, original);
    Episode read = original.with(findings(editions));
    SharedBalloons shared =
        shared(read, editions, wanted(read))
            .without(read.layout().map(StripMaker::held).orElse(Set.of()));
    Episode episode =
        read.layout()
            .map(layout -> read.withLayout(StripMaker.sharing(layout, shared)))
            .orElse(read);
    Way way = new Way(false, (maker, set, layout) -> maker.over(detail).placed(set, layout, wish));
    return strip(episode, shared, Proofer::set, watch, way);
  }

  private static Map<String, BalloonRequest> wanted(Episode episode) {
    return episode.layout().map(Compositor::wanted).orElse(Map.of());
  }

  /**
   * The strip with other words, everything else left where it was: shown to a person who types
   * until the strip is checked. New balloons are placed, nothing is judged.
   *
   * @param episode with the present words
   * @param before the same episode as it was checked last
   */
  public Galley retouched(Episode episode, StripProof before) {
    Layout layout = Anchoring.of(before.layout(), episode.script()).layout();
    SetEpisode set =
        new Typesetter(episode.shelf(), episode.style())
            .setAgain(episode.script(), wanted(episode), before.galley().set());
    return isAllLaid(set, layout)
        ? Compositor.compose(set, layout, before.galley().cuts())
        : StripMaker.asLaid(set, layout).galley();
  }

  private static boolean isAllLaid(SetEpisode set, Layout layout) {
    Set<String> laid =
        layout.balloons().stream()
            .filter(balloon -> balloon.box().isPresent())
            .map(LaidBalloon::id)
            .collect(Collectors.toSet());
    return set.balloons().stream().allMatch(balloon -> laid.contains(balloon.cue().id()));
  }

  /** Applies the fixes that findings offer and that leave fewer findings. */
  public FixedProof fix(StripProof proof) {
    return new Fixer((episode, layout) -> check(episode.withLayout(layout))).fixed(proof);
  }

  /** Puts a strip together. */
  private interface Composing {
    ComposedStrip compose(StripMaker maker, SetEpisode set, Layout layout);
  }

  /**
   * A way to put a strip together, and whether its layout is kept.
   *
   * @param asLaid true if it is left as in its layout
   */
  private record Way(boolean asLaid, Composing composing) {}

  /** Sets its balloons; marks the end of shaping and of setting. */
  private interface Setting {
    SetEpisode set(Episode episode, Map<String, BalloonRequest> wanted, Stopwatch watch);
  }

  private static StripProof strip(
      Episode episode, SharedBalloons shared, Setting setting, Stopwatch watch, Way way) {
    watch.mark();
    SetEpisode set = setting.set(episode, shared.wanted(wanted(episode)), watch);
    Layout layout = episode.layout().orElseGet(() -> PanelPlanner.plan(set));
    StripMaker maker =
        new StripMaker(new Typesetter(episode.shelf(), episode.style()), episode.script(), shared);
    ComposedStrip composed = way.composing().compose(maker, set, layout);
    watch.mark();
    List<Finding> placing = PlaceFindings.of(composed.shortfalls(), way.asLaid());
    List<Finding> all =
        findings(episode, set, placing, composed.findings()).stream()
            .filter(finding -> !isMet(finding, composed.layout()))
            .toList();
    List<Finding> findings = episode.ignored().applied(all, episode.script());
    watch.mark();
    return new StripProof(
        episode,
        composed.galley(),
        composed.layout().withHeadings(episode.script()),
        findings,
        shared,
        timings(watch));
  }

  /** Returns true if a finding asks for a panel's box that has been made since. */
  private static boolean isMet(Finding finding, Layout layout) {
    OptionalInt panel = finding.where().panel();
    return finding.rule().equals(Anchoring.PANEL_MISSING)
        && panel.isPresent()
        && layout.panel(panel.getAsInt()).isPresent();
  }

  private static SetEpisode set(
      Episode episode, Map<String, BalloonRequest> wanted, Stopwatch watch) {
    Typesetter typesetter = new Typesetter(episode.shelf(), episode.style());
    List<ShapedCue> shaped = typesetter.shape(episode.script(), wanted);
    watch.mark();
    List<SetBalloon> balloons = shaped.stream().map(typesetter::fit).toList();
    SetEpisode set = typesetter.episode(episode.script(), balloons);
    watch.mark();
    return set;
  }

  private static List<Finding> findings(
      Episode episode, SetEpisode set, List<Finding> placing, List<Finding> ofRules) {
    List<Finding> findings = new ArrayList<>(episode.findings());
    findings.addAll(set.findings());
    findings.addAll(placing);
    findings.addAll(ofRules);
    return findings.stream()
        .map(f -> f.withSeverity(episode.style().severity(f.rule(), f.severity())))
        .toList();
  }

  private static Timings timings(Stopwatch watch) {
    return new Timings(watch.ms(0), watch.ms(1), watch.ms(2), watch.ms(3), watch.ms(4));
  }
}
