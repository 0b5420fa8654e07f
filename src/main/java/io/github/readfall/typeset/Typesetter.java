package io.github.readfall.typeset;

import io.github.readfall.font.FontShelf;
import io.github.readfall.script.CastMember;
import io.github.readfall.script.Cue;
import io.github.readfall.script.Manner;
import io.github.readfall.script.Script;
import io.github.readfall.style.HouseStyle;
import io.github.readfall.text.Language;
import io.github.readfall.text.Languages;
import io.github.readfall.text.LineBreaks;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Sets cues: shapes their text at reading size, chooses breaks and outline together, and puts every
 * line in its place.
 *
 * <p>Safe to share between threads.
 */
public final class Typesetter {

  private final HouseStyle style;
  private final VoiceFaces faces;
  private final CueShaper shaper;
  private final BalloonSetter setter;

  /** Sets in the faces of a shelf, by a house style. */
  public Typesetter(FontShelf shelf, HouseStyle style) {
    this.style = style;
    this.faces = new VoiceFaces(shelf, ReadingSize.of(style));
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
   * @param wanted what a layout asks of balloons, by their cues' ids
   */
  public SetEpisode set(Script script, Map<String, Wanted> wanted) {
    return episode(script, shape(script, wanted).stream().map(this::fit).toList());
  }

  /** An episode of balloons already set, with the cues that were left out and what was found. */
  public SetEpisode episode(Script script, List<SetBalloon> balloons) {
    List<Cue> notSet = script.cues().stream().filter(cue -> !isSet(cue)).toList();
    return new SetEpisode(script, style, balloons, notSet, faces.findings());
  }

  /** The first half of the work, all left to be chosen. */
  public List<ShapedCue> shape(Script script) {
    return shape(script, Map.of());
  }

  /**
   * The first half of the work: every cue that is to be set, shaped and measured.
   *
   * @param wanted what a layout asks of balloons, by their cues' ids
   */
  public List<ShapedCue> shape(Script script, Map<String, Wanted> wanted) {
    Language language = Languages.of(script.language());
    Map<String, String> voices =
        script.cast().stream()
            .filter(member -> !member.voice().isEmpty())
            .collect(
                Collectors.toMap(
                    member -> member.name().toUpperCase(Locale.ROOT),
                    CastMember::voice,
                    (first, again) -> first));
    List<ShapedCue> shaped = new ArrayList<>();
    Optional<Cue> before = Optional.empty();
    for (Cue cue : script.cues()) {
      if (isSet(cue)) {
        String voice = voices.getOrDefault(cue.speaker().toUpperCase(Locale.ROOT), cue.speaker());
        Wanted asked = wanted.getOrDefault(cue.id(), Wanted.NOTHING);
        shaped.add(shaper.shape(cue, voice, language, joinedTo(cue, before), asked));
      }
      before = Optional.of(cue);
    }
    return shaped;
  }

  /** The second half: breaks and outline for one cue. */
  public SetBalloon fit(ShapedCue cue) {
    return setter.set(cue);
  }

  private static Optional<String> joinedTo(Cue cue, Optional<Cue> before) {
    return before
        .filter(other -> cue.has(Manner.JOINED) && isSet(other))
        .filter(other -> other.panel() == cue.panel() && other.speaker().equals(cue.speaker()))
        .map(Cue::id);
  }

  /** Whether a cue is lettered here: not by hand, not empty, not endless. */
  public static boolean isSet(Cue cue) {
    return !cue.has(Manner.DRAWN) && !cue.text().plain().isBlank() && !cue.text().isTooLong();
  }
}
