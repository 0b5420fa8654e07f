package io.github.readfall.rules.order;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Phrase;
import io.github.readfall.base.finding.Where;
import io.github.readfall.base.geom.Box;
import io.github.readfall.lettering.style.ReadingSide;
import io.github.readfall.plan.order.Displaced;
import io.github.readfall.plan.order.PanelFlow;
import io.github.readfall.plan.order.ReadFirst;
import io.github.readfall.rules.model.CheckedStrip;
import io.github.readfall.rules.model.Rule;
import io.github.readfall.rules.model.RuleSpec;
import io.github.readfall.script.Panel;
import io.github.readfall.strip.PanelBox;
import io.github.readfall.strip.galley.Galley;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;

/**
 * A panel that is read in another order than the script has it. One finding for each of the
 * smallest set that has to move.
 */
final class PanelDisorder implements Rule {

  @Override
  public RuleSpec spec() {
    return RuleSpec.PANEL_ORDER;
  }

  @Override
  public Stream<Finding> check(CheckedStrip strip) {
    Galley galley = strip.galley();
    ReadingSide side = galley.style().strip().reads();
    PanelFlow flow = PanelFlow.of(galley.panels(), side);
    return flow.displaced().stream().map(displaced -> finding(displaced, flow, side, galley));
  }

  private Finding finding(Displaced displaced, PanelFlow flow, ReadingSide side, Galley galley) {
    List<PanelBox> panels = flow.panels();
    PanelBox panel = panels.get(displaced.index());
    int other = displaced.others().get(0);
    int earlier = Math.min(displaced.index(), other);
    int later = Math.max(displaced.index(), other);
    ReadFirst meeting = flow.meeting(earlier, later);
    Phrase met = Phrase.of("panel " + panels.get(later).panel());
    int more = displaced.others().size() - 1;
    Phrase message =
        Phrase.of("The eye meets ")
            .then(met)
            .then(" before panel " + panels.get(earlier).panel() + ": ")
            .then(meeting.why().sentence(met, side))
            .then(more == 0 ? "" : "; " + more + " more out of order with panel " + panel.panel())
            .then(".");
    Box box = panel.box().union(panels.get(other).box());
    return Finding.of(
            RuleSpec.PANEL_ORDER.id(),
            RuleSpec.PANEL_ORDER.severity(),
            where(panel, galley),
            message,
            advice(displaced, panels))
        .measured(displaced.others().size(), 0, RuleSpec.PANEL_ORDER.unit())
        .at(box);
  }

  private static Where where(PanelBox panel, Galley galley) {
    OptionalInt line =
        galley.set().script().panels().stream()
            .filter(written -> written.number() == panel.panel())
            .mapToInt(Panel::line)
            .findFirst();
    return new Where("", line, OptionalInt.empty(), OptionalInt.of(panel.panel()), List.of());
  }

  private static Phrase advice(Displaced displaced, List<PanelBox> panels) {
    List<Integer> others = displaced.others();
    boolean up = others.get(0) > displaced.index();
    int next = up ? others.get(0) : others.get(others.size() - 1);
    return Phrase.of(
        "Move panel "
            + panels.get(displaced.index()).panel()
            + (up ? " before panel " : " behind panel ")
            + panels.get(next).panel()
            + ", or change their order in the script.");
  }
}
