package io.github.readfall.cli;

import io.github.readfall.art.ArtFiles;
import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.cli.report.PanelsTable;
import io.github.readfall.draw.PanelSheet;
import io.github.readfall.job.PanelsProof;
import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.lettering.typeset.Labels;
import io.github.readfall.script.Script;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.series.LayoutFile;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Finds an episode's panels in its art and writes down where they are. */
@Command(
    name = "panels",
    description = {
      "Find the panels in the strip's art, and write their boxes to layout.json.",
      "Balloons, mouths and areas to keep clear that are already there move with their panels."
    },
    mixinStandardHelpOptions = true)
final class PanelsCommand extends ReportingCommand {

  @Parameters(index = "0", paramLabel = "EPISODE", description = "A script or an episode folder.")
  private Path path;

  @Parameters(
      index = "1..*",
      arity = "0..*",
      paramLabel = "ART",
      description = "PNG or JPEG: the strip, or its pages from the top (default: those in art/).")
  private List<Path> art = List.of();

  @Mixin private PictureOption picture = new PictureOption();

  @Override
  int run() throws CannotProceed, UnusablePath {
    EpisodeFiles files = OneEpisode.at(path, "panels");
    picture.check(1);
    ArtFiles pages = art.isEmpty() ? ArtFiles.of(files.script()) : ArtFiles.named(art);
    PrintWriter err = err();
    PanelsProof proof = proofer().panels(files, pages, rows -> new CountedRows(rows, err));
    LayoutFile file = LayoutFile.of(files);
    boolean hasPanels = !proof.layout().panels().isEmpty();
    if (hasPanels) {
      file.save(proof.layout());
    }
    draw(proof);
    print(proof, hasPanels ? List.of(file.path().toString()) : List.of());
    return report().status(proof.findings());
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
    print(() -> PanelsTable.of(proof), json -> json.panels(proof, files), files);
  }
}
