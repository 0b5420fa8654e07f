package io.github.readfall.window.script;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.script.Keywords;
import io.github.readfall.script.read.ReadScript;
import io.github.readfall.script.read.ScriptReader;
import java.awt.AWTException;
import java.awt.GraphicsEnvironment;
import java.awt.Robot;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import javax.swing.JFrame;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Tests that type like a person. */
class ScriptEditorWindowIT {

  private static final String SCRIPT = "Cast: Ilse, Old Wouter\n\nPANEL 1\nRain.\n\n";
  private static final int PATIENCE_MS = 5000;
  private static final int STEP_MS = 20;

  private final List<JFrame> frames = new ArrayList<>();
  private final List<ScriptEditor> editors = new ArrayList<>();
  private final List<Robot> robots = new ArrayList<>();

  @BeforeEach
  void open() throws Exception {
    assumeFalse(GraphicsEnvironment.isHeadless(), "there is no display to open a window on");
    robots.add(robot());
    SwingUtilities.invokeAndWait(
        () -> {
          ScriptEditor editor = new ScriptEditor();
          editor.open(SCRIPT);
          ReadScript read = new ScriptReader().read(SCRIPT, Keywords.ENGLISH);
          editor.show(read, read.findings(), Completions.of(read.script(), HouseStyle.DEFAULT));
          JFrame frame = new JFrame();
          frame.setContentPane(editor);
          frame.setSize(700, 500);
          frame.setVisible(true);
          editor.goTo(6, 1);
          editor.focusText();
          editors.add(editor);
          frames.add(frame);
        });
    await("the text has the keyboard", () -> editor().area().isFocusOwner());
  }

  @AfterEach
  void close() throws Exception {
    SwingUtilities.invokeAndWait(() -> frames.forEach(JFrame::dispose));
  }

  private static Robot robot() throws AWTException {
    Robot robot = new Robot();
    robot.setAutoDelay(STEP_MS);
    return robot;
  }

  private ScriptEditor editor() {
    return editors.get(0);
  }

  @Test
  void completesASpeakerTakesItBackAndFindsWords() throws Exception {
    typeCapital(KeyEvent.VK_O);
    typeCapital(KeyEvent.VK_L);
    await("a name is offered", () -> editor().completer().list().isOpen());
    assertEquals(List.of("OLD WOUTER"), get(() -> editor().completer().list().offered()));
    type(KeyEvent.VK_ENTER);
    await("the name is written", () -> editor().text().endsWith("\nOLD WOUTER: "));
    type(KeyEvent.VK_R);
    type(KeyEvent.VK_A);
    type(KeyEvent.VK_I);
    type(KeyEvent.VK_N);
    await("words are typed", () -> editor().text().endsWith("OLD WOUTER: rain"));
    assertTrue(get(() -> !editor().completer().list().isOpen()), "prose is left alone");
    SwingUtilities.invokeAndWait(() -> editor().undo());
    await("the words are gone", () -> editor().text().endsWith("OLD WOUTER: "));
    SwingUtilities.invokeAndWait(() -> editor().find());
    type(KeyEvent.VK_R);
    type(KeyEvent.VK_A);
    type(KeyEvent.VK_ENTER);
    await("the word is selected", () -> "Ra".equals(editor().area().getSelectedText()));
    type(KeyEvent.VK_ESCAPE);
    await("the text has the keyboard again", () -> editor().area().isFocusOwner());
  }

  @Test
  void numbersTheNextPanelWhenAsked() throws Exception {
    typeCapital(KeyEvent.VK_P);
    await("a keyword is begun", () -> editor().text().endsWith("\nP"));
    robots.get(0).keyPress(KeyEvent.VK_CONTROL);
    type(KeyEvent.VK_SPACE);
    robots.get(0).keyRelease(KeyEvent.VK_CONTROL);
    await("the keyword is offered", () -> editor().completer().list().isOpen());
    type(KeyEvent.VK_TAB);
    await("the number is put in", () -> editor().text().endsWith("\nPANEL 2  "));
  }

  private void type(int key) {
    robots.get(0).keyPress(key);
    robots.get(0).keyRelease(key);
  }

  private void typeCapital(int key) {
    robots.get(0).keyPress(KeyEvent.VK_SHIFT);
    type(key);
    robots.get(0).keyRelease(KeyEvent.VK_SHIFT);
  }

  private static <T> T get(Supplier<T> asked) throws Exception {
    List<T> answers = new ArrayList<>();
    SwingUtilities.invokeAndWait(() -> answers.add(asked.get()));
    return answers.get(0);
  }

  private static void await(String what, BooleanSupplier met) throws Exception {
    for (int waited = 0; waited < PATIENCE_MS; waited += STEP_MS) {
      if (get(met::getAsBoolean)) {
        return;
      }
      Thread.sleep(STEP_MS);
    }
    throw new AssertionError("not in time: " + what);
  }
}
