package io.github.readfall.lettering.typeset;

import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.lettering.style.Look;
import io.github.readfall.lettering.typeset.VoiceFaces.Cut;
import io.github.readfall.script.CueKind;
import io.github.readfall.type.font.FontShelf;
import io.github.readfall.type.text.FaceChain;
import io.github.readfall.type.text.Language;
import io.github.readfall.type.text.Languages;
import io.github.readfall.type.text.LineBreaks;
import io.github.readfall.type.text.LineTable;
import io.github.readfall.type.text.Passage;
import io.github.readfall.type.text.StyledText;
import io.github.readfall.type.text.TextLine;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Sets short notes beside balloons, such as names and numbers, in the default dialogue face. What
 * was set once is not set again. Safe to share between threads.
 */
public final class Labels {

  private final VoiceFaces faces;
  private final LineBreaks breaks = new LineBreaks();

  /** The lines set so far; guarded by this object. */
  private final Map<Asked, TextLine> known = new HashMap<>();

  private record Asked(String text, double fontPx, boolean bold) {}

  /** Sets in the faces of a shelf. */
  public Labels(FontShelf shelf, HouseStyle style) {
    this.faces = new VoiceFaces(shelf, style);
  }

  /**
   * Sets one line.
   *
   * @param text not empty
   * @param fontPx its em
   * @param bold whether in bold
   */
  public synchronized TextLine line(String text, double fontPx, boolean bold) {
    return known.computeIfAbsent(new Asked(text, fontPx, bold), this::line);
  }

  private TextLine line(Asked asked) {
    Passage passage = passage(asked, Languages.of("en"));
    return passage.line(0, passage.segments().size() - 1);
  }

  /**
   * Sets a longer text into lines, each as full as its language's breaks allow.
   *
   * @param text not empty; {@code '\n'} for a forced break
   * @param fontPx its em
   * @param bold true for bold
   * @param measurePx greatest width of a line
   */
  public List<TextLine> lines(
      String text, double fontPx, boolean bold, Language language, double measurePx) {
    Passage whole = passage(new Asked(text, fontPx, bold), language);
    Passage passage =
        whole.measure(measurePx).widerThan(measurePx).isEmpty()
            ? whole
            : whole.cutFiner(measurePx, breaks);
    LineTable table = passage.measure(measurePx);
    List<TextLine> lines = new ArrayList<>();
    for (int first = 0; first < table.size(); first = table.lastOf(first) + 1) {
      lines.add(passage.line(first, table.lastOf(first)));
    }
    return List.copyOf(lines);
  }

  /** The em at which a language is as easy to read as English is at an em of 1. */
  public double emOf(Language language) {
    return voice(false, language).preferred().fontPx()
        / voice(false, Languages.of("en")).preferred().fontPx();
  }

  private Passage passage(Asked asked, Language language) {
    String text = asked.text();
    FaceChain voice = voice(asked.bold(), language);
    double scale = asked.fontPx() / voice.preferred().fontPx();
    StyledText whole = new StyledText(0, text.length(), new ScaledFaces(voice, scale));
    return Passage.of(text, language, List.of(whole), 0, breaks);
  }

  private FaceChain voice(boolean bold, Language language) {
    Cut cut = new Cut(bold ? VoiceFaces.BOLD : 400, false, 0);
    return faces.chain(Look.SPEECH, CueKind.DIALOGUE, cut, language, false);
  }
}
