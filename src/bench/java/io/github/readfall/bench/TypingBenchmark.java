package io.github.readfall.bench;

import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.script.Keywords;
import io.github.readfall.script.Script;
import io.github.readfall.script.read.ReadScript;
import io.github.readfall.script.read.ScriptReader;
import io.github.readfall.window.script.Completions;
import io.github.readfall.window.script.ScriptEditor;
import java.awt.Component;
import java.awt.Container;
import java.awt.Graphics;
import java.awt.image.BufferedImage;
import java.lang.reflect.InvocationTargetException;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * One letter typed in the middle of a script: from the key to the whole pane painted again, with
 * all lines read again; the rest of the window is not included.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 3, time = 5)
@Fork(1)
public class TypingBenchmark {

  private static final int WORDS = 8;
  private static final int WIDTH = 760;
  private static final int HEIGHT = 960;
  private static final int MARGIN = 60;
  private static final String TYPED = "the *water* went / out and nobody knew. ";

  /** The number of cues of the script, two to a panel. */
  @Param({"120", "1200"})
  public int cues;

  private final BufferedImage screen = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
  private ScriptEditor editor = new ScriptEditor();
  private JTextArea text = new JTextArea();
  private int typed;

  /** Opens the script with the caret in its middle. */
  @Setup
  public void prepare() throws InterruptedException, InvocationTargetException {
    Script script = Cues.script(cues, WORDS);
    ReadScript read = new ScriptReader().read(script.text(), Keywords.ENGLISH);
    SwingUtilities.invokeAndWait(
        () -> {
          editor = new ScriptEditor();
          editor.open(script.text());
          editor.show(read, read.findings(), Completions.of(script, HouseStyle.DEFAULT));
          editor.setSize(WIDTH, HEIGHT);
          lay(editor);
          editor.goTo(script.cues().get(cues / 2).line(), WIDTH);
          text =
              all(editor)
                  .filter(JTextArea.class::isInstance)
                  .map(JTextArea.class::cast)
                  .findFirst()
                  .orElseThrow();
          press();
          if (IntStream.range(0, HEIGHT)
              .allMatch(y -> screen.getRGB(MARGIN, y) == screen.getRGB(0, 0))) {
            throw new IllegalStateException("nothing was painted");
          }
        });
  }

  private static Stream<Component> all(Container parent) {
    return Stream.of(parent.getComponents())
        .flatMap(
            c -> c instanceof Container in ? Stream.concat(Stream.of(c), all(in)) : Stream.of(c));
  }

  private static void lay(Container parent) {
    parent.doLayout();
    for (Component child : parent.getComponents()) {
      if (child instanceof Container inner) {
        lay(inner);
      }
    }
  }

  /** Types a letter, or deletes one when a sentence is complete. */
  @Benchmark
  public int key() throws InterruptedException, InvocationTargetException {
    SwingUtilities.invokeAndWait(this::press);
    return typed;
  }

  private void press() {
    int at = typed++ % (2 * TYPED.length());
    if (at < TYPED.length()) {
      text.replaceSelection(TYPED.substring(at, at + 1));
    } else {
      text.replaceRange("", text.getCaretPosition() - 1, text.getCaretPosition());
    }
    lay(editor);
    Graphics g = screen.createGraphics();
    editor.paint(g);
    g.dispose();
  }
}
