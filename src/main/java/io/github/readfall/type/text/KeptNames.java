package io.github.readfall.type.text;

import com.ibm.icu.lang.UCharacter;
import com.ibm.icu.util.ULocale;
import io.github.readfall.type.text.LineBreaks.Segment;
import java.util.ArrayList;
import java.util.List;

/**
 * Names of more than one word that no line should part.
 *
 * @param names as they are written, e.g. {@code Old Wouter}
 */
public record KeptNames(List<String> names) {

  /** None. */
  public static final KeptNames NONE = new KeptNames(List.of());

  public KeptNames {
    names =
        names.stream()
            .map(name -> folded(name).strip())
            .filter(name -> name.indexOf(' ') > 0)
            .toList();
  }

  private static String folded(String text) {
    String lower = UCharacter.toLowerCase(ULocale.ROOT, text);
    return lower.length() == text.length() ? lower : text;
  }

  /** The segments after which a break would part a name. */
  List<Integer> parted(String text, List<Segment> segments) {
    List<Integer> parted = new ArrayList<>();
    String folded = names.isEmpty() ? "" : folded(text);
    for (String name : names) {
      for (int at = folded.indexOf(name); at >= 0; at = folded.indexOf(name, at + 1)) {
        int end = at + name.length();
        for (int i = 0; i < segments.size(); i++) {
          int gap = segments.get(i).end();
          if (gap > at && gap < end) {
            parted.add(i);
          }
        }
      }
    }
    return parted;
  }
}
