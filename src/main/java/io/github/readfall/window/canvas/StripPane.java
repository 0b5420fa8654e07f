package io.github.readfall.window.canvas;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.draw.Layer;
import java.awt.Graphics;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseWheelEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.IntUnaryOperator;
import java.util.function.Supplier;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import javax.swing.JViewport;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;

/**
 * The strip as its maker sees it: scrolled, zoomed, its layers switched on and off. Shows a scene;
 * reports clicks and the visible part.
 */
public final class StripPane extends JScrollPane {

  private static final long serialVersionUID = 1;

  private static final double ZOOM_STEP = 1.15;
  private static final int FAR = 4;

  private final StripView view = new StripView();
  private final transient List<Consumer<XY>> clickListeners = new ArrayList<>();
  private final transient List<Consumer<VisiblePart>> scrollListeners = new ArrayList<>();
  private final transient List<Consumer<Zoom>> zoomListeners = new ArrayList<>();
  private final transient ScrollAnimation animation = new ScrollAnimation(this::scrollTo);
  private final transient List<StripPane> followers = new ArrayList<>();
  private transient Optional<StripPane> leader = Optional.empty();
  private final transient StripMouse mouse;
  private double scale;
  private transient Optional<Box> target = Optional.empty();
  private transient Optional<VisiblePart> lastVisible = Optional.empty();

  /** An empty strip that fits the width. */
  public StripPane() {
    super(VERTICAL_SCROLLBAR_ALWAYS, HORIZONTAL_SCROLLBAR_AS_NEEDED);
    setViewportView(view);
    setBorder(BorderFactory.createEmptyBorder()); // a null border would be replaced by the theme's
    setName("canvas.pane");
    getViewport().setScrollMode(JViewport.SIMPLE_SCROLL_MODE);
    getViewport().addChangeListener(event -> settle());
    mouse = mouse();
    bindKeys();
    view.onFocusChange(this::repaint);
  }

  /** The component that takes the focus and paints the strip. */
  public JComponent view() {
    return view;
  }

  /** Shows another scene; the former stays visible until the new one is painted. */
  public void show(StripScene scene) {
    view.show(scene);
    settle();
    leader.ifPresent(this::follow);
  }

  /** The scene that is shown. */
  public StripScene scene() {
    return view.scene();
  }

  /** Paints art that has been read since the last painting. */
  public void refresh() {
    view.repaint();
    followers.forEach(StripPane::refresh);
  }

  /**
   * Makes another strip show the same position at the same scale, with the same layers and frame.
   * Scrolling or zooming this strip moves the other.
   */
  public void addFollower(StripPane other) {
    followers.add(other);
    other.leader = Optional.of(this);
    other.setVerticalScrollBarPolicy(VERTICAL_SCROLLBAR_NEVER);
    other.setHorizontalScrollBarPolicy(HORIZONTAL_SCROLLBAR_NEVER);
    other.view.setFocusable(false);
    other.setLayers(layers());
    getViewport().addChangeListener(event -> other.follow(this));
    other.addComponentListener(
        new ComponentAdapter() {
          @Override
          public void componentResized(ComponentEvent event) {
            other.follow(StripPane.this);
          }
        });
  }

  private void follow(StripPane first) {
    if (Math.abs(view.scale() - first.scale()) > 1e-9) {
      setZoom(new Zoom.Factor(first.scale()));
    }
    Point at = first.getViewport().getViewPosition();
    if (!at.equals(getViewport().getViewPosition())) {
      animation.stop();
      getViewport().setViewPosition(at);
    }
  }

  /** Shows these layers and no others. */
  public void setLayers(Set<Layer> layers) {
    view.setLayers(layers);
    followers.forEach(other -> other.setLayers(layers));
  }

  public Set<Layer> layers() {
    return view.layers();
  }

  public Zoom zoom() {
    return view.zoom();
  }

  /** User-interface pixels to one strip pixel. */
  public double scale() {
    return view.scale();
  }

  /** Zooms around the middle of the view. */
  public void setZoom(Zoom zoom) {
    Rectangle visible = getViewport().getViewRect();
    zoomAt(zoom, new Point((int) visible.getCenterX(), (int) visible.getCenterY()));
  }

  private void zoomAt(Zoom zoom, Point at) {
    animation.stop();
    Point corner = getViewport().getViewPosition();
    XY strip = view.toStrip(at);
    view.setZoom(zoom);
    keep(strip, new Point(at.x - corner.x, at.y - corner.y));
    zoomListeners.forEach(listener -> listener.accept(zoom));
  }

  /** Scrolls so that a point of the strip is at a point of the viewport. */
  private void keep(XY strip, Point inView) {
    scale = view.scale();
    view.setSize(
        Math.max(view.getPreferredSize().width, getViewport().getWidth()),
        Math.max(view.getPreferredSize().height, getViewport().getHeight()));
    Box place = view.toView(new Box(strip.x(), strip.y(), 0, 0));
    getViewport()
        .setViewPosition(
            new Point(
                clamped(place.x() - inView.x, view.getWidth() - getViewport().getWidth()),
                clamped(place.y() - inView.y, view.getHeight() - getViewport().getHeight())));
    notifyIfScrolled();
  }

  private static int clamped(double value, int most) {
    return (int) Math.max(0, Math.min(most, Math.rint(value)));
  }

  /** Keeps the middle of the view if its scale has changed, and reports the visible part. */
  private void settle() {
    double now = view.scale();
    if (scale > 0 && Math.abs(now - scale) > 1e-9 && lastVisible.isPresent()) {
      double middle = (lastVisible.get().topPx() + lastVisible.get().bottomPx()) / 2;
      Rectangle visible = getViewport().getViewRect();
      scale = now;
      XY strip = new XY(view.toStrip(new Point((int) visible.getCenterX(), 0)).x(), middle);
      boolean wasMoving = animation.isRunning();
      animation.stop(); // its target is elsewhere at this scale
      keep(strip, new Point(visible.width / 2, visible.height / 2));
      if (wasMoving) {
        target.ifPresent(this::reveal);
      }
    } else {
      scale = now;
      notifyIfScrolled();
    }
  }

  private void notifyIfScrolled() {
    VisiblePart part = visible();
    if (lastVisible.filter(part::equals).isEmpty()) {
      lastVisible = Optional.of(part);
      scrollListeners.forEach(listener -> listener.accept(part));
    }
  }

  /** The visible part of the strip. */
  public VisiblePart visible() {
    Rectangle rect = getViewport().getViewRect();
    double most = view.scene().heightPx();
    double top = within(view.toStrip(new Point(rect.x, rect.y)).y(), most);
    double bottom = within(view.toStrip(new Point(rect.x, rect.y + rect.height)).y(), most);
    return new VisiblePart(top, Math.max(top, bottom));
  }

  private static double within(double y, double most) {
    return Math.max(0, Math.min(most, y));
  }

  /** Scrolls smoothly until a part of the strip is comfortably in view. */
  public void reveal(Box stripBox) {
    target = Optional.of(stripBox);
    Rectangle visible = getViewport().getViewRect();
    Box box = view.toView(stripBox);
    double x =
        ScrollTarget.start(
            visible.x, visible.width, box.x(), box.right(), view.getWidth() - visible.width);
    double most = Math.max(0, view.getPreferredSize().height - visible.height);
    double y = ScrollTarget.start(visible.y, visible.height, box.y(), box.bottom(), most);
    getViewport().setViewPosition(new Point((int) x, visible.y));
    if (!view.isShowing() || Math.abs(y - visible.y) < 1) {
      scrollTo(y);
    } else {
      double from = nearer(visible.y, y, FAR * visible.height);
      animation.start(from, y);
    }
  }

  /** Limits the distance from a start to its target, so that a long way is not a blur. */
  private static double nearer(double from, double to, double most) {
    return from < to ? Math.max(from, to - most) : Math.min(from, to + most);
  }

  private void scrollTo(double y) {
    getViewport().setViewPosition(new Point(getViewport().getViewPosition().x, (int) Math.rint(y)));
  }

  /** Scrolls at once so that a height of the strip is at the view's upper edge. */
  public void showFrom(double topPx) {
    animation.stop();
    scrollTo(view.toView(new Box(0, topPx, 0, 0)).y());
  }

  /** Frames a box, or nothing. */
  public void highlight(Optional<Box> stripBox) {
    view.highlight(stripBox);
    followers.forEach(other -> other.highlight(stripBox));
  }

  /** Adds a listener for clicks on the strip, in strip pixels. */
  public void onClick(Consumer<XY> listener) {
    clickListeners.add(listener);
  }

  /** Adds a listener for the visible part; called when it changes. */
  public void onScroll(Consumer<VisiblePart> listener) {
    scrollListeners.add(listener);
  }

  /** Adds a listener for changes of the zoom. */
  public void onZoom(Consumer<Zoom> listener) {
    zoomListeners.add(listener);
  }

  /** Sets the listener for the figures of each painting. */
  public void onPaint(Consumer<PaintStats> listener) {
    view.onPaint(listener);
  }

  private StripMouse mouse() {
    StripMouse listener =
        new StripMouse(
            view,
            () -> leader.orElse(this).view.requestFocusInWindow(),
            at -> clickListeners.forEach(other -> other.accept(at)));
    view.addMouseListener(listener);
    view.addMouseMotionListener(listener);
    return listener;
  }

  /** Sets the listener for the mouse on the strip. */
  public void setPointerListener(StripPointerListener listener) {
    mouse.setListener(listener);
  }

  /** Shows the marks of the selection. */
  public void showSelection(SelectionMarks marks) {
    view.showSelection(marks);
  }

  /** Sets the descriptions of the strip's elements, for assistive tools. */
  public void setElements(Supplier<List<ElementDescription>> elements) {
    view.setElements(elements);
  }

  /** The bounds of a part of the strip on {@link #view}, in user-interface pixels. */
  public Rectangle boundsOf(Box stripBox) {
    return view.boundsOf(stripBox);
  }

  /** The middle of the view, in strip pixels. */
  public XY middle() {
    Rectangle seen = getViewport().getViewRect();
    return view.toStrip(new Point((int) seen.getCenterX(), (int) seen.getCenterY()));
  }

  @Override
  protected void processMouseWheelEvent(MouseWheelEvent event) {
    if (leader.isPresent()) {
      leader.get().processMouseWheelEvent(event);
    } else if (event.isControlDown() || event.isMetaDown()) {
      Point at = SwingUtilities.convertPoint(this, event.getPoint(), view);
      zoomBy(StrictMath.pow(ZOOM_STEP, -event.getPreciseWheelRotation()), at);
      event.consume();
    } else {
      animation.stop();
      super.processMouseWheelEvent(event);
    }
  }

  private void zoomBy(double factor, Point at) {
    zoomAt(new Zoom.Factor(view.scale() * factor), at);
  }

  private void bindKeys() {
    bind("UP", "up", y -> y - unit());
    bind("DOWN", "down", y -> y + unit());
    bind("PAGE_UP", "pageUp", y -> y - block());
    bind("PAGE_DOWN", "pageDown", y -> y + block());
    bind("HOME", "home", y -> 0);
    bind("END", "end", y -> view.getHeight());
    bindAcross("LEFT", -1);
    bindAcross("RIGHT", 1);
    for (int key : new int[] {KeyEvent.VK_PLUS, KeyEvent.VK_EQUALS, KeyEvent.VK_ADD}) {
      bind(KeyStroke.getKeyStroke(key, 0), "zoomIn", () -> zoomByKey(ZOOM_STEP));
    }
    bind(
        KeyStroke.getKeyStroke(KeyEvent.VK_PLUS, KeyEvent.SHIFT_DOWN_MASK),
        "zoomIn",
        () -> zoomByKey(ZOOM_STEP));
    for (int key : new int[] {KeyEvent.VK_MINUS, KeyEvent.VK_SUBTRACT}) {
      bind(KeyStroke.getKeyStroke(key, 0), "zoomOut", () -> zoomByKey(1 / ZOOM_STEP));
    }
  }

  private void zoomByKey(double factor) {
    Rectangle visible = getViewport().getViewRect();
    zoomBy(factor, new Point((int) visible.getCenterX(), (int) visible.getCenterY()));
  }

  private int unit() {
    return getVerticalScrollBar().getUnitIncrement(1);
  }

  private int block() {
    return getVerticalScrollBar().getBlockIncrement(1);
  }

  private void bind(String key, String name, IntUnaryOperator y) {
    bind(
        KeyStroke.getKeyStroke(key),
        name,
        () -> {
          animation.stop();
          Point at = getViewport().getViewPosition();
          int most = view.getHeight() - getViewport().getHeight();
          getViewport().setViewPosition(new Point(at.x, clamped(y.applyAsInt(at.y), most)));
        });
  }

  private void bindAcross(String key, int direction) {
    bind(
        KeyStroke.getKeyStroke(key),
        key,
        () -> {
          Point at = getViewport().getViewPosition();
          int most = view.getWidth() - getViewport().getWidth();
          getViewport().setViewPosition(new Point(clamped(at.x + direction * unit(), most), at.y));
        });
  }

  /** Runs an action when a key is pressed while the strip has the focus. */
  public void bind(KeyStroke key, String name, Runnable action) {
    view.bind(key, name, action);
  }

  @Override
  protected void paintChildren(Graphics g) {
    super.paintChildren(g);
    if (view.isFocusOwner()) {
      Rectangle rect = getViewport().getBounds();
      g.setColor(CanvasColours.now().focus());
      g.drawRect(rect.x, rect.y, rect.width - 1, rect.height - 1);
      g.drawRect(rect.x + 1, rect.y + 1, rect.width - 3, rect.height - 3);
    }
  }
}
