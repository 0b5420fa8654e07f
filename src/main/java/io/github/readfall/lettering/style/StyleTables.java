package io.github.readfall.lettering.style;

import io.github.readfall.base.finding.Severity;
import io.github.readfall.base.finding.Spelling;
import io.github.readfall.base.viewing.Phone;
import io.github.readfall.lettering.toml.Range;
import io.github.readfall.lettering.toml.ValueKind;
import io.github.readfall.script.Keywords;
import io.github.readfall.script.Manner;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The tables of one series.toml, put together to a house style. */
final class StyleTables {

  private static final String LIMITS = "limits";
  private static final String SEVERITIES = "severities";
  private static final String KEYWORD_MANNERS = "manners";

  private static final ValueKind<Double> LIMIT =
      ValueKind.number("", Range.LIMIT.least(), Range.LIMIT.most());
  private static final ValueKind<Severity> SEVERITY =
      ValueKind.word(
          Arrays.stream(Severity.values()).map(Severity::word).toList(), StyleTables::severity);
  private static final ValueKind<Manner> MANNER =
      ValueKind.word(
          HouseStyle.DEFAULT.manners().keySet().stream().map(Manner::word).toList(),
          word -> Optional.of(Manner.of(word)).filter(Manner::isKnown));

  /** BCP 47, as far as a typo can be seen. */
  private static final Pattern TAG = Pattern.compile("[A-Za-z]{2,3}(-[A-Za-z0-9]{1,8})*");

  private static final List<String> TABLES =
      Stream.concat(Sections.ALL.stream().map(Section::name), Stream.of(LIMITS, SEVERITIES))
          .toList();

  private static final List<String> KEYWORDS =
      Stream.concat(Sections.KEYWORDS.keyNames().stream(), Stream.of(KEYWORD_MANNERS)).toList();

  private final TableValues root;
  private final HouseStyle builtIn = HouseStyle.DEFAULT;

  StyleTables(TableValues root) {
    this.root = root;
  }

  HouseStyle style() {
    root.refuseUnknown(TABLES::contains, TABLES);
    Keywords keywords = root.inner("keywords").map(this::keywords).orElse(builtIn.keywords());
    Optional<TableValues> deliveries = root.inner(Sections.DELIVERY.name());
    Delivery delivery = deliveries.map(this::delivery).orElse(builtIn.delivery());
    return new HouseStyle(
        one(Sections.STRIP, builtIn.strip()),
        phones(),
        one(Sections.LETTERING, builtIn.lettering()),
        voices(),
        manners(keywords),
        perRule(LIMITS, LIMIT, StyleTables::exampleLimit, builtIn.limits()),
        perRule(SEVERITIES, SEVERITY, id -> "\"warning\"", builtIn.severities()),
        delivery,
        deliveries(deliveries, delivery),
        keywords,
        languages());
  }

  private <T> T one(Section<T> section, T standing) {
    return root.inner(section.name())
        .map(values -> build(section, values, standing))
        .orElse(standing);
  }

  private static <T> T build(Section<T> section, TableValues values, T standing) {
    values.refuseUnknown(section.keyNames()::contains, section.keyNames());
    return section.build().apply(values, standing);
  }

  /** The tables of a section of which there may be many, in the order of the file. */
  private List<TableValues> each(Section<?> section) {
    return root.inner(section.name()).map(StyleTables::tablesIn).orElse(List.of());
  }

  private static List<TableValues> tablesIn(TableValues all) {
    return all.names().stream().flatMap(name -> all.inner(name).stream()).toList();
  }

  private List<Phone> phones() {
    List<Phone> phones =
        root.inner(Sections.PHONES.name()).map(StyleTables::phonesIn).orElse(List.of());
    return phones.isEmpty() ? builtIn.phones() : phones;
  }

  private static List<Phone> phonesIn(TableValues all) {
    if (all.names().isEmpty()) {
      all.clash("no phone is named, as [phones.small] would");
    }
    return tablesIn(all).stream().map(StyleTables::phone).toList();
  }

  private static Phone phone(TableValues values) {
    Phone small = Phone.SMALL;
    return build(
        Sections.PHONES,
        values,
        new Phone(values.name(), small.widthDp(), small.heightDp(), small.distanceMm()));
  }

  private Delivery delivery(TableValues values) {
    List<String> keys = Sections.DELIVERY.keyNames();
    values.refuseUnknown(name -> keys.contains(name) || values.isTable(name), keys);
    return Sections.DELIVERY.build().apply(values, builtIn.delivery());
  }

  /** Tables within the table of the usual one, from which those start that are not built in. */
  private Map<String, Delivery> deliveries(Optional<TableValues> table, Delivery usual) {
    Map<String, Delivery> deliveries = new TreeMap<>(builtIn.deliveries());
    table.stream()
        .flatMap(
            all -> all.names().stream().filter(all::isTable).flatMap(n -> all.inner(n).stream()))
        .filter(values -> !Sections.DELIVERY.keyNames().contains(values.name()))
        .forEach(
            values -> {
              Delivery start = deliveries.getOrDefault(values.name(), usual);
              deliveries.put(values.name(), build(Sections.DELIVERY, values, start));
            });
    return deliveries;
  }

  private Map<String, LookChange> voices() {
    Map<String, LookChange> voices = new TreeMap<>(HouseStyle.BY_VOICE_NAME);
    voices.putAll(builtIn.voices());
    for (TableValues values : each(Sections.VOICES)) {
      LookChange soFar = voices.getOrDefault(values.name(), LookChange.NONE);
      voices.put(values.name(), build(Sections.VOICES, values, soFar));
    }
    return voices;
  }

  /** The languages by their tags, in small letters, without those that differ in nothing. */
  private Map<String, LanguageStyle> languages() {
    Map<String, LanguageStyle> languages = new TreeMap<>(builtIn.languages());
    for (TableValues values : each(Sections.LANGUAGES)) {
      LanguageStyle own = build(Sections.LANGUAGES, values, LanguageStyle.SAME);
      if (!TAG.matcher(values.name()).matches()) {
        values.clash("the name is no language tag, as pt or pt-BR are");
      } else if (!own.equals(LanguageStyle.SAME)) {
        languages.put(values.name().toLowerCase(Locale.ROOT), own);
      }
    }
    return languages;
  }

  private Map<Manner, LookChange> manners(Keywords keywords) {
    Map<Manner, LookChange> manners = new LinkedHashMap<>(builtIn.manners());
    for (TableValues values : each(Sections.MANNERS)) {
      Manner manner = keywords.manner(values.name());
      slipIn(manner).ifPresent(values::doubt);
      LookChange soFar = manners.getOrDefault(manner, LookChange.NONE);
      manners.put(manner, build(Sections.MANNERS, values, soFar));
    }
    return manners;
  }

  /** The known manner that an unknown one is one letter away from. */
  private static Optional<String> slipIn(Manner manner) {
    return MANNER.words().stream()
        .filter(word -> Spelling.typos(manner.word(), word) == 1)
        .findFirst();
  }

  private <T> Map<String, T> perRule(
      String table, ValueKind<T> kind, UnaryOperator<String> example, Map<String, T> standing) {
    Map<String, T> byRule = new TreeMap<>(standing);
    Predicate<String> isKnown = id -> RuleIds.known(id) || standing.containsKey(id);
    List<String> listed =
        Stream.concat(RuleIds.ALL.stream(), standing.keySet().stream()).distinct().toList();
    root.inner(table)
        .ifPresent(
            values -> {
              values.refuseUnknown(isKnown, listed);
              List<String> known = values.names().stream().filter(isKnown).toList();
              readAll(values, known, id -> new Key<>(id, kind, example.apply(id), ""), byRule::put);
            });
    return byRule;
  }

  private static <T> void readAll(
      TableValues values,
      List<String> names,
      Function<String, Key<T>> key,
      BiConsumer<String, T> found) {
    for (String name : names) {
      values.get(key.apply(name)).ifPresent(value -> found.accept(name, value));
    }
  }

  private static String exampleLimit(String ruleId) {
    return ValueKind.plain(HouseStyle.DEFAULT.limit(ruleId, 10));
  }

  private Keywords keywords(TableValues values) {
    values.refuseUnknown(KEYWORDS::contains, KEYWORDS);
    Keywords words = Sections.KEYWORDS.build().apply(values, builtIn.keywords());
    Map<String, Manner> manners = new LinkedHashMap<>();
    values
        .inner(KEYWORD_MANNERS)
        .ifPresent(
            own ->
                readAll(
                    own,
                    own.names(),
                    word -> new Key<>(word, MANNER, "\"whisper\"", ""),
                    manners::put));
    return new Keywords(words.panel(), words.scene(), words.caption(), words.effect(), manners);
  }

  private static Optional<Severity> severity(String word) {
    return Arrays.stream(Severity.values()).filter(s -> s.word().equals(word)).findFirst();
  }
}
