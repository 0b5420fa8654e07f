package io.github.readfall.languages.translate;

import io.github.readfall.script.Cue;
import io.github.readfall.script.CueText;
import io.github.readfall.script.MarkupReader;
import io.github.readfall.script.Script;
import io.github.readfall.script.align.ComparedLine;
import io.github.readfall.script.align.CueMatcher;
import io.github.readfall.script.align.SequenceAlignment;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Finds the cues of a script for earlier translations: by text, speaker and neighbours; an id only
 * decides between equals.
 */
public final class CueAlignment {

  private CueAlignment() {}

  /**
   * An earlier translation.
   *
   * @param id in its file
   * @param speaker if the file names one
   * @param source its words, with the script's markup
   */
  public record Former(String id, Optional<String> speaker, String source) {}

  /**
   * The index of the earlier translation for each translated cue, by the cue's id.
   *
   * @param formers in the order of their file
   */
  public static Map<String, Integer> of(List<Former> formers, Script script) {
    boolean named = formers.stream().allMatch(former -> former.speaker().isPresent());
    List<Cue> cues = script.cues();
    List<ComparedLine> olds =
        formers.stream()
            .map(
                f ->
                    line(
                        f.id(), named ? f.speaker().orElse("") : "", MarkupReader.text(f.source())))
            .toList();
    List<ComparedLine> nows =
        cues.stream().map(cue -> line(cue.id(), named ? cue.names() : "", cue.text())).toList();
    int[] pairs = CueMatcher.match(olds, nows);
    Map<String, Integer> found = new HashMap<>();
    for (int i = 0; i < pairs.length; i++) {
      if (pairs[i] != SequenceAlignment.NONE) {
        found.put(cues.get(pairs[i]).id(), i);
      }
    }
    return Map.copyOf(found);
  }

  /** Panels come and go, and no file says which was which: all lines are as of one. */
  private static ComparedLine line(String id, String speaker, CueText text) {
    return ComparedLine.of(id, 0, speaker, text.plain());
  }
}
