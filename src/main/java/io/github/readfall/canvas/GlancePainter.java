package io.github.readfall.canvas;

import io.github.readfall.geom.Box;
import io.github.readfall.plan.EpisodeGlance;
import io.github.readfall.plan.PartSpan;
import io.github.readfall.wording.Wording;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;

/**
 * Paints an episode at a glance. What a line means is told by its form: the end of a canvas page is
 * dashed, that of a slice a tick on either side, a split whole and thick, the limit dotted.
 */
record GlancePainter(Graphics2D g, GlanceFrame frame, EpisodeGlance glance, Look look) {

  private static final int FAINT = 46;
  private static final int SOFT = 110;
  private static final int CLEAR = 170;
  private static final float FINE = 1;
  private static final float THICK = 2;
  private static final double LEAST_MARK = 2;

  /** Paints the strip with its panels, balloons and cuts. */
  void strip() {
    fill(frame.strip(), clear(look.text(), FAINT / 3));
    for (Box panel : glance.panels()) {
      Box box = frame.at(panel);
      fill(box, clear(look.text(), FAINT));
      stroke(box, clear(look.text(), CLEAR), FINE);
    }
    glance.balloons().forEach(this::balloon);
    stroke(frame.strip(), look.edge(), FINE);
    glance.cuts().slices().forEach(this::slice);
    glance.cuts().pages().forEach(this::page);
  }

  private void balloon(Box stripBox) {
    Box box = frame.at(stripBox);
    double width = Math.max(LEAST_MARK, box.width());
    double height = Math.max(LEAST_MARK, box.height() - 1);
    g.setColor(look.text());
    g.fill(new Ellipse2D.Double(box.x(), box.y(), width, height));
  }

  private void page(double stripPx) {
    double y = frame.y(stripPx);
    double tick = tick();
    g.setColor(look.text());
    g.setStroke(dashes((float) tick, (float) tick / 2));
    g.draw(new Line2D.Double(frame.strip().x() - tick, y, frame.strip().right() + tick, y));
  }

  private void slice(double stripPx) {
    double y = frame.y(stripPx);
    double tick = tick();
    double right = frame.strip().right();
    g.setColor(look.text());
    g.setStroke(new BasicStroke(FINE));
    g.draw(new Line2D.Double(frame.strip().x() - tick, y, frame.strip().x(), y));
    g.draw(new Line2D.Double(right, y, right + tick, y));
  }

  private double tick() {
    return letters().getAscent() / 2.0;
  }

  /** Paints how many words each screen brings, and how many it may. */
  void curve() {
    Box area = frame.curve();
    g.setColor(look.text());
    g.drawString(
        Wording.of("glance.head", number(glance.mostWords())),
        (float) area.x(),
        (float) (area.y() - letters().getDescent() - tick()));
    glance.curve().forEach(this::step);
    g.setColor(look.edge());
    g.setStroke(new BasicStroke(FINE));
    g.draw(new Line2D.Double(area.x(), area.y(), area.x(), area.bottom()));
    double limit = frame.x(glance.mostWords());
    g.setColor(clear(look.text(), CLEAR));
    g.setStroke(dashes(FINE, 3));
    g.draw(new Line2D.Double(limit, area.y(), limit, area.bottom()));
    numbers();
  }

  private void step(EpisodeGlance.Step step) {
    double top = frame.y(step.topPx());
    double height = frame.y(step.bottomPx()) - top;
    double gap = Math.min(1, height / 4);
    Box bar = new Box(frame.curve().x(), top, step.words() * frame.wordPx(), height - gap);
    fill(bar, clear(look.mark(), SOFT));
    fill(new Box(bar.right() - THICK, top, THICK, bar.height()), look.mark());
  }

  /** Says the words of screens, from the fullest down, where there is room. */
  private void numbers() {
    double high = letters().getAscent();
    List<EpisodeGlance.Step> wordiest =
        glance.curve().stream()
            .filter(step -> step.words() > 0)
            .sorted((a, b) -> Integer.compare(b.words(), a.words()))
            .toList();
    double[] taken = new double[wordiest.size()];
    int count = 0;
    for (EpisodeGlance.Step step : wordiest) {
      double middle = (frame.y(step.topPx()) + frame.y(step.bottomPx())) / 2;
      if (isFree(middle, taken, count, high)) {
        number(step, middle);
        taken[count++] = middle;
      }
    }
  }

  private static boolean isFree(double middle, double[] taken, int count, double high) {
    for (int i = 0; i < count; i++) {
      if (Math.abs(taken[i] - middle) < high) {
        return false;
      }
    }
    return true;
  }

  private void number(EpisodeGlance.Step step, double middle) {
    String words = Integer.toString(step.words());
    String said = glance.isWordy(step) ? Wording.of("glance.wordy", words) : words;
    double high = letters().getAscent() - letters().getDescent();
    g.setColor(look.text());
    g.drawString(said, (float) (frame.x(step.words()) + tick() / 2), (float) (middle + high / 2.0));
  }

  /** Paints where parts meet, and their numbers. */
  void parts(List<PartSpan> parts) {
    for (PartSpan part : parts) {
      double y = frame.y(part.topPx());
      if (part.number() > 1) {
        g.setColor(look.text());
        g.setStroke(new BasicStroke(THICK));
        double left = frame.strip().x() - 2 * tick();
        g.draw(new Line2D.Double(left, y, frame.curve().right() + 4 * tick(), y));
      }
      badge(part, y);
    }
  }

  private void badge(PartSpan part, double top) {
    FontMetrics letters = letters();
    String number = Integer.toString(part.number());
    double size = letters.getHeight();
    double x = frame.curve().right() + 4 * tick() - size;
    double y = top + tick() / 2;
    g.setColor(look.surroundings());
    g.fill(new Ellipse2D.Double(x, y, size, size));
    g.setColor(look.text());
    g.setStroke(new BasicStroke(FINE));
    g.draw(new Ellipse2D.Double(x, y, size, size));
    double left = x + (size - letters.stringWidth(number)) / 2;
    double high = letters.getAscent() - letters.getDescent();
    g.drawString(number, (float) left, (float) (y + (size + high) / 2));
  }

  /** Paints what is in view. */
  void view(Optional<VisiblePart> seen) {
    seen.ifPresent(
        part -> {
          double top = frame.y(part.topPx());
          double height = Math.max(THICK, frame.y(part.bottomPx()) - top);
          double tick = tick();
          Box across = new Box(frame.strip().x() - tick, top, 1, height);
          double right = frame.strip().right() + tick;
          Box box = new Box(across.x(), top, right - across.x(), height);
          fill(box, clear(look.mark(), FAINT));
          stroke(box, look.mark(), THICK);
        });
  }

  private void fill(Box box, Color ink) {
    g.setColor(ink);
    g.fill(new Rectangle2D.Double(box.x(), box.y(), box.width(), box.height()));
  }

  private void stroke(Box box, Color ink, float width) {
    g.setColor(ink);
    g.setStroke(new BasicStroke(width));
    g.draw(new Rectangle2D.Double(box.x(), box.y(), box.width(), box.height()));
  }

  private static BasicStroke dashes(float on, float off) {
    return new BasicStroke(
        FINE, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 1, new float[] {on, off}, 0);
  }

  private static Color clear(Color ink, int alpha) {
    return new Color(ink.getRed(), ink.getGreen(), ink.getBlue(), alpha);
  }

  private static String number(double value) {
    return Long.toString(Math.round(value));
  }

  private FontMetrics letters() {
    return g.getFontMetrics();
  }
}
