package io.github.readfall.cli;

import io.github.readfall.base.files.Batch;
import io.github.readfall.base.files.Cancelled;
import io.github.readfall.base.files.CannotWrite;
import io.github.readfall.base.files.OutputFolder;
import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.cli.report.JsonReport;
import io.github.readfall.export.Kind;
import io.github.readfall.export.Order;
import io.github.readfall.export.Prepared;
import io.github.readfall.job.LanguagesProof;
import io.github.readfall.series.EpisodeFiles;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes a strip out as files of some kind. */
@Command(
    name = "draw",
    description = {
      "Export the strip: lettering to lay over art, slices, proofs, a transcript.",
      "The files are listed first. Either all of them are written, or none."
    },
    mixinStandardHelpOptions = true)
final class DrawCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "EPISODE", description = "A script or an episode folder.")
  private Path path;

  @Option(
      names = "--as",
      paramLabel = "KIND",
      required = true,
      split = ",",
      description = "What to export: ${COMPLETION-CANDIDATES}.")
  private List<Kind> kinds = List.of();

  @Option(
      names = "--to",
      paramLabel = "FOLDER",
      required = true,
      description = "The folder to write to; created if missing.")
  private Path folder;

  @Option(
      names = "--language",
      paramLabel = "TAG",
      split = ",",
      description = {
        "Languages to export, e.g. de,ko (default: the script's own).",
        "By default, phone proofs and transcripts have every language in lang/."
      })
  private List<String> tags = List.of();

  @Option(names = "--replace", description = "Replace files that exist.")
  private boolean replace;

  @Option(
      names = "--delivery",
      paramLabel = "NAME",
      description = {
        "The delivery that slices are cut for: a name from series.toml, narrow, or tall",
        "(default: [delivery] in series.toml)."
      })
  private Optional<String> delivery = Optional.empty();

  @Option(
      names = "--text",
      paramLabel = "FORM",
      defaultValue = "outlines",
      description = {
        "Letters in an SVG: ${COMPLETION-CANDIDATES} (default: outlines).",
        "Live text can be edited, but looks right only if its fonts are installed."
      })
  private TextForm text = TextForm.OUTLINES;

  @Mixin private ReportOptions report = new ReportOptions();

  @Override
  public Integer call() throws CannotProceed {
    try (Interruption interruption = Interruption.awaited()) {
      EpisodeFiles files = OneEpisode.at(path, "draw");
      Order order = order();
      Prepared prepared = Prepared.of(order, files, Cli.proofer(spec));
      OutputFolder output = new OutputFolder(folder, replace);
      List<Path> planned = output.planned(prepared.batches());
      PrintWriter out = spec.commandLine().getOut();
      if (!report.json()) {
        planned.forEach(file -> out.println("will write " + file));
        out.flush();
      }
      List<Path> earlier = output.outdated(prepared.batches());
      ProgressLine line = new ProgressLine(spec.commandLine().getErr());
      List<Path> written =
          output.write(
              prepared.batches(),
              (done, of) -> {
                line.share("drawn", done, of);
                interruption.check();
              });
      printRemarks(prepared.batches(), earlier, written);
      print(prepared.proof(), written);
      return report.status(prepared.proof().allFindings());
    } catch (UnusablePath | CannotWrite | Cancelled e) {
      throw new CannotProceed(String.valueOf(e.getMessage()));
    }
  }

  private Order order() throws CannotProceed {
    Order.Wish wish = new Order.Wish(delivery, text == TextForm.LIVE);
    return new Order(new LinkedHashSet<>(kinds), LanguageOptions.tags(tags), wish);
  }

  /** Prints remarks about the files, and what happened to earlier ones. */
  private void printRemarks(List<Batch> batches, List<Path> earlier, List<Path> written) {
    PrintWriter err = spec.commandLine().getErr();
    for (Batch batch : batches) {
      batch.notes().forEach(note -> err.println("note: " + note));
    }
    for (Path file : earlier) {
      if (!written.contains(file)) {
        err.println(
            replace
                ? "removed " + file + ", left from an earlier export"
                : "note: "
                    + file
                    + " is left from an earlier export: delete it if you no longer need it.");
      }
    }
    err.flush();
  }

  private void print(LanguagesProof proof, List<Path> written) {
    PrintWriter out = spec.commandLine().getOut();
    List<String> files = written.stream().map(Path::toString).toList();
    if (report.json()) {
      out.println(new JsonReport(Version.number()).files("draw", files, proof.allFindings()));
    } else {
      files.forEach(file -> out.println("wrote " + file));
    }
  }
}
