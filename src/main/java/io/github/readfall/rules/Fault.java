package io.github.readfall.rules;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Where;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.script.Cue;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Collectors;

/** Says of which balloon a finding is, in the report and in words. */
final class Fault {

  /** Enough words to find a balloon by. House default, no source. */
  private static final int WORDS = 4;

  private static final int CHARACTERS = 24;

  private Fault() {}

  /** A finding of one balloon. */
  static Finding in(SetBalloon balloon, Rule rule, String message, String advice) {
    Cue cue = balloon.cue();
    Where where = Where.balloon(cue.id(), cue.panel(), cue.line());
    return Finding.of(rule.id(), rule.severity(), where, message, advice);
  }

  /** A finding of several balloons, placed at the first; in script order, at least one. */
  static Finding in(List<SetBalloon> balloons, Rule rule, String message, String advice) {
    Cue first = balloons.get(0).cue();
    Where where =
        Where.balloons(
            balloons.stream().map(balloon -> balloon.cue().id()).toList(),
            first.panel(),
            first.line());
    return Finding.of(rule.id(), rule.severity(), where, message, advice);
  }

  /** A finding of balloons in one episode of a series, placed at the first; at least one. */
  static Finding in(SpeakerBalloons heard, SeriesRule rule, String message, String advice) {
    Cue first = heard.balloons().get(0).cue();
    Where where =
        new Where(
            heard.strip().path(),
            OptionalInt.of(first.line()),
            OptionalInt.empty(),
            OptionalInt.of(first.panel()),
            heard.balloons().stream().map(balloon -> balloon.cue().id()).toList());
    return Finding.of(rule.id(), rule.severity(), where, message, advice);
  }

  /** The speaker and the first words, e.g. {@code ILSE "It is counting again…"}. */
  static String name(SetBalloon balloon) {
    return balloon.cue().speaker() + " \"" + firstWords(balloon.cue().text().plain()) + "\"";
  }

  private static String firstWords(String plain) {
    String[] words = plain.strip().split("\\s+");
    String few = Arrays.stream(words).limit(WORDS).collect(Collectors.joining(" "));
    if (few.codePointCount(0, few.length()) > CHARACTERS) {
      return few.substring(0, few.offsetByCodePoints(0, CHARACTERS)) + "…";
    }
    return words.length > WORDS ? few + "…" : few;
  }
}
