package io.github.readfall.cli;

import io.github.readfall.finding.Finding;
import io.github.readfall.proof.Proofer;
import io.github.readfall.proof.StripProof;
import io.github.readfall.report.FilesTable;
import io.github.readfall.report.JsonReport;
import io.github.readfall.script.LanguageTag;
import io.github.readfall.script.Script;
import io.github.readfall.script.ScriptFile;
import io.github.readfall.script.ScriptFileException;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.series.TranslationFile;
import io.github.readfall.series.UnusablePath;
import io.github.readfall.translate.TableFault;
import io.github.readfall.translate.TableReader;
import io.github.readfall.translate.TranslationTable;
import io.github.readfall.xliff.CsvMerge;
import io.github.readfall.xliff.LanguageFindings;
import io.github.readfall.xliff.Matched;
import io.github.readfall.xliff.Merge;
import io.github.readfall.xliff.Xliff;
import io.github.readfall.xliff.XliffReader;
import io.github.readfall.xml.XmlFault;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Takes a translation in. */
@Command(
    name = "in",
    description = {
      "Take a translation in, and keep it in lang/TAG.xlf beside the script.",
      "Lines are found by what they say, so the script may have changed since it went out."
    },
    mixinStandardHelpOptions = true)
final class LanguagesIn implements Callable<Integer> {

  private final BudgetSource budgets;

  @Spec private CommandSpec spec;

  @Parameters(index = "0", paramLabel = "EPISODE", description = "A script or an episode folder.")
  private Path path;

  @Parameters(index = "1", paramLabel = "FILE", description = "XLIFF 2.0 or 2.1, or CSV.")
  private Path file;

  @Option(
      names = "--language",
      paramLabel = "TAG",
      description = "The language it is in, where the file does not say.")
  private Optional<String> language = Optional.empty();

  @Mixin private ReportOptions report = new ReportOptions();

  LanguagesIn(BudgetSource budgets) {
    this.budgets = budgets;
  }

  @Override
  public Integer call() throws CannotGoOn {
    try {
      EpisodeFiles files = OneEpisode.at(path, "languages in");
      byte[] bytes = TranslationFile.bytes(file);
      StripProof proof = new Proofer(Installation.bundledFonts(), System::nanoTime).check(files);
      Script script = proof.episode().script();
      return XliffReader.isXml(bytes)
          ? takeXliff(files, proof, xliff(bytes, script))
          : takeTable(files, proof, bytes);
    } catch (UnusablePath e) {
      throw new CannotGoOn(e.getMessage());
    } catch (XmlFault e) {
      throw new CannotGoOn(e.in(file.toString()));
    } catch (TableFault e) {
      throw new CannotGoOn(e.in(file.toString()));
    }
  }

  /** The file, with the language that it is in. */
  private Xliff xliff(byte[] bytes, Script script) throws CannotGoOn, XmlFault {
    Xliff read = XliffReader.read(bytes);
    if (!LanguageTag.isSameLanguage(read.sourceLanguage(), script.language())) {
      throw new CannotGoOn(
          file
              + " translates from "
              + read.sourceLanguage()
              + ", and the script is in "
              + script.language()
              + ": mend srcLang, or the script's Language.");
    }
    Optional<String> asked = asked();
    if (asked.isPresent()
        && read.targetLanguage().filter(tag -> !asked.get().equals(tag)).isPresent()) {
      throw new CannotGoOn(
          file
              + " is in "
              + read.targetLanguage().get()
              + ", not in "
              + asked.get()
              + ": leave out --language, or mend trgLang.");
    }
    if (read.targetLanguage().isEmpty() && asked.isEmpty()) {
      throw new CannotGoOn(file + " does not say what language it is for: add --language.");
    }
    return read.targetLanguage().isPresent() ? read : read.in(asked.get());
  }

  private Optional<String> asked() throws CannotGoOn {
    return language.isPresent()
        ? Optional.of(OneEpisode.language(language.get()))
        : Optional.empty();
  }

  private int takeXliff(EpisodeFiles files, StripProof proof, Xliff read)
      throws CannotGoOn, UnusablePath, XmlFault {
    Script script = proof.episode().script();
    String tag = read.targetLanguage().orElseThrow();
    checkOther(script, tag);
    TranslationFile kept = TranslationFile.of(files, tag);
    Matched merged = Merge.of(Matched.of(read, script), kept.matched(script), Map.of());
    return save(kept, proof, merged);
  }

  private int takeTable(EpisodeFiles files, StripProof proof, byte[] bytes)
      throws CannotGoOn, UnusablePath, XmlFault, TableFault {
    Script script = proof.episode().script();
    TranslationTable table = TableReader.read(text(bytes));
    String tag =
        asked()
            .orElseThrow(
                () ->
                    new CannotGoOn(file + " does not say what language it is in: add --language."));
    checkOther(script, tag);
    TranslationFile kept = TranslationFile.of(files, tag);
    Matched whole = Merge.of(kept.orNew(script), Optional.empty(), Map.of());
    return save(kept, proof, CsvMerge.of(whole, table));
  }

  private static void checkOther(Script script, String tag) throws CannotGoOn {
    if (script.language().equals(tag)) {
      throw new CannotGoOn("The script itself is in " + tag + ": name the language of the file.");
    }
  }

  private String text(byte[] bytes) throws CannotGoOn {
    try {
      return ScriptFile.decode(bytes, file.toString());
    } catch (ScriptFileException e) {
      throw new CannotGoOn(String.valueOf(e.getMessage()));
    }
  }

  private int save(TranslationFile kept, StripProof proof, Matched merged) throws UnusablePath {
    boolean written = kept.save(merged.xliff());
    List<Finding> findings =
        LanguageFindings.of(
                merged,
                kept.name(),
                budgets.of(proof.episode(), proof.galley().set(), kept.language()))
            .stream()
            .map(f -> f.graded(proof.episode().style().severity(f.rule(), f.severity())))
            .toList();
    List<String> files = written ? List.of(kept.path().toString()) : List.of();
    spec.commandLine()
        .getOut()
        .println(
            report.json()
                ? new JsonReport(Version.number()).files("languages in", files, findings)
                : FilesTable.of(files, findings));
    return report.status(findings);
  }
}
