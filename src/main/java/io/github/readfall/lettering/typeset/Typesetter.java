package io.github.readfall.lettering.typeset;

import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.script.CastMember;
import io.github.readfall.script.Cue;
import io.github.readfall.script.Manner;
import io.github.readfall.script.Script;
import io.github.readfall.type.font.FontShelf;
import io.github.readfall.type.text.Language;
import io.github.readfall.type.text.Languages;
import io.github.readfall.type.text.LineBreaks;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Sets cues: shapes their text at reading size, chooses breaks and outline together, and puts every
 * line in its place.
 *
 * <p>Safe to share between threads.
 */
public final class Typesetter {

  /** The most settings of a balloon that are offered. */
  private static final int SETTINGS = 4;

  /** By how much one that is offered may be larger than the best. House default, no source. */
  private static final double LARGER = 1.5;

  private final HouseStyle style;
  private final VoiceFaces faces;
  private final CueShaper shaper;
  private final BalloonSetter setter;

  /** Sets in the faces of a shelf, by a house style. */
  public Typesetter(FontShelf shelf, HouseStyle style) {
    this.style = style;
    this.faces = new VoiceFaces(shelf, style);
    this.shaper = new CueShaper(style, faces, new LineBreaks());
    this.setter = new BalloonSetter();
  }

  /** Sets every cue of an episode, all left to be chosen. */
  public SetEpisode set(Script script) {
    return set(script, Map.of());
  }

  /**
   * Sets every cue of an episode.
   *
   * @param wanted requests of a layout, by their cues' ids
   */
  public SetEpisode set(Script script, Map<String, BalloonRequest> wanted) {
    return episode(script, shape(script, wanted).stream().map(this::fit).toList());
  }

  /**
   * Sets the cues of an episode that has changed; unchanged ones are reused.
   *
   * @param wanted requests of a layout, by their cues' ids
   * @param before set in the same faces; if its style, language or cast was another, every cue is
   *     set
   */
  public SetEpisode setAgain(Script script, Map<String, BalloonRequest> wanted, SetEpisode before) {
    Map<String, SetBalloon> known = new HashMap<>();
    if (isLetteredAlike(script, before)) {
      before.balloons().forEach(balloon -> known.put(balloon.cue().id(), balloon));
    }
    List<SetBalloon> balloons =
        asked(script, wanted)
            .map(
                asked ->
                    Optional.ofNullable(known.get(asked.cue().id()))
                        .filter(asked::isFor)
                        .orElseGet(() -> fit(shaper.shape(asked))))
            .toList();
    return episode(script, balloons);
  }

  private boolean isLetteredAlike(Script script, SetEpisode before) {
    return style.equals(before.style())
        && script.language().equals(before.script().language())
        && script.cast().equals(before.script().cast());
  }

  /** An episode of balloons already set, with the cues that were left out and the findings. */
  public SetEpisode episode(Script script, List<SetBalloon> balloons) {
    List<Cue> notSet = script.cues().stream().filter(cue -> !isSet(cue)).toList();
    return new SetEpisode(script, style, balloons, notSet, faces.findings());
  }

  /** The first half of the work, all left to be chosen. */
  public List<ShapedCue> shape(Script script) {
    return shape(script, Map.of());
  }

  /**
   * The first half of the work: every cue to be set, shaped and measured.
   *
   * @param wanted requests of a layout, by their cues' ids
   */
  public List<ShapedCue> shape(Script script, Map<String, BalloonRequest> wanted) {
    return asked(script, wanted).map(shaper::shape).toList();
  }

  private static Stream<CueToSet> asked(Script script, Map<String, BalloonRequest> wanted) {
    Language language = Languages.of(script.language());
    Map<String, String> voices = voices(script);
    List<String> cast = names(script);
    Map<Integer, Long> cuesByPanel =
        script.cues().stream().collect(Collectors.groupingBy(Cue::panel, Collectors.counting()));
    List<CueToSet> asked = new ArrayList<>();
    Optional<Cue> before = Optional.empty();
    for (Cue cue : script.cues()) {
      if (isSet(cue)) {
        String voice = voice(cue, voices);
        BalloonRequest own = wanted.getOrDefault(cue.id(), BalloonRequest.NOTHING);
        asked.add(
            new CueToSet(
                cue,
                voice,
                language,
                joinedTo(cue, before),
                own,
                cast,
                cuesByPanel.getOrDefault(cue.panel(), 0L) == 1));
      }
      before = Optional.of(cue);
    }
    return asked.stream();
  }

  /** The voice that a cue is lettered in: the one that the cast gives its speaker, or their own. */
  public static String voice(Cue cue, Script script) {
    return voice(cue, voices(script));
  }

  private static Map<String, String> voices(Script script) {
    return script.cast().stream()
        .filter(member -> !member.voice().isEmpty())
        .collect(
            Collectors.toMap(
                member -> member.name().toUpperCase(Locale.ROOT),
                CastMember::voice,
                (first, again) -> first));
  }

  /** Everybody's name: lines keep those of several words whole. */
  private static List<String> names(Script script) {
    return Stream.concat(
            script.cast().stream().map(CastMember::name),
            script.cues().stream().flatMap(cue -> cue.speakers().stream()))
        .distinct()
        .toList();
  }

  private static String voice(Cue cue, Map<String, String> voices) {
    return voices.getOrDefault(cue.speaker().toUpperCase(Locale.ROOT), cue.speaker());
  }

  /**
   * Sets one balloon of an episode again.
   *
   * @param wanted the present request to it
   */
  public SetBalloon setAgain(SetBalloon balloon, Script script, BalloonRequest wanted) {
    String voice = voice(balloon.cue(), voices(script));
    return fit(
        shaper.shape(
            new CueToSet(
                balloon.cue(),
                voice,
                balloon.language(),
                balloon.joinedTo(),
                wanted,
                names(script),
                balloon.alone())));
  }

  /**
   * Other settings of a balloon, each the best of its number of lines: the present one, and others
   * near it that are not much larger; at most four, in order of lines. They are set in no given
   * box.
   */
  public List<SetBalloon> settings(SetBalloon balloon, Script script) {
    BalloonRequest open = balloon.wanted().withoutBox();
    SetBalloon best = setAgain(balloon, script, open.inLines(OptionalInt.empty()));
    int usual = best.lines().size();
    double mostPx2 = LARGER * area(best);
    Stream<SetBalloon> others =
        IntStream.rangeClosed(Math.max(1, usual - SETTINGS), usual + SETTINGS)
            .filter(lines -> lines != usual)
            .mapToObj(lines -> setAgain(balloon, script, open.inLines(OptionalInt.of(lines))))
            .filter(set -> set.lines().size() != usual)
            .filter(set -> area(set) <= mostPx2);
    return Stream.concat(Stream.of(best), others)
        .sorted(Comparator.comparingDouble(Typesetter::area))
        .limit(SETTINGS)
        .sorted(Comparator.comparingInt(set -> set.lines().size()))
        .toList();
  }

  private static double area(SetBalloon balloon) {
    return balloon.box().width() * balloon.box().height();
  }

  /** The second half: breaks and outline for one cue. */
  public SetBalloon fit(ShapedCue cue) {
    return setter.set(cue);
  }

  private static Optional<String> joinedTo(Cue cue, Optional<Cue> before) {
    return before
        .filter(other -> cue.has(Manner.JOINED) && isSet(other))
        .filter(other -> other.panel() == cue.panel() && other.speakers().equals(cue.speakers()))
        .map(Cue::id);
  }

  /** Returns true if a cue is lettered here: not by hand, not empty, not endless. */
  public static boolean isSet(Cue cue) {
    return !cue.has(Manner.DRAWN) && !cue.text().plain().isBlank() && !cue.text().isTooLong();
  }
}
