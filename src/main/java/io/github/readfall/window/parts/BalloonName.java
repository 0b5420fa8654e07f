package io.github.readfall.window.parts;

import io.github.readfall.base.wording.Wording;
import io.github.readfall.script.Cue;
import io.github.readfall.script.Script;
import java.util.List;
import java.util.Locale;

/** Names balloons as people do: {@code Mara's second balloon in panel 3}. */
public final class BalloonName {

  private BalloonName() {}

  /** The name of the balloon of a cue; general if the script has no such cue. */
  public static String of(Script script, String cueId) {
    return script
        .cue(cueId)
        .map(cue -> of(script, cue))
        .orElseGet(() -> Wording.of("balloon.unknown"));
  }

  private static String of(Script script, Cue cue) {
    List<String> ids =
        script.cues().stream().filter(other -> isAlike(cue, other)).map(Cue::id).toList();
    int position = ids.size() > 1 ? ids.indexOf(cue.id()) + 1 : 0;
    String key = "balloon." + cue.kind().name().toLowerCase(Locale.ROOT);
    return Wording.of(key, cue.names(), position, cue.panel());
  }

  private static boolean isAlike(Cue one, Cue other) {
    return one.panel() == other.panel()
        && one.kind() == other.kind()
        && one.speakers().equals(other.speakers());
  }
}
