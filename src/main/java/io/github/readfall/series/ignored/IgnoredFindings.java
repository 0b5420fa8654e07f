package io.github.readfall.series.ignored;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.base.finding.Where;
import io.github.readfall.script.Cue;
import io.github.readfall.script.Script;
import io.github.readfall.script.align.ComparedLine;
import io.github.readfall.script.align.CueMatcher;
import io.github.readfall.script.align.SequenceAlignment;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * All findings of an episode that are set aside.
 *
 * @param entries as they are written
 * @param findings what was wrong with the file
 */
public record IgnoredFindings(List<IgnoredFinding> entries, List<Finding> findings) {

  /** Nothing is set aside. */
  public static final IgnoredFindings NONE = new IgnoredFindings(List.of(), List.of());

  /** Sets aside what is not there. */
  public static final String NOTHING = "aside/nothing";

  public IgnoredFindings {
    entries = List.copyOf(entries);
    findings = List.copyOf(findings);
  }

  /**
   * Findings of a whole check, each with its reason where it is set aside; behind them a note for
   * each entry that sets nothing aside.
   *
   * @param found by every rule
   * @param script as it is now
   */
  public List<Finding> applied(List<Finding> found, Script script) {
    if (entries.isEmpty()) {
      return found;
    }
    Map<String, String> ids = ids(script);
    Set<IgnoredFinding> idle = new LinkedHashSet<>(entries);
    List<Finding> all = new ArrayList<>();
    for (Finding finding : found) {
      Optional<IgnoredFinding> entry =
          entries.stream().filter(e -> isMeant(e, finding, ids)).findFirst();
      entry.ifPresent(idle::remove);
      all.add(entry.map(e -> finding.ignored(e.reason())).orElse(finding));
    }
    idle.forEach(entry -> all.add(nothing(entry)));
    return List.copyOf(all);
  }

  /** The entry that sets a finding aside, if there is one. */
  public Optional<IgnoredFinding> entryOf(Finding finding, Script script) {
    Map<String, String> ids = ids(script);
    return entries.stream().filter(entry -> isMeant(entry, finding, ids)).findFirst();
  }

  /** The cues of all entries, each with the id that it has in the script as it is now. */
  private Map<String, String> ids(Script script) {
    Set<ComparedLine> olds = new LinkedHashSet<>();
    List<String> said = new ArrayList<>();
    for (IgnoredFinding entry : entries) {
      for (String cue : entry.cues()) {
        ComparedLine line =
            ComparedLine.of(
                cue,
                entry.panel().orElse(0),
                IgnoredFinding.speaker(cue),
                IgnoredFinding.words(cue));
        if (olds.add(line)) {
          said.add(cue);
        }
      }
    }
    List<Cue> cues = script.cues();
    int[] pairs =
        CueMatcher.match(
            List.copyOf(olds),
            cues.stream()
                .map(cue -> ComparedLine.of(cue.id(), cue.panel(), cue.speaker(), cue.text().raw()))
                .toList());
    Map<String, String> ids = new HashMap<>();
    for (int i = 0; i < pairs.length; i++) {
      if (pairs[i] != SequenceAlignment.NONE) {
        ids.put(said.get(i), cues.get(pairs[i]).id());
      }
    }
    return ids;
  }

  private static boolean isMeant(IgnoredFinding entry, Finding finding, Map<String, String> ids) {
    if (!entry.rule().equals(finding.rule())) {
      return false;
    }
    if (entry.cues().isEmpty()) {
      return finding.where().balloons().isEmpty() && entry.panel().equals(finding.where().panel());
    }
    Set<String> meant = new HashSet<>();
    entry.cues().forEach(cue -> meant.add(ids.getOrDefault(cue, "")));
    return meant.equals(Set.copyOf(finding.where().balloons()));
  }

  private static Finding nothing(IgnoredFinding entry) {
    return Finding.of(
        NOTHING,
        Severity.NOTE,
        Where.at("set-aside.toml", entry.line(), 1),
        "This sets " + entry.rule() + " aside, which is not found there any more.",
        "Take the entry out, so that it hides nothing later.");
  }
}
