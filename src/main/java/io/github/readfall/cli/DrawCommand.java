package io.github.readfall.cli;

import io.github.readfall.export.Exports;
import io.github.readfall.export.FinishedStrip;
import io.github.readfall.export.FinishedStrips;
import io.github.readfall.export.Kind;
import io.github.readfall.outbox.Batch;
import io.github.readfall.outbox.Halted;
import io.github.readfall.outbox.Outbox;
import io.github.readfall.outbox.Unwritten;
import io.github.readfall.polyglot.EditionReader;
import io.github.readfall.proof.LanguagesProof;
import io.github.readfall.proof.Proofer;
import io.github.readfall.report.JsonReport;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.series.UnusablePath;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
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
      LanguagesProof proof = proof(files);
      List<Batch> batches = batches(files, proof);
      Outbox outbox = new Outbox(folder, replace);
      List<Path> planned = outbox.planned(batches);
      PrintWriter out = spec.commandLine().getOut();
      if (!report.json()) {
        planned.forEach(file -> out.println("will write " + file));
        out.flush();
      }
      ProgressLine line = new ProgressLine(spec.commandLine().getErr());
      List<Path> written =
          outbox.write(
              batches,
              (done, of) -> {
                line.share("drawn", done, of);
                interruption.check();
              });
      print(proof, written);
      return report.status(proof.allFindings());
    } catch (UnusablePath | Unwritten | Halted e) {
      throw new CannotGoOn(String.valueOf(e.getMessage()));
    }
  }

  /** The strip in every language that any kind is to be written in. */
  private LanguagesProof proof(EpisodeFiles files) throws CannotGoOn, UnusablePath {
    List<String> asked = new ArrayList<>(LanguageOptions.tags(tags));
    if (asked.isEmpty() && kinds.stream().anyMatch(Kind::isForAllLanguages)) {
      asked.addAll(files.languages());
    }
    EditionReader reader = new EditionReader(Optional.empty());
    return new Proofer(Installation.bundledFonts(), System::nanoTime)
        .languages(
            files,
            (its, episode) -> {
              refuseMissing(asked, its, episode.script().language());
              return LanguageOptions.editions(reader, asked, its, episode);
            });
  }

  private static void refuseMissing(List<String> asked, EpisodeFiles files, String own)
      throws UnusablePath {
    List<String> there = files.languages();
    for (String tag : asked) {
      if (!tag.equals(own) && !there.contains(tag)) {
        throw new UnusablePath(
            "There is no translation "
                + tag
                + " in "
                + files.languagesFolder()
                + ": take one in with readfall languages in.");
      }
    }
  }

  private List<Batch> batches(EpisodeFiles files, LanguagesProof proof) throws CannotGoOn {
    List<FinishedStrip> strips = FinishedStrips.of(files, proof);
    List<String> problems = strips.get(0).art().problems();
    if (!problems.isEmpty()) {
      throw new CannotGoOn(problems.get(0));
    }
    List<String> wanted = LanguageOptions.tags(tags);
    List<Batch> batches = new ArrayList<>();
    for (Kind kind : new LinkedHashSet<>(kinds)) {
      List<FinishedStrip> its =
          strips.stream().filter(strip -> isWanted(strip, kind, strips, wanted)).toList();
      batches.addAll(Exports.of(kind, its));
    }
    return batches;
  }

  private static boolean isWanted(
      FinishedStrip strip, Kind kind, List<FinishedStrip> strips, List<String> wanted) {
    return wanted.isEmpty()
        ? kind.isForAllLanguages() || strip.equals(strips.get(0))
        : wanted.contains(strip.language());
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
