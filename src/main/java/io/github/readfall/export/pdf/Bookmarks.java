package io.github.readfall.export.pdf;

import io.github.readfall.script.Panel;
import io.github.readfall.script.Scene;
import io.github.readfall.script.Script;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageXYZDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineNode;

/** Bookmarks for a document's scenes and panels. */
final class Bookmarks {

  /** Room above the target, in points. */
  private static final double AIR = 12;

  private final PDOutlineNode top;

  /** Spots by the panel's place in the script. */
  private final Map<Integer, Spot> panels = new TreeMap<>();

  private record Spot(PDPage page, double yPt, String title) {}

  Bookmarks(PDOutlineNode top) {
    this.top = top;
  }

  /** A place beside the panels, at once. */
  void add(String title, PDPage page) {
    top.addLast(item(new Spot(page, 0, title)));
  }

  /** Notes the beginning of a panel. */
  void note(PanelPiece piece, PDPage page) {
    panels.putIfAbsent(
        piece.part().panel().number(),
        new Spot(page, piece.entry().wantedPt(), piece.part().heading()));
  }

  /** The panels in script order, in their scenes. */
  void addPanels(Script script) {
    PDOutlineNode above = top;
    Optional<Integer> scene = Optional.empty();
    for (Panel panel : script.panels()) {
      Spot spot = panels.get(panel.number());
      if (spot == null) {
        continue;
      }
      if (!panel.scene().equals(scene)) {
        scene = panel.scene();
        above = scene.map(number -> scene(number, script.scenes(), spot)).orElse(top);
      }
      above.addLast(item(spot));
    }
  }

  private PDOutlineNode scene(int number, List<Scene> scenes, Spot spot) {
    String heading =
        scenes.stream()
            .filter(scene -> scene.number() == number && !scene.heading().isBlank())
            .map(scene -> ": " + scene.heading().strip())
            .findFirst()
            .orElse("");
    PDOutlineItem item = item(new Spot(spot.page(), spot.yPt(), "Scene " + number + heading));
    top.addLast(item);
    item.openNode();
    return item;
  }

  private static PDOutlineItem item(Spot spot) {
    PDPageXYZDestination place = new PDPageXYZDestination();
    place.setPage(spot.page());
    place.setLeft(0);
    place.setTop((int) Math.round(Paper.HEIGHT - Math.max(0, spot.yPt() - AIR)));
    PDOutlineItem item = new PDOutlineItem();
    item.setTitle(spot.title());
    item.setDestination(place);
    return item;
  }
}
