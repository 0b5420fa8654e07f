package io.github.readfall.export.transcript;

import io.github.readfall.base.wording.Wording;
import io.github.readfall.script.Cue;
import io.github.readfall.script.CueKind;
import io.github.readfall.script.Keywords;
import io.github.readfall.script.Manner;
import io.github.readfall.script.Shot;
import io.github.readfall.script.ShotHints;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The fixed words for shots and manners, so that each has the same name in every transcript. A
 * coded vocabulary for the balloons of described comics is what Osolen and Brochu ask for (IJIDI
 * 4(1), 2020); the words are our own.
 */
final class Vocabulary {

  private Vocabulary() {}

  /** The speaker of a cue; its kind if the script only says that it is a caption or an effect. */
  static String who(Cue cue, Keywords keywords) {
    return isUnspoken(cue, keywords) ? kind(cue.kind()) : cue.names();
  }

  /** The words about a cue beside its speaker. */
  static List<String> how(Cue cue, Keywords keywords) {
    List<String> how = new ArrayList<>();
    if (cue.kind() != CueKind.DIALOGUE && !isUnspoken(cue, keywords)) {
      how.add(kind(cue.kind()).toLowerCase(Locale.ROOT));
    }
    for (Manner manner : cue.manners()) {
      String word = manner(manner);
      if (!manner.equals(Manner.CAPTION) && !manner.equals(Manner.EFFECT) && !how.contains(word)) {
        how.add(word);
      }
    }
    return how;
  }

  private static boolean isUnspoken(Cue cue, Keywords keywords) {
    return cue.speaker().equalsIgnoreCase(keywords.caption())
        || cue.speaker().equalsIgnoreCase(keywords.effect());
  }

  private static String kind(CueKind kind) {
    return Wording.of("transcript.kind." + kind.name().toLowerCase(Locale.ROOT));
  }

  private static String manner(Manner manner) {
    return manner.isKnown()
        ? Wording.of("transcript.manner." + manner.word().replace(' ', '-'))
        : manner.word();
  }

  /** The words for a panel's shot and shape. */
  static List<String> shot(ShotHints hints) {
    List<String> words = new ArrayList<>();
    hints.shot().ifPresent(shot -> words.add(shot(shot)));
    if (hints.tall()) {
      words.add(Wording.of("transcript.panel.tall"));
    }
    if (hints.wide()) {
      words.add(Wording.of("transcript.panel.wide"));
    }
    if (hints.inset()) {
      words.add(Wording.of("transcript.panel.inset"));
    }
    if (hints.besidePrevious()) {
      words.add(Wording.of("transcript.panel.beside"));
    }
    return words;
  }

  private static String shot(Shot shot) {
    return Wording.of("transcript.shot." + shot.name().toLowerCase(Locale.ROOT));
  }
}
