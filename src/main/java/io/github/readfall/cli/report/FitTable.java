package io.github.readfall.cli.report;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Shortened;
import io.github.readfall.base.viewing.Phone;
import io.github.readfall.job.FitProof;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.series.Episode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Balloons as a table for people, and below it the findings. */
public final class FitTable {

  private static final List<String> HEADS =
      List.of("id", "speaker", "lines", "size px", "size dp", "letters", "findings");
  private static final List<Boolean> RIGHT = List.of(false, false, true, true, true, true, false);
  private static final int LONGEST_NAME = 18;

  private FitTable() {}

  /** The table of an episode, with its title, its findings and a line that sums up. */
  public static String of(FitProof proof) {
    StringBuilder out = new StringBuilder();
    out.append(title(proof)).append("\n\n");
    if (!proof.set().balloons().isEmpty()) {
      out.append(TextTable.of(rows(proof), right(proof))).append('\n');
    }
    proof.findings().forEach(finding -> out.append(FindingLine.of(finding)));
    out.append(proof.findings().isEmpty() ? "" : "\n").append(summary(proof)).append('\n');
    out.append(SharedTable.summary(proof.shared()));
    return out.toString();
  }

  private static List<Boolean> right(FitProof proof) {
    return proof.shared().balloons().isEmpty() ? RIGHT : joined(RIGHT, SharedTable.RIGHT);
  }

  static String title(FitProof proof) {
    return title(proof.episode(), proof.set());
  }

  /** The episode's name, and the phone that it is judged on. */
  static String title(Episode episode, SetEpisode set) {
    String title = episode.script().title();
    String number = episode.script().episode();
    String name = title.isBlank() ? episode.path().toString() : title;
    Phone phone = set.phone();
    return name
        + (number.isBlank() ? "" : ", episode " + number)
        + String.format(
            Locale.ROOT,
            "\nstrip %d px wide on the phone \"%s\", %.0f dp wide, %.0f mm away; letters in minutes"
                + " of arc",
            set.style().strip().widthPx(),
            phone.name(),
            phone.widthDp(),
            phone.distanceMm());
  }

  private static List<List<String>> rows(FitProof proof) {
    List<List<String>> rows = new ArrayList<>();
    boolean shared = !proof.shared().balloons().isEmpty();
    rows.add(shared ? joined(HEADS, SharedTable.HEADS) : HEADS);
    for (SetBalloon balloon : proof.set().balloons()) {
      List<String> row = row(balloon, proof);
      rows.add(
          shared ? joined(row, SharedTable.cells(proof.shared().of(balloon.cue().id()))) : row);
    }
    return rows;
  }

  private static <T> List<T> joined(List<T> first, List<T> more) {
    return Stream.concat(first.stream(), more.stream()).toList();
  }

  private static List<String> row(SetBalloon balloon, FitProof proof) {
    Phone phone = proof.set().phone();
    double strip = proof.set().style().strip().widthPx();
    double width = balloon.box().width();
    double height = balloon.box().height();
    return List.of(
        balloon.cue().id(),
        Shortened.to(LONGEST_NAME, balloon.cue().names()),
        Integer.toString(balloon.lines().size()),
        size(width, height),
        size(phone.dp(width, strip), phone.dp(height, strip)),
        letters(balloon, phone, strip),
        findings(balloon, proof));
  }

  private static String size(double width, double height) {
    return String.format(Locale.ROOT, "%.0f × %.0f", width, height);
  }

  /** The height that decides: the capital, or its substitute. */
  private static String letters(SetBalloon balloon, Phone phone, double strip) {
    return String.format(
        Locale.ROOT, "%.1f′", phone.angleOf(balloon.characterPx(), strip).arcmin());
  }

  private static String findings(SetBalloon balloon, FitProof proof) {
    return proof.findings().stream()
        .filter(finding -> finding.where().balloons().contains(balloon.cue().id()))
        .map(Finding::rule)
        .distinct()
        .collect(Collectors.joining(", "));
  }

  private static String summary(FitProof proof) {
    int words =
        proof.set().balloons().stream().mapToInt(balloon -> balloon.cue().text().words()).sum();
    return FindingLine.count(proof.set().balloons().size(), "balloon")
        + ", "
        + count(words, "word")
        + (proof.set().notSet().isEmpty()
            ? ""
            : ", " + count(proof.set().notSet().size(), "cue") + " not set")
        + "; "
        + FindingLine.counts(proof.findings());
  }

  private static String count(int count, String word) {
    return FindingLine.count(count, word);
  }
}
