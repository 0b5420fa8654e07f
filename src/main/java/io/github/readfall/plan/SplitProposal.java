package io.github.readfall.plan;

import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.script.Panel;
import io.github.readfall.script.Scene;
import io.github.readfall.script.Script;
import io.github.readfall.strip.Layout;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Proposes where to split an episode, and says why there. */
final class SplitProposal {

  private final Script script;
  private final List<ReadWords> words;
  private final List<Block> blocks;
  private final double limitPx;
  private final Splitter splitter;

  /** Proposals for an episode as it is laid out so far. */
  SplitProposal(Script script, HouseStyle style, Layout layout, List<ReadWords> words) {
    this.script = script;
    this.words = words;
    this.blocks = Block.of(script, layout);
    this.limitPx = EpisodeLimit.px(style, layout.widthPx());
    double endPx = Math.rint(Spacing.of(style).gutterPx());
    this.splitter = new Splitter(blocks, limitPx, 2 * endPx);
  }

  /**
   * The best split: into as many parts as asked for, else into as few as the limit allows.
   *
   * @return empty if no part is left to split off
   */
  Optional<Split> into(OptionalInt parts) {
    if (blocks.size() < 2) {
      return Optional.empty();
    }
    int count = parts.orElseGet(splitter::fewestParts);
    return splitter.into(count).map(this::split);
  }

  private Split split(List<Integer> starts) {
    List<Split.Part> parts = new ArrayList<>();
    for (int i = 0; i < starts.size(); i++) {
      int next = i + 1 < starts.size() ? starts.get(i + 1) : blocks.size();
      parts.add(part(starts.get(i), next - 1));
    }
    return new Split(parts, limitPx);
  }

  private Split.Part part(int start, int end) {
    int first = blocks.get(start).firstPanel();
    int last = blocks.get(end).lastPanel();
    List<ReadWords> own =
        words.stream().filter(some -> some.panel() >= first && some.panel() <= last).toList();
    return new Split.Part(
        first,
        last,
        splitter.heightPx(start, end),
        own.stream().mapToInt(ReadWords::words).sum(),
        own.stream().mapToDouble(ReadWords::seconds).sum(),
        reason(start));
  }

  private String reason(int start) {
    Block block = blocks.get(start);
    if (start == 0) {
      return "The episode begins here.";
    }
    String scene = sceneOf(block.firstPanel()).map(Scene::heading).orElse("");
    String named = scene.isEmpty() ? "" : " \"" + scene + "\"";
    return switch (block.before()) {
      case SCENE -> "The scene" + named + " begins here.";
      case PANEL ->
          "No scene ends where the parts come out even; here the scene"
              + named
              + " goes on after a pause.";
      case EXCHANGE ->
          "Neither a scene nor an exchange ends where the parts come out even; here the scene"
              + named
              + " goes on.";
    };
  }

  private Optional<Scene> sceneOf(int number) {
    Panel panel = script.panels().get(number - 1);
    return panel.scene().map(scene -> script.scenes().get(scene - 1));
  }
}
