package io.github.readfall.cli;

import io.github.readfall.art.DetailMap;
import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.cli.report.JsonReport;
import io.github.readfall.cli.report.StripTable;
import io.github.readfall.draw.StripSheet;
import io.github.readfall.job.LayoutGuard;
import io.github.readfall.job.PlaceOptions;
import io.github.readfall.job.Proofer;
import io.github.readfall.job.StripProof;
import io.github.readfall.lettering.typeset.Labels;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.series.LayoutFile;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Places an episode's balloons and writes down where they are. */
@Command(
    name = "place",
    description = {
      "Give every balloon a place and a tail, and write them to layout.json.",
      "Balloons that have a place stay there unless they are in the way; pinned ones always stay."
    },
    mixinStandardHelpOptions = true)
final class PlaceCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "EPISODE", description = "A script or an episode folder.")
  private Path path;

  @Option(
      names = "--open-gutters",
      description = "Make room where a panel lacks it, moving all below.")
  private boolean openGutters;

  @Option(
      names = "--afresh",
      description = "Place again what already has a place; pinned balloons stay.")
  private boolean afresh;

  @Mixin private PictureOption picture = new PictureOption();
  @Mixin private LanguageOptions languages = new LanguageOptions();
  @Mixin private ReportOptions report = new ReportOptions();

  @Override
  public Integer call() throws CannotProceed {
    try {
      List<EpisodeFiles> episodes = EpisodeFiles.at(path);
      if (episodes.size() > 1) {
        throw new CannotProceed("place works on one episode: give the path of an episode.");
      }
      picture.check(1);
      EpisodeFiles files = episodes.get(0);
      Proofer proofer = new Proofer(ProgramFiles.bundledFonts(), System::nanoTime);
      DetailMap detail =
          openGutters ? DetailMap.NONE : CalmArt.of(files, spec.commandLine().getErr());
      StripProof proof =
          proofer.place(files, new PlaceOptions(openGutters, afresh), languages.others(), detail);
      LayoutFile file = LayoutFile.of(files);
      LayoutGuard.refuse(proof.findings(), file);
      boolean anything = !proof.episode().script().panels().isEmpty();
      if (anything) {
        file.save(proof.layout());
      }
      Labels labels = new Labels(proof.episode().shelf(), proof.galley().style());
      picture.draw(
          () -> StripSheet.of(proof.galley(), proof.findings(), labels),
          proof.galley().style().strip().dpi());
      print(proof, anything ? List.of(file.path().toString()) : List.of());
      return report.status(proof.findings());
    } catch (UnusablePath e) {
      throw new CannotProceed(e.getMessage());
    }
  }

  private void print(StripProof proof, List<String> files) {
    PrintWriter out = spec.commandLine().getOut();
    if (report.json()) {
      out.println(new JsonReport(Version.number()).strip("place", proof, files));
    } else {
      out.println(StripTable.of(proof));
      files.forEach(file -> out.println("wrote " + file));
    }
  }
}
