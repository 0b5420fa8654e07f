package io.github.readfall.window.style;

import io.github.readfall.base.wording.Wording;
import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.lettering.style.LookChange;
import io.github.readfall.lettering.style.LookKey;
import io.github.readfall.lettering.toml.TomlValue;
import io.github.readfall.lettering.toml.TomlValue.Figure;
import io.github.readfall.lettering.typeset.Typesetter;
import io.github.readfall.script.Manner;
import io.github.readfall.script.Script;
import io.github.readfall.window.model.StyleEntry;
import io.github.readfall.window.model.StyleSnapshot;
import io.github.readfall.window.model.StyleSubject;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The entries of the style page, kind by kind. */
final class SubjectList {

  /** The kinds of entries. */
  enum Kind {
    VOICES,
    MANNERS,
    LIMITS;

    /** The word used in keys of wording and in names. */
    String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /**
   * An entry of the list.
   *
   * @param says the values set in the series, in a few words
   */
  record Entry(StyleSubject subject, String says) {
    @Override
    public String toString() {
      return subject.name(); // typing in the list searches this
    }
  }

  private SubjectList() {}

  /**
   * All entries of a kind: those of the style, then those of the script that the style does not
   * mention.
   *
   * @param script empty if none is known
   */
  static List<Entry> of(Kind kind, StyleSnapshot style, Optional<Script> script) {
    return switch (kind) {
      case VOICES -> voices(style.style(), script).map(subject -> look(subject, style)).toList();
      case MANNERS -> manners(style.style(), script).map(subject -> look(subject, style)).toList();
      case LIMITS ->
          LimitForm.limited().stream()
              .map(
                  page ->
                      new Entry(
                          new StyleSubject.Limit(page.id()),
                          new Figure(style.style().limit(page.id(), page.limit().orElse(0)))
                              .shown()))
              .toList();
    };
  }

  private static Stream<StyleSubject> voices(HouseStyle style, Optional<Script> script) {
    Map<String, StyleSubject> voices = new LinkedHashMap<>();
    Stream<String> spoken =
        script.stream()
            .flatMap(
                s ->
                    s.cues().stream()
                        .map(cue -> Typesetter.voice(cue, s))
                        .filter(name -> !name.isBlank() && style.voice(name).isEmpty())
                        .filter(name -> !isKeyword(name, style)));
    Stream<String> own = Stream.concat(Stream.of(HouseStyle.DEFAULT_VOICE), voicesOf(style));
    Stream.concat(own, spoken)
        .forEach(
            name ->
                voices.putIfAbsent(name.toUpperCase(Locale.ROOT), new StyleSubject.Voice(name)));
    return voices.values().stream();
  }

  private static Stream<String> voicesOf(HouseStyle style) {
    return style.voices().keySet().stream();
  }

  /** Whether a name in the place of a speaker is a keyword. */
  private static boolean isKeyword(String name, HouseStyle style) {
    return name.equalsIgnoreCase(style.keywords().caption())
        || name.equalsIgnoreCase(style.keywords().effect());
  }

  private static Stream<StyleSubject> manners(HouseStyle style, Optional<Script> script) {
    Stream<Manner> spoken =
        script.stream().flatMap(s -> s.cues().stream()).flatMap(cue -> cue.manners().stream());
    return Stream.concat(style.manners().keySet().stream(), spoken)
        .distinct()
        .filter(manner -> !manner.equals(Manner.DRAWN))
        .map(StyleSubject.MannerLook::new);
  }

  private static Entry look(StyleSubject subject, StyleSnapshot style) {
    LookChange change =
        subject instanceof StyleSubject.MannerLook look
            ? style.style().manner(look.manner())
            : style.style().voice(subject.name()).orElse(LookChange.NONE);
    List<LookKey> own =
        Arrays.stream(LookKey.values())
            .filter(key -> style.says(new StyleEntry(subject, Optional.of(key))))
            .toList();
    Stream<String> said =
        own.stream()
            .filter(key -> key.kind() != LookKey.Kind.COLOUR)
            .flatMap(key -> key.of(change).map(value -> said(key, value)).stream());
    long colours = own.stream().filter(key -> key.kind() == LookKey.Kind.COLOUR).count();
    Stream<String> counted =
        Stream.of(Wording.of("style.said.colours", colours)).filter(words -> colours > 0);
    return new Entry(
        subject, Stream.concat(said, counted).collect(Collectors.joining("  \u00b7  ")));
  }

  private static String said(LookKey key, TomlValue value) {
    return switch (key.kind()) {
      case NUMBER -> key.word() + " " + value.shown();
      case TRUTH -> Wording.of("style.said." + value.shown(), key.word());
      case FACE, COLOUR, WORD -> value.shown();
    };
  }
}
