package io.github.readfall.draw;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Measurement;
import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.base.viewing.Colour;
import io.github.readfall.base.viewing.Phone;
import io.github.readfall.lettering.typeset.Labels;
import io.github.readfall.strip.PanelBox;
import io.github.readfall.strip.galley.Galley;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Draws a whole strip for a reviewer: panels, lettering, the numbered reading path, cuts, and every
 * finding at its place, with its words beside the strip. Measures and colours are house defaults,
 * no source.
 */
public final class StripSheet {

  private static final Colour PAPER = new Colour(0xe9e6e0);
  private static final Colour STRIP = Colour.WHITE;

  /** Width of the column beside the strip, over the strip's. */
  private static final double COLUMN = 0.5;

  private final Galley galley;
  private final List<Finding> findings;
  private final double unitPx;
  private final double leftPx;
  private final Pen pen;
  private final FindingArtist finder;
  private final MarginNote small;
  private final MarginNote plain;
  private final List<Mark> marks = new ArrayList<>();
  private final List<Box> figures = new ArrayList<>();

  private StripSheet(Galley galley, List<Finding> findings, Labels labels) {
    this.galley = galley;
    this.findings =
        findings.stream()
            .filter(finding -> finding.box().isPresent())
            .sorted(Comparator.comparingDouble(StripSheet::topPx))
            .toList();
    this.pen = Pen.of(galley, labels);
    this.finder = new FindingArtist(pen);
    this.unitPx = pen.unitPx();
    this.leftPx = 7 * unitPx;
    this.small = pen.small();
    this.plain = new MarginNote(labels, 1.5 * unitPx);
  }

  /**
   * The sheet of a strip.
   *
   * @param findings those with a place on the strip are marked; others are left out
   */
  public static Drawing of(Galley galley, List<Finding> findings, Labels labels) {
    return new StripSheet(galley, findings, labels).draw();
  }

  private static double topPx(Finding finding) {
    return finding.box().map(Box::y).orElse(0.0);
  }

  private Drawing draw() {
    double width = leftPx + galley.widthPx() * (1 + COLUMN);
    marks.add(new Mark.Fill(Shapes.box(onSheet(galley.extent())), STRIP));
    PanelArtist panels = new PanelArtist(pen);
    galley.panels().forEach(panel -> panel(panel, panels));
    galley.keepClear().forEach(area -> onStrip(panels.kept(area)));
    PathArtist path = PathArtist.of(galley, pen);
    onStrip(path.way());
    onStrip(GalleyArtist.lettering(galley));
    onStrip(path.numbers());
    screens();
    cuts();
    double below = findings();
    double height = Math.max(galley.heightPx(), below) + 2 * unitPx;
    String title = galley.set().script().title();
    return new Drawing(
        title.isBlank() ? "Untitled" : title,
        galley.set().script().language(),
        (int) Math.ceil(width),
        (int) Math.ceil(height),
        PAPER,
        marks);
  }

  private Box onSheet(Box box) {
    return box.movedBy(leftPx, 0);
  }

  /** Adds marks of the strip at its place on the sheet. */
  private void onStrip(List<Mark> ofStrip) {
    ofStrip.forEach(mark -> marks.add(mark.movedBy(leftPx, 0)));
  }

  private void panel(PanelBox panel, PanelArtist panels) {
    onStrip(panels.ground(panel));
    onStrip(panels.border(panel));
    onStrip(panels.number(panel));
  }

  /** A ruler of phone screens on the left. */
  private void screens() {
    Phone phone = galley.set().phone();
    double screenPx = phone.heightDp() * galley.widthPx() / phone.widthDp();
    int screen = 1;
    for (double y = 0; y < galley.heightPx(); y += screenPx) {
      rule(new XY(2 * unitPx, y), new XY(leftPx - unitPx / 2, y), Pen.QUIET, List.of());
      marks.addAll(
          small.line("screen " + screen, new XY(1.2 * unitPx, y + 1.4 * unitPx), false, Pen.QUIET));
      screen++;
    }
  }

  private void cuts() {
    CutArtist artist = new CutArtist(pen, galley.widthPx());
    for (double y : galley.cuts().pages()) {
      onStrip(List.of(artist.page(y)));
      rule(new XY(leftPx - unitPx / 2, y), new XY(leftPx, y), Pen.INK, List.of());
      beside(CutArtist.PAGE, y - 0.4 * unitPx);
      beside(CutArtist.height(y), y + 1.2 * unitPx);
    }
    galley.cuts().slices().forEach(y -> onStrip(artist.slice(y)));
  }

  /** Writes on the left of the strip, next to it. */
  private void beside(String text, double baseline) {
    double x = leftPx - unitPx - small.widthPx(text, false);
    marks.addAll(small.line(text, new XY(x, baseline), false, Pen.INK));
  }

  private void rule(XY from, XY to, Colour colour, List<Double> dashes) {
    marks.add(pen.rule(from, to, colour, dashes));
  }

  /** Marks each finding, and writes its words beside the strip; the height after the last. */
  private double findings() {
    double y = 2 * unitPx;
    for (Finding finding : findings) {
      Box box = onSheet(finding.box().orElseThrow());
      Colour colour = StripLayers.colourOf(finding);
      Box round = finder.round(box);
      if (finding.isOpen()) {
        marks.add(finder.frame(finding, round));
        measure(finding, round, colour);
      }
      y = words(finding, colour, Math.max(y, box.y()), round);
    }
    return y;
  }

  private void measure(Finding finding, Box box, Colour colour) {
    finding
        .measurement()
        .map(Measurement::figure)
        .ifPresent(
            text -> marks.addAll(small.line(text, free(above(box, text), text), true, colour)));
  }

  /** The place at the right end of a box, where no number is. */
  private XY above(Box box, String text) {
    return new XY(box.right() - small.widthPx(text, true), box.y() - 0.3 * unitPx);
  }

  /** The first place upwards from another where no figure is. */
  private XY free(XY at, String text) {
    double width = small.widthPx(text, true);
    Box place = new Box(at.x(), at.y() - unitPx, width, unitPx);
    while (figures.stream().anyMatch(place::meets)) {
      place = place.movedBy(0, -1.2 * unitPx);
    }
    figures.add(place);
    return new XY(place.x(), place.bottom());
  }

  private double words(Finding finding, Colour colour, double top, Box box) {
    double x = leftPx + galley.widthPx() + 1.5 * unitPx;
    double measure = galley.widthPx() * COLUMN - 3 * unitPx;
    double y = top + plain.fontPx();
    rule(
        new XY(Math.min(box.right(), leftPx + galley.widthPx()), box.y()),
        new XY(x - unitPx / 2, y - unitPx / 2),
        colour,
        finder.dashes(finding.severity()));
    String head = finding.isOpen() ? finding.severity().word() : "ignored";
    marks.addAll(plain.line(head + "  " + finding.rule(), new XY(x, y), true, colour));
    for (String line : plain.wrapped(finding.reason().orElse(finding.message()), measure)) {
      y += plain.leadingPx();
      marks.addAll(plain.line(line, new XY(x, y), false, Pen.INK));
    }
    return y + 1.5 * unitPx;
  }
}
