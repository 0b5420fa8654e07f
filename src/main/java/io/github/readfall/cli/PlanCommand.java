package io.github.readfall.cli;

import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.base.finding.Finding;
import io.github.readfall.cli.report.PlanTable;
import io.github.readfall.job.PlanProof;
import io.github.readfall.job.Proofer;
import io.github.readfall.plan.Split;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.series.EpisodeParts;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Plans an episode before it is drawn, and splits it if asked to. */
@Command(
    name = "plan",
    description =
        "Report how tall an episode is, how long it takes to read, and where to cut or split it.",
    mixinStandardHelpOptions = true)
final class PlanCommand extends ReportingCommand {

  @Parameters(paramLabel = "PATH", description = "A script, an episode folder, or a series folder.")
  private Path path;

  @Option(
      names = "--split",
      paramLabel = "PARTS",
      description = "Split the episode into this many parts (one episode only).")
  private Optional<Integer> parts = Optional.empty();

  @Option(names = "--write", description = "Write the parts beside the episode, which is kept.")
  private boolean write;

  @Mixin private LanguageOptions languages = new LanguageOptions();

  @Override
  int run() throws CannotProceed, UnusablePath {
    List<EpisodeFiles> episodes = EpisodeFiles.at(path);
    checkRequest(episodes.size());
    Proofer proofer = proofer();
    OptionalInt wanted = parts.map(OptionalInt::of).orElse(OptionalInt.empty());
    List<PlanProof> proofs = proofer.plan(episodes, wanted, languages.others());
    checkSplit(proofs.get(0));
    List<String> files = write ? writeParts(episodes.get(0), proofs.get(0)) : List.of();
    print(proofs, files);
    return report().status(findings(proofs));
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
          "The episode is not too tall and needs no split: add --split 2 to split it anyway.");
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
    print(
        () -> proofs.stream().map(PlanTable::of).collect(Collectors.joining("\n")),
        json ->
            EpisodeFiles.isSeries(path) ? json.planSeries(proofs) : json.plan(proofs.get(0), files),
        files);
  }

  private static List<Finding> findings(List<PlanProof> proofs) {
    return proofs.stream().flatMap(proof -> proof.findings().stream()).toList();
  }
}
