package io.github.readfall.strip.json;

import io.github.readfall.base.finding.Spelling;
import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import io.github.readfall.script.Letters;
import io.github.readfall.strip.Extra;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** Reads the keys of an object of layout.json; keys that are never asked for are unknown. */
final class Members {

  /**
   * The greatest length or coordinate, in strip pixels. House default, no source: 1000 episodes.
   */
  static final double MOST_PX = 10_000_000;

  private static final String LENGTHS = "Lengths are in strip pixels, 10 000 000 at most.";

  private final Json.Fields json;
  private final String path;
  private final LayoutFindings faults;
  private final Map<String, List<Members>> asked = new LinkedHashMap<>();

  /**
   * The members of an object.
   *
   * @param path its name in messages, e.g. {@code panels[2]}; empty for the whole file
   */
  Members(Json.Fields json, String path, LayoutFindings faults) {
    this.json = json;
    this.path = path;
    this.faults = faults;
  }

  int offset() {
    return json.offset();
  }

  /** The value of a key; empty if it is left out or {@code null}. */
  Optional<Json> value(String key) {
    asked.putIfAbsent(key, List.of());
    return json.get(key)
        .filter(value -> !(value instanceof Json.Literal) || !value.text().equals("null"));
  }

  int offsetOf(String key) {
    return value(key).map(Json::offset).orElse(offset());
  }

  /** Reports a key that is missing. */
  void need(String key, String loss) {
    if (value(key).isEmpty()) {
      String what = name(key) + " is missing, so " + loss + ".";
      faults.error("missing", offset(), what, "Write it here; docs/layout.md has an example.");
    }
  }

  Optional<String> words(String key) {
    return value(key)
        .flatMap(
            value ->
                value instanceof Json.Words words
                    ? Optional.of(words.value())
                    : wrong(key, value, "a text in double quotes"));
  }

  boolean flag(String key) {
    return value(key)
        .flatMap(
            value ->
                value instanceof Json.Literal
                    ? Optional.of(value.text().equals("true"))
                    : Members.this.<Boolean>wrong(key, value, "true or false, without quotes"))
        .orElse(false);
  }

  /** A length above 0, in strip pixels. */
  OptionalDouble length(String key) {
    Optional<Double> length = value(key).flatMap(value -> number(name(key), value, true));
    return length.map(OptionalDouble::of).orElse(OptionalDouble.empty());
  }

  /** A distance up or down the strip, in strip pixels; not 0. */
  OptionalDouble shift(String key) {
    Optional<Double> shift = value(key).flatMap(value -> shift(key, value));
    return shift.map(OptionalDouble::of).orElse(OptionalDouble.empty());
  }

  private Optional<Double> shift(String key, Json value) {
    Optional<Double> number = number(name(key), value, false);
    if (number.filter(px -> px == 0).isPresent()) {
      faults.error(
          "number", value.offset(), shouldBe(name(key), "a number other than 0", value), LENGTHS);
      return Optional.empty();
    }
    return number;
  }

  /** A whole number from 1. */
  Optional<Integer> count(String key) {
    return value(key)
        .flatMap(
            value -> {
              double number = value instanceof Json.Figure n ? n.value() : Double.NaN;
              boolean whole = number >= 1 && number <= MOST_PX && number == Math.rint(number);
              return whole ? Optional.of((int) number) : notACount(key, value);
            });
  }

  private Optional<Integer> notACount(String key, Json value) {
    faults.error("number", value.offset(), shouldBe(name(key), "a whole number from 1", value), "");
    return Optional.empty();
  }

  /** {@code [left, top, width, height]}; width and height above 0. */
  Optional<Box> box(String key) {
    return numbers(key, 4, "[left, top, width, height]", true)
        .map(n -> new Box(n.get(0), n.get(1), n.get(2), n.get(3)));
  }

  /** {@code [x, y]}. */
  Optional<XY> point(String key) {
    return numbers(key, 2, "[x, y]", false).map(n -> new XY(n.get(0), n.get(1)));
  }

  /** {@code [[x, y], [x, y]]}; points that cannot be read are left out. */
  List<XY> points(String key) {
    List<XY> points = new ArrayList<>();
    List<Json> items = items(key);
    for (int i = 0; i < items.size(); i++) {
      numbers(name(key) + "[" + i + "]", items.get(i), 2)
          .map(n -> new XY(n.get(0), n.get(1)))
          .ifPresent(points::add);
    }
    return points;
  }

  private Optional<List<Double>> numbers(String name, Json value, int count) {
    if (!(value instanceof Json.Items list) || list.items().size() != count) {
      faults.error("type", value.offset(), shouldBe(name, count + " numbers", value), "");
      return Optional.empty();
    }
    List<Double> numbers =
        list.items().stream().flatMap(item -> number(name, item, false).stream()).toList();
    return Optional.of(numbers).filter(n -> n.size() == count);
  }

  private Optional<List<Double>> numbers(String key, int count, String form, boolean sized) {
    return value(key)
        .flatMap(
            value -> {
              if (!(value instanceof Json.Items list) || list.items().size() != count) {
                return wrong(key, value, count + " numbers, " + form);
              }
              List<Double> numbers = new ArrayList<>();
              for (int i = 0; i < count; i++) {
                String entry = name(key) + "[" + i + "]";
                number(entry, list.items().get(i), sized && i >= 2).ifPresent(numbers::add);
              }
              return Optional.of(numbers).filter(n -> n.size() == count);
            });
  }

  /** A number in strip pixels. */
  Optional<Double> number(String name, Json value, boolean aboveNought) {
    double number = value instanceof Json.Figure n ? n.value() : Double.NaN;
    if (Math.abs(number) <= MOST_PX && (!aboveNought || number > 0)) {
      return Optional.of(number);
    }
    String what = aboveNought ? "a number above 0" : "a number";
    faults.error("number", value.offset(), shouldBe(name, what, value), LENGTHS);
    return Optional.empty();
  }

  Optional<Members> object(String key) {
    Optional<Members> object =
        value(key)
            .flatMap(
                value ->
                    value instanceof Json.Fields fields
                        ? Optional.of(new Members(fields, name(key), faults))
                        : wrong(key, value, "an object in curly brackets"));
    object.ifPresent(found -> asked.put(key, List.of(found)));
    return object;
  }

  /** The values of a list. */
  List<Json> items(String key) {
    return value(key)
        .flatMap(
            value ->
                value instanceof Json.Items list
                    ? Optional.of(list.items())
                    : Members.this.<List<Json>>wrong(key, value, "a list in square brackets"))
        .orElse(List.of());
  }

  /** The parts that the objects of a list stand for; objects that stand for none are left out. */
  <T> List<T> each(String key, Function<Members, Optional<T>> reader) {
    List<T> read = new ArrayList<>();
    List<Json> items = items(key);
    for (int i = 0; i < items.size(); i++) {
      String name = name(key) + "[" + i + "]";
      if (items.get(i) instanceof Json.Fields fields) {
        reader.apply(new Members(fields, name, faults)).ifPresent(read::add);
      } else {
        String what = shouldBe(name, "an object in curly brackets", items.get(i));
        faults.error("type", items.get(i).offset(), what, "");
      }
    }
    return read;
  }

  /** The keys that were never asked for, each reported as a note. */
  Extra extra() {
    Map<String, String> unknown = new LinkedHashMap<>();
    for (Json.Member member : json.members()) {
      if (!asked.containsKey(member.name())) {
        note(member);
        unknown.put(member.name(), member.value().text());
      }
    }
    Map<String, Extra> within = new LinkedHashMap<>();
    asked.forEach(
        (key, inner) ->
            inner.stream()
                .map(Members::extra)
                .filter(extra -> !extra.isEmpty())
                .forEach(extra -> within.put(key, extra)));
    return new Extra(unknown, within);
  }

  private void note(Json.Member member) {
    String name = LayoutFindings.shown(member.name());
    faults.note(
        "unknown-key",
        member.offset(),
        "The key " + name + " is not known here; it is kept and does nothing.",
        faults.isFull() ? "" : guess(member.name()));
  }

  private String guess(String unknown) {
    return Spelling.nearestName(unknown, asked.keySet(), Letters::fold)
        .map(known -> "If you meant " + known + ", write that.")
        .orElse("");
  }

  String name(String key) {
    return path.isEmpty() ? key : path + "." + key;
  }

  private <T> Optional<T> wrong(String key, Json value, String what) {
    faults.error("type", value.offset(), shouldBe(name(key), what, value), "");
    return Optional.empty();
  }

  static String shouldBe(String name, String what, Json value) {
    String written = value instanceof Json.Figure n ? n.written() : value.text();
    String shown = LayoutFindings.shown(written);
    return name + " should be " + what + ", not " + shown + ", and is left out.";
  }
}
