package io.github.readfall.export.transcript;

import io.github.readfall.base.wording.Wording;
import io.github.readfall.type.text.Languages;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A transcript as plain text, a paragraph to a line. */
public final class TranscriptText {

  private static final String INDENT = "    ";

  private TranscriptText() {}

  /** The whole text. */
  public static String of(Transcript transcript) {
    StringBuilder out = new StringBuilder();
    line(out, transcript.name());
    String language = TranscriptHtml.languageName(transcript.language());
    line(out, Wording.of("transcript.about") + ", " + language);
    transcript.asides().forEach(aside -> line(out, aside));
    for (TranscribedScene scene : transcript.scenes()) {
      if (scene.number().isPresent()) {
        out.append('\n');
        String number = Wording.of("transcript.scene", scene.number().getAsInt());
        line(out, followed(number.toUpperCase(Locale.ROOT), scene.place()));
      }
      scene.panels().forEach(panel -> panel(out, panel));
    }
    return out.toString();
  }

  private static void panel(StringBuilder out, TranscribedPanel panel) {
    out.append('\n');
    List<String> seen = new ArrayList<>(panel.shot());
    if (!panel.shotNote().isEmpty()) {
      seen.add(panel.shotNote());
    }
    String number = Wording.of("transcript.panel", panel.number());
    String name = panel.label().isEmpty() ? number : number + " (" + panel.label() + ")";
    line(out, followed(name, String.join(", ", seen)));
    if (!panel.drawn().isEmpty()) {
      line(out, INDENT + panel.drawn());
    }
    panel.lines().forEach(said -> said(out, said));
  }

  /**
   * Writes a line. Text read from the right has a line of its own, so that no name turns it round.
   */
  private static void said(StringBuilder out, TranscribedLine said) {
    String how = said.how().isEmpty() ? "" : " (" + String.join(", ", said.how()) + ")";
    boolean isOwn = Languages.of(said.language()).rightToLeft();
    line(out, INDENT + said.who() + how + (isOwn ? ":\n" : ": ") + said.said());
  }

  private static String followed(String name, String more) {
    return more.isEmpty() ? name : name + ": " + more;
  }

  private static void line(StringBuilder out, String line) {
    out.append(line).append('\n');
  }
}
