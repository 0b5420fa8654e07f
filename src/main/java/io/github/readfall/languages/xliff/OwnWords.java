package io.github.readfall.languages.xliff;

import io.github.readfall.languages.translate.BalloonFacts;
import io.github.readfall.languages.translate.Budget;
import io.github.readfall.languages.translate.CueContext;
import io.github.readfall.languages.translate.Neighbours;
import io.github.readfall.languages.xml.XmlEscapes;
import io.github.readfall.script.Cue;
import io.github.readfall.script.Manner;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Our content of a unit: notes whose ids begin with {@link #MARK}, and the balloon.
 *
 * @param cue of the unit
 * @param context of the cue
 * @param neighbours cues beside it
 * @param former the words that its translation was made from, if they are others now
 */
record OwnWords(Cue cue, CueContext context, Neighbours neighbours, Optional<String> former) {

  /** Beginning of the ids of our notes. */
  static final String MARK = "rf-";

  /** The notes for a translator, each on a line of its own. */
  String notes(String prefix, String space) {
    return list().stream()
        .map(note -> space + note(prefix, note.category(), note.text()))
        .collect(Collectors.joining());
  }

  static String note(String prefix, String category, String text) {
    return "<"
        + prefix
        + "note id=\""
        + MARK
        + category.replace(' ', '-')
        + "\" category=\""
        + category
        + "\">"
        + XmlEscapes.text(text)
        + "</"
        + prefix
        + "note>";
  }

  private List<XliffNote> list() {
    List<XliffNote> notes = new ArrayList<>();
    add(notes, Matched.SPEAKER, Optional.of(cue.names()));
    String manners = cue.manners().stream().map(Manner::word).collect(Collectors.joining(", "));
    add(notes, "manner", Optional.of(manners).filter(text -> !text.isEmpty()));
    add(notes, "before", neighbours.before());
    add(notes, "after", neighbours.after());
    add(notes, "comfortable", context.budget().map(budget -> "" + budget.comfortable()));
    add(notes, "picture", context.picture());
    add(notes, Matched.FORMER, former);
    return notes;
  }

  private static void add(List<XliffNote> notes, String category, Optional<String> text) {
    text.ifPresent(words -> notes.add(new XliffNote("", category, words)));
  }

  /** The greatest length that fits, as a size restriction. */
  Optional<String> restriction() {
    return context.budget().map(Budget::most).map(String::valueOf);
  }

  /** The balloon, for programs that can use it exactly. */
  Optional<String> balloon(String slr) {
    return context
        .balloon()
        .map(
            facts ->
                "<"
                    + slr
                    + "data profile=\""
                    + Names.BALLOON_PROFILE
                    + "\"><rf:balloon xmlns:rf=\""
                    + Names.BALLOON
                    + "\""
                    + attributes(facts)
                    + "/></"
                    + slr
                    + "data>");
  }

  private String attributes(BalloonFacts facts) {
    String size =
        attribute("shape", XmlEscapes.attribute(facts.shape()))
            + attribute("widthPx", tenth(facts.widthPx()))
            + attribute("heightPx", tenth(facts.heightPx()))
            + attribute("fontPx", tenth(facts.fontPx()));
    return size
        + context
            .budget()
            .map(
                b ->
                    attribute("comfortable", "" + b.comfortable())
                        + attribute("most", "" + b.most()))
            .orElse("");
  }

  private static String attribute(String name, String value) {
    return " " + name + "=\"" + value + "\"";
  }

  private static String tenth(double px) {
    return BigDecimal.valueOf(px).setScale(1, RoundingMode.HALF_UP).toPlainString();
  }
}
