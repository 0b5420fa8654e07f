package io.github.readfall.plan;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.geom.Box;
import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.strip.Layout;
import io.github.readfall.strip.PanelBox;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** Plans an episode whose cues are set, from a layout or from its script alone. */
public final class EpisodePlanner {

  private EpisodePlanner() {}

  /**
   * The plan of an episode.
   *
   * @param layout its panels so far; empty if only its script is known
   * @param parts number of parts to split it into; empty to split it only if it is too tall
   */
  public static EpisodePlan plan(SetEpisode set, Optional<Layout> layout, OptionalInt parts) {
    return plan(set, layout.orElseGet(() -> PanelPlanner.plan(set)), parts);
  }

  /**
   * A split of a planned episode into a number of parts.
   *
   * @param parts at least 1
   * @return empty if it has too few panels
   */
  public static Optional<Split> split(SetEpisode set, EpisodePlan plan, int parts) {
    return new SplitProposal(set.script(), set.style(), plan.layout(), plan.met())
        .into(OptionalInt.of(parts));
  }

  private static EpisodePlan plan(SetEpisode set, Layout layout, OptionalInt parts) {
    HouseStyle style = set.style();
    List<ReadWords> met = ReadWords.planned(set, layout);
    boolean tooTall = layout.heightPx() > EpisodeLimit.px(style, layout.widthPx());
    Optional<Split> split =
        parts.isPresent() || tooTall
            ? new SplitProposal(set.script(), style, layout, met).into(parts)
            : Optional.empty();
    List<Finding> findings =
        new ArrayList<>(PlanFindings.tooTall(style, layout, split).stream().toList());
    findings.addAll(UnmetHints.of(set.script(), layout));
    return new EpisodePlan(
        layout,
        met,
        Screens.of(layout.heightPx(), Screens.screenPx(style), met),
        paces(layout.panels(), met),
        StripCuts.of(layout, Obstacle.of(layout, met), style),
        split,
        findings.stream()
            .map(f -> f.withSeverity(style.severity(f.rule(), f.severity())))
            .toList());
  }

  private static List<PanelPace> paces(List<PanelBox> panels, List<ReadWords> met) {
    Map<Integer, List<ReadWords>> byPanel = new HashMap<>();
    met.forEach(some -> byPanel.computeIfAbsent(some.panel(), n -> new ArrayList<>()).add(some));
    List<PanelPace> paces = new ArrayList<>();
    double bottom = 0;
    for (PanelBox panel : panels) {
      Box box = panel.box();
      List<ReadWords> own = byPanel.getOrDefault(panel.panel(), List.of());
      paces.add(
          new PanelPace(
              panel.panel(),
              box.height(),
              Math.max(0, box.y() - bottom),
              own.stream().mapToInt(ReadWords::words).sum(),
              own.stream().mapToDouble(ReadWords::seconds).sum()));
      bottom = Math.max(bottom, box.bottom());
    }
    return paces;
  }
}
