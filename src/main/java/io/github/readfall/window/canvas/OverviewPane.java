package io.github.readfall.window.canvas;

import io.github.readfall.base.wording.Wording;
import io.github.readfall.plan.EpisodeOverview;
import io.github.readfall.plan.PartSpan;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.event.ActionEvent;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleConsumer;
import java.util.function.ToDoubleFunction;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.KeyStroke;
import javax.swing.ToolTipManager;
import javax.swing.UIManager;

/**
 * A whole episode from top to bottom: its panels, balloons and cuts, the words on each screen, and
 * what of it is in view. Clicks, drags and keys ask for another part of it.
 */
public final class OverviewPane extends JComponent implements Accessible {

  private static final long serialVersionUID = 1;

  /** How far keys go, in what is in view. House defaults, no source. */
  private static final double STEP = 0.25;

  private static final double PAGE = 0.9;
  private static final int PLAIN_EM = 13;
  private static final int LEAST_EM = 11;

  private final transient List<DoubleConsumer> asked = new ArrayList<>();
  private transient Optional<EpisodeOverview> glance = Optional.empty();
  private transient List<PartSpan> parts = List.of();
  private transient Optional<VisiblePart> seen = Optional.empty();

  /** An overview of nothing. */
  public OverviewPane() {
    setName("glance");
    setFocusable(true);
    setOpaque(true);
    ToolTipManager.sharedInstance().registerComponent(this);
    bindMouse();
    bindKeys();
    addFocusListener(
        new FocusListener() {
          @Override
          public void focusGained(FocusEvent event) {
            repaint();
          }

          @Override
          public void focusLost(FocusEvent event) {
            repaint();
          }
        });
  }

  /** Shows an episode; empty for none. */
  public void show(Optional<EpisodeOverview> other) {
    glance = other;
    repaint();
  }

  /** Shows where it is split; nothing where it is not. */
  public void showParts(List<PartSpan> spans) {
    parts = List.copyOf(spans);
    repaint();
  }

  /** Marks what is in view. */
  public void markVisible(VisiblePart part) {
    repaintSeen();
    seen = Optional.of(part);
    repaintSeen();
  }

  private void repaintSeen() {
    frame().ifPresent(frame -> seen.ifPresent(part -> repaint(frame.reach(part))));
  }

  /** Tells the height, in strip pixels, that the view is asked to begin at. */
  public void onScrollRequest(DoubleConsumer listener) {
    asked.add(listener);
  }

  private void ask(double topPx) {
    glance.ifPresent(
        all -> {
          double most = Math.max(0, all.strip().height() - lengthPx());
          double top = Math.max(0, Math.min(most, topPx));
          asked.forEach(listener -> listener.accept(top));
        });
  }

  private double lengthPx() {
    return seen.map(part -> part.bottomPx() - part.topPx()).orElse(0.0);
  }

  private Optional<OverviewFrame> frame() {
    return glance.map(all -> OverviewFrame.in(getWidth(), getHeight(), font().getSize2D(), all));
  }

  private static Font font() {
    Font font = UIManager.getFont("defaultFont");
    return font == null ? new Font(Font.SANS_SERIF, Font.PLAIN, PLAIN_EM) : font;
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
    CanvasColours look = CanvasColours.now();
    g.setColor(look.surroundings());
    g.fillRect(0, 0, getWidth(), getHeight());
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    g.setFont(font());
    glance.ifPresent(all -> frame().ifPresent(frame -> paint(g, frame, all, look)));
    if (isFocusOwner()) {
      g.setColor(look.focus());
      g.drawRect(0, 0, getWidth() - 1, getHeight() - 1);
      g.drawRect(1, 1, getWidth() - 3, getHeight() - 3);
    }
    g.dispose();
  }

  private void paint(Graphics2D g, OverviewFrame frame, EpisodeOverview all, CanvasColours look) {
    OverviewPen ink = new OverviewPen(g, look);
    OverviewStrip strip = new OverviewStrip(ink, frame, all);
    strip.paint();
    new OverviewCurve(ink, frame, all, parts).paint();
    seen.ifPresent(strip::view);
    new OverviewParts(ink, frame, parts).paint();
  }

  @Override
  public String getToolTipText(MouseEvent event) {
    return frame()
        .map(frame -> frame.stripPx(event.getY()))
        .flatMap(y -> glance.flatMap(all -> all.at(y)))
        .map(
            step ->
                Wording.of("overview.step", step.screen(), step.words(), tenths(step.seconds())))
        .orElse("");
  }

  private static double tenths(double seconds) {
    return Math.rint(seconds * 10) / 10;
  }

  private void bindMouse() {
    MouseAdapter hand =
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
            frame().ifPresent(frame -> ask(frame.stripPx(event.getY()) - lengthPx() / 2));
          }
        };
    addMouseListener(hand);
    addMouseMotionListener(hand);
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
    getInputMap().put(KeyStroke.getKeyStroke(key), key);
    getActionMap()
        .put(
            key,
            new AbstractAction() {
              private static final long serialVersionUID = 1;

              @Override
              public void actionPerformed(ActionEvent event) {
                seen.ifPresent(part -> ask(top.applyAsDouble(part)));
              }
            });
  }

  @Override
  public AccessibleContext getAccessibleContext() {
    if (accessibleContext == null) {
      accessibleContext = new Told();
      accessibleContext.setAccessibleName(Wording.of("overview.name"));
    }
    return accessibleContext;
  }

  private final class Told extends AccessibleJComponent {
    private static final long serialVersionUID = 1;

    @Override
    public AccessibleRole getAccessibleRole() {
      return AccessibleRole.CANVAS;
    }
  }
}
