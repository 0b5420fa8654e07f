package io.github.readfall.window.plan;

import io.github.readfall.base.wording.Wording;
import io.github.readfall.plan.EpisodeOverview;
import io.github.readfall.plan.EpisodePlan;
import io.github.readfall.plan.EpisodePlanner;
import io.github.readfall.plan.PartSpan;
import io.github.readfall.plan.Split;
import io.github.readfall.rules.WordLimits;
import io.github.readfall.window.model.EpisodeSnapshot;
import java.util.List;
import java.util.Optional;

/**
 * What the page of the plan shows.
 *
 * @param text of the script that it is the plan of
 * @param plan of the episode
 * @param overview the same to be looked at
 * @param count how many parts are asked for; 1 for none
 * @param split into so many; empty where none is asked for or there are too few panels
 * @param spans where its parts lie; none where there is no split
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

  /** The plan of an episode, split into so many parts; takes a while where it is very long. */
  static PlanContent of(EpisodeSnapshot shown, int count) {
    EpisodePlan plan = shown.plan();
    double most = WordLimits.onScreen(shown.galley().style());
    Optional<Split> split =
        count < 2 ? Optional.empty() : EpisodePlanner.split(shown.galley().set(), plan, count);
    EpisodeOverview overview = EpisodeOverview.of(shown.galley(), plan, most);
    List<PartSpan> spans = split.map(parts -> PartSpan.of(plan, parts)).orElse(List.of());
    return new PlanContent(shown.text(), plan, overview, count, split, spans);
  }

  /** How many parts the plan itself proposes; 1 for none. */
  static int proposed(EpisodeSnapshot shown) {
    return shown.plan().split().map(split -> split.parts().size()).orElse(1);
  }

  /** Why a part begins where it does, and whether all parts are low enough. */
  String why(PartSpan part) {
    String reason = part.part().reason();
    return split.filter(Split::fits).isPresent()
        ? reason
        : Wording.of("plan.tooTallParts", reason, Long.toString((long) overview.tallestPx()));
  }

  /** One sentence: why there is no split. */
  String whyNone() {
    String tall = Long.toString(Math.round(overview.strip().height()));
    String most = Long.toString((long) Math.floor(overview.tallestPx()));
    if (count > 1 || (overview.isTooTall() && plan.split().isEmpty())) {
      return Wording.of("plan.tooFew", Math.max(2, count));
    }
    return Wording.of(overview.isTooTall() ? "plan.tooTall" : "plan.notTooTall", tall, most);
  }
}
