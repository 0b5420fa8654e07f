package io.github.readfall.lettering.style;

import java.util.Optional;

/**
 * The difference of lettering in one language from the series' own.
 *
 * @param face family or file of its default voice; also the first source of letters that a voice's
 *     own face lacks
 * @param size factor on the series' sizes; positive
 * @param leading factor on the series' leading; positive
 * @param reads the side from which its strip is read; empty for the series' own. Art is not
 *     mirrored: {@code rtl} is for those who have their art mirrored
 */
public record LanguageStyle(
    Optional<String> face, double size, double leading, Optional<ReadingSide> reads) {

  /** No difference. */
  public static final LanguageStyle SAME =
      new LanguageStyle(Optional.empty(), 1, 1, Optional.empty());

  public LanguageStyle {
    if (!(size > 0) || !(leading > 0)) {
      throw new IllegalArgumentException("no size " + size + " or leading " + leading);
    }
  }

  /** A voice in the face of this language. */
  LookChange voice(LookChange own) {
    return face.map(own::withFace).orElse(own);
  }

  /** The sizes of a series in this language. */
  Lettering lettering(Lettering series) {
    return series.times(size, leading);
  }

  /**
   * The settings that still apply once the series is lettered in this language: the source of
   * letters.
   */
  LanguageStyle done() {
    return new LanguageStyle(face, 1, 1, Optional.empty());
  }
}
