package io.github.readfall.lettering.typeset;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Phrase;
import io.github.readfall.base.finding.Severity;
import io.github.readfall.base.finding.Where;
import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.lettering.style.Look;
import io.github.readfall.script.CueKind;
import io.github.readfall.type.font.Face;
import io.github.readfall.type.font.FaceException;
import io.github.readfall.type.font.FaceFile;
import io.github.readfall.type.font.FontShelf;
import io.github.readfall.type.font.Ornament;
import io.github.readfall.type.text.Coverage;
import io.github.readfall.type.text.FaceChain;
import io.github.readfall.type.text.Language;
import io.github.readfall.type.text.Languages;
import io.github.readfall.type.text.ScriptCode;
import io.github.readfall.type.text.SizedFace;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

/**
 * Finds the faces of a look, and sizes them. Remembers the faces that it found, and those that it
 * did not.
 */
final class VoiceFaces {

  /** Slant of upright letters if a family has no italic. House default, no source. */
  static final double MADE_SLANT_DEG = 11;

  static final int BOLD = 700;

  /** A word that should be bold, in a family that has no bold face. House default, no source. */
  private static final double STRESS_SIZE = 1.15;

  private final FontShelf shelf;
  private final HouseStyle style;
  private final ReadingSize size;
  private final Map<Wish, Optional<Face>> found = new ConcurrentHashMap<>();
  private final Map<Wish, Boolean> suits = new ConcurrentHashMap<>();
  private final Map<String, Finding> findings = new ConcurrentHashMap<>();

  /** A request for a family or file, in a weight and slant. */
  private record Wish(String name, int weight, boolean italic, String script) {}

  /**
   * A cut of a face that a style asks for.
   *
   * @param weight 100 to 900
   * @param italic drawn slanted, or slanted here if the family has no italic
   * @param slantDeg additional slant
   * @param stressed true if weight alone makes it stand out: size does if there is no bold face
   */
  record Cut(int weight, boolean italic, double slantDeg, boolean stressed) {

    Cut(int weight, boolean italic, double slantDeg) {
      this(weight, italic, slantDeg, false);
    }
  }

  VoiceFaces(FontShelf shelf, HouseStyle style) {
    this.shelf = shelf;
    this.style = style;
    this.size = ReadingSize.of(style);
  }

  List<Finding> findings() {
    return findings.values().stream().sorted(Comparator.comparing(Finding::message)).toList();
  }

  /** The face that Latin text of a look is lettered in. */
  Face latin(Look look, CueKind kind, Cut cut) {
    Optional<Face> own = look.face().flatMap(name -> named(name, cut));
    return own.or(() -> named(defaultFamily(kind), cut)).orElseThrow(VoiceFaces::emptyShelf);
  }

  private String defaultFamily(CueKind kind) {
    return kind == CueKind.EFFECT ? shelf.manifest().effects() : shelf.manifest().dialogue();
  }

  private static IllegalStateException emptyShelf() {
    return new IllegalStateException("the bundled dialogue face is not on the shelf");
  }

  private Optional<Face> named(String name, Cut cut) {
    Wish wish = new Wish(name, cut.weight(), cut.italic(), "");
    return found.computeIfAbsent(wish, w -> open(name, shelf.find(name, w.weight(), w.italic())));
  }

  private Optional<Face> open(String name, Optional<FaceFile> file) {
    if (file.isEmpty()) {
      note(
          "voice/face-missing",
          "There is no face \"" + name + "\" here, so the default face is used.",
          Phrase.of(
                  "Put its .ttf or .otf file into the series' folder fonts, or correct the name in"
                      + " ")
              .houseStyle()
              .then("."));
      return Optional.empty();
    }
    return tryOpen(file.get());
  }

  private Optional<Face> tryOpen(FaceFile file) {
    try {
      return Optional.of(shelf.open(file));
    } catch (FaceException e) {
      note(
          "font/unusable",
          String.valueOf(e.getMessage()),
          Phrase.of("Replace " + file.id() + "; another face is used."));
      return Optional.empty();
    }
  }

  private void note(String rule, String message, Phrase advice) {
    findings.putIfAbsent(
        rule + message,
        Finding.of(rule, Severity.WARNING, Where.everywhere(), Phrase.of(message), advice));
  }

  /** The face that a language is lettered in: the voice's own if it can, else its script's. */
  SizedFace preferred(Look look, CueKind kind, Cut cut, Language language, boolean capitals) {
    Face latin = latin(look, kind, cut);
    Face face =
        suits(latin, language, cut)
            ? latin
            : ofLanguage(language, cut)
                .filter(own -> suits(own, language, cut))
                .orElseGet(() -> ofScript(language.script(), cut, latin));
    return sized(face, language, capitals, look, cut);
  }

  /** The face that the series has for a language. */
  private Optional<Face> ofLanguage(Language language, Cut cut) {
    return style.language(language.tag()).face().flatMap(name -> named(name, cut));
  }

  /** Returns true if a face has the letters of a language's alphabet, or most of them. */
  private boolean suits(Face face, Language language, Cut cut) {
    Wish wish = new Wish(face.file().id(), cut.weight(), cut.italic(), language.tag());
    return suits.computeIfAbsent(wish, w -> Coverage.suits(face, language));
  }

  private Face ofScript(String script, Cut cut, Face otherwise) {
    Wish wish = new Wish("", cut.weight(), cut.italic(), script);
    return found
        .computeIfAbsent(
            wish,
            w ->
                shelf.chain(script, w.weight(), w.italic()).stream()
                    .flatMap(file -> tryOpen(file).stream())
                    .findFirst())
        .orElse(otherwise);
  }

  private SizedFace sized(Face face, Language language, boolean capitals, Look look, Cut cut) {
    boolean lacksBold = cut.stressed() && face.file().weight() < BOLD && !language.canSlant();
    Ornament dots = lacksBold ? language.habits().stress().dots() : Ornament.NONE;
    double usualPx = size.emPx(face, language, capitals) * look.size();
    double em = lacksBold && dots == Ornament.NONE ? usualPx * STRESS_SIZE : usualPx;
    return new SizedFace(face, em, slant(face, language, cut)).with(dots);
  }

  private static double slant(Face face, Language language, Cut cut) {
    boolean made = cut.italic() && !face.file().italic();
    return language.canSlant() ? cut.slantDeg() + (made ? MADE_SLANT_DEG : 0) : 0;
  }

  /** The faces for a stretch: the preferred one, and the chains of the scripts it lacks. */
  FaceChain chain(Look look, CueKind kind, Cut cut, Language language, boolean capitals) {
    SizedFace preferred = preferred(look, kind, cut, language, capitals);
    return new FaceChain() {
      @Override
      public SizedFace preferred() {
        return preferred;
      }

      @Override
      public SizedFace choose(String cluster, SizedFace inUse) {
        if (Coverage.covers(preferred.face(), cluster)) {
          return cluster.isBlank() ? inUse : preferred;
        }
        if (Coverage.covers(inUse.face(), cluster)) {
          return inUse;
        }
        return fallback(cluster).orElse(preferred);
      }

      private Optional<SizedFace> fallback(String cluster) {
        String script = ScriptCode.of(cluster, language);
        Language of =
            script.equals(language.script()) || script.equals(ScriptCode.SIGNS)
                ? language
                : Languages.ofScript(script).orElse(language);
        return Stream.concat(
                ofLanguage(language, cut).stream(),
                shelf.chain(script, cut.weight(), cut.italic()).stream()
                    .flatMap(file -> tryOpen(file).stream()))
            .filter(face -> Coverage.covers(face, cluster))
            .findFirst()
            .map(
                face ->
                    script.equals(ScriptCode.SIGNS)
                        ? new SizedFace(face, preferred.fontPx(), preferred.slantDeg())
                        : sized(face, of, capitals, look, cut));
      }
    };
  }
}
