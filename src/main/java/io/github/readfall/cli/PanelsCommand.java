package io.github.readfall.cli;

import io.github.readfall.art.ArtFiles;
import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.cli.report.JsonReport;
import io.github.readfall.cli.report.PanelsTable;
import io.github.readfall.draw.PanelSheet;
import io.github.readfall.job.PanelsProof;
import io.github.readfall.job.Proofer;
import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.lettering.typeset.Labels;
import io.github.readfall.script.Script;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.series.LayoutFile;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Finds an episode's panels in its art and writes down where they are. */
@Command(
    name = "panels",
    description = {
      "Find the boxes of the panels in the strip's art, and write them to layout.json.",
      "Balloons, mouths and areas to keep clear that are there already go with their panels."
    },
    mixinStandardHelpOptions = true)
final class PanelsCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(index = "0", paramLabel = "EPISODE", description = "A script or an episode folder.")
  private Path path;

  @Parameters(
      index = "1..*",
      arity = "0..*",
      paramLabel = "ART",
      description = "PNG or JPEG: the strip, or its pages from the top; left out, those in art/.")
  private List<Path> art = List.of();

  @Mixin private PictureOption picture = new PictureOption();
  @Mixin private ReportOptions report = new ReportOptions();

  @Override
  public Integer call() throws CannotProceed {
    try {
      EpisodeFiles files = OneEpisode.at(path, "panels");
      picture.check(1);
      ArtFiles pages = art.isEmpty() ? ArtFiles.of(files.script()) : ArtFiles.named(art);
      PrintWriter err = spec.commandLine().getErr();
      PanelsProof proof =
          new Proofer(ProgramFiles.bundledFonts(), System::nanoTime)
              .panels(files, pages, rows -> new CountedRows(rows, err));
      LayoutFile file = LayoutFile.of(files);
      boolean anything = !proof.layout().panels().isEmpty();
      if (anything) {
        file.save(proof.layout());
      }
      draw(proof);
      print(proof, anything ? List.of(file.path().toString()) : List.of());
      return report.status(proof.findings());
    } catch (UnusablePath e) {
      throw new CannotProceed(e.getMessage());
    }
  }

  private void draw(PanelsProof proof) throws UnusablePath {
    Script script = proof.fit().episode().script();
    HouseStyle style = proof.fit().episode().style();
    picture.draw(
        () ->
            PanelSheet.of(
                script.title().isBlank() ? "Untitled" : script.title(),
                script.language(),
                proof.found(),
                proof.matched(),
                new Labels(proof.fit().episode().shelf(), style)),
        style.strip().dpi());
  }

  private void print(PanelsProof proof, List<String> files) {
    PrintWriter out = spec.commandLine().getOut();
    if (report.json()) {
      out.println(new JsonReport(Version.number()).panels(proof, files));
    } else {
      out.println(PanelsTable.of(proof));
      files.forEach(file -> out.println("wrote " + file));
    }
  }
}
