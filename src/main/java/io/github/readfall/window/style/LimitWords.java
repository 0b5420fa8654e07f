package io.github.readfall.window.style;

import io.github.readfall.rules.RulePage;
import io.github.readfall.rules.RulePage.Part;
import java.util.Locale;

/**
 * What the page of a rule says of its limit, without marks.
 *
 * @param page of the rule
 */
record LimitWords(RulePage page) {

  /** Where the pages begin to speak of the limit itself. */
  private static final String ANYWAY = "anyway: ";

  /** What the rule finds, in its first sentence. */
  String finds() {
    return plain(Part.FINDS).split("(?<=\\.) ", 2)[0];
  }

  /** In which unit the limit is. */
  String unit() {
    String how = plain(Part.SET);
    int from = how.indexOf(ANYWAY) + ANYWAY.length();
    int to = how.indexOf("```");
    String unit = how.substring(from, to < from ? how.length() : to).strip();
    return unit.isEmpty() ? "" : unit.substring(0, 1).toUpperCase(Locale.ROOT) + unit.substring(1);
  }

  /** Where the built-in limit comes from. */
  String source() {
    return plain(Part.SOURCE);
  }

  private String plain(Part part) {
    return page.part(part).orElse("").replace("*", "").replaceAll("\\s+", " ");
  }
}
