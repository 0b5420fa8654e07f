package io.github.readfall.plan.order;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.readfall.base.geom.Box;
import io.github.readfall.lettering.style.ReadingSide;
import io.github.readfall.strip.PanelBox;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Panels are met in the order that published experiments report of most readers. */
class PublishedLayoutsTest {

  private static final double MIRROR = 1000;

  @TestFactory
  Stream<DynamicTest> mostReadersTakeThisOrder() throws IOException {
    return Files.readAllLines(Path.of("src/test/resources/flow/figures.txt")).stream()
        .filter(line -> !line.startsWith("#"))
        .map(line -> line.split(" \\| "))
        .map(cell -> DynamicTest.dynamicTest(cell[0], () -> check(cell[1], cell[2])));
  }

  private static void check(String boxes, String order) {
    List<PanelBox> panels = panels(boxes);
    assertEquals(order, met(panels, ReadingSide.LTR));
    List<PanelBox> mirrored =
        panels.stream().map(panel -> panel.at(mirrored(panel.box()))).toList();
    assertEquals(order, met(mirrored, ReadingSide.RTL));
  }

  private static List<PanelBox> panels(String boxes) {
    List<PanelBox> panels = new ArrayList<>();
    for (String box : boxes.split(" ; ", -1)) {
      double[] n = Arrays.stream(box.split(",", -1)).mapToDouble(Double::parseDouble).toArray();
      panels.add(new PanelBox(panels.size() + 1, new Box(n[0], n[1], n[2], n[3])));
    }
    return panels;
  }

  static Box mirrored(Box box) {
    return new Box(MIRROR - box.right(), box.y(), box.width(), box.height());
  }

  private static String met(List<PanelBox> panels, ReadingSide side) {
    return PanelFlow.of(panels, side).met().stream()
        .map(panel -> String.valueOf(panel.panel()))
        .collect(Collectors.joining(" "));
  }
}
