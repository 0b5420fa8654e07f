package io.github.readfall.cli.report;

import static io.github.readfall.cli.report.JsonReport.number;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Fix;
import io.github.readfall.base.finding.Measurement;
import io.github.readfall.base.finding.Where;
import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** A finding as JSON. */
final class FindingJson {

  private FindingJson() {}

  static ObjectNode of(Finding finding) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("rule", finding.rule());
    json.put("severity", finding.severity().word());
    where(json, finding.where());
    finding.box().ifPresent(box -> box(json.putArray("box"), box));
    json.put("message", finding.message());
    json.put("advice", finding.advice());
    finding.measurement().ifPresent(m -> measurement(json, m));
    finding.fix().ifPresent(fix -> fix(json.putObject("mend"), fix));
    finding.reason().ifPresent(why -> json.put("setAside", why));
    return json;
  }

  private static void where(ObjectNode json, Where where) {
    where.panel().ifPresent(panel -> json.put("panel", panel));
    if (!where.balloons().isEmpty()) {
      where.balloons().forEach(json.putArray("balloons")::add);
    }
    if (!where.file().isEmpty()) {
      json.put("file", where.file());
    }
    where.line().ifPresent(line -> json.put(where.file().isEmpty() ? "scriptLine" : "line", line));
    where.column().ifPresent(column -> json.put("column", column));
  }

  private static void measurement(ObjectNode json, Measurement measurement) {
    json.put("measured", number(measurement.measured()));
    json.put("limit", number(measurement.limit()));
    json.put("unit", measurement.unit());
  }

  /** A change, by the one field that names it. */
  static void fix(ObjectNode json, Fix fix) {
    if (fix instanceof Fix.Move move) {
      json.put("balloon", move.balloon());
      point(json.putArray("moveTo"), move.to());
    } else if (fix instanceof Fix.Resize resize) {
      json.put("balloon", resize.balloon());
      box(json.putArray("box"), resize.box());
    } else if (fix instanceof Fix.TailTo tail) {
      json.put("balloon", tail.balloon());
      point(json.putArray("tailTo"), tail.tip());
      if (tail.tail() > 0) {
        json.put("tail", tail.tail() + 1);
      }
    } else if (fix instanceof Fix.MoveCut cut) {
      json.put("cut", number(cut.fromPx()));
      json.put("cutTo", number(cut.toPx()));
    }
  }

  static void point(ArrayNode json, XY at) {
    json.add(number(at.x())).add(number(at.y()));
  }

  static void box(ArrayNode json, Box box) {
    json.add(number(box.x())).add(number(box.y()));
    json.add(number(box.width())).add(number(box.height()));
  }
}
