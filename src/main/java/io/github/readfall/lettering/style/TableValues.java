package io.github.readfall.lettering.style;

import static java.util.stream.Collectors.joining;

import io.github.readfall.base.finding.Spelling;
import io.github.readfall.lettering.toml.Quoted;
import io.github.readfall.lettering.toml.StyleFindings;
import io.github.readfall.lettering.toml.ValueKind;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;

/** One table of the file, which complains of every value that is of no use. */
final class TableValues implements Values {

  private static final int MOST_LISTED = 12;

  private final TomlTable table;
  private final TomlPosition at;
  private final List<String> path;
  private final StyleFindings complaints;

  private TableValues(
      TomlTable table, TomlPosition at, List<String> path, StyleFindings complaints) {
    this.table = table;
    this.at = at;
    this.path = path;
    this.complaints = complaints;
  }

  /** The whole file. */
  static TableValues root(TomlTable table, StyleFindings complaints) {
    return new TableValues(table, TomlPosition.positionAt(1, 1), List.of(), complaints);
  }

  /** The last name in the header: the person's own, if there may be many. */
  String name() {
    return path.get(path.size() - 1);
  }

  /** All names in this table, in the order of the file. */
  List<String> names() {
    return table.keySet().stream()
        .sorted(
            Comparator.comparingInt((String name) -> position(name).line())
                .thenComparingInt(name -> position(name).column()))
        .toList();
  }

  @Override
  public <T> Optional<T> get(Key<T> key) {
    return at(key.name()).flatMap(value -> read(key, value));
  }

  private <T> Optional<T> read(Key<T> key, Object value) {
    boolean rightType = key.kind().takes().test(value);
    Optional<T> read = rightType ? key.kind().read().apply(value) : Optional.empty();
    if (read.isEmpty()) {
      complain(
          rightType ? StyleFindings.IMPOSSIBLE : StyleFindings.WRONG_TYPE,
          key.name(),
          " is " + Quoted.value(value) + "; it must be " + key.kind().expected() + ".",
          () -> better(key, value));
    }
    return read;
  }

  private static String better(Key<?> key, Object value) {
    String better =
        Spelling.nearestKeyword(value.toString(), key.kind().words())
            .map(ValueKind::quoted)
            .orElse(key.example());
    return "Write, for instance, "
        + Quoted.key(key.name())
        + " = "
        + better
        + "; until then the built-in value is used.";
  }

  @Override
  public void clash(String sentence) {
    complaints.add(
        StyleFindings.IMPOSSIBLE,
        at,
        "In " + header() + " " + sentence + ".",
        () -> "Fix it; until then the built-in value is used.");
  }

  /** A table in this table; empty, and complained of, where it is something else. */
  Optional<TableValues> inner(String name) {
    Optional<Object> value = at(name);
    List<String> innerPath = Stream.concat(path.stream(), Stream.of(name)).toList();
    value
        .filter(v -> !(v instanceof TomlTable))
        .ifPresent(v -> complainOfNoTable(name, v, Quoted.header(innerPath)));
    return value
        .filter(TomlTable.class::isInstance)
        .map(TomlTable.class::cast)
        .map(inner -> new TableValues(inner, position(name), innerPath, complaints));
  }

  /** Returns true if the value of a name is a table. */
  boolean isTable(String name) {
    return at(name).filter(TomlTable.class::isInstance).isPresent();
  }

  private void complainOfNoTable(String name, Object value, String header) {
    complain(
        StyleFindings.WRONG_TYPE,
        name,
        " is " + Quoted.value(value) + "; it must be a table.",
        () ->
            Sections.headerOf(name)
                .map(elsewhere -> name + " belongs under " + elsewhere + ".")
                .orElse("Write " + header + " on a line of its own, and its keys below it."));
  }

  /** Complains of every name that means nothing here. */
  void refuseUnknown(Predicate<String> isKnown, Collection<String> known) {
    for (String name : table.keySet()) {
      if (!isKnown.test(name)) {
        complain(
            StyleFindings.UNKNOWN_KEY,
            name,
            " is not known, so it is ignored.",
            () -> meant(name, known));
      }
    }
  }

  /** Reports that this table's own name looks like a typo of a known one. */
  void doubt(String known) {
    complaints.add(
        StyleFindings.UNKNOWN_KEY,
        at,
        header() + " is not known; it is kept as one of your own.",
        () -> "Did you mean " + Quoted.key(known) + "?");
  }

  private static String meant(String name, Collection<String> known) {
    return Spelling.nearestKeyword(name, known)
        .map(near -> "Did you mean " + Quoted.key(near) + "?")
        .or(() -> Sections.headerOf(name).map(header -> name + " belongs under " + header + "."))
        .orElseGet(() -> "Known here: " + listed(known) + ".");
  }

  private static String listed(Collection<String> known) {
    String first = known.stream().limit(MOST_LISTED).map(Quoted::key).collect(joining(", "));
    return first + (known.size() > MOST_LISTED ? " and others" : "");
  }

  private void complain(String rule, String name, String sentence, Supplier<String> advice) {
    String here = path.isEmpty() ? "" : " in " + header();
    complaints.add(rule, position(name), Quoted.key(name) + here + sentence, advice);
  }

  private String header() {
    return Quoted.header(path);
  }

  private Optional<Object> at(String name) {
    return Optional.ofNullable(table.get(List.of(name)));
  }

  private TomlPosition position(String name) {
    TomlPosition position = table.inputPositionOf(List.of(name));
    return position == null ? at : position;
  }
}
