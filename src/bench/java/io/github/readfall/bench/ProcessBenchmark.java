package io.github.readfall.bench;

import io.github.readfall.script.Script;
import io.github.readfall.strip.Layout;
import io.github.readfall.strip.json.LayoutWriter;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * The distribution's command as a user runs it: a whole process, in 256 MiB of heap for the sample
 * and 512 MiB for a strip of 1 600 × 300 000 px with 1 500 balloons.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2)
@Measurement(iterations = 9)
@Fork(1)
public class ProcessBenchmark {

  private static final String SAMPLE = "sample-scripts/overdue-tide";
  private static final Path FILES = Path.of("target/bench");
  private static final int LOW_PANELS = 500;
  private static final int EPISODES = 10;

  /**
   * Additional options of Java: none by default, so that the launcher's apply; then all compilers.
   */
  @Param({"", "-XX:TieredStopAtLevel=4"})
  public String compilers = "";

  private Path crowded = FILES;
  private Path bare = FILES;
  private Path series = FILES;
  private String bareLayout = "";

  /** Writes the long strip, with its balloons and without, and a series of the sample's copies. */
  @Setup
  public void prepare() throws IOException {
    Script script = Strips.crowdedScript(LOW_PANELS);
    Layout full = Strips.crowded(Strips.set(script), LOW_PANELS);
    bareLayout = LayoutWriter.write(Strips.lowPanels(LOW_PANELS));
    crowded = episode("crowded", script.text(), LayoutWriter.write(full));
    bare = episode("bare", script.text(), bareLayout);
    series = Files.createDirectories(FILES.resolve("series"));
    Files.writeString(
        series.resolve("series.toml"), Files.readString(Path.of(SAMPLE, "series.toml")));
    String text = Files.readString(Path.of(SAMPLE, "ep01", "script.txt"));
    for (int number = 1; number <= EPISODES; number++) {
      Path folder = Files.createDirectories(series.resolve("ep" + number));
      Files.writeString(folder.resolve("script.txt"), text);
    }
  }

  /** Reverts the changes of {@code place}. */
  @Setup(Level.Invocation)
  public void unplace() throws IOException {
    Files.writeString(bare.resolve("layout.json"), bareLayout);
  }

  private static Path episode(String name, String script, String layout) throws IOException {
    Path folder = Files.createDirectories(FILES.resolve(name));
    Files.writeString(folder.resolve("script.txt"), script);
    Files.writeString(folder.resolve("layout.json"), layout);
    return folder;
  }

  /** The table of the first sample episode. */
  @Benchmark
  public int fitSample() throws IOException, InterruptedException {
    return run("256m", "fit", SAMPLE + "/ep01");
  }

  /** Ten episodes side by side. */
  @Benchmark
  public int checkSeries() throws IOException, InterruptedException {
    return run("512m", "check", series.toString(), "--fail-on=never");
  }

  /** The long strip, most of whose balloons overlap. */
  @Benchmark
  public int checkLong() throws IOException, InterruptedException {
    return run("512m", "check", crowded.toString(), "--fail-on=never");
  }

  /** The same, drawn. */
  @Benchmark
  public int drawLong() throws IOException, InterruptedException {
    String picture = "--picture=" + FILES.resolve("long.png");
    return run("512m", "check", crowded.toString(), "--fail-on=never", picture);
  }

  /** The long strip, no balloon of which has a place. */
  @Benchmark
  public int placeLong() throws IOException, InterruptedException {
    return run("512m", "place", bare.toString(), "--fail-on=never");
  }

  private int run(String heap, String... arguments) throws IOException, InterruptedException {
    List<String> line = new ArrayList<>(List.of("target/readfall/bin/readfall"));
    line.addAll(List.of(arguments));
    ProcessBuilder command = new ProcessBuilder(line);
    command.environment().put("JDK_JAVA_OPTIONS", "-Xmx" + heap);
    command.environment().put("_JAVA_OPTIONS", compilers); // overrides the launcher's options
    command.redirectErrorStream(true).redirectOutput(new File("target/bench/output.txt"));
    int status = command.start().waitFor();
    if (status != 0) {
      throw new IllegalStateException("exit status " + status);
    }
    return status;
  }
}
