package io.github.readfall.bench;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.lettering.typeset.Typesetter;
import io.github.readfall.plan.PanelPlanner;
import io.github.readfall.plan.place.Placer;
import io.github.readfall.plan.place.Placing;
import io.github.readfall.rules.RuleBook;
import io.github.readfall.script.Script;
import io.github.readfall.strip.Layout;
import io.github.readfall.strip.anchor.Anchored;
import io.github.readfall.strip.anchor.Anchoring;
import io.github.readfall.strip.json.LayoutReader;
import io.github.readfall.strip.json.LayoutWriter;
import io.github.readfall.strip.json.ReadLayout;
import java.util.List;
import java.util.Set;
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

/**
 * Operations on a whole strip, compared with their floor, fitting the same balloons; and their
 * growth.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 5, time = 3)
@Fork(1)
public class StripBenchmark {

  /** The number of panels of the strip, each with two balloons of eight words. */
  @Param({"100", "1000"})
  public int panels;

  private final Typesetter typesetter = new Typesetter(Cues.shelf(), HouseStyle.DEFAULT);
  private Script script = Strips.script(1);
  private SetEpisode set = typesetter.set(script);
  private Layout bare = PanelPlanner.plan(set);
  private Layout placed = bare;
  private String json = "";

  /** Makes the strip. */
  @Setup
  public void prepare() {
    script = Strips.script(panels);
    set = typesetter.set(script);
    bare = PanelPlanner.plan(set);
    placed = Strips.placed(set);
    json = LayoutWriter.write(placed);
  }

  /** The floor. */
  @Benchmark
  public SetEpisode fit() {
    return typesetter.set(script);
  }

  /** From balloons and a layout to findings. */
  @Benchmark
  public List<Finding> check() {
    return RuleBook.check(Strips.galley(set, placed));
  }

  /** From balloons to panels. */
  @Benchmark
  public Layout plan() {
    return PanelPlanner.plan(set);
  }

  /** From panels to places. */
  @Benchmark
  public Placing place() {
    return Placer.place(set, bare, Set.of());
  }

  /** From the text of a layout.json to a layout. */
  @Benchmark
  public ReadLayout read() {
    return new LayoutReader().read(json);
  }

  /** Puts the layout onto its script. */
  @Benchmark
  public Anchored anchor() {
    return Anchoring.of(placed, script);
  }
}
