package io.github.readfall.rules.model;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Phrase;
import io.github.readfall.base.finding.Where;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.script.Cue;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** Makes findings about balloons, for the report and in words. */
public final class BalloonFinding {

  /** Enough words to find a balloon by. House default, no source. */
  private static final int WORDS = 4;

  private static final int CHARACTERS = 24;

  private BalloonFinding() {}

  /** A finding of one balloon. */
  public static Finding of(SetBalloon balloon, RuleSpec rule, String message, String advice) {
    return of(balloon, rule, Phrase.of(message), Phrase.of(advice));
  }

  /** A finding of one balloon. */
  public static Finding of(SetBalloon balloon, RuleSpec rule, Phrase message, Phrase advice) {
    Cue cue = balloon.cue();
    Where where = Where.balloon(cue.id(), cue.panel(), cue.line());
    return Finding.of(rule.id(), rule.severity(), where, message, advice);
  }

  /** A finding of several balloons, placed at the first; in script order, at least one. */
  public static Finding of(
      List<SetBalloon> balloons, RuleSpec rule, String message, String advice) {
    return of(balloons, rule, Phrase.of(message), Phrase.of(advice));
  }

  /** A finding of several balloons, placed at the first; in script order, at least one. */
  public static Finding of(
      List<SetBalloon> balloons, RuleSpec rule, Phrase message, Phrase advice) {
    Cue first = balloons.get(0).cue();
    Where where =
        Where.balloons(
            balloons.stream().map(balloon -> balloon.cue().id()).toList(),
            first.panel(),
            first.line());
    return Finding.of(rule.id(), rule.severity(), where, message, advice);
  }

  /** The speaker and the first words, e.g. {@code ILSE "It is counting again…"}. */
  public static String name(SetBalloon balloon) {
    return balloon.cue().names() + " \"" + firstWords(balloon.cue().text().plain()) + "\"";
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
