package io.github.readfall.script.read;

import io.github.readfall.script.Cue;
import io.github.readfall.script.Keywords;
import io.github.readfall.script.Letters;
import io.github.readfall.script.LineKind;
import io.github.readfall.script.Manner;
import io.github.readfall.script.Panel;
import io.github.readfall.script.Scene;
import io.github.readfall.script.check.StrayLines;
import io.github.readfall.script.lines.BlockKeyword;
import io.github.readfall.script.lines.ClassifiedLine;
import io.github.readfall.script.lines.FindingList;
import io.github.readfall.script.lines.PanelHeading;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Puts lines into panels, and panels into scenes. */
public final class PanelList {

  private record PanelDraft(
      int number,
      PanelHeading heading,
      int line,
      int scene,
      List<String> description,
      List<Cue> cues) {

    Panel panel() {
      Optional<Integer> sceneNumber = scene == 0 ? Optional.empty() : Optional.of(scene);
      return new Panel(
          number, heading.label(), heading.heading(), description, cues, line, sceneNumber);
    }
  }

  private record SceneDraft(int number, String heading, int line, List<Integer> panels) {

    Scene scene() {
      return new Scene(number, heading, line, panels);
    }
  }

  private final Keywords keywords;
  private final CueReader cueReader;
  private final List<PanelDraft> panels = new ArrayList<>();
  private final List<SceneDraft> scenes = new ArrayList<>();

  PanelList(Keywords keywords, CueReader cueReader) {
    this.keywords = keywords;
    this.cueReader = cueReader;
  }

  public List<Panel> panels() {
    return panels.stream().map(PanelDraft::panel).toList();
  }

  List<Scene> scenes() {
    return scenes.stream().map(SceneDraft::scene).toList();
  }

  public void read(List<ClassifiedLine> lines, FindingList findings) {
    for (int i = 0; i < lines.size(); i++) {
      ClassifiedLine line = lines.get(i);
      if (line.kind() == LineKind.PANEL) {
        startPanel(line, findings);
      } else if (line.kind() == LineKind.SCENE) {
        String heading = PanelHeading.withoutSigns(line.content(BlockKeyword.end(keywords, line)));
        scenes.add(new SceneDraft(scenes.size() + 1, heading, line.number(), new ArrayList<>()));
      } else if (line.kind() == LineKind.DESCRIPTION && isInPanel()) {
        last(panels).description().add(line.content());
      } else if (line.kind() == LineKind.CUE) {
        addCue(lines.subList(i, blockEnd(lines, i)), findings);
      }
    }
  }

  private void startPanel(ClassifiedLine line, FindingList findings) {
    PanelHeading heading = PanelHeading.of(line.content(BlockKeyword.end(keywords, line)));
    int number = panels.size() + 1;
    int scene = scenes.size();
    checkOrder(heading, line, findings);
    panels.add(
        new PanelDraft(
            number, heading, line.number(), scene, new ArrayList<>(), new ArrayList<>()));
    if (scene > 0) {
      last(scenes).panels().add(number);
    }
  }

  private void checkOrder(PanelHeading heading, ClassifiedLine line, FindingList findings) {
    if (panels.isEmpty() || last(panels).scene() != scenes.size()) {
      return; // a scene may restart the count
    }
    int label = heading.number();
    int before = last(panels).heading().number();
    if (label >= 0 && before >= 0 && label <= before) {
      findings.note(
          "panel-number",
          line.number(),
          line.column(),
          "Panel " + label + " comes after panel " + before + ".",
          "Number it " + (before + 1) + ", or leave the numbers out: panels are counted anyway.");
    }
  }

  private void addCue(List<ClassifiedLine> lines, FindingList findings) {
    ClassifiedLine first = lines.get(0);
    if (!isInPanel()) {
      if (!panels.isEmpty()) {
        StrayLines.reportCue(first, findings, "the first panel of its scene");
      }
      return;
    }
    List<Cue> cues = last(panels).cues();
    Cue cue = cueReader.read(lines, panels.size(), cues.size() + 1);
    if (Letters.isBlank(cue.text().plain())) {
      findings.warning(
          "empty-cue",
          cue.line(),
          cue.column(),
          cue.names() + " has nothing to say here, so there is no balloon.",
          "Write the words behind the colon or on the next line, or delete the name.");
      return;
    }
    checkJoined(cue, cues, findings);
    cues.add(cue);
  }

  private static void checkJoined(Cue cue, List<Cue> before, FindingList findings) {
    if (cue.has(Manner.JOINED)
        && (before.isEmpty() || !last(before).speakers().equals(cue.speakers()))) {
      findings.warning(
          "joined-to-none",
          cue.line(),
          cue.column(),
          "This cue is to be joined, but the cue before it in this panel is not "
              + cue.names()
              + "'s.",
          "Put it right behind the cue it goes on from, or delete \"joined\".");
    }
  }

  /** Returns true if a panel has begun since the last scene did. */
  private boolean isInPanel() {
    return !panels.isEmpty() && last(panels).scene() == scenes.size();
  }

  /** Index after the last line of the cue, its notes included, that begins at {@code start}. */
  public static int blockEnd(List<ClassifiedLine> lines, int start) {
    int end = start + 1;
    while (end < lines.size()
        && (lines.get(end).kind() == LineKind.CUE_TEXT || lines.get(end).kind() == LineKind.NOTE)) {
      end++;
    }
    return end;
  }

  private static <T> T last(List<T> list) {
    return list.get(list.size() - 1);
  }
}
