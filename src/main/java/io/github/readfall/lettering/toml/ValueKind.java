package io.github.readfall.lettering.toml;

import io.github.readfall.base.viewing.Colour;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * A kind of value of a key in series.toml.
 *
 * @param expected words after "it must be"
 * @param takes true for a TOML value of the right type
 * @param read the meaning of a value of the right type; empty if it is impossible
 * @param words its possible words, if it is one of a few
 * @param range its possible numbers, if it is one
 */
public record ValueKind<T>(
    String expected,
    Predicate<Object> takes,
    Function<Object, Optional<T>> read,
    List<String> words,
    Optional<Range> range) {

  private static final double WHOLE_UP_TO = 0x1p53; // every whole double up to here is exact

  private static <T> ValueKind<T> of(
      String expected, Predicate<Object> takes, Function<Object, Optional<T>> read) {
    return new ValueKind<>(expected, takes, read, List.of(), Optional.empty());
  }

  private ValueKind<T> in(Range numbers) {
    return new ValueKind<>(expected, takes, read, words, Optional.of(numbers));
  }

  /** A whole number in a range; {@code 350.0} is one too. */
  public static ValueKind<Long> wholeLong(String unit, long min, long max) {
    ValueKind<Long> kind =
        of(
            "a whole number" + unit(unit) + " from " + min + " to " + max,
            Number.class::isInstance,
            value ->
                number(value, (double) min, (double) max)
                    .filter(n -> n == Math.rint(n))
                    .map(Double::longValue));
    return kind.in(new Range((double) min, (double) max, unit, true));
  }

  /** A whole number in a range that an {@code int} can hold. */
  public static ValueKind<Integer> whole(String unit, int min, int max) {
    ValueKind<Long> kind = wholeLong(unit, min, max);
    ValueKind<Integer> small =
        of(kind.expected, kind.takes, value -> kind.read.apply(value).map(Math::toIntExact));
    return small.in(new Range(min, max, unit, true));
  }

  /** A number in a range, both ends included. */
  public static ValueKind<Double> number(String unit, double min, double max) {
    ValueKind<Double> kind =
        of(
            "a number" + unit(unit) + " from " + plain(min) + " to " + plain(max),
            Number.class::isInstance,
            value -> number(value, min, max));
    return kind.in(new Range(min, max, unit, false));
  }

  /** A number, or a word for one. */
  public static ValueKind<Double> numberOr(String word, double meant, ValueKind<Double> kind) {
    return new ValueKind<>(
        kind.expected + ", or " + quoted(word),
        value -> kind.takes.test(value) || value instanceof String,
        value ->
            value instanceof String text
                ? Optional.of(meant).filter(n -> text.equals(word))
                : kind.read.apply(value),
        List.of(word),
        kind.range);
  }

  /** Yes or no. */
  public static ValueKind<Boolean> truth() {
    return of(
        "true or false, without quotes",
        Boolean.class::isInstance,
        value -> Optional.of(value.equals(true)));
  }

  /** A text with something in it. */
  public static ValueKind<String> text() {
    return string(
        "a text in double quotes, not empty", text -> Optional.of(text).filter(t -> !t.isBlank()));
  }

  /** A colour. */
  public static ValueKind<Colour> colour() {
    return string("a colour like \"#1a2b3c\"", Colour::parse);
  }

  /** One of a few words. */
  public static <T> ValueKind<T> word(List<String> words, Function<String, Optional<T>> of) {
    String list = words.stream().map(ValueKind::quoted).collect(Collectors.joining(", "));
    ValueKind<T> kind = string("one of " + list, of);
    return new ValueKind<>(kind.expected, kind.takes, kind.read, words, Optional.empty());
  }

  private static <T> ValueKind<T> string(String expected, Function<String, Optional<T>> read) {
    return of(expected, String.class::isInstance, value -> read.apply(value.toString()));
  }

  private static Optional<Double> number(Object value, double min, double max) {
    double n = ((Number) value).doubleValue();
    boolean possible = n >= min && n <= max && Math.abs(n) <= WHOLE_UP_TO; // NaN is neither
    return possible ? Optional.of(n + 0.0) : Optional.empty(); // and -0 is 0
  }

  private static String unit(String unit) {
    return unit.isEmpty() ? "" : " of " + unit;
  }

  /** A number as written in the file, but without a {@code .0}. */
  public static String plain(double n) {
    if (Double.isInfinite(n) || Double.isNaN(n)) {
      return Double.isNaN(n) ? "nan" : n > 0 ? "inf" : "-inf";
    }
    return n == Math.rint(n) && Math.abs(n) <= WHOLE_UP_TO
        ? String.format(Locale.ROOT, "%d", (long) n)
        : Double.toString(n);
  }

  public static String quoted(String word) {
    return '"' + word + '"';
  }
}
