package io.github.readfall.window.canvas;

import java.util.function.DoubleConsumer;
import javax.swing.Timer;

/** Moves a value calmly to another, fast at first and slow at the end. */
final class ScrollAnimation {

  private static final int TICK_MS = 15;
  private static final double LASTS_S = 0.22;
  private static final double NANOS = 1e-9;

  private final DoubleConsumer moved;
  private final Timer timer;
  private double from;
  private double to;
  private long start;

  ScrollAnimation(DoubleConsumer moved) {
    this.moved = moved;
    this.timer = new Timer(TICK_MS, event -> tick());
  }

  /** Sets out; where it was going before is forgotten. */
  void go(double now, double target) {
    from = now;
    to = target;
    start = System.nanoTime();
    timer.restart();
  }

  void stop() {
    timer.stop();
  }

  boolean isUnderWay() {
    return timer.isRunning();
  }

  private void tick() {
    double share = (System.nanoTime() - start) * NANOS / LASTS_S;
    moved.accept(at(from, to, share));
    if (share >= 1) {
      timer.stop();
    }
  }

  /** Where it is after a share of its time. */
  static double at(double from, double to, double share) {
    if (share >= 1) {
      return to;
    }
    double left = 1 - Math.max(0, share);
    return to + (from - to) * left * left * left;
  }
}
