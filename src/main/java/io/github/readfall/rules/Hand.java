package io.github.readfall.rules;

import io.github.readfall.balloon.ShapeKind;
import io.github.readfall.font.FaceFile;
import io.github.readfall.style.Look;
import io.github.readfall.typeset.SetBalloon;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How a balloon is lettered, as a reader sees it, the size of lettering that exists left out.
 *
 * @param traits by name, each as it stands in a sentence
 */
record Hand(Map<String, String> traits) {

  Hand {
    traits = Collections.unmodifiableMap(new LinkedHashMap<>(traits));
  }

  /** The hand of a balloon. A shape that layout.json chooses is not its voice's. */
  static Hand of(SetBalloon balloon) {
    Look look = balloon.look();
    FaceFile file = balloon.type().face().file();
    Map<String, String> traits = new LinkedHashMap<>();
    traits.put("face", file.family());
    traits.put("weight", String.valueOf(file.weight()));
    traits.put("letters", file.italic() ? "italic" : "upright");
    traits.put("slant", Figures.down(balloon.type().slantDeg(), 1) + "°");
    traits.put("size", Figures.down(look.size(), 3));
    traits.put("case", balloon.capitals() ? "all capitals" : "as written");
    traits.put("letterspacing", Figures.down(look.tracking(), 3) + " em");
    traits.put("text", look.text().hex());
    if (look.shape() != ShapeKind.NONE) {
      traits.put("fill", look.fill().hex());
      traits.put("line", look.line().hex());
      traits.put("line-style", look.lineStyle().word());
    }
    if (balloon.wanted().shape().isEmpty()) {
      traits.put("shape", look.shape().word());
    }
    return new Hand(traits);
  }

  /** What is other here, e.g. {@code slant 9° instead of 0°}; empty where both agree. */
  List<String> differencesFrom(Hand usual) {
    return traits.entrySet().stream()
        .filter(trait -> usual.differsIn(trait.getKey(), trait.getValue()))
        .map(
            trait ->
                trait.getKey()
                    + " "
                    + trait.getValue()
                    + " instead of "
                    + usual.traits.get(trait.getKey()))
        .toList();
  }

  private boolean differsIn(String name, String value) {
    return !traits.getOrDefault(name, value).equals(value);
  }

  boolean agreesWith(Hand other) {
    return differencesFrom(other).isEmpty();
  }
}
