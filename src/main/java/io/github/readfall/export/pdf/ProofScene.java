package io.github.readfall.export.pdf;

import io.github.readfall.draw.Layer;
import io.github.readfall.draw.Mark;
import io.github.readfall.draw.StripLayers;
import io.github.readfall.draw.StripLayers.Part;
import io.github.readfall.draw.render.Reaches;
import io.github.readfall.lettering.typeset.Labels;
import io.github.readfall.plan.order.PathPoint;
import io.github.readfall.plan.order.ReadingOrder;
import io.github.readfall.strip.galley.Galley;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The drawing of a strip, sorted by layer.
 *
 * @param ground under the art
 * @param behind over the art, under the lettering
 * @param lettering of each balloon, by id
 * @param over the lettering
 * @param numbers of the balloons in reading order, by id
 */
record ProofScene(
    Reaches ground,
    Reaches behind,
    Map<String, List<Mark>> lettering,
    Reaches over,
    Map<String, Integer> numbers) {

  /** Lines and notes are so much larger than on a screen, for the strip is small on paper. */
  private static final double LARGER = 1.4;

  private static final Set<Layer> GROUND = EnumSet.of(Layer.PANELS, Layer.KEEP_CLEAR);
  private static final Set<Layer> BEHIND = EnumSet.of(Layer.PANEL_FRAMES, Layer.PATH);
  private static final Set<Layer> OVER =
      EnumSet.of(Layer.FINDINGS, Layer.GAPS, Layer.OVERFLOW, Layer.PATH);

  static ProofScene of(ProofStrip strip, Labels labels) {
    Galley galley = strip.galley();
    StripLayers layers = StripLayers.of(galley, strip.findings(), labels, LARGER);
    List<Part> over = layers.overArt();
    int lettering = 0;
    while (over.get(lettering).layer() != Layer.LETTERING) {
      lettering++;
    }
    double height = galley.heightPx();
    return new ProofScene(
        Reaches.of(marks(layers.underArt(), GROUND), height),
        Reaches.of(marks(over.subList(0, lettering), BEHIND), height),
        byBalloon(over.get(lettering).marks()),
        Reaches.of(marks(over.subList(lettering, over.size()), OVER), height),
        numbers(galley));
  }

  private static List<Mark> marks(List<Part> parts, Set<Layer> layers) {
    return parts.stream()
        .filter(part -> layers.contains(part.layer()))
        .flatMap(part -> part.marks().stream())
        .toList();
  }

  /**
   * The marks of each balloon. Marks outside a group belong to the balloon whose letters follow.
   */
  private static Map<String, List<Mark>> byBalloon(List<Mark> marks) {
    Map<String, List<Mark>> byBalloon = new HashMap<>();
    List<Mark> some = new ArrayList<>();
    for (Mark mark : marks) {
      some.add(mark);
      if (mark instanceof Mark.Group group) {
        byBalloon.put(group.id(), List.copyOf(some));
        some.clear();
      }
    }
    return byBalloon;
  }

  private static Map<String, Integer> numbers(Galley galley) {
    Map<String, Integer> numbers = new HashMap<>();
    for (PathPoint step : ReadingOrder.of(galley).path()) {
      if (!step.entersPanel()) {
        numbers.put(step.balloon(), numbers.size() + 1);
      }
    }
    return numbers;
  }
}
