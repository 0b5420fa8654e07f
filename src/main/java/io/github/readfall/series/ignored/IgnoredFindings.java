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
 * All ignored findings of an episode.
 *
 * @param fileName name of their file, for findings about it
 * @param entries in the order of the file
 * @param findings faults of the file
 */
public record IgnoredFindings(
    String fileName, List<IgnoredFinding> entries, List<Finding> findings) {

  /** No ignored findings. */
  public static final IgnoredFindings NONE = new IgnoredFindings("", List.of(), List.of());

  /** Rule id of an entry that ignores nothing. */
  public static final String NOTHING = "ignored/nothing";

  public IgnoredFindings {
    entries = List.copyOf(entries);
    findings = List.copyOf(findings);
  }

  /**
   * The findings of a whole check, the ignored ones with their reasons, followed by a note for each
   * entry that ignores nothing.
   *
   * @param found by every rule
   * @param script the present one
   */
  public List<Finding> applied(List<Finding> found, Script script) {
    if (entries.isEmpty()) {
      return found;
    }
    Map<String, String> ids = ids(script);
    Set<IgnoredFinding> unused = new LinkedHashSet<>(entries);
    List<Finding> all = new ArrayList<>();
    for (Finding finding : found) {
      Optional<IgnoredFinding> entry =
          entries.stream().filter(e -> matches(e, finding, ids)).findFirst();
      entry.ifPresent(unused::remove);
      all.add(entry.map(e -> finding.ignored(e.reason())).orElse(finding));
    }
    unused.forEach(entry -> all.add(nothing(entry)));
    return List.copyOf(all);
  }

  /** The entry that ignores a finding; empty if it is not ignored. */
  public Optional<IgnoredFinding> entryOf(Finding finding, Script script) {
    Map<String, String> ids = ids(script);
    return entries.stream().filter(entry -> matches(entry, finding, ids)).findFirst();
  }

  /** The cues of all entries, each with its id in the present script. */
  private Map<String, String> ids(Script script) {
    Set<ComparedLine> lines = new LinkedHashSet<>();
    List<String> cueTexts = new ArrayList<>();
    for (IgnoredFinding entry : entries) {
      for (String cue : entry.cues()) {
        ComparedLine line =
            ComparedLine.of(
                cue,
                entry.panel().orElse(0),
                IgnoredFinding.speaker(cue),
                IgnoredFinding.words(cue));
        if (lines.add(line)) {
          cueTexts.add(cue);
        }
      }
    }
    List<Cue> cues = script.cues();
    int[] pairs =
        CueMatcher.match(
            List.copyOf(lines),
            cues.stream()
                .map(cue -> ComparedLine.of(cue.id(), cue.panel(), cue.names(), cue.text().raw()))
                .toList());
    Map<String, String> ids = new HashMap<>();
    for (int i = 0; i < pairs.length; i++) {
      if (pairs[i] != SequenceAlignment.NONE) {
        ids.put(cueTexts.get(i), cues.get(pairs[i]).id());
      }
    }
    return ids;
  }

  private static boolean matches(IgnoredFinding entry, Finding finding, Map<String, String> ids) {
    if (!entry.rule().equals(finding.rule())) {
      return false;
    }
    if (entry.cues().isEmpty()) {
      return finding.where().balloons().isEmpty() && entry.panel().equals(finding.where().panel());
    }
    Set<String> balloons = new HashSet<>();
    entry.cues().forEach(cue -> balloons.add(ids.getOrDefault(cue, "")));
    return balloons.equals(Set.copyOf(finding.where().balloons()));
  }

  private Finding nothing(IgnoredFinding entry) {
    return Finding.of(
        NOTHING,
        Severity.NOTE,
        Where.at(fileName, entry.line(), 1),
        "This entry ignores " + entry.rule() + ", which is no longer found there.",
        "Delete the entry, so that it hides nothing later.");
  }
}
