package io.github.readfall.rules;

import io.github.readfall.base.finding.Severity;
import java.util.Map;
import java.util.Set;

/**
 * The severities of findings that come from reading, setting, placing and planning rather than from
 * a rule; the most severe one if it depends. Their pages state them as well, which a test compares.
 */
final class OtherSeverities {

  private static final Map<Severity, Set<String>> IDS =
      Map.of(
          Severity.ERROR,
          Set.of(
              "layout/cue-twice",
              "layout/key-twice",
              "layout/missing",
              "layout/number",
              "layout/panel-twice",
              "layout/shape",
              "layout/syntax",
              "layout/type",
              "script/before-first-panel",
              "script/long-cue",
              "script/near-name",
              "script/no-panels"),
          Severity.WARNING,
          Set.of(
              "art/page-missing",
              "art/panel-extra",
              "art/panel-missing",
              "art/unreadable",
              "art/widths",
              "font/unusable",
              "ignored/entry",
              "ignored/syntax",
              "ignored/unused-file",
              "voice/face-missing",
              "language/empty",
              "language/long",
              "layout/cuts",
              "layout/newer-version",
              "layout/outside",
              "layout/panel-missing",
              "layout/speaker-unknown",
              "layout/width",
              "place/room",
              "plan/too-tall",
              "script/bidi-control",
              "script/control-character",
              "script/damaged-character",
              "script/empty",
              "script/empty-cue",
              "script/joined-to-none",
              "script/keyword-case",
              "script/language",
              "script/many-marks",
              "script/no-cues",
              "script/repeated-header",
              "script/unclosed-bracket",
              "script/unknown-header",
              "script/unknown-speaker",
              "style/impossible",
              "style/syntax",
              "style/unknown-key",
              "style/wrong-type"),
          Severity.NOTE,
          Set.of(
              "art/scaled",
              "ignored/nothing",
              "language/codes",
              "language/gone",
              "language/guess",
              "language/missing",
              "language/stale",
              "layout/cue-gone",
              "layout/cue-moved",
              "layout/panel-gone",
              "layout/unknown-key",
              "plan/apart",
              "plan/taller-than-asked",
              "script/late-header",
              "script/lone-name",
              "script/panel-number",
              "script/unclosed-emphasis",
              "script/unknown-manner"));

  private OtherSeverities() {}

  /**
   * The severity of findings with an id.
   *
   * @throws IllegalStateException if the id is not listed
   */
  static Severity of(String id) {
    return IDS.entrySet().stream()
        .filter(entry -> entry.getValue().contains(id))
        .map(Map.Entry::getKey)
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("no severity: " + id));
  }
}
