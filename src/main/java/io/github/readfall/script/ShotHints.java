package io.github.readfall.script;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;

/**
 * The hints of a panel's heading.
 *
 * @param shot the part of the subject shown; empty if the heading does not say
 * @param tall true for a tall panel
 * @param wide true for a wide panel
 * @param inset true for a panel inside the one before
 * @param besidePrevious true for a panel beside the one before
 * @param heightPx requested height, in strip pixels; positive
 * @param description all other words, as written, parts joined by commas
 */
public record ShotHints(
    Optional<Shot> shot,
    boolean tall,
    boolean wide,
    boolean inset,
    boolean besidePrevious,
    OptionalInt heightPx,
    String description) {

  /** Hints to offer, in the commonest words, from far to near. */
  public static final List<String> WORDS_TO_OFFER =
      List.of(
          "extreme long shot",
          "long shot",
          "full shot",
          "medium long shot",
          "medium shot",
          "medium close-up",
          "close-up",
          "extreme close-up",
          "tall",
          "wide",
          "inset",
          "beside previous",
          "height 1200");

  /** Most digits of a height; more are a typo. House default, no source. */
  private static final int MAX_HEIGHT_DIGITS = 6;

  /** Understood at the start of a part, whatever follows: {@code close-up of a hand}. */
  private static final Map<String, Shot> PHRASES =
      Map.ofEntries(
          Map.entry("extreme long shot", Shot.EXTREME_LONG),
          Map.entry("extreme wide shot", Shot.EXTREME_LONG),
          Map.entry("establishing shot", Shot.EXTREME_LONG),
          Map.entry("long shot", Shot.LONG),
          Map.entry("wide shot", Shot.LONG),
          Map.entry("full shot", Shot.FULL),
          Map.entry("full figure", Shot.FULL),
          Map.entry("medium long shot", Shot.MEDIUM_LONG),
          Map.entry("medium shot", Shot.MEDIUM),
          Map.entry("mid shot", Shot.MEDIUM),
          Map.entry("medium close up", Shot.MEDIUM_CLOSE_UP),
          Map.entry("close up", Shot.CLOSE_UP),
          Map.entry("close shot", Shot.CLOSE_UP),
          Map.entry("closeup", Shot.CLOSE_UP),
          Map.entry("extreme close up", Shot.EXTREME_CLOSE_UP),
          Map.entry("extreme closeup", Shot.EXTREME_CLOSE_UP),
          Map.entry("big close up", Shot.EXTREME_CLOSE_UP));

  /** Understood only where they are all there is: {@code full} is a shot, {@code full moon} not. */
  private static final Map<String, Shot> WORDS =
      Map.ofEntries(
          Map.entry("establishing", Shot.EXTREME_LONG),
          Map.entry("els", Shot.EXTREME_LONG),
          Map.entry("long", Shot.LONG),
          Map.entry("ls", Shot.LONG),
          Map.entry("ws", Shot.LONG),
          Map.entry("full", Shot.FULL),
          Map.entry("fs", Shot.FULL),
          Map.entry("mls", Shot.MEDIUM_LONG),
          Map.entry("medium", Shot.MEDIUM),
          Map.entry("ms", Shot.MEDIUM),
          Map.entry("mcu", Shot.MEDIUM_CLOSE_UP),
          Map.entry("close", Shot.CLOSE_UP),
          Map.entry("cu", Shot.CLOSE_UP),
          Map.entry("ecu", Shot.EXTREME_CLOSE_UP),
          Map.entry("bcu", Shot.EXTREME_CLOSE_UP));

  private static final Set<String> FLAGS = Set.of("tall", "wide", "inset", "beside previous");

  /** Reads a heading; nothing in it is ever an error. */
  public static ShotHints of(String heading) {
    List<Shot> shots = new ArrayList<>();
    Set<String> flags = new TreeSet<>();
    List<Integer> heights = new ArrayList<>();
    List<String> rest = new ArrayList<>();
    for (String part : CommaList.parts(heading)) {
      readPart(part, shots, flags, heights, rest);
    }
    return new ShotHints(
        shots.stream().findFirst(),
        flags.contains("tall"),
        flags.contains("wide"),
        flags.contains("inset"),
        flags.contains("beside previous"),
        heights.isEmpty() ? OptionalInt.empty() : OptionalInt.of(heights.get(0)),
        String.join(", ", rest));
  }

  /** Returns true if a word after PANEL is one of these rather than the panel's name. */
  public static boolean isShotWord(String word) {
    return WORDS.containsKey(normal(word)) || PHRASES.containsKey(normal(word));
  }

  private static void readPart(
      String part, List<Shot> shots, Set<String> flags, List<Integer> heights, List<String> rest) {
    String words = normal(part);
    Shot shot = WORDS.containsKey(words) ? WORDS.get(words) : PHRASES.get(words);
    OptionalInt height = height(words);
    if (shot != null) {
      shots.add(shot);
    } else if (FLAGS.contains(words)) {
      flags.add(words);
    } else if (height.isPresent()) {
      heights.add(height.getAsInt());
    } else if (!readTogether(words, shots, flags)) {
      readBeginning(part, words, shots, rest);
    }
  }

  /** {@code tall long shot}, {@code wide inset}: hints that no comma parts. */
  private static boolean readTogether(String words, List<Shot> shots, Set<String> flags) {
    for (String flag : FLAGS) {
      if (words.startsWith(flag + " ")) {
        String others = words.substring(flag.length() + 1);
        Shot shot = PHRASES.get(others);
        if (shot == null && !FLAGS.contains(others)) {
          return false;
        }
        flags.add(flag);
        if (shot == null) {
          flags.add(others);
        } else {
          shots.add(shot);
        }
        return true;
      }
    }
    return false;
  }

  private static void readBeginning(
      String part, String words, List<Shot> shots, List<String> rest) {
    for (Map.Entry<String, Shot> phrase : PHRASES.entrySet()) {
      String others = Letters.collapse(part);
      if (words.startsWith(phrase.getKey() + " ") && others.length() == words.length()) {
        shots.add(phrase.getValue());
        rest.add(others.substring(phrase.getKey().length()).strip());
        return;
      }
    }
    rest.add(part);
  }

  private static OptionalInt height(String words) {
    String digits = words.startsWith("height ") ? words.substring("height ".length()) : "";
    if (digits.endsWith("px")) {
      digits = digits.substring(0, digits.length() - 2).strip();
    }
    boolean number =
        !digits.isEmpty()
            && digits.length() <= MAX_HEIGHT_DIGITS
            && digits.chars().allMatch(Character::isDigit);
    int height = number ? Integer.parseInt(digits) : 0;
    return height > 0 ? OptionalInt.of(height) : OptionalInt.empty();
  }

  private static String normal(String part) {
    String bare = part;
    if (bare.startsWith("(") && bare.endsWith(")")) {
      bare = bare.substring(1, bare.length() - 1);
    }
    return Letters.collapse(bare.replace('-', ' ').replace('\u2010', ' ').replace('.', ' '))
        .toLowerCase(Locale.ROOT);
  }
}
