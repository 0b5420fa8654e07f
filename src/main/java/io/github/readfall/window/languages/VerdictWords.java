package io.github.readfall.window.languages;

import io.github.readfall.base.finding.Severity;
import io.github.readfall.base.wording.Wording;
import io.github.readfall.job.polyglot.FittedCue;
import io.github.readfall.job.polyglot.Verdict;
import io.github.readfall.lettering.typeset.Tightening;
import io.github.readfall.window.model.LanguageMatrix;
import java.util.Locale;
import java.util.Optional;
import java.util.StringJoiner;

/** Says how well a cue fits into its balloon in another language, in a word or a sentence. */
final class VerdictWords {

  private VerdictWords() {}

  /** The verdict in a word or two, for a cell of the matrix. */
  static String brief(LanguageMatrix.Cell cell) {
    if (!cell.translated().isTranslated()) {
      return Wording.of("verdict.brief.untranslated");
    }
    String said =
        cell.fitted()
            .map(VerdictWords::brief)
            .orElse(Wording.of(cell.isKnown() ? "verdict.brief.none" : "verdict.brief.unknown"));
    return cell.translated().isStale() ? Wording.of("verdict.brief.stale", said) : said;
  }

  private static String brief(FittedCue cue) {
    return switch (cue.verdict()) {
      case AS_IS -> Wording.of("verdict.brief.as_is");
      case TIGHTER -> tighter(cue.tightening());
      case LARGER -> Wording.of("verdict.brief.larger", percent(cue));
      case SHORTER -> Wording.of("verdict.brief.shorter", cue.refit().lettersTooMany());
    };
  }

  /** The verdict in a sentence. */
  static String sentence(LanguageMatrix.Cell cell) {
    if (!cell.translated().isTranslated()) {
      return Wording.of("verdict.untranslated");
    }
    return cell.fitted()
        .map(VerdictWords::sentence)
        .orElse(Wording.of(cell.isKnown() ? "verdict.none" : "verdict.unknown"));
  }

  private static String sentence(FittedCue cue) {
    return switch (cue.verdict()) {
      case AS_IS -> Wording.of("verdict.as_is");
      case TIGHTER -> Wording.of("verdict.tighter", tighter(cue.tightening()));
      case LARGER -> Wording.of("verdict.larger", percent(cue));
      case SHORTER -> Wording.of("verdict.shorter", cue.refit().lettersTooMany());
    };
  }

  private static String tighter(Tightening exactly) {
    Tightening by = exactly.inHundredths();
    StringJoiner words = new StringJoiner(", ");
    if (by.size() < 1) {
      words.add(Wording.of("verdict.size", figure(by.size())));
    }
    if (by.leading() < 1) {
      words.add(Wording.of("verdict.leading", figure(by.leading())));
    }
    if (by.trackingEm() < 0) {
      words.add(Wording.of("verdict.tracking", figure(-by.trackingEm())));
    }
    return words.toString();
  }

  private static String figure(double hundredths) {
    return String.format(Locale.ROOT, "%.2f", hundredths);
  }

  private static String percent(FittedCue cue) {
    return Long.toString((long) Math.ceil((cue.refit().growBy() - 1) * 100 - 1e-6));
  }

  /** The severity; empty for a cue that fits as it is or is not translated. */
  static Optional<Severity> severity(LanguageMatrix.Cell cell) {
    return cell.translated().isTranslated()
        ? cell.fitted().map(FittedCue::verdict).flatMap(VerdictWords::severity)
        : Optional.empty();
  }

  private static Optional<Severity> severity(Verdict verdict) {
    return switch (verdict) {
      case AS_IS -> Optional.empty();
      case TIGHTER -> Optional.of(Severity.NOTE);
      case LARGER -> Optional.of(Severity.WARNING);
      case SHORTER -> Optional.of(Severity.ERROR);
    };
  }
}
