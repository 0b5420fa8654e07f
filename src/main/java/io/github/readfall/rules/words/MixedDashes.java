package io.github.readfall.rules.words;

import io.github.readfall.base.finding.Finding;
import io.github.readfall.base.finding.Phrase;
import io.github.readfall.lettering.style.Dashes;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.lettering.typeset.SetEpisode;
import io.github.readfall.rules.model.BalloonFinding;
import io.github.readfall.rules.model.CheckedStrip;
import io.github.readfall.rules.model.Rule;
import io.github.readfall.rules.model.RuleSpec;
import java.util.List;
import java.util.stream.Stream;

/** Dashes lettered in two forms in one episode. */
final class MixedDashes implements Rule {

  private static final String DOUBLE_HYPHEN = "--";
  private static final String EM_DASH = "—";

  @Override
  public RuleSpec spec() {
    return RuleSpec.DASHES;
  }

  @Override
  public Stream<Finding> check(CheckedStrip strip) {
    SetEpisode episode = strip.galley().set();
    if (episode.style().lettering().dashes() != Dashes.AS_WRITTEN) {
      return Stream.empty();
    }
    List<SetBalloon> hyphens = with(DOUBLE_HYPHEN, episode);
    List<SetBalloon> dashes = with(EM_DASH, episode);
    if (hyphens.isEmpty() || dashes.isEmpty()) {
      return Stream.empty();
    }
    boolean fewHyphens = hyphens.size() < dashes.size();
    return Stream.of(finding(fewHyphens ? hyphens : dashes, fewHyphens ? DOUBLE_HYPHEN : EM_DASH));
  }

  private static List<SetBalloon> with(String form, SetEpisode episode) {
    return episode.balloons().stream()
        .filter(balloon -> balloon.cue().text().plain().contains(form))
        .toList();
  }

  private static Finding finding(List<SetBalloon> fewer, String form) {
    String other = form.equals(EM_DASH) ? DOUBLE_HYPHEN : EM_DASH;
    String message =
        "Dashes are lettered in two forms: "
            + form
            + " from "
            + BalloonFinding.name(fewer.get(0))
            + " on, "
            + other
            + " elsewhere.";
    Phrase advice =
        Phrase.of("Write them all alike, or choose one form ")
            .either("with dashes under [lettering] in ", "for all dashes in ")
            .houseStyle()
            .then(".");
    return BalloonFinding.of(fewer, RuleSpec.DASHES, Phrase.of(message), advice)
        .measured(fewer.size(), 0, RuleSpec.DASHES.unit());
  }
}
