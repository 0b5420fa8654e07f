package io.github.readfall.bench;

import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.lettering.typeset.ShapedCue;
import io.github.readfall.lettering.typeset.Typesetter;
import io.github.readfall.script.Script;
import io.github.readfall.type.font.FontShelf;
import java.util.List;
import java.util.concurrent.TimeUnit;
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
import org.openjdk.jmh.infra.Blackhole;

/**
 * Fitting cues, compared with its floor: shaping the same texts once, in the same face, and nothing
 * else. One operation is {@link #CUES} cues.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class CueBenchmark {

  static final int CUES = 50;

  /** The number of words of a cue. */
  @Param({"1", "3", "6", "10", "14", "25"})
  public int words;

  private final FontShelf shelf = Cues.shelf();
  private final Typesetter typesetter = new Typesetter(shelf, HouseStyle.DEFAULT);
  private Script script = Cues.script(CUES, 1);
  private List<ShapedCue> shaped = List.of();

  /** Makes the cues, and shapes them once for the floor. */
  @Setup
  public void prepare() {
    script = Cues.script(CUES, words);
    shaped = typesetter.shape(script);
  }

  /** The floor. */
  @Benchmark
  public void shapeOnce(Blackhole hole) {
    for (ShapedCue cue : shaped) {
      char[] text = cue.passage().text().toCharArray();
      hole.consume(cue.type().face().shape(text, 0, text.length, false));
    }
  }

  /** Everything from a cue to its balloon. */
  @Benchmark
  public List<SetBalloon> fit() {
    return typesetter.set(script).balloons();
  }
}
