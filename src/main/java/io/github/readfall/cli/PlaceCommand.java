package io.github.readfall.cli;

import io.github.readfall.art.DetailMap;
import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.cli.report.StripTable;
import io.github.readfall.draw.StripSheet;
import io.github.readfall.job.LayoutGuard;
import io.github.readfall.job.PlaceOptions;
import io.github.readfall.job.Proofer;
import io.github.readfall.job.StripProof;
import io.github.readfall.lettering.typeset.Labels;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.series.LayoutFile;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Places an episode's balloons and writes down where they are. */
@Command(
    name = "place",
    description = {
      "Place every balloon and its tail, and write them to layout.json.",
      "Balloons that have a place keep it unless they are in the way; pinned ones always keep it."
    },
    mixinStandardHelpOptions = true)
final class PlaceCommand extends ReportingCommand {

  @Parameters(paramLabel = "EPISODE", description = "A script or an episode folder.")
  private Path path;

  @Option(
      names = "--open-gutters",
      description = "Widen the gutter above a panel that lacks room; everything below moves down.")
  private boolean openGutters;

  @Option(names = "--afresh", description = "Place every balloon again, except pinned ones.")
  private boolean afresh;

  @Mixin private PictureOption picture = new PictureOption();
  @Mixin private LanguageOptions languages = new LanguageOptions();

  @Override
  int run() throws CannotProceed, UnusablePath {
    List<EpisodeFiles> episodes = EpisodeFiles.at(path);
    if (episodes.size() > 1) {
      throw new CannotProceed("place works on one episode: give the path of an episode.");
    }
    picture.check(1);
    EpisodeFiles files = episodes.get(0);
    Proofer proofer = proofer();
    DetailMap detail = openGutters ? DetailMap.NONE : CalmArt.of(files, err());
    StripProof proof =
        proofer.place(files, new PlaceOptions(openGutters, afresh), languages.others(), detail);
    LayoutFile file = LayoutFile.of(files);
    LayoutGuard.refuse(proof.findings(), file);
    boolean hasPanels = !proof.episode().script().panels().isEmpty();
    if (hasPanels) {
      file.save(proof.layout());
    }
    Labels labels = new Labels(proof.episode().shelf(), proof.galley().style());
    picture.draw(
        () -> StripSheet.of(proof.galley(), proof.findings(), labels),
        proof.galley().style().strip().dpi());
    print(proof, hasPanels ? List.of(file.path().toString()) : List.of());
    return report().status(proof.findings());
  }

  private void print(StripProof proof, List<String> files) {
    print(() -> StripTable.of(proof), json -> json.strip("place", proof, files), files);
  }
}
