package io.github.readfall.script.check;

import io.github.readfall.script.Keywords;
import io.github.readfall.script.Letters;
import io.github.readfall.script.LineKind;
import io.github.readfall.script.lines.ClassifiedLine;
import io.github.readfall.script.lines.FindingList;
import io.github.readfall.script.lines.Speakers;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Finds speakers who are not in the cast, and headings that were probably meant. */
public final class NearMisses {

  private final Keywords keywords;
  private final Speakers speakers;
  private final FindingList findings;

  public NearMisses(Keywords keywords, Speakers speakers, FindingList findings) {
    this.keywords = keywords;
    this.speakers = speakers;
    this.findings = findings;
  }

  public void check(List<ClassifiedLine> lines) {
    checkSpeakers(lines);
    lines.stream()
        .filter(
            line ->
                line.kind() == LineKind.DESCRIPTION
                    || line.kind() == LineKind.CUE_TEXT
                    || line.kind() == LineKind.STRAY)
        .forEach(this::checkBlockCase);
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
          && !speakers.hasInCast(name)
          && seen.add(Letters.fold(name))) {
        findings.warning(
            "unknown-speaker",
            line.number(),
            line.column(),
            name + " speaks here but is not in the cast.",
            UnreadCues.guess(name, names, seen.size())
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
        findings.warning(
            "keyword-case",
            line.number(),
            line.column(),
            "\"" + word + "\" is not written as the keyword " + keyword + " and so begins nothing.",
            "Write " + keyword + " if the keyword is meant.");
      }
    }
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
