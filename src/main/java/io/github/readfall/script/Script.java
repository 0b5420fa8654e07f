package io.github.readfall.script;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * An episode as written: its words, speakers, manners and panels.
 *
 * @param headers as written, in order
 * @param scenes in order; may be empty
 * @param panels in order
 * @param cast the declared speakers; empty if none is declared
 * @param title empty if none is given
 * @param episode as written, mostly a number; empty if none is given
 * @param language a BCP 47 language tag; {@code en} if none is given
 * @param byteOrderMark true if the file began with U+FEFF
 * @param lines every line as written
 * @param keywords the words it was read by
 */
public record Script(
    List<Header> headers,
    List<Scene> scenes,
    List<Panel> panels,
    List<CastMember> cast,
    String title,
    String episode,
    String language,
    boolean byteOrderMark,
    List<SourceLine> lines,
    Keywords keywords) {

  public Script {
    headers = List.copyOf(headers);
    scenes = List.copyOf(scenes);
    panels = List.copyOf(panels);
    cast = List.copyOf(cast);
    lines = List.copyOf(lines);
  }

  /** Every cue of every panel, in script order. */
  public List<Cue> cues() {
    return panels.stream().flatMap(panel -> panel.cues().stream()).toList();
  }

  /** The cue with this id. */
  public Optional<Cue> cue(String id) {
    return panels.stream()
        .flatMap(panel -> panel.cues().stream())
        .filter(cue -> cue.id().equals(id))
        .findFirst();
  }

  /** The script exactly as it was read, character for character. */
  public String text() {
    StringBuilder text = new StringBuilder(byteOrderMark ? "\uFEFF" : "");
    for (SourceLine line : lines) {
      text.append(line.text()).append(line.ending());
    }
    return text.toString();
  }

  /** The lines a cue is written on, notes between them included. */
  public LineRange linesOf(Cue cue) {
    int last = cue.line();
    for (int next = last + 1; next <= lines.size(); next++) {
      LineKind kind = lines.get(next - 1).kind();
      if (kind == LineKind.CUE_TEXT) {
        last = next;
      } else if (kind != LineKind.NOTE) {
        break;
      }
    }
    return new LineRange(cue.line(), last);
  }

  /** The lines from a panel's heading to the one before the next panel or scene. */
  public LineRange linesOf(Panel panel) {
    int last = panel.line();
    while (last < lines.size() && !startsBlock(lines.get(last).kind())) {
      last++;
    }
    return new LineRange(panel.line(), last);
  }

  /**
   * This script in another language; its lines stay as they were written.
   *
   * @param tag BCP 47
   * @param words of each cue in it
   */
  public Script inLanguage(String tag, Function<Cue, CueText> words) {
    List<Panel> translated = panels.stream().map(panel -> panel.saying(words)).toList();
    return new Script(
        headers, scenes, translated, cast, title, episode, tag, byteOrderMark, lines, keywords);
  }

  private static boolean startsBlock(LineKind kind) {
    return kind == LineKind.PANEL || kind == LineKind.SCENE;
  }
}
