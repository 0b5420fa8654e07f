package io.github.readfall.cli;

import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.cli.report.JsonReport;
import io.github.readfall.job.Proofer;
import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Function;
import java.util.function.Supplier;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** A command that examines episodes and reports its findings as a table or as JSON. */
abstract class ReportingCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;
  @Mixin private ReportOptions report = new ReportOptions();

  @Override
  public final Integer call() throws CannotProceed {
    try {
      return run();
    } catch (UnusablePath e) {
      throw new CannotProceed(e.getMessage());
    }
  }

  /**
   * Does the work.
   *
   * @return the exit status
   */
  abstract int run() throws CannotProceed, UnusablePath;

  /** Returns a proofer with the bundled fonts. */
  Proofer proofer() throws CannotProceed {
    return Cli.proofer(spec);
  }

  ReportOptions report() {
    return report;
  }

  PrintWriter out() {
    return spec.commandLine().getOut();
  }

  PrintWriter err() {
    return spec.commandLine().getErr();
  }

  /**
   * Prints the JSON report if it was asked for, otherwise the table and the files.
   *
   * @param files that were written
   */
  void print(Supplier<String> table, Function<JsonReport, String> json, List<String> files) {
    if (report.json()) {
      out().println(json.apply(new JsonReport(Version.number())));
    } else {
      out().println(table.get());
      files.forEach(file -> out().println("wrote " + file));
    }
  }
}
