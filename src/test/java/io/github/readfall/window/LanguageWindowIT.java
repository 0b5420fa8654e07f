package io.github.readfall.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import io.github.readfall.languages.translate.TranslatedCue;
import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.script.read.ScriptReader;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.window.canvas.PhoneView;
import io.github.readfall.window.canvas.StripPane;
import io.github.readfall.window.languages.LanguageBox;
import io.github.readfall.window.model.EpisodeTranslations;
import io.github.readfall.window.model.MemoryTranslations;
import io.github.readfall.window.model.TranslationFiles;
import io.github.readfall.window.strip.StripColumn;
import java.awt.ComponentOrientation;
import java.awt.GraphicsEnvironment;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Translating in a real window with real keys. */
class LanguageWindowIT {

  private static final String SCRIPT =
      """
      Title: Ebb
      Language: en
      Cast: Ilse, Wouter

      PANEL 1
      The mill.

      ILSE: It turns again and again.
      WOUTER: Leave it be.

      PANEL 2
      Water.

      ILSE: Listen to the water.
      """;

  private static final String LONGER = " und dreht sich und dreht sich und dreht sich";

  private final Path folder;
  private final MemoryTranslations translations =
      new MemoryTranslations()
          .say("ar", "p1-1", "\u0625\u0646\u0647\u0627 \u062a\u062f\u0648\u0631.")
          .say("de", "p1-1", "Es dreht sich wieder.")
          .say("de", "p2-1", "Hör das Wasser.");

  LanguageWindowIT(@TempDir Path folder) {
    this.folder = folder;
  }

  @BeforeEach
  void aDisplayIsThere() {
    assumeFalse(GraphicsEnvironment.isHeadless(), "there is no display: the window was not tested");
  }

  private Path script() throws Exception {
    Path script = folder.resolve("ebb").resolve("script.txt");
    Files.createDirectories(script.getParent());
    return Files.writeString(script, SCRIPT);
  }

  private OpenWindow opened(TranslationFiles from) throws Exception {
    OpenWindow window = OpenWindow.with(folder.resolve("state"), script(), from);
    window.settled();
    fitted(window);
    return window;
  }

  private static void fitted(OpenWindow window) {
    window.waitUntil("every translation is fitted", () -> window.window().languages().isSettled());
  }

  private static void choose(OpenWindow window, String box, String tag) {
    window.run(() -> ((LanguageBox) window.named(box)).choose(Optional.of(tag)));
    fitted(window);
  }

  private static String text(OpenWindow window, String name) {
    JComponent component = window.named(name);
    return window.ask(
        () ->
            component instanceof JLabel label
                ? label.getText()
                : ((JTextComponent) component).getText());
  }

  /** A hash of the visible pixels of the strip. */
  private static int looks(OpenWindow window) {
    StripPane strip = window.window().work().strip();
    return window.ask(() -> Pictures.of(strip).hashCode());
  }

  private static void isOnTheStrip(OpenWindow window, int before) {
    window.waitUntil("the strip shows other words", () -> looks(window) != before);
  }

  @Test
  void aTranslationIsShownEditedJudgedAndSaved() throws Exception {
    try (OpenWindow window = opened(translations)) {
      JComponent panel = window.named("translation");
      assertFalse(window.ask(panel::isVisible));
      int english = looks(window);
      choose(window, "language", "de");
      isOnTheStrip(window, english);
      assertTrue(window.ask(panel::isVisible));
      window.run(() -> window.window().work().editor().goTo(8, 1));
      assertEquals("It turns again and again.", text(window, "translation.source"));
      assertEquals("Es dreht sich wieder.", text(window, "translation.target"));
      assertEquals("Fits as it is.", text(window, "translation.verdict"));
      write(window, LONGER);
      isTooLong(window);
      assertEquals(List.of(), translations.saved());
      window.key(KeyEvent.VK_CONTROL, KeyEvent.VK_S);
      window.waitUntil("it is saved", () -> !translations.saved().isEmpty());
      assertEquals(List.of("de p1-1 Es dreht sich wieder." + LONGER), translations.saved());
    }
  }

  private static void write(OpenWindow window, String words) {
    int before = looks(window);
    window.choose("menu.toTranslation");
    window.waitUntil(
        "the field has the keyboard", () -> window.named("translation.target").isFocusOwner());
    window.key(KeyEvent.VK_CONTROL, KeyEvent.VK_END);
    window.type(words);
    fitted(window);
    isOnTheStrip(window, before);
  }

  private static void isTooLong(OpenWindow window) {
    String verdict = text(window, "translation.verdict");
    assertTrue(
        verdict.matches("Fits if the balloon grows by .*|[0-9]+ letters? too many\\."), verdict);
  }

  @Test
  void typingIsUndoneInTheFieldAndSavedWhenAnotherCueIsEdited() throws Exception {
    try (OpenWindow window = opened(translations)) {
      choose(window, "language", "de");
      window.run(() -> window.window().work().editor().goTo(8, 1));
      write(window, "x");
      window.key(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
      assertEquals("Es dreht sich wieder.", text(window, "translation.target"));
      assertEquals(SCRIPT, window.ask(() -> window.window().work().editor().text()));
      window.type(" da");
      window.key(KeyEvent.VK_PAGE_DOWN);
      assertEquals("Leave it be.", text(window, "translation.source"));
      assertEquals("", text(window, "translation.target"));
      assertTrue(text(window, "translation.verdict").startsWith("Not translated yet"));
      window.waitUntil("it is saved", () -> !translations.saved().isEmpty());
      window.key(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
      assertEquals("", text(window, "translation.target"));
    }
  }

  @Test
  void aTranslationThatCannotBeSavedIsReportedAndKept() throws Exception {
    translations.full(true);
    try (OpenWindow window = opened(translations)) {
      choose(window, "language", "de");
      write(window, " da");
      window.key(KeyEvent.VK_CONTROL, KeyEvent.VK_S);
      window.waitUntil(
          "it is reported",
          () ->
              window.window().notices().notices().stream()
                  .anyMatch(notice -> notice.sentence().equals("The disk is full: make room.")));
      translations.full(false);
      window.key(KeyEvent.VK_CONTROL, KeyEvent.VK_S);
      window.waitUntil("it is saved", () -> !translations.saved().isEmpty());
      window.waitUntil("the notice is closed", () -> window.window().notices().notices().isEmpty());
    }
  }

  @Test
  void twoLanguagesAreShownAtTheSamePosition() throws Exception {
    try (OpenWindow window = opened(translations)) {
      StripColumn column = window.window().work().stripColumn();
      assertFalse(window.ask(() -> column.beside().isShowing()));
      choose(window, "language.beside", "de");
      window.waitUntil("it is shown beside", () -> column.beside().isShowing());
      StripPane strip = window.window().work().strip();
      window.run(
          () -> {
            column.actualPixels();
            strip.showFrom(strip.scene().heightPx() / 3);
          });
      window.waitUntil(
          "both are at the same place",
          () -> strip.visible().topPx() > 0 && apartPx(strip, column.beside()) < 1);
      assertEquals(strip.scale(), window.ask(() -> column.beside().scale()));
      PhoneView phone = window.window().work().phone();
      PhoneView other = window.window().work().phoneColumn().beside();
      window.run(() -> phone.scrollTo(200));
      window.waitUntil(
          "both phones are", () -> phone.topPx() > 0 && phone.topPx() == other.topPx());
      assertTrue(window.ask(() -> window.named("translation").isVisible()));
    }
  }

  private static double apartPx(StripPane one, StripPane other) {
    return Math.abs(one.visible().topPx() - other.visible().topPx());
  }

  @Test
  void theMatrixGoesToTheBalloonInItsLanguage() throws Exception {
    try (OpenWindow window = opened(translations)) {
      int english = looks(window);
      window.choose("menu.toMatrix");
      JTable table = (JTable) window.named("matrix.table");
      Rectangle cell = window.ask(() -> table.getCellRect(2, 2, false));
      window.click(table, new Point(cell.x + cell.width / 2, cell.y + cell.height / 2));
      fitted(window);
      assertEquals(14, window.ask(() -> window.window().work().editor().caret().line()));
      assertEquals("de", window.ask(() -> window.window().languages().shown().main()));
      assertEquals("Hör das Wasser.", text(window, "translation.target"));
      isOnTheStrip(window, english);
      window.key(KeyEvent.VK_CONTROL, KeyEvent.VK_L);
      assertEquals("en", window.ask(() -> window.window().languages().shown().main()));
      assertFalse(window.ask(() -> window.named("translation").isVisible()));
    }
  }

  @Test
  void aRightToLeftLanguageIsEditedFromTheRight() throws Exception {
    try (OpenWindow window = opened(translations)) {
      JComponent field = window.named("translation.target");
      choose(window, "language", "de");
      assertEquals(ComponentOrientation.LEFT_TO_RIGHT, window.ask(field::getComponentOrientation));
      choose(window, "language", "ar");
      assertEquals(ComponentOrientation.RIGHT_TO_LEFT, window.ask(field::getComponentOrientation));
    }
  }

  @Test
  void aTranslationNextToTheScriptIsReadAndSavedThere() throws Exception {
    EpisodeFiles files = EpisodeFiles.at(script()).get(0);
    TranslationFiles beside = new EpisodeTranslations(files);
    var read = new ScriptReader().read(SCRIPT, HouseStyle.DEFAULT.keywords()).script();
    beside.save("de", read, TranslatedCue.untranslated(read.cues().get(0)).saying("Es dreht."));
    try (OpenWindow window = opened(beside)) {
      choose(window, "language", "de");
      write(window, " sich");
      JComboBox<?> state = (JComboBox<?>) window.named("translation.state");
      window.run(() -> state.setSelectedIndex(2));
      fitted(window);
    }
    String saved = Files.readString(files.languagesFolder().resolve("de.xlf"));
    assertTrue(saved.contains("Es dreht. sich"), saved);
    assertTrue(saved.contains("state=\"reviewed\""), saved);
    assertEquals(SCRIPT, Files.readString(files.script()));
  }
}
