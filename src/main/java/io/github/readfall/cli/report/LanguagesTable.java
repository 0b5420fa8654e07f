package io.github.readfall.cli.report;

import io.github.readfall.base.finding.Shortened;
import io.github.readfall.job.LanguagesProof;
import io.github.readfall.job.polyglot.FitMatrix;
import io.github.readfall.job.polyglot.FittedCue;
import io.github.readfall.job.polyglot.FittedEdition;
import io.github.readfall.job.polyglot.Verdict;
import io.github.readfall.script.Cue;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;

/** Shows for people how an episode's translations fit its balloons. */
public final class LanguagesTable {

  private static final int LONGEST_NAME = 14;

  private LanguagesTable() {}

  /** The matrix, a line of sums, and the findings in each language. */
  public static String of(LanguagesProof proof) {
    FitMatrix matrix = proof.matrix();
    StringBuilder out = new StringBuilder();
    out.append(
        FitTable.title(proof.original().episode(), proof.original().galley().set()) + "\n\n");
    out.append(TextTable.of(rows(matrix), flush(matrix))).append('\n');
    out.append(TextTable.of(sums(matrix), flushSums())).append('\n');
    for (FittedEdition edition : matrix.editions()) {
      out.append(edition.edition().language()).append('\n');
      out.append(StripTable.findings(edition.findings())).append('\n');
    }
    return out.toString().stripTrailing() + "\n";
  }

  private static List<List<String>> rows(FitMatrix matrix) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(
        Stream.concat(
                Stream.of("id", "speaker"),
                matrix.editions().stream().map(edition -> edition.edition().language()))
            .toList());
    for (Cue cue : matrix.cues()) {
      rows.add(
          Stream.concat(
                  Stream.of(cue.id(), Shortened.to(LONGEST_NAME, cue.names())),
                  matrix.editions().stream().map(edition -> cell(edition, cue)))
              .toList());
    }
    return rows;
  }

  private static String cell(FittedEdition edition, Cue cue) {
    return edition.cue(cue.id()).map(LanguagesTable::cell).orElse("");
  }

  private static String cell(FittedCue cue) {
    String need =
        switch (cue.verdict()) {
          case AS_IS, TIGHTER -> cue.inShort();
          case LARGER -> "balloon " + cue.inShort();
          case SHORTER -> "letters " + cue.inShort();
        };
    return cue.expected() ? need + " (expected)" : need;
  }

  private static List<Boolean> flush(FitMatrix matrix) {
    return Collections.nCopies(2 + matrix.editions().size(), false);
  }

  private static List<List<String>> sums(FitMatrix matrix) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("language", "fits", "tighter", "larger balloon", "fewer letters"));
    for (FittedEdition edition : matrix.editions()) {
      rows.add(
          Stream.concat(
                  Stream.of(edition.edition().language()),
                  Stream.of(Verdict.values()).map(verdict -> Long.toString(edition.count(verdict))))
              .toList());
    }
    return rows;
  }

  private static List<Boolean> flushSums() {
    return List.of(false, true, true, true, true);
  }
}
