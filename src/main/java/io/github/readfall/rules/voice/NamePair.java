package io.github.readfall.rules.voice;

import io.github.readfall.base.finding.Spelling;
import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.script.CastMember;
import io.github.readfall.script.Letters;
import io.github.readfall.type.text.Accents;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Two names that are most likely one person's.
 *
 * @param odd the one that is seldom written
 * @param usual the one that is meant
 */
record NamePair(SeriesName odd, SeriesName usual) {

  /** A shorter name is too often one letter from another's. House default, no source. */
  private static final int SHORTEST = 4;

  /** Greatest length of a name. */
  private static final int LONGEST = 100;

  /** Balloons in an episode from which a name is no typo. House default, no source. */
  private static final int OFTEN = 3;

  /** More people than any series has, so that nonsense takes no time. */
  private static final int MOST = 500;

  /** Every name that is most likely another's, beside the one most used of those. */
  static List<NamePair> of(List<SeriesStrip> strips) {
    List<SeriesName> names =
        SeriesName.of(strips).stream()
            .filter(name -> name.folded().length() <= LONGEST)
            .limit(MOST)
            .toList();
    List<NamePair> pairs = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      meant(i, names, strips).ifPresent(pairs::add);
    }
    return pairs;
  }

  private static Optional<NamePair> meant(
      int odd, List<SeriesName> names, List<SeriesStrip> strips) {
    SeriesName name = names.get(odd);
    Optional<NamePair> best = Optional.empty();
    for (int i = 0; i < names.size(); i++) {
      int use = SeriesName.BY_USE.compare(names.get(i), name);
      NamePair pair = new NamePair(name, names.get(i));
      boolean moreUsed = use > 0 || (use == 0 && i < odd);
      boolean better =
          best.isEmpty() || SeriesName.BY_USE.compare(pair.usual, best.get().usual) > 0;
      if (moreUsed && better && pair.looksLikeOne() && !pair.isToldApart(strips)) {
        best = Optional.of(pair);
      }
    }
    return best;
  }

  private boolean looksLikeOne() {
    String a = Accents.without(odd.folded());
    String b = Accents.without(usual.folded());
    return a.equals(b) || (isOneSlip(a, b) && mayBeASlip());
  }

  /** One letter, but not one figure: GUARD 1 and GUARD 2 are two people. */
  private static boolean isOneSlip(String a, String b) {
    return Math.min(a.length(), b.length()) >= SHORTEST
        && Math.abs(a.length() - b.length()) <= 1
        && figures(a).equals(figures(b))
        && Spelling.typos(a, b) == 1;
  }

  private static String figures(String name) {
    return name.codePoints()
        .filter(Character::isDigit)
        .mapToObj(Character::toString)
        .collect(Collectors.joining());
  }

  /**
   * Returns true if the odd name may be a typo: two who speak in one episode are two people, unless
   * one of them speaks once and never again.
   */
  private boolean mayBeASlip() {
    return !odd.sharesAnEpisodeWith(usual) || (odd.balloons() == 1 && usual.balloons() >= OFTEN);
  }

  /** Returns true if one Cast names both, or the house style has a voice for each. */
  private boolean isToldApart(List<SeriesStrip> strips) {
    HouseStyle style = strips.get(0).galley().style();
    boolean voices = style.voice(odd.shown()).isPresent() && style.voice(usual.shown()).isPresent();
    return voices || strips.stream().anyMatch(this::isInCast);
  }

  private boolean isInCast(SeriesStrip strip) {
    Set<String> cast =
        strip.set().script().cast().stream()
            .map(CastMember::name)
            .map(Letters::fold)
            .collect(Collectors.toSet());
    return cast.contains(odd.folded()) && cast.contains(usual.folded());
  }
}
