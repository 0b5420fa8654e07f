package io.github.readfall.app;

import java.util.concurrent.CountDownLatch;
import javax.swing.SwingUtilities;

/** The window as a whole. */
public final class ReadfallApp {

  private ReadfallApp() {}

  /** Opens the window, and comes back when it is closed. */
  public static void run(Launch launch) {
    CountDownLatch closed = new CountDownLatch(1);
    SwingUtilities.invokeLater(closed::countDown);
    try {
      closed.await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt(); // whoever asks for it wants to end
    }
  }
}
