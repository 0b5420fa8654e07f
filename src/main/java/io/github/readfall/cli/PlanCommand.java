package io.github.readfall.cli;

import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.base.finding.Finding;
import io.github.readfall.cli.report.JsonReport;
import io.github.readfall.cli.report.PlanTable;
import io.github.readfall.job.PlanProof;
import io.github.readfall.job.Proofer;
import io.github.readfall.plan.Split;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.series.EpisodeParts;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Plans an episode before it is drawn, and splits it if asked to. */
@Command(
    name = "plan",
    description =
        "Say how tall an episode is, how long it takes to read, and where to cut and split it.",
    mixinStandardHelpOptions = true)
final class PlanCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "PATH", description = "A script, an episode folder, or a series folder.")
  private Path path;

  @Option(
      names = "--split",
      paramLabel = "PARTS",
      description = "Split the episode into so many parts (one episode only).")
  private Optional<Integer> parts = Optional.empty();

  @Option(
      names = "--write",
      description = "Write the parts of the split beside the episode; the old one stays.")
  private boolean write;

  @Mixin private LanguageOptions languages = new LanguageOptions();
  @Mixin private ReportOptions report = new ReportOptions();

  @Override
  public Integer call() throws CannotProceed {
    try {
      List<EpisodeFiles> episodes = EpisodeFiles.at(path);
      checkRequest(episodes.size());
      Proofer proofer = new Proofer(ProgramFiles.bundledFonts(), System::nanoTime);
      OptionalInt wanted = parts.map(OptionalInt::of).orElse(OptionalInt.empty());
      List<PlanProof> proofs = proofer.plan(episodes, wanted, languages.others());
      checkSplit(proofs.get(0));
      List<String> files = write ? writeParts(episodes.get(0), proofs.get(0)) : List.of();
      print(proofs, files);
      return report.status(findings(proofs));
    } catch (UnusablePath e) {
      throw new CannotProceed(e.getMessage());
    }
  }

  private void checkRequest(int episodes) throws CannotProceed {
    if (episodes > 1 && (parts.isPresent() || write)) {
      throw new CannotProceed("--split and --write take one episode: give the path of an episode.");
    }
    if (parts.isPresent() && (parts.get() < 2 || parts.get() > Split.MOST_PARTS)) {
      throw new CannotProceed(
          "--split takes a number of parts from 2 to " + Split.MOST_PARTS + ".");
    }
  }

  private void checkSplit(PlanProof proof) throws CannotProceed {
    if (parts.isPresent() && proof.plan().split().isEmpty()) {
      throw new CannotProceed(
          "The episode has too few panels for "
              + parts.get()
              + " parts: a row, or a panel with its insets, stays together.");
    }
    if (write && proof.plan().split().isEmpty()) {
      throw new CannotProceed(
          "The episode is not too tall, so nothing is to be split: say --split 2 to split it.");
    }
  }

  private static List<String> writeParts(EpisodeFiles episode, PlanProof proof)
      throws UnusablePath {
    Split split = proof.plan().split().orElseThrow();
    EpisodeParts parts =
        EpisodeParts.of(episode, proof.fit().episode().script(), split.firstPanels());
    parts.write();
    return parts.scripts().stream().map(Path::toString).toList();
  }

  private void print(List<PlanProof> proofs, List<String> files) {
    PrintWriter out = spec.commandLine().getOut();
    if (report.json()) {
      JsonReport printed = new JsonReport(Version.number());
      boolean series = EpisodeFiles.isSeries(path);
      out.println(series ? printed.planSeries(proofs) : printed.plan(proofs.get(0), files));
    } else {
      proofs.forEach(proof -> out.println(PlanTable.of(proof)));
      files.forEach(file -> out.println("wrote " + file));
    }
  }

  private static List<Finding> findings(List<PlanProof> proofs) {
    return proofs.stream().flatMap(proof -> proof.findings().stream()).toList();
  }
}
