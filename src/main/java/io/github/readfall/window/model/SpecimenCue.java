package io.github.readfall.window.model;

import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.lettering.typeset.Typesetter;
import io.github.readfall.script.Cue;
import io.github.readfall.script.CueKind;
import io.github.readfall.script.CueText;
import io.github.readfall.script.Letters;
import io.github.readfall.script.Manner;
import io.github.readfall.script.MarkupReader;
import io.github.readfall.script.Panel;
import io.github.readfall.script.Script;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Chooses the words that show a voice or a manner: a cue of its own in the script, or else any
 * dialogue, or else a sample.
 */
final class SpecimenCue {

  /** The length that shows most in little room, in characters. House default, no source. */
  private static final int GOOD_CHARACTERS = 40;

  /** Manners that need other balloons, or lettering by hand. */
  private static final Set<Manner> NOT_ALONE =
      Set.of(Manner.JOINED, Manner.CONTINUED, Manner.DRAWN);

  private final Script script;
  private final String sample;

  /**
   * Chooses words of a script.
   *
   * @param sample the words if the script has none
   */
  SpecimenCue(Script script, String sample) {
    this.script = script;
    this.sample = sample;
  }

  /** A script with the chosen cue alone. */
  Script of(StyleSubject subject) {
    Cue cue =
        subject instanceof StyleSubject.MannerLook way ? in(way.manner()) : by(subject.name());
    Panel panel = new Panel(1, "1", "", List.of(), List.of(cue), 1, Optional.empty());
    return new Script(
        script.headers(),
        List.of(),
        List.of(panel),
        script.cast(),
        script.title(),
        script.episode(),
        script.language(),
        script.byteOrderMark(),
        script.lines(),
        script.keywords());
  }

  private Cue by(String voice) {
    if (Letters.fold(voice).equals(HouseStyle.DEFAULT_VOICE)) {
      return plain(CueKind.DIALOGUE, List.of(), someWords());
    }
    return best(cue -> isIn(voice, cue))
        .map(cue -> like(cue, cue.speaker()))
        .orElseGet(() -> cue(CueKind.DIALOGUE, voice, List.of(), someWords()));
  }

  private boolean isIn(String voice, Cue cue) {
    return Letters.fold(Typesetter.voice(cue, script)).equals(Letters.fold(voice));
  }

  private Cue in(Manner manner) {
    Optional<Cue> said = best(cue -> isSaid(cue, manner));
    return said.map(cue -> like(cue, cue.speaker()))
        .orElseGet(
            () -> {
              CueKind kind = kind(manner);
              return plain(
                  kind, kind == CueKind.DIALOGUE ? List.of(manner) : List.of(), someWords());
            });
  }

  private static boolean isSaid(Cue cue, Manner manner) {
    CueKind kind = kind(manner);
    return kind == CueKind.DIALOGUE ? cue.has(manner) : cue.kind() == kind;
  }

  private static CueKind kind(Manner manner) {
    return manner.equals(Manner.CAPTION)
        ? CueKind.CAPTION
        : manner.equals(Manner.EFFECT) ? CueKind.EFFECT : CueKind.DIALOGUE;
  }

  /** The best cue to show: in few manners, neither long nor short. */
  private Optional<Cue> best(Predicate<Cue> wanted) {
    return script.cues().stream()
        .filter(Typesetter::isSet)
        .filter(wanted)
        .min(
            Comparator.comparingInt((Cue cue) -> alone(cue.manners()).size())
                .thenComparing(Cue::kind)
                .thenComparingInt(cue -> Math.abs(cue.text().characters() - GOOD_CHARACTERS)));
  }

  private CueText someWords() {
    return best(cue -> cue.kind() == CueKind.DIALOGUE)
        .map(Cue::text)
        .orElseGet(() -> MarkupReader.text(sample));
  }

  private static Cue like(Cue cue, String speaker) {
    return cue(cue.kind(), speaker, alone(cue.manners()), cue.text());
  }

  private static List<Manner> alone(List<Manner> manners) {
    Stream<Manner> all = manners.stream();
    return all.filter(manner -> !NOT_ALONE.contains(manner)).toList();
  }

  private static Cue plain(CueKind kind, List<Manner> manners, CueText text) {
    return cue(kind, HouseStyle.DEFAULT_VOICE, manners, text);
  }

  private static Cue cue(CueKind kind, String speaker, List<Manner> manners, CueText text) {
    return new Cue("p1-1", 1, 1, kind, List.of(speaker), manners, text, 1, 1);
  }
}
