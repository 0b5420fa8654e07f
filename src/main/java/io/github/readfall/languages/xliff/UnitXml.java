package io.github.readfall.languages.xliff;

import io.github.readfall.languages.translate.State;
import io.github.readfall.languages.translate.TranslatedCue;
import io.github.readfall.languages.xml.XmlEscapes;
import io.github.readfall.script.MarkupReader;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Writes a unit of our own. */
final class UnitXml {

  private static final String STEP = "  ";
  private static final String SEGMENT = "s1";

  private final Prefixes prefixes;
  private final String space;

  /**
   * Units at a place.
   *
   * @param space the line end and the spaces before a unit there
   */
  UnitXml(Prefixes prefixes, String space) {
    this.prefixes = prefixes;
    this.space = space;
  }

  /** The unit of a cue, with the white space before it. */
  String of(String id, TranslatedCue cue, OwnWords own) {
    String in = space + STEP;
    String core = prefixes.core();
    StringBuilder xml = new StringBuilder();
    xml.append(space).append('<').append(core).append("unit").append(prefixes.declaration());
    xml.append(" id=\"").append(id).append('"');
    own.restriction()
        .ifPresent(most -> xml.append(" " + prefixes.slr() + "sizeRestriction=\"" + most + "\""));
    xml.append('>');
    own.balloon(prefixes.slr()).ifPresent(balloon -> xml.append(in).append(balloon));
    xml.append(in).append('<').append(core).append("notes>").append(own.notes(core, in + STEP));
    xml.append(in).append("</").append(core).append("notes>");
    segment(xml, cue, own);
    return xml.append(space).append("</").append(core).append("unit>").toString();
  }

  private void segment(StringBuilder xml, TranslatedCue cue, OwnWords own) {
    String in = space + STEP;
    String core = prefixes.core();
    InlineText source = InlineText.of(cue.cue().text());
    InlineText target = InlineText.of(MarkupReader.text(cue.target()));
    Set<Sign> signs = new LinkedHashSet<>(signs(source));
    if (!signs.isEmpty()) {
      signs.addAll(signs(target));
    }
    data(xml, signs);
    boolean hasData = !signs.isEmpty();
    SignPool pool = new SignPool(List.of(), Set.of(SEGMENT), hasData);
    String said = element("source", source, pool);
    xml.append(in).append('<').append(core).append("segment id=\"" + SEGMENT + "\"");
    xml.append(state(cue, own)).append('>').append(in + STEP).append(said);
    if (cue.isTranslated()) {
      SignPool again = new SignPool(pool.handedOut(), Set.of(SEGMENT), hasData);
      xml.append(in + STEP).append(element("target", target, again));
    }
    xml.append(in).append("</").append(core).append("segment>");
  }

  private static String state(TranslatedCue cue, OwnWords own) {
    if (own.former().isPresent()) {
      return " state=\"initial\" subState=\"" + Names.STALE + "\"";
    }
    State state = cue.isTranslated() ? cue.state() : State.INITIAL;
    return " state=\"" + state.word() + "\"";
  }

  /** The script's own notation of each sign, so that other programs can show it. */
  private void data(StringBuilder xml, Set<Sign> signs) {
    if (signs.isEmpty()) {
      return;
    }
    String in = space + STEP;
    String core = prefixes.core();
    xml.append(in).append('<').append(core).append("originalData>");
    signs.stream()
        .sorted()
        .forEach(
            sign ->
                xml.append(in + STEP)
                    .append('<')
                    .append(core)
                    .append("data id=\"")
                    .append(sign.dataId())
                    .append("\" xml:space=\"preserve\">")
                    .append(XmlEscapes.text(sign.written()))
                    .append("</")
                    .append(core)
                    .append("data>"));
    xml.append(in).append("</").append(core).append("originalData>");
  }

  private String element(String name, InlineText text, SignPool pool) {
    String tag = prefixes.core() + name;
    return "<" + tag + ">" + InlineWriter.write(text, pool, prefixes.core()) + "</" + tag + ">";
  }

  private static Set<Sign> signs(InlineText text) {
    Set<Sign> signs = new LinkedHashSet<>();
    if (text.plain().indexOf('\n') >= 0) {
      signs.add(Sign.BREAK);
    }
    for (Sign sign : List.of(Sign.STRONG, Sign.SLANTED)) {
      if (text.looks().chars().anyMatch(look -> (look & sign.look()) != 0)) {
        signs.add(sign);
      }
    }
    return signs;
  }
}
