package io.github.readfall.languages.xliff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.readfall.languages.translate.CueContext;
import io.github.readfall.languages.translate.Translation;
import io.github.readfall.languages.xml.XmlFault;
import io.github.readfall.script.CueText;
import io.github.readfall.script.MarkupReader;
import io.github.readfall.script.Script;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.sf.okapi.lib.xliff2.core.CTag;
import net.sf.okapi.lib.xliff2.core.Segment;
import net.sf.okapi.lib.xliff2.core.Tag;
import net.sf.okapi.lib.xliff2.core.Unit;
import net.sf.okapi.lib.xliff2.reader.Event;
import net.sf.okapi.lib.xliff2.reader.XLIFFReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.xml.sax.SAXException;

/** What we write is XLIFF 2.1 to others too: to the schemas of OASIS and to another library. */
class XliffWriterTest {

  private static final Map<String, CueContext> NOTHING = Map.of();

  private final Path folder;

  XliffWriterTest(@TempDir Path folder) {
    this.folder = folder;
  }

  private static List<Unit> asOthersRead(String xml) {
    List<Unit> units = new ArrayList<>();
    try (XLIFFReader reader = new XLIFFReader(XLIFFReader.VALIDATION_MAXIMAL)) {
      reader.open(xml);
      while (reader.hasNext()) {
        Event event = reader.next();
        if (event.isUnit()) {
          units.add(event.getUnit());
        }
      }
    }
    return units;
  }

  @Test
  void everyFileIsValid() throws IOException, SAXException {
    Schemas schemas = Schemas.in(folder);
    for (Script script : Samples.episodes()) {
      for (Translation translation :
          List.of(Translation.empty("de", script), Samples.echoed(script))) {
        for (Map<String, CueContext> contexts : List.of(NOTHING, Samples.contexts(script))) {
          String xml = XliffWriter.write(script, translation, contexts).document().text();
          assertEquals(Optional.empty(), schemas.fault(xml));
        }
      }
    }
  }

  @Test
  void anotherLibraryReadsTheSameUnitsWordsAndStates() throws IOException {
    for (Script script : Samples.episodes()) {
      Translation translation = Samples.echoed(script);
      Xliff written = XliffWriter.write(script, translation, Samples.contexts(script));
      List<Unit> units = asOthersRead(written.document().text());
      assertEquals(script.cues().size(), units.size());
      for (int i = 0; i < units.size(); i++) {
        Segment segment = units.get(i).getSegment(0);
        CueText source = script.cues().get(i).text();
        CueText target = MarkupReader.text(translation.cues().get(i).target());
        assertEquals(script.cues().get(i).id(), units.get(i).getId());
        assertEquals(source.plain().replace("\n", ""), segment.getSource().getPlainText());
        assertEquals(target.plain().replace("\n", ""), segment.getTarget().getPlainText());
        assertEquals(translation.cues().get(i).state().word(), segment.getState().toString());
      }
    }
  }

  @Test
  void anotherLibraryReadsTheSameInlineCodes() {
    Script script = Samples.script();
    String xml = XliffWriter.write(script, Samples.echoed(script), Map.of()).document().text();
    List<String> codes = new ArrayList<>();
    for (Unit unit : asOthersRead(xml)) {
      for (Tag tag : unit.getSegment(0).getSource().getOwnTags()) {
        codes.add(unit.getId() + " " + tag.getTagType() + " " + ((CTag) tag).getSubType());
      }
    }
    assertEquals(
        List.of(
            "p1-2 OPENING xlf:b",
            "p1-2 CLOSING xlf:b",
            "p1-2 STANDALONE xlf:lb",
            "p1-2 OPENING xlf:i",
            "p1-2 CLOSING xlf:i",
            "p2-2 OPENING xlf:b",
            "p2-2 OPENING xlf:i",
            "p2-2 CLOSING xlf:i",
            "p2-2 CLOSING xlf:b"),
        codes);
  }

  @Test
  void whatIsWrittenIsReadAsItWas() throws IOException {
    for (Script script : Samples.episodes()) {
      Translation translation = Samples.echoed(script);
      Matched read = Matched.of(XliffWriter.write(script, translation, Map.of()), script);
      assertEquals(List.of(), read.gone());
      for (var cue : read.translation("de").cues()) {
        var meant = translation.cue(cue.cue().id()).orElseThrow();
        assertEquals(plain(meant.target()), plain(cue.target()), cue.cue().id());
        assertEquals(
            MarkupReader.text(meant.target()).spans(), MarkupReader.text(cue.target()).spans());
        assertEquals(meant.state(), cue.state());
        assertEquals(Optional.empty(), cue.formerSource());
      }
    }
  }

  private static String plain(String raw) {
    return MarkupReader.text(raw).plain();
  }

  @Test
  void whatIsSentOutAgainIsTheSameToTheByte() throws IOException, XmlFault {
    for (Script script : Samples.episodes()) {
      var contexts = Samples.contexts(script);
      Xliff out = XliffWriter.write(script, Samples.echoed(script), contexts);
      Matched in = Merge.of(Matched.of(out, script), Optional.empty(), Map.of());
      assertEquals(out.document().text(), Samples.text(in));
      assertEquals(out.document().text(), Refresh.of(in, "de", contexts).document().text());
    }
  }

  @Test
  void aUnitSaysWhatATranslatorAsks() {
    Script script = Samples.script();
    Xliff out =
        XliffWriter.write(script, Translation.empty("de", script), Samples.contexts(script));
    io.github.readfall.languages.xliff.Unit unit = out.units().get(1);
    assertEquals("ILSE", unit.note("speaker").orElse(""));
    assertEquals("thought", unit.note("manner").orElse(""));
    assertEquals(
        "CAPTION: Nobody had <rowed> since spring & nobody would.", unit.note("before").orElse(""));
    assertEquals("SFX: KRRANK", unit.note("after").orElse(""));
    assertEquals("20", unit.note("comfortable").orElse(""));
    assertEquals("400", unit.element().attribute("slr:sizeRestriction").orElse(""));
    String text = out.document().written(unit.element());
    assertTrue(text.contains("widthPx=\"400.3\" heightPx=\"210.0\" fontPx=\"64.0\""), text);
    assertEquals("drawn", out.units().get(2).note("manner").orElse(""));
  }
}
