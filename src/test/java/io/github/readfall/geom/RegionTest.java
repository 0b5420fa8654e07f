package io.github.readfall.geom;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What outlines cover, on the strip and not on its mirror image. */
class RegionTest {

  /** A triangle that lies below the origin, its tip at the bottom. */
  private static final Path WEDGE =
      new Path(
          List.of(
              new Path.Move(new XY(10, 100)),
              new Path.Line(new XY(50, 100)),
              new Path.Line(new XY(30, 160)),
              new Path.Close()));

  @Test
  void anOutlineCoversWhatItIsDrawnRound() {
    Region region = Region.of(WEDGE);
    assertEquals(WEDGE.bounds(), region.bounds());
    assertEquals(40 * 60 / 2.0, region.areaPx2(), 1e-9);
    assertEquals(0, region.distanceTo(Region.line(new XY(30, 158), new XY(30, 159))));
    assertEquals(25, region.distanceTo(Region.of(new Box(10, 185, 40, 5))), 1e-9);
  }
}
