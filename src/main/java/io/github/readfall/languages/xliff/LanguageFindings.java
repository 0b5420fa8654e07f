package io.github.readfall.languages.xliff;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Phrase;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.base.finding.Shortened;
import io.github.readfall.base.finding.Where;
import io.github.readfall.languages.translate.Budget;
import io.github.readfall.languages.translate.TranslatedCue;
import io.github.readfall.script.Cue;
import io.github.readfall.script.MarkupReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** Findings of matching a translation with the present script. */
public final class LanguageFindings {

  private static final int MAX_QUOTED = 40;

  private final Matched matched;
  private final String file;
  private final Map<String, Budget> budgets;
  private final List<Finding> findings = new ArrayList<>();

  private LanguageFindings(Matched matched, String file, Map<String, Budget> budgets) {
    this.matched = matched;
    this.file = file;
    this.budgets = budgets;
  }

  /**
   * All findings.
   *
   * @param file its name in messages
   * @param budgets of the balloons, by the cue's id, as far as they are known
   */
  public static List<Finding> of(Matched matched, String file, Map<String, Budget> budgets) {
    return new LanguageFindings(matched, file, budgets).all();
  }

  private List<Finding> all() {
    for (TranslatedCue cue : matched.translation("").cues()) {
      matched.unit(cue.cue()).ifPresent(unit -> unit(cue, unit));
    }
    sizes();
    matched.gone().forEach(this::gone);
    missing();
    return List.copyOf(findings);
  }

  private void unit(TranslatedCue cue, Unit unit) {
    cue.formerSource().ifPresent(former -> stale(cue.cue(), unit, former));
    if (cue.isTranslated()) {
      codes(cue, unit);
      tooLong(cue, unit);
    } else if (unit.hasTarget()) {
      add(
          "language/empty",
          Severity.WARNING,
          where(cue.cue(), unit),
          Phrase.of("").balloon(cue.cue().id()).then(" has a target without words."),
          "Translate it, or take the target out.");
    }
  }

  private void stale(Cue cue, Unit unit, String former) {
    add(
        "language/stale",
        Severity.NOTE,
        where(cue, unit),
        Phrase.of("")
            .balloon(cue.id())
            .then(" was translated when it said " + quoted(former))
            .then("; now it says " + quoted(cue.text().raw()) + "."),
        "See whether the translation still holds, change it, and set its state anew.");
  }

  private void codes(TranslatedCue cue, Unit unit) {
    Signs source = Signs.of(cue.cue().text());
    Signs target = Signs.of(MarkupReader.text(cue.target()));
    if (!source.equals(target)) {
      add(
          "language/codes",
          Severity.NOTE,
          where(cue.cue(), unit),
          Phrase.of("")
              .balloon(cue.cue().id())
              .then(" has " + source + "; its translation has " + target + "."),
          "See whether emphasis and forced breaks are meant to differ.");
    }
  }

  /** Compares a cue with its budget, if the file does not restrict the size itself. */
  private void tooLong(TranslatedCue cue, Unit unit) {
    Budget budget = budgets.get(cue.cue().id());
    if (budget == null || unit.element().written(Names.SLR, "sizeRestriction").isPresent()) {
      return;
    }
    String counted = CodeUnits.normalized(unit.targetCue().plain().replace("\n", ""), "nfc");
    int size = CodeUnits.CODEPOINTS.size(counted);
    if (size > budget.most()) {
      tooLong(
          where(cue.cue(), unit),
          Phrase.of("").balloon(cue.cue().id()),
          size,
          budget.most(),
          "characters");
    }
  }

  private void tooLong(Where where, Phrase what, int size, int limit, String unit) {
    boolean more = size > limit;
    findings.add(
        Finding.of(
                "language/long",
                Severity.WARNING,
                where,
                what.then(" has " + size + " " + unit + "; ")
                    .then((more ? "at most " : "at least ") + limit + " are asked for."),
                Phrase.of(
                    more
                        ? "Say it in fewer words, or let the balloon grow."
                        : "Say it in more words."))
            .measured(size, limit, unit));
  }

  private void sizes() {
    for (var element : matched.xliff().files()) {
      for (Sizes.Broken broken : new Sizes(matched.xliff().document(), element).broken()) {
        Optional<Cue> cue = cueAt(broken.element().start());
        Where where =
            cue.map(found -> where(found, matched.unit(found).orElseThrow()))
                .orElse(
                    Where.at(file, matched.xliff().document().line(broken.element().start()), 1));
        Phrase what =
            cue.map(found -> Phrase.of("").balloon(found.id()))
                .orElse(
                    Phrase.of("")
                        .either(
                            broken.element().local()
                                + " "
                                + broken.element().attribute("id").orElse(""),
                            "A text of the file"));
        tooLong(where, what, broken.size(), broken.limit(), broken.unit());
      }
    }
  }

  /** The cue whose unit a place of the file is in. */
  private Optional<Cue> cueAt(int index) {
    return matched.script().cues().stream()
        .filter(
            cue ->
                matched
                    .unit(cue)
                    .filter(u -> u.element().start() <= index && index < u.element().end())
                    .isPresent())
        .findFirst();
  }

  private void gone(Unit unit) {
    String says = unit.source().isBlank() ? "nothing" : quoted(unit.source());
    add(
        "language/gone",
        Severity.NOTE,
        Where.at(file, unit.line(), 1),
        Phrase.of("The script no longer has ")
            .either("the cue of unit " + unit.id(), "a cue of the translation")
            .then(", which says " + says + "."),
        "Nothing need be done: it is kept, and comes back with the cue.");
  }

  private void missing() {
    List<Cue> cues = matched.script().cues();
    List<Cue> lacking =
        cues.stream()
            .filter(cue -> matched.unit(cue).map(u -> !u.hasTarget() || isPartial(u)).orElse(true))
            .toList();
    if (!lacking.isEmpty()) {
      Finding missing =
          Finding.of(
              "language/missing",
              Severity.NOTE,
              new Where(
                  file, OptionalInt.empty(), OptionalInt.empty(), OptionalInt.empty(), List.of()),
              lacking.size() + " of " + cues.size() + " cues are not translated.",
              "Send the script out again: what is done stays done.");
      findings.add(missing.measured(lacking.size(), 0, "cues"));
    }
  }

  private static boolean isPartial(Unit unit) {
    return unit.isIncomplete() && !unit.target().isBlank();
  }

  private Where where(Cue cue, Unit unit) {
    return new Where(
        file,
        OptionalInt.of(unit.line()),
        OptionalInt.empty(),
        OptionalInt.of(cue.panel()),
        List.of(cue.id()));
  }

  private static String quoted(String raw) {
    return "\"" + Shortened.to(MAX_QUOTED, raw) + "\"";
  }

  private void add(String id, Severity severity, Where where, Phrase message, String advice) {
    findings.add(Finding.of(id, severity, where, message, Phrase.of(advice)));
  }
}
