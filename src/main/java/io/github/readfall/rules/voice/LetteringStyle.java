package io.github.readfall.rules.voice;

import io.github.readfall.lettering.style.Look;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.rules.model.NumberText;
import io.github.readfall.type.balloon.ShapeKind;
import io.github.readfall.type.font.FaceFile;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The lettering of a balloon as a reader sees it, without the size of existing lettering.
 *
 * @param traits by name, each as words of a sentence
 */
record LetteringStyle(Map<String, String> traits) {

  LetteringStyle {
    traits = Collections.unmodifiableMap(new LinkedHashMap<>(traits));
  }

  /** The style of a balloon. A shape that layout.json chooses is not its voice's. */
  static LetteringStyle of(SetBalloon balloon) {
    Look look = balloon.look();
    FaceFile file = balloon.type().face().file();
    Map<String, String> traits = new LinkedHashMap<>();
    traits.put("face", file.family());
    traits.put("weight", String.valueOf(file.weight()));
    traits.put("letters", file.italic() ? "italic" : "upright");
    traits.put("slant", NumberText.down(balloon.type().slantDeg(), 1) + "°");
    traits.put("size", NumberText.down(look.size(), 3));
    traits.put("case", balloon.capitals() ? "all capitals" : "as written");
    traits.put("letterspacing", NumberText.down(look.tracking(), 3) + " em");
    traits.put("text", look.text().hex());
    if (look.shape() != ShapeKind.NONE) {
      traits.put("fill", look.fill().hex());
      traits.put("line", look.line().hex());
      traits.put("line-style", look.lineStyle().word());
    }
    if (balloon.wanted().shape().isEmpty()) {
      traits.put("shape", look.shape().word());
    }
    return new LetteringStyle(traits);
  }

  /** The differences, e.g. {@code slant 9° instead of 0°}; empty if both agree. */
  List<String> differencesFrom(LetteringStyle usual) {
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

  boolean agreesWith(LetteringStyle other) {
    return differencesFrom(other).isEmpty();
  }
}
