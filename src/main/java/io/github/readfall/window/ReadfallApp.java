package io.github.readfall.window;

import io.github.readfall.series.autosave.WindowStateFile;
import io.github.readfall.window.parts.Theme;
import java.util.concurrent.CountDownLatch;
import javax.swing.SwingUtilities;

/** The window as a whole. */
public final class ReadfallApp {

  private ReadfallApp() {}

  /** Opens the window, and comes back when it is closed. */
  public static void run(Launch launch) {
    CountDownLatch closed = new CountDownLatch(1);
    SwingUtilities.invokeLater(() -> window(launch, closed::countDown).open());
    try {
      closed.await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt(); // whoever asks for it wants to end
    }
  }

  /** A window that is not open yet, in the look it had last. */
  static MainWindow window(Launch launch, Runnable closed) {
    Theme.prepare();
    var remembered = WindowStateFile.in(launch.stateFolder()).read().remembered();
    new Theme(remembered.theme(), remembered.textSizePt()).wear();
    return new MainWindow(launch, closed);
  }
}
