package io.github.readfall.cli;

import io.github.readfall.export.Kind;
import io.github.readfall.export.Order;
import io.github.readfall.export.Prepared;
import io.github.readfall.outbox.Halted;
import io.github.readfall.outbox.Outbox;
import io.github.readfall.outbox.Unwritten;
import io.github.readfall.proof.LanguagesProof;
import io.github.readfall.proof.Proofer;
import io.github.readfall.report.JsonReport;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.series.UnusablePath;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
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
      "Write the strip out: lettering to lay over art, slices, proofs, a transcript.",
      "The files are listed first; all of them are written, or none."
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
      description = "What to write: ${COMPLETION-CANDIDATES}.")
  private List<Kind> kinds = List.of();

  @Option(
      names = "--to",
      paramLabel = "FOLDER",
      required = true,
      description = "Where to; made if it is not there.")
  private Path folder;

  @Option(
      names = "--language",
      paramLabel = "TAG",
      split = ",",
      description = {
        "In these languages, e.g. de,ko; left out, in the script's own.",
        "A phone proof and a transcript have all that lie in lang/ then."
      })
  private List<String> tags = List.of();

  @Option(names = "--replace", description = "Write anew what is there already.")
  private boolean replace;

  @Mixin private ReportOptions report = new ReportOptions();

  @Override
  public Integer call() throws CannotGoOn {
    try (Interruption interruption = Interruption.awaited()) {
      EpisodeFiles files = OneEpisode.at(path, "draw");
      Order order = new Order(new LinkedHashSet<>(kinds), LanguageOptions.tags(tags));
      Proofer proofer = new Proofer(Installation.bundledFonts(), System::nanoTime);
      Prepared prepared = Prepared.of(order, files, proofer);
      Outbox outbox = new Outbox(folder, replace);
      List<Path> planned = outbox.planned(prepared.batches());
      PrintWriter out = spec.commandLine().getOut();
      if (!report.json()) {
        planned.forEach(file -> out.println("will write " + file));
        out.flush();
      }
      ProgressLine line = new ProgressLine(spec.commandLine().getErr());
      List<Path> written =
          outbox.write(
              prepared.batches(),
              (done, of) -> {
                line.share("drawn", done, of);
                interruption.check();
              });
      print(prepared.proof(), written);
      return report.status(prepared.proof().allFindings());
    } catch (UnusablePath | Unwritten | Halted e) {
      throw new CannotGoOn(String.valueOf(e.getMessage()));
    }
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
