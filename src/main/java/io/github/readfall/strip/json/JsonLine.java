package io.github.readfall.strip.json;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.strip.Extra;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Builds a JSON object on one line. */
public final class JsonLine {

  private static final int DECIMALS = 2;
  private static final double LEAST_SIZE = 0.01; // anything above 0 stays above 0

  private final List<String> members = new ArrayList<>();

  JsonLine json(String key, String json) {
    members.add(Json.quoted(key) + ": " + json);
    return this;
  }

  JsonLine words(String key, String value) {
    return json(key, Json.quoted(value));
  }

  /** Adds a text unless it is empty. */
  JsonLine filledWords(String key, String value) {
    return value.isEmpty() ? this : words(key, value);
  }

  JsonLine count(String key, int value) {
    return json(key, Integer.toString(value));
  }

  JsonLine size(String key, double px) {
    return json(key, number(Math.max(LEAST_SIZE, px)));
  }

  /** Adds a distance up or down, never zero. */
  JsonLine shift(String key, double px) {
    return json(key, number(Math.copySign(Math.max(LEAST_SIZE, Math.abs(px)), px)));
  }

  /** Adds a flag if it is set. */
  JsonLine flag(String key, boolean set) {
    return set ? json(key, "true") : this;
  }

  JsonLine point(String key, XY at) {
    return json(key, numbers(List.of(at.x(), at.y())));
  }

  JsonLine points(String key, List<XY> points) {
    return json(
        key,
        points.stream()
            .map(at -> numbers(List.of(at.x(), at.y())))
            .collect(Collectors.joining(", ", "[", "]")));
  }

  JsonLine box(String key, Box box) {
    double width = Math.max(LEAST_SIZE, box.width());
    double height = Math.max(LEAST_SIZE, box.height());
    return json(key, numbers(List.of(box.x(), box.y(), width, height)));
  }

  /** Adds keys that this version does not know. */
  JsonLine extra(Extra extra) {
    extra.jsonByKey().forEach(this::json);
    return this;
  }

  static String numbers(List<Double> values) {
    return values.stream().map(JsonLine::number).collect(Collectors.joining(", ", "[", "]"));
  }

  /** A number to a hundredth, without exponent or trailing zeros. */
  public static String number(double px) {
    BigDecimal rounded = BigDecimal.valueOf(px).setScale(DECIMALS, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  @Override
  public String toString() {
    return members.stream().collect(Collectors.joining(", ", "{", "}"));
  }
}
