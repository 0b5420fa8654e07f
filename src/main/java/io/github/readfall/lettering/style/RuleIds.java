package io.github.readfall.lettering.style;

import java.util.List;

/**
 * The ids under which a limit or a severity can be set, so that a mistyped one is noticed. A new
 * rule adds its id here.
 */
final class RuleIds {

  static final List<String> ALL =
      List.of(
          "flow/inverted",
          "flow/ambiguous",
          "flow/text-before-picture",
          "flow/wrong-panel",
          "flow/panel-order",
          "flow/tail-crosses",
          "flow/tail-long",
          "flow/tail-astray",
          "flow/jump",
          "space/overlap",
          "space/crowded",
          "space/tangent",
          "space/outside",
          "space/margin",
          "space/overflow",
          "space/tight",
          "space/slack",
          "space/covers-art",
          "space/cut",
          "language/direction",
          "legible/size",
          "legible/leading",
          "legible/contrast",
          "legible/small-voice",
          "legible/glyph-missing",
          "legible/face-licence",
          "legible/fallback",
          "legible/local-forms",
          "words/long",
          "words/screen",
          "words/pace",
          "words/parted",
          "words/stress",
          "words/dashes",
          "voice/unknown",
          "voice/strayed",
          "voice/drifted",
          "voice/face-missing");

  private RuleIds() {}

  /**
   * Returns true for the id of a rule; findings of readers, planner and placer are not listed here.
   */
  static boolean known(String id) {
    return ALL.contains(id)
        || id.matches("(art|ignored|script|style|layout|language|plan|place|font)/[a-z-]+");
  }
}
