package io.github.readfall.languages.xliff;

import io.github.readfall.languages.xml.XmlAttribute;
import io.github.readfall.languages.xml.XmlDocument;
import io.github.readfall.languages.xml.XmlElement;
import io.github.readfall.languages.xml.XmlFault;
import io.github.readfall.languages.xml.XmlNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The size restrictions of one file of a document, and their violations. */
final class Sizes {

  private static final String SIZE = "sizeRestriction";
  private static final String STORAGE = "storageRestriction";

  private final XmlDocument document;
  private final XmlElement file;
  private final Optional<XmlElement> profiles;

  Sizes(XmlDocument document, XmlElement file) {
    this.document = document;
    this.file = file;
    this.profiles = file.elements(Names.SLR, "profiles").findFirst();
  }

  /**
   * A violated restriction.
   *
   * @param element it is on
   * @param size of its targets
   * @param limit that the size exceeds or falls short of
   * @param unit {@code characters} or {@code bytes}
   */
  record Broken(XmlElement element, int size, int limit, String unit) {}

  /** Refuses restrictions that mean nothing in the standard profiles. */
  void checkWritten() throws XmlFault {
    checkWritten(file);
  }

  private void checkWritten(XmlElement element) throws XmlFault {
    for (String name : List.of(SIZE, STORAGE)) {
      Optional<XmlAttribute> written = element.written(Names.SLR, name);
      boolean standard = profile(name).isEmpty() || profile(name).get().startsWith("xliff:");
      if (written.isPresent() && standard && SizeRestriction.of(written.get().value()).isEmpty()) {
        throw new XmlFault(
            document.line(element.start()),
            name
                + " is \""
                + written.get().value()
                + "\": write the most, or the least and the most, such as 40 or 5,40.");
      }
    }
    for (XmlElement child : element.elements().toList()) {
      checkWritten(child);
    }
  }

  private Optional<String> profile(String restriction) {
    String attribute = restriction.equals(SIZE) ? "generalProfile" : "storageProfile";
    return profiles.flatMap(each -> each.attribute(attribute)).filter(name -> !name.isEmpty());
  }

  /** Every restriction that the targets break. */
  List<Broken> broken() {
    List<Broken> broken = new ArrayList<>();
    collect(file, false, broken);
    return broken;
  }

  private void collect(XmlElement element, boolean inSource, List<Broken> broken) {
    boolean source = inSource || element.is(Names.CORE, "source");
    if (!source) {
      broken(element, SIZE, "characters").ifPresent(broken::add);
      broken(element, STORAGE, "bytes").ifPresent(broken::add);
    }
    element.elements().forEach(child -> collect(child, source, broken));
  }

  private Optional<Broken> broken(XmlElement element, String restriction, String unit) {
    Optional<SizeRestriction> limit =
        element
            .written(Names.SLR, restriction)
            .map(XmlAttribute::value)
            .flatMap(SizeRestriction::of);
    Optional<CodeUnits> units = profile(restriction).flatMap(CodeUnits::of);
    if (limit.isEmpty() || units.isEmpty() || !hasTargets(element)) {
      return Optional.empty();
    }
    int size = contents(element).mapToInt(text -> size(text, units.get())).sum();
    if (limit.get().most().isPresent() && size > limit.get().most().getAsInt()) {
      return Optional.of(new Broken(element, size, limit.get().most().getAsInt(), unit));
    }
    return size < limit.get().least()
        ? Optional.of(new Broken(element, size, limit.get().least(), unit))
        : Optional.empty();
  }

  private static boolean hasTargets(XmlElement element) {
    return contents(element).anyMatch(text -> !text.words().isBlank());
  }

  /** The content that a restriction is on: the targets below, or an inline element in one. */
  private static Stream<XmlElement> contents(XmlElement element) {
    return switch (element.local()) {
      case "file", "group" -> XliffReader.unitsIn(element).flatMap(Sizes::contents);
      case "unit" ->
          element
              .elements()
              .filter(XliffStructure::isPart)
              .flatMap(part -> part.elements(Names.CORE, "target"));
      default -> Stream.of(element);
    };
  }

  private int size(XmlElement content, CodeUnits units) {
    boolean general = units == CodeUnits.CODEPOINTS;
    String attribute = general ? "general" : "storage";
    String normalization =
        profiles
            .flatMap(each -> each.elements(Names.SLR, "normalization").findFirst())
            .flatMap(each -> each.attribute(attribute))
            .orElse("none");
    int size = 0;
    StringBuilder text = new StringBuilder();
    for (XmlNode child : content.children()) {
      if (child instanceof XmlNode.Chars chars) {
        text.append(chars.value());
      } else if (child instanceof XmlElement code) {
        size += size(code, units) + own(code, general, units);
      }
    }
    return size + units.size(CodeUnits.normalized(text.toString(), normalization));
  }

  /** The size of an inline code itself: nothing unless it has one. */
  private static int own(XmlElement code, boolean general, CodeUnits units) {
    String written =
        code.written(Names.SLR, general ? "sizeInfo" : "equivStorage")
            .map(XmlAttribute::value)
            .orElse("");
    if (!general) {
      return units.size(written);
    }
    return Stream.of(written.split(",", -1))
        .map(String::strip)
        .filter(number -> number.matches("\\d{1,9}"))
        .mapToInt(Integer::parseInt)
        .sum();
  }
}
