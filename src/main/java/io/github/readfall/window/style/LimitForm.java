package io.github.readfall.window.style;

import io.github.readfall.base.wording.Wording;
import io.github.readfall.lettering.toml.Range;
import io.github.readfall.lettering.toml.TomlValue;
import io.github.readfall.lettering.toml.TomlValue.Figure;
import io.github.readfall.rules.RulePage;
import io.github.readfall.rules.RulePages;
import io.github.readfall.window.model.StyleEntry;
import io.github.readfall.window.model.StyleSnapshot;
import io.github.readfall.window.model.StyleSubject;
import io.github.readfall.window.parts.WrappedLabel;
import java.util.List;
import java.util.Optional;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** The limit of a rule: what it is, in which unit, what it is by itself, and where that is from. */
final class LimitForm extends JPanel {

  private static final long serialVersionUID = 1;

  /** Further from the built-in limit than this, a rule is hardly one. House default, no source. */
  private static final double FAR = 4;

  /** Limits below this are stepped through finely. House defaults, no source. */
  private static final double SMALL = 5;

  private static final double FINE = 0.05;

  private static final List<RulePage> LIMITED =
      RulePages.rules().stream().filter(page -> page.limit().isPresent()).toList();

  private final WrappedLabel finds = new WrappedLabel("style.limit.finds", "Label.foreground");
  private final WrappedLabel unit = new WrappedLabel("style.limit.unit", "Readfall.quiet");
  private final WrappedLabel usual = new WrappedLabel("style.limit.usual", "Readfall.quiet");
  private final WrappedLabel source = new WrappedLabel("style.limit.source", "Readfall.quiet");
  private final WrappedLabel remark = new WrappedLabel("style.limit.remark", "Readfall.warning");
  private final transient NumberEditor number = new NumberEditor(Range.LIMIT, 1);
  private final transient ValueRow row =
      new ValueRow(
          "style.limit", Wording.of("style.limit"), Wording.of("style.limit.meaning"), number);
  private transient Optional<StyleSubject> subject = Optional.empty();

  LimitForm(StyleViewListener listener) {
    super(
        new MigLayout(
            "insets 8 14 12 10, gap 8 0, fillx, hidemode 3",
            "[][grow,fill,shrinkprio 200][right]"));
    setName("style.limits");
    add(finds, "span 3, growx, wmin 0");
    row.onPreview(this::tell);
    row.onChosen(value -> spot().ifPresent(spot -> listener.write(spot, value)));
    row.onDiscard(() -> subject.ifPresent(listener::select));
    row.addTo(this);
    for (WrappedLabel sentence : List.of(remark, unit, usual, source)) {
      add(sentence, "newline 6, span 3, growx, wmin 0");
    }
  }

  /** The pages of all rules that have a limit. */
  static List<RulePage> limited() {
    return LIMITED;
  }

  private Optional<RulePage> page() {
    return subject.flatMap(
        of -> LIMITED.stream().filter(page -> page.id().equals(of.name())).findFirst());
  }

  private Optional<StyleEntry> spot() {
    return subject.map(of -> new StyleEntry(of, Optional.empty()));
  }

  /** Shows another limit. */
  void see(StyleSubject of, StyleSnapshot style) {
    if (!subject.equals(Optional.of(of))) {
      subject = Optional.of(of);
      row.forget();
    }
    show(style);
  }

  /** Drops what is on its way: what is shown is what holds. */
  void forget() {
    row.forget();
  }

  /** Shows what holds. */
  void show(StyleSnapshot style) {
    page().ifPresent(page -> spot().ifPresent(spot -> show(style, spot, page)));
  }

  private void show(StyleSnapshot style, StyleEntry spot, RulePage page) {
    double builtIn = page.limit().orElse(0);
    number.step(builtIn < SMALL ? FINE : 1);
    double now = style.style().limit(page.id(), builtIn);
    row.show(
        new ValueRow.Held(
            Optional.of(new Figure(now)), style.says(spot), Wording.of("style.held.builtIn")),
        style.text().isPresent());
    row.showProblem(style.complaint(spot).orElse(""));
    LimitWords words = new LimitWords(page);
    finds.showText(words.finds());
    unit.showText(page.limitMeaning());
    usual.showText(Wording.of("style.limit.builtIn", new Figure(builtIn).shown()));
    source.showText(words.source());
    tell(new Figure(now));
  }

  /** Writes whatever is wanted, and shows the result. */
  private void tell(TomlValue value) {
    double builtIn = page().map(page -> page.limit().orElse(0)).orElse(0.0);
    boolean far =
        value instanceof Figure figure
            && builtIn > 0
            && (figure.number() > FAR * builtIn || figure.number() < builtIn / FAR);
    remark.showText(far ? Wording.of("style.limit.far", new Figure(builtIn).shown()) : "");
  }
}
