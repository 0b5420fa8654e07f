package io.github.readfall.cli.report;

import static io.github.readfall.cli.report.JsonReport.number;

import io.github.readfall.base.viewing.Audit;
import io.github.readfall.base.viewing.AuditRow;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** An audit of lettering as JSON. */
final class AuditJson {

  private AuditJson() {}

  static ObjectNode of(Audit audit) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    if (!audit.balloon().isEmpty()) {
      json.put("balloon", audit.balloon());
    }
    json.put("kind", audit.kind().word());
    json.put("heightPx", number(audit.heightPx()));
    json.put("stripWidthPx", number(audit.stripWidthPx()));
    json.put("leastArcmin", number(audit.leastArcmin()));
    json.put("betterArcmin", number(audit.betterArcmin()));
    ArrayNode rows = json.putArray("rows");
    audit.own().forEach(row -> rows.add(row(row, true)));
    audit.common().forEach(row -> rows.add(row(row, false)));
    return json;
  }

  private static ObjectNode row(AuditRow row, boolean own) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put(own ? "phone" : "reader", row.phone().name());
    json.put("widthDp", number(row.phone().widthDp()));
    json.put("distanceMm", number(row.phone().distanceMm()));
    json.put("dp", number(row.dp()));
    json.put("mm", number(row.mm()));
    json.put("arcmin", number(row.arcmin()));
    json.put("passes", row.passes());
    json.put("leastPx", number(row.leastPx()));
    json.put("betterPx", number(row.betterPx()));
    return json;
  }
}
