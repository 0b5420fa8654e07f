package io.github.readfall.window.canvas;

import io.github.readfall.base.geom.Path;
import io.github.readfall.base.geom.XY;
import io.github.readfall.base.viewing.Colour;
import io.github.readfall.draw.Layer;
import io.github.readfall.draw.Mark;
import io.github.readfall.draw.StripLayers;
import java.awt.EventQueue;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;

/** Strips for tests: a coloured stripe, as a panel, every so many pixels. */
final class Strips {

  static final double WIDTH_PX = 800;
  static final int STRIPE_PX = 100;
  static final Colour NOTE = new Colour(0x00ff00);

  private static final long PATIENCE_S = 20;

  private Strips() {}

  /** A strip whose stripes have colours that identify them, with a small note at a height. */
  static StripScene striped(int heightPx, double notePx) {
    List<Mark> stripes = new ArrayList<>();
    for (int top = 0; top < heightPx; top += STRIPE_PX) {
      stripes.add(new Mark.Fill(box(0, top, WIDTH_PX, STRIPE_PX), stripe(top)));
    }
    List<Mark> note = List.of(new Mark.Fill(box(400, notePx, 100, 50), NOTE));
    StripLayers layers =
        new StripLayers(
            List.of(new StripLayers.Part(Layer.PANELS, stripes)),
            List.of(new StripLayers.Part(Layer.FINDINGS, note)));
    return StripScene.of(WIDTH_PX, heightPx, layers, Optional.empty(), Colour.WHITE);
  }

  /** The colour of the stripe at a height. */
  static Colour stripe(double y) {
    return new Colour(0x200040 + 0x010000 * ((int) y / STRIPE_PX % 200));
  }

  private static Path box(double x, double y, double width, double height) {
    return new Path(
        List.of(
            new Path.Move(new XY(x, y)),
            new Path.Line(new XY(x + width, y)),
            new Path.Line(new XY(x + width, y + height)),
            new Path.Line(new XY(x, y + height)),
            new Path.Close()));
  }

  /** The component that the strip of a pane is painted on. */
  static StripView view(StripPane pane) {
    return (StripView) pane.view();
  }

  /** Runs an action on the event thread and waits for its result. */
  static <T> T onEvents(Callable<T> action) throws Exception {
    FutureTask<T> task = new FutureTask<>(action);
    EventQueue.invokeAndWait(task);
    try {
      return task.get();
    } catch (ExecutionException e) {
      throw new AssertionError(e.getCause());
    }
  }

  /** Waits until a condition, checked on the event thread, is true. */
  static void until(BooleanSupplier isSo, String what) throws Exception {
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_S);
    while (!onEvents(isSo::getAsBoolean)) {
      if (System.nanoTime() > end) {
        throw new AssertionError("never: " + what);
      }
      Thread.sleep(5);
    }
  }
}
