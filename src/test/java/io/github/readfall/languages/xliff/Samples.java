package io.github.readfall.languages.xliff;

import io.github.readfall.languages.translate.BalloonFacts;
import io.github.readfall.languages.translate.Budget;
import io.github.readfall.languages.translate.CueContext;
import io.github.readfall.languages.translate.State;
import io.github.readfall.languages.translate.TranslatedCue;
import io.github.readfall.languages.translate.Translation;
import io.github.readfall.languages.xml.XmlDocument;
import io.github.readfall.languages.xml.XmlEncoding;
import io.github.readfall.languages.xml.XmlFault;
import io.github.readfall.script.Keywords;
import io.github.readfall.script.Script;
import io.github.readfall.script.read.ScriptReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Scripts and files that several tests work on. */
final class Samples {

  /** A script with every sign, a double, and what XML must escape. */
  static final String SCRIPT =
      """
      Title: Low Water
      Language: en

      PANEL 1  long shot
      A ferry on mud. Rain & wind.

      CAPTION: Nobody had <rowed> since spring & nobody would.
      ILSE (thought): It is *counting* again. / And _loudly_.
      SFX (drawn): KRRANK

      PANEL 2
      BOTH: No.
      ILSE: *_Never_ in my* life. 2 * 3 and a_b and "so".
      BOTH: No.
      """;

  private Samples() {}

  static Script script(String text) {
    return new ScriptReader().read(text, Keywords.ENGLISH).script();
  }

  static Script script() {
    return script(SCRIPT);
  }

  static List<Script> episodes() throws IOException {
    Path series = Path.of("sample-scripts/overdue-tide");
    return List.of(
        script(),
        script(Files.readString(series.resolve("ep01/script.txt"))),
        script(Files.readString(series.resolve("ep02/script.txt"))));
  }

  /** The words again in brackets, every second one read by another. */
  static Translation echoed(Script script) {
    return new Translation(
        "de",
        script.cues().stream()
            .map(
                cue ->
                    new TranslatedCue(
                        cue,
                        "[" + cue.text().raw() + "]",
                        cue.number() % 2 == 0 ? State.REVIEWED : State.TRANSLATED,
                        Optional.empty()))
            .toList());
  }

  static Map<String, CueContext> contexts(Script script) {
    Map<String, CueContext> contexts = new HashMap<>();
    script
        .cues()
        .forEach(
            cue ->
                contexts.put(
                    cue.id(),
                    new CueContext(
                        Optional.of(new Budget(20, 400)),
                        Optional.of(new BalloonFacts("ellipse", 400.25, 210, 64)),
                        Optional.of("de-balloons/" + cue.id() + ".png"))));
    return contexts;
  }

  static Xliff read(String text) throws XmlFault {
    return XliffReader.read(text.getBytes(StandardCharsets.UTF_8));
  }

  static Matched matched(String text, Script script) throws XmlFault {
    return Matched.of(XliffReader.read(XmlDocument.of(XmlEncoding.UTF_8, text)), script);
  }

  static String text(Matched matched) {
    return matched.xliff().document().text();
  }

  /** A file from elsewhere, in a style of its own. */
  static String foreign() throws IOException {
    return Files.readString(Path.of("src/test/resources/xliff/foreign.xlf"));
  }
}
