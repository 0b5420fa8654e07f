package io.github.readfall.job.polyglot;

import io.github.readfall.base.finding.Shortened;
import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.Path;
import io.github.readfall.base.geom.XY;
import io.github.readfall.base.viewing.Colour;
import io.github.readfall.draw.Drawing;
import io.github.readfall.draw.Mark;
import io.github.readfall.draw.Shapes;
import io.github.readfall.lettering.typeset.Labels;
import io.github.readfall.script.Cue;
import io.github.readfall.type.text.PlacedRun;
import io.github.readfall.type.text.TextLine;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Draws how every cue fits its balloon in every language: a row for each cue, a column for each
 * language. A cell says what is needed; its tone says how much. Measures are house defaults, no
 * source.
 */
public final class MatrixSheet {

  private static final Colour PAPER = new Colour(0xf4f2ee);
  private static final Colour INK = new Colour(0x2b2a28);
  private static final Colour QUIET = new Colour(0x6b6862);
  private static final Colour RULE = new Colour(0xd9d5cd);

  private static final double UNIT_PX = 22;
  private static final double ROW_PX = 2 * UNIT_PX;
  private static final double EDGE_PX = 2 * UNIT_PX;
  private static final double NAMES_PX = 14 * UNIT_PX;
  private static final double LEAST_CELL_PX = 5 * UNIT_PX;
  private static final double TEXT_PX = UNIT_PX;
  private static final double SMALL_PX = 0.85 * UNIT_PX;
  private static final int LONGEST_NAME = 12;
  private static final int LONGEST_TITLE = 60;

  private final String title;
  private final FitMatrix matrix;
  private final Labels labels;
  private final double cellPx;
  private final List<Mark> marks = new ArrayList<>();

  private MatrixSheet(String title, FitMatrix matrix, Labels labels) {
    this.title = title;
    this.matrix = matrix;
    this.labels = labels;
    this.cellPx =
        matrix.editions().stream()
            .flatMap(edition -> edition.cues().stream())
            .mapToDouble(cue -> width(text(cue), SMALL_PX) + UNIT_PX)
            .reduce(LEAST_CELL_PX, Math::max);
  }

  /**
   * The picture of a matrix.
   *
   * @param title of the episode
   * @param language of the title, as a BCP 47 tag
   */
  public static Drawing of(String title, String language, FitMatrix matrix, Labels labels) {
    return new MatrixSheet(title, matrix, labels).draw(language);
  }

  private Drawing draw(String language) {
    double y = heads(EDGE_PX + 1.5 * UNIT_PX);
    for (Cue cue : matrix.cues()) {
      row(cue, y);
      y += ROW_PX;
    }
    y = sums(y + 0.5 * UNIT_PX);
    double width =
        Math.max(2 * EDGE_PX + NAMES_PX + matrix.editions().size() * cellPx, legend(y + UNIT_PX));
    return new Drawing(
        title, language, (int) Math.ceil(width), (int) Math.ceil(y + 3 * UNIT_PX), PAPER, marks);
  }

  private double heads(double y) {
    write(Shortened.to(LONGEST_TITLE, title), EDGE_PX, y, 1.5 * UNIT_PX, true, INK);
    double below = y + 2.5 * UNIT_PX;
    for (int i = 0; i < matrix.editions().size(); i++) {
      centred(matrix.editions().get(i).edition().language(), i, below, TEXT_PX, INK);
    }
    return below + 0.7 * UNIT_PX;
  }

  private void row(Cue cue, double top) {
    double baseline = top + 0.66 * ROW_PX;
    write(cue.id(), EDGE_PX, baseline, TEXT_PX, true, INK);
    String speaker = Shortened.to(LONGEST_NAME, cue.names());
    write(speaker, EDGE_PX + 4.5 * UNIT_PX, baseline, SMALL_PX, false, QUIET);
    for (int i = 0; i < matrix.editions().size(); i++) {
      Optional<FittedCue> cell = matrix.editions().get(i).cue(cue.id());
      int column = i;
      cell.ifPresent(fitted -> cell(fitted, column, top, baseline));
    }
  }

  private void cell(FittedCue cue, int column, double top, double baseline) {
    fill(left(column), top, cellPx, ROW_PX, tone(cue));
    centred(text(cue), column, baseline, SMALL_PX, INK);
  }

  /** Draws the number of cues of each language that fit as they are. */
  private double sums(double top) {
    double baseline = top + 0.66 * ROW_PX;
    write("go in as they are", EDGE_PX, baseline, SMALL_PX, false, QUIET);
    for (int i = 0; i < matrix.editions().size(); i++) {
      FittedEdition edition = matrix.editions().get(i);
      String share = edition.count(Verdict.AS_IS) + " of " + edition.cues().size();
      centred(share, i, baseline, SMALL_PX, QUIET);
    }
    return top + ROW_PX;
  }

  /** Draws the meaning of the tones; returns its right end. */
  private double legend(double y) {
    double x = EDGE_PX;
    for (Verdict verdict : Verdict.values()) {
      fill(x, y - 0.8 * UNIT_PX, UNIT_PX, UNIT_PX, tone(verdict, 0.5));
      x += 1.5 * UNIT_PX;
      x += write(meaning(verdict), x, y, SMALL_PX, false, QUIET) + 1.5 * UNIT_PX;
    }
    x += write("? expected length", x, y, SMALL_PX, false, QUIET);
    return x + EDGE_PX;
  }

  private static String meaning(Verdict verdict) {
    return switch (verdict) {
      case AS_IS -> "fits as it is";
      case TIGHTER -> "fits tighter";
      case LARGER -> "larger balloon";
      case SHORTER -> "fewer letters";
    };
  }

  private static String text(FittedCue cue) {
    return cue.expected() ? cue.inShort() + " ?" : cue.inShort();
  }

  /** The more is needed, the deeper. */
  private static Colour tone(FittedCue cue) {
    double much =
        switch (cue.verdict()) {
          case AS_IS -> 0;
          case TIGHTER -> (1 - cue.tightening().size()) / 0.2;
          case LARGER, SHORTER -> (cue.refit().growBy() - 1) / 0.5;
        };
    return tone(cue.verdict(), Math.max(0, Math.min(1, much)));
  }

  private static Colour tone(Verdict verdict, double much) {
    return switch (verdict) {
      case AS_IS -> new Colour(0xe3ede2);
      case TIGHTER -> between(0xf6ecc4, 0xecd58a, much);
      case LARGER -> between(0xf5d7b8, 0xe8ac74, much);
      case SHORTER -> between(0xf1c4bb, 0xdf8b80, much);
    };
  }

  private static Colour between(int from, int to, double share) {
    int mixed = 0;
    for (int shift = 16; shift >= 0; shift -= 8) {
      int a = from >> shift & 0xff;
      int b = to >> shift & 0xff;
      mixed |= (int) Math.rint(a + (b - a) * share) << shift;
    }
    return new Colour(mixed);
  }

  private double left(int column) {
    return EDGE_PX + NAMES_PX + column * cellPx;
  }

  private void fill(double x, double y, double width, double height, Colour colour) {
    Path box = Shapes.box(new Box(x, y, width, height));
    marks.add(new Mark.Fill(box, colour));
    marks.add(new Mark.Line(box, RULE, 1, List.of()));
  }

  private void centred(String text, int column, double baseline, double fontPx, Colour colour) {
    double x = left(column) + (cellPx - width(text, fontPx)) / 2;
    write(text, x, baseline, fontPx, false, colour);
  }

  private double width(String text, double fontPx) {
    return labels.line(text, fontPx, false).advancePx();
  }

  private double write(
      String text, double x, double baseline, double fontPx, boolean bold, Colour colour) {
    TextLine line = labels.line(text, fontPx, bold);
    for (PlacedRun run : line.runs()) {
      marks.add(new Mark.Glyphs(run, new XY(x, baseline), colour));
    }
    return line.advancePx();
  }
}
