package io.github.readfall.window;

import io.github.readfall.type.font.FontShelf;
import io.github.readfall.type.font.OpenFaces;
import io.github.readfall.window.model.TranslationFiles;
import java.awt.Point;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import javax.swing.SwingUtilities;

/** A window in a process of its own, which prints when and where it can be typed into. */
final class KilledWindow {

  private KilledWindow() {}

  /**
   * Opens the window.
   *
   * @param args the state folder and the script
   */
  @SuppressWarnings("SystemOut")
  public static void main(String[] args) throws Exception {
    FontShelf faces = OpenFaces.shelf();
    Launch launch =
        new Launch(
            faces,
            Path.of(args[0]),
            Optional.of(Path.of(args[1])),
            files -> TranslationFiles.none());
    CountDownLatch closed = new CountDownLatch(1);
    SwingUtilities.invokeLater(
        () -> {
          MainWindow window = ReadfallApp.window(launch, closed::countDown);
          boolean[] said = {false};
          window
              .model()
              .onSnapshot(
                  (shown, picture) -> {
                    if (shown.isSettled() && !said[0]) {
                      said[0] = true;
                      Point at = window.work().editor().getLocationOnScreen();
                      System.out.println("ready " + (at.x + 120) + " " + (at.y + 60));
                    }
                  });
          window.open();
        });
    closed.await();
  }
}
