package io.github.readfall.draw;

import io.github.readfall.base.geom.Path;
import io.github.readfall.base.geom.XY;
import io.github.readfall.base.viewing.Audit;
import io.github.readfall.base.viewing.AuditRow;
import io.github.readfall.base.viewing.Colour;
import io.github.readfall.base.viewing.Phone;
import io.github.readfall.lettering.typeset.Labels;
import io.github.readfall.type.balloon.Enclosed;
import io.github.readfall.type.balloon.FitRules;
import io.github.readfall.type.balloon.OutlineStyle;
import io.github.readfall.type.balloon.ShapeKind;
import io.github.readfall.type.balloon.Stack;
import io.github.readfall.type.text.PlacedRun;
import io.github.readfall.type.text.SizedFace;
import io.github.readfall.type.text.TextLine;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Draws a measured height as one phone shows it: its screen filled by the strip, a balloon lettered
 * at that height, and below it one at the least height that can be read and one that is easy to
 * read. Measures are house defaults, no source.
 */
public final class AuditSheet {

  private static final Colour PAPER = new Colour(0xe9e6e0);
  private static final Colour INK = new Colour(0x111111);
  private static final Colour QUIET = new Colour(0x6b6862);

  private static final double MARGIN_EM = 0.49; // 0.75 of a capital, as a balloon has it
  private static final double LEADING_EM = 1.15;
  private static final double LINE_MARGINS = 0.22;
  private static final double PROBE_PX = 100;

  /** In 64ths of the strip's width. */
  private static final double LABEL = 3;

  private static final double FOOT = 5;

  private final Audit audit;
  private final AuditRow row;
  private final Labels labels;
  private final double unitPx;
  private final List<Mark> marks = new ArrayList<>();

  /** A balloon lettered at one height, and the words above it. */
  private record Specimen(
      String name,
      String size,
      List<TextLine> lines,
      Stack stack,
      Enclosed enclosed,
      FitRules rules,
      double labelPx) {

    double heightPx() {
      return labelPx + 2 * enclosed.halfHeightPx();
    }
  }

  private AuditSheet(Audit audit, Phone phone, Labels labels) {
    this.audit = audit;
    this.row = audit.on(phone);
    this.labels = labels;
    this.unitPx = audit.stripWidthPx() / 64;
  }

  /** The sheet of one height on one phone, as wide as the strip and as high as the phone. */
  public static Drawing of(Audit audit, Phone phone, Labels labels) {
    return new AuditSheet(audit, phone, labels).draw();
  }

  private Drawing draw() {
    Phone phone = row.phone();
    List<Specimen> specimens = specimens();
    double screenPx = audit.stripWidthPx() * phone.heightDp() / phone.widthDp();
    double takenPx = specimens.stream().mapToDouble(Specimen::heightPx).sum();
    double gapPx = (screenPx - takenPx - FOOT * unitPx) / (specimens.size() + 1);
    double airPx = Math.max(4 * unitPx, Math.min(gapPx, 8 * unitPx));
    double y = airPx;
    for (Specimen specimen : specimens) {
      draw(specimen, y);
      y += specimen.heightPx() + airPx;
    }
    double heightPx = Math.max(screenPx, y + FOOT * unitPx);
    String held =
        String.format(
            Locale.ROOT,
            "Phone \"%s\", %.0f dp wide: show this as wide as its screen, %.0f mm from the eye.",
            phone.name(),
            phone.widthDp(),
            phone.distanceMm());
    write(held, 3 * unitPx, heightPx - 2.6 * unitPx, 1.2 * unitPx, false, QUIET);
    return new Drawing(
        audit.kind().inWords() + " of " + AuditRow.down(audit.heightPx()) + " px",
        "en",
        (int) Math.ceil(audit.stripWidthPx()),
        (int) Math.ceil(heightPx),
        PAPER,
        marks);
  }

  private List<Specimen> specimens() {
    List<Specimen> specimens = new ArrayList<>();
    String yours = AuditRow.down(audit.heightPx()) + " px, " + AuditRow.down(row.arcmin()) + "′";
    specimens.add(specimen("yours", yours, audit.heightPx()));
    String least = AuditRow.up(row.leastPx()) + " px, " + AuditRow.down(audit.leastArcmin()) + "′";
    specimens.add(specimen("the least that can be read", least, row.leastPx()));
    if (audit.betterArcmin() > audit.leastArcmin()) {
      String better =
          AuditRow.up(row.betterPx()) + " px, " + AuditRow.down(audit.betterArcmin()) + "′";
      specimens.add(specimen("read with ease", better, row.betterPx()));
    }
    return specimens;
  }

  private Specimen specimen(String name, String size, double heightPx) {
    double em = em(heightPx);
    List<TextLine> lines = sample().stream().map(line -> labels.line(line, em, false)).toList();
    double leadingPx = LEADING_EM * em;
    FitRules rules = new FitRules(MARGIN_EM * em, leadingPx, 1, 2.6, Double.MAX_VALUE, 0, false);
    Stack stack = Stack.of(lines.stream().map(TextLine::box).toList(), leadingPx);
    Enclosed enclosed =
        ShapeKind.ELLIPSE
            .enclosure(OutlineStyle.SQUARENESS)
            .smallest(stack, rules, Double.POSITIVE_INFINITY);
    double labelPx = LABEL * unitPx;
    return new Specimen(name, size, lines, stack, enclosed, rules, labelPx);
  }

  /** A specimen in the middle of the sheet, its label above it. */
  private void draw(Specimen specimen, double top) {
    double baseline = top + 1.2 * unitPx;
    double nameWidth = write(specimen.name(), 3 * unitPx, baseline, 1.5 * unitPx, true, QUIET);
    write(specimen.size(), 4 * unitPx + nameWidth, baseline, 1.5 * unitPx, false, QUIET);
    Enclosed enclosed = specimen.enclosed();
    double middleY = top + specimen.labelPx() + enclosed.halfHeightPx();
    XY middle = new XY(audit.stripWidthPx() / 2, middleY);
    double marginPx = specimen.rules().marginPx();
    Path outline =
        ShapeKind.ELLIPSE
            .outline(enclosed, new OutlineStyle(marginPx, marginPx, OutlineStyle.SQUARENESS, 0))
            .movedBy(middle.x(), middle.y());
    List<Mark> drawn = new ArrayList<>();
    drawn.add(new Mark.Fill(outline, Colour.WHITE));
    drawn.add(new Mark.Line(outline, INK, LINE_MARGINS * marginPx, List.of()));
    double y = middle.y() + specimen.stack().firstBaselinePx();
    for (TextLine line : specimen.lines()) {
      double x = middle.x() - line.box().width() / 2 - line.box().left();
      glyphs(line, new XY(x, y), INK, drawn);
      y += specimen.rules().leadingPx();
    }
    String id = specimen.name().replace(' ', '-');
    marks.add(new Mark.Group(id, String.join(" ", sample()), drawn));
  }

  private List<String> sample() {
    return switch (audit.kind()) {
      case CAPITAL -> List.of("THE TIDE", "KEEPS ITS OWN", "CLOCK.");
      case X_HEIGHT -> List.of("The tide", "keeps its own", "clock.");
      case IDEOGRAPH, KANA -> List.of("水車は", "今夜も数えて", "いる。");
      default -> audit.kind().letters();
    };
  }

  /** The em at which letters of the audited kind have a height. */
  private double em(double heightPx) {
    SizedFace probe = labels.line(sample().get(0), PROBE_PX, false).runs().get(0).type();
    double px = probe.heightPx(audit.kind());
    return px > 0 ? PROBE_PX * heightPx / px : heightPx;
  }

  private double write(
      String text, double x, double baseline, double fontPx, boolean bold, Colour colour) {
    TextLine line = labels.line(text, fontPx, bold);
    glyphs(line, new XY(x, baseline), colour, marks);
    return line.advancePx();
  }

  private static void glyphs(TextLine line, XY at, Colour colour, List<Mark> to) {
    for (PlacedRun run : line.runs()) {
      to.add(new Mark.Glyphs(run, at, colour));
    }
  }
}
