package io.github.readfall.languages.xliff;

import io.github.readfall.languages.translate.CueContext;
import io.github.readfall.languages.translate.Neighbours;
import io.github.readfall.languages.translate.State;
import io.github.readfall.languages.translate.TranslatedCue;
import io.github.readfall.languages.translate.Translation;
import io.github.readfall.languages.xml.XmlDocument;
import io.github.readfall.languages.xml.XmlEdit;
import io.github.readfall.languages.xml.XmlElement;
import io.github.readfall.languages.xml.XmlFault;
import io.github.readfall.script.Cue;
import io.github.readfall.script.CueText;
import io.github.readfall.script.MarkupReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Brings a kept file up to date for a translator: the present words of the script, the context of
 * each cue, and nothing else.
 */
public final class Refresh {

  private final Matched matched;
  private final XmlDocument document;
  private final Map<String, CueContext> contexts;
  private final Translation translation;
  private final List<XmlEdit> edits = new ArrayList<>();

  private Refresh(Matched matched, String language, Map<String, CueContext> contexts) {
    this.matched = matched;
    this.document = matched.xliff().document();
    this.contexts = contexts;
    this.translation = matched.translation(language);
  }

  /**
   * A file to be sent out.
   *
   * @param matched every cue has a unit
   * @param language a BCP 47 tag, used if the file names none
   * @param contexts of the cues, by their ids
   * @throws XmlFault if the file cannot be changed so
   */
  public static Xliff of(Matched matched, String language, Map<String, CueContext> contexts)
      throws XmlFault {
    return new Refresh(matched, language, contexts).fresh();
  }

  private Xliff fresh() throws XmlFault {
    XmlElement root = document.root();
    if (matched.xliff().targetLanguage().isEmpty()) {
      edits.add(XmlEdit.attribute(root, "trgLang", translation.language()));
    }
    boolean sized =
        isCountedInCodePoints()
            && contexts.values().stream().anyMatch(context -> context.budget().isPresent());
    if (sized) {
      matched.xliff().files().forEach(this::profiles);
    }
    for (TranslatedCue cue : translation.cues()) {
      matched.unit(cue.cue()).ifPresent(unit -> unit(cue, unit));
    }
    return edits.isEmpty() ? matched.xliff() : XliffReader.read(document.with(edits));
  }

  /**
   * Returns true if no file counts by a profile in which our restrictions would mean something
   * else.
   */
  private boolean isCountedInCodePoints() {
    return matched.xliff().files().stream()
        .flatMap(file -> file.elements(Names.SLR, "profiles"))
        .flatMap(profiles -> profiles.attribute("generalProfile").stream())
        .allMatch(Names.CODEPOINTS::equals);
  }

  private void profiles(XmlElement file) {
    if (file.elements(Names.SLR, "profiles").findFirst().isEmpty()) {
      Optional<XmlElement> skeleton = file.elements(Names.CORE, "skeleton").findFirst();
      int at = skeleton.map(XmlElement::end).orElse(file.startTagEnd());
      Prefixes prefixes = Prefixes.in(file.scope(), matched.xliff().prefix());
      edits.add(XmlEdit.insert(at, XliffWriter.profiles(prefixes, "\n    ")));
    }
  }

  private void unit(TranslatedCue translated, Unit unit) {
    Cue cue = translated.cue();
    OwnWords own =
        new OwnWords(
            cue,
            contexts.getOrDefault(cue.id(), CueContext.NONE),
            Neighbours.of(cue, matched.script()),
            translated.formerSource());
    XmlElement element = unit.element();
    Prefixes prefixes = Prefixes.in(element.scope(), matched.xliff().prefix());
    if (isCountedInCodePoints()) {
      restriction(element, own, prefixes);
    }
    String space = childSpace(element);
    String balloon = balloon(element, own, prefixes, space);
    notes(element, own, prefixes, space, balloon);
    source(translated, unit);
  }

  private void restriction(XmlElement element, OwnWords own, Prefixes prefixes) {
    String name = prefixes.slr() + "sizeRestriction";
    own.restriction()
        .filter(most -> element.attribute(name).filter(most::equals).isEmpty())
        .ifPresent(most -> edits.add(XmlEdit.attribute(element, name, most)));
    if (own.restriction().isPresent() && !prefixes.declaration().isEmpty()) {
      int nameEnd = element.start() + 1 + element.name().length();
      edits.add(XmlEdit.insert(nameEnd, prefixes.declaration()));
    }
  }

  /** The balloon to be put in, with the white space before it, in place of the former one. */
  private String balloon(XmlElement element, OwnWords own, Prefixes prefixes, String space) {
    Optional<XmlElement> old =
        element
            .elements(Names.SLR, "data")
            .filter(
                data -> data.attribute("profile").filter(Names.BALLOON_PROFILE::equals).isPresent())
            .findFirst();
    Prefixes known =
        isCountedInCodePoints() && own.restriction().isPresent() ? undeclared(prefixes) : prefixes;
    Optional<String> now = own.balloon(known.slr());
    boolean same = old.map(document::written).equals(now);
    if (same || now.isEmpty()) {
      return "";
    }
    old.ifPresent(data -> edits.add(XmlEdit.without(document.text(), data)));
    return space + declared(now.get(), known);
  }

  private static Prefixes undeclared(Prefixes prefixes) {
    return new Prefixes(prefixes.core(), prefixes.slr(), "");
  }

  private static String declared(String balloon, Prefixes prefixes) {
    int nameEnd = balloon.indexOf(' ');
    return balloon.substring(0, nameEnd) + prefixes.declaration() + balloon.substring(nameEnd);
  }

  /** Our present notes, in the place of the former ones, after everything that precedes notes. */
  private void notes(
      XmlElement element, OwnWords own, Prefixes prefixes, String space, String balloon) {
    Optional<XmlElement> notes = element.elements(Names.CORE, "notes").findFirst();
    String inner = space + "  ";
    if (notes.isEmpty()) {
      String core = prefixes.core();
      edits.add(
          XmlEdit.insert(
              beforeContent(element),
              balloon
                  + space
                  + "<"
                  + core
                  + "notes>"
                  + own.notes(core, inner)
                  + space
                  + "</"
                  + core
                  + "notes>"));
      return;
    }
    if (!balloon.isEmpty()) {
      edits.add(XmlEdit.insert(beforeContent(element), balloon));
    }
    List<XmlElement> old = notes.get().elements().filter(Refresh::isOurs).toList();
    StringBuilder was = new StringBuilder();
    old.forEach(note -> was.append(inner).append(document.written(note)));
    String now = own.notes(prefixes.core(), inner);
    if (!now.contentEquals(was)) {
      old.forEach(note -> edits.add(XmlEdit.without(document.text(), note)));
      edits.add(XmlEdit.insert(notes.get().startTagEnd(), now));
    }
  }

  private static boolean isOurs(XmlElement note) {
    return note.attribute("id").filter(id -> id.startsWith(OwnWords.MARK)).isPresent();
  }

  /**
   * The place of notes: after the content of other modules, before the notes or what follows them.
   */
  private int beforeContent(XmlElement element) {
    XmlElement first =
        element
            .elements()
            .filter(child -> child.namespace().equals(Names.CORE))
            .findFirst()
            .orElseThrow();
    int at = first.start();
    while (Character.isWhitespace(document.text().charAt(at - 1))) {
      at--;
    }
    return at;
  }

  private String childSpace(XmlElement element) {
    int at = beforeContent(element);
    int end = at;
    while (Character.isWhitespace(document.text().charAt(end))) {
      end++;
    }
    String space = document.text().substring(at, end);
    return space.startsWith("\n") || space.startsWith("\r\n") ? space : "\n        ";
  }

  /** The words that the script has now; a target made from others is a draft again. */
  private void source(TranslatedCue translated, Unit unit) {
    CueText words = translated.cue().text();
    if (Matched.isSame(words, MarkupReader.text(unit.source()))) {
      return;
    }
    TargetEdit edit = new TargetEdit(document, unit);
    edits.addAll(edit.toSource(words));
    if (!translated.isTranslated()) {
      return;
    }
    for (Part part : unit.parts()) {
      if (part.isSegment()) {
        part.element()
            .written("state")
            .ifPresent(state -> edits.add(XmlEdit.without(document.text(), state)));
        part.element()
            .written("subState")
            .ifPresent(state -> edits.add(XmlEdit.without(document.text(), state)));
        int nameEnd = part.element().start() + 1 + part.element().name().length();
        String stale = " state=\"" + State.INITIAL.word() + "\" subState=\"" + Names.STALE + "\"";
        edits.add(XmlEdit.insert(nameEnd, stale));
      }
    }
  }
}
