package io.github.readfall.style;

import io.github.readfall.finding.Severity;
import io.github.readfall.script.Keywords;
import io.github.readfall.script.Manner;
import io.github.readfall.viewing.Phone;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * Reads series.toml. Whatever is wrong with it is a finding with line and column, and the built-in
 * value stands in its place; nothing makes it throw.
 */
public final class StyleReader {

  private static final String LIMITS = "limits";
  private static final String SEVERITIES = "severities";
  private static final String MANNERS_IN_KEYWORDS = "manners";

  private static final ValueKind<Double> LIMIT = ValueKind.number("", 0, 1e9);
  private static final ValueKind<Severity> SEVERITY =
      ValueKind.word(
          Arrays.stream(Severity.values()).map(Severity::word).toList(), StyleReader::severity);
  private static final ValueKind<Manner> MANNER =
      ValueKind.word(
          HouseStyle.DEFAULT.manners().keySet().stream().map(Manner::word).toList(),
          word -> Optional.of(Manner.of(word)).filter(Manner::isKnown));

  private static final List<String> TABLES =
      Stream.concat(Sections.ALL.stream().map(Section::name), Stream.of(LIMITS, SEVERITIES))
          .toList();

  private final TableValues root;
  private final HouseStyle builtIn = HouseStyle.DEFAULT;

  private StyleReader(TableValues root) {
    this.root = root;
  }

  /**
   * The house style that a series.toml describes.
   *
   * @param toml the text of the file
   * @param fileName as the person named it, for the findings
   */
  public static ReadStyle read(String toml, String fileName) {
    Complaints complaints = new Complaints(fileName);
    TableValues root = TableValues.root(TolerantToml.read(toml, complaints), complaints);
    HouseStyle style = new StyleReader(root).style();
    return new ReadStyle(style, complaints.inOrder());
  }

  private HouseStyle style() {
    root.refuseUnknown(TABLES::contains, TABLES);
    Keywords keywords = keywords();
    return new HouseStyle(
        one(Sections.STRIP, builtIn.strip()),
        phones(),
        one(Sections.LETTERING, builtIn.lettering()),
        voices(),
        manners(keywords),
        perRule(LIMITS, LIMIT, StyleReader::exampleLimit, builtIn.limits()),
        perRule(SEVERITIES, SEVERITY, id -> "\"warning\"", builtIn.severities()),
        one(Sections.DELIVERY, builtIn.delivery()),
        keywords);
  }

  private <T> T one(Section<T> section, T builtIn) {
    return root.inner(section.name())
        .map(values -> build(section, values, builtIn))
        .orElse(builtIn);
  }

  private static <T> T build(Section<T> section, TableValues values, T builtIn) {
    values.refuseUnknown(section.keyNames()::contains, section.keyNames());
    return section.build().apply(values, builtIn);
  }

  private List<Phone> phones() {
    Map<String, Phone> phones = new LinkedHashMap<>();
    Phone small = Phone.SMALL;
    Optional<TableValues> all = root.inner(Sections.PHONES.name());
    all.filter(values -> values.names().isEmpty())
        .ifPresent(values -> values.clash("no phone is named, as [phones.small] would"));
    for (TableValues values : each(all)) {
      Phone other = new Phone(values.name(), small.widthDp(), small.heightDp(), small.distanceMm());
      phones.put(values.name(), build(Sections.PHONES, values, other));
    }
    return phones.isEmpty() ? builtIn.phones() : List.copyOf(phones.values());
  }

  private Map<String, LookChange> voices() {
    Map<String, LookChange> voices = new TreeMap<>(HouseStyle.BY_VOICE_NAME);
    voices.putAll(builtIn.voices());
    for (TableValues values : each(root.inner(Sections.VOICES.name()))) {
      LookChange soFar = voices.getOrDefault(values.name(), LookChange.NONE);
      voices.put(values.name(), build(Sections.VOICES, values, soFar));
    }
    return voices;
  }

  private Map<Manner, LookChange> manners(Keywords keywords) {
    Map<Manner, LookChange> manners = new LinkedHashMap<>(builtIn.manners());
    Optional<TableValues> all = root.inner(Sections.MANNERS.name());
    for (TableValues values : each(all)) {
      Manner manner = keywords.manner(values.name());
      slipIn(manner).ifPresent(known -> all.orElseThrow().doubt(values.name(), known));
      LookChange soFar = manners.getOrDefault(manner, LookChange.NONE);
      manners.put(manner, build(Sections.MANNERS, values, soFar));
    }
    return manners;
  }

  /** The manner that an unknown one is one letter away from. */
  private static Optional<String> slipIn(Manner manner) {
    return MANNER.words().stream()
        .filter(word -> Nearest.distance(manner.word(), word) == 1)
        .findFirst();
  }

  /** The tables of a section of which there may be many, in the order of the file. */
  private static List<TableValues> each(Optional<TableValues> all) {
    return all.stream()
        .flatMap(values -> values.names().stream().flatMap(name -> values.inner(name).stream()))
        .toList();
  }

  private <T> Map<String, T> perRule(
      String table, ValueKind<T> kind, UnaryOperator<String> example, Map<String, T> builtIn) {
    Map<String, T> byRule = new TreeMap<>(builtIn);
    for (TableValues values : root.inner(table).stream().toList()) {
      values.refuseUnknown(RuleIds::known, RuleIds.ALL);
      values.names().stream()
          .filter(RuleIds::known)
          .map(id -> new Key<>(id, kind, example.apply(id), ""))
          .forEach(key -> values.get(key).ifPresent(value -> byRule.put(key.name(), value)));
    }
    return byRule;
  }

  private static String exampleLimit(String ruleId) {
    return ValueKind.plain(HouseStyle.DEFAULT.limit(ruleId, 10));
  }

  private Keywords keywords() {
    Section<Keywords> section = Sections.KEYWORDS;
    Optional<TableValues> table = root.inner(section.name());
    List<String> known =
        Stream.concat(section.keyNames().stream(), Stream.of(MANNERS_IN_KEYWORDS)).toList();
    table.ifPresent(values -> values.refuseUnknown(known::contains, known));
    Keywords words =
        table
            .map(values -> section.build().apply(values, builtIn.keywords()))
            .orElse(builtIn.keywords());
    return new Keywords(
        words.panel(), words.scene(), words.caption(), words.effect(), mannerWords(table));
  }

  private static Map<String, Manner> mannerWords(Optional<TableValues> keywords) {
    Map<String, Manner> words = new LinkedHashMap<>();
    keywords
        .flatMap(values -> values.inner(MANNERS_IN_KEYWORDS))
        .ifPresent(
            values ->
                values
                    .names()
                    .forEach(
                        word ->
                            values
                                .get(new Key<>(word, MANNER, "\"whisper\"", ""))
                                .ifPresent(manner -> words.put(word, manner))));
    return words;
  }

  private static Optional<Severity> severity(String word) {
    return Arrays.stream(Severity.values()).filter(s -> s.word().equals(word)).findFirst();
  }
}
