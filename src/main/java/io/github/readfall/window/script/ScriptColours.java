package io.github.readfall.window.script;

import io.github.readfall.base.finding.Severity;
import io.github.readfall.script.PartKind;
import java.awt.Color;
import java.util.Map;
import java.util.Optional;
import javax.swing.UIManager;

/**
 * The theme's colours of a script.
 *
 * @param text of lettered words
 * @param parts of parts that have a colour of their own
 * @param findings of underlines, by severity
 */
record ScriptColours(
    Color ground,
    Color text,
    Color caretLine,
    Color flash,
    Color hairline,
    Color match,
    Color selection,
    Map<PartKind, Color> parts,
    Map<Severity, Color> findings) {

  /** A background looks dark below this lightness of 0 to 255. */
  private static final int MIDDLE = 128;

  ScriptColours {
    parts = Map.copyOf(parts);
    findings = Map.copyOf(findings);
  }

  /** The colours of the present theme; those that suit its background if it has none. */
  static ScriptColours ofTheme() {
    Color usual =
        Optional.ofNullable(UIManager.getColor("TextArea.background")).orElse(Color.WHITE);
    Named named = new Named(isDark(usual));
    Color speaker = named.of("speaker", 0x7A3E00, 0xE6B27A);
    Color quiet = named.of("description", 0x5A616A, 0xA2A9B2);
    Color manner = named.of("manner", 0x0B6157, 0x7CCBBE);
    Color keyword = named.of("keyword", 0x1F4E8C, 0x9CC3F5);
    Color sign = named.of("sign", 0x8A3B78, 0xDDA0CF);
    Color stray = named.of("stray", 0xA52A1E, 0xF09A8E);
    Color text = named.of("text", 0x1B1E22, 0xE3E5E8);
    return new ScriptColours(
        named.of("background", 0xFFFFFF, 0x24272B),
        text,
        named.of("caretLine", 0xF1F4F8, 0x2F343A),
        named.of("flash", 0xFFE9B8, 0x5A4A1E),
        named.of("hairline", 0xC9CED6, 0x4A5058),
        named.of("match", 0xFFE08A, 0x66551A),
        named.of("selection", 0xBFD9FF, 0x2F5486),
        Map.ofEntries(
            Map.entry(PartKind.KEYWORD, keyword),
            Map.entry(PartKind.LABEL, keyword),
            Map.entry(PartKind.HINT, named.of("hint", 0x3A5F8F, 0x8FB0D8)),
            Map.entry(PartKind.HEADING, quiet),
            Map.entry(PartKind.HEADER_KEY, keyword),
            Map.entry(PartKind.HEADER_VALUE, text),
            Map.entry(PartKind.SPEAKER, speaker),
            Map.entry(PartKind.MANNER, manner),
            Map.entry(PartKind.OTHER_MANNER, quiet),
            Map.entry(PartKind.SIGN, sign),
            Map.entry(PartKind.BREAK, sign),
            Map.entry(PartKind.ESCAPE, sign),
            Map.entry(PartKind.NOTE, named.of("note", 0x6B6155, 0xA89C8A)),
            Map.entry(PartKind.DESCRIPTION, quiet),
            Map.entry(PartKind.STRAY, stray)),
        Map.of(
            Severity.ERROR, named.of("error", 0xC62828, 0xFF7B72),
            Severity.WARNING, named.of("warning", 0x9A5B00, 0xF0B44C),
            Severity.NOTE, named.of("remark", 0x2F6BAF, 0x8CB8EE)));
  }

  /** The colour of a part. */
  Color of(PartKind kind) {
    return parts.getOrDefault(kind, text);
  }

  Color of(Severity severity) {
    return findings.getOrDefault(severity, text);
  }

  private static boolean isDark(Color ground) {
    return (ground.getRed() * 3 + ground.getGreen() * 6 + ground.getBlue()) / 10 < MIDDLE;
  }

  /** Looks colours up by name. */
  private record Named(boolean dark) {

    Color of(String name, int light, int night) {
      return Optional.ofNullable(UIManager.getColor("Readfall.script." + name))
          .orElseGet(() -> new Color(dark ? night : light));
    }
  }
}
