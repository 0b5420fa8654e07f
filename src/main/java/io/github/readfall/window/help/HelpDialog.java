package io.github.readfall.window.help;

import io.github.readfall.base.wording.Wording;
import java.awt.Dimension;
import java.awt.Window;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JFrame;
import javax.swing.JTabbedPane;
import javax.swing.KeyStroke;
import javax.swing.UIManager;

/** The help: keys, rules and cautions, which can stay open beside the work. */
public final class HelpDialog extends JDialog {

  private static final long serialVersionUID = 1;

  private static final String NAME = "help";

  /** Width of the dialog, as a multiple of the font size. House default, no source. */
  private static final int WIDTH_EM = 60;

  private static final int HEIGHT_EM = 44;

  private final JTabbedPane pages = new JTabbedPane();

  private HelpDialog(Window owner, List<KeyRow> keys) {
    super(owner, Wording.of("help.title"), ModalityType.MODELESS);
    setName(NAME);
    pages.setName("help.pages");
    pages.getAccessibleContext().setAccessibleName(Wording.of("help.title"));
    KeysPage keysPage = new KeysPage(keys);
    pages.addTab(Wording.of("help.keys"), keysPage);
    pages.addTab(Wording.of("help.rules"), new RulesPage());
    pages.addTab(Wording.of("help.cautions"), CautionsPage.make());
    setContentPane(pages);
    getRootPane()
        .registerKeyboardAction(
            event -> dispose(),
            KeyStroke.getKeyStroke(KeyEvent.VK_ESCAPE, 0),
            JComponent.WHEN_IN_FOCUSED_WINDOW);
    setDefaultCloseOperation(DISPOSE_ON_CLOSE);
    int em = UIManager.getFont("defaultFont").getSize();
    Dimension screen = getGraphicsConfiguration().getBounds().getSize();
    setSize(Math.min(WIDTH_EM * em, screen.width), Math.min(HEIGHT_EM * em, screen.height));
    setLocationRelativeTo(owner);
  }

  /** Opens the help of a window, or brings it to the front. */
  public static void open(JFrame frame) {
    Optional<Window> there =
        Arrays.stream(frame.getOwnedWindows())
            .filter(owned -> owned.isShowing() && NAME.equals(owned.getName()))
            .findFirst();
    there.ifPresentOrElse(
        Window::toFront,
        () -> {
          List<KeyRow> keys = new ArrayList<>(MenuKeys.of(frame.getJMenuBar()));
          keys.addAll(ViewKeys.ALL);
          new HelpDialog(frame, keys).setVisible(true);
        });
  }
}
