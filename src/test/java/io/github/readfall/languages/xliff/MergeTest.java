package io.github.readfall.languages.xliff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.languages.translate.State;
import io.github.readfall.languages.translate.TranslatedCue;
import io.github.readfall.languages.xml.XmlFault;
import io.github.readfall.script.Cue;
import io.github.readfall.script.MarkupReader;
import io.github.readfall.script.Script;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.xml.sax.SAXException;

/** What others wrote stays as they wrote it; what the script lacks or has anew is told apart. */
class MergeTest {

  private final Path folder;

  MergeTest(@TempDir Path folder) {
    this.folder = folder;
  }

  private static Matched merged(String text, Script script) throws XmlFault {
    return Merge.of(Samples.matched(text, script), Optional.empty(), Map.of());
  }

  private static Cue cue(Script script, String id) {
    return script.cue(id).orElseThrow();
  }

  /** The lines of a text that another has not. */
  private static List<String> linesNotIn(String text, String other) {
    List<String> there = other.lines().toList();
    return text.lines().filter(line -> !there.contains(line)).toList();
  }

  @Test
  void aForeignFileIsFoundByItsWordsWhateverItsIds() throws IOException, XmlFault {
    Script script = Samples.script();
    Matched read = Samples.matched(Samples.foreign(), script);
    TranslatedCue counting = read.translation("de").cue("p1-2").orElseThrow();
    assertEquals("Er *zählt* wieder. Und laut.", counting.target());
    assertEquals(State.INITIAL, counting.state(), "as far as its second segment");
    assertEquals("u1", read.unit(cue(script, "p1-1")).orElseThrow().id());
    assertEquals(List.of("old"), read.gone().stream().map(Unit::id).toList());
  }

  @Test
  void aForeignFileKeepsEveryLineItHas() throws IOException, XmlFault, SAXException {
    String foreign = Samples.foreign();
    String text = Samples.text(merged(foreign, Samples.script()));
    assertEquals(List.of(), linesNotIn(foreign, text));
    assertTrue(text.indexOf("id=\"p1-3\"") > text.indexOf("id=\"u99\""), "behind its neighbour");
    assertEquals(Optional.empty(), Schemas.in(folder).fault(text));
  }

  @Test
  void aWholeForeignFileGoesRoundUnchanged() throws IOException, XmlFault {
    Script script =
        lines(
            "A: It is *counting* again. And loudly./A: Nobody had <rowed> since spring & nobody"
                + " would./A: Off with the tide.");
    String foreign = Samples.foreign();
    assertEquals(foreign, Samples.text(merged(foreign, script)));
    String out = Refresh.of(merged(foreign, script), "de", Map.of()).document().text();
    Matched in = Merge.of(Samples.matched(out, script), Optional.empty(), Map.of());
    assertEquals(out, Samples.text(in));
    assertEquals(out, Refresh.of(in, "de", Map.of()).document().text());
  }

  @Test
  void aForeignFileThatIsSentOutHasBudgetsAndIsValid() throws IOException, XmlFault, SAXException {
    Script script = Samples.script();
    Map<String, io.github.readfall.languages.translate.CueContext> contexts =
        Samples.contexts(script);
    Matched whole = merged(Samples.foreign(), script);
    String out = Refresh.of(whole, "de", contexts).document().text();
    assertEquals(Optional.empty(), Schemas.in(folder).fault(out));
    Matched in = Merge.of(Samples.matched(out, script), Optional.empty(), Map.of());
    assertEquals(out, Refresh.of(in, "de", contexts).document().text());
    assertEquals("ILSE", in.unit(cue(script, "p1-2")).orElseThrow().note("speaker").orElse(""));
  }

  @Test
  void anotherTargetChangesNothingElse() throws IOException, XmlFault {
    Script script = Samples.script();
    Matched read = Samples.matched(Samples.foreign(), script);
    String now =
        Samples.text(
            read.withTarget(
                cue(script, "p1-2"), "Er *rechnet* wieder. Und laut.", State.TRANSLATED));
    String foreign = Samples.foreign();
    assertEquals(
        List.of(
            "      <x:segment id=\"a\" state=\"translated\">",
            "        <x:target>Er <x:pc id=\"7\" type=\"fmt\" subType=\"xlf:b\">rechnet</x:pc>"
                + " wieder.</x:target>",
            "      <x:segment state=\"translated\" id=\"c\">"),
        linesNotIn(now, foreign));
    assertEquals(foreign.lines().count(), now.lines().count());
  }

  @Test
  void aStateAloneTouchesNoWords() throws IOException, XmlFault {
    Script script = Samples.script();
    Matched read = Samples.matched(Samples.foreign(), script);
    String target = read.unit(cue(script, "p1-2")).orElseThrow().target();
    String now = Samples.text(read.withTarget(cue(script, "p1-2"), target, State.REVIEWED));
    assertEquals(
        List.of("      <x:segment state=\"reviewed\" id=\"c\">"),
        linesNotIn(now, Samples.foreign()));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          A <ph id="1"/>b c|A b d|A <ph id="1"/>b d
          <mrk id="1" type="term">One</mrk> two|Eins zwei|<mrk id="1" type="term">Eins</mrk> zwei
          <pc id="1">All of it</pc>|Das alles|<pc id="1">Das alles</pc>
          Go <sc id="1"/>now<ec startRef="1"/>!|Geh *jetzt*!|Geh <sc id="1"/><pc id="b1" type="fmt" subType="xlf:b">jetzt</pc><ec startRef="1"/>!
          a<!-- c --> b<cp hex="0007"/>|a bx|a<!-- c --> bx<cp hex="0007"/>
          <sc id="1" type="fmt" subType="xlf:b"/>So<ec startRef="1"/> what|*Na* und|<pc id="1" type="fmt" subType="xlf:b">Na</pc> und
          x|a / b|a<ph id="lb1" type="fmt" subType="xlf:lb"/>b
          """)
  void codesOfOthersKeepTheirPlace(String target, String raw, String wanted) throws XmlFault {
    String xml =
        "<xliff xmlns='urn:oasis:names:tc:xliff:document:2.0' version='2.1' srcLang='en'"
            + " trgLang='de'><file id='f'><unit id='u'><segment><source>Hm.</source><target>"
            + target
            + "</target></segment></unit></file></xliff>";
    Script script = Samples.script("PANEL 1\nA: Hm.\n");
    Matched changed =
        Samples.matched(xml, script).withTarget(script.cues().get(0), raw, State.INITIAL);
    Unit unit = changed.xliff().units().get(0);
    String written =
        changed.xliff().document().written(unit.parts().get(0).targetElement().orElseThrow());
    assertEquals("<target>" + wanted + "</target>", written);
    assertEquals(MarkupReader.text(raw).plain(), MarkupReader.text(unit.target()).plain());
  }

  /** Each script is what the first has become. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          inserted|A: One here./B: No./A: New words entirely, these./B: Three there./A: No.|1,2,-,3,4
          deleted|A: One here./B: Three there./A: No.|1,3,4
          moved|B: Three there./A: One here./B: No./A: No.|3,1,2,4
          reworded|A: One was here./B: No./B: Three there now./A: No.|1,2,3,4
          doubled|A: One here./B: No./B: No./B: Three there./A: No.|1,2,-,3,4
          others|A: Quite something else./B: No./B: Three there./A: No.|1,2,3,4
          """)
  void linesAreFoundAgain(String what, String lines, String wanted) throws XmlFault {
    Script then = lines("A: One here./B: No./B: Three there./A: No.");
    String file = XliffWriter.write(then, Samples.echoed(then), Map.of()).document().text();
    List<String> old = then.cues().stream().map(Cue::id).toList();
    Script now = lines(lines);
    Matched found = merged(file, now);
    List<String> ids =
        now.cues().stream()
            .map(cue -> found.unit(cue).orElseThrow())
            .map(unit -> unit.hasTarget() ? "" + (old.indexOf(unit.id()) + 1) : "-")
            .toList();
    assertEquals(List.of(wanted.split(",")), ids, what);
    long stale = found.translation("de").cues().stream().filter(TranslatedCue::isStale).count();
    assertEquals(what.equals("reworded") ? 2 : what.equals("others") ? 1 : 0, stale);
  }

  private static Script lines(String lines) {
    return Samples.script("PANEL 1\n" + lines.replace('/', '\n') + "\n");
  }

  @Test
  void whatIsKeptAndNotInANewFileStays() throws XmlFault {
    Script script = lines("A: One here./B: Two, two./A: Three is three.");
    String old = XliffWriter.write(script, Samples.echoed(script), Map.of()).document().text();
    Script part = lines("A: One here.");
    String partial =
        XliffWriter.write(part, Samples.echoed(part), Map.of())
            .document()
            .text()
            .replace("[One here.]", "Eins.")
            .replace("\"p1-1\"", "\"p1-2\"");
    Matched kept = Samples.matched(old, script);
    Matched both = Merge.of(Samples.matched(partial, script), Optional.of(kept), Map.of());
    assertEquals(
        List.of("Eins.", "[Two, two.]", "[Three is three.]"),
        both.translation("de").cues().stream().map(TranslatedCue::target).toList());
    assertEquals(
        List.of("p1-2", "p1-2.2", "p1-3"), both.xliff().units().stream().map(Unit::id).toList());
    assertEquals(State.REVIEWED, both.translation("de").cues().get(1).state());
  }

  @Test
  void prefixesOfAKeptFileHoldInTheNewOne() throws IOException, XmlFault, SAXException {
    Script script = Samples.script();
    Script other = lines("A: Something else.");
    String fresh = XliffWriter.write(other, Samples.echoed(other), Map.of()).document().text();
    Matched kept = Samples.matched(Samples.foreign(), script);
    String text =
        Samples.text(Merge.of(Samples.matched(fresh, script), Optional.of(kept), Map.of()));
    assertEquals(Optional.empty(), Schemas.in(folder).fault(text));
    assertTrue(text.contains("Fort mit der Flut."), text);
    assertTrue(text.contains("<![CDATA[ <raw> & kept ]]>"), text);
  }

  @Test
  void aChangedLineGoesOutStaleAndComesBackFreshWhenItIsTranslatedAnew()
      throws IOException, XmlFault, SAXException {
    Script then = lines("A: The tide is late./B: No.");
    Matched kept =
        Samples.matched(
            XliffWriter.write(then, Samples.echoed(then), Map.of()).document().text(), then);
    Script now = lines("A: The tide is very late./B: No.");
    Matched seen = merged(Samples.text(kept), now);
    assertEquals(
        Optional.of("The tide is late."), seen.translation("de").cues().get(0).formerSource());
    String out = Refresh.of(seen, "de", Map.of()).document().text();
    assertEquals(Optional.empty(), Schemas.in(folder).fault(out));
    Matched untouched = Merge.of(Samples.matched(out, now), Optional.of(seen), Map.of());
    assertEquals(
        Optional.of("The tide is late."),
        untouched.translation("de").cues().get(0).formerSource(),
        "nobody has looked at it");
    String anew = out.replace("[The tide is late.]", "Sehr spät.");
    Matched back = Merge.of(Samples.matched(anew, now), Optional.of(seen), Map.of());
    assertEquals(Optional.empty(), back.translation("de").cues().get(0).formerSource());
    String approved =
        out.replace("state=\"initial\" subState=\"readfall:stale\"", "state=\"translated\"");
    Matched said = Merge.of(Samples.matched(approved, now), Optional.of(seen), Map.of());
    assertEquals(Optional.empty(), said.translation("de").cues().get(0).formerSource());
  }

  @Test
  void everyFindingHasItsCueAndItsLine() throws XmlFault {
    Script then =
        lines("A: One *here*./B: Two, two./A: Three is three./B: Gone soon enough./A: Five.");
    String file =
        XliffWriter.write(then, Samples.echoed(then), Samples.contexts(then))
            .document()
            .text()
            .replace("\"400\"", "\"9\"")
            .replaceFirst("<pc id=\"b1\"[^>]*>here</pc>\\.]", "here.]")
            .replace("<target>[Five.]</target>", "<target> </target>");
    Script now =
        lines("A: One *here*./B: Two, two./A: Three is three, though./A: Five./B: Wholly new.");
    List<String> found =
        LanguageFindings.of(merged(file, now), "lang/de.xlf", Map.of()).stream()
            .map(f -> f.rule() + " " + f.where().balloons())
            .sorted()
            .toList();
    assertEquals(
        Stream.of(
                "language/codes [p1-1]",
                "language/empty [p1-4]",
                "language/gone []",
                "language/long [p1-1]",
                "language/long [p1-2]",
                "language/long [p1-3]",
                "language/long []",
                "language/missing []",
                "language/stale [p1-3]")
            .sorted()
            .toList(),
        found);
  }
}
