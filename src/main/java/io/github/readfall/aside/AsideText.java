package io.github.readfall.aside;

import io.github.readfall.finding.Finding;
import io.github.readfall.script.Cue;
import io.github.readfall.script.Script;
import java.util.List;
import java.util.stream.Collectors;
import org.tomlj.Toml;

/** Changes the text of a set-aside.toml, and leaves the rest of it as the person wrote it. */
public final class AsideText {

  private static final String HEAD =
      """
      # Findings that were looked at and left as they are. Each is known again by its rule and by
      # what its balloons say; take an entry out to hear of it again.
      """;

  private AsideText() {}

  /**
   * The text with one more finding set aside.
   *
   * @param before empty where there is no such file yet
   * @param script that the finding is about
   * @param reason in one line; not blank
   */
  public static String with(String before, Finding finding, Script script, String reason) {
    StringBuilder text = new StringBuilder(before.isEmpty() ? HEAD : before);
    if (text.charAt(text.length() - 1) != '\n') {
      text.append('\n');
    }
    text.append("\n[[").append(AsideReader.ENTRIES).append("]]\n");
    line(text, AsideReader.RULE, quoted(finding.rule()));
    finding
        .where()
        .panel()
        .ifPresent(panel -> line(text, AsideReader.PANEL, Integer.toString(panel)));
    List<String> cues =
        finding.where().balloons().stream()
            .flatMap(id -> script.cue(id).stream())
            .map(AsideText::said)
            .toList();
    if (!cues.isEmpty()) {
      line(text, AsideReader.CUES, cues.stream().collect(Collectors.joining(", ", "[", "]")));
    }
    line(text, AsideReader.REASON, quoted(reason.strip().replaceAll("\\s+", " ")));
    return text.toString();
  }

  private static String said(Cue cue) {
    return quoted(SetAside.said(cue.speaker(), cue.text().raw()));
  }

  private static void line(StringBuilder text, String key, String value) {
    text.append(key).append(" = ").append(value).append('\n');
  }

  private static String quoted(String words) {
    return '"' + Toml.tomlEscape(words).toString() + '"';
  }
}
