package io.github.readfall.type.font;

import com.ibm.icu.text.Bidi;
import io.github.readfall.base.viewing.LetterKind;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.font.TextAttribute;
import java.awt.geom.AffineTransform;
import java.awt.geom.PathIterator;
import java.io.File;
import java.io.IOException;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.stream.IntStream;

/**
 * One font file, ready to shape. It has no size: everything is in design units, exact and the same
 * for every size, and is scaled afterwards.
 *
 * <p>Safe to share between threads.
 */
public final class Face {

  private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);
  private static final double FLATNESS_UNITS = 0.5;
  private static final int PROBES = 64; // house default, no source

  private final FaceFile file;
  private final FontHeader header;
  private final Font font;
  private final Map<LetterKind, Double> heights;
  private final Map<Ornament, Face> ornamented;
  private final Ornament ornament;
  private final Ornamented drawing;
  private final boolean additive;
  private final AtomicReferenceArray<Ink> uprightInks;
  private final Map<Double, AtomicReferenceArray<Ink>> leaningInks = new ConcurrentHashMap<>();

  private Face(FaceFile file, FontHeader header, Font font) {
    this.file = file;
    this.header = header;
    this.font = font;
    this.heights = new ConcurrentHashMap<>();
    this.ornamented = new ConcurrentHashMap<>();
    this.ornament = Ornament.NONE;
    this.drawing = Ornamented.NOTHING;
    this.uprightInks = new AtomicReferenceArray<>(header.glyphCount());
    this.additive = !header.contextual() && SpaceKerning.isAdditive(this);
  }

  /** A face whose glyphs are drawn with something added; its letters are as high as without. */
  private Face(Face plain, Ornament ornament) {
    this.file = plain.file;
    this.header = plain.header;
    this.font = plain.font;
    this.heights = plain.heights;
    this.ornamented = plain.ornamented;
    this.ornament = ornament;
    this.drawing = ornament.of(plain);
    this.uprightInks = new AtomicReferenceArray<>(plain.header.glyphCount());
    this.additive = plain.additive;
    for (LetterKind kind : LetterKind.values()) {
      plain.heightUnits(kind);
    }
  }

  /**
   * Opens a font file.
   *
   * @throws FaceException if the file cannot be read or is not a font that can be set
   */
  static Face open(FaceFile file) throws FaceException {
    FontHeader header = FontHeader.read(file.path());
    try {
      Font font = Font.createFont(Font.TRUETYPE_FONT, new File(file.path().toString()));
      Map<TextAttribute, Object> on =
          Map.of(
              TextAttribute.SIZE, header.unitsPerEm(),
              TextAttribute.KERNING, TextAttribute.KERNING_ON,
              TextAttribute.LIGATURES, TextAttribute.LIGATURES_ON);
      Face face = new Face(file, header, font.deriveFont(on));
      if (file.isUnchanged() || face.isWhole()) {
        return face;
      }
    } catch (FontFormatException | IOException | RuntimeException | InternalError e) {
      // A damaged file trips AWT in many places, and the exception says nothing a person can use.
    }
    throw new FaceException(file.path() + " is damaged: its letters cannot be read.");
  }

  /**
   * Returns true if the letters can be read. If AWT's rasteriser refuses a file, AWT does not say
   * so: it continues with a face of the system, or with empty letters.
   */
  private boolean isWhole() {
    int step = 1 + header.glyphCount() / PROBES;
    boolean hasInk =
        IntStream.range(0, header.glyphCount())
                .filter(glyph -> glyph % step == 0)
                .filter(glyph -> !ink(glyph, 0).isEmpty())
                .count()
            > 0;
    return hasInk && font.getNumGlyphs() == header.glyphCount();
  }

  /** The file it comes from. */
  public FaceFile file() {
    return file;
  }

  /** The same face, its glyphs drawn with something added. Only for a face without an ornament. */
  public Face with(Ornament other) {
    return other == ornament ? this : ornamented.computeIfAbsent(other, o -> new Face(this, o));
  }

  /** What is drawn with its glyphs. */
  public Ornament ornament() {
    return ornament;
  }

  /** The family's name in the font file, by which other programs know it. */
  public String familyName() {
    return font.getFamily(Locale.ROOT);
  }

  /**
   * The height of letters of a kind, by the ink of the first of them that the face has; 0 if it has
   * none.
   */
  public double heightUnits(LetterKind kind) {
    return heights.computeIfAbsent(kind, this::measuredUnits);
  }

  private double measuredUnits(LetterKind kind) {
    return kind.letters().stream()
        .filter(letter -> letter.codePoints().allMatch(this::covers))
        .mapToDouble(letter -> kind.isSquare() ? height(letter) : top(letter))
        .filter(height -> height > 0)
        .findFirst()
        .orElse(0);
  }

  private double height(String letter) {
    return ink(shape(letter).glyph(0), 0).height();
  }

  private double top(String letters) {
    boolean rightToLeft = Bidi.getBaseDirection(letters) == Bidi.RTL;
    GlyphRow row = shape(letters.toCharArray(), 0, letters.length(), rightToLeft);
    return IntStream.range(0, row.size())
        .mapToDouble(i -> ink(row.glyph(i), 0).top())
        .max()
        .orElse(0);
  }

  public Embedding embedding() {
    return header.embedding();
  }

  public int unitsPerEm() {
    return header.unitsPerEm();
  }

  /** Returns true if the widths of words set apart add up to the width of the line they make. */
  public boolean isAdditive() {
    return additive;
  }

  /** Returns true if letters change shape with their neighbours, even across a space. */
  public boolean isContextual() {
    return header.contextual();
  }

  /**
   * Returns true if the face has another form of a glyph for a language, which shaping without a
   * language does not use.
   *
   * @param language two- or three-letter code, in lower case
   */
  public boolean hasLocalForm(int glyph, String language) {
    return header.localForms().replaces(glyph, language);
  }

  /**
   * Returns true if the face can show a character: with a glyph of its own, or with one that looks
   * like it.
   */
  public boolean covers(int codePoint) {
    return font.canDisplay(codePoint) || font.canDisplay(LikeSigns.of(codePoint));
  }

  /**
   * Shapes a stretch of one script and one direction, kerning and ligatures on.
   *
   * @param text read only
   * @param start first UTF-16 unit
   * @param end one past the last
   * @param rightToLeft the direction it is read in
   */
  public GlyphRow shape(char[] text, int start, int end, boolean rightToLeft) {
    int direction = rightToLeft ? Font.LAYOUT_RIGHT_TO_LEFT : Font.LAYOUT_LEFT_TO_RIGHT;
    char[] shown = withOwnSigns(text, start, end);
    GlyphVector row = font.layoutGlyphVector(EXACT, shown, start, end, direction);
    int size = row.getNumGlyphs();
    int[] glyphs = row.getGlyphCodes(0, size, null);
    float[] positions = row.getGlyphPositions(0, size + 1, null);
    widen(glyphs, positions);
    return new GlyphRow(glyphs, row.getGlyphCharIndices(0, size, null), positions);
  }

  private void widen(int[] glyphs, float[] positions) {
    double gained = 0;
    for (int i = 0; i < glyphs.length; i++) {
      gained += drawing.widening(glyphs[i]);
      positions[2 * i + 2] += (float) gained;
    }
  }

  /** The pen's advance over a glyph by itself. */
  double advanceUnits(int glyph) {
    return font.createGlyphVector(EXACT, new int[] {glyph}).getGlyphMetrics(0).getAdvanceX();
  }

  private char[] withOwnSigns(char[] text, int start, int end) {
    char[] shown = text;
    for (int i = start; i < end; i++) {
      char like = (char) LikeSigns.of(text[i]);
      if (like != text[i] && !font.canDisplay(text[i]) && font.canDisplay(like)) {
        shown = shown == text ? text.clone() : shown;
        shown[i] = like;
      }
    }
    return shown;
  }

  GlyphRow shape(String text) {
    return shape(text.toCharArray(), 0, text.length(), false);
  }

  /**
   * The ink of a glyph when it is slanted.
   *
   * @param glyph its number in the file
   * @param slantDeg slant to the right
   */
  public Ink ink(int glyph, double slantDeg) {
    if (glyph >= header.glyphCount()) {
      return Ink.NONE; // a damaged file may ask for glyphs that it does not hold
    }
    AtomicReferenceArray<Ink> known =
        slantDeg == 0
            ? uprightInks
            : leaningInks.computeIfAbsent(
                slantDeg, s -> new AtomicReferenceArray<>(header.glyphCount()));
    Ink ink = known.get(glyph);
    if (ink == null) {
      ink = measureInk(outline(glyph, slantDeg));
      known.set(glyph, ink);
    }
    return ink;
  }

  /** A glyph's outline in design units, y downwards, leaning to the right by an angle. */
  public Shape outline(int glyph, double slantDeg) {
    Shape upright =
        drawing.drawn(glyph, font.createGlyphVector(EXACT, new int[] {glyph}).getGlyphOutline(0));
    if (slantDeg == 0) {
      return upright;
    }
    double lean = -StrictMath.tan(StrictMath.toRadians(slantDeg));
    return AffineTransform.getShearInstance(lean, 0).createTransformedShape(upright);
  }

  private static Ink measureInk(Shape outline) {
    double left = Double.POSITIVE_INFINITY;
    double top = Double.POSITIVE_INFINITY;
    double right = Double.NEGATIVE_INFINITY;
    double bottom = Double.NEGATIVE_INFINITY;
    double[] c = new double[6];
    for (PathIterator it = outline.getPathIterator(null, FLATNESS_UNITS); !it.isDone(); it.next()) {
      if (it.currentSegment(c) != PathIterator.SEG_CLOSE) {
        left = Math.min(left, c[0]);
        right = Math.max(right, c[0]);
        top = Math.min(top, c[1]);
        bottom = Math.max(bottom, c[1]);
      }
    }
    return left > right ? Ink.NONE : new Ink(left, -bottom, right, -top);
  }
}
