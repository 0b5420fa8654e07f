package io.github.readfall.cli;

import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.base.finding.Finding;
import io.github.readfall.cli.report.FitTable;
import io.github.readfall.cli.report.JsonReport;
import io.github.readfall.draw.FitSheet;
import io.github.readfall.job.FitProof;
import io.github.readfall.job.OtherLanguages;
import io.github.readfall.job.Proofer;
import io.github.readfall.lettering.typeset.Labels;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.type.font.FontShelf;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Sets every balloon of a script, and says how large it is. */
@Command(
    name = "fit",
    description = "Set every balloon at phone reading size, and say how large it is.",
    mixinStandardHelpOptions = true)
final class FitCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "PATH", description = "A script, an episode folder, or a series folder.")
  private Path path;

  @Mixin private PictureOption picture = new PictureOption();
  @Mixin private LanguageOptions languages = new LanguageOptions();
  @Mixin private ReportOptions report = new ReportOptions();

  @Override
  public Integer call() throws CannotProceed {
    try {
      List<EpisodeFiles> episodes = EpisodeFiles.at(path);
      picture.check(episodes.size());
      FontShelf fonts = ProgramFiles.bundledFonts();
      Proofer proofer = new Proofer(fonts, System::nanoTime);
      OtherLanguages others = languages.others();
      List<FitProof> proofs = new ArrayList<>();
      for (EpisodeFiles episode : episodes) {
        proofs.add(proofer.fit(episode, others));
      }
      FitProof first = proofs.get(0);
      Labels labels = new Labels(first.episode().shelf(), first.set().style());
      picture.draw(() -> FitSheet.of(first.set(), labels), first.set().style().strip().dpi());
      print(proofs);
      return report.status(findings(proofs));
    } catch (UnusablePath e) {
      throw new CannotProceed(e.getMessage());
    }
  }

  private void print(List<FitProof> proofs) {
    if (report.json()) {
      JsonReport printed = new JsonReport(Version.number());
      boolean series = EpisodeFiles.isSeries(path);
      spec.commandLine()
          .getOut()
          .println(series ? printed.fitSeries(proofs) : printed.fit(proofs.get(0)));
    } else {
      proofs.forEach(proof -> spec.commandLine().getOut().println(FitTable.of(proof)));
    }
  }

  private static List<Finding> findings(List<FitProof> proofs) {
    return proofs.stream().flatMap(proof -> proof.findings().stream()).toList();
  }
}
