package io.github.readfall.cli;

import io.github.readfall.base.files.Cancelled;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * Lets work end tidily when the person ends the program, as with Ctrl-C: the program waits until
 * the work has cleaned up.
 */
final class Interruption implements AutoCloseable {

  private static final int LONGEST_WAIT_S = 20;

  private final AtomicBoolean asked = new AtomicBoolean();
  private final CountDownLatch cleared = new CountDownLatch(1);

  private Interruption() {}

  /** An interruption handler, in force until it is closed. */
  static Interruption awaited() {
    Interruption interruption = new Interruption();
    Runtime.getRuntime().addShutdownHook(new Thread(interruption::end, "interruption"));
    return interruption;
  }

  private void end() {
    asked.set(true);
    try {
      boolean tidy = cleared.await(LONGEST_WAIT_S, TimeUnit.SECONDS);
      if (!tidy) {
        return; // whatever it hangs on will not be waited for
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /**
   * Ends the work if the person has ended the program.
   *
   * @throws Cancelled in that case
   */
  void check() throws Cancelled {
    if (asked.get()) {
      throw new Cancelled();
    }
  }

  @Override
  public void close() {
    cleared.countDown();
  }
}
