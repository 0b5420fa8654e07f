package io.github.readfall.cli;

import io.github.readfall.base.files.UnusablePath;
import io.github.readfall.base.finding.Finding;
import io.github.readfall.cli.report.FilesTable;
import io.github.readfall.cli.report.JsonReport;
import io.github.readfall.job.StripProof;
import io.github.readfall.languages.translate.TableFault;
import io.github.readfall.languages.translate.TableReader;
import io.github.readfall.languages.translate.TranslationTable;
import io.github.readfall.languages.xliff.CsvMerge;
import io.github.readfall.languages.xliff.LanguageFindings;
import io.github.readfall.languages.xliff.Matched;
import io.github.readfall.languages.xliff.Merge;
import io.github.readfall.languages.xliff.Xliff;
import io.github.readfall.languages.xliff.XliffReader;
import io.github.readfall.languages.xml.XmlFault;
import io.github.readfall.script.Script;
import io.github.readfall.script.lines.LanguageTag;
import io.github.readfall.script.read.ScriptFile;
import io.github.readfall.script.read.ScriptFileException;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.series.TranslationFile;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Takes a translation in. */
@Command(
    name = "in",
    description = {
      "Import a translation, and keep it in lang/TAG.xlf beside the script.",
      "Lines are matched by their text, so the script may have changed in the meantime."
    },
    mixinStandardHelpOptions = true)
final class LanguagesIn extends ReportingCommand {

  private final BudgetSource budgets;

  @Parameters(index = "0", paramLabel = "EPISODE", description = "A script or an episode folder.")
  private Path path;

  @Parameters(index = "1", paramLabel = "FILE", description = "XLIFF 2.0 or 2.1, or CSV.")
  private Path file;

  @Option(
      names = "--language",
      paramLabel = "TAG",
      description = "Language of the file, if the file does not state it.")
  private Optional<String> language = Optional.empty();

  LanguagesIn(BudgetSource budgets) {
    this.budgets = budgets;
  }

  @Override
  int run() throws CannotProceed, UnusablePath {
    try {
      EpisodeFiles files = OneEpisode.at(path, "languages in");
      byte[] bytes = TranslationFile.bytes(file);
      StripProof proof = proofer().check(files);
      Script script = proof.episode().script();
      return XliffReader.isXml(bytes)
          ? importXliff(files, proof, xliff(bytes, script))
          : importTable(files, proof, bytes);
    } catch (XmlFault e) {
      throw new CannotProceed(e.in(file.toString()));
    } catch (TableFault e) {
      throw new CannotProceed(e.in(file.toString()));
    }
  }

  /** The file, with the language that it is in. */
  private Xliff xliff(byte[] bytes, Script script) throws CannotProceed, XmlFault {
    Xliff read = XliffReader.read(bytes);
    if (!LanguageTag.isSameLanguage(read.sourceLanguage(), script.language())) {
      throw new CannotProceed(
          file
              + " translates from "
              + read.sourceLanguage()
              + ", and the script is in "
              + script.language()
              + ": correct srcLang, or the script's Language.");
    }
    Optional<String> asked = asked();
    if (asked.isPresent()
        && read.targetLanguage().filter(tag -> !asked.get().equals(tag)).isPresent()) {
      throw new CannotProceed(
          file
              + " is in "
              + read.targetLanguage().get()
              + ", not in "
              + asked.get()
              + ": omit --language, or correct trgLang.");
    }
    if (read.targetLanguage().isEmpty() && asked.isEmpty()) {
      throw new CannotProceed(file + " does not state its language: add --language.");
    }
    return read.targetLanguage().isPresent() ? read : read.in(asked.get());
  }

  private Optional<String> asked() throws CannotProceed {
    return language.isPresent()
        ? Optional.of(OneEpisode.language(language.get()))
        : Optional.empty();
  }

  private int importXliff(EpisodeFiles files, StripProof proof, Xliff read)
      throws CannotProceed, UnusablePath, XmlFault {
    Script script = proof.episode().script();
    String tag = read.targetLanguage().orElseThrow();
    checkOther(script, tag);
    TranslationFile kept = TranslationFile.of(files, tag);
    Matched merged = Merge.of(Matched.of(read, script), kept.matched(script), Map.of());
    return save(kept, proof, merged);
  }

  private int importTable(EpisodeFiles files, StripProof proof, byte[] bytes)
      throws CannotProceed, UnusablePath, XmlFault, TableFault {
    Script script = proof.episode().script();
    TranslationTable table = TableReader.read(text(bytes));
    String tag =
        asked()
            .orElseThrow(
                () -> new CannotProceed(file + " does not state its language: add --language."));
    checkOther(script, tag);
    TranslationFile kept = TranslationFile.of(files, tag);
    Matched whole = Merge.of(kept.orNew(script), Optional.empty(), Map.of());
    return save(kept, proof, CsvMerge.of(whole, table));
  }

  private static void checkOther(Script script, String tag) throws CannotProceed {
    if (script.language().equals(tag)) {
      throw new CannotProceed(
          "The script itself is in " + tag + ": name the language of the translation.");
    }
  }

  private String text(byte[] bytes) throws CannotProceed {
    try {
      return ScriptFile.decode(bytes, file.toString());
    } catch (ScriptFileException e) {
      throw new CannotProceed(String.valueOf(e.getMessage()));
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
            .map(f -> f.withSeverity(proof.episode().style().severity(f.rule(), f.severity())))
            .toList();
    List<String> files = written ? List.of(kept.path().toString()) : List.of();
    out()
        .println(
            report().json()
                ? new JsonReport(Version.number()).files("languages in", files, findings)
                : FilesTable.of(files, findings));
    return report().status(findings);
  }
}
