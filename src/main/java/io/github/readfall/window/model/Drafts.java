package io.github.readfall.window.model;

import io.github.readfall.languages.translate.TranslatedCue;
import io.github.readfall.languages.translate.Translation;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The cues of translations that are not saved yet. */
final class Drafts {

  private final Map<Place, TranslatedCue> cues = new LinkedHashMap<>();

  /** A cue in a language. */
  private record Place(String language, String cueId) {}

  /**
   * An unsaved cue.
   *
   * @param language of the translation
   * @param cue as it is to be saved
   */
  record Draft(String language, TranslatedCue cue) {}

  void put(Draft draft) {
    cues.put(place(draft), draft.cue());
  }

  private static Place place(Draft draft) {
    return new Place(draft.language(), draft.cue().cue().id());
  }

  /** Removes a draft that has been saved, unless the cue has been changed since. */
  void saved(Draft draft) {
    cues.remove(place(draft), draft.cue());
  }

  /** The unsaved cues, in the order in which they were first changed. */
  List<Draft> all() {
    return cues.entrySet().stream()
        .map(entry -> new Draft(entry.getKey().language(), entry.getValue()))
        .toList();
  }

  boolean isEmpty() {
    return cues.isEmpty();
  }

  void clear() {
    cues.clear();
  }

  /** A translation as it was read, with the unsaved cues whose original is still the same. */
  Translation over(Translation read) {
    Translation whole = read;
    for (Draft draft : all()) {
      boolean meant =
          draft.language().equals(read.language())
              && read.cue(draft.cue().cue().id())
                  .filter(cue -> cue.cue().text().equals(draft.cue().cue().text()))
                  .isPresent();
      whole = meant ? whole.with(draft.cue()) : whole;
    }
    return whole;
  }
}
