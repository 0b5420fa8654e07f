package io.github.readfall.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.awt.Color;
import java.awt.Component;
import java.awt.Container;
import java.awt.Graphics2D;
import java.awt.GraphicsEnvironment;
import java.awt.Window;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.swing.AbstractButton;
import javax.swing.JList;
import javax.swing.JTextField;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From script and art to lettering over it, in a real window. */
class ExportWindowIT {

  private static final String SCRIPT =
      """
      Title: Ebb
      Language: en
      Cast: Ilse, Wouter

      PANEL 1

      ILSE: It turns again.

      PANEL 2

      WOUTER: Listen to the water.
      """;

  private final Path episode;

  ExportWindowIT(@TempDir Path folder) throws Exception {
    episode = folder.resolve("ebb");
    Files.createDirectories(episode.resolve("art"));
    Files.writeString(episode.resolve("script.txt"), SCRIPT);
    BufferedImage strip = new BufferedImage(1600, 3000, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = strip.createGraphics();
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, 1600, 3000);
    for (int top : new int[] {100, 1600}) {
      g.setColor(new Color(0x9fb8c4));
      g.fillRect(100, top, 1400, 1300);
      g.setColor(Color.DARK_GRAY);
      g.drawRect(100, top, 1400, 1300);
      g.fillOval(1000, top + 700, 300, 500);
    }
    g.dispose();
    ImageIO.write(strip, "png", episode.resolve("art").resolve("01.png").toFile());
  }

  @BeforeEach
  void aDisplayIsThere() {
    assumeFalse(GraphicsEnvironment.isHeadless(), "there is no display: the window was not tested");
  }

  @Test
  void panelsAreFoundBalloonsPlacedAndLayersWritten() throws Exception {
    try (OpenWindow window = OpenWindow.with(episode.resolve("state"), episode)) {
      window.settled();
      window.choose("menu.panels");
      isTold(window, "2 panel boxes found in the art, for 2 in the script");
      window.settled("the boxes are those of the art", shown -> shown.galley().heightPx() == 3000);
      window.choose("menu.place");
      isTold(window, "Placed 2 balloons");
      assertFalse(Files.exists(episode.resolve("layout.json")), "nothing is written unasked");

      Path to = episode.resolve("out");
      window.choose("menu.export");
      window.waitUntil("the dialog is open", () -> dialog(window).isPresent());
      assertTrue(Files.readString(episode.resolve("layout.json")).contains("\"balloons\""));
      window.run(() -> ((JTextField) part(window, "export.folder")).setText(to.toString()));
      tick(window, "export.kind.layers");
      tick(window, "export.kind.transcript");
      AbstractButton write = (AbstractButton) part(window, "export.write");
      window.waitUntil("it is ready", write::isEnabled);
      JList<?> list = (JList<?>) part(window, "export.files");
      int listed = window.ask(() -> list.getModel().getSize());
      assertFalse(Files.exists(to));
      window.run(() -> write.doClick(0));
      window.waitUntil("it is written", () -> Files.exists(to) && !write.isEnabled());
      window.waitUntil("all is there", () -> names(to).size() == listed);
      assertTrue(names(to).stream().anyMatch(name -> name.endsWith("-lettering.svg")));
      assertTrue(names(to).stream().noneMatch(name -> name.startsWith(".")));

      tick(window, "export.kind.layers");
      window.waitUntil("what is there is said", () -> said(list).contains("(exists)"));
      assertFalse(window.ask(write::isEnabled));
      tick(window, "export.replace");
      assertTrue(window.ask(write::isEnabled));
      window.run(() -> ((AbstractButton) part(window, "export.close")).doClick(0));
      assertEquals(Optional.empty(), window.ask(() -> dialog(window)));
    }
  }

  private static void tick(OpenWindow window, String name) {
    window.run(() -> ((AbstractButton) part(window, name)).doClick(0));
  }

  private static void isTold(OpenWindow window, String words) {
    window.waitUntil(
        words,
        () ->
            window.window().notices().notices().stream()
                .anyMatch(notice -> notice.sentence().contains(words)));
  }

  private static String said(JList<?> list) {
    return list.getModel().getSize() == 0 ? "" : list.getModel().getElementAt(0).toString();
  }

  private static List<String> names(Path folder) throws Exception {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).toList();
    }
  }

  private static Optional<Window> dialog(OpenWindow window) {
    return Arrays.stream(window.window().frame().getOwnedWindows())
        .filter(owned -> owned.isShowing() && "export".equals(owned.getName()))
        .findFirst();
  }

  private static Component part(OpenWindow window, String name) {
    return find(dialog(window).orElseThrow(), name).orElseThrow();
  }

  private static Optional<Component> find(Container in, String name) {
    for (Component child : in.getComponents()) {
      if (name.equals(child.getName())) {
        return Optional.of(child);
      }
      if (child instanceof Container inner) {
        Optional<Component> deeper = find(inner, name);
        if (deeper.isPresent()) {
          return deeper;
        }
      }
    }
    return Optional.empty();
  }
}
