package io.github.readfall.cli;

import io.github.readfall.base.files.Folders;
import io.github.readfall.base.files.SafeFile;
import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.cli.report.LanguagesTable;
import io.github.readfall.draw.StripSheet;
import io.github.readfall.draw.render.PictureFormat;
import io.github.readfall.job.LanguagesProof;
import io.github.readfall.job.Proofer;
import io.github.readfall.job.polyglot.EditionReader;
import io.github.readfall.job.polyglot.ExpectedLengths;
import io.github.readfall.job.polyglot.FittedEdition;
import io.github.readfall.job.polyglot.MatrixSheet;
import io.github.readfall.lettering.typeset.Labels;
import io.github.readfall.script.Script;
import io.github.readfall.series.EpisodeFiles;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Sets an episode's translations into its balloons. */
@Command(
    name = "fit",
    description = {
      "Set every translation into the balloons of the strip, and report what each line needs.",
      "A line fits, or needs tighter lettering, a larger balloon, or fewer letters."
    },
    mixinStandardHelpOptions = true)
final class LanguagesFit extends ReportingCommand {

  @Parameters(paramLabel = "EPISODE", description = "A script or an episode folder.")
  private Path path;

  @Option(
      names = "--languages",
      paramLabel = "TAG",
      split = ",",
      description = "Only these languages, e.g. de,ko (default: all in lang/).")
  private List<String> tags = List.of();

  @Option(names = "--stand-in", description = "Fill in missing translations with meaningless text.")
  private boolean standIn;

  @Option(
      names = "--lengths",
      paramLabel = "SOURCE",
      defaultValue = "measured",
      description = "Length of the text filled in: ${COMPLETION-CANDIDATES} (default: measured).")
  private ExpectedLengths lengths = ExpectedLengths.MEASURED;

  @Option(
      names = "--strips",
      paramLabel = "FOLDER",
      description = "Draw each language's strip to FOLDER/TAG.png.")
  private Optional<Path> strips = Optional.empty();

  @Mixin private PictureOption picture = new PictureOption();

  @Override
  int run() throws CannotProceed, UnusablePath {
    EpisodeFiles files = OneEpisode.at(path, "languages fit");
    picture.check(1);
    List<String> asked = asked(files);
    EditionReader reader = new EditionReader(standIn ? Optional.of(lengths) : Optional.empty());
    Proofer proofer = proofer();
    LanguagesProof proof =
        proofer.languages(files, (its, episode) -> reader.readAll(its, episode, asked));
    draw(proof);
    print(proof, drawStrips(proof));
    return report().status(proof.findings());
  }

  private List<String> asked(EpisodeFiles files) throws CannotProceed, UnusablePath {
    List<String> asked = tags.isEmpty() ? files.languages() : LanguageOptions.tags(tags);
    if (asked.isEmpty()) {
      throw new CannotProceed(
          "There is no translation in "
              + files.languagesFolder()
              + ": import one with readfall languages in, or try --languages de --stand-in.");
    }
    return asked;
  }

  private void draw(LanguagesProof proof) throws UnusablePath {
    Script script = proof.original().episode().script();
    String title = script.title().isBlank() ? "Untitled" : script.title();
    picture.draw(
        () -> MatrixSheet.of(title, script.language(), proof.matrix(), labels(proof)), dpi(proof));
  }

  private List<String> drawStrips(LanguagesProof proof) throws UnusablePath {
    List<String> files = new ArrayList<>();
    if (strips.isPresent()) {
      Path folder = strips.get();
      Folders.make(folder);
      for (FittedEdition edition : proof.matrix().editions()) {
        Path file = folder.resolve(edition.edition().language() + ".png");
        SafeFile.write(
            file,
            out ->
                PictureFormat.PNG.write(
                    StripSheet.of(edition.galley(), edition.findings(), labels(proof)),
                    dpi(proof),
                    out));
        files.add(file.toString());
      }
    }
    return files;
  }

  private static Labels labels(LanguagesProof proof) {
    return new Labels(proof.original().episode().shelf(), proof.original().episode().style());
  }

  private static int dpi(LanguagesProof proof) {
    return proof.original().episode().style().strip().dpi();
  }

  private void print(LanguagesProof proof, List<String> files) {
    print(() -> LanguagesTable.of(proof), json -> json.languages(proof, files), files);
  }
}
