package io.github.readfall.window.script;

import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.script.CastMember;
import io.github.readfall.script.CueKind;
import io.github.readfall.script.Keywords;
import io.github.readfall.script.Letters;
import io.github.readfall.script.Manner;
import io.github.readfall.script.Panel;
import io.github.readfall.script.Script;
import io.github.readfall.script.ShotHints;
import io.github.readfall.script.assist.Slot;
import io.github.readfall.script.assist.SlotKind;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * The completions of a script, in the order in which they are offered.
 *
 * @param speakers the cast, and other speakers of the script
 * @param manners of a cue
 * @param voices for members of the cast
 * @param hints shot sizes and other hints of a panel
 * @param headers known at the top of a script
 * @param keywords of the script's language
 */
public record Completions(
    List<String> speakers,
    List<String> manners,
    List<String> voices,
    List<String> hints,
    List<String> headers,
    Keywords keywords) {

  /** The completions of an unknown script. */
  public static final Completions NONE =
      new Completions(List.of(), List.of(), List.of(), List.of(), List.of(), Keywords.ENGLISH);

  public Completions {
    speakers = List.copyOf(speakers);
    manners = List.copyOf(manners);
    voices = List.copyOf(voices);
    hints = List.copyOf(hints);
    headers = List.copyOf(headers);
  }

  /** The completions of a script and the house style of its series. */
  public static Completions of(Script script, HouseStyle style) {
    Keywords keywords = script.keywords();
    return new Completions(
        distinct(
            Stream.concat(
                script.cast().stream().map(member -> inCapitals(member.name())),
                script.cues().stream()
                    .filter(cue -> cue.kind() != CueKind.EFFECT)
                    .filter(cue -> !cue.speaker().equals(keywords.caption()))
                    .flatMap(cue -> cue.speakers().stream())
                    .map(Completions::inCapitals))),
        distinct(
            Stream.of(
                    Manner.known().stream().map(Manner::word),
                    keywords.manners().keySet().stream().sorted(),
                    style.manners().keySet().stream().map(Manner::word))
                .flatMap(words -> words)),
        distinct(
            Stream.concat(
                style.voices().keySet().stream()
                    .filter(Predicate.not(HouseStyle.DEFAULT_VOICE::equals)),
                script.cast().stream().map(CastMember::voice).filter(v -> !v.isEmpty()))),
        ShotHints.WORDS_TO_OFFER,
        List.of("Title", "Episode", "Language", "Cast"),
        keywords);
  }

  /** A name as it is written before a cue. */
  private static String inCapitals(String name) {
    return name.toUpperCase(Locale.ROOT);
  }

  private static List<String> distinct(Stream<String> words) {
    Map<String, String> byFolded = new LinkedHashMap<>();
    words.forEach(word -> byFolded.putIfAbsent(Letters.fold(word), word));
    return List.copyOf(byFolded.values());
  }

  /** The completions of a slot that begin with what is typed. */
  List<Suggestion> at(Slot slot, int nextPanel) {
    Stream<Suggestion> all =
        switch (slot.kind()) {
          case TOP -> Stream.concat(plain(headers, ": "), headings(nextPanel));
          case LINE ->
              Stream.of(plain(speakers, ": "), plain(narrators(), ": "), headings(nextPanel))
                  .flatMap(some -> some);
          case SCENE -> headings(nextPanel);
          case MANNER -> plain(manners, "");
          case VOICE -> plain(voices, "");
          case HINT -> plain(hints, "");
          case NONE -> Stream.empty();
        };
    String typed = Letters.fold(slot.typed());
    return all.filter(s -> Letters.fold(s.label()).startsWith(typed))
        .filter(s -> !Letters.fold(s.label()).equals(typed) || slot.kind() == SlotKind.LINE)
        .filter(s -> !s.text().equals(slot.typed()))
        .toList();
  }

  private List<String> narrators() {
    return List.of(keywords.caption(), keywords.effect());
  }

  private Stream<Suggestion> headings(int nextPanel) {
    String number = nextPanel > 0 ? nextPanel + "  " : "";
    return Stream.of(
        new Suggestion(keywords.panel(), keywords.panel() + " " + number),
        new Suggestion(keywords.scene(), keywords.scene() + " "));
  }

  private static Stream<Suggestion> plain(Collection<String> words, String behind) {
    return words.stream().map(word -> new Suggestion(word, word + behind));
  }

  /**
   * The number that a panel on this line would have: one more than the number of the panel above,
   * or its position if there is none above; 0 if the panels of the script have no numbers.
   */
  static int nextPanel(Script script, int line) {
    List<Panel> above = script.panels().stream().filter(panel -> panel.line() < line).toList();
    for (int i = above.size() - 1; i >= 0; i--) {
      String label = above.get(i).label();
      if (!label.isEmpty()
          && label.length() < 6
          && label.chars().allMatch(c -> c >= '0' && c <= '9')) {
        return Integer.parseInt(label) + above.size() - i;
      }
    }
    boolean numbered = script.panels().isEmpty() || above.isEmpty();
    return numbered ? 1 : 0;
  }
}
