package io.github.readfall.export.transcript;

import io.github.readfall.script.Cue;
import io.github.readfall.script.Panel;
import io.github.readfall.script.Scene;
import io.github.readfall.script.Script;
import io.github.readfall.script.ShotHints;
import io.github.readfall.script.read.JoinedLines;
import io.github.readfall.strip.galley.Galley;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Makes a transcript: every cue of the script once, in its order, whether it is set or not. */
public final class Transcriber {

  private final Script script;
  private final Original original;

  private Transcriber(Script script, Original original) {
    this.script = script;
    this.original = original;
  }

  /** The transcript of a strip, which notes where its reading order is another. */
  public static Transcript of(Galley galley, Original original) {
    return of(galley.set().script(), original, OrderNote.of(galley));
  }

  /**
   * The transcript of a script.
   *
   * @param script in the wanted language
   * @param asides further sentences
   */
  static Transcript of(Script script, Original original, List<String> asides) {
    return new Transcript(
        script.title(),
        script.episode(),
        script.language(),
        original.language(),
        new Transcriber(script, original).scenes(),
        asides);
  }

  /** The scenes. Panels that belong to no scene come where they are written, without a heading. */
  private List<TranscribedScene> scenes() {
    List<TranscribedScene> scenes = new ArrayList<>();
    List<Panel> together = new ArrayList<>();
    for (Panel panel : script.panels()) {
      if (!together.isEmpty() && !together.get(0).scene().equals(panel.scene())) {
        scenes.add(scene(together));
        together.clear();
      }
      together.add(panel);
    }
    if (!together.isEmpty()) {
      scenes.add(scene(together));
    }
    return scenes;
  }

  private TranscribedScene scene(List<Panel> panels) {
    Optional<Integer> number = panels.get(0).scene();
    String place =
        script.scenes().stream()
            .filter(scene -> number.filter(n -> n == scene.number()).isPresent())
            .map(Scene::heading)
            .findFirst()
            .orElse("");
    return new TranscribedScene(
        number.map(OptionalInt::of).orElse(OptionalInt.empty()),
        place,
        panels.stream().map(this::panel).toList());
  }

  private TranscribedPanel panel(Panel panel) {
    ShotHints hints = panel.hints();
    String label = panel.label().equals(Integer.toString(panel.number())) ? "" : panel.label();
    return new TranscribedPanel(
        panel.number(),
        label,
        Vocabulary.shot(hints),
        hints.description(),
        JoinedLines.of(panel.description()),
        panel.cues().stream().map(this::line).toList());
  }

  private TranscribedLine line(Cue cue) {
    return new TranscribedLine(
        cue.id(),
        Vocabulary.who(cue, script.keywords()),
        Vocabulary.how(cue, script.keywords()),
        original.kept().contains(cue.id()) ? original.language() : script.language(),
        Words.of(cue.text()));
  }
}
