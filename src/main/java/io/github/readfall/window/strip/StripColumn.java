package io.github.readfall.window.strip;

import io.github.readfall.base.viewing.Phone;
import io.github.readfall.base.wording.Wording;
import io.github.readfall.draw.Layer;
import io.github.readfall.window.canvas.StripPane;
import io.github.readfall.window.canvas.Zoom;
import io.github.readfall.window.languages.LanguageBox;
import io.github.readfall.window.parts.Heading;
import io.github.readfall.window.parts.SideBySidePane;
import java.awt.BorderLayout;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JCheckBoxMenuItem;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;

/** The strip with its zoom, its layers and its languages. */
public final class StripColumn extends JPanel {

  private static final long serialVersionUID = 1;

  /** Layers that can be switched; panels and lettering are always visible. */
  public static final List<Layer> SWITCHED =
      List.of(
          Layer.PATH,
          Layer.MARGINS,
          Layer.GAPS,
          Layer.OVERFLOW,
          Layer.KEEP_CLEAR,
          Layer.CUTS,
          Layer.TAILS,
          Layer.FINDINGS);

  private static final String ACTUAL = "actual";
  private static final String PHONE = "phone";

  private final StripPane view;
  private final StripPane beside = new StripPane();
  private final SideBySidePane both;
  private final LanguageBox languages =
      new LanguageBox("language", Wording.of("strip.language"), Optional.empty());
  private final LanguageBox otherLanguages =
      new LanguageBox(
          "language.beside",
          Wording.of("strip.beside"),
          Optional.of(Wording.of("strip.beside.none")));
  private final Heading heading;
  private final Map<Layer, JCheckBoxMenuItem> switches = new EnumMap<>(Layer.class);
  private final Map<Class<? extends Zoom>, JToggleButton> zooms = new LinkedHashMap<>();
  private double phoneWidthDp = Phone.SMALL.widthDp();

  public StripColumn(StripPane pane) {
    super(new BorderLayout());
    view = pane;
    heading =
        new Heading(
            Wording.of("strip.title"),
            zoom("fit", Zoom.FitWidth.class, this::fitWidth),
            zoom("actual", Zoom.ActualPixels.class, this::actualPixels),
            zoom("phone", Zoom.PhoneSize.class, this::phoneSize),
            layersButton());
    heading.setLabelFor(view.view());
    add(heading, BorderLayout.NORTH);
    beside.setName("canvas.pane.beside");
    pane.addFollower(beside);
    both =
        new SideBySidePane(
            pane, beside, new SideBySidePane.Above(above(languages), above(otherLanguages)));
    add(both);
    zoomed(view.zoom());
    view.onZoom(this::zoomed);
  }

  private JToggleButton zoom(String name, Class<? extends Zoom> kind, Runnable go) {
    JToggleButton button = new JToggleButton(Wording.of("strip.zoom." + name));
    button.setName("zoom." + name);
    button.putClientProperty("JButton.buttonType", "toolBarButton");
    button.addActionListener(event -> go.run());
    zooms.put(kind, button);
    return button;
  }

  /** Chooses the language of the strip. */
  public LanguageBox languages() {
    return languages;
  }

  /** Chooses the language of the second strip. */
  public LanguageBox otherLanguages() {
    return otherLanguages;
  }

  private static JPanel above(LanguageBox box) {
    JPanel above = new JPanel(new MigLayout("insets 5 12 5 12, hidemode 3, novisualpadding"));
    above.add(box, "wmin 0");
    return above;
  }

  /** Shows or hides the choice of languages. */
  public void offerLanguages(boolean isThereAny) {
    for (LanguageBox box : List.of(languages, otherLanguages)) {
      box.getParent().setVisible(isThereAny);
    }
  }

  /** Shows or hides the second strip. */
  public void showBeside(boolean isTwice) {
    if (isTwice) {
      both.both();
    } else {
      both.alone();
    }
  }

  /** The second strip. */
  public StripPane beside() {
    return beside;
  }

  /** Shows whether the strip is being computed. */
  public void showWorking(boolean isOnItsWay) {
    heading.setTitle(Wording.of(isOnItsWay ? "strip.working" : "strip.title"));
  }

  /** Zooms to the width of the view. */
  public void fitWidth() {
    view.setZoom(new Zoom.FitWidth());
  }

  /** Zooms to one strip pixel to a pixel of the screen. */
  public void actualPixels() {
    view.setZoom(new Zoom.ActualPixels());
  }

  /** Zooms to the width of the chosen phone. */
  public void phoneSize() {
    view.setZoom(new Zoom.PhoneSize(phoneWidthDp));
  }

  /** Zooms by a factor. */
  public void zoomBy(double factor) {
    view.setZoom(new Zoom.Factor(view.scale() * factor));
  }

  /** Takes another phone. */
  public void setPhone(Phone phone) {
    phoneWidthDp = phone.widthDp();
    if (view.zoom() instanceof Zoom.PhoneSize) {
      phoneSize();
    }
  }

  /** The zoom, as a word or a number. */
  public String zoomWord() {
    Zoom zoom = view.zoom();
    if (zoom instanceof Zoom.Factor factor) {
      return Double.toString(factor.pxPerStripPx());
    }
    return zoom instanceof Zoom.ActualPixels ? ACTUAL : zoom instanceof Zoom.PhoneSize ? PHONE : "";
  }

  /** Sets the zoom from {@link #zoomWord}; to the width of the view if the word is unknown. */
  public void setZoom(String word) {
    if (word.equals(ACTUAL)) {
      actualPixels();
    } else if (word.equals(PHONE)) {
      phoneSize();
    } else if (word.matches("[0-9]{1,3}\\.[0-9]{1,20}")) {
      view.setZoom(new Zoom.Factor(Double.parseDouble(word)));
    } else {
      fitWidth();
    }
  }

  private void zoomed(Zoom zoom) {
    zooms.forEach((kind, button) -> button.setSelected(kind.isInstance(zoom)));
  }

  private JButton layersButton() {
    JPopupMenu menu = new JPopupMenu();
    for (Layer layer : SWITCHED) {
      JCheckBoxMenuItem item = new JCheckBoxMenuItem(words(layer));
      item.setName("layer." + word(layer));
      item.addItemListener(event -> switched());
      switches.put(layer, item);
      menu.add(item);
    }
    JButton button = new JButton(Wording.of("strip.layers"));
    button.setName("layers");
    button.putClientProperty("JButton.buttonType", "toolBarButton");
    button.addActionListener(event -> menu.show(button, 0, button.getHeight()));
    button.setComponentPopupMenu(menu); // so that it follows a change of the theme
    return button;
  }

  static String words(Layer layer) {
    return Wording.of("strip.layer." + word(layer));
  }

  private static String word(Layer layer) {
    return layer.name().toLowerCase(Locale.ROOT);
  }

  private void switched() {
    view.setLayers(layers());
  }

  private Set<Layer> layers() {
    Set<Layer> on = EnumSet.of(Layer.PANELS, Layer.PANEL_FRAMES, Layer.LETTERING);
    switches.forEach(
        (layer, item) -> {
          if (item.isSelected()) {
            on.add(layer);
          }
        });
    return on;
  }

  /** The names of the layers that are switched on. */
  public Set<String> layersOn() {
    return layers().stream()
        .filter(SWITCHED::contains)
        .map(StripColumn::word)
        .collect(Collectors.toSet());
  }

  /** Switches these layers on, and all others off. */
  public void setLayers(Set<String> words) {
    switches.forEach((layer, item) -> item.setSelected(words.contains(word(layer))));
    switched();
  }

  /** A menu's switch for a layer, coupled to the one here. */
  public JCheckBoxMenuItem menuItem(Layer layer) {
    JCheckBoxMenuItem item = new JCheckBoxMenuItem(words(layer));
    item.setName("menu.layer." + word(layer));
    Optional.ofNullable(switches.get(layer)).ifPresent(own -> item.setModel(own.getModel()));
    return item;
  }
}
