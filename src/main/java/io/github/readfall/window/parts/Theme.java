package io.github.readfall.window.parts;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import com.formdev.flatlaf.extras.FlatAnimatedLafChange;
import com.formdev.flatlaf.util.SystemInfo;
import io.github.readfall.series.autosave.ThemeChoice;
import java.awt.Font;
import java.awt.Toolkit;
import java.util.Locale;
import java.util.Optional;
import javax.swing.UIManager;

/**
 * The look of the window.
 *
 * @param choice light or dark
 * @param textSizePt of all texts, in points; 0 for the desktop's own size
 */
public record Theme(ThemeChoice choice, double textSizePt) {

  /** Prepares the toolkit; called before any component is made. */
  public static void prepare() {
    FlatLaf.registerCustomDefaultsSource("io.github.readfall.window.parts");
    System.setProperty("apple.laf.useScreenMenuBar", "true");
    System.setProperty("apple.awt.application.name", "Readfall");
  }

  /** Sets this look for new windows; open ones do not change yet. */
  public void apply() {
    UIManager.put("defaultFont", null);
    if (isDark()) {
      FlatDarkLaf.setup();
    } else {
      FlatLightLaf.setup();
    }
    if (textSizePt > 0) {
      Font font = UIManager.getFont("defaultFont");
      UIManager.put("defaultFont", font.deriveFont((float) textSizePt));
    }
  }

  /** Sets this look for new and open windows. */
  public void change() {
    FlatAnimatedLafChange.showSnapshot();
    apply();
    FlatLaf.updateUI();
    FlatAnimatedLafChange.hideSnapshotWithAnimation();
  }

  /** The same look with larger or smaller text. */
  public Theme scaled(int byPt) {
    double now = textSizePt > 0 ? textSizePt : UIManager.getFont("defaultFont").getSize2D();
    return new Theme(choice, now + byPt);
  }

  private boolean isDark() {
    return choice == ThemeChoice.DARK || (choice == ThemeChoice.AS_SYSTEM && isDesktopDark());
  }

  /** Whether the desktop is dark: Windows has a flag, others have the name of their theme. */
  private static boolean isDesktopDark() {
    Toolkit toolkit = Toolkit.getDefaultToolkit();
    if (SystemInfo.isWindows) {
      return Boolean.FALSE.equals(toolkit.getDesktopProperty("win.lightTheme.on"));
    }
    return Optional.ofNullable(toolkit.getDesktopProperty("gnome.Net/ThemeName"))
        .map(name -> name.toString().toLowerCase(Locale.ROOT).contains("dark"))
        .orElse(false);
  }
}
