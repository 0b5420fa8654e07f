package io.github.readfall.lettering.style;

import io.github.readfall.base.finding.Severity;
import io.github.readfall.base.viewing.Phone;
import io.github.readfall.script.CueKind;
import io.github.readfall.script.Keywords;
import io.github.readfall.script.Letters;
import io.github.readfall.script.Manner;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The lettering of a whole series and its readers' phones: the content of series.toml.
 *
 * @param strip the canvas
 * @param phones that readers hold; never empty
 * @param lettering sizes and air of every voice
 * @param voices difference of each voice from plain speech, looked up by name in any case; the
 *     voice {@value #DEFAULT_VOICE} is the start of all others but sound effects
 * @param manners difference of each manner from the voice it is spoken in
 * @param limits of rules, by rule id, in the unit of the rule
 * @param severities the person's own, by rule id
 * @param delivery limits of the publisher
 * @param deliveries limits of others, by names of the person's own or built in
 * @param keywords the words of the script
 * @param languages difference of lettering in each language, by its tag in small letters
 */
public record HouseStyle(
    StripStyle strip,
    List<Phone> phones,
    Lettering lettering,
    Map<String, LookChange> voices,
    Map<Manner, LookChange> manners,
    Map<String, Double> limits,
    Map<String, Severity> severities,
    Delivery delivery,
    Map<String, Delivery> deliveries,
    Keywords keywords,
    Map<String, LanguageStyle> languages) {

  /** Name of the voice that all others start from. */
  public static final String DEFAULT_VOICE = "default";

  /** Names that a script takes for one are one voice. */
  static final Comparator<String> BY_VOICE_NAME = Comparator.comparing(Letters::fold);

  /** The style of a series that says nothing of its own. */
  public static final HouseStyle DEFAULT = BuiltIn.style();

  public HouseStyle {
    if (phones.isEmpty()) {
      throw new IllegalArgumentException("a strip is read on some phone");
    }
    phones = List.copyOf(phones);
    voices = copy(new TreeMap<>(BY_VOICE_NAME), voices);
    manners = copy(new LinkedHashMap<>(), manners);
    limits = copy(new TreeMap<>(), limits);
    severities = copy(new TreeMap<>(), severities);
    deliveries = copy(new TreeMap<>(), deliveries);
    languages = copy(new TreeMap<>(), languages);
  }

  /** The same style on a strip of another width, in pixels; positive. */
  public HouseStyle onStripOf(int widthPx) {
    return new HouseStyle(
        strip.ofWidth(widthPx),
        phones,
        lettering,
        voices,
        manners,
        limits,
        severities,
        delivery,
        deliveries,
        keywords,
        languages);
  }

  /**
   * The same style for lettering in a language. What is so already stays.
   *
   * @param tag BCP 47
   */
  public HouseStyle in(String tag) {
    LanguageStyle own = language(tag);
    if (own.equals(LanguageStyle.SAME)) {
      return this;
    }
    Map<String, LookChange> ownVoices = new TreeMap<>(BY_VOICE_NAME);
    ownVoices.putAll(voices);
    ownVoices.put(DEFAULT_VOICE, own.voice(voice(DEFAULT_VOICE).orElse(LookChange.NONE)));
    return new HouseStyle(
        strip.readFrom(own.reads().orElse(strip.reads())),
        phones,
        own.lettering(lettering),
        ownVoices,
        manners,
        limits,
        severities,
        delivery,
        deliveries,
        keywords,
        Map.of(tag.toLowerCase(Locale.ROOT), own.done()));
  }

  /**
   * The settings of a language: by its tag, else by the tag without its last parts (RFC 4647, 3.4).
   */
  public LanguageStyle language(String tag) {
    String range = tag.toLowerCase(Locale.ROOT);
    while (!languages.containsKey(range) && range.contains("-")) {
      range = range.substring(0, range.lastIndexOf('-'));
    }
    return languages.getOrDefault(range, LanguageStyle.SAME);
  }

  /** The phone that shows the strip smallest; of equally narrow ones the one held farthest away. */
  public Phone narrowestPhone() {
    return Collections.min(
        phones,
        Comparator.comparingDouble(Phone::widthDp)
            .thenComparing(Comparator.comparingDouble(Phone::distanceMm).reversed()));
  }

  /** The person's settings of this voice; empty if there are none. */
  public Optional<LookChange> voice(String name) {
    return Optional.ofNullable(voices.get(name));
  }

  /** The changes of this manner; none if it is not known. */
  public LookChange manner(Manner manner) {
    return manners.getOrDefault(manner, LookChange.NONE);
  }

  /**
   * The look of a cue: plain speech, then its kind, then its voice, then its manners.
   *
   * <p>The later wins, except that sizes multiply. Manners are taken as written, left to right. A
   * caption starts as the manner of that name, so a voice of its own can still change it; so does a
   * sound effect, which the default voice does not touch.
   *
   * @param voice the speaker's voice, or the speaker
   */
  public Look look(String voice, CueKind kind, List<Manner> manners) {
    Look look = start(kind);
    if (!Letters.fold(voice).equals(DEFAULT_VOICE)) {
      look = voice(voice).orElse(LookChange.NONE).apply(look);
    }
    for (Manner manner : new LinkedHashSet<>(manners)) {
      look = isImplied(manner, kind) ? look : manner(manner).apply(look);
    }
    return look;
  }

  private Look start(CueKind kind) {
    Look voice = voice(DEFAULT_VOICE).orElse(LookChange.NONE).apply(Look.SPEECH);
    return switch (kind) {
      case DIALOGUE -> voice;
      case CAPTION -> manner(Manner.CAPTION).apply(voice);
      case EFFECT -> manner(Manner.EFFECT).apply(Look.SPEECH);
    };
  }

  private static boolean isImplied(Manner manner, CueKind kind) {
    return switch (kind) {
      case DIALOGUE -> false;
      case CAPTION -> manner.equals(Manner.CAPTION);
      case EFFECT -> manner.equals(Manner.EFFECT);
    };
  }

  /**
   * The limit of a rule, in the unit of the rule.
   *
   * @throws IllegalArgumentException if neither the person nor {@link #DEFAULT} sets one
   */
  public double limit(String ruleId) {
    Double limit = limits.get(ruleId);
    if (limit == null) {
      throw new IllegalArgumentException("no limit is known for " + ruleId);
    }
    return limit;
  }

  /** The limit of a rule that brings its own, in the unit of the rule. */
  public double limit(String ruleId, double builtIn) {
    return limits.getOrDefault(ruleId, builtIn);
  }

  /** The severity of this rule's findings: the person's, else the rule's. */
  public Severity severity(String ruleId, Severity builtIn) {
    return severities.getOrDefault(ruleId, builtIn);
  }

  private static <K, V> Map<K, V> copy(Map<K, V> empty, Map<? extends K, ? extends V> from) {
    empty.putAll(from);
    return Collections.unmodifiableMap(empty);
  }
}
