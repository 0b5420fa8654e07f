package io.github.readfall.job;

import io.github.readfall.art.panels.ArtLayout;
import io.github.readfall.art.panels.ExpectedPanel;
import io.github.readfall.art.panels.FoundPanels;
import io.github.readfall.art.panels.MatchFindings;
import io.github.readfall.art.panels.MatchedPanels;
import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.geom.Box;
import io.github.readfall.lettering.style.ReadingSide;
import io.github.readfall.lettering.style.StripStyle;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.script.Panel;
import io.github.readfall.series.Episode;
import io.github.readfall.strip.Layout;
import io.github.readfall.strip.PanelBox;
import io.github.readfall.strip.anchor.Anchoring;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * An episode with its panels found in its art.
 *
 * @param fit the episode with every balloon set
 * @param found the boxes found in the art
 * @param matched the box of each panel
 * @param layout the episode's layout with those boxes
 * @param findings about its files, its art, and boxes or panels without a match
 */
public record PanelsProof(
    FitProof fit, FoundPanels found, MatchedPanels matched, Layout layout, List<Finding> findings) {

  public PanelsProof {
    findings = List.copyOf(findings);
  }

  /**
   * Matches the boxes found with the episode.
   *
   * @param aboutArt findings about the art itself
   */
  public static PanelsProof of(FitProof fit, FoundPanels found, List<Finding> aboutArt) {
    Episode episode = fit.episode();
    StripStyle strip = episode.style().strip();
    MatchedPanels matched =
        MatchedPanels.of(
            wanted(fit), found.panels(), strip.widthPx(), strip.reads() == ReadingSide.LTR);
    Layout layout =
        episode
            .layout()
            .map(before -> ArtLayout.in(before, found.heightPx(), matched.panels()))
            .orElseGet(() -> ArtLayout.of(found.widthPx(), found.heightPx(), matched.panels()))
            .withHeadings(episode.script());
    List<Finding> findings = new ArrayList<>();
    Stream.of(episode.findings(), aboutArt, MatchFindings.of(matched))
        .flatMap(List::stream)
        .filter(finding -> !finding.rule().equals(Anchoring.PANEL_MISSING)) // about the art
        .map(f -> f.withSeverity(episode.style().severity(f.rule(), f.severity())))
        .forEach(findings::add);
    return new PanelsProof(fit, found, matched, layout, findings);
  }

  private static List<ExpectedPanel> wanted(FitProof fit) {
    return fit.episode().script().panels().stream().map(panel -> wanted(panel, fit)).toList();
  }

  private static ExpectedPanel wanted(Panel panel, FitProof fit) {
    List<Box> boxes =
        fit.set().balloons().stream()
            .filter(balloon -> balloon.cue().panel() == panel.number())
            .map(SetBalloon::box)
            .toList();
    return new ExpectedPanel(
        panel,
        boxes.stream().mapToDouble(box -> box.width() * box.height()).sum(),
        boxes.stream().mapToDouble(Box::width).max().orElse(0),
        fit.episode().layout().flatMap(layout -> layout.panel(panel.number())).map(PanelBox::box));
  }
}
