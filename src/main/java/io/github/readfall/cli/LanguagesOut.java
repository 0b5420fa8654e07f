package io.github.readfall.cli;

import io.github.readfall.base.files.SafeFile;
import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.cli.report.FilesTable;
import io.github.readfall.cli.report.JsonReport;
import io.github.readfall.job.StripProof;
import io.github.readfall.languages.translate.BalloonFacts;
import io.github.readfall.languages.translate.Budget;
import io.github.readfall.languages.translate.CueContext;
import io.github.readfall.languages.translate.TableWriter;
import io.github.readfall.languages.translate.Translation;
import io.github.readfall.languages.xliff.CsvMerge;
import io.github.readfall.languages.xliff.Matched;
import io.github.readfall.languages.xliff.Merge;
import io.github.readfall.languages.xliff.Refresh;
import io.github.readfall.languages.xliff.XliffWriter;
import io.github.readfall.languages.xml.XmlFault;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.script.Script;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.series.TranslationFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Sends a script out to be translated. */
@Command(
    name = "out",
    description = {
      "Write the script and its translation so far to a file for a translator.",
      "Every line has its speaker, its neighbours, and the length that fits its balloon."
    },
    mixinStandardHelpOptions = true)
final class LanguagesOut implements Callable<Integer> {

  private final BudgetSource budgets;

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "EPISODE", description = "A script or an episode folder.")
  private Path path;

  @Option(
      names = "--language",
      paramLabel = "TAG",
      required = true,
      description = "The language to translate into, e.g. de or pt-BR.")
  private String language;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      defaultValue = "xliff",
      description = "xliff (the default) or csv.")
  private TranslationFormat format;

  @Option(names = "--to", paramLabel = "FILE", required = true, description = "The file to write.")
  private Path to;

  @Option(names = "--replace", description = "Replace the file if it exists.")
  private boolean replace;

  @Option(names = "--pictures", description = "Draw each balloon to a folder beside the file.")
  private boolean pictures;

  @Option(names = "--json", description = "Print a JSON report and nothing else.")
  private boolean json;

  LanguagesOut(BudgetSource budgets) {
    this.budgets = budgets;
  }

  @Override
  public Integer call() throws CannotProceed {
    try {
      EpisodeFiles files = OneEpisode.at(path, "languages out");
      String tag = OneEpisode.language(language);
      check(files);
      StripProof proof = Cli.proofer(spec).check(files);
      Script script = proof.episode().script();
      check(script, tag);
      BalloonPictures drawn = new BalloonPictures(proof.galley().set(), to);
      byte[] bytes = bytes(TranslationFile.of(files, tag), script, contexts(proof, tag, drawn));
      List<String> written = new ArrayList<>(pictures ? drawn.write() : List.of());
      SafeFile.write(to, out -> out.write(bytes));
      written.add(0, to.toString());
      print(written);
      return 0;
    } catch (UnusablePath e) {
      throw new CannotProceed(e.getMessage());
    }
  }

  private void check(EpisodeFiles files) throws CannotProceed {
    try {
      if (Files.exists(to) && Files.isSameFile(to, files.script())) {
        throw new CannotProceed("--to names the script itself: name another file.");
      }
    } catch (IOException e) {
      throw new CannotProceed(to + " cannot be read: check that you have permission.");
    }
    if (Files.exists(to) && !replace) {
      throw new CannotProceed(to + " already exists: name another file, or add --replace.");
    }
  }

  private static void check(Script script, String tag) throws CannotProceed {
    if (script.language().equals(tag)) {
      throw new CannotProceed(
          "The script is already in " + tag + ": name the language to translate into.");
    }
    if (script.cues().isEmpty()) {
      throw new CannotProceed("The script has no lines to translate: write one first.");
    }
  }

  private Map<String, CueContext> contexts(StripProof proof, String tag, BalloonPictures drawn) {
    SetEpisode set = proof.galley().set();
    Map<String, Budget> known = budgets.of(proof.episode(), set, tag);
    Map<String, CueContext> contexts = new HashMap<>();
    for (SetBalloon balloon : set.balloons()) {
      String id = balloon.cue().id();
      BalloonFacts facts =
          new BalloonFacts(
              balloon.look().shape().word(),
              balloon.box().width(),
              balloon.box().height(),
              balloon.type().fontPx());
      Optional<String> picture = pictures ? Optional.of(drawn.link(id)) : Optional.empty();
      contexts.put(
          id, new CueContext(Optional.ofNullable(known.get(id)), Optional.of(facts), picture));
    }
    return contexts;
  }

  private byte[] bytes(TranslationFile file, Script script, Map<String, CueContext> contexts)
      throws UnusablePath {
    Optional<Matched> kept = file.matched(script);
    if (format == TranslationFormat.csv) {
      Translation translation =
          kept.map(found -> found.translation(file.language()))
              .orElseGet(() -> Translation.empty(file.language(), script));
      Map<String, Map<String, String>> columns = kept.map(CsvMerge::columns).orElse(Map.of());
      return TableWriter.write(script, translation, contexts, columns)
          .getBytes(StandardCharsets.UTF_8);
    }
    if (kept.isEmpty()) {
      Translation empty = Translation.empty(file.language(), script);
      return XliffWriter.write(script, empty, contexts).document().bytes();
    }
    try {
      Matched whole = Merge.of(kept.get(), Optional.empty(), contexts);
      return Refresh.of(whole, file.language(), contexts).document().bytes();
    } catch (XmlFault e) {
      throw new UnusablePath(e.in(file.path().toString()));
    }
  }

  private void print(List<String> files) {
    spec.commandLine()
        .getOut()
        .println(
            json
                ? new JsonReport(Version.number()).files("languages out", files)
                : FilesTable.of(files, List.of()));
  }
}
