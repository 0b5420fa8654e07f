package io.github.readfall.base.finding;

import io.github.readfall.base.geom.Box;
import java.util.Collection;
import java.util.Optional;

/**
 * A fault in what the person wrote or made.
 *
 * @param rule id of the rule that found it, e.g. {@code words/long}
 * @param severity of the fault
 * @param where place of the fault
 * @param problem one plain sentence: what is wrong
 * @param remedy one plain sentence: how to fix it; empty if the problem says it all
 * @param measurement the number that proves it; empty if the rule counts nothing
 * @param box its place on the strip, in strip pixels; empty if it has none
 * @param fix a change that fixes it; empty if that is for the person to find
 * @param reason the person's reason for ignoring it; empty if it is not ignored
 */
public record Finding(
    String rule,
    Severity severity,
    Where where,
    Phrase problem,
    Phrase remedy,
    Optional<Measurement> measurement,
    Optional<Box> box,
    Optional<Fix> fix,
    Optional<String> reason) {

  /** A finding of a rule that counts nothing. */
  public static Finding of(
      String rule, Severity severity, Where where, String message, String advice) {
    return of(rule, severity, where, Phrase.of(message), Phrase.of(advice));
  }

  /** A finding of a rule that counts nothing. */
  public static Finding of(
      String rule, Severity severity, Where where, Phrase problem, Phrase remedy) {
    return new Finding(
        rule,
        severity,
        where,
        problem,
        remedy,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  /** The same finding with the number that proves it. */
  public Finding measured(double measured, double limit, String unit) {
    return new Finding(
        rule,
        severity,
        where,
        problem,
        remedy,
        Optional.of(new Measurement(measured, limit, unit)),
        box,
        fix,
        reason);
  }

  /** The same finding with its place on the strip. */
  public Finding at(Box place) {
    return new Finding(
        rule, severity, where, problem, remedy, measurement, Optional.of(place), fix, reason);
  }

  /** The same finding with a change that fixes it. */
  public Finding withFix(Fix change) {
    return new Finding(
        rule, severity, where, problem, remedy, measurement, box, Optional.of(change), reason);
  }

  /** The same finding with another severity. */
  public Finding withSeverity(Severity other) {
    return new Finding(rule, other, where, problem, remedy, measurement, box, fix, reason);
  }

  /** The same finding, ignored by the person for a reason. */
  public Finding ignored(String why) {
    return new Finding(
        rule, severity, where, problem, remedy, measurement, box, fix, Optional.of(why));
  }

  /** The problem as reports say it. */
  public String message() {
    return problem.inReports();
  }

  /** The remedy as reports say it. */
  public String advice() {
    return remedy.inReports();
  }

  /** The same finding as the window says it. */
  public Finding inWindow(Phrase.Balloons shown) {
    Phrase plain = Phrase.of(problem.inWindow(shown));
    Phrase how = Phrase.of(remedy.inWindow(shown));
    return new Finding(rule, severity, where, plain, how, measurement, box, fix, reason);
  }

  /** Tests whether something should still be done about it. */
  public boolean isOpen() {
    return reason.isEmpty();
  }

  /** Number of findings of a severity, ignored ones left out. */
  public static int countOpen(Collection<Finding> findings, Severity severity) {
    return Math.toIntExact(
        findings.stream().filter(f -> f.isOpen() && f.severity() == severity).count());
  }
}
