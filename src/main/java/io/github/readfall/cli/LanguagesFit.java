package io.github.readfall.cli;

import io.github.readfall.base.files.Folders;
import io.github.readfall.base.files.SafeFile;
import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.cli.report.JsonReport;
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
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Sets an episode's translations into its balloons. */
@Command(
    name = "fit",
    description = {
      "Set every translation into the balloons of the strip, and say what each line needs.",
      "That is nothing, tighter lettering, a larger balloon, or fewer letters."
    },
    mixinStandardHelpOptions = true)
final class LanguagesFit implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "EPISODE", description = "A script or an episode folder.")
  private Path path;

  @Option(
      names = "--languages",
      paramLabel = "TAG",
      split = ",",
      description = "Only these, e.g. de,ko; left out, all that lie in lang/.")
  private List<String> tags = List.of();

  @Option(
      names = "--stand-in",
      description = "Where words are missing, set others in their stead that mean nothing.")
  private boolean standIn;

  @Option(
      names = "--lengths",
      paramLabel = "SOURCE",
      defaultValue = "measured",
      description = "How long what stands in is: ${COMPLETION-CANDIDATES} (default: measured).")
  private ExpectedLengths lengths = ExpectedLengths.MEASURED;

  @Option(
      names = "--strips",
      paramLabel = "FOLDER",
      description = "Draw each language's strip into FOLDER/TAG.png.")
  private Optional<Path> strips = Optional.empty();

  @Mixin private PictureOption picture = new PictureOption();
  @Mixin private ReportOptions report = new ReportOptions();

  @Override
  public Integer call() throws CannotProceed {
    try {
      EpisodeFiles files = OneEpisode.at(path, "languages fit");
      picture.check(1);
      List<String> asked = asked(files);
      EditionReader reader = new EditionReader(standIn ? Optional.of(lengths) : Optional.empty());
      Proofer proofer = new Proofer(ProgramFiles.bundledFonts(), System::nanoTime);
      LanguagesProof proof =
          proofer.languages(files, (its, episode) -> reader.readAll(its, episode, asked));
      draw(proof);
      print(proof, drawStrips(proof));
      return report.status(proof.findings());
    } catch (UnusablePath e) {
      throw new CannotProceed(e.getMessage());
    }
  }

  private List<String> asked(EpisodeFiles files) throws CannotProceed, UnusablePath {
    List<String> asked = tags.isEmpty() ? files.languages() : LanguageOptions.tags(tags);
    if (asked.isEmpty()) {
      throw new CannotProceed(
          "There is no translation in "
              + files.languagesFolder()
              + ": take one in with readfall languages in, or try --languages de --stand-in.");
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
    PrintWriter out = spec.commandLine().getOut();
    if (report.json()) {
      out.println(new JsonReport(Version.number()).languages(proof, files));
    } else {
      out.println(LanguagesTable.of(proof));
      files.forEach(file -> out.println("wrote " + file));
    }
  }
}
