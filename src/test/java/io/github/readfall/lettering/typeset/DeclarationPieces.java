package io.github.readfall.lettering.typeset;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * Cuts a paragraph into pieces as long as a cue: sentences, where those are too long as many
 * clauses together as go into a piece, and where a clause is too long at spaces into parts alike,
 * but not before ๆ or a danda.
 */
final class DeclarationPieces {

  private static final int MOST = 120;
  private static final int MOST_WIDE = 60;
  private static final Set<String> WIDE = Set.of("ja", "ko", "zh", "zh-Hant");
  private static final Pattern SENTENCE = after(".!?。؟।;；");
  private static final Pattern CLAUSE = after(",，、،:：");
  private static final Pattern SPACE = Pattern.compile(" (?![ๆ।])");

  private final String glue;
  private final int most;

  private DeclarationPieces(String tag) {
    this.most = WIDE.contains(tag) ? MOST_WIDE : MOST;
    this.glue = WIDE.contains(tag) && !tag.equals("ko") ? "" : " ";
  }

  /** After a stop and a space, or after an ideographic stop; not after the Swedish f.ö. */
  private static Pattern after(String stops) {
    return Pattern.compile("(?<!\\bf\\.)(?<=[" + stops + "])(?:\\s+|(?<=[。；，、])(?=.))");
  }

  static List<String> of(String paragraph, String tag) {
    DeclarationPieces pieces = new DeclarationPieces(tag);
    return cut(paragraph, SENTENCE).stream().flatMap(s -> pieces.sentence(s).stream()).toList();
  }

  private static List<String> cut(String text, Pattern stops) {
    return Arrays.stream(stops.split(text, -1)).filter(part -> !part.isEmpty()).toList();
  }

  private List<String> sentence(String sentence) {
    if (sentence.length() <= most) {
      return List.of(sentence);
    }
    List<String> clauses = new ArrayList<>();
    for (String clause : cut(sentence, CLAUSE)) {
      int last = clauses.size() - 1;
      String together = last < 0 ? clause : clauses.get(last) + glue + clause;
      if (last >= 0 && together.length() <= most) {
        clauses.set(last, together);
      } else {
        clauses.add(clause);
      }
    }
    return clauses.stream().flatMap(clause -> evenly(clause).stream()).toList();
  }

  private List<String> evenly(String clause) {
    List<Integer> spaces = SPACE.matcher(clause).results().map(space -> space.start()).toList();
    List<String> parts = List.of(clause);
    for (int n = 2; n <= spaces.size() + 1 && longest(parts) > most; n++) {
      parts = inParts(clause, n, spaces);
    }
    return parts;
  }

  private static int longest(List<String> parts) {
    return parts.stream().mapToInt(String::length).max().orElse(0);
  }

  private static List<String> inParts(String clause, int n, List<Integer> spaces) {
    Set<Integer> cuts = new TreeSet<>();
    IntStream.range(1, n)
        .mapToDouble(i -> i * (double) clause.length() / n)
        .forEach(
            place ->
                spaces.stream()
                    .min(Comparator.comparingDouble(space -> Math.abs(space - place)))
                    .ifPresent(cuts::add));
    List<String> parts = new ArrayList<>();
    int start = 0;
    for (int cut : cuts) {
      parts.add(clause.substring(start, cut));
      start = cut + 1;
    }
    parts.add(clause.substring(start));
    return parts;
  }
}
