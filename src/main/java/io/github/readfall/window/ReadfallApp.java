package io.github.readfall.window;

import io.github.readfall.series.autosave.WindowStateFile;
import io.github.readfall.window.parts.Theme;
import java.util.concurrent.CountDownLatch;
import javax.swing.SwingUtilities;

/** Runs the window. */
public final class ReadfallApp {

  private ReadfallApp() {}

  /** Opens the window, and returns when it has been closed. */
  public static void run(Launch launch) {
    CountDownLatch closed = new CountDownLatch(1);
    SwingUtilities.invokeLater(() -> window(launch, closed::countDown).open());
    try {
      closed.await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt(); // an interrupt means that the program is to end
    }
  }

  /** A window that is not open yet, with the theme it had last. */
  static MainWindow window(Launch launch, Runnable closed) {
    Theme.prepare();
    var remembered = WindowStateFile.in(launch.stateFolder()).read().remembered();
    new Theme(remembered.theme(), remembered.textSizePt()).apply();
    return new MainWindow(launch, closed);
  }
}
