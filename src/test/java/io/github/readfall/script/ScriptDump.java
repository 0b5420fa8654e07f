package io.github.readfall.script;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.script.read.ReadScript;
import java.util.List;
import java.util.stream.Collectors;

/** Writes what was read, a line each, for people to check. */
final class ScriptDump {

  private ScriptDump() {}

  static String of(ReadScript read) {
    StringBuilder dump = new StringBuilder();
    Script script = read.script();
    script.headers().forEach(h -> line(dump, "header " + h.key() + " = " + h.value()));
    if (!script.cast().isEmpty()) {
      line(
          dump,
          "cast "
              + script.cast().stream().map(ScriptDump::member).collect(Collectors.joining(" + ")));
    }
    line(dump, "language " + script.language());
    script
        .scenes()
        .forEach(
            s -> line(dump, "scene " + s.number() + " [" + s.heading() + "] panels " + s.panels()));
    for (Panel panel : script.panels()) {
      line(dump, "panel " + panel.number() + " label [" + panel.label() + "] " + hints(panel));
      panel.description().forEach(text -> line(dump, "  drawn: " + text));
      panel.cues().forEach(cue -> line(dump, "  " + cue(cue)));
    }
    read.findings().forEach(finding -> line(dump, finding(finding)));
    return dump.toString();
  }

  private static void line(StringBuilder dump, String text) {
    dump.append(text).append('\n');
  }

  private static String member(CastMember member) {
    return member.name() + (member.voice().isEmpty() ? "" : " (" + member.voice() + ")");
  }

  private static String hints(Panel panel) {
    ShotHints h = panel.hints();
    StringBuilder text = new StringBuilder("[" + panel.heading() + "]");
    h.shot().ifPresent(shot -> text.append(' ').append(shot));
    text.append(h.tall() ? " tall" : "").append(h.wide() ? " wide" : "");
    text.append(h.inset() ? " inset" : "").append(h.besidePrevious() ? " beside" : "");
    h.heightPx().ifPresent(px -> text.append(" height=").append(px));
    return text.append(h.description().isEmpty() ? "" : " rest=" + h.description()).toString();
  }

  private static String cue(Cue cue) {
    List<String> manners = cue.manners().stream().map(Manner::word).toList();
    String kind = cue.kind() == CueKind.DIALOGUE ? "" : " " + cue.kind();
    return cue.id()
        + " "
        + cue.line()
        + ":"
        + cue.column()
        + " "
        + cue.speaker()
        + kind
        + (manners.isEmpty() ? "" : " " + manners)
        + " <"
        + shown(cue.text())
        + ">";
  }

  private static String shown(CueText text) {
    StringBuilder shown = new StringBuilder();
    int at = 0;
    for (Span span : text.spans()) {
      shown.append(text.plain(), at, span.start());
      String inner = text.plain().substring(span.start(), span.end());
      shown.append(
          switch (span.emphasis()) {
            case STRONG -> "{" + inner + "}";
            case SLANTED -> "~" + inner + "~";
            case STRONG_SLANTED -> "{~" + inner + "~}";
          });
      at = span.end();
    }
    return shown.append(text.plain().substring(at)).toString().replace('\n', '|');
  }

  private static String finding(Finding f) {
    return f.severity().word()
        + " "
        + f.rule()
        + " "
        + f.where().line().orElse(0)
        + ":"
        + f.where().column().orElse(0)
        + " "
        + f.message()
        + " "
        + f.advice();
  }
}
