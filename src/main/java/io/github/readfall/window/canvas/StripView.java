package io.github.readfall.window.canvas;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.base.wording.Wording;
import io.github.readfall.draw.Layer;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.GraphicsConfiguration;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.geom.AffineTransform;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.swing.Scrollable;
import javax.swing.SwingConstants;

/**
 * A strip of any length at any zoom, to be scrolled. Colours from the theme: {@code
 * Readfall.canvas.background}, {@code Readfall.canvas.edge}, {@code Readfall.canvas.mark}.
 */
final class StripView extends CanvasView implements Scrollable {

  private static final long serialVersionUID = 1;

  private static final long TILE_BYTES = 112L << 20;
  private static final double AHEAD = 0.8;
  private static final double SCREENFUL = 0.9;
  private static final int AIR_EM = 1;
  private static final int STEP_EM = 4;

  private final transient Tiles tiles = new Tiles(TILE_BYTES, true, this::repaintDevice);
  private transient Optional<Box> highlighted = Optional.empty();
  private transient SelectionMarks selection = SelectionMarks.NOTHING;
  private transient Supplier<List<ElementDescription>> elements = List::of;
  private transient Zoom zoom = new Zoom.FitWidth();
  private transient StripScene scene = StripScene.empty(1);
  private transient Set<Layer> layers = EnumSet.allOf(Layer.class);
  private transient CanvasColours colours = CanvasColours.now();
  private transient Consumer<PaintStats> paintListener = painting -> {};
  private double devicePerPx = 1;
  private int lastTop;
  private boolean upwards;

  StripView() {
    setOpaque(true);
    setFocusable(true);
    setName("canvas.strip");
    updateUI();
  }

  @Override
  public final void updateUI() {
    colours = CanvasColours.now();
    repaint();
  }

  void show(StripScene other) {
    boolean sameSize = other.widthPx() == scene.widthPx() && other.heightPx() == scene.heightPx();
    scene = other;
    if (!sameSize) {
      revalidate();
    }
    repaint();
  }

  StripScene scene() {
    return scene;
  }

  void setLayers(Set<Layer> others) {
    layers = Set.copyOf(others);
    repaint();
  }

  Set<Layer> layers() {
    return layers;
  }

  void setZoom(Zoom other) {
    zoom = other;
    revalidate();
    repaint();
  }

  Zoom zoom() {
    return zoom;
  }

  void highlight(Optional<Box> stripBox) {
    highlighted.ifPresent(box -> repaint(Highlight.reach(toView(box))));
    highlighted = stripBox;
    highlighted.ifPresent(box -> repaint(Highlight.reach(toView(box))));
  }

  void showSelection(SelectionMarks other) {
    if (!other.equals(selection)) {
      selection = other;
      repaint();
    }
  }

  /** Sets the descriptions for assistive tools, and tells them which element is selected. */
  void setElements(Supplier<List<ElementDescription>> others) {
    elements = others;
    if (accessibleContext != null) {
      int chosen = elements().stream().map(ElementDescription::chosen).toList().indexOf(true);
      if (chosen >= 0) {
        accessibleContext.firePropertyChange(
            AccessibleContext.ACCESSIBLE_ACTIVE_DESCENDANT_PROPERTY,
            null,
            new AccessibleElement(this, chosen));
      }
    }
  }

  List<ElementDescription> elements() {
    return elements.get();
  }

  Rectangle boundsOf(Box strip) {
    Box box = toView(strip);
    int x = (int) Math.floor(box.x());
    int y = (int) Math.floor(box.y());
    return new Rectangle(x, y, (int) Math.ceil(box.right()) - x, (int) Math.ceil(box.bottom()) - y);
  }

  boolean isSettled() {
    return tiles.isSettled();
  }

  /** User-interface pixels to one strip pixel. */
  double scale() {
    return zoom.scale(new Zoom.Room(roomPx(), scene.widthPx(), devicePerPx));
  }

  private double roomPx() {
    int width = getParent() == null ? getWidth() : getParent().getWidth();
    return Math.max(1, width - 2 * airPx());
  }

  /** The margin around the strip. */
  private int airPx() {
    return AIR_EM * em();
  }

  private static int em() {
    return font().getSize();
  }

  /** The position of the strip's upper left corner on this component. */
  private XY origin() {
    double widthPx = scene.widthPx() * scale();
    return new XY(Math.max(airPx(), (getWidth() - widthPx) / 2), airPx());
  }

  Box toView(Box strip) {
    double scale = scale();
    XY origin = origin();
    return new Box(
        origin.x() + strip.x() * scale,
        origin.y() + strip.y() * scale,
        strip.width() * scale,
        strip.height() * scale);
  }

  XY toStrip(Point view) {
    double scale = scale();
    XY origin = origin();
    return new XY((view.x - origin.x()) / scale, (view.y - origin.y()) / scale);
  }

  /** Reads the scale of the screen that the component is on. */
  private void measureDevice() {
    GraphicsConfiguration screen = getGraphicsConfiguration();
    measureDevice(screen == null ? 1 : screen.getDefaultTransform().getScaleX());
  }

  private void measureDevice(double found) {
    if (found > 0 && Math.abs(found - devicePerPx) > 1e-6) {
      devicePerPx = found;
      revalidate();
    }
  }

  @Override
  public void addNotify() {
    super.addNotify();
    measureDevice();
  }

  @Override
  public Dimension getPreferredSize() {
    double scale = scale();
    return new Dimension(
        wholePx(scene.widthPx() * scale) + 2 * airPx(),
        wholePx(scene.heightPx() * scale) + 2 * airPx());
  }

  /** Rounds up, but ignores rounding errors. */
  private static int wholePx(double px) {
    return (int) Math.ceil(px - 1e-6);
  }

  void onPaint(Consumer<PaintStats> listener) {
    paintListener = listener;
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    long start = System.nanoTime();
    Graphics2D g = (Graphics2D) graphics.create();
    g.setColor(colours.surroundings());
    g.fill(g.getClipBounds());
    AffineTransform toDevice = g.getTransform();
    measureDevice(toDevice.getScaleX());
    paintStrip(g, toDevice);
    g.setTransform(toDevice);
    highlighted
        .filter(box -> !selection.frames().contains(box))
        .ifPresent(box -> Highlight.draw(g, toView(box), colours.mark()));
    new SelectionPainter(this::toView, colours.mark(), colours.ground()).draw(g, selection);
    g.dispose();
    paintListener.accept(new PaintStats(System.nanoTime() - start, tiles.missing(), tiles.blank()));
  }

  private void paintStrip(Graphics2D g, AffineTransform toDevice) {
    double device = toDevice.getScaleX();
    XY origin = origin();
    tiles.show(scene, layers, scale() * device);
    Rectangle clip = g.getClipBounds();
    int left = (int) Math.rint(toDevice.getTranslateX() + origin.x() * device);
    int top = (int) Math.rint(toDevice.getTranslateY() + origin.y() * device);
    g.setTransform(AffineTransform.getTranslateInstance(left, top));
    TileGrid grid = tiles.grid();
    g.setColor(colours.edge());
    g.drawRect(-1, -1, grid.widthPx() + 1, grid.heightPx() + 1);
    tiles.paint(g, onStrip(clip, origin, device), ahead(origin, device));
  }

  /** The visible part, and the part that comes next if scrolling continues in its direction. */
  private Rectangle ahead(XY origin, double device) {
    Rectangle view = getVisibleRect();
    upwards = view.y < lastTop || (view.y == lastTop && upwards);
    lastTop = view.y;
    int more = (int) (AHEAD * view.height);
    int less = more / 4;
    view.y -= upwards ? more : less;
    view.height += more + less;
    return onStrip(view, origin, device);
  }

  private static Rectangle onStrip(Rectangle view, XY origin, double device) {
    int x = (int) Math.floor((view.x - origin.x()) * device);
    int y = (int) Math.floor((view.y - origin.y()) * device);
    return new Rectangle(
        x, y, (int) Math.ceil(view.width * device) + 2, (int) Math.ceil(view.height * device) + 2);
  }

  private void repaintDevice(Rectangle part) {
    XY origin = origin();
    int x = (int) Math.floor(origin.x() + part.x / devicePerPx) - 1;
    int y = (int) Math.floor(origin.y() + part.y / devicePerPx) - 1;
    repaint(
        x,
        y,
        (int) Math.ceil(part.width / devicePerPx) + 3,
        (int) Math.ceil(part.height / devicePerPx) + 3);
  }

  @Override
  public Dimension getPreferredScrollableViewportSize() {
    return new Dimension(PLAIN_EM * 2 * em(), PLAIN_EM * 3 * em());
  }

  @Override
  public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
    return STEP_EM * em();
  }

  @Override
  public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
    int length = orientation == SwingConstants.VERTICAL ? visible.height : visible.width;
    return (int) (SCREENFUL * length);
  }

  @Override
  public boolean getScrollableTracksViewportWidth() {
    return getParent() != null && getPreferredSize().width <= getParent().getWidth();
  }

  @Override
  public boolean getScrollableTracksViewportHeight() {
    return getParent() != null && getPreferredSize().height <= getParent().getHeight();
  }

  boolean isOnStrip(Point view) {
    XY at = toStrip(view);
    return at.x() >= 0 && at.x() <= scene.widthPx() && at.y() >= 0 && at.y() <= scene.heightPx();
  }

  @Override
  public AccessibleContext getAccessibleContext() {
    if (accessibleContext == null) {
      accessibleContext = new AccessibleStrip();
      accessibleContext.setAccessibleName(Wording.of("canvas.strip.name"));
      accessibleContext.setAccessibleDescription(Wording.of("canvas.strip.description"));
    }
    return accessibleContext;
  }

  private final class AccessibleStrip extends AccessibleCanvas {
    private static final long serialVersionUID = 1;

    @Override
    public int getAccessibleChildrenCount() {
      return elements().size();
    }

    @Override
    public Accessible getAccessibleChild(int i) {
      return new AccessibleElement(StripView.this, i);
    }
  }
}
