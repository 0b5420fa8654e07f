package io.github.readfall.cli.report;

import static io.github.readfall.cli.report.JsonReport.number;

import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.rules.RulePage;
import io.github.readfall.rules.RulePage.Part;
import java.util.Locale;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** What there is to know about a rule as JSON, its words without any marks. */
final class RuleJson {

  private RuleJson() {}

  /** Everything about a rule. */
  static ObjectNode of(RulePage page, HouseStyle style) {
    ObjectNode json = head(page, style);
    page.parts().forEach((part, markdown) -> json.put(name(part), Plain.text(markdown)));
    return json;
  }

  /** A rule in a list: what it finds in a few words. */
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
