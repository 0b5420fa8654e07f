package io.github.readfall.window.style;

import io.github.readfall.rules.RulePage;
import io.github.readfall.rules.RulePage.Part;

/**
 * What the page of a rule says of its limit, without marks.
 *
 * @param page of the rule
 */
record LimitWords(RulePage page) {

  /** What the rule finds, in its first sentence. */
  String finds() {
    return plain(Part.FINDS).split("(?<=\\.) ", 2)[0];
  }

  /** Where the built-in limit comes from. */
  String source() {
    return plain(Part.SOURCE);
  }

  private String plain(Part part) {
    return page.part(part).orElse("").replace("*", "").replaceAll("\\s+", " ");
  }
}
