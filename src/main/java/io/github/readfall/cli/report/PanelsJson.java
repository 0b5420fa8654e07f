package io.github.readfall.cli.report;

import static io.github.readfall.cli.report.JsonReport.number;

import io.github.readfall.art.panels.FoundPanel;
import io.github.readfall.art.panels.MatchedPanel;
import io.github.readfall.job.PanelsProof;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** A strip whose panels were found in its art, as JSON. */
final class PanelsJson {

  private PanelsJson() {}

  /** The strip with its panels, and how certain each is. */
  static ObjectNode strip(PanelsProof proof) {
    ObjectNode strip = PlanJson.strip(proof.layout());
    Map<Integer, FoundPanel> found = new HashMap<>();
    for (MatchedPanel panel : proof.matched().panels()) {
      found.put(panel.number(), panel.found());
    }
    for (JsonNode panel : strip.path("panels")) {
      Optional.ofNullable(found.get(panel.path("panel").asInt()))
          .ifPresent(one -> certainty((ObjectNode) panel, one));
    }
    return strip;
  }

  private static void certainty(ObjectNode panel, FoundPanel found) {
    panel.put("certainty", number(found.certainty()));
    panel.put("because", found.reason());
  }
}
