package io.github.readfall.job.polyglot;

import io.github.readfall.base.geom.Box;
import io.github.readfall.lettering.typeset.BalloonRequest;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.lettering.typeset.ShapedCue;
import io.github.readfall.lettering.typeset.SharedOutline;
import io.github.readfall.script.Cue;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The smallest balloon of every cue of an episode that holds it in several languages.
 *
 * @param balloons in script order
 */
public record SharedBalloons(List<SharedBalloon> balloons) {

  /** None: every balloon is as its own language needs it. */
  public static final SharedBalloons NONE = new SharedBalloons(List.of());

  public SharedBalloons {
    balloons = List.copyOf(balloons);
  }

  /**
   * The shared balloons of an episode.
   *
   * @param original the episode as it was written
   * @param others its other languages
   * @param wanted requests of a layout, by their cues' ids; a box in one is not kept, and existing
   *     lettering keeps its balloon
   */
  public static SharedBalloons of(
      Edition original, List<Edition> others, Map<String, BalloonRequest> wanted) {
    Map<String, BalloonRequest> free = new HashMap<>();
    wanted.forEach((id, one) -> free.put(id, one.withoutBox()));
    List<Edition> editions = new ArrayList<>(List.of(original));
    editions.addAll(others);
    List<Map<String, ShapedCue>> shaped =
        editions.stream().map(edition -> shaped(edition, free)).toList();
    List<SharedBalloon> balloons = new ArrayList<>();
    for (Cue cue : original.script().cues()) {
      Optional.ofNullable(shaped.get(0).get(cue.id()))
          .filter(said -> !said.wanted().isLettered())
          .ifPresent(said -> balloons.add(of(said, editions, shaped)));
    }
    return new SharedBalloons(balloons);
  }

  private static Map<String, ShapedCue> shaped(
      Edition edition, Map<String, BalloonRequest> wanted) {
    return edition.typesetter().shape(edition.script(), wanted).stream()
        .collect(Collectors.toMap(cue -> cue.cue().id(), cue -> cue));
  }

  private static SharedBalloon of(
      ShapedCue cue, List<Edition> editions, List<Map<String, ShapedCue>> shaped) {
    String id = cue.cue().id();
    List<ShapedCue> cues = new ArrayList<>();
    List<Edition> saying = new ArrayList<>();
    for (int i = 0; i < editions.size(); i++) {
      ShapedCue said = shaped.get(i).get(id);
      if (said != null) {
        cues.add(said);
        saying.add(editions.get(i));
      }
    }
    SharedOutline outline = SharedOutline.round(cues);
    Edition decider = saying.get(outline.decidedBy());
    SetBalloon own = editions.get(0).typesetter().fit(cue);
    return new SharedBalloon(
        cue.cue(),
        outline.size(),
        new Box(0, 0, own.box().width(), own.box().height()),
        decider.language(),
        decider.expected().contains(id));
  }

  /** The balloon of a cue. */
  public Optional<SharedBalloon> of(String cueId) {
    return balloons.stream().filter(balloon -> balloon.cue().id().equals(cueId)).findFirst();
  }

  /** These but for some cues. */
  public SharedBalloons without(Set<String> cueIds) {
    return new SharedBalloons(
        balloons.stream().filter(balloon -> !cueIds.contains(balloon.cue().id())).toList());
  }

  /** The requests of a layout with the boxes of these. */
  public Map<String, BalloonRequest> wanted(Map<String, BalloonRequest> wanted) {
    Map<String, BalloonRequest> shared = new HashMap<>(wanted);
    for (SharedBalloon balloon : balloons) {
      String id = balloon.cue().id();
      shared.put(id, shared.getOrDefault(id, BalloonRequest.NOTHING).in(balloon.size()));
    }
    return shared;
  }
}
