package io.github.readfall.draw;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Measurement;
import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.Region;
import io.github.readfall.base.geom.XY;
import io.github.readfall.base.viewing.Colour;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Draws gaps that are too small: a measure across the gap, and its length. */
final class GapArtist {

  /** The strokes across the ends of a measure, in units. House defaults, no source. */
  private static final double END = 0.5;

  private static final double RING = 0.7;
  private static final double TOO_SHORT = 0.4;

  /** The rules whose findings are about a gap. */
  static final Set<String> RULES =
      Set.of("space/crowded", "space/tangent", "space/margin", "space/tight");

  private final Galley galley;
  private final Pen pen;
  private final FreeSpots spots;
  private final Map<String, PlacedBalloon> byId;

  /** The two points between which a distance was measured. */
  private record Ends(XY from, XY to) {

    static Ends of(List<XY> two) {
      return new Ends(two.get(0), two.get(1));
    }

    double px() {
      return from.distanceTo(to);
    }

    XY middle() {
      return from.towards(to, 0.5);
    }
  }

  GapArtist(Galley galley, Pen pen, FreeSpots spots) {
    this.galley = galley;
    this.pen = pen;
    this.spots = spots;
    this.byId =
        galley.balloons().stream()
            .collect(Collectors.toMap(PlacedBalloon::id, Function.identity()));
  }

  /** The measures of those findings that are about a gap. */
  List<Mark> measures(List<Finding> findings) {
    List<Mark> marks = new ArrayList<>();
    for (Finding finding : findings) {
      ends(finding).ifPresent(ends -> marks.addAll(measure(finding, ends)));
    }
    return marks;
  }

  private Optional<Ends> ends(Finding finding) {
    List<PlacedBalloon> about =
        finding.where().balloons().stream().map(byId::get).filter(b -> b != null).toList();
    if (about.isEmpty()) {
      return Optional.empty();
    }
    return switch (finding.rule()) {
      case "space/crowded", "space/tangent" ->
          about.size() < 2
              ? finding.box().map(box -> Ends.of(about.get(0).body().nearest(region(box))))
              : Optional.of(Ends.of(about.get(0).body().nearest(about.get(1).body())));
      case "space/margin" -> Optional.of(toTheSide(about.get(0)));
      case "space/tight" -> toTheOutline(about.get(0));
      default -> Optional.empty();
    };
  }

  /** The element that a balloon comes near to, such as a panel's border. */
  private static Region region(Box box) {
    boolean isLine = box.width() == 0 || box.height() == 0;
    XY end = new XY(box.right(), box.bottom());
    return isLine ? Region.line(new XY(box.x(), box.y()), end) : Region.of(box);
  }

  private Ends toTheSide(PlacedBalloon balloon) {
    double heightPx = galley.heightPx();
    return Stream.of(0.0, galley.widthPx())
        .map(x -> Region.line(new XY(x, 0), new XY(x, heightPx)))
        .map(side -> Ends.of(balloon.body().nearest(side)))
        .min(Comparator.comparingDouble(Ends::px))
        .orElseThrow();
  }

  private static Optional<Ends> toTheOutline(PlacedBalloon balloon) {
    Region outline = balloon.body().edge();
    return LetterBoxes.of(balloon)
        .map(line -> Ends.of(Region.of(line).nearest(outline)))
        .min(Comparator.comparingDouble(Ends::px));
  }

  private List<Mark> measure(Finding finding, Ends ends) {
    Colour colour = FindingArtist.colour(finding.severity());
    List<Mark> marks = new ArrayList<>(across(ends, colour));
    finding
        .measurement()
        .map(Measurement::figure)
        .ifPresent(
            figure ->
                marks.addAll(
                    pen.onPlate(figure, spots.take(pen.plate(figure), ends.middle()), colour)));
    return marks;
  }

  /** A line with a stroke across either end; a ring if there is hardly a gap at all. */
  private List<Mark> across(Ends ends, Colour colour) {
    double widthPx = pen.unitPx() / 6;
    if (ends.px() < TOO_SHORT * pen.unitPx()) {
      return List.of(
          new Mark.Line(
              Shapes.disc(ends.middle(), RING * pen.unitPx()), colour, widthPx, List.of()));
    }
    double sideX = (ends.to().y() - ends.from().y()) / ends.px() * END * pen.unitPx();
    double sideY = -(ends.to().x() - ends.from().x()) / ends.px() * END * pen.unitPx();
    return Stream.of(
            Shapes.line(ends.from(), ends.to()),
            Shapes.line(ends.from().plus(sideX, sideY), ends.from().plus(-sideX, -sideY)),
            Shapes.line(ends.to().plus(sideX, sideY), ends.to().plus(-sideX, -sideY)))
        .<Mark>map(path -> new Mark.Line(path, colour, widthPx, List.of()))
        .toList();
  }
}
