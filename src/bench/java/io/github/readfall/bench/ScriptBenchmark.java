package io.github.readfall.bench;

import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.lettering.typeset.Typesetter;
import io.github.readfall.script.Keywords;
import io.github.readfall.script.Script;
import io.github.readfall.script.read.ReadScript;
import io.github.readfall.script.read.ScriptReader;
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

/** Growth of the time for reading and fitting with the length of a script. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class ScriptBenchmark {

  private static final int WORDS = 8;

  /** The number of cues of the script, two to a panel. */
  @Param({"100", "1000", "40000"})
  public int cues;

  private final Typesetter typesetter = new Typesetter(Cues.shelf(), HouseStyle.DEFAULT);
  private Script script = Cues.script(1, 1);
  private String text = "";

  /** Makes the script. */
  @Setup
  public void prepare() {
    script = Cues.script(cues, WORDS);
    text = script.text();
  }

  /** From text to script. */
  @Benchmark
  public ReadScript read() {
    return new ScriptReader().read(text, Keywords.ENGLISH);
  }

  /** From script to balloons. */
  @Benchmark
  public SetEpisode fit() {
    return typesetter.set(script);
  }
}
