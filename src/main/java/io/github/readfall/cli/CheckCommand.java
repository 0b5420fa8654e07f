package io.github.readfall.cli;

import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Fix;
import io.github.readfall.cli.report.JsonReport;
import io.github.readfall.cli.report.SeriesTable;
import io.github.readfall.cli.report.StripTable;
import io.github.readfall.draw.StripSheet;
import io.github.readfall.job.FixedProof;
import io.github.readfall.job.LayoutGuard;
import io.github.readfall.job.Proofer;
import io.github.readfall.job.SeriesCheck;
import io.github.readfall.job.SeriesProof;
import io.github.readfall.job.StripProof;
import io.github.readfall.lettering.typeset.Labels;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.series.LayoutFile;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Checks strips by every rule. */
@Command(
    name = "check",
    description = {
      "Check a strip, or every strip of a series, by every rule.",
      "What layout.json leaves out is worked out; nothing is written unless --mend is given."
    },
    mixinStandardHelpOptions = true)
final class CheckCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "PATH",
      arity = "0..1",
      description = "A script, an episode folder, or a series folder; not needed for an audit.")
  private Optional<Path> given = Optional.empty();

  @Option(
      names = "--mend",
      description = "Make the changes to layout.json that findings offer and that spoil nothing.")
  private boolean mend;

  @Mixin private AuditOptions audit = new AuditOptions();
  @Mixin private PictureOption picture = new PictureOption();
  @Mixin private ReportOptions report = new ReportOptions();

  @Override
  public Integer call() throws CannotProceed {
    try {
      if (audit.isAsked()) {
        return audit();
      }
      Path path =
          given.orElseThrow(
              () ->
                  new CannotProceed(
                      "PATH is missing: name a script or a folder, or give --capital-px and the"
                          + " like for an audit."));
      List<EpisodeFiles> episodes = EpisodeFiles.at(path);
      picture.check(episodes.size());
      Proofer proofer = new Proofer(ProgramFiles.bundledFonts(), System::nanoTime);
      return EpisodeFiles.isSeries(path)
          ? checkSeries(proofer, episodes)
          : checkOne(proofer, episodes.get(0));
    } catch (UnusablePath e) {
      throw new CannotProceed(e.getMessage());
    }
  }

  private int audit() throws CannotProceed, UnusablePath {
    picture.check(1);
    AuditRun run = AuditRun.of(audit, given);
    picture.draw(run::picture, run.style().strip().dpi());
    run.print(spec.commandLine().getOut(), report.json());
    return report.status(run.findings());
  }

  private int checkOne(Proofer proofer, EpisodeFiles files) throws UnusablePath, CannotProceed {
    StripProof proof = proofer.check(files);
    FixedProof mended = mend ? mended(proofer, proof, files) : new FixedProof(proof, List.of());
    StripProof last = mended.proof();
    Labels labels = new Labels(last.episode().shelf(), last.galley().style());
    picture.draw(
        () -> StripSheet.of(last.galley(), last.findings(), labels),
        last.galley().style().strip().dpi());
    PrintWriter out = spec.commandLine().getOut();
    List<String> written = mended.made().isEmpty() ? List.of() : List.of(files.layout().toString());
    if (report.json()) {
      JsonReport json = new JsonReport(Version.number());
      out.println(mend ? json.mended(mended, written) : json.strip("check", last, written));
    } else {
      out.println(StripTable.of(last));
      mended.made().stream().map(Fix::sentence).forEach(done -> out.println("mended: " + done));
      written.forEach(file -> out.println("wrote " + file));
    }
    return report.status(last.findings());
  }

  private static FixedProof mended(Proofer proofer, StripProof proof, EpisodeFiles files)
      throws UnusablePath, CannotProceed {
    if (proof.episode().layout().isEmpty()) {
      throw new CannotProceed(
          "--mend changes layout.json, and there is none that can be used: run readfall place.");
    }
    LayoutFile file = LayoutFile.of(files);
    LayoutGuard.refuse(proof.findings(), file);
    FixedProof mended = proofer.mend(proof);
    if (!mended.made().isEmpty()) {
      file.save(mended.proof().layout());
    }
    return mended;
  }

  private int checkSeries(Proofer proofer, List<EpisodeFiles> episodes)
      throws UnusablePath, CannotProceed {
    if (mend) {
      throw new CannotProceed("--mend works on one episode: give the path of an episode.");
    }
    int threads = Runtime.getRuntime().availableProcessors();
    SeriesProof proof =
        new SeriesCheck(proofer, threads, new ProgressLine(spec.commandLine().getErr()))
            .check(episodes);
    PrintWriter out = spec.commandLine().getOut();
    if (report.json()) {
      out.println(
          new JsonReport(Version.number())
              .stripSeries("check", proof.episodes(), proof.findings()));
    } else {
      out.print(SeriesTable.of(proof));
    }
    List<Finding> all = proof.allFindings();
    return report.status(all);
  }
}
