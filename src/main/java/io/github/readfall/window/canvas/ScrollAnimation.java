package io.github.readfall.window.canvas;

import java.util.function.DoubleConsumer;
import javax.swing.Timer;

/** Moves a value smoothly to another, fast at first and slow at the end. */
final class ScrollAnimation {

  private static final int TICK_MS = 15;

  /** House default, no source. */
  static final long DURATION_MS = 220;

  private static final double NANOS_PER_MS = 1e6;

  private final DoubleConsumer moved;
  private final Timer timer;
  private double from;
  private double to;
  private long startNanos;

  ScrollAnimation(DoubleConsumer moved) {
    this.moved = moved;
    this.timer = new Timer(TICK_MS, event -> tick());
  }

  /** Starts moving; replaces a movement that has not ended. */
  void start(double now, double target) {
    from = now;
    to = target;
    startNanos = System.nanoTime();
    timer.restart();
  }

  void stop() {
    timer.stop();
  }

  boolean isRunning() {
    return timer.isRunning();
  }

  private void tick() {
    double share = (System.nanoTime() - startNanos) / (NANOS_PER_MS * DURATION_MS);
    moved.accept(at(from, to, share));
    if (share >= 1) {
      timer.stop();
    }
  }

  /** The value after a share (0 to 1) of the time. */
  static double at(double from, double to, double share) {
    if (share >= 1) {
      return to;
    }
    double left = 1 - Math.max(0, share);
    return to + (from - to) * left * left * left;
  }
}
