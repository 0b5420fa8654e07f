package io.github.readfall.rules.voice;

import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.script.Cue;
import io.github.readfall.script.CueKind;
import io.github.readfall.script.Letters;
import io.github.readfall.script.Manner;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A speaker with manners in a language: balloons that share these are lettered alike.
 *
 * @param speaker as names are compared
 * @param kind of the cue
 * @param manners those that change the look of letters or may do so
 * @param language BCP 47 tag
 */
record VoiceKey(String speaker, CueKind kind, Set<Manner> manners, String language) {

  /** Manners that say how a balloon is put together or continued, not how it sounds. */
  private static final Set<Manner> SILENT = Set.of(Manner.JOINED, Manner.CONTINUED);

  static VoiceKey of(SetBalloon balloon) {
    Cue cue = balloon.cue();
    Set<Manner> manners =
        cue.manners().stream()
            .filter(manner -> !SILENT.contains(manner))
            .collect(Collectors.toUnmodifiableSet());
    return new VoiceKey(Letters.fold(cue.speaker()), cue.kind(), manners, balloon.language().tag());
  }
}
