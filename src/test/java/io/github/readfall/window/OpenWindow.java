package io.github.readfall.window;

import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.type.font.FontShelf;
import io.github.readfall.type.font.OpenFaces;
import io.github.readfall.window.model.EpisodeSnapshot;
import io.github.readfall.window.model.TranslationFiles;
import java.awt.AWTEvent;
import java.awt.AWTException;
import java.awt.Component;
import java.awt.Container;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.Robot;
import java.awt.Toolkit;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.awt.image.BufferedImage;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javax.swing.JComponent;
import javax.swing.JMenu;
import javax.swing.JMenuItem;
import javax.swing.SwingUtilities;
import javax.swing.event.MenuEvent;

/** A real window for tests: driven by keys and mouse, inspected on its own thread. */
final class OpenWindow implements AutoCloseable {

  private static final long PATIENCE_S = 60;

  /**
   * Time to wait for an event that no component handles because none has the focus, in
   * milliseconds.
   */
  private static final long MOST_REST_MS = 600;

  private final Map<Integer, Integer> met = new ConcurrentHashMap<>();
  private final CountDownLatch closed = new CountDownLatch(1);
  private final MainWindow window;
  private final Robot robot;

  private OpenWindow(Path state, Optional<Path> path, Launch.TranslationsOf translations) {
    try {
      FontShelf faces = OpenFaces.shelf();
      Launch launch = new Launch(faces, state, path, translations);
      window = ask(() -> ReadfallApp.window(launch, closed::countDown));
      robot = new Robot();
      robot.setAutoDelay(8);
      Toolkit.getDefaultToolkit()
          .addAWTEventListener(
              event -> met.merge(event.getID(), 1, Integer::sum),
              AWTEvent.KEY_EVENT_MASK
                  | AWTEvent.MOUSE_EVENT_MASK
                  | AWTEvent.MOUSE_MOTION_EVENT_MASK);
      run(window::open);
    } catch (AWTException e) {
      throw new AssertionError(e);
    }
  }

  /** Opens the window; without a path it shows what was open last. */
  static OpenWindow with(Path state, Path... path) {
    return new OpenWindow(
        state,
        path.length == 0 ? Optional.empty() : Optional.of(path[0]),
        files -> TranslationFiles.none());
  }

  /** Opens an episode with its translations. */
  static OpenWindow with(Path state, Path path, TranslationFiles translations) {
    return new OpenWindow(state, Optional.of(path), files -> translations);
  }

  MainWindow window() {
    return window;
  }

  /** Runs work on the event thread. */
  void run(Runnable work) {
    ask(
        () -> {
          work.run();
          return "";
        });
  }

  /** Calls a function on the event thread. */
  <T> T ask(Callable<T> question) {
    if (SwingUtilities.isEventDispatchThread()) {
      return answer(question);
    }
    FutureTask<T> task = new FutureTask<>(question);
    try {
      SwingUtilities.invokeAndWait(task);
      return task.get();
    } catch (InvocationTargetException
        | InterruptedException
        | java.util.concurrent.ExecutionException e) {
      throw new AssertionError(e);
    }
  }

  private static <T> T answer(Callable<T> question) {
    try {
      return question.call();
    } catch (Exception e) {
      throw new AssertionError(e);
    }
  }

  /** Waits until a condition is true. */
  void waitUntil(String what, Callable<Boolean> isSo) {
    waitUntil(() -> what, isSo);
  }

  /** Waits until a condition is true; its name is asked for on the event thread if it is not. */
  void waitUntil(Supplier<String> what, Callable<Boolean> isSo) {
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_S);
    while (!ask(isSo)) {
      assertTrue(System.nanoTime() < end, () -> "waited in vain until " + ask(what::get));
      robot.delay(20);
    }
  }

  /** Waits until the strip is placed and checked, and returns it. */
  EpisodeSnapshot settled() {
    waitUntil(
        "the strip is settled",
        () ->
            window.model().shown().filter(EpisodeSnapshot::isSettled).isPresent() && isUpToDate());
    return ask(() -> window.model().shown().orElseThrow());
  }

  private boolean isUpToDate() {
    String text = window.work().editor().text();
    return window.model().isSettled()
        && window.model().shown().filter(shown -> shown.text().equals(text)).isPresent();
  }

  /** Waits until the strip is placed, checked and fulfils a condition. */
  EpisodeSnapshot settled(String what, Predicate<EpisodeSnapshot> wish) {
    waitUntil(
        what,
        () ->
            window.model().shown().filter(EpisodeSnapshot::isSettled).filter(wish).isPresent()
                && isUpToDate());
    return settled();
  }

  /**
   * Waits until the window has handled the robot's events and everything that follows at once. The
   * robot's own waiting takes ten seconds if timers fire meanwhile.
   *
   * @param kind of event, as {@link AWTEvent} counts them
   * @param count of events that the robot has made since the last wait
   */
  private void rest(int kind, int count) {
    long end = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(MOST_REST_MS);
    while (met.getOrDefault(kind, 0) < count && System.nanoTime() < end) {
      robot.delay(4);
    }
    run(() -> {});
    run(() -> {});
    met.clear();
  }

  /** The component of a name, anywhere in the window. */
  JComponent named(String name) {
    return ask(
        () ->
            find(window.frame(), name)
                .orElseThrow(() -> new AssertionError("there is nothing named " + name)));
  }

  static Optional<JComponent> find(Container in, String name) {
    for (Component child : in.getComponents()) {
      if (child instanceof JComponent found && name.equals(found.getName())) {
        return Optional.of(found);
      }
      if (child instanceof Container inner) {
        Optional<JComponent> deeper = find(inner, name);
        if (deeper.isPresent()) {
          return deeper;
        }
      }
    }
    return Optional.empty();
  }

  /** Clicks the middle of a component. */
  void click(JComponent component) {
    Rectangle all = ask(component::getVisibleRect);
    click(component, new Point(all.x + all.width / 2, all.y + all.height / 2));
  }

  /** Clicks a point of a component. */
  void click(JComponent component, Point at) {
    Point screen = onScreen(component, at);
    robot.mouseMove(screen.x, screen.y);
    robot.mousePress(InputEvent.BUTTON1_DOWN_MASK);
    robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
    rest(MouseEvent.MOUSE_RELEASED, 1);
  }

  /** Drags from one point of a component to another. */
  void drag(JComponent component, Point from, Point to) {
    Point start = onScreen(component, from);
    Point end = onScreen(component, to);
    robot.mouseMove(start.x, start.y);
    robot.mousePress(InputEvent.BUTTON1_DOWN_MASK);
    int steps = 12;
    for (int i = 1; i <= steps; i++) {
      robot.mouseMove(
          start.x + (end.x - start.x) * i / steps, start.y + (end.y - start.y) * i / steps);
      rest(MouseEvent.MOUSE_DRAGGED, 1);
    }
    robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
    rest(MouseEvent.MOUSE_RELEASED, 1);
  }

  private Point onScreen(JComponent component, Point at) {
    return ask(
        () -> {
          Point place = new Point(at);
          SwingUtilities.convertPointToScreen(place, component);
          return place;
        });
  }

  /** Types small letters, spaces and full stops. */
  void type(String words) {
    words.chars().forEach(c -> key(KeyEvent.getExtendedKeyCodeForChar(c)));
  }

  /** Presses keys together, the last one briefly. */
  void key(int... codes) {
    for (int code : codes) {
      robot.keyPress(code);
    }
    for (int i = codes.length - 1; i >= 0; i--) {
      robot.keyRelease(codes[i]);
    }
    rest(KeyEvent.KEY_RELEASED, codes.length);
  }

  /** Selects a menu entry by its name. */
  void choose(String entry) {
    run(
        () -> {
          JMenuItem item = item(window.frame().getJMenuBar(), entry).orElseThrow();
          item.doClick(0);
        });
  }

  /** Has a menu fill itself, as it does when it is opened. */
  void fill(String menu) {
    run(
        () -> {
          JMenu found = (JMenu) item(window.frame().getJMenuBar(), menu).orElseThrow();
          MenuEvent opened = new MenuEvent(found);
          Stream.of(found.getMenuListeners()).forEach(listener -> listener.menuSelected(opened));
        });
  }

  private static Optional<JMenuItem> item(Container in, String name) {
    Component[] children = in instanceof JMenu menu ? menu.getMenuComponents() : in.getComponents();
    for (Component child : children) {
      if (child instanceof JMenuItem found && name.equals(found.getName())) {
        return Optional.of(found);
      }
      if (child instanceof Container inner) {
        Optional<JMenuItem> deeper = item(inner, name);
        if (deeper.isPresent()) {
          return deeper;
        }
      }
    }
    return Optional.empty();
  }

  /** A picture of the window at a scale. */
  BufferedImage photograph(int scale) {
    return ask(
        () -> {
          JComponent root = window.frame().getRootPane();
          BufferedImage image =
              new BufferedImage(
                  root.getWidth() * scale, root.getHeight() * scale, BufferedImage.TYPE_INT_RGB);
          Graphics2D g = image.createGraphics();
          g.scale(scale, scale);
          root.paint(g);
          g.dispose();
          return image;
        });
  }

  /** Closes the window and waits until everything is closed. */
  @Override
  public void close() {
    run(window::leave);
    if (ask(
        () -> find(window.frame(), "action.Discard").isPresent() && window.frame().isVisible())) {
      click(named("action.Discard"));
    }
    try {
      assertTrue(closed.await(PATIENCE_S, TimeUnit.SECONDS), "the window did not close");
    } catch (InterruptedException e) {
      throw new AssertionError(e);
    }
  }
}
