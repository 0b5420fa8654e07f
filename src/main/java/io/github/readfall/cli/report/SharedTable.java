package io.github.readfall.cli.report;

import io.github.readfall.job.polyglot.SharedBalloon;
import io.github.readfall.job.polyglot.SharedBalloons;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** The cost of balloons that hold other languages too: columns beside their sizes, and a sum. */
final class SharedTable {

  static final List<String> HEADS = List.of("decided by", "area");
  static final List<Boolean> RIGHT = List.of(false, true);

  private SharedTable() {}

  static List<String> cells(Optional<SharedBalloon> balloon) {
    return List.of(
        balloon.map(SharedTable::decidedBy).orElse(""),
        balloon.map(one -> percent(one.cost())).orElse(""));
  }

  private static String decidedBy(SharedBalloon balloon) {
    return balloon.expected() ? balloon.decidedBy() + " (expected)" : balloon.decidedBy();
  }

  /** A line; empty if no other language was asked for. */
  static String summary(SharedBalloons shared) {
    if (shared.balloons().isEmpty()) {
      return "";
    }
    double own = shared.balloons().stream().mapToDouble(b -> area(b, 1)).sum();
    double all = shared.balloons().stream().mapToDouble(b -> area(b, 1 + b.cost())).sum();
    Map<String, Long> decided =
        shared.balloons().stream()
            .collect(
                Collectors.groupingBy(
                    SharedBalloon::decidedBy, TreeMap::new, Collectors.counting()));
    String deciding =
        decided.entrySet().stream()
            .map(entry -> entry.getKey() + " " + entry.getValue())
            .collect(Collectors.joining(", "));
    return "area of all balloons: "
        + percent(all / own - 1)
        + " compared with the script's own language; decided by "
        + deciding
        + "\n";
  }

  private static double area(SharedBalloon balloon, double times) {
    return balloon.ownSize().width() * balloon.ownSize().height() * times;
  }

  private static String percent(double share) {
    return String.format(Locale.ROOT, "%+.0f %%", share * 100);
  }
}
