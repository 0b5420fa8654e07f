package io.github.readfall.type.text;

import io.github.readfall.type.font.GlyphRow;
import io.github.readfall.type.text.LineBreaks.Segment;
import java.util.ArrayList;
import java.util.List;

/**
 * A cue's text, itemised, cut into unbreakable segments and measured: everything that fitting needs
 * to know, and how to set any line of it.
 */
public final class Passage {

  private final String text;
  private final Language language;
  private final double trackingPx;
  private final List<ShapedRun> runs;
  private final List<Segment> segments;
  private final KeptNames names;
  private final boolean byEye;
  private final BreakCosts costs;

  /** A part of a run in one line. */
  private record Part(Run run, String text, GlyphRow glyphs) {}

  private Passage(
      String text,
      Language language,
      double trackingPx,
      List<ShapedRun> runs,
      List<Segment> segments,
      KeptNames names,
      boolean byEye,
      BreakCosts costs) {
    this.text = text;
    this.language = language;
    this.trackingPx = trackingPx;
    this.runs = List.copyOf(runs);
    this.segments = segments;
    this.names = names;
    this.byEye = byEye;
    this.costs = costs;
  }

  /**
   * Prepares a text.
   *
   * @param text as lettered, with {@code '\n'} for a forced break; not empty
   * @param language whose rules of breaking apply
   * @param stretches its styles, in order, covering it
   * @param trackingPx letterspacing after each letter; 0 for scripts that join
   * @param breaks finds the places where a line may end
   */
  public static Passage of(
      String text,
      Language language,
      List<StyledText> stretches,
      double trackingPx,
      LineBreaks breaks) {
    return of(text, language, stretches, trackingPx, breaks, KeptNames.NONE);
  }

  /**
   * Prepares a text with names in it that no line should part.
   *
   * @see #of(String, Language, List, double, LineBreaks)
   */
  public static Passage of(
      String text,
      Language language,
      List<StyledText> stretches,
      double trackingPx,
      LineBreaks breaks,
      KeptNames names) {
    List<Segment> segments = breaks.segments(text, language);
    return new Passage(
        text,
        language,
        trackingPx,
        Itemiser.runs(text, stretches, language).stream()
            .map(run -> ShapedRun.of(run, text))
            .toList(),
        segments,
        names,
        false,
        new SenseOfBreaks(text, segments, language, names).costs());
  }

  /** The same text, its lines centred by eye: signs at their ends weigh less than letters. */
  public Passage centredByEye() {
    return new Passage(text, language, trackingPx, runs, segments, names, true, costs);
  }

  /** The same text, its lines centred as wide as they are. */
  public Passage centredByWidth() {
    return new Passage(text, language, trackingPx, runs, segments, names, false, costs);
  }

  /** Returns true if signs at the ends of lines weigh less than letters. */
  public boolean isCentredByEye() {
    return byEye;
  }

  private Passage cutInto(List<Segment> others) {
    BreakCosts own = new SenseOfBreaks(text, others, language, names).costs();
    return new Passage(text, language, trackingPx, runs, others, names, byEye, own);
  }

  /**
   * The same text broken only at forced breaks, if such lines are no wider than allowed; else as it
   * is.
   */
  public Passage cutIntoLines(double widestPx) {
    Passage cut = cutInto(lines(segments));
    return cut.measure(widestPx).widerThan(widestPx).isEmpty() ? cut : this;
  }

  /**
   * The same text, if it has forced breaks, broken nowhere else: but for lines that would be wider
   * than allowed.
   */
  public Passage cutWhereForced(double widestPx) {
    if (segments.stream().noneMatch(Segment::forced)) {
      return this;
    }
    List<Segment> cut = new ArrayList<>();
    int first = 0;
    for (int last = 0; last < segments.size(); last++) {
      if (segments.get(last).forced() || last + 1 == segments.size()) {
        List<Segment> part = segments.subList(first, last + 1);
        cut.addAll(line(first, last).box().width() <= widestPx ? lines(part) : part);
        first = last + 1;
      }
    }
    return cutInto(List.copyOf(cut));
  }

  /** One segment for each stretch up to a forced break. */
  private static List<Segment> lines(List<Segment> segments) {
    List<Segment> lines = new ArrayList<>();
    int start = segments.get(0).start();
    for (int i = 0; i < segments.size(); i++) {
      Segment segment = segments.get(i);
      if (segment.forced() || i + 1 == segments.size()) {
        lines.add(new Segment(start, segment.end(), segment.forced(), false));
        start = segment.end();
      }
    }
    return List.copyOf(lines);
  }

  /**
   * The same text with every segment wider than a line cut more finely: inside its phrase, and if
   * that is not enough between any two letters.
   */
  public Passage cutFiner(double widestPx, LineBreaks breaks) {
    Passage loose = cutInto(refined(widestPx, breaks.looseSegments(text, language)));
    return loose.cutInto(loose.refined(widestPx, breaks.clusters(text)));
  }

  private List<Segment> refined(double widestPx, List<Segment> finer) {
    List<Segment> refined = new ArrayList<>();
    for (int s = 0; s < segments.size(); s++) {
      Segment whole = segments.get(s);
      if (line(s, s).box().width() <= widestPx) {
        refined.add(whole);
      } else {
        finer.stream()
            .filter(part -> part.start() >= whole.start() && part.end() <= whole.end())
            .map(part -> part.end() == whole.end() ? part.withEndOf(whole) : part)
            .forEach(refined::add);
      }
    }
    return List.copyOf(refined);
  }

  public String text() {
    return text;
  }

  public List<Segment> segments() {
    return segments;
  }

  /** The text of a segment, without the spaces it ends with. */
  public String word(int segment) {
    Segment s = segments.get(segment);
    return text.substring(s.start(), LineBreaks.contentEnd(text, s.start(), s.end()));
  }

  /** The letters that no face has, each once, in order. */
  public List<Integer> missingLetters() {
    return runs.stream()
        .map(ShapedRun::run)
        .flatMap(
            run ->
                text.substring(run.start(), run.end())
                    .codePoints()
                    .filter(c -> !Coverage.isInvisible(c) && !run.type().face().covers(c))
                    .boxed())
        .distinct()
        .toList();
  }

  /** The faces it is set in, each once, in order of appearance. */
  public List<SizedFace> types() {
    return runs.stream().map(shaped -> shaped.run().type()).distinct().toList();
  }

  /**
   * Measures every line that could be set.
   *
   * @param widestPx lines wider than this are left out, single segments always kept
   */
  public LineTable measure(double widestPx) {
    boolean addsUp =
        runs.stream().allMatch(run -> run.row().isPresent())
            && !SoftHyphen.isIn(text)
            && !language.habits().compression().isIn(text);
    LineTable.Source source =
        addsUp ? SummedLines.of(text, runs, segments, trackingPx, byEye) : new ShapedLines(this);
    return LineTable.of(source, segments, costs, widestPx);
  }

  private boolean hasBidi() {
    return runs.stream().anyMatch(shaped -> shaped.run().rightToLeft());
  }

  /**
   * Sets one line.
   *
   * @param first its first segment
   * @param last its last segment
   */
  public TextLine line(int first, int last) {
    int from = segments.get(first).start();
    int to = LineBreaks.contentEnd(text, segments.get(last).start(), segments.get(last).end());
    List<Part> parts = visualParts(from, to);
    List<PlacedRun> placed = new ArrayList<>();
    double x = 0;
    for (Part part : parts) {
      PlacedRun set = set(part, x, trackingPx);
      placed.add(set);
      x += set.advancePx() + trackingPx * set.letters();
    }
    double advance = placed.stream().mapToDouble(PlacedRun::advancePx).sum();
    ClosedUp closed = ClosedUp.of(placed, language.habits().compression());
    double pen = x - closed.givenUpPx() - (to > from ? trackingPx : 0);
    return new TextLine(
        SoftHyphen.shown(text, from, to, to),
        advance,
        closed.givenUpPx(),
        balanced(extent(closed.runs(), parts).box(pen), closed.runs(), parts, pen, from, to),
        closed.runs());
  }

  private LineBox balanced(
      LineBox box, List<PlacedRun> placed, List<Part> parts, double pen, int from, int to) {
    int signs = EndSigns.start(text, from, to);
    if (!byEye || signs == to) {
      return box;
    }
    boolean rightToLeft = language.rightToLeft();
    double edge = pen;
    for (int p = 0; p < parts.size(); p++) {
      PlacedRun set = placed.get(p);
      for (int i = 0; i < set.glyphs().size(); i++) {
        boolean sign = parts.get(p).run().start() + set.glyphs().charIndex(i) >= signs;
        if (sign != rightToLeft) {
          edge = Math.min(edge, set.glyphXPx(i));
        }
      }
    }
    return box.balanced(EndSigns.balancePx(rightToLeft ? edge : pen - edge), rightToLeft);
  }

  private static PlacedRun set(Part part, double x, double trackingPx) {
    SizedFace type = part.run().type();
    double advance = part.glyphs().advance() * type.pxPerUnit();
    return new PlacedRun(type, part.glyphs(), part.text(), x, advance, trackingPx);
  }

  /** The extent of the runs of a line. */
  private Extent extent(List<PlacedRun> placed, List<Part> parts) {
    Extent extent = Extent.NONE;
    for (int p = 0; p < parts.size(); p++) {
      PlacedRun set = placed.get(p);
      for (int i = 0; i < set.glyphs().size(); i++) {
        extent = extent.plusGlyph(set.type(), set.glyphs(), i, set.glyphXPx(i));
      }
      Run run = parts.get(p).run();
      extent = extent.plusLetters(set.type(), text, run.start(), run.end());
    }
    return extent;
  }

  private List<Part> visualParts(int from, int to) {
    List<Part> visual = new ArrayList<>();
    if (!hasBidi()) {
      addParts(from, to, 0, to, visual);
      return visual;
    }
    for (Itemiser.Directed run : Itemiser.visual(text, language, from, to)) {
      addParts(run.start(), run.end(), run.level(), to, visual);
    }
    return visual;
  }

  /** The faces of one directional run, from left to right. */
  private void addParts(int from, int to, int level, int lineEnd, List<Part> visual) {
    int at = visual.size();
    for (ShapedRun shaped : runs) {
      if (shaped.run().overlaps(from, to)) {
        Run run = shaped.run().within(from, to).atLevel(level);
        String shown = SoftHyphen.shown(text, run.start(), run.end(), lineEnd);
        Part part = new Part(run, shown, shaped.glyphs(text, run, shown));
        visual.add(run.rightToLeft() ? at : visual.size(), part);
      }
    }
  }
}
