package io.github.readfall.strip;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.type.balloon.ShapeKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Makes layouts by chance, their lengths whole hundredths of a pixel. */
final class RandomLayout {

  private static final List<String> WORDS =
      List.of(
          "", "ILSE", "花", "a \"quoted\" text", "back\\slash", "\u0007", "😀", "\uD800", "\u2028");

  private static final List<ShapeKind> SHAPES = List.of(ShapeKind.values());

  private final SplittableRandom random;

  private RandomLayout(SplittableRandom random) {
    this.random = random;
  }

  static Layout of(SplittableRandom random) {
    return new RandomLayout(random).layout();
  }

  private Layout layout() {
    List<PanelBox> panels = new ArrayList<>();
    for (int i = 1; i <= random.nextInt(5); i++) {
      panels.add(new PanelBox(i * 2, box(), word(), extra()));
    }
    List<KeepClear> areas = new ArrayList<>();
    List<Mouth> mouths = new ArrayList<>();
    for (int i = 0; i < random.nextInt(3); i++) {
      areas.add(new KeepClear(box(), word(), extra()));
      mouths.add(new Mouth(1 + i, word(), point(), extra()));
    }
    TreeSet<Double> cuts = new TreeSet<>();
    for (int i = 0; i < random.nextInt(4); i++) {
      cuts.add(size());
    }
    boolean parked = random.nextInt(3) == 0;
    return new Layout(
        size(),
        2_000_000,
        panels,
        areas,
        mouths,
        balloons("p"),
        random.nextBoolean() ? Optional.of(List.copyOf(cuts)) : Optional.empty(),
        random.nextBoolean() ? List.of(new Opening(size(), size(), extra())) : List.of(),
        parked ? new Parked(panels, mouths, balloons("q")) : Parked.NONE,
        1 + random.nextInt(3),
        new Extra(extra().jsonByKey(), extra().isEmpty() ? Map.of() : Map.of("strip", later())));
  }

  private List<LaidBalloon> balloons(String letter) {
    List<LaidBalloon> balloons = new ArrayList<>();
    for (int i = 0; i < random.nextInt(6); i++) {
      balloons.add(balloon(letter + i));
    }
    return balloons;
  }

  private LaidBalloon balloon(String id) {
    boolean marked = random.nextBoolean();
    boolean later = marked && random.nextInt(4) == 0;
    return new LaidBalloon(
        id,
        marked ? Optional.of(new CueMark(1 + random.nextInt(9), word(), word())) : Optional.empty(),
        random.nextBoolean()
            ? Optional.of(SHAPES.get(random.nextInt(SHAPES.size())))
            : Optional.empty(),
        random.nextBoolean() ? Optional.of(box()) : Optional.empty(),
        random.nextBoolean() ? OptionalDouble.of(size()) : OptionalDouble.empty(),
        random.nextBoolean() ? OptionalDouble.of(size()) : OptionalDouble.empty(),
        random.nextBoolean() ? OptionalInt.of(1 + random.nextInt(9)) : OptionalInt.empty(),
        Stream.generate(this::point).limit(random.nextInt(4)).toList(),
        random.nextBoolean(),
        random.nextBoolean(),
        new Extra(extra().jsonByKey(), later ? Map.of("cue", later()) : Map.of()));
  }

  private Extra extra() {
    return random.nextInt(3) == 0 ? later() : Extra.NONE;
  }

  private static Extra later() {
    return new Extra(Map.of("later", "{\"a\": [1, 2.50, null, \"\\ud800\"], \"b\": {}}"));
  }

  private String word() {
    return WORDS.get(random.nextInt(WORDS.size()));
  }

  private Box box() {
    return new Box(place(), place(), size(), size());
  }

  private XY point() {
    return new XY(place(), place());
  }

  private double place() {
    return random.nextInt(-100_000, 100_000_000) / 100.0;
  }

  private double size() {
    return random.nextInt(1, 100_000_000) / 100.0;
  }
}
