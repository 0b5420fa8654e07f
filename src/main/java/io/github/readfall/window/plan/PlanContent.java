package io.github.readfall.window.plan;

import io.github.readfall.base.wording.Wording;
import io.github.readfall.plan.EpisodeOverview;
import io.github.readfall.plan.EpisodePlan;
import io.github.readfall.plan.EpisodePlanner;
import io.github.readfall.plan.PartSpan;
import io.github.readfall.plan.Split;
import io.github.readfall.rules.words.WordLimits;
import io.github.readfall.window.model.EpisodeSnapshot;
import java.util.List;
import java.util.Optional;

/**
 * The content of the plan page.
 *
 * @param text of the script that was planned
 * @param plan of the episode
 * @param overview of the plan
 * @param count how many parts are asked for; 1 for no split
 * @param split into that many; empty without a split or if there are too few panels
 * @param spans of the parts; empty without a split
 */
record PlanContent(
    String text,
    EpisodePlan plan,
    EpisodeOverview overview,
    int count,
    Optional<Split> split,
    List<PartSpan> spans) {

  PlanContent {
    spans = List.copyOf(spans);
  }

  /** The plan of an episode, split into so many parts; takes a while if it is very long. */
  static PlanContent of(EpisodeSnapshot shown, int count) {
    EpisodePlan plan = shown.plan();
    double most = WordLimits.onScreen(shown.galley().style());
    Optional<Split> split =
        count < 2 ? Optional.empty() : EpisodePlanner.split(shown.galley().set(), plan, count);
    EpisodeOverview overview = EpisodeOverview.of(shown.galley(), plan, most);
    List<PartSpan> spans = split.map(parts -> PartSpan.of(plan, parts)).orElse(List.of());
    return new PlanContent(shown.text(), plan, overview, count, split, spans);
  }

  /** The number of parts that the plan proposes; 1 for no split. */
  static int proposed(EpisodeSnapshot shown) {
    return shown.plan().split().map(split -> split.parts().size()).orElse(1);
  }

  /** The reason why a part begins where it does, and whether all parts are short enough. */
  String why(PartSpan part) {
    String reason = part.part().reason();
    return split.filter(Split::fits).isPresent()
        ? reason
        : Wording.of("plan.tooTallParts", reason, Long.toString((long) overview.tallestPx()));
  }

  /** The reason why there is no split, in one sentence. */
  String whyNone() {
    String tall = Long.toString(Math.round(overview.strip().height()));
    String most = Long.toString((long) Math.floor(overview.tallestPx()));
    if (count > 1 || (overview.isTooTall() && plan.split().isEmpty())) {
      return Wording.of("plan.tooFew", Math.max(2, count));
    }
    return Wording.of(overview.isTooTall() ? "plan.tooTall" : "plan.notTooTall", tall, most);
  }
}
