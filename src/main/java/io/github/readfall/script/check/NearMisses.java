package io.github.readfall.script.check;

import io.github.readfall.base.finding.Spelling;
import io.github.readfall.script.Cue;
import io.github.readfall.script.CueKind;
import io.github.readfall.script.Keywords;
import io.github.readfall.script.Letters;
import io.github.readfall.script.LineKind;
import io.github.readfall.script.lines.ClassifiedLine;
import io.github.readfall.script.lines.CueHead;
import io.github.readfall.script.lines.FindingList;
import io.github.readfall.script.lines.Speakers;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Finds lines that were probably meant to be something else than they are. */
public final class NearMisses {

  /**
   * Number of different names that are compared with the known ones; beyond, nothing is guessed.
   */
  private static final int MAX_GUESSES = 200;

  private static final Set<String> EPISODE_KEYS = Set.of("title", "episode", "language", "cast");

  private final Keywords keywords;
  private final Speakers speakers;
  private final FindingList findings;

  public NearMisses(Keywords keywords, Speakers speakers, FindingList findings) {
    this.keywords = keywords;
    this.speakers = speakers;
    this.findings = findings;
  }

  public void check(List<ClassifiedLine> lines, List<Cue> cues) {
    checkSpeakers(lines);
    Set<String> names = new LinkedHashSet<>(speakers.cast().names());
    cues.stream()
        .filter(cue -> cue.kind() == CueKind.DIALOGUE)
        .forEach(c -> names.add(c.speaker()));
    Map<String, Optional<String>> meant = new HashMap<>();
    for (int i = 0; i < lines.size(); i++) {
      ClassifiedLine line = lines.get(i);
      boolean text = line.kind() == LineKind.DESCRIPTION || line.kind() == LineKind.CUE_TEXT;
      if (text || line.kind() == LineKind.STRAY) {
        checkBlockCase(line);
      }
      if (text && !line.head().isNone()) {
        checkName(line, names, meant);
        checkLoneName(line, lines.get(Math.min(i + 1, lines.size() - 1)));
      }
    }
  }

  /** Checks names in capitals that a given cast lacks, each at its first place. */
  private void checkSpeakers(List<ClassifiedLine> lines) {
    if (speakers.cast().isEmpty()) {
      return;
    }
    Set<String> seen = new HashSet<>();
    List<String> names = speakers.cast().names();
    for (ClassifiedLine line : lines) {
      String name = line.head().name();
      if (line.kind() == LineKind.CUE
          && !speakers.isDeclared(name)
          && seen.add(Letters.fold(name))) {
        findings.warning(
            "unknown-speaker",
            line.number(),
            line.column(),
            name + " speaks here but is not in the cast.",
            guess(name, names, seen.size())
                .map(known -> "Write " + known + " if you meant that.")
                .orElse("Add " + name + " to the header Cast."));
      }
    }
  }

  private void checkBlockCase(ClassifiedLine line) {
    String word = firstWord(line.content());
    for (String keyword : List.of(keywords.panel(), keywords.scene())) {
      if (!keyword.isEmpty()
          && Letters.fold(word).equals(Letters.fold(keyword))
          && isNumberOrNothing(line.content().substring(word.length()))) {
        warnCase(line, word, keyword, "begins nothing");
      }
    }
  }

  private void checkName(
      ClassifiedLine line, Set<String> names, Map<String, Optional<String>> meant) {
    if (!line.head().colon()) {
      return;
    }
    String name = line.head().name();
    String folded = Letters.fold(name);
    for (String keyword : List.of(keywords.caption(), keywords.effect())) {
      if (!keyword.isEmpty() && folded.equals(Letters.fold(keyword))) {
        warnCase(line, name, keyword, unlettered(line));
        return;
      }
    }
    if (EPISODE_KEYS.contains(folded)) {
      findings.note(
          "late-header",
          line.number(),
          line.column(),
          "The header " + name + " is below the first scene or panel and changes nothing.",
          "Move it to the top of the script.");
      return;
    }
    boolean first = !meant.containsKey(folded);
    Optional<String> near = meant.getOrDefault(folded, Optional.empty());
    if (first) {
      near = guess(folded, names, meant.size());
      meant.put(folded, near);
    }
    if (near.isPresent()) {
      noteName(line, name, near.get());
    } else if (first && Speakers.isCaseless(name)) {
      findings.note(
          "unknown-speaker",
          line.number(),
          line.column(),
          name + " is not in the cast, so this line " + unlettered(line) + ".",
          "Add " + name + " to the header Cast if this is a cue.");
    }
  }

  private static Optional<String> guess(String name, Collection<String> names, int guesses) {
    return guesses > MAX_GUESSES
        ? Optional.empty()
        : Spelling.nearestName(name, names, Letters::fold);
  }

  private void noteName(ClassifiedLine line, String name, String speaker) {
    findings.note(
        "near-name",
        line.number(),
        line.column(),
        "This line reads like a cue of " + speaker + ", but " + name + " " + unlettered(line) + ".",
        "Write "
            + speaker
            + (Speakers.hasSmall(speaker) ? "" : " in capitals")
            + " if "
            + speaker
            + " speaks here.");
  }

  /** A name in capitals within running text, which no blank line sets off. */
  private void checkLoneName(ClassifiedLine line, ClassifiedLine next) {
    CueHead head = line.head();
    boolean text = next.kind() == LineKind.DESCRIPTION || next.kind() == LineKind.CUE_TEXT;
    boolean inSentence = text && Speakers.hasSmall(next.content());
    if (!head.colon()
        && Speakers.isCapitals(head.name())
        && head.name().length() > 1
        && !head.name().endsWith(".")
        && (inSentence || speakers.isDeclared(head.name()))) {
      findings.note(
          "lone-name",
          line.number(),
          line.column(),
          head.name() + " is alone on its line but " + unlettered(line) + ".",
          "Put a blank line before it, or a colon behind it, if " + head.name() + " speaks.");
    }
  }

  private static String unlettered(ClassifiedLine line) {
    return line.kind() == LineKind.CUE_TEXT
        ? "is read as part of the cue above"
        : "is read as description and not lettered";
  }

  private void warnCase(ClassifiedLine line, String word, String keyword, String what) {
    findings.warning(
        "keyword-case",
        line.number(),
        line.column(),
        "\"" + word + "\" is not written as the keyword " + keyword + " and so " + what + ".",
        "Write " + keyword + " if the keyword is meant.");
  }

  private static String firstWord(String text) {
    int end = 0;
    while (end < text.length() && Character.isLetter(text.charAt(end))) {
      end++;
    }
    return text.substring(0, end);
  }

  private static boolean isNumberOrNothing(String rest) {
    int i = Letters.skipInvisible(rest, 0, rest.length());
    return i == rest.length() || Character.isDigit(rest.charAt(i));
  }
}
