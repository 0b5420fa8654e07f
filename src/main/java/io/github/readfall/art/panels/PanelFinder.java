package io.github.readfall.art.panels;

import io.github.readfall.art.StripRows;
import io.github.readfall.art.UnreadableArt;
import io.github.readfall.base.geom.Box;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * Finds panels in strip art, reading it twice from the top: once reduced to cells, which tell
 * panels from paper, and once for the exact place of each side.
 */
public final class PanelFinder {

  /** Least width of the strip in cells. House default. */
  private static final int CELLS = 256;

  private static final int SKETCH_CELLS = 40_000;

  private final StripRows art;
  private final CellGrid grid;
  private final Tolerance tolerance;
  private final BitSet background;

  private PanelFinder(StripRows art, CellGrid grid) {
    this.art = art;
    this.grid = grid;
    this.tolerance = Tolerance.of(grid);
    this.background = Background.of(grid, tolerance);
  }

  /**
   * The panels of a strip.
   *
   * @param art of at least one row
   * @throws UnreadableArt if a page cannot be read to its end
   */
  public static FoundPanels find(StripRows art) throws UnreadableArt {
    CellSums sums = new CellSums(art.widthPx(), art.heightPx(), Math.max(1, art.widthPx() / CELLS));
    art.pour(sums);
    PanelFinder finder = new PanelFinder(art, sums.grid());
    return new FoundPanels(
        art.widthPx(), art.heightPx(), finder.panels(), ArtSketch.of(finder.grid, SKETCH_CELLS));
  }

  private List<FoundPanel> panels() throws UnreadableArt {
    List<PanelSides> frames = frames();
    List<Insets.Ring> rings = Insets.of(grid, tolerance, background);
    for (Insets.Ring ring : rings) {
      ring.paper().addTo(background, grid.columns());
      frames.add(Framing.of(grid, ring.inset(), false));
    }
    List<FrameProbe> probes = frames.stream().map(this::probe).toList();
    art.pour(new BorderSweep(probes.stream().flatMap(probe -> probe.probes().stream()).toList()));
    PanelShape shape = new PanelShape(grid.columns());
    return probes.stream()
        .map(FrameProbe::refined)
        .filter(frame -> shape.isPanel(frame, grid, tolerance))
        .map(this::found)
        .toList();
  }

  private FrameProbe probe(PanelSides frame) {
    return new FrameProbe(
        probe(frame.top()),
        probe(frame.bottom()),
        probe(frame.left()),
        probe(frame.right()),
        frame.parted());
  }

  private BorderProbe probe(BorderLine border) {
    return new BorderProbe(border, new PaperView(grid, background, border.side()), tolerance);
  }

  private List<PanelSides> frames() {
    List<PanelSides> frames = new ArrayList<>();
    PanelShape shape = new PanelShape(grid.columns());
    List<Piece> pieces = PieceSearch.of(grid, background, shape.leastHeight());
    for (Piece piece : shape.outermost(pieces)) {
      part(piece, false, frames);
    }
    return frames;
  }

  private void part(Piece piece, boolean parted, List<PanelSides> frames) {
    List<Piece> parts = Parting.of(piece, grid.columns());
    if (parts.isEmpty()) {
      frames.add(Framing.of(grid, piece, parted));
    }
    parts.forEach(one -> part(one, true, frames));
  }

  private FoundPanel found(PanelSides frame) {
    Box strip = new Box(0, 0, art.widthPx(), art.heightPx());
    Box box = within(frame.box(), strip);
    CertaintyReasons doubts = CertaintyReasons.of(frame, box, strip);
    return new FoundPanel(box, doubts.certainty(), doubts.reason());
  }

  private static Box within(Box box, Box strip) {
    double left = Math.max(0, Math.min(box.x(), strip.right() - 1));
    double top = Math.max(0, Math.min(box.y(), strip.bottom() - 1));
    double right = Math.max(left + 1, Math.min(box.right(), strip.right()));
    double bottom = Math.max(top + 1, Math.min(box.bottom(), strip.bottom()));
    return Box.ofEdges(left, top, right, bottom);
  }
}
