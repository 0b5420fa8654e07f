package io.github.readfall.script;

import java.util.List;

/**
 * Reads a script. Nothing that is written makes it fail: what is wrong is a finding, and the rest
 * is still read.
 *
 * <p>A cue is {@code NAME: text} or {@code NAME (manner, manner): text}, with the name in capitals,
 * in a script that has none, or in the cast; a name alone on its line takes the lines below it. It
 * runs on to a blank line or the next cue, panel or scene.
 */
public final class ScriptReader {

  /** Reads a text as it is in the file, with or without U+FEFF at its start. */
  public ReadScript read(String text, Keywords keywords) {
    boolean mark = text.startsWith("\uFEFF");
    List<WrittenLine> written = WrittenLine.split(text, mark ? 1 : 0);
    FindingList findings = new FindingList();
    HeaderReader.Top top = new HeaderReader(keywords, findings).read(written);
    Speakers speakers = new Speakers(keywords, top.cast());
    List<ReadLine> lines = new LineClassifier(keywords, speakers).classify(written, top);
    PanelList panels = new PanelList(keywords, new CueReader(keywords, speakers, findings));
    panels.read(lines, findings);
    Script script =
        new Script(
            top.headers(),
            panels.scenes(),
            panels.panels(),
            top.cast().members(),
            top.value("Title"),
            top.value("Episode"),
            LanguageTag.read(top, findings),
            mark,
            lines.stream().map(ReadLine::source).toList(),
            keywords);
    new Strays(speakers, findings).check(lines, script.panels().size());
    new NearMisses(keywords, speakers, findings).check(lines, script.cues());
    new CharacterChecks(findings).check(lines);
    return new ReadScript(script, findings.sorted());
  }
}
