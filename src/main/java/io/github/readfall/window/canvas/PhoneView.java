package io.github.readfall.window.canvas;

import io.github.readfall.base.viewing.Phone;
import io.github.readfall.base.viewing.ScreenScale;
import io.github.readfall.base.viewing.TrueSize;
import io.github.readfall.base.wording.Wording;
import io.github.readfall.draw.Layer;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.awt.geom.AffineTransform;
import java.awt.geom.RoundRectangle2D;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.DoubleUnaryOperator;
import javax.swing.KeyStroke;
import javax.swing.Scrollable;
import javax.swing.SwingConstants;
import javax.swing.Timer;

/**
 * A strip as its reader sees it: on a phone, as large as fits or in true size, scrolled by the user
 * or automatically. Colours from the theme: {@code Readfall.canvas.background}, {@code
 * Readfall.canvas.text}, {@code Readfall.canvas.focus}.
 */
public final class PhoneView extends CanvasView implements Scrollable {

  private static final long serialVersionUID = 1;

  private static final long TILE_BYTES = 32L << 20;
  private static final Set<Layer> READERS = EnumSet.of(Layer.PANELS, Layer.LETTERING);
  private static final Color BODY = new Color(0x2b2d30);
  private static final Color RIM = new Color(0x55585c);

  private static final int TICK_MS = 16;
  private static final double NANOS = 1e-9;
  private static final double LONGEST_TICK_S = 0.1;
  private static final double WHEEL_SCREENS = 0.06;
  private static final double KEY_SCREENS = 0.12;
  private static final double PAGE_SCREENS = 0.9;
  private static final double AHEAD = 0.7;

  private final transient Tiles tiles = new Tiles(TILE_BYTES, false, part -> repaintScreen());
  private final transient List<Consumer<VisiblePart>> scrollListeners = new ArrayList<>();
  private final transient List<Consumer<Boolean>> playListeners = new ArrayList<>();
  private final Timer timer = new Timer(TICK_MS, event -> tick());
  private transient StripScene scene = StripScene.empty(1);
  private transient Phone phone = Phone.SMALL;
  private transient Optional<ScreenScale> scale = Optional.empty();
  private transient PhonePosition position = new PhonePosition(0, 1, 0);
  private transient Optional<PhoneView> leader = Optional.empty();
  private transient Optional<ScrollPace> pace = Optional.empty();
  private transient CanvasColours colours = CanvasColours.now();
  private long lastTick;

  /** An empty strip on the smallest phone. */
  public PhoneView() {
    setOpaque(true);
    setFocusable(true);
    setName("canvas.phone");
    getAccessibleContext().setAccessibleName(Wording.of("canvas.phone.name"));
    getAccessibleContext().setAccessibleDescription(Wording.of("canvas.phone.description"));
    bindMouse();
    bindKeys();
    updateUI();
  }

  @Override
  public void updateUI() {
    colours = CanvasColours.now();
    repaint();
  }

  /** Shows another scene at the same position. */
  public void show(StripScene other) {
    boolean sameHeight = other.heightPx() == scene.heightPx();
    scene = other;
    scrollTo(leader.orElse(this).topPx());
    if (sameHeight) {
      repaintScreen();
    } else {
      repaint(); // the number of screens is written below the phone
    }
  }

  private void repaintScreen() {
    PhoneFrame frame = frame();
    if (frame.isVisible()) {
      repaint(frame.screen());
    }
  }

  /** Shows the strip on another phone, its top at the same position. */
  public void setPhone(Phone other) {
    phone = other;
    scrollTo(position.topPx());
    revalidate();
    repaint();
  }

  /** Shows phones in true size on a screen of this scale; if empty, as large as fits. */
  public void setScale(Optional<ScreenScale> other) {
    scale = other;
    revalidate();
    repaint();
  }

  private Optional<TrueSize> trueSize() {
    return scale.map(known -> new TrueSize(phone, known));
  }

  /** The area that the strip fills, in pixels of this component. */
  public Rectangle screen() {
    return frame().screen();
  }

  public Phone phone() {
    return phone;
  }

  /** Paints art that has been read since the last painting. */
  public void refresh() {
    repaintScreen();
  }

  /** The upper edge of the screen, in strip pixels. */
  public double topPx() {
    return position.topPx();
  }

  /** The height of the screen, in strip pixels. */
  public double screenPx() {
    return phone.heightDp() * scene.widthPx() / phone.widthDp();
  }

  /** Moves the upper edge of the screen to a height, within the strip. */
  public void scrollTo(double topPx) {
    PhonePosition former = position;
    position = new PhonePosition(topPx, screenPx(), scene.heightPx());
    if (!position.equals(former)) {
      repaint();
      VisiblePart part =
          new VisiblePart(position.topPx(), Math.min(topPx() + screenPx(), scene.heightPx()));
      scrollListeners.forEach(listener -> listener.accept(part));
    }
  }

  /** Always shows the position of another phone. Scrolling this one scrolls the other. */
  public void follow(PhoneView first) {
    leader = Optional.of(first);
    first.onScroll(seen -> scrollTo(seen.topPx()));
  }

  private void scrollByHand(double topPx) {
    PhoneView first = leader.orElse(this);
    first.pause();
    first.scrollTo(topPx);
  }

  /** Adds a listener for the part of the strip on the screen; called when it changes. */
  public void onScroll(Consumer<VisiblePart> listener) {
    scrollListeners.add(listener);
  }

  /** Adds a listener for the start (true) and end (false) of automatic scrolling. */
  public void onPlay(Consumer<Boolean> listener) {
    playListeners.add(listener);
  }

  /** Scrolls automatically at a pace until it is paused or the strip ends. */
  public void play(ScrollPace other) {
    pace = Optional.of(other);
    lastTick = System.nanoTime();
    if (!timer.isRunning()) {
      timer.start();
      playListeners.forEach(listener -> listener.accept(true));
    }
  }

  /** Stops automatic scrolling. */
  public void pause() {
    if (timer.isRunning()) {
      timer.stop();
      playListeners.forEach(listener -> listener.accept(false));
    }
  }

  public boolean isPlaying() {
    return timer.isRunning();
  }

  private void tick() {
    long now = System.nanoTime();
    double seconds = Math.min(LONGEST_TICK_S, (now - lastTick) * NANOS);
    lastTick = now;
    pace.ifPresent(speed -> scrollTo(position.after(seconds, speed).topPx()));
    if (position.isAtEnd()) {
      pause();
    }
  }

  /** The phone's outline on this component. */
  PhoneFrame frame() {
    int lineHeight = getFontMetrics(font()).getHeight();
    return trueSize()
        .map(size -> PhoneFrame.of(getWidth(), getHeight(), lineHeight, size))
        .orElseGet(() -> PhoneFrame.in(getWidth(), getHeight(), lineHeight, phone));
  }

  @Override
  public Dimension getPreferredSize() {
    double screenWidth = trueSize().map(TrueSize::widthPx).orElse(phone.widthDp());
    return PhoneFrame.preferred(screenWidth, getFontMetrics(font()).getHeight(), phone);
  }

  @Override
  public Dimension getPreferredScrollableViewportSize() {
    return getPreferredSize();
  }

  @Override
  public boolean getScrollableTracksViewportWidth() {
    return scale.isEmpty() || getPreferredSize().width <= getParent().getWidth();
  }

  @Override
  public boolean getScrollableTracksViewportHeight() {
    return scale.isEmpty() || getPreferredSize().height <= getParent().getHeight();
  }

  @Override
  public int getScrollableUnitIncrement(Rectangle seen, int orientation, int direction) {
    return 2 * getFontMetrics(font()).getHeight();
  }

  @Override
  public int getScrollableBlockIncrement(Rectangle seen, int orientation, int direction) {
    return orientation == SwingConstants.VERTICAL ? seen.height : seen.width;
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D g = (Graphics2D) graphics.create();
    Rectangle clip = g.getClipBounds();
    PhoneFrame frame = frame();
    boolean isScreenAlone = frame.isVisible() && frame.screen().contains(clip);
    if (!isScreenAlone) {
      g.setColor(colours.surroundings());
      g.fill(clip);
    }
    if (frame.isVisible()) {
      g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
      if (!isScreenAlone) {
        body(g, frame);
        number(g, frame);
      }
      screen(g, frame);
    }
    g.dispose();
  }

  private void body(Graphics2D g, PhoneFrame frame) {
    Rectangle body = frame.body();
    double round = frame.cornerPx();
    RoundRectangle2D shape =
        new RoundRectangle2D.Double(body.x, body.y, body.width, body.height, round, round);
    g.setColor(BODY);
    g.fill(shape);
    g.setColor(isFocusOwner() ? colours.focus() : RIM);
    g.draw(shape);
  }

  private void screen(Graphics2D outer, PhoneFrame frame) {
    Graphics2D g = (Graphics2D) outer.create();
    Rectangle screen = frame.screen();
    g.clipRect(screen.x, screen.y, screen.width, screen.height);
    g.setColor(new Color(scene.paper().rgb()));
    g.fill(screen);
    AffineTransform toDevice = g.getTransform();
    double device = toDevice.getScaleX();
    double scale = screen.width * device / scene.widthPx();
    tiles.show(scene, READERS, scale);
    int top = (int) Math.rint(position.topPx() * scale);
    int left = (int) Math.rint(toDevice.getTranslateX() + screen.x * device);
    int y = (int) Math.rint(toDevice.getTranslateY() + screen.y * device) - top;
    g.setTransform(AffineTransform.getTranslateInstance(left, y));
    int height = (int) Math.ceil(screen.height * device);
    Rectangle part = new Rectangle(0, top, (int) Math.ceil(screen.width * device), height);
    int more = (int) (AHEAD * height);
    Rectangle ahead = new Rectangle(0, top - more / 2, part.width, height + more + more / 2);
    tiles.paint(g, part, ahead);
    g.dispose();
  }

  private void number(Graphics2D g, PhoneFrame frame) {
    String text = Wording.of("canvas.phone.screen", position.screen(), position.screens());
    g.setFont(font());
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    g.setColor(colours.text());
    int width = g.getFontMetrics().stringWidth(text);
    Rectangle body = frame.body();
    g.drawString(text, body.x + (body.width - width) / 2, frame.baseline());
  }

  private void bindMouse() {
    MouseAdapter mouse =
        new MouseAdapter() {
          private Point grip = new Point();
          private double gripTop;

          @Override
          public void mousePressed(MouseEvent event) {
            requestFocusInWindow();
            leader.orElse(PhoneView.this).pause();
            grip = event.getPoint();
            gripTop = topPx();
          }

          @Override
          public void mouseDragged(MouseEvent event) {
            double perPx = scene.widthPx() / Math.max(1, frame().screen().width);
            scrollByHand(gripTop + (grip.y - event.getY()) * perPx);
          }

          @Override
          public void mouseWheelMoved(MouseWheelEvent event) {
            double turns = event.getPreciseWheelRotation() * Math.max(1, event.getScrollAmount());
            scrollByHand(topPx() + turns * WHEEL_SCREENS * screenPx());
          }
        };
    addMouseListener(mouse);
    addMouseMotionListener(mouse);
    addMouseWheelListener(mouse);
    onFocusChange(this::repaint);
  }

  private void bindKeys() {
    bind("UP", top -> top - KEY_SCREENS * screenPx());
    bind("DOWN", top -> top + KEY_SCREENS * screenPx());
    bind("PAGE_UP", top -> top - PAGE_SCREENS * screenPx());
    bind("PAGE_DOWN", top -> top + PAGE_SCREENS * screenPx());
    bind("HOME", top -> 0);
    bind("END", top -> scene.heightPx());
  }

  private void bind(String key, DoubleUnaryOperator top) {
    bind(KeyStroke.getKeyStroke(key), key, () -> scrollByHand(top.applyAsDouble(topPx())));
  }

  /** Whether every tile that was asked for is painted. */
  boolean isSettled() {
    return tiles.isSettled();
  }
}
