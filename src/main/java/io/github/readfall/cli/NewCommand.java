package io.github.readfall.cli;

import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.cli.report.JsonReport;
import io.github.readfall.series.NewSeries;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Starts a series. */
@Command(
    name = "new",
    description = "Start a series: a commented series.toml, a folder for fonts, a first script.",
    mixinStandardHelpOptions = true)
final class NewCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "FOLDER", description = "The folder of the new series.")
  private Path folder;

  @Option(names = "--json", description = "Print a JSON report and nothing else.")
  private boolean json;

  @Override
  public Integer call() throws CannotProceed {
    try {
      List<String> files = NewSeries.in(folder).stream().map(Path::toString).toList();
      PrintWriter out = spec.commandLine().getOut();
      if (json) {
        out.println(new JsonReport(Version.number()).files("new", files));
      } else {
        files.forEach(file -> out.println("wrote " + file));
        out.println("Next: readfall fit " + folder);
      }
      return 0;
    } catch (UnusablePath e) {
      throw new CannotProceed(e.getMessage());
    }
  }
}
