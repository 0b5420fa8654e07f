package io.github.readfall.window.script;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.base.finding.Where;
import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.script.Keywords;
import io.github.readfall.script.LineKind;
import io.github.readfall.script.RandomScript;
import io.github.readfall.script.read.ReadScript;
import io.github.readfall.script.read.ScriptReader;
import java.awt.Component;
import java.awt.Container;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JLabel;
import javax.swing.SwingConstants;
import javax.swing.SwingUtilities;
import javax.swing.text.BadLocationException;
import javax.swing.text.JTextComponent;
import javax.swing.text.Position;
import javax.swing.undo.AbstractUndoableEdit;
import javax.swing.undo.UndoableEdit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ScriptEditorTest {

  private static final int WIDTH = 420;
  private static final int HEIGHT = 600;

  private static final String SCRIPT =
      """
      PANEL 1  tall
      The mill stands in water to its knees, and rain falls on it as it has fallen on every day.

      ILSE (thought): It is *counting* again.
      OTTO: 😀 is
      """;

  @Test
  void givesTheTextBackAsItCame() throws Exception {
    onEventThread(
        () -> {
          ScriptEditor editor = new ScriptEditor();
          String file = "\uFEFF" + SCRIPT.replace("\n", "\r\n");
          editor.open(file);
          assertEquals(file, editor.text());
          assertEquals(new ScriptPosition(1, 1), editor.caret());
          assertFalse(editor.canUndo());
        });
  }

  @Test
  void tellsWhatIsTypedAsTheFileWillHaveIt() throws Exception {
    onEventThread(
        () -> {
          ScriptEditor editor = new ScriptEditor();
          List<String> heard = new ArrayList<>();
          editor.onTextChange(heard::add);
          editor.open("PANEL\r\n");
          assertEquals(List.of(), heard);
          editor.area().append("Rain.\n");
          assertEquals(List.of("PANEL\r\nRain.\r\n"), heard);
        });
  }

  @Test
  void replacesAllInOneStepAndKeepsTheCaret() throws Exception {
    onEventThread(
        () -> {
          ScriptEditor editor = new ScriptEditor();
          editor.open(SCRIPT);
          editor.goTo(4, 3);
          editor.replace(SCRIPT.replace("mill", "old mill").replace("rain", "snow"));
          assertEquals(new ScriptPosition(4, 3), editor.caret());
          editor.undo();
          assertEquals(SCRIPT, editor.text());
          assertTrue(editor.canRedo());
        });
  }

  private static UndoableEdit elsewhere(String name, List<String> log) {
    return new AbstractUndoableEdit() {
      private static final long serialVersionUID = 1;

      @Override
      public String getPresentationName() {
        return name;
      }

      @Override
      public void undo() {
        super.undo();
        log.add("-" + name);
      }

      @Override
      public void redo() {
        super.redo();
        log.add("+" + name);
      }
    };
  }

  @Test
  void editsMadeElsewhereAreUndoneAndRedoneInOrderByName() throws Exception {
    onEventThread(
        () -> {
          ScriptEditor editor = new ScriptEditor();
          List<String> log = new ArrayList<>();
          editor.open(SCRIPT);
          editor.addUndoStep(elsewhere("moving a", log), "a");
          editor.addUndoStep(elsewhere("moving a", log), "a"); // continues the step
          editor.addUndoStep(elsewhere("moving b", log), "b");
          editor.area().append("x");
          assertEquals(Optional.of("typing"), editor.undoName());
          editor.undo();
          assertEquals(SCRIPT, editor.text());
          assertEquals(List.of(), log);
          assertEquals(Optional.of("moving b"), editor.undoName());
          editor.undo();
          assertEquals(Optional.of("moving a"), editor.undoName());
          editor.undo();
          assertEquals(List.of("-moving b", "-moving a", "-moving a"), log);
          assertEquals(Optional.empty(), editor.undoName());
          assertEquals(Optional.of("moving a"), editor.redoName());
          editor.redo();
          editor.redo();
          editor.redo();
          assertEquals(SCRIPT + "x", editor.text());
          assertEquals(List.of("+moving a", "+moving a", "+moving b"), log.subList(3, 6));
        });
  }

  @Test
  void goesToColumnsInCodePoints() throws Exception {
    onEventThread(
        () -> {
          ScriptEditor editor = new ScriptEditor();
          editor.open(SCRIPT);
          editor.goTo(5, 9);
          assertEquals("is", editor.area().script().text().substring(caretOf(editor)).strip());
          assertEquals(new ScriptPosition(5, 9), editor.caret());
          editor.goTo(99, 99);
          assertEquals(new ScriptPosition(6, 1), editor.caret());
        });
  }

  private static int caretOf(ScriptEditor editor) {
    return editor.area().getCaretPosition();
  }

  @Test
  void knowsTheFindingsAtTheCaret() throws Exception {
    onEventThread(
        () -> {
          ScriptEditor editor = new ScriptEditor();
          editor.open(SCRIPT);
          ReadScript read = new ScriptReader().read(SCRIPT, Keywords.ENGLISH);
          Finding first = finding(Where.balloon("p1-1", 1, 4));
          Finding second = finding(Where.at("", 5, 1));
          editor.show(
              read, List.of(second, first), Completions.of(read.script(), HouseStyle.DEFAULT));
          editor.goTo(4, 17);
          assertEquals(List.of(first), editor.area().findingsAt(caretOf(editor)));
          editor.goTo(5, 1);
          assertEquals(List.of(second), editor.area().findingsAt(caretOf(editor)));
          editor.goTo(1, 1);
          assertEquals(List.of(), editor.area().findingsAt(caretOf(editor)));
        });
  }

  private static Finding finding(Where where) {
    return Finding.of("words/long", Severity.WARNING, where, "Long < here.", "Shorten it.");
  }

  @Test
  void showsNothingFoundInATextThatHasChanged() throws Exception {
    onEventThread(
        () -> {
          ScriptEditor editor = new ScriptEditor();
          editor.open(SCRIPT);
          ReadScript old = new ScriptReader().read(SCRIPT, Keywords.ENGLISH);
          editor.area().append("x");
          editor.show(old, List.of(finding(Where.at("", 1, 1))), Completions.NONE);
          assertEquals(List.of(), editor.area().underlines());
        });
  }

  @Test
  void findsAndReplaces() throws Exception {
    onEventThread(
        () -> {
          ScriptEditor editor = new ScriptEditor();
          editor.open(SCRIPT);
          editor.find();
          text(editor, "find wanted").setText("is");
          assertEquals("2 matches.", result(editor));
          press(editor, "find next");
          assertEquals(SCRIPT.indexOf("is *"), editor.area().getSelectionStart());
          assertEquals("Match 1 of 2.", result(editor));
          press(editor, "find previous");
          assertEquals("Match 2 of 2.", result(editor));
          text(editor, "find instead").setText("was");
          press(editor, "find replace");
          assertEquals(SCRIPT.replace("😀 is", "😀 was"), editor.text());
          press(editor, "find replace all");
          assertEquals("Replaced one match.", result(editor));
          assertEquals(SCRIPT.replace("is ", "was ").replace("😀 is", "😀 was"), editor.text());
          editor.undo();
          editor.undo();
          assertEquals(SCRIPT, editor.text());
          text(editor, "find wanted").setText("wheel");
          assertEquals("Not found.", result(editor));
        });
  }

  private static JTextComponent text(ScriptEditor editor, String name) {
    return (JTextComponent) named(editor, name);
  }

  private static void press(ScriptEditor editor, String name) {
    ((AbstractButton) named(editor, name)).doClick();
  }

  private static String result(ScriptEditor editor) {
    return ((JLabel) named(editor, "find result")).getText();
  }

  private static Component named(Container parent, String name) {
    return all(parent).filter(c -> name.equals(c.getName())).findFirst().orElseThrow();
  }

  private static Stream<Component> all(Container parent) {
    return Stream.of(parent.getComponents())
        .flatMap(
            c ->
                c instanceof Container inner
                    ? Stream.concat(Stream.of(c), all(inner))
                    : Stream.of(c));
  }

  /** Caret and pointer agree on every position, at any width, after any edits. */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4})
  void caretAndPointerAgreeOnEveryPosition(int seed) throws Exception {
    SplittableRandom random = new SplittableRandom(seed);
    onEventThread(
        () -> {
          ScriptArea area = laidOut(plain(RandomScript.sound(random)) + SCRIPT);
          for (int edit = 0; edit < 15; edit++) {
            int at = random.nextInt(area.getDocument().getLength() + 1);
            area.insert(edit % 2 == 0 ? "water and rain, " : "ILSE: *no*\n", at);
          }
          area.setSize(WIDTH, area.getPreferredSize().height);
          assertPlacesAgree(area);
        });
  }

  /** Removes marks and surrogates, which have no caret position of their own. */
  private static String plain(String text) {
    return LineEnds.withLineFeeds(text).replaceAll("[^ -~\n]", "a");
  }

  private static void assertPlacesAgree(ScriptArea area) throws BadLocationException {
    int rows = 0;
    double top = -1;
    for (int offset = 0; offset <= area.getDocument().getLength(); offset++) {
      Rectangle2D box = area.modelToView2D(offset);
      if (area.script().text().codePointAt(Math.min(offset, area.script().getLength() - 1))
          > Character.MAX_VALUE) {
        continue;
      }
      assertTrue(box.getX() >= 0 && box.getX() <= WIDTH, "at " + offset + ": " + box);
      rows += box.getY() > top ? 1 : 0;
      top = Math.max(top, box.getY());
      int back = area.viewToModel2D(new Point2D.Double(box.getX() + 0.5, box.getCenterY()));
      Rectangle2D there = area.modelToView2D(back);
      assertEquals(box.getY(), there.getY(), "row of " + offset);
      assertEquals(box.getX(), there.getX(), 2, "place of " + offset);
    }
    assertTrue(rows > area.script().lineCount(), "nothing was broken");
  }

  @Test
  void breaksLinesAgainWhenAnEditAboveChangesTheirKind() throws Exception {
    onEventThread(
        () -> {
          ScriptArea area = laidOut("PANEL\nILSE: a\nb c d\n");
          BufferedImage before = paint(area);
          area.replaceRange("\n\n", 6, 14);
          area.replaceRange("Water: a\n", 6, 8);
          assertEquals(LineKind.DESCRIPTION, area.script().lines().kind(3));
          BufferedImage after = paint(area);
          ScriptArea fresh = laidOut("PANEL\nWater: a\nb c d\n");
          fresh.setCaretPosition(area.getCaretPosition());
          assertNotEquals(0, differing(before, after));
          assertEquals(0, differing(after, paint(fresh)));
        });
  }

  @Test
  void setsArabicFromTheRight() throws Exception {
    onEventThread(
        () -> {
          ScriptArea area = laidOut("PANEL\nليلى: نعم\n");
          double first = area.modelToView2D(6).getX();
          double second = area.modelToView2D(7).getX();
          assertTrue(first > second, first + " " + second);
          Position.Bias[] bias = {Position.Bias.Forward};
          int left =
              area.getUI()
                  .getNextVisualPositionFrom(
                      area, 7, Position.Bias.Forward, SwingConstants.WEST, bias);
          assertEquals(8, left);
        });
  }

  @Test
  void movesByRowsOverBrokenLines() throws Exception {
    onEventThread(
        () -> {
          ScriptArea area = laidOut(SCRIPT);
          Position.Bias[] bias = {Position.Bias.Forward};
          int below = SCRIPT.indexOf("The mill");
          double y = area.modelToView2D(below).getY();
          int next =
              area.getUI()
                  .getNextVisualPositionFrom(
                      area, below, Position.Bias.Forward, SwingConstants.SOUTH, bias);
          assertEquals(2, area.script().lineAt(next));
          assertEquals(y + area.look().rowHeight(), area.modelToView2D(next).getY());
        });
  }

  @Test
  void tellsErrorsWarningsAndNotesApartWithoutColour() throws Exception {
    onEventThread(
        () -> {
          List<Integer> heights = new ArrayList<>();
          List<Integer> inked = new ArrayList<>();
          for (Severity severity : Severity.values()) {
            ScriptArea area = laidOut("PANEL\nwwwwwwwwwwww\n");
            BufferedImage plain = paint(area);
            ReadScript read = new ScriptReader().read(area.getText(), Keywords.ENGLISH);
            Finding found =
                Finding.of("a/b", severity, Where.at("", 2, 1), "Something.", "Mend it.");
            area.underline(new FindingPlaces(area.script(), read.script()).of(List.of(found)));
            heights.add(rowsDiffering(plain, paint(area)));
            inked.add(differing(plain, paint(area)));
          }
          assertTrue(heights.get(0) > heights.get(1), "a wave is taller: " + heights);
          assertTrue(inked.get(1) > inked.get(2), "dashes are more than dots: " + inked);
        });
  }

  @Test
  void saysUnderThePointerWhatWasFound() {
    assertEquals(
        "<html><body style='width:320px'><p><b>Long &lt; here.</b></p><p>Shorten it.</p>"
            + "</body></html>",
        FindingTip.of(List.of(finding(Where.everywhere()))));
  }

  private static ScriptArea laidOut(String text) {
    ScriptArea area = new ScriptArea();
    area.script().become(text);
    area.setSize(WIDTH, HEIGHT);
    area.setSize(WIDTH, Math.max(HEIGHT, area.getPreferredSize().height));
    paint(area); // text that was never painted has no caret positions
    return area;
  }

  private static BufferedImage paint(ScriptArea area) {
    BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
    area.paint(image.createGraphics());
    return image;
  }

  private static int differing(BufferedImage a, BufferedImage b) {
    int differing = 0;
    for (int y = 0; y < HEIGHT; y++) {
      for (int x = 0; x < WIDTH; x++) {
        differing += a.getRGB(x, y) == b.getRGB(x, y) ? 0 : 1;
      }
    }
    return differing;
  }

  private static int rowsDiffering(BufferedImage a, BufferedImage b) {
    int rows = 0;
    for (int y = 0; y < HEIGHT; y++) {
      boolean differs = false;
      for (int x = 0; x < WIDTH; x++) {
        differs |= a.getRGB(x, y) != b.getRGB(x, y);
      }
      rows += differs ? 1 : 0;
    }
    return rows;
  }

  /** The body of a test, which may throw. */
  private interface Body {
    void run() throws BadLocationException;
  }

  private static void onEventThread(Body body) throws Exception {
    List<Throwable> thrown = new ArrayList<>();
    SwingUtilities.invokeAndWait(
        () -> {
          try {
            body.run();
          } catch (BadLocationException | RuntimeException | AssertionError e) {
            thrown.add(e);
          }
        });
    if (!thrown.isEmpty()) {
      throw new AssertionError(thrown.get(0).getMessage(), thrown.get(0));
    }
  }
}
