package io.github.readfall.finding;

import java.util.Optional;

/**
 * A fault in what the person wrote or made.
 *
 * @param rule id of the rule that found it, e.g. {@code words/long}
 * @param severity how grave it is
 * @param where where it is
 * @param message one plain sentence: what is wrong
 * @param advice one plain sentence: how to mend it; empty where the message says it all
 * @param measurement the number that proves it; empty where the rule counts nothing
 */
public record Finding(
    String rule,
    Severity severity,
    Where where,
    String message,
    String advice,
    Optional<Measurement> measurement) {

  /** A finding of a rule that counts nothing. */
  public static Finding of(
      String rule, Severity severity, Where where, String message, String advice) {
    return new Finding(rule, severity, where, message, advice, Optional.empty());
  }

  /** The same finding with the number that proves it. */
  public Finding measured(double measured, double limit, String unit) {
    return new Finding(
        rule,
        severity,
        where,
        message,
        advice,
        Optional.of(new Measurement(measured, limit, unit)));
  }
}
