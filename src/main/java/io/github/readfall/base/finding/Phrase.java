package io.github.readfall.base.finding;

import io.github.readfall.base.geom.Box;
import io.github.readfall.base.geom.XY;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Words for people. Reports name balloons by id, places by coordinates, and files and commands; the
 * window says the same in plain words. Example: {@code Move p1-3 to 920, 776.} is {@code Move
 * Mara's second balloon in panel 1 up by 10 % of its height.} in the window.
 */
public record Phrase(List<Part> parts) {

  /** The balloons that the window shows. */
  public interface Balloons {

    /** The name of a balloon, e.g. {@code Mara's second balloon in panel 3}. */
    String name(String id);

    /** The box of a balloon, in strip pixels; empty if it has no place. */
    Optional<Box> box(String id);
  }

  /** A part of a phrase. */
  public sealed interface Part {

    /** The words in reports. */
    String inReport();

    /** The words in the window. */
    String inWindow(Balloons shown);
  }

  /** Words that are the same everywhere, or differ by themselves. */
  private record Words(String inReport, String window) implements Part {
    @Override
    public String inWindow(Balloons shown) {
      return window;
    }
  }

  private record Balloon(String inReport) implements Part {
    @Override
    public String inWindow(Balloons shown) {
      return shown.name(inReport);
    }
  }

  private record Goal(String balloon, XY to) implements Part {
    @Override
    public String inReport() {
      return " to " + whole(to);
    }

    @Override
    public String inWindow(Balloons shown) {
      return shown.box(balloon).map(box -> " " + Direction.of(box, to)).orElse("");
    }
  }

  public Phrase {
    parts = List.copyOf(parts);
  }

  /** A phrase that is the same everywhere. */
  public static Phrase of(String words) {
    return new Phrase(words.isEmpty() ? List.of() : List.of(new Words(words, words)));
  }

  /** This phrase, then words that are the same everywhere. */
  public Phrase then(String words) {
    return then(of(words));
  }

  /** This phrase, then another. */
  public Phrase then(Phrase more) {
    List<Part> all = new ArrayList<>(parts);
    all.addAll(more.parts);
    return new Phrase(all);
  }

  /** This phrase, then words that the window words differently. */
  public Phrase either(String inReports, String inWindow) {
    return then(new Phrase(List.of(new Words(inReports, inWindow))));
  }

  /** This phrase, then the file of the house style. */
  public Phrase houseStyle() {
    return either("series.toml", "the house style");
  }

  /** This phrase, then a balloon. */
  public Phrase balloon(String id) {
    return then(new Phrase(List.of(new Balloon(id))));
  }

  /** This phrase, then the place to move a balloon to, for its top left corner. */
  Phrase goal(String balloon, XY to) {
    return then(new Phrase(List.of(new Goal(balloon, to))));
  }

  /** The phrase in reports. */
  public String inReports() {
    return parts.stream().map(Part::inReport).collect(Collectors.joining());
  }

  /** The phrase in the window, beginning with a capital if it begins with a balloon's name. */
  public String inWindow(Balloons shown) {
    String said = parts.stream().map(part -> part.inWindow(shown)).collect(Collectors.joining());
    boolean isName = !parts.isEmpty() && parts.get(0) instanceof Balloon;
    return isName ? said.substring(0, 1).toUpperCase(Locale.ROOT) + said.substring(1) : said;
  }

  /** A place as reports write it: {@code 920, 776}. */
  static String whole(XY at) {
    return Math.round(at.x()) + ", " + Math.round(at.y());
  }
}
