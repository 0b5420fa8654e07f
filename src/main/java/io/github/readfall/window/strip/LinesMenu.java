package io.github.readfall.window.strip;

import io.github.readfall.base.wording.Wording;
import io.github.readfall.lettering.typeset.SetBalloon;
import io.github.readfall.window.parts.WindowAction;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import javax.swing.JMenu;
import javax.swing.JRadioButtonMenuItem;
import javax.swing.event.MenuEvent;
import javax.swing.event.MenuListener;

/** A menu of the settings of the selected balloon by number of lines, filled when it is opened. */
final class LinesMenu extends JMenu {

  private static final long serialVersionUID = 1;
  private static final int MOST_LETTERS = 70;

  private final transient StripActions actions;

  LinesMenu(StripActions actions) {
    super(new WindowAction("menu.lines", () -> {}));
    this.actions = actions;
    setName("menu.lines");
    addMenuListener(
        new MenuListener() {
          @Override
          public void menuSelected(MenuEvent event) {
            fill();
          }

          @Override
          public void menuDeselected(MenuEvent event) {
            // it is filled again when it is opened
          }

          @Override
          public void menuCanceled(MenuEvent event) {
            // it is filled again when it is opened
          }
        });
  }

  void fill() {
    removeAll();
    List<SetBalloon> settings = actions.settings();
    OptionalInt chosen = actions.chosenLines();
    JRadioButtonMenuItem best =
        new JRadioButtonMenuItem(
            new WindowAction("lines.best", () -> actions.lines(OptionalInt.empty())));
    best.setName("lines.best");
    best.setSelected(chosen.isEmpty());
    best.setEnabled(!settings.isEmpty());
    add(best);
    for (SetBalloon setting : settings) {
      int number = setting.lines().size();
      JRadioButtonMenuItem item = new JRadioButtonMenuItem(label(setting));
      item.setName("lines." + number);
      item.setSelected(chosen.equals(OptionalInt.of(number)));
      item.addActionListener(event -> actions.lines(OptionalInt.of(number)));
      add(item);
    }
  }

  private static String label(SetBalloon setting) {
    String lines =
        setting.lines().stream().map(line -> line.line().text()).collect(Collectors.joining(" / "));
    String shown = lines.length() <= MOST_LETTERS ? lines : lines.substring(0, MOST_LETTERS) + "…";
    return Wording.of("lines.number", setting.lines().size(), shown);
  }
}
