package io.github.readfall.base.finding;

import java.util.List;
import java.util.OptionalInt;

/**
 * The place of a finding; unknown parts are empty.
 *
 * @param file as the person named it; empty if there is only one
 * @param line in that file, from 1
 * @param column in that line, in code points from 1
 * @param panel the panel's place in the script, from 1
 * @param balloons ids of the balloons it concerns, in script order
 */
public record Where(
    String file, OptionalInt line, OptionalInt column, OptionalInt panel, List<String> balloons) {

  public Where {
    balloons = List.copyOf(balloons);
  }

  /** The episode as a whole. */
  public static Where everywhere() {
    return new Where("", OptionalInt.empty(), OptionalInt.empty(), OptionalInt.empty(), List.of());
  }

  /** A place in the script or in another text file. */
  public static Where at(String file, int line, int column) {
    return new Where(
        file, OptionalInt.of(line), OptionalInt.of(column), OptionalInt.empty(), List.of());
  }

  /** One balloon, and the script line it is written on. */
  public static Where balloon(String id, int panel, int scriptLine) {
    return balloons(List.of(id), panel, scriptLine);
  }

  /** Some balloons of a panel, and the script line of the first. */
  public static Where balloons(List<String> ids, int panel, int scriptLine) {
    return new Where(
        "", OptionalInt.of(scriptLine), OptionalInt.empty(), OptionalInt.of(panel), ids);
  }

  /** A panel as a whole, and the script line it begins on. */
  public static Where panel(int number, int scriptLine) {
    return balloons(List.of(), number, scriptLine);
  }
}
