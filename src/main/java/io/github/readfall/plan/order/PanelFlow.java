package io.github.readfall.plan.order;

import io.github.readfall.base.geom.Box;
import io.github.readfall.lettering.style.ReadingSide;
import io.github.readfall.strip.PanelBox;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The reading path from panel to panel: down the strip; along a row from the leading side; down a
 * stack beside a tall panel before that panel, if the stack leads; down columns that are far apart
 * ({@link EyeTolerances} says what is from which paper). An inset goes with its frame.
 */
public final class PanelFlow {

  private final List<PanelBox> panels;
  private final ReadingSide side;
  private final Nesting nesting;
  private final List<Columns> bands;
  private final int[] bandOf;
  private final Arrangement arrangement;

  private PanelFlow(List<PanelBox> panels, ReadingSide side) {
    this.panels = panels.stream().sorted(Comparator.comparingInt(PanelBox::panel)).toList();
    this.side = side;
    this.nesting = Nesting.of(this.panels.stream().map(PanelBox::box).toList());
    this.bands = bands(roots().stream().map(this::box).toList());
    this.bandOf = new int[this.panels.size()];
    Arrays.setAll(bandOf, panel -> bandAt(box(nesting.root(panel))));
    this.arrangement = Arrangement.of(byBand(), new ByPanels());
  }

  /** The path along some panels. */
  public static PanelFlow of(List<PanelBox> panels, ReadingSide side) {
    return new PanelFlow(panels, side);
  }

  /** The panels in script order, to which indices from 0 refer. */
  public List<PanelBox> panels() {
    return panels;
  }

  /** The panels in reading order. */
  public List<PanelBox> met() {
    return arrangement.met().stream().map(panels::get).toList();
  }

  /**
   * The fewest panels to move so that all are read in script order; nested ones are never compared.
   */
  public List<Displaced> displaced() {
    return arrangement.displaced(panel -> false, panel -> true);
  }

  /** Returns true if one of two panels is inside the other. */
  public boolean isNested(int a, int b) {
    return nesting.isNested(a, b);
  }

  /** Which of two panels is read first; the earlier of the script is named first. */
  public ReadFirst meeting(int earlier, int later) {
    if (nesting.isNested(earlier, later)) {
      return new ReadFirst(true, ReadingReason.NESTED, 0);
    }
    Box a = box(nesting.beside(earlier, later));
    Box b = box(nesting.beside(later, earlier));
    ReadFirst plain = new Eye(side).panels(a, b);
    boolean row = plain.why() == ReadingReason.ROW || plain.why() == ReadingReason.SAME_COLUMN;
    return row || bandOf[earlier] != bandOf[later]
        ? plain
        : byColumns(bands.get(bandOf[earlier]), a, b, plain);
  }

  private ReadFirst byColumns(Columns band, Box a, Box b, ReadFirst plain) {
    int column = Integer.compare(band.columnOf(a, side), band.columnOf(b, side));
    return column == 0 || column < 0 == plain.inOrder()
        ? plain
        : new ReadFirst(column < 0, ReadingReason.COLUMN, band.ratio());
  }

  /** The stretch of the strip that a panel is in, counted from the top. */
  int band(int panel) {
    return bandOf[panel];
  }

  private Box box(int panel) {
    return panels.get(panel).box();
  }

  private List<Integer> roots() {
    return IntStream.range(0, panels.size())
        .filter(panel -> nesting.root(panel) == panel)
        .boxed()
        .toList();
  }

  private static List<Columns> bands(List<Box> roots) {
    List<Columns> bands = new ArrayList<>();
    for (Columns band : levelBands(roots)) {
      int last = bands.size() - 1;
      if (last < 0) {
        bands.add(band);
        continue;
      }
      bands
          .get(last)
          .joinedWith(band)
          .ifPresentOrElse(j -> bands.set(last, j), () -> bands.add(band));
    }
    return bands;
  }

  /** The panels in stretches between which a level line cuts no panel, from the top. */
  private static List<Columns> levelBands(List<Box> roots) {
    List<Columns> bands = new ArrayList<>();
    List<Box> band = new ArrayList<>();
    double bottom = Double.NEGATIVE_INFINITY;
    for (Box box : roots.stream().sorted(Comparator.comparingDouble(Box::y)).toList()) {
      if (!band.isEmpty() && box.y() >= bottom) {
        bands.add(Columns.band(band));
        band.clear();
      }
      band.add(box);
      bottom = Math.max(bottom, box.bottom());
    }
    if (!band.isEmpty()) {
      bands.add(Columns.band(band));
    }
    return bands;
  }

  /** The last stretch that does not begin below a panel. */
  private int bandAt(Box root) {
    int from = 0;
    int to = bands.size() - 1;
    while (from < to) {
      int middle = (from + to + 1) / 2;
      if (bands.get(middle).top() <= root.y()) {
        from = middle;
      } else {
        to = middle - 1;
      }
    }
    return from;
  }

  private List<List<Integer>> byBand() {
    List<List<Integer>> groups = new ArrayList<>();
    bands.forEach(band -> groups.add(new ArrayList<>()));
    for (int panel = 0; panel < bandOf.length; panel++) {
      groups.get(bandOf[panel]).add(panel);
    }
    return groups;
  }

  /**
   * Compares panels. Those of a row can be out of order; insets, and columns that readers take
   * either way, cannot.
   */
  private final class ByPanels implements Arrangement.Relation {
    @Override
    public ReadFirst meeting(int earlier, int later) {
      return PanelFlow.this.meeting(earlier, later);
    }

    @Override
    public boolean judges(ReadingReason why) {
      return why != ReadingReason.NESTED
          && why != ReadingReason.COLUMN
          && why != ReadingReason.SAME_COLUMN;
    }
  }
}
