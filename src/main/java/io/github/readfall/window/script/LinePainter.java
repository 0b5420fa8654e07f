package io.github.readfall.window.script;

import io.github.readfall.base.finding.Severity;
import io.github.readfall.script.LineKind;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** Paints one line of a script: background, marks, letters, and underlines of findings. */
final class LinePainter {

  private static final double UNDERLINE_BELOW_EM = 0.2;
  private static final float STROKE_EM = 0.085f;
  private static final float WAVE_EM = 0.16f;

  private final Graphics2D g;
  private final ScriptArea area;
  private final ScriptLook look;
  private final Rectangle box;
  private final int above;
  private final LineKind kind;

  /**
   * A painter of one line.
   *
   * @param box of the line
   * @param above height of the space above the first row
   */
  LinePainter(Graphics2D g, ScriptArea area, Rectangle box, int above, LineKind kind) {
    this.g = (Graphics2D) g.create();
    this.area = area;
    this.look = area.look();
    this.box = box;
    this.above = above;
    this.kind = kind;
    this.g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
  }

  /** Paints the rows of a line whose text begins and ends at these offsets, its end included. */
  void paint(List<TextRow> rows, int start, int end) {
    paintGround(start, end);
    for (int i = 0; i < rows.size(); i++) {
      int top = box.y + above + i * look.rowHeight();
      TextRow row = rows.get(i);
      area.matches().stream()
          .filter(match -> match.start() < end && match.end() > start)
          .forEach(match -> fill(row, match, start, top, look.colours().match()));
      paintSelection(row, start, top, i == rows.size() - 1);
      row.layout().ifPresent(letters -> letters.draw(g, box.x + row.x(), top + look.baseline()));
    }
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    for (Underline underline : area.underlines()) {
      paintUnderline(rows, underline, start, end);
    }
    g.dispose();
  }

  private void paintGround(int start, int end) {
    int width = area.getWidth();
    int height = box.height - above;
    if (area.isCaretIn(start, end)) {
      g.setColor(look.colours().caretLine());
      g.fillRect(0, box.y + above, width, height);
    }
    area.flashOf(start, end)
        .ifPresent(
            colour -> {
              g.setColor(colour);
              g.fillRect(0, box.y + above, width, height);
            });
    if (above > 0) {
      g.setColor(look.colours().hairline());
      int weight = kind == LineKind.SCENE ? 2 : 1;
      g.fillRect(box.x, box.y + above / 2, Math.min(box.width, look.measure()), weight);
    }
  }

  private void paintSelection(TextRow row, int start, int top, boolean last) {
    int from = area.getSelectionStart() - start;
    int to = area.getSelectionEnd() - start;
    if (from >= to) {
      return;
    }
    fill(row, new TextRange(start + from, start + to), start, top, look.colours().selection());
    if (last && from <= row.end() && to > row.end()) {
      g.setColor(look.colours().selection());
      int x = box.x + Math.round(row.caretX(row.end()));
      g.fillRect(x, top, look.em() / 2, look.rowHeight());
    }
  }

  private void fill(TextRow row, TextRange range, int start, int top, Color colour) {
    Shape room = row.room(range.start() - start, range.end() - start, top, look.rowHeight());
    g.setColor(colour);
    g.translate(box.x, 0);
    g.fill(room);
    g.translate(-box.x, 0);
  }

  private void paintUnderline(List<TextRow> rows, Underline underline, int start, int end) {
    for (Underline.Stretch stretch : underline.stretches()) {
      if (stretch.end() < start || stretch.start() >= end) {
        continue;
      }
      for (int i = 0; i < rows.size(); i++) {
        paintUnderline(rows.get(i), i, stretch, start, underline.finding().severity());
      }
    }
  }

  private void paintUnderline(
      TextRow row, int number, Underline.Stretch stretch, int start, Severity severity) {
    int top = box.y + above + number * look.rowHeight();
    Rectangle2D room =
        row.room(stretch.start() - start, stretch.end() - start, top, look.rowHeight())
            .getBounds2D();
    boolean alone = stretch.start() == stretch.end() && row.start() <= stretch.start() - start;
    if (room.isEmpty() && !alone) {
      return;
    }
    double left = room.isEmpty() ? row.caretX(stretch.start() - start) : room.getX();
    double width = room.isEmpty() ? look.em() / 2.0 : room.getWidth();
    double y = top + look.baseline() + UNDERLINE_BELOW_EM * look.em();
    g.setColor(look.colours().of(severity));
    draw(severity, box.x + left, box.x + left + width, y);
  }

  /**
   * Draws an error as a solid wave, a warning as dashes, a note as dots: distinct without colours.
   */
  private void draw(Severity severity, double left, double right, double y) {
    float stroke = Math.max(1, STROKE_EM * look.em());
    switch (severity) {
      case ERROR -> {
        g.setStroke(new BasicStroke(stroke));
        g.draw(wave(left, right, y));
      }
      case WARNING -> drawBroken(stroke * 4, stroke * 2.5f, stroke, left, right, y);
      case NOTE -> drawBroken(stroke, stroke * 2, stroke, left, right, y);
    }
  }

  private void drawBroken(float on, float off, float stroke, double left, double right, double y) {
    g.setStroke(
        new BasicStroke(
            stroke, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 1, new float[] {on, off}, 0));
    g.draw(new Line2D.Double(left, y, right, y));
  }

  private Path2D wave(double left, double right, double y) {
    double half = Math.max(2, WAVE_EM * look.em());
    Path2D wave = new Path2D.Double();
    wave.moveTo(left, y);
    int sign = 1;
    for (double x = left; x < right; x += half) {
      double next = Math.min(right, x + half);
      wave.quadTo((x + next) / 2, y + sign * half, next, y);
      sign = -sign;
    }
    return wave;
  }
}
