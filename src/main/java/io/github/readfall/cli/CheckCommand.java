package io.github.readfall.cli;

import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.base.finding.Finding;
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
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Checks strips by every rule. */
@Command(
    name = "check",
    description = {
      "Check a strip, or every strip of a series, against every rule.",
      "What layout.json leaves out is computed. Nothing is written unless --fix is given."
    },
    mixinStandardHelpOptions = true)
final class CheckCommand extends ReportingCommand {

  @Parameters(
      paramLabel = "PATH",
      arity = "0..1",
      description = "A script, an episode folder, or a series folder; not needed for an audit.")
  private Optional<Path> given = Optional.empty();

  @Option(
      names = "--fix",
      description =
          "Apply the fixes that findings offer to layout.json, except any that would cause another"
              + " finding.")
  private boolean fix;

  @Mixin private AuditOptions audit = new AuditOptions();
  @Mixin private PictureOption picture = new PictureOption();

  @Override
  int run() throws CannotProceed, UnusablePath {
    if (audit.isRequested()) {
      return audit();
    }
    Path path =
        given.orElseThrow(
            () ->
                new CannotProceed(
                    "PATH is missing: name a script or a folder, or give --capital-px,"
                        + " --x-height-px or --ideograph-px for an audit."));
    List<EpisodeFiles> episodes = EpisodeFiles.at(path);
    picture.check(episodes.size());
    Proofer proofer = proofer();
    return EpisodeFiles.isSeries(path)
        ? checkSeries(proofer, episodes)
        : checkOne(proofer, episodes.get(0));
  }

  private int audit() throws CannotProceed, UnusablePath {
    picture.check(1);
    AuditRun run = AuditRun.of(audit, given);
    picture.draw(run::picture, run.style().strip().dpi());
    run.print(out(), report().json());
    return report().status(run.findings());
  }

  private int checkOne(Proofer proofer, EpisodeFiles files) throws UnusablePath, CannotProceed {
    StripProof proof = proofer.check(files);
    FixedProof fixed = fix ? fixed(proofer, proof, files) : new FixedProof(proof, List.of());
    StripProof last = fixed.proof();
    Labels labels = new Labels(last.episode().shelf(), last.galley().style());
    picture.draw(
        () -> StripSheet.of(last.galley(), last.findings(), labels),
        last.galley().style().strip().dpi());
    PrintWriter out = out();
    List<String> written = fixed.made().isEmpty() ? List.of() : List.of(files.layout().toString());
    if (report().json()) {
      JsonReport json = new JsonReport(Version.number());
      out.println(fix ? json.fixed(fixed, written) : json.strip("check", last, written));
    } else {
      out.println(StripTable.of(last));
      fixed.made().forEach(done -> out.println("fixed: " + done.sentence().inReports()));
      written.forEach(file -> out.println("wrote " + file));
    }
    return report().status(last.findings());
  }

  private static FixedProof fixed(Proofer proofer, StripProof proof, EpisodeFiles files)
      throws UnusablePath, CannotProceed {
    if (proof.episode().layout().isEmpty()) {
      throw new CannotProceed(
          "--fix changes layout.json, but there is no usable one: run readfall place first.");
    }
    LayoutFile file = LayoutFile.of(files);
    LayoutGuard.refuse(proof.findings(), file);
    FixedProof fixed = proofer.fix(proof);
    if (!fixed.made().isEmpty()) {
      file.save(fixed.proof().layout());
    }
    return fixed;
  }

  private int checkSeries(Proofer proofer, List<EpisodeFiles> episodes)
      throws UnusablePath, CannotProceed {
    if (fix) {
      throw new CannotProceed("--fix works on one episode: give the path of an episode.");
    }
    int threads = Runtime.getRuntime().availableProcessors();
    SeriesProof proof = new SeriesCheck(proofer, threads, new ProgressLine(err())).check(episodes);
    PrintWriter out = out();
    if (report().json()) {
      out.println(
          new JsonReport(Version.number())
              .stripSeries("check", proof.episodes(), proof.findings()));
    } else {
      out.print(SeriesTable.of(proof));
    }
    List<Finding> all = proof.allFindings();
    return report().status(all);
  }
}
