package io.github.readfall.draw;

import io.github.readfall.finding.Finding;
import io.github.readfall.finding.Measurement;
import io.github.readfall.flow.ReadingOrder;
import io.github.readfall.flow.Step;
import io.github.readfall.galley.Galley;
import io.github.readfall.galley.PlacedBalloon;
import io.github.readfall.geom.Box;
import io.github.readfall.geom.SvgPath;
import io.github.readfall.geom.XY;
import io.github.readfall.strip.KeepClear;
import io.github.readfall.strip.PanelBox;
import io.github.readfall.typeset.Labels;
import io.github.readfall.viewing.Colour;
import io.github.readfall.viewing.Phone;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Draws a whole strip for whoever checks it: panels, lettering, the eye's path numbered through it,
 * cuts, and every finding where it is, with its words beside the strip. Measures and colours are
 * house defaults, no source.
 */
public final class StripSheet {

  private static final Colour PAPER = new Colour(0xe9e6e0);
  private static final Colour STRIP = Colour.WHITE;
  private static final Colour PANEL = new Colour(0xd9dcdb);
  private static final Colour BORDER = new Colour(0x8b9190);
  private static final Colour KEPT = new Colour(0xbfc7c5);
  private static final Colour INK = new Colour(0x3b3a38);
  private static final Colour QUIET = new Colour(0x6b6862);
  private static final Colour PATH = new Colour(0x2e7d7a);
  private static final Colour ERROR = new Colour(0xa3234b);
  private static final Colour WARNING = new Colour(0x9a5b00);
  private static final Colour REMARK = new Colour(0x4d5f80);

  /** Width of the column beside the strip, over the strip's. */
  private static final double COLUMN = 0.5;

  /** Radius of a number's disc, in units. */
  private static final double NUMBER = 1.15;

  /** The corner of an ellipse over that of its box: the sine of 45 degrees. */
  private static final double ROUND_CORNER = 0.7071;

  private final Galley galley;
  private final List<Finding> findings;
  private final double unitPx;
  private final double leftPx;
  private final Note small;
  private final Note plain;
  private final List<Mark> marks = new ArrayList<>();
  private final List<Box> figures = new ArrayList<>();

  private StripSheet(Galley galley, List<Finding> findings, Labels labels) {
    this.galley = galley;
    this.findings =
        findings.stream()
            .filter(finding -> finding.box().isPresent())
            .sorted(Comparator.comparingDouble(StripSheet::topPx))
            .toList();
    this.unitPx = galley.widthPx() / 64.0;
    this.leftPx = 7 * unitPx;
    this.small = new Note(labels, 1.1 * unitPx);
    this.plain = new Note(labels, 1.5 * unitPx);
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
    galley.panels().forEach(this::panel);
    galley.keepClear().forEach(this::keepClear);
    List<Step> steps =
        ReadingOrder.of(galley).path().stream().filter(step -> !step.entersPanel()).toList();
    path(steps);
    GalleyArtist.lettering(galley).forEach(mark -> marks.add(mark.movedBy(leftPx, 0)));
    numbers(steps);
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

  private void panel(PanelBox panel) {
    Box box = onSheet(panel.box());
    marks.add(new Mark.Fill(Shapes.box(box), PANEL));
    marks.add(new Mark.Line(Shapes.box(box), BORDER, unitPx / 8, List.of()));
    String name = Integer.toString(panel.panel());
    double x = box.right() - unitPx - small.widthPx(name, true);
    marks.addAll(small.line(name, new XY(x, box.bottom() - 0.8 * unitPx), true, BORDER));
  }

  private void keepClear(KeepClear area) {
    Box box = onSheet(area.box());
    marks.add(new Mark.Fill(Shapes.box(box), KEPT));
    marks.addAll(
        small.line(
            area.what(), new XY(box.x() + unitPx / 2, box.y() + 1.2 * unitPx), false, QUIET));
  }

  /** A ruler of phone screens on the left. */
  private void screens() {
    Phone phone = galley.set().phone();
    double screenPx = phone.heightDp() * galley.widthPx() / phone.widthDp();
    int screen = 1;
    for (double y = 0; y < galley.heightPx(); y += screenPx) {
      rule(new XY(2 * unitPx, y), new XY(leftPx - unitPx / 2, y), QUIET, List.of());
      marks.addAll(
          small.line("screen " + screen, new XY(1.2 * unitPx, y + 1.4 * unitPx), false, QUIET));
      screen++;
    }
  }

  private void cuts() {
    for (double y : galley.cuts().pages()) {
      rule(
          new XY(leftPx, y),
          new XY(leftPx + galley.widthPx(), y),
          INK,
          List.of(unitPx, unitPx / 2, unitPx / 6, unitPx / 2));
      rule(new XY(leftPx - unitPx / 2, y), new XY(leftPx, y), INK, List.of());
      beside("page ends", y - 0.4 * unitPx);
      beside(SvgPath.number(Math.rint(y)), y + 1.2 * unitPx);
    }
    for (double y : galley.cuts().slices()) {
      rule(new XY(leftPx, y), new XY(leftPx + 1.5 * unitPx, y), INK, List.of());
      double right = leftPx + galley.widthPx();
      rule(new XY(right - 1.5 * unitPx, y), new XY(right, y), INK, List.of());
    }
  }

  /** On the left of the strip, next to it. */
  private void beside(String text, double baseline) {
    double x = leftPx - unitPx - small.widthPx(text, false);
    marks.addAll(small.line(text, new XY(x, baseline), false, INK));
  }

  private void rule(XY from, XY to, Colour colour, List<Double> dashes) {
    marks.add(new Mark.Line(Shapes.line(from, to), colour, unitPx / 8, dashes));
  }

  /** Behind the lettering, so that no letter is crossed by it. */
  private void path(List<Step> steps) {
    List<XY> points = steps.stream().map(step -> step.at().plus(leftPx, 0)).toList();
    marks.add(
        new Mark.Line(Shapes.fall(points), PATH, unitPx / 4, List.of(unitPx / 2, unitPx / 2)));
  }

  private void numbers(List<Step> steps) {
    Map<String, PlacedBalloon> byId =
        galley.balloons().stream().collect(Collectors.toMap(PlacedBalloon::id, b -> b));
    for (int i = 0; i < steps.size(); i++) {
      Step step = steps.get(i);
      XY at =
          Optional.ofNullable(byId.get(step.balloon()))
              .map(StripSheet::leadingEdge)
              .orElse(step.at())
              .plus(leftPx, 0);
      marks.add(new Mark.Fill(Shapes.disc(at, NUMBER * unitPx), PATH));
      String number = Integer.toString(i + 1);
      marks.addAll(small.centred(number, at.plus(0, 0.36 * unitPx), true, Colour.WHITE));
    }
  }

  /** On the upper left of the outline, off its letters. */
  private static XY leadingEdge(PlacedBalloon balloon) {
    Box box = balloon.box();
    if (balloon.isUnboxedEffect()) {
      return new XY(box.x() - box.height() / 4, box.centre().y());
    }
    double aside = balloon.set().look().shape().isRound() ? (1 - ROUND_CORNER) / 2 : 0;
    return new XY(box.x() + aside * box.width(), box.y() + aside * box.height());
  }

  /** Marks each finding, and writes its words beside the strip; the height after the last. */
  private double findings() {
    double y = 2 * unitPx;
    for (Finding finding : findings) {
      Box box = onSheet(finding.box().orElseThrow());
      Colour colour = colour(finding);
      List<Double> dashes = dashes(finding);
      Box round = box.grownBy(unitPx / 3);
      marks.add(new Mark.Line(Shapes.box(round), colour, unitPx / 5, dashes));
      measure(finding, round, colour);
      y = words(finding, colour, Math.max(y, box.y()), round);
    }
    return y;
  }

  private void measure(Finding finding, Box box, Colour colour) {
    finding
        .measurement()
        .map(StripSheet::figure)
        .ifPresent(
            text -> marks.addAll(small.line(text, free(above(box, text), text), true, colour)));
  }

  /** At the right end of a box, where no number is. */
  private XY above(Box box, String text) {
    return new XY(box.right() - small.widthPx(text, true), box.y() - 0.3 * unitPx);
  }

  /** Upwards from a place, where no other figure is. */
  private XY free(XY at, String text) {
    double width = small.widthPx(text, true);
    Box place = new Box(at.x(), at.y() - unitPx, width, unitPx);
    while (figures.stream().anyMatch(place::meets)) {
      place = place.movedBy(0, -1.2 * unitPx);
    }
    figures.add(place);
    return new XY(place.x(), place.bottom());
  }

  private static String figure(Measurement m) {
    boolean one = m.measured() == 1 && m.unit().endsWith("s");
    String unit = one ? m.unit().substring(0, m.unit().length() - 1) : m.unit();
    return SvgPath.number(Math.rint(m.measured() * 10) / 10) + " " + unit;
  }

  private double words(Finding finding, Colour colour, double top, Box box) {
    double x = leftPx + galley.widthPx() + 1.5 * unitPx;
    double measure = galley.widthPx() * COLUMN - 3 * unitPx;
    double y = top + plain.fontPx();
    rule(
        new XY(Math.min(box.right(), leftPx + galley.widthPx()), box.y()),
        new XY(x - unitPx / 2, y - unitPx / 2),
        colour,
        dashes(finding));
    marks.addAll(
        plain.line(finding.severity().word() + "  " + finding.rule(), new XY(x, y), true, colour));
    for (String line : plain.wrapped(finding.message(), measure)) {
      y += plain.leadingPx();
      marks.addAll(plain.line(line, new XY(x, y), false, INK));
    }
    return y + 1.5 * unitPx;
  }

  private static Colour colour(Finding finding) {
    return switch (finding.severity()) {
      case ERROR -> ERROR;
      case WARNING -> WARNING;
      case NOTE -> REMARK;
    };
  }

  /** Severity is also told by the line, for those who do not see its colour. */
  private List<Double> dashes(Finding finding) {
    return switch (finding.severity()) {
      case ERROR -> List.of();
      case WARNING -> List.of(unitPx, unitPx / 2);
      case NOTE -> List.of(unitPx / 4, unitPx / 2);
    };
  }
}
