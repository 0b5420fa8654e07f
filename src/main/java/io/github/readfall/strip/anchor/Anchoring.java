package io.github.readfall.strip.anchor;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Phrase;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.base.finding.Shortened;
import io.github.readfall.base.finding.Spelling;
import io.github.readfall.base.finding.Where;
import io.github.readfall.base.geom.Box;
import io.github.readfall.script.Cue;
import io.github.readfall.script.Letters;
import io.github.readfall.script.Panel;
import io.github.readfall.script.Script;
import io.github.readfall.strip.CueMark;
import io.github.readfall.strip.LaidBalloon;
import io.github.readfall.strip.Layout;
import io.github.readfall.strip.Mouth;
import io.github.readfall.strip.PanelBox;
import io.github.readfall.strip.Parked;
import io.github.readfall.strip.json.LayoutFindings;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Matches a layout to the present script, so that lines and panels that come, go, move or are
 * reworded disturb no other balloon. What is gone is parked, and comes back if its cue does.
 */
public final class Anchoring {

  /** The rule for a panel of the script that has no box in the layout. */
  public static final String PANEL_MISSING = "layout/panel-missing";

  private static final int MAX_QUOTED = 40;

  private final Layout layout;
  private final PanelAnchors panels;
  private final CueAnchors cues;
  private final Set<CueKey> found = new HashSet<>();
  private final List<Finding> findings = new ArrayList<>();

  private Anchoring(Layout layout, Script script) {
    this.layout = layout;
    this.panels = PanelAnchors.of(layout, script);
    this.cues = CueAnchors.of(layout, script, panels);
    cues.pairs().forEach(pair -> pair.balloon().cue().map(CueKey::of).ifPresent(found::add));
  }

  /** The layout with the panels and cues of a script. */
  public static Anchored of(Layout layout, Script script) {
    return new Anchoring(layout, script).anchored(script);
  }

  private Anchored anchored(Script script) {
    List<LaidBalloon> balloons = cues.pairs().stream().map(this::anchored).toList();
    MouthAnchors mouths = MouthAnchors.of(layout, script, panels, cues);
    panels.gone().forEach(this::noteGone);
    cues.gone().forEach(this::noteGone);
    panels.missing().forEach(this::warnMissing);
    warnOfNobodysMouths(mouths.mouths(), script);
    Parked parked =
        new Parked(panels.parked(), mouths.parked(), cues.parked())
            .and(new Parked(panels.gone(), List.of(), cues.gone()));
    Layout now =
        new Layout(
            layout.widthPx(),
            layout.heightPx(),
            panels.panels(),
            layout.keepClear(),
            mouths.mouths(),
            balloons,
            layout.cuts(),
            layout.openings(),
            parked,
            layout.version(),
            layout.extra());
    return new Anchored(now.withHeadings(script), findings);
  }

  private LaidBalloon anchored(CueAnchors.Pair pair) {
    Cue cue = pair.cue();
    LaidBalloon balloon = pair.balloon().of(cue.id(), CueMark.of(cue));
    if (!isElsewhere(pair)) {
      return balloon;
    }
    note(
        "cue-moved",
        Where.balloon(cue.id(), cue.panel(), cue.line()),
        "The cue " + quoted(CueMark.of(cue)) + " is in another panel now.",
        Phrase.of("Its balloon is placed anew there; pin it to keep it where it was."));
    return balloon.at(Optional.empty(), List.of());
  }

  /** Returns true if a cue moved to another panel and no other cue has taken its balloon there. */
  private boolean isElsewhere(CueAnchors.Pair pair) {
    LaidBalloon balloon = pair.balloon();
    if (balloon.pinned() || balloon.isLettered() || balloon.cue().isEmpty()) {
      return false;
    }
    int panel = pair.cue().panel();
    Optional<Box> goal = panels.box(panel).map(PanelBox::box);
    boolean other = panels.numberNow(balloon.cue().get()) != panel;
    return other
        && goal.isPresent()
        && balloon.box().filter(box -> !goal.get().covers(box.centre())).isPresent();
  }

  private void noteGone(PanelBox panel) {
    String heading = panel.heading().isEmpty() ? "" : ", " + shortened(panel.heading()) + ",";
    note(
        "panel-gone",
        inFile(),
        "Panel " + panel.panel() + heading + " is gone from the script.",
        kept("Its box").then(", and comes back with the panel."));
  }

  private void noteGone(LaidBalloon balloon) {
    boolean twice = balloon.cue().map(CueKey::of).filter(found::contains).isPresent();
    String cue = balloon.cue().map(Anchoring::quoted).orElse(shortened(balloon.id()));
    Phrase kept = kept("It");
    if (twice) {
      note(
          "cue-twice",
          inFile(),
          "The cue " + cue + " has more balloons than the script has such cues.",
          kept.then(", and not drawn."));
    } else {
      note(
          "cue-gone",
          inFile(),
          "The cue of a balloon is gone from the script: " + cue + ".",
          kept.then(", and comes back with the cue."));
    }
  }

  private void warnMissing(Panel panel) {
    findings.add(
        Finding.of(
            PANEL_MISSING,
            Severity.WARNING,
            Where.panel(panel.number(), panel.line()),
            Phrase.of("Panel " + panel.number() + " has no box ")
                .either("in layout.json", "on the strip")
                .then(", so nothing in it has a place."),
            Phrase.of("")
                .either(
                    "Give it a box there, or run readfall place with",
                    "Draw one, or place balloons,")
                .either(" --open-gutters.", " opening gutters.")));
  }

  /**
   * Warns of mouths whose speaker is not in the script: they help no tail, and the name may be
   * misspelt.
   */
  private void warnOfNobodysMouths(List<Mouth> mouths, Script script) {
    Set<String> names = new TreeSet<>();
    script.cues().forEach(cue -> names.addAll(cue.speakers()));
    script.cast().forEach(member -> names.add(member.name()));
    Set<String> known = names.stream().map(Letters::fold).collect(Collectors.toSet());
    for (Mouth mouth : mouths) {
      if (!known.contains(Letters.fold(mouth.speaker()))) {
        String advice =
            Spelling.nearestName(mouth.speaker(), names, Letters::fold)
                .map(name -> "Write " + name + " if you meant that.")
                .orElse("Write the name as the script has it, or delete the mouth.");
        findings.add(
            Finding.of(
                "layout/speaker-unknown",
                Severity.WARNING,
                inFile(),
                shortened(mouth.speaker())
                    + ", whose mouth is in panel "
                    + mouth.panel()
                    + ", is not in the script.",
                advice));
      }
    }
  }

  private void note(String rule, Where where, String message, Phrase advice) {
    findings.add(Finding.of("layout/" + rule, Severity.NOTE, where, Phrase.of(message), advice));
  }

  private static Phrase kept(String what) {
    return Phrase.of(what + " is kept").either(" under \"parked\" in layout.json", "");
  }

  private static Where inFile() {
    return new Where(
        LayoutFindings.FILE,
        OptionalInt.empty(),
        OptionalInt.empty(),
        OptionalInt.empty(),
        List.of());
  }

  private static String quoted(CueMark mark) {
    return shortened(mark.speaker()) + " \"" + shortened(mark.text()) + "\"";
  }

  private static String shortened(String text) {
    return Shortened.to(MAX_QUOTED, text);
  }
}
