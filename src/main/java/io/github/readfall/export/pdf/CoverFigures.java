package io.github.readfall.export.pdf;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.base.viewing.AuditRow;
import io.github.readfall.base.viewing.Phone;
import io.github.readfall.plan.EpisodePlan;
import io.github.readfall.plan.EpisodePlanner;
import io.github.readfall.plan.ReadingTime;
import io.github.readfall.plan.Split;
import io.github.readfall.strip.Extra;
import io.github.readfall.strip.Layout;
import io.github.readfall.strip.Parked;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;

/**
 * A figure of an episode, in words for its cover.
 *
 * @param name of the figure
 * @param value with its unit
 */
record CoverFigures(String name, String value) {

  /** All of a strip's. */
  static List<CoverFigures> of(ProofStrip strip, Paper paper) {
    Galley galley = strip.galley();
    EpisodePlan plan = plan(galley);
    List<CoverFigures> figures = new ArrayList<>();
    figures.add(new CoverFigures("strip", size(galley, plan)));
    figures.add(new CoverFigures("panels", Integer.toString(strip.script().panels().size())));
    figures.add(new CoverFigures("balloons", balloons(galley)));
    figures.add(new CoverFigures("words", Integer.toString(plan.words())));
    figures.add(
        new CoverFigures("reading time", ReadingTime.of(plan.seconds()) + ", the words alone"));
    figures.add(new CoverFigures("phone screens", tenths(plan.screens().count())));
    figures.add(new CoverFigures("canvas pages", pieces(galley.cuts().pages())));
    figures.add(new CoverFigures("slices", pieces(galley.cuts().slices())));
    plan.split().ifPresent(split -> figures.add(new CoverFigures("too tall", parts(split))));
    figures.add(new CoverFigures("lettered for", phone(galley.set().phone())));
    letters(galley).ifPresent(text -> figures.add(new CoverFigures("its letters", text)));
    figures.add(new CoverFigures("on this paper", onPaper(galley, paper)));
    figures.add(new CoverFigures("findings", findings(strip.findings())));
    return figures;
  }

  private static EpisodePlan plan(Galley galley) {
    return EpisodePlanner.plan(galley.set(), layout(galley), OptionalInt.empty());
  }

  /** Its panels, if any has a place yet. */
  private static Optional<Layout> layout(Galley galley) {
    if (galley.heightPx() == 0) {
      return Optional.empty();
    }
    return Optional.of(
        new Layout(
            galley.widthPx(),
            galley.heightPx(),
            galley.panels(),
            galley.keepClear(),
            galley.mouths(),
            List.of(),
            Optional.of(galley.cuts().pages()),
            List.of(),
            Parked.NONE,
            Layout.VERSION,
            Extra.NONE));
  }

  private static String size(Galley galley, EpisodePlan plan) {
    String planned = galley.heightPx() == 0 ? ", as it is planned" : "";
    return whole(galley.widthPx()) + " × " + whole(plan.heightPx()) + " px" + planned;
  }

  private static String balloons(Galley galley) {
    int placed = galley.balloons().size();
    int set = galley.set().balloons().size();
    int byHand = galley.set().notSet().size();
    return placed
        + (set > placed ? " of " + set + ", the others have no place" : "")
        + (byHand > 0 ? "; " + byHand + " not set" : "");
  }

  private static String pieces(List<Double> cuts) {
    return Integer.toString(cuts.size() + 1);
  }

  private static String parts(Split split) {
    String parts =
        split.parts().stream()
            .map(part -> part.firstPanel() + "–" + part.lastPanel())
            .collect(Collectors.joining(", "));
    return "could be " + split.parts().size() + " episodes: panels " + parts;
  }

  private static String phone(Phone phone) {
    return "a phone "
        + whole(phone.widthDp())
        + " dp wide, held at "
        + whole(phone.distanceMm())
        + " mm";
  }

  /** The size of its letters as seen, the smallest and the largest. */
  private static Optional<String> letters(Galley galley) {
    double[] arcmin =
        galley.balloons().stream()
            .filter(balloon -> !balloon.isUnboxedEffect())
            .mapToDouble(balloon -> arcmin(balloon, galley))
            .sorted()
            .toArray();
    if (arcmin.length == 0) {
      return Optional.empty();
    }
    String least = AuditRow.down(arcmin[0]);
    String usual = AuditRow.down(arcmin[arcmin.length / 2]);
    return Optional.of(
        "capitals or ideographs of "
            + usual
            + "′"
            + (least.equals(usual) ? "" : ", the smallest " + least + "′")
            + "; a minute of arc (′) is a 60th of a degree");
  }

  private static double arcmin(PlacedBalloon balloon, Galley galley) {
    return galley.set().phone().angleOf(balloon.set().characterPx(), galley.widthPx()).arcmin();
  }

  private static String onPaper(Galley galley, Paper paper) {
    double phoneMm = galley.set().phone().widthDp() * Phone.DP_MM;
    return "the strip is "
        + whole(paper.stripMm())
        + " mm wide, on the phone "
        + whole(phoneMm)
        + " mm";
  }

  private static String findings(List<Finding> findings) {
    String counts =
        Arrays.stream(Severity.values())
            .map(severity -> count(severity, findings))
            .filter(text -> !text.isEmpty())
            .collect(Collectors.joining(", "));
    long aside = findings.stream().filter(finding -> !finding.isOpen()).count();
    String open = counts.isEmpty() ? "none" : counts;
    return aside == 0 ? open : open + ", " + aside + " ignored";
  }

  private static String count(Severity severity, List<Finding> findings) {
    int count = Finding.countOpen(findings, severity);
    return count == 0 ? "" : count + " " + severity.word() + (count == 1 ? "" : "s");
  }

  private static String whole(double value) {
    return Long.toString(Math.round(value));
  }

  private static String tenths(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }
}
