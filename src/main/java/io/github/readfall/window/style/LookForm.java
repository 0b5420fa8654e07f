package io.github.readfall.window.style;

import io.github.readfall.base.wording.Wording;
import io.github.readfall.lettering.style.HouseStyle;
import io.github.readfall.lettering.style.LookChange;
import io.github.readfall.lettering.style.LookKey;
import io.github.readfall.lettering.toml.TomlValue;
import io.github.readfall.window.model.Specimen;
import io.github.readfall.window.model.StyleEntry;
import io.github.readfall.window.model.StyleSnapshot;
import io.github.readfall.window.model.StyleSubject;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** The values of the house style for a voice or a manner, one row each. */
final class LookForm extends JPanel {

  private static final long serialVersionUID = 1;

  private final transient Map<LookKey, ValueRow> rows = new EnumMap<>(LookKey.class);
  private transient Optional<StyleSubject> subject = Optional.empty();
  private transient Optional<Specimen> specimen = Optional.empty();

  LookForm(StyleViewListener listener) {
    super(
        new MigLayout(
            "insets 8 14 12 10, gap 8 0, fillx, hidemode 3",
            "[][grow,fill,shrinkprio 200][right]"));
    setName("style.look");
    for (LookKey key : LookKey.values()) {
      ValueRow row =
          new ValueRow(
              "style." + key.word(),
              Wording.of("style.key." + key.word()),
              key.meaning(),
              editor(key));
      row.onPreview(value -> entry(key).ifPresent(entry -> listener.preview(entry, value)));
      row.onChosen(value -> entry(key).ifPresent(entry -> listener.write(entry, value)));
      row.onDiscard(() -> subject.ifPresent(listener::select));
      row.addTo(this);
      rows.put(key, row);
    }
  }

  private static ValueEditor editor(LookKey key) {
    return switch (key.kind()) {
      case NUMBER -> new NumberEditor(key.range().orElseThrow(), step(key));
      case TRUTH -> new SwitchEditor();
      case COLOUR -> new ColourEditor();
      case FACE, WORD -> new ChoiceEditor(key.words());
    };
  }

  /** House defaults, no source. */
  private static double step(LookKey key) {
    return switch (key) {
      case SIZE -> 0.05;
      case TRACKING -> 0.01;
      case WEIGHT -> 100;
      default -> 1;
    };
  }

  private Optional<StyleEntry> entry(LookKey key) {
    return subject.map(of -> new StyleEntry(of, Optional.of(key)));
  }

  /** Offers faces to select from. */
  void offerFaces(List<String> faces) {
    rows.forEach(
        (key, row) -> {
          if (key == LookKey.FACE && row.editor() instanceof ChoiceEditor choice) {
            choice.offer(faces);
          }
        });
  }

  /** Shows another voice or manner. */
  void see(StyleSubject of, StyleSnapshot style) {
    if (!subject.equals(Optional.of(of))) {
      subject = Optional.of(of);
      specimen = Optional.empty();
      forget();
    }
    show(style);
  }

  /** Shows the values in effect where the series has none. */
  void show(StyleSnapshot style, Optional<Specimen> made) {
    specimen = made.or(() -> specimen);
    show(style);
  }

  /** Discards a change in progress: the value in effect is shown again. */
  void forget() {
    rows.values().forEach(ValueRow::forget);
  }

  private void show(StyleSnapshot style) {
    subject.ifPresent(of -> rows.forEach((key, row) -> show(style, of, key, row)));
  }

  private void show(StyleSnapshot style, StyleSubject of, LookKey key, ValueRow row) {
    StyleEntry entry = new StyleEntry(of, Optional.of(key));
    Optional<TomlValue> said = key.of(said(style.style(), of));
    row.show(
        new ValueRow.Held(
            said.or(() -> unsaid(key)),
            style.says(entry),
            Wording.of("style.held." + from(of, key))),
        style.text().isPresent());
    row.showProblem(style.complaint(entry).orElse(""));
  }

  /** The source of a value that the series does not set, as the end of a key of words. */
  private static String from(StyleSubject of, LookKey key) {
    boolean isDefault = of.name().equals(HouseStyle.DEFAULT_VOICE);
    if (isDefault || key.of(said(HouseStyle.DEFAULT, of)).isPresent()) {
      return "builtIn";
    }
    return of instanceof StyleSubject.Voice ? "asDefault" : "asSpoken";
  }

  private static LookChange said(HouseStyle style, StyleSubject of) {
    return of instanceof StyleSubject.MannerLook look
        ? style.manner(look.manner())
        : style.voice(of.name()).orElse(LookChange.NONE);
  }

  /** The value in effect where nothing is set; a size is a factor, so it is 1 then. */
  private Optional<TomlValue> unsaid(LookKey key) {
    return switch (key) {
      case SIZE -> Optional.of(new TomlValue.Figure(1));
      case CAPITALS -> specimen.map(made -> new TomlValue.Truth(made.balloon().capitals()));
      case FACE -> specimen.map(made -> new TomlValue.Words(face(made)));
      default -> specimen.flatMap(made -> key.of(made.look()));
    };
  }

  private static String face(Specimen made) {
    return made.look().face().orElseGet(() -> made.balloon().type().face().file().family());
  }
}
