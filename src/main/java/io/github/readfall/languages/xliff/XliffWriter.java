package io.github.readfall.languages.xliff;

import io.github.readfall.languages.translate.CueContext;
import io.github.readfall.languages.translate.Neighbours;
import io.github.readfall.languages.translate.TranslatedCue;
import io.github.readfall.languages.translate.Translation;
import io.github.readfall.languages.xml.XmlDocument;
import io.github.readfall.languages.xml.XmlEncoding;
import io.github.readfall.languages.xml.XmlEscapes;
import io.github.readfall.languages.xml.XmlFault;
import io.github.readfall.script.Cue;
import io.github.readfall.script.Panel;
import io.github.readfall.script.Script;
import java.util.Map;

/** Writes a script and its translation as XLIFF 2.1. */
public final class XliffWriter {

  private static final String FOOT = "\n  </file>\n</xliff>\n";
  private static final String GROUP = "\n    ";
  private static final String UNIT = "\n      ";

  private final Script script;
  private final Translation translation;
  private final Map<String, CueContext> contexts;

  private XliffWriter(Script script, Translation translation, Map<String, CueContext> contexts) {
    this.script = script;
    this.translation = translation;
    this.contexts = contexts;
  }

  /**
   * A new document.
   *
   * @param contexts of the cues, by their ids
   */
  public static Xliff write(
      Script script, Translation translation, Map<String, CueContext> contexts) {
    String text = new XliffWriter(script, translation, contexts).text();
    try {
      return XliffReader.read(XmlDocument.of(XmlEncoding.UTF_8, text));
    } catch (XmlFault e) {
      throw new IllegalStateException("we wrote what we do not read", e);
    }
  }

  private String text() {
    StringBuilder xml = new StringBuilder(head());
    script.panels().forEach(panel -> group(xml, panel));
    return xml.append(FOOT).toString();
  }

  private String head() {
    return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<xliff xmlns=\""
        + Names.CORE
        + "\" xmlns:slr=\""
        + Names.SLR
        + "\" version=\"2.1\" srcLang=\""
        + script.language()
        + "\" trgLang=\""
        + translation.language()
        + "\">\n  <file id=\"script\" original=\"script.txt\">"
        + profiles(Prefixes.OWN, GROUP);
  }

  /** The way sizes are counted, with the white space before it. */
  static String profiles(Prefixes prefixes, String space) {
    String slr = prefixes.slr();
    return space
        + "<"
        + slr
        + "profiles"
        + prefixes.declaration()
        + " generalProfile=\""
        + Names.CODEPOINTS
        + "\" storageProfile=\""
        + Names.UTF8
        + "\">"
        + space
        + "  <"
        + slr
        + "normalization general=\"nfc\" storage=\"nfc\"/>"
        + space
        + "</"
        + slr
        + "profiles>";
  }

  private void group(StringBuilder xml, Panel panel) {
    xml.append(GROUP + "<group id=\"panel-" + panel.number() + "\" name=\"panel ");
    xml.append(panel.number()).append("\">");
    String heading = XmlEscapes.text(panel.heading());
    String description = String.join(" ", panel.description());
    if (!heading.isBlank() || !description.isBlank()) {
      xml.append(UNIT).append("<notes>");
      note(xml, "heading", panel.heading());
      note(xml, "description", description);
      xml.append(UNIT).append("</notes>");
    }
    panel.cues().forEach(cue -> unit(xml, cue));
    xml.append(GROUP).append("</group>");
  }

  private static void note(StringBuilder xml, String category, String text) {
    if (!text.isBlank()) {
      xml.append(UNIT).append("  ").append(OwnWords.note("", category, text));
    }
  }

  private void unit(StringBuilder xml, Cue cue) {
    TranslatedCue translated = translation.cue(cue.id()).orElseThrow();
    CueContext context = contexts.getOrDefault(cue.id(), CueContext.NONE);
    OwnWords own =
        new OwnWords(cue, context, Neighbours.of(cue, script), translated.formerSource());
    xml.append(new UnitXml(Prefixes.OWN, UNIT).of(cue.id(), translated, own));
  }
}
