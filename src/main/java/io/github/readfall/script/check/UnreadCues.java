package io.github.readfall.script.check;

import io.github.readfall.base.OneCall;
import io.github.readfall.base.finding.Spelling;
import io.github.readfall.script.Cue;
import io.github.readfall.script.CueKind;
import io.github.readfall.script.Letters;
import io.github.readfall.script.LineKind;
import io.github.readfall.script.lines.ClassifiedLine;
import io.github.readfall.script.lines.CueHead;
import io.github.readfall.script.lines.DashedCues;
import io.github.readfall.script.lines.DescriptionWords;
import io.github.readfall.script.lines.FindingList;
import io.github.readfall.script.lines.Speakers;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** Finds lines that look like cues but were not read as such: words that might be lost. */
@OneCall
public final class UnreadCues {

  /**
   * Number of different names that are compared with the known ones; beyond, nothing is guessed.
   */
  private static final int MAX_GUESSES = 50;

  private static final Set<String> EPISODE_KEYS = Set.of("title", "episode", "language", "cast");

  /** One or two words, each with a capital: {@code Marta} or {@code Old Wouter}. */
  private static final Pattern NAME = Pattern.compile("\\p{Lu}[\\p{L}'’.]*( \\p{Lu}[\\p{L}'’.]*)?");

  private final Speakers speakers;
  private final FindingList findings;
  private final Set<String> names = new LinkedHashSet<>();
  private final Map<String, Optional<String>> meant = new HashMap<>();

  public UnreadCues(Speakers speakers, FindingList findings) {
    this.speakers = speakers;
    this.findings = findings;
  }

  public void check(List<ClassifiedLine> lines, List<Cue> cues) {
    names.addAll(speakers.cast().names());
    cues.stream()
        .filter(cue -> cue.kind() == CueKind.DIALOGUE)
        .forEach(cue -> names.addAll(cue.speakers()));
    for (int i = 0; i < lines.size(); i++) {
      ClassifiedLine line = lines.get(i);
      if (isText(line) && !line.head().isNone()) {
        ClassifiedLine next = lines.get(Math.min(i + 1, lines.size() - 1));
        switch (line.head().sign()) {
          case COLON -> checkColon(line);
          case DASH -> checkDash(line);
          case NONE -> checkLoneName(line, next);
        }
      }
    }
  }

  private static boolean isText(ClassifiedLine line) {
    return line.kind() == LineKind.DESCRIPTION || line.kind() == LineKind.CUE_TEXT;
  }

  private void checkColon(ClassifiedLine line) {
    String name = line.head().name();
    String folded = Letters.fold(name);
    if (EPISODE_KEYS.contains(folded)) {
      findings.note(
          "late-header",
          line.number(),
          line.column(),
          "The header " + name + " is below the first scene or panel and changes nothing.",
          "Move it to the top of the script.");
      return;
    }
    if (speakers.isKnown(name.split(",", 2)[0])) {
      report(line, name, "Write the name in capitals if " + name + " speaks here.");
      return;
    }
    boolean first = !meant.containsKey(folded);
    Optional<String> near = meant.computeIfAbsent(folded, word -> guess(word, names, meant.size()));
    if (near.isPresent()) {
      report(line, near.get(), ifSpeaks(near.get()));
    } else if (first && Speakers.isCaseless(name)) {
      findings.note(
          "unknown-speaker",
          line.number(),
          line.column(),
          name + " is not in the cast, so this line " + unlettered(line) + ".",
          "Add " + name + " to the header Cast if this is a cue.");
    } else if (first && Speakers.isCapitals(name)) {
      findings.note(
          "near-name",
          line.number(),
          line.column(),
          "This line may be a cue of " + name + ", but it " + unlettered(line) + ".",
          "Add " + name + " to the header Cast if " + name + " speaks here.");
    } else if (first
        && !names.isEmpty()
        && !DescriptionWords.isLabel(name)
        && NAME.matcher(name).matches()) {
      findings.warning(
          "near-name",
          line.number(),
          line.column(),
          "This line may be a cue of " + name + ", but it " + unlettered(line) + ".",
          "Write the name in capitals, or add it to the header Cast, if " + name + " speaks here.");
    }
  }

  /** A known name, or one in capitals, before a dash. */
  private void checkDash(ClassifiedLine line) {
    String name = line.head().name();
    if (speakers.isKnown(name)) {
      report(line, name, "Put a colon after the name if " + name + " speaks here.");
    } else if (Speakers.isCapitals(name)) {
      guess(name, names, meant.size()).ifPresent(near -> report(line, near, ifSpeaks(near)));
    }
  }

  static Optional<String> guess(String name, Collection<String> names, int guesses) {
    return guesses > MAX_GUESSES
        ? Optional.empty()
        : Spelling.nearestName(name, names, Letters::fold);
  }

  private static String ifSpeaks(String speaker) {
    return "Write "
        + speaker
        + (Speakers.hasSmall(speaker) ? "" : " in capitals")
        + " if "
        + speaker
        + " speaks here.";
  }

  /** Reports lost words as an error, words in another's balloon as a warning, prose as a note. */
  private void report(ClassifiedLine line, String speaker, String advice) {
    CueHead head = line.head();
    String message =
        "This line reads like a cue of "
            + speaker
            + ", but "
            + head.name()
            + " "
            + unlettered(line)
            + ".";
    if (head.dash() && DashedCues.isProse(line.written(), head.textStart())) {
      findings.note("near-name", line.number(), line.column(), message, advice);
    } else if (line.kind() == LineKind.CUE_TEXT) {
      findings.warning("near-name", line.number(), line.column(), message, advice);
    } else {
      findings.error("near-name", line.number(), line.column(), message, advice);
    }
  }

  /** A name in capitals within running text, which no blank line sets off. */
  private void checkLoneName(ClassifiedLine line, ClassifiedLine next) {
    CueHead head = line.head();
    boolean inSentence = isText(next) && Speakers.hasSmall(next.content());
    if (Speakers.isCapitals(head.name())
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
}
