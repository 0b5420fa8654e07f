package io.github.readfall.script.read;

import io.github.readfall.script.Keywords;
import io.github.readfall.script.Script;
import io.github.readfall.script.check.CharacterChecks;
import io.github.readfall.script.check.NearMisses;
import io.github.readfall.script.check.StrayLines;
import io.github.readfall.script.check.UnreadCues;
import io.github.readfall.script.lines.ClassifiedLine;
import io.github.readfall.script.lines.ClassifiedLines;
import io.github.readfall.script.lines.FindingList;
import io.github.readfall.script.lines.HeaderReader;
import io.github.readfall.script.lines.LanguageTag;
import io.github.readfall.script.lines.Speakers;
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
    FindingList findings = new FindingList();
    ClassifiedLines classified = ClassifiedLines.of(text, keywords, findings);
    HeaderReader.Top top = classified.top();
    Speakers speakers = classified.speakers();
    List<ClassifiedLine> lines = classified.lines();
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
            ClassifiedLines.hasMark(text),
            lines.stream().map(ClassifiedLine::source).toList(),
            keywords);
    new StrayLines(speakers, findings).check(lines, script.panels().size());
    new NearMisses(keywords, speakers, findings).check(lines);
    new UnreadCues(speakers, findings).check(lines, script.cues());
    new CharacterChecks(findings).check(lines);
    return new ReadScript(script, findings.sorted());
  }
}
