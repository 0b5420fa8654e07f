package io.github.readfall.lettering.typeset;

import io.github.readfall.lettering.style.Look;
import io.github.readfall.script.Emphasis;
import io.github.readfall.type.balloon.FitRules;
import io.github.readfall.type.balloon.OutlineStyle;
import io.github.readfall.type.text.FaceChain;
import io.github.readfall.type.text.Language;
import io.github.readfall.type.text.SizedFace;
import java.util.Map;
import java.util.Optional;

/**
 * The common properties of all cues of one voice and manner.
 *
 * @param look of their lettering
 * @param language they are lettered in
 * @param capitals true if all is in capitals
 * @param type the face and size that the voice asks for
 * @param faces for each emphasis, and for none
 * @param rules their outlines keep to
 * @param outlineStyle the measures their outlines are drawn with
 * @param trackingPx letterspacing after each letter
 */
record VoicePlan(
    Look look,
    Language language,
    boolean capitals,
    SizedFace type,
    Map<Optional<Emphasis>, FaceChain> faces,
    FitRules rules,
    OutlineStyle outlineStyle,
    double trackingPx) {

  VoicePlan {
    faces = Map.copyOf(faces);
  }

  /** Returns true if the faces of all emphases have a character. */
  boolean has(int codePoint) {
    return faces.values().stream().allMatch(chain -> chain.preferred().face().covers(codePoint));
  }

  /** The faces of a stretch; the pronoun I has bars, except in a face that bars every I. */
  FaceChain faces(LetteredText.Part part) {
    FaceChain chain = faces(part.emphasis());
    return part.pronoun() ? new BarredFaces(chain) : chain;
  }

  FaceChain faces(Optional<Emphasis> emphasis) {
    FaceChain chain = faces.get(emphasis);
    if (chain == null) {
      throw new IllegalArgumentException("no faces for " + emphasis);
    }
    return chain;
  }
}
