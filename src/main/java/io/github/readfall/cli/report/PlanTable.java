package io.github.readfall.cli.report;

import io.github.readfall.base.finding.Shortened;
import io.github.readfall.job.PlanProof;
import io.github.readfall.lettering.style.Delivery;
import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.plan.EpisodePlan;
import io.github.readfall.plan.PanelPace;
import io.github.readfall.plan.ReadingTime;
import io.github.readfall.plan.Screens;
import io.github.readfall.plan.Split;
import io.github.readfall.strip.PanelBox;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** A plan for people: the panels, their figures, and the findings. */
public final class PlanTable {

  private static final List<String> HEADS =
      List.of("panel", "heading", "gutter px", "height px", "words", "seconds", "screen");
  private static final List<Boolean> RIGHT = List.of(true, false, true, true, true, true, true);
  private static final int LONGEST_HEADING = 34;

  private PlanTable() {}

  /** The table of an episode, its totals, cuts and split, and its findings. */
  public static String of(PlanProof proof) {
    StringBuilder out = new StringBuilder();
    out.append(FitTable.title(proof.fit())).append("\n\n");
    if (!proof.plan().panels().isEmpty()) {
      out.append(TextTable.of(rows(proof.plan()), RIGHT)).append('\n');
    }
    out.append(TextTable.of(totals(proof), List.of(false, false)));
    proof.plan().split().ifPresent(split -> out.append('\n').append(split(split)));
    out.append('\n');
    proof.findings().forEach(finding -> out.append(FindingLine.of(finding)));
    out.append(proof.findings().isEmpty() ? "" : "\n");
    out.append(FindingLine.counts(proof.findings())).append('\n');
    return out.toString();
  }

  private static List<List<String>> rows(EpisodePlan plan) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(HEADS);
    for (int i = 0; i < plan.panels().size(); i++) {
      rows.add(row(plan.panels().get(i), plan.layout().panels().get(i), plan.screens()));
    }
    return rows;
  }

  private static List<String> row(PanelPace pace, PanelBox box, Screens screens) {
    return List.of(
        Integer.toString(pace.panel()),
        Shortened.to(LONGEST_HEADING, heading(box)),
        whole(pace.gutterPx()),
        whole(pace.heightPx()),
        Integer.toString(pace.words()),
        tenths(pace.seconds()),
        Integer.toString(Screens.index(box.box().y(), screens.screenPx()) + 1));
  }

  /** Its heading, without the number, which is in the column before. */
  private static String heading(PanelBox box) {
    String number = box.panel() + " ";
    return box.heading().startsWith(number)
        ? box.heading().substring(number.length())
        : box.heading();
  }

  private static List<List<String>> totals(PlanProof proof) {
    EpisodePlan plan = proof.plan();
    List<List<String>> totals = new ArrayList<>();
    totals.add(List.of("height", height(plan, proof.fit().set().style())));
    totals.add(List.of("screens", screens(plan.screens())));
    totals.add(
        List.of(
            "reading",
            ReadingTime.of(plan.seconds())
                + " for "
                + words(plan.words())
                + ", not counting the pictures"));
    proof
        .others()
        .ifPresent(
            others ->
                totals.add(
                    List.of(
                        "series",
                        FindingLine.count(others.episodes(), "other episode")
                            + ", on average "
                            + whole(others.heightPx())
                            + " px, "
                            + whole(others.words())
                            + " words, "
                            + ReadingTime.of(others.seconds()))));
    totals.add(List.of("pages", pieces(plan.cuts().pages(), plan.cuts().pagesGiven())));
    totals.add(List.of("slices", FindingLine.count(plan.cuts().slices().size() + 1, "slice")));
    return totals;
  }

  private static String height(EpisodePlan plan, HouseStyle style) {
    Delivery delivery = style.delivery();
    double deliveredPx = plan.heightPx() * delivery.widthPx() / plan.layout().widthPx();
    return whole(plan.heightPx())
        + " px; "
        + whole(deliveredPx)
        + " of "
        + delivery.maxEpisodeHeightPx()
        + " px allowed at the delivery width of "
        + delivery.widthPx()
        + " px";
  }

  private static String screens(Screens screens) {
    String count = tenths(screens.count()) + " of " + whole(screens.screenPx()) + " px";
    return screens.screens().stream()
        .max(Comparator.comparingInt(Screens.Screen::words))
        .filter(most -> most.words() > 0)
        .map(most -> count + "; most words on screen " + most.number() + ", " + most.words())
        .orElse(count);
  }

  private static String pieces(List<Double> cuts, boolean given) {
    String at = cuts.stream().map(PlanTable::whole).collect(Collectors.joining(", "));
    return FindingLine.count(cuts.size() + 1, "canvas page")
        + (cuts.isEmpty() ? "" : ", cut at " + at + (given ? " by layout.json" : ""));
  }

  private static String split(Split split) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("part", "panels", "height px", "words", "reading", "reason"));
    IntStream.range(0, split.parts().size()).forEach(i -> rows.add(part(i, split.parts().get(i))));
    return TextTable.of(rows, List.of(false, true, true, true, true, false));
  }

  private static List<String> part(int index, Split.Part part) {
    return List.of(
        Character.toString('a' + index),
        part.firstPanel() + " to " + part.lastPanel(),
        whole(part.heightPx()),
        Integer.toString(part.words()),
        ReadingTime.of(part.seconds()),
        part.reason());
  }

  private static String words(int words) {
    return FindingLine.count(words, "word");
  }

  private static String whole(double value) {
    return String.format(Locale.ROOT, "%.0f", value);
  }

  private static String tenths(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }
}
