package io.github.readfall.art.panels;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.readfall.base.geom.Box;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class PanelOrderTest {

  private static FoundPanel box(double x, double y, double width, double height) {
    return new FoundPanel(new Box(x, y, width, height), 1, "");
  }

  private static void isRead(boolean leftToRight, FoundPanel... inOrder) {
    List<FoundPanel> mixed = new ArrayList<>(List.of(inOrder));
    Collections.reverse(mixed);
    assertEquals(List.of(inOrder), PanelOrder.of(mixed, leftToRight));
  }

  @Test
  void rowsAreReadFromTheLeadingSide() {
    isRead(true, box(0, 0, 800, 200), box(0, 220, 390, 300), box(410, 230, 390, 300));
    isRead(false, box(0, 0, 800, 200), box(410, 230, 390, 300), box(0, 220, 390, 300));
  }

  @Test
  void aStackBesideATallPanelIsReadDownBeforeTheTallOne() {
    isRead(true, box(0, 0, 390, 200), box(0, 220, 390, 200), box(410, 0, 390, 420));
    isRead(true, box(0, 0, 390, 420), box(410, 0, 390, 200), box(410, 220, 390, 200));
  }

  @Test
  void anInsetFollowsThePanelItLiesIn() {
    isRead(true, box(0, 0, 800, 600), box(40, 400, 200, 150), box(0, 640, 800, 300));
  }

  @Test
  void slantedPanelsWhoseBoxesOverlapALittleFollowOneAnother() {
    isRead(true, box(0, 0, 800, 300), box(0, 280, 800, 300), box(0, 560, 800, 300));
  }
}
