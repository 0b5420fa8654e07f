package io.github.readfall.languages.xliff;

import io.github.readfall.languages.translate.CueAlignment;
import io.github.readfall.languages.translate.State;
import io.github.readfall.languages.translate.TranslatedCue;
import io.github.readfall.languages.translate.Translation;
import io.github.readfall.languages.xml.XmlFault;
import io.github.readfall.script.Cue;
import io.github.readfall.script.CueText;
import io.github.readfall.script.MarkupReader;
import io.github.readfall.script.Script;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * A file of translations matched with the present script.
 *
 * @param xliff the file
 * @param script the script
 * @param units of each cue, by the cue's id
 * @param gone units of cues that are no longer in the script
 */
public record Matched(Xliff xliff, Script script, Map<String, Unit> units, List<Unit> gone) {

  static final String SPEAKER = "speaker";
  static final String FORMER = "former source";

  public Matched {
    units = Map.copyOf(units);
    gone = List.copyOf(gone);
  }

  /** Finds the cues of a script in a file. */
  public static Matched of(Xliff xliff, Script script) {
    List<CueAlignment.Former> formers =
        xliff.units().stream()
            .map(unit -> new CueAlignment.Former(unit.id(), unit.note(SPEAKER), unit.source()))
            .toList();
    Map<String, Integer> found = CueAlignment.of(formers, script);
    Map<String, Unit> units = new HashMap<>();
    found.forEach((cue, i) -> units.put(cue, xliff.units().get(i)));
    Set<Integer> taken = new HashSet<>(found.values());
    List<Unit> gone =
        IntStream.range(0, formers.size())
            .filter(i -> !taken.contains(i))
            .mapToObj(xliff.units()::get)
            .toList();
    return new Matched(xliff, script, units, gone);
  }

  /** The unit of a cue. */
  public Optional<Unit> unit(Cue cue) {
    return Optional.ofNullable(units.get(cue.id()));
  }

  /**
   * The translation.
   *
   * @param language a BCP 47 tag, used if the file names none
   */
  public Translation translation(String language) {
    return new Translation(
        xliff.targetLanguage().orElse(language),
        script.cues().stream().map(this::translated).toList());
  }

  private TranslatedCue translated(Cue cue) {
    return unit(cue)
        .map(unit -> new TranslatedCue(cue, unit.target(), unit.state(), former(cue, unit)))
        .orElseGet(() -> TranslatedCue.untranslated(cue));
  }

  /** The words that a target was made from, if the cue has others now. */
  private static Optional<String> former(Cue cue, Unit unit) {
    if (unit.target().isBlank()) {
      return Optional.empty();
    }
    if (unit.isMarkedStale()) {
      return Optional.of(unit.note(FORMER).orElse(unit.source()));
    }
    return isSame(cue.text(), MarkupReader.text(unit.source()))
        ? Optional.empty()
        : Optional.of(unit.source());
  }

  /** Returns true if the words are the same, however they are emphasised and broken. */
  static boolean isSame(CueText a, CueText b) {
    return words(a).equals(words(b));
  }

  private static String words(CueText text) {
    return text.plain().replaceAll("\\s+", " ").strip();
  }

  /**
   * The file with another translation of one cue; nothing else in it changes.
   *
   * @param cue that has a unit in the file
   * @param raw with the script's markup
   * @throws XmlFault never if the file was read: it stays well-formed
   */
  public Matched withTarget(Cue cue, String raw, State state) throws XmlFault {
    Unit unit = unit(cue).orElseThrow(() -> new IllegalArgumentException("no unit " + cue.id()));
    return of(
        XliffReader.read(
            xliff.document().with(new TargetEdit(xliff.document(), unit).to(raw, state))),
        script);
  }
}
