package io.github.readfall.draw;

import io.github.readfall.base.finding.Shortened;
import io.github.readfall.base.geom.Path;
import io.github.readfall.base.geom.XY;
import io.github.readfall.base.viewing.Colour;
import io.github.readfall.base.viewing.Phone;
import io.github.readfall.lettering.typeset.Labels;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.type.text.PlacedRun;
import io.github.readfall.type.text.TextLine;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * Draws every balloon of an episode as it will look, numbered, in script order, on a sheet as wide
 * as the strip: what a phone shows from edge to edge. Measures are house defaults, no source.
 */
public final class FitSheet {

  private static final Colour PAPER = new Colour(0xe9e6e0);
  private static final Colour INK = new Colour(0x3b3a38);
  private static final Colour QUIET = new Colour(0x6b6862);

  private static final int LONGEST_LABEL = 80; // letters; more run off the sheet

  private final SetEpisode episode;
  private final Labels labels;
  private final double unitPx;
  private final double edgePx;
  private final List<Mark> marks = new ArrayList<>();

  private FitSheet(SetEpisode episode, Labels labels) {
    this.episode = episode;
    this.labels = labels;
    this.unitPx = episode.style().strip().widthPx() / 64.0;
    this.edgePx = 2 * unitPx;
  }

  /** The sheet of an episode. */
  public static Drawing of(SetEpisode episode, Labels labels) {
    return new FitSheet(episode, labels).draw();
  }

  private Drawing draw() {
    double y = flow(header());
    String title = title();
    int height = (int) Math.ceil(y + 2 * unitPx);
    return new Drawing(
        title,
        episode.script().language(),
        episode.style().strip().widthPx(),
        height,
        PAPER,
        marks);
  }

  private String title() {
    String title = episode.script().title();
    String number = episode.script().episode();
    String named = title.isBlank() ? "Untitled" : title;
    return number.isBlank() ? named : named + ", episode " + number;
  }

  /** The title, and a rule that shows the phone's width; the height it takes. */
  private double header() {
    double y = 3.2 * unitPx;
    write(title(), edgePx, y, 2 * unitPx, true, INK);
    Phone phone = episode.phone();
    double width = episode.style().strip().widthPx();
    String rule =
        "phone \""
            + phone.name()
            + "\": "
            + whole(phone.widthDp())
            + " dp wide, "
            + whole(phone.distanceMm())
            + " mm away = "
            + whole(width)
            + " px of strip";
    write(rule, edgePx, y + 2 * unitPx, 1.1 * unitPx, false, QUIET);
    double at = y + 3.4 * unitPx;
    rule(0, at, width, at);
    for (double dp = 0; dp <= phone.widthDp(); dp += 20) {
      double x = Math.min(width - 1, dp * width / phone.widthDp());
      rule(x, at, x, at + (dp % 60 == 0 ? 1 : 0.5) * unitPx);
      if (dp % 60 == 0 && dp > 0 && dp < phone.widthDp()) {
        write(whole(dp), x + 0.3 * unitPx, at + 1.2 * unitPx, 0.8 * unitPx, false, QUIET);
      }
    }
    return at + 2.5 * unitPx;
  }

  /** Sets the items in rows from the left; the height after the last row. */
  private double flow(double top) {
    double width = episode.style().strip().widthPx() - edgePx;
    double x = edgePx;
    double y = top;
    double rowHeight = 0;
    for (SheetItem item : items()) {
      if (x > edgePx && x + item.box().width() > width) {
        x = edgePx;
        y += rowHeight + 2 * unitPx;
        rowHeight = 0;
      }
      double labelWidth = label(item, x, y + 1.1 * unitPx);
      marks.addAll(item.draw(new XY(x, y + 1.9 * unitPx)));
      x += Math.max(item.box().width(), labelWidth) + 2 * unitPx;
      rowHeight = Math.max(rowHeight, item.box().height() + 1.9 * unitPx);
    }
    return y + rowHeight;
  }

  private double label(SheetItem item, double x, double baseline) {
    String ids =
        item.balloons().stream()
            .map(balloon -> balloon.cue().id())
            .collect(Collectors.joining(", "));
    double idWidth = write(ids, x, baseline, unitPx, true, INK);
    String speaker = item.balloons().get(0).cue().names();
    double gap = 0.5 * unitPx;
    return idWidth + gap + write(speaker, x + idWidth + gap, baseline, unitPx, false, QUIET);
  }

  /** Balloons in script order, joined ones together; speakers alternate left and right. */
  private List<SheetItem> items() {
    List<List<SetBalloon>> chains = new ArrayList<>();
    for (SetBalloon balloon : episode.balloons()) {
      if (balloon.joinedTo().isEmpty() || chains.isEmpty()) {
        chains.add(new ArrayList<>());
      }
      chains.get(chains.size() - 1).add(balloon);
    }
    List<String> speakers = chains.stream().map(FitSheet::speaker).distinct().toList();
    return chains.stream()
        .map(chain -> SheetItem.of(chain, speakers.indexOf(speaker(chain)) % 2 == 1))
        .toList();
  }

  private static String speaker(List<SetBalloon> chain) {
    return chain.get(0).cue().names();
  }

  private void rule(double x1, double y1, double x2, double y2) {
    Path line = new Path(List.of(new Path.Move(new XY(x1, y1)), new Path.Line(new XY(x2, y2))));
    marks.add(new Mark.Line(line, QUIET, unitPx / 12, List.of()));
  }

  private static String whole(double number) {
    return String.format(Locale.ROOT, "%.0f", number);
  }

  private double write(
      String text, double x, double baseline, double fontPx, boolean bold, Colour colour) {
    TextLine line = labels.line(Shortened.to(LONGEST_LABEL, text), fontPx, bold);
    for (PlacedRun run : line.runs()) {
      marks.add(new Mark.Glyphs(run, new XY(x, baseline), colour));
    }
    return line.advancePx();
  }
}
