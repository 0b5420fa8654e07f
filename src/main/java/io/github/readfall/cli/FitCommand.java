package io.github.readfall.cli;

import io.github.readfall.draw.Drawing;
import io.github.readfall.draw.FitSheet;
import io.github.readfall.finding.Finding;
import io.github.readfall.font.FontShelf;
import io.github.readfall.proof.FitProof;
import io.github.readfall.proof.Proofer;
import io.github.readfall.render.PictureFormat;
import io.github.readfall.report.FitTable;
import io.github.readfall.report.JsonReport;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.series.SafeFile;
import io.github.readfall.series.UnusablePath;
import io.github.readfall.typeset.Labels;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
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

  @Option(
      names = "--picture",
      paramLabel = "FILE",
      description = "Draw all balloons into a .png or .svg file (one episode only).")
  private Optional<Path> picture = Optional.empty();

  @Option(names = "--json", description = "Print a JSON report and nothing else.")
  private boolean json;

  @Option(
      names = "--fail-on",
      paramLabel = "SEVERITY",
      defaultValue = "error",
      description = "Exit 1 from this severity on: ${COMPLETION-CANDIDATES}.")
  private FailOn failOn = FailOn.error;

  @Override
  public Integer call() throws CannotGoOn {
    try {
      List<EpisodeFiles> episodes = EpisodeFiles.at(path);
      Optional<PictureFormat> format = pictureFormat(episodes.size());
      FontShelf fonts = Installation.bundledFonts();
      Proofer proofer = new Proofer(fonts, System::nanoTime);
      List<FitProof> proofs = new ArrayList<>();
      for (EpisodeFiles episode : episodes) {
        proofs.add(proofer.fit(episode));
      }
      if (picture.isPresent() && format.isPresent()) {
        draw(proofs.get(0), picture.get(), format.get());
      }
      print(proofs);
      return failOn.status(findings(proofs));
    } catch (UnusablePath e) {
      throw new CannotGoOn(e.getMessage());
    }
  }

  private Optional<PictureFormat> pictureFormat(int episodes) throws CannotGoOn {
    if (picture.isEmpty()) {
      return Optional.empty();
    }
    if (episodes > 1) {
      throw new CannotGoOn("--picture draws one episode: give the path of an episode.");
    }
    Optional<PictureFormat> format = PictureFormat.of(picture.get());
    if (format.isEmpty()) {
      throw new CannotGoOn("--picture writes .png and .svg: end the file's name in one of them.");
    }
    return format;
  }

  private static void draw(FitProof proof, Path file, PictureFormat format) throws UnusablePath {
    Labels labels = new Labels(proof.episode().shelf(), proof.set().style());
    Drawing sheet = FitSheet.of(proof.set(), labels);
    int dpi = proof.set().style().strip().dpi();
    SafeFile.write(file, out -> format.write(sheet, dpi, out));
  }

  private void print(List<FitProof> proofs) {
    if (json) {
      JsonReport report = new JsonReport(Version.number());
      boolean series = EpisodeFiles.isSeries(path);
      spec.commandLine()
          .getOut()
          .println(series ? report.fitSeries(proofs) : report.fit(proofs.get(0)));
    } else {
      proofs.forEach(proof -> spec.commandLine().getOut().println(FitTable.of(proof)));
    }
  }

  private static List<Finding> findings(List<FitProof> proofs) {
    return proofs.stream().flatMap(proof -> proof.findings().stream()).toList();
  }
}
