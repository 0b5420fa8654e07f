package io.github.readfall.export.pdf;

import io.github.readfall.draw.StripLayers;
import io.github.readfall.script.Cue;
import io.github.readfall.script.Manner;
import io.github.readfall.strip.PanelBox;
import io.github.readfall.strip.galley.Galley;
import io.github.readfall.strip.galley.PlacedBalloon;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Collectors;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;

/** Sets the script's panels, and adds them to the structure. */
final class ScriptSetter {

  private final TagStructure structure;
  private final TextSetter setter;
  private final ProofLanguages languages;
  private final double measurePt;
  private final Map<String, Integer> numbers;
  private final Map<String, Double> topsPx = new HashMap<>();
  private final Map<Integer, Double> panelTopsPx = new HashMap<>();

  /**
   * Sets for a column.
   *
   * @param numbers of the balloons on the strip, by id
   */
  ScriptSetter(
      TagStructure structure,
      TextSetter setter,
      Galley galley,
      Paper paper,
      Map<String, Integer> numbers) {
    this.structure = structure;
    this.setter = setter;
    this.languages = ProofLanguages.of(galley.set().script());
    this.measurePt = paper.columnPt();
    this.numbers = numbers;
    for (PlacedBalloon balloon : galley.balloons()) {
      topsPx.put(balloon.id(), balloon.box().y());
    }
    for (PanelBox panel : galley.panels()) {
      panelTopsPx.put(panel.panel(), panel.box().y());
    }
  }

  /**
   * Sets a panel.
   *
   * @param yPt maps a height of the strip to the page
   */
  PanelPiece set(PanelPart part, DoubleUnaryOperator yPt) {
    PDStructureElement section = structure.add(TagStructure.SECTION);
    PDStructureElement heading = structure.add(TagStructure.HEADING, section);
    Optional<Double> topPx = Optional.ofNullable(panelTopsPx.get(part.panel().number()));
    PDStructureElement figure = figure(part, topPx.isPresent(), section);
    languages.mark(heading, languages.script());
    double top = topPx.map(yPt::applyAsDouble).orElse(0.0);
    String description = part.description();
    List<ColumnRow> rows =
        new ArrayList<>(
            setter.rows(
                part.heading(), TextStyle.HEADING, languages.script(), 0, measurePt, heading));
    if (!part.continued() && !description.isEmpty()) {
      PDStructureElement caption = structure.add(TagStructure.CAPTION, figure);
      rows.addAll(
          setter.rows(description, TextStyle.ASIDE, languages.script(), 0, measurePt, caption));
    }
    List<CuePiece> cues = part.cues().stream().map(cue -> set(cue, section, top, yPt)).toList();
    return new PanelPiece(part, figure, new Entry(top, rows, FindingKey.NONE), cues);
  }

  /** The picture of a panel; only its description if it has no place. */
  private PDStructureElement figure(PanelPart part, boolean isPlaced, PDStructureElement section) {
    PDStructureElement figure =
        structure.add(isPlaced ? TagStructure.FIGURE : TagStructure.SECTION, section);
    languages.mark(figure, languages.script());
    if (isPlaced) {
      String description = part.description();
      figure.setAlternateDescription(
          part.continued() || description.isEmpty() ? part.heading() : description);
    }
    return figure;
  }

  private CuePiece set(
      Cue cue, PDStructureElement section, double panelPt, DoubleUnaryOperator yPt) {
    PDStructureElement element = structure.add(TagStructure.TEXT, section);
    String who = who(cue);
    element.setActualText(who + ": " + cue.text().plain().replace('\n', ' '));
    List<ColumnRow> rows =
        new ArrayList<>(
            setter.rows(who, TextStyle.STRONG, languages.notes(), 0, measurePt, element));
    rows.addAll(
        setter.rows(cue.text().plain(), TextStyle.TEXT, languages.strip(), 0, measurePt, element));
    double wanted =
        Optional.ofNullable(topsPx.get(cue.id())).map(yPt::applyAsDouble).orElse(panelPt);
    return new CuePiece(cue, element, new Entry(wanted, rows, key(cue)));
  }

  private FindingKey key(Cue cue) {
    return Optional.ofNullable(numbers.get(cue.id()))
        .map(number -> setter.key(Integer.toString(number), StripLayers.PATH))
        .orElse(FindingKey.NONE);
  }

  /** The speaker, with the manners. */
  private static String who(Cue cue) {
    String manners =
        cue.manners().stream()
            .filter(manner -> !manner.equals(Manner.CAPTION) && !manner.equals(Manner.EFFECT))
            .map(Manner::word)
            .collect(Collectors.joining(", "));
    String speaker = cue.names().isBlank() ? cue.id() : cue.names();
    return manners.isEmpty() ? speaker : speaker + " (" + manners + ")";
  }
}
