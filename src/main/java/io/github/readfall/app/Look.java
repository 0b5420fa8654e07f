package io.github.readfall.app;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import com.formdev.flatlaf.extras.FlatAnimatedLafChange;
import com.formdev.flatlaf.util.SystemInfo;
import java.awt.Font;
import java.awt.Toolkit;
import java.util.Locale;
import java.util.Optional;
import javax.swing.UIManager;

/** Light or dark. */
enum Look {
  LIGHT,
  DARK,
  /** As the desktop has it. */
  SYSTEM;

  /** Readies the toolkit; before any component is made. */
  static void prepare() {
    FlatLaf.registerCustomDefaultsSource("io.github.readfall.app");
    System.setProperty("apple.laf.useScreenMenuBar", "true");
    UIManager.put("FileChooser.readOnly", false);
  }

  /** How a name in a file is meant; as the desktop has it where it means none. */
  static Look of(String name) {
    for (Look look : values()) {
      if (look.word().equals(name)) {
        return look;
      }
    }
    return SYSTEM;
  }

  /** The name in files. */
  String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Puts this look on. */
  void wear() {
    if (isDark()) {
      FlatDarkLaf.setup();
    } else {
      FlatLightLaf.setup();
    }
  }

  /** Puts this look on while windows are open, and letters of a size. */
  void change(int fontSizePx) {
    FlatAnimatedLafChange.showSnapshot();
    wear();
    size(fontSizePx);
    FlatLaf.updateUI();
    FlatAnimatedLafChange.hideSnapshotWithAnimation();
  }

  /** Sets the size of all letters; 0 for the desktop's own. */
  static void size(int fontSizePx) {
    Font font = UIManager.getLookAndFeelDefaults().getFont("defaultFont");
    UIManager.put("defaultFont", fontSizePx > 0 ? font.deriveFont((float) fontSizePx) : null);
  }

  boolean isDark() {
    return this == DARK || (this == SYSTEM && isDesktopDark());
  }

  /** What desktops tell of themselves is little: Windows a flag, others the name of their theme. */
  private static boolean isDesktopDark() {
    if (SystemInfo.isWindows) {
      Object light = Toolkit.getDefaultToolkit().getDesktopProperty("win.lightTheme.on");
      return Boolean.FALSE.equals(light);
    }
    Object theme = Toolkit.getDefaultToolkit().getDesktopProperty("gnome.Net/ThemeName");
    return Optional.ofNullable(theme)
        .map(name -> name.toString().toLowerCase(Locale.ROOT).contains("dark"))
        .orElse(false);
  }
}
