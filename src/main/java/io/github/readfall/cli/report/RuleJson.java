package io.github.readfall.cli.report;

import static io.github.readfall.cli.report.JsonReport.number;

import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.rules.RulePage;
import io.github.readfall.rules.RulePage.Part;
import java.util.Locale;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** The page of a rule as JSON, as plain text. */
final class RuleJson {

  private RuleJson() {}

  /** Everything about a rule. */
  static ObjectNode of(RulePage page, HouseStyle style) {
    ObjectNode json = head(page, style);
    page.parts().forEach((part, markdown) -> json.put(name(part), Plain.text(markdown)));
    return json;
  }

  /** A rule in a list: its finding in a few words. */
  static ObjectNode brief(RulePage page, HouseStyle style) {
    return head(page, style).put("finds", RuleText.phrase(page));
  }

  private static ObjectNode head(RulePage page, HouseStyle style) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("id", page.id());
    json.put("severity", RuleText.severity(page, style).word());
    RuleText.limit(page, style).ifPresent(limit -> json.put("limit", number(limit)));
    return json;
  }

  private static String name(Part part) {
    return part.name().toLowerCase(Locale.ROOT);
  }
}
