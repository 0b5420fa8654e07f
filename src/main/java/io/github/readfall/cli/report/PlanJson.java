package io.github.readfall.cli.report;

import static io.github.readfall.cli.report.JsonReport.number;

import io.github.readfall.base.geom.Box;
import io.github.readfall.job.PlanProof;
import io.github.readfall.lettering.style.Delivery;
import io.github.readfall.plan.EpisodePlan;
import io.github.readfall.plan.PanelPace;
import io.github.readfall.plan.Screens;
import io.github.readfall.plan.SeriesAverage;
import io.github.readfall.plan.Split;
import io.github.readfall.strip.Cuts;
import io.github.readfall.strip.Layout;
import io.github.readfall.strip.PanelBox;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** A plan as JSON, and the strip it is of. */
final class PlanJson {

  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private PlanJson() {}

  /** The strip with its panels. */
  static ObjectNode strip(Layout layout) {
    ObjectNode json = NODES.objectNode();
    json.put("widthPx", number(layout.widthPx()));
    json.put("heightPx", number(layout.heightPx()));
    ArrayNode panels = json.putArray("panels");
    for (PanelBox place : layout.panels()) {
      ObjectNode panel = panels.addObject();
      panel.put("panel", place.panel());
      Box box = place.box();
      ArrayNode edges = panel.putArray("box");
      edges.add(number(box.x())).add(number(box.y()));
      edges.add(number(box.width())).add(number(box.height()));
    }
    return json;
  }

  /** The figures of the episode. */
  static ObjectNode of(PlanProof proof) {
    EpisodePlan plan = proof.plan();
    ObjectNode json = NODES.objectNode();
    json.put("heightPx", number(plan.heightPx()));
    json.put("screens", number(plan.screens().count()));
    json.put("screenPx", number(plan.screens().screenPx()));
    json.put("seconds", number(plan.seconds()));
    json.put("words", plan.words());
    Delivery delivery = proof.fit().set().style().delivery();
    json.put("deliveredPx", number(plan.heightPx() * delivery.widthPx() / plan.layout().widthPx()));
    json.put("maxDeliveredPx", delivery.maxEpisodeHeightPx());
    ArrayNode panels = json.putArray("panels");
    plan.panels().forEach(pace -> panels.add(panel(pace)));
    ArrayNode screens = json.putArray("perScreen");
    plan.screens().screens().forEach(screen -> screens.add(screen(screen)));
    json.set("cuts", cuts(plan.cuts()));
    plan.split().ifPresent(split -> split(json.putArray("split"), split));
    proof.others().ifPresent(others -> json.set("others", others(others)));
    return json;
  }

  private static ObjectNode panel(PanelPace pace) {
    ObjectNode json = NODES.objectNode();
    json.put("panel", pace.panel());
    json.put("gutterPx", number(pace.gutterPx()));
    json.put("heightPx", number(pace.heightPx()));
    json.put("words", pace.words());
    json.put("seconds", number(pace.seconds()));
    return json;
  }

  private static ObjectNode screen(Screens.Screen screen) {
    ObjectNode json = NODES.objectNode();
    json.put("screen", screen.number());
    json.put("topPx", number(screen.topPx()));
    json.put("words", screen.words());
    json.put("seconds", number(screen.seconds()));
    return json;
  }

  private static ObjectNode cuts(Cuts cuts) {
    ObjectNode json = NODES.objectNode();
    ArrayNode pages = json.putArray("pages");
    cuts.pages().forEach(y -> pages.add(number(y)));
    json.put("pagesGiven", cuts.pagesGiven());
    ArrayNode slices = json.putArray("slices");
    cuts.slices().forEach(y -> slices.add(number(y)));
    return json;
  }

  private static void split(ArrayNode parts, Split split) {
    for (Split.Part part : split.parts()) {
      ObjectNode json = parts.addObject();
      json.put("firstPanel", part.firstPanel());
      json.put("lastPanel", part.lastPanel());
      json.put("heightPx", number(part.heightPx()));
      json.put("words", part.words());
      json.put("seconds", number(part.seconds()));
      json.put("fits", part.heightPx() <= split.limitPx());
      json.put("reason", part.reason());
    }
  }

  private static ObjectNode others(SeriesAverage others) {
    ObjectNode json = NODES.objectNode();
    json.put("episodes", others.episodes());
    json.put("heightPx", number(others.heightPx()));
    json.put("words", number(others.words()));
    json.put("seconds", number(others.seconds()));
    return json;
  }
}
