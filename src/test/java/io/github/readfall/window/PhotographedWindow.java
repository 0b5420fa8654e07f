package io.github.readfall.window;

import io.github.readfall.Pixels;
import io.github.readfall.base.viewing.ScreenScale;
import io.github.readfall.series.autosave.ThemeChoice;
import io.github.readfall.series.autosave.WindowState;
import io.github.readfall.series.autosave.WindowStateFile;
import io.github.readfall.strip.edits.StripItem;
import io.github.readfall.type.font.FontShelf;
import io.github.readfall.type.font.OpenFaces;
import io.github.readfall.window.model.EpisodeTranslations;
import io.github.readfall.window.model.StyleSubject;
import io.github.readfall.window.phone.TrueSizeControl;
import io.github.readfall.window.strip.StripColumn;
import io.github.readfall.window.style.StyleView;
import java.awt.Component;
import java.awt.Container;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.File;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.FutureTask;
import javax.imageio.ImageIO;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JSpinner;
import javax.swing.SwingUtilities;

/** A window in a process of its own, so that it can have any scale, which takes its own picture. */
final class PhotographedWindow {

  private static final int STILL = 8;
  private static final int MOST_TRIES = 200;

  private PhotographedWindow() {}

  /**
   * Takes a picture.
   *
   * @param args the state folder, the script, light or dark, the line of the caret, the rule of the
   *     selected finding (or none), the file of the picture, the language shown and the one beside
   *     it (or none), and what else is shown: {@code style VOICE}, {@code readers ROW}, {@code plan
   *     PARTS}, {@code strip BALLOON} or none
   */
  public static void main(String[] args) {
    try {
      photograph(args);
      Runtime.getRuntime().halt(0);
    } catch (Exception e) {
      System.err.println(e);
      Runtime.getRuntime().halt(1); // the open window would keep the process alive
    }
  }

  private static void photograph(String[] args) throws Exception {
    Path state = Path.of(args[0]);
    ThemeChoice theme = ThemeChoice.valueOf(args[2].toUpperCase(Locale.ROOT));
    WindowStateFile.in(state).write(WindowState.FIRST.themed(theme));
    FontShelf faces = OpenFaces.shelf();
    Launch launch =
        new Launch(faces, state, Optional.of(Path.of(args[1])), EpisodeTranslations::new);
    FutureTask<MainWindow> made =
        new FutureTask<>(
            () -> {
              MainWindow window = ReadfallApp.window(launch, () -> {});
              window.open();
              return window;
            });
    SwingUtilities.invokeAndWait(made);
    MainWindow window = made.get();
    settle(window);
    if (!args[6].equals("none")) {
      SwingUtilities.invokeAndWait(() -> look(window, args[6], args[7]));
    }
    settle(window);
    SwingUtilities.invokeAndWait(() -> arrange(window, Integer.parseInt(args[3]), args[4]));
    SwingUtilities.invokeAndWait(
        () -> {
          show(window, args[8].split(" ", 2));
          rest(window);
        });
    ImageIO.write(still(window), "png", new File(args[5]));
  }

  private static void settle(MainWindow window) throws Exception {
    while (!isSettled(window)) {
      Thread.sleep(50);
    }
  }

  private static boolean isSettled(MainWindow window) throws Exception {
    FutureTask<Boolean> settled =
        new FutureTask<>(
            () ->
                window.model().shown().isPresent()
                    && window.model().isSettled()
                    && window.languages().isSettled());
    SwingUtilities.invokeAndWait(settled);
    return settled.get();
  }

  private static void look(MainWindow window, String language, String beside) {
    StripColumn column = window.work().stripColumn();
    column.languages().choose(Optional.of(language));
    if (!beside.equals("none")) {
      column.otherLanguages().choose(Optional.of(beside));
    }
    window.languages().showMatrix();
  }

  private static void show(MainWindow window, String[] words) {
    switch (words[0]) {
      case "style" -> showStyle(window, words[1]);
      case "plan" -> showPlan(window, Integer.parseInt(words[1]));
      case "strip" ->
          window.stripController().chosen().select(Set.of(new StripItem.Balloon(words[1])));
      case "readers" -> readers(window, Integer.parseInt(words[1]));
      default -> {}
    }
  }

  private static void readers(MainWindow window, int row) {
    TrueSizeControl trueSize = window.work().phoneColumn().trueSize();
    trueSize.setScale(Optional.of(ScreenScale.NOMINAL));
    trueSize.switchOn();
    window.work().lowerPane().showReaders();
    window.work().lowerPane().readers().choose(row);
  }

  private static void showPlan(MainWindow window, int parts) {
    window.work().side().show("plan");
    ((JSpinner) OpenWindow.find(window.frame(), "plan.count").orElseThrow()).setValue(parts);
  }

  private static void showStyle(MainWindow window, String voice) {
    window.work().side().show("style");
    List<Container> parts = new ArrayList<>(List.of(window.work().side()));
    for (int i = 0; i < parts.size(); i++) {
      if (parts.get(i) instanceof StyleView view) {
        view.choose(new StyleSubject.Voice(voice));
      }
      for (Component inner : parts.get(i).getComponents()) {
        if (inner instanceof Container part) {
          parts.add(part);
        }
      }
    }
  }

  private static void arrange(MainWindow window, int line, String rule) {
    window.work().editor().goTo(line, 1);
    JList<?> list = window.work().findings().shownList();
    for (int i = 0; i < list.getModel().getSize(); i++) {
      if (list.getModel().getElementAt(i).toString().contains("rule=" + rule + ",")) {
        list.setSelectedIndex(i);
      }
    }
    rest(window);
  }

  /** Stops the caret from blinking. */
  private static void rest(MainWindow window) {
    window.work().findings().shownList().requestFocusInWindow();
  }

  /** A picture that has not changed for some time, so that everything has been painted. */
  private static BufferedImage still(MainWindow window) throws Exception {
    BufferedImage last = picture(window);
    int[] pixels = Pixels.of(last);
    int same = 0;
    for (int tries = 0; same < STILL; tries++) {
      if (tries > MOST_TRIES) {
        throw new IllegalStateException("the window does not come to rest");
      }
      Thread.sleep(100);
      last = picture(window);
      int[] now = Pixels.of(last);
      same = Arrays.equals(pixels, now) ? same + 1 : 0;
      pixels = now;
    }
    return last;
  }

  private static BufferedImage picture(MainWindow window) throws Exception {
    FutureTask<BufferedImage> task =
        new FutureTask<>(
            () -> {
              JComponent root = window.frame().getRootPane();
              AffineTransform scale =
                  window.frame().getGraphicsConfiguration().getDefaultTransform();
              BufferedImage image =
                  new BufferedImage(
                      (int) (root.getWidth() * scale.getScaleX()),
                      (int) (root.getHeight() * scale.getScaleY()),
                      BufferedImage.TYPE_INT_RGB);
              Graphics2D g = image.createGraphics();
              g.transform(scale);
              root.paint(g);
              g.dispose();
              return image;
            });
    SwingUtilities.invokeAndWait(task);
    return task.get();
  }
}
