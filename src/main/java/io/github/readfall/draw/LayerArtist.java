package io.github.readfall.draw;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.Path;
import io.github.readfall.base.geom.XY;
import io.github.readfall.base.viewing.Colour;
import io.github.readfall.draw.StripLayers.Part;
import io.github.readfall.strip.Mouth;
import io.github.readfall.strip.PanelBox;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Draws a strip layer by layer. */
final class LayerArtist {

  /** A long line is drawn in pieces of so many units, so that a part of it can be drawn alone. */
  private static final double PIECE = 40;

  /** Room between frames that would coincide. */
  private static final double APART = 0.45;

  private static final double TIP = 0.5;
  private static final double MOUTH = 0.55;

  private final Galley galley;
  private final List<Finding> findings;
  private final Pen pen;
  private final PanelArtist panels;
  private final FindingArtist finder;
  private final FreeSpots spots;

  LayerArtist(Galley galley, List<Finding> findings, Pen pen) {
    this.galley = galley;
    this.findings = findings.stream().filter(Finding::isOpen).toList();
    this.pen = pen;
    this.panels = new PanelArtist(pen);
    this.finder = new FindingArtist(pen);
    this.spots = new FreeSpots(galley);
  }

  StripLayers layers(DrawnCache before) {
    PathArtist path = PathArtist.of(galley, pen);
    path.numberBoxes().forEach(spots::keep);
    List<Part> under =
        List.of(
            new Part(Layer.PANELS, each(galley.panels(), panels::ground)),
            new Part(Layer.KEEP_CLEAR, each(galley.keepClear(), panels::kept)));
    List<Part> over =
        List.of(
            new Part(Layer.PANEL_FRAMES, each(galley.panels(), this::frame)),
            new Part(Layer.KEEP_CLEAR, each(galley.keepClear(), panels::keptEdge)),
            new Part(Layer.MARGINS, margins()),
            new Part(Layer.PATH, path.legs()),
            new Part(Layer.LETTERING, before.lettering(galley)),
            new Part(Layer.CUTS, cuts()),
            new Part(Layer.TAILS, tails()),
            new Part(Layer.FINDINGS, frames()),
            new Part(Layer.GAPS, new GapArtist(galley, pen, spots).measures(findings)),
            new Part(Layer.OVERFLOW, new OverflowArtist(galley, pen, spots).marks(findings)),
            new Part(Layer.PATH, path.numbers()),
            new Part(Layer.FINDINGS, figures()));
    return new StripLayers(under, over);
  }

  private static <T> List<Mark> each(List<T> items, Function<T, List<Mark>> drawn) {
    return items.stream().flatMap(item -> drawn.apply(item).stream()).toList();
  }

  private List<Mark> frame(PanelBox panel) {
    List<Mark> marks = new ArrayList<>(panels.border(panel));
    String name = Integer.toString(panel.panel());
    Box size = pen.plate(name);
    double half = pen.unitPx() / 2;
    XY corner =
        new XY(
            panel.box().right() - half - size.width() / 2,
            panel.box().bottom() - half - size.height() / 2);
    marks.addAll(pen.onPlate(name, spots.take(size, corner), Pen.QUIET));
    return marks;
  }

  private List<Mark> margins() {
    double marginPx = galley.style().limit("space/margin", galley.style().strip().safeMarginPx());
    double piecePx = PIECE * pen.unitPx();
    List<Mark> marks = new ArrayList<>();
    for (double top = 0; top < galley.heightPx(); top += piecePx) {
      double bottom = Math.min(top + piecePx, galley.heightPx());
      for (double x : List.of(marginPx, galley.widthPx() - marginPx)) {
        XY from = new XY(x, top);
        XY to = new XY(x, bottom);
        marks.add(pen.rule(from, to, Colour.WHITE, List.of())); // seen between dashes over art
        marks.add(pen.rule(from, to, Pen.REMARK, List.of(pen.unitPx(), pen.unitPx())));
      }
    }
    return marks;
  }

  private List<Mark> cuts() {
    CutArtist artist = new CutArtist(pen, galley.widthPx());
    List<Mark> marks = new ArrayList<>();
    for (double y : galley.cuts().pages()) {
      marks.add(artist.page(y));
      marks.addAll(named(CutArtist.PAGE + " " + CutArtist.height(y), y));
    }
    for (double y : galley.cuts().slices()) {
      marks.addAll(artist.slice(y));
      marks.addAll(named(CutArtist.SLICE + " " + CutArtist.height(y), y));
    }
    return marks;
  }

  /** A name at the left, above a cut. */
  private List<Mark> named(String text, double y) {
    Box size = pen.plate(text);
    XY wanted = new XY(pen.unitPx() + size.width() / 2, y - size.height() / 2 - pen.unitPx() / 4);
    return pen.onPlate(text, spots.take(size, wanted), Pen.INK);
  }

  private List<Mark> tails() {
    List<Mark> marks = new ArrayList<>();
    for (PlacedBalloon balloon : galley.balloons()) {
      balloon.tails().forEach(tail -> marks.addAll(tip(tail.tip())));
    }
    for (Mouth mouth : galley.mouths()) {
      marks.addAll(cross(mouth.at()));
    }
    return marks;
  }

  private List<Mark> tip(XY at) {
    Path ring = Shapes.disc(at, TIP * pen.unitPx());
    return List.of(
        new Mark.Line(ring, Colour.WHITE, pen.unitPx() / 2, List.of()),
        new Mark.Line(ring, Pen.TAIL, pen.unitPx() / 4, List.of()));
  }

  private List<Mark> cross(XY at) {
    double arm = MOUTH * pen.unitPx();
    return Stream.of(1, -1)
        .map(side -> Shapes.line(at.plus(-arm, -arm * side), at.plus(arm, arm * side)))
        .flatMap(
            line ->
                Stream.<Mark>of(
                    new Mark.Line(line, Colour.WHITE, pen.unitPx() / 2, List.of()),
                    new Mark.Line(line, Pen.TAIL, pen.unitPx() / 4, List.of())))
        .toList();
  }

  private List<Mark> frames() {
    List<Mark> marks = new ArrayList<>();
    List<Box> drawn = new ArrayList<>();
    for (Finding finding : findings) {
      finding
          .box()
          .map(box -> isLine(box) ? finder.round(box) : apart(finder.round(box), drawn))
          .ifPresent(round -> marks.addAll(frame(finding, round)));
    }
    return marks;
  }

  private static boolean isLine(Box box) {
    return box.width() == 0 || box.height() == 0;
  }

  /** The box enlarged until none of its sides coincides with another's. */
  private Box apart(Box round, List<Box> drawn) {
    double nearPx = pen.unitPx() * APART / 2;
    Box box = round;
    for (int i = 0; i < drawn.size() && drawn.stream().anyMatch(isOn(box, nearPx)); i++) {
      box = box.grownBy(pen.unitPx() * APART);
    }
    drawn.add(box);
    return box;
  }

  private static Predicate<Box> isOn(Box box, double nearPx) {
    return other ->
        box.meets(other)
            && (Math.abs(box.x() - other.x()) < nearPx
                || Math.abs(box.y() - other.y()) < nearPx
                || Math.abs(box.right() - other.right()) < nearPx
                || Math.abs(box.bottom() - other.bottom()) < nearPx);
  }

  /** A frame with gaps where it would cross letters. */
  private List<Mark> frame(Finding finding, Box round) {
    if (!spots.isCrossed(round)) {
      return List.of(finder.frame(finding, round));
    }
    return spots.sides(round).stream()
        .flatMap(side -> spots.pieces(side, pen.unitPx() / 3).stream())
        .map(piece -> finder.side(finding, piece))
        .toList();
  }

  /** The measures, at the upper right of each frame, if no other layer shows them. */
  private List<Mark> figures() {
    List<Mark> marks = new ArrayList<>();
    for (Finding finding : findings) {
      boolean said =
          GapArtist.RULES.contains(finding.rule()) || OverflowArtist.RULES.contains(finding.rule());
      if (!said && finding.box().isPresent() && finding.measurement().isPresent()) {
        String figure = finding.measurement().orElseThrow().figure();
        Box round = finder.round(finding.box().orElseThrow());
        Box size = pen.plate(figure);
        XY wanted = new XY(round.right() - size.width() / 2, round.y() - size.height() / 2);
        Colour colour = FindingArtist.colour(finding.severity());
        marks.addAll(pen.onPlate(figure, spots.take(size, wanted), colour));
      }
    }
    return marks;
  }
}
