package io.github.readfall.job.polyglot;

import io.github.readfall.languages.reference.ExpectedLength;
import io.github.readfall.languages.reference.LengthTable;
import io.github.readfall.languages.reference.NoReferenceText;
import io.github.readfall.type.text.Language;
import java.util.Locale;

/** Sources of the expected lengths of missing translations. */
public enum ExpectedLengths {
  /** Parallel texts: see {@link io.github.readfall.languages.reference.MeasuredLength}. */
  MEASURED,
  /** A published table: {@link LengthTable#W3C}. */
  W3C,
  /** A published table: {@link LengthTable#EMBARCADERO}. */
  EMBARCADERO;

  /** The name on a command line. */
  @Override
  public String toString() {
    return name().toLowerCase(Locale.ROOT);
  }

  ExpectedLength between(Language source, Language target) throws NoReferenceText {
    return switch (this) {
      case MEASURED -> ExpectedLength.measured(source, target);
      case W3C -> ExpectedLength.published(LengthTable.W3C, source);
      case EMBARCADERO -> ExpectedLength.published(LengthTable.EMBARCADERO, source);
    };
  }
}
