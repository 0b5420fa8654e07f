package io.github.readfall.cli;

import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.base.finding.Finding;
import io.github.readfall.cli.report.FitTable;
import io.github.readfall.draw.FitSheet;
import io.github.readfall.job.FitProof;
import io.github.readfall.job.OtherLanguages;
import io.github.readfall.job.Proofer;
import io.github.readfall.lettering.typeset.Labels;
import io.github.readfall.series.EpisodeFiles;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Sets every balloon of a script, and says how large it is. */
@Command(
    name = "fit",
    description = "Set every balloon at phone reading size, and report how large it is.",
    mixinStandardHelpOptions = true)
final class FitCommand extends ReportingCommand {

  @Parameters(paramLabel = "PATH", description = "A script, an episode folder, or a series folder.")
  private Path path;

  @Mixin private PictureOption picture = new PictureOption();
  @Mixin private LanguageOptions languages = new LanguageOptions();

  @Override
  int run() throws CannotProceed, UnusablePath {
    List<EpisodeFiles> episodes = EpisodeFiles.at(path);
    picture.check(episodes.size());
    Proofer proofer = proofer();
    OtherLanguages others = languages.others();
    List<FitProof> proofs = new ArrayList<>();
    for (EpisodeFiles episode : episodes) {
      proofs.add(proofer.fit(episode, others));
    }
    FitProof first = proofs.get(0);
    Labels labels = new Labels(first.episode().shelf(), first.set().style());
    picture.draw(() -> FitSheet.of(first.set(), labels), first.set().style().strip().dpi());
    print(proofs);
    return report().status(findings(proofs));
  }

  private void print(List<FitProof> proofs) {
    print(
        () -> proofs.stream().map(FitTable::of).collect(Collectors.joining("\n")),
        json -> EpisodeFiles.isSeries(path) ? json.fitSeries(proofs) : json.fit(proofs.get(0)),
        List.of());
  }

  private static List<Finding> findings(List<FitProof> proofs) {
    return proofs.stream().flatMap(proof -> proof.findings().stream()).toList();
  }
}
