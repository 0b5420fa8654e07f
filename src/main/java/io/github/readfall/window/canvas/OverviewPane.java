package io.github.readfall.window.canvas;

import io.github.readfall.base.wording.Wording;
import io.github.readfall.plan.EpisodeOverview;
import io.github.readfall.plan.PartSpan;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleConsumer;
import java.util.function.ToDoubleFunction;
import javax.swing.KeyStroke;
import javax.swing.ToolTipManager;

/**
 * A whole episode from top to bottom: its panels, balloons and cuts, the words on each screen, and
 * the part that is visible in the strip. Clicks, drags and keys request another part.
 */
public final class OverviewPane extends CanvasView {

  private static final long serialVersionUID = 1;

  /** Scrolling by keys, as shares of the visible part. House defaults, no source. */
  private static final double STEP = 0.25;

  private static final double PAGE = 0.9;
  private static final int LEAST_EM = 11;

  private final transient List<DoubleConsumer> scrollListeners = new ArrayList<>();
  private transient Optional<EpisodeOverview> overview = Optional.empty();
  private transient List<PartSpan> parts = List.of();
  private transient Optional<VisiblePart> visible = Optional.empty();

  /** An empty overview. */
  public OverviewPane() {
    setName("overview");
    setFocusable(true);
    setOpaque(true);
    ToolTipManager.sharedInstance().registerComponent(this);
    bindMouse();
    bindKeys();
    onFocusChange(this::repaint);
    getAccessibleContext().setAccessibleName(Wording.of("overview.name"));
  }

  /** Shows an episode, or none. */
  public void show(Optional<EpisodeOverview> other) {
    overview = other;
    repaint();
  }

  /** Shows the parts that the episode is split into; none if it is not. */
  public void showParts(List<PartSpan> spans) {
    parts = List.copyOf(spans);
    repaint();
  }

  /** Marks the visible part of the strip. */
  public void markVisible(VisiblePart part) {
    repaintVisible();
    visible = Optional.of(part);
    repaintVisible();
  }

  private void repaintVisible() {
    frame().ifPresent(frame -> visible.ifPresent(part -> repaint(frame.reach(part))));
  }

  /** Adds a listener for requests to scroll; it is given the wanted top, in strip pixels. */
  public void onScrollRequest(DoubleConsumer listener) {
    scrollListeners.add(listener);
  }

  private void requestScroll(double topPx) {
    overview.ifPresent(
        all -> {
          double most = Math.max(0, all.strip().height() - lengthPx());
          double top = Math.max(0, Math.min(most, topPx));
          scrollListeners.forEach(listener -> listener.accept(top));
        });
  }

  private double lengthPx() {
    return visible.map(part -> part.bottomPx() - part.topPx()).orElse(0.0);
  }

  private Optional<OverviewFrame> frame() {
    return overview.map(all -> OverviewFrame.in(getWidth(), getHeight(), font().getSize2D(), all));
  }

  @Override
  public Dimension getPreferredSize() {
    int em = font().getSize();
    return new Dimension(PLAIN_EM * 2 * em, PLAIN_EM * 2 * em);
  }

  @Override
  public Dimension getMinimumSize() {
    int em = font().getSize();
    return new Dimension(0, LEAST_EM * em);
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D g = (Graphics2D) graphics.create();
    CanvasColours colours = CanvasColours.now();
    g.setColor(colours.surroundings());
    g.fillRect(0, 0, getWidth(), getHeight());
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    g.setFont(font());
    overview.ifPresent(all -> frame().ifPresent(frame -> paint(g, frame, all, colours)));
    if (isFocusOwner()) {
      g.setColor(colours.focus());
      g.drawRect(0, 0, getWidth() - 1, getHeight() - 1);
      g.drawRect(1, 1, getWidth() - 3, getHeight() - 3);
    }
    g.dispose();
  }

  private void paint(
      Graphics2D g, OverviewFrame frame, EpisodeOverview all, CanvasColours colours) {
    OverviewPen pen = new OverviewPen(g, colours);
    OverviewStrip strip = new OverviewStrip(pen, frame, all);
    strip.paint();
    new OverviewCurve(pen, frame, all, parts).paint();
    visible.ifPresent(strip::view);
    new OverviewParts(pen, frame, parts).paint();
  }

  @Override
  public String getToolTipText(MouseEvent event) {
    return frame()
        .map(frame -> frame.stripPx(event.getY()))
        .flatMap(y -> overview.flatMap(all -> all.at(y)))
        .map(
            step ->
                Wording.of("overview.step", step.screen(), step.words(), tenths(step.seconds())))
        .orElse("");
  }

  private static double tenths(double seconds) {
    return Math.rint(seconds * 10) / 10;
  }

  private void bindMouse() {
    MouseAdapter mouse =
        new MouseAdapter() {
          @Override
          public void mousePressed(MouseEvent event) {
            requestFocusInWindow();
            go(event);
          }

          @Override
          public void mouseDragged(MouseEvent event) {
            go(event);
          }

          private void go(MouseEvent event) {
            frame().ifPresent(frame -> requestScroll(frame.stripPx(event.getY()) - lengthPx() / 2));
          }
        };
    addMouseListener(mouse);
    addMouseMotionListener(mouse);
  }

  private void bindKeys() {
    bind("UP", part -> part.topPx() - STEP * lengthPx());
    bind("DOWN", part -> part.topPx() + STEP * lengthPx());
    bind("PAGE_UP", part -> part.topPx() - PAGE * lengthPx());
    bind("PAGE_DOWN", part -> part.topPx() + PAGE * lengthPx());
    bind("HOME", part -> 0);
    bind("END", part -> Double.MAX_VALUE);
  }

  private void bind(String key, ToDoubleFunction<VisiblePart> top) {
    bind(
        KeyStroke.getKeyStroke(key),
        key,
        () -> visible.ifPresent(part -> requestScroll(top.applyAsDouble(part))));
  }
}
