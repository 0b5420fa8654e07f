package io.github.readfall.bench;

import java.io.File;
import java.io.IOException;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The distribution's command as a person runs it: a whole process, in 256 MiB of heap. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3)
@Measurement(iterations = 15)
@Fork(1)
public class ProcessBenchmark {

  /** The table of the first sample episode. */
  @Benchmark
  public int fitSample() throws IOException, InterruptedException {
    ProcessBuilder command =
        new ProcessBuilder(
            "target/readfall/bin/readfall", "fit", "sample-scripts/overdue-tide/ep01");
    command.environment().put("JAVA_TOOL_OPTIONS", "-Xmx256m");
    command.redirectErrorStream(true).redirectOutput(new File("target/fit-sample.txt"));
    int status = command.start().waitFor();
    if (status != 0) {
      throw new IllegalStateException("exit status " + status);
    }
    return status;
  }
}
