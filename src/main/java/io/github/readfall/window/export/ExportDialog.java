package io.github.readfall.window.export;

import io.github.readfall.base.files.OutputFolder;
import io.github.readfall.base.wording.Wording;
import io.github.readfall.export.Kind;
import io.github.readfall.export.Order;
import io.github.readfall.window.model.ExportModel;
import io.github.readfall.window.model.ExportProgress;
import io.github.readfall.window.parts.LanguageName;
import java.awt.Window;
import java.awt.event.KeyEvent;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JFileChooser;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;

/** Asks what to export, lists the files to be written, and writes them. */
final class ExportDialog extends JDialog {

  private static final long serialVersionUID = 1;

  private final Map<Kind, JCheckBox> kinds = new EnumMap<>(Kind.class);
  private final Map<String, JCheckBox> languages = new LinkedHashMap<>();
  private final JTextField folder = new JTextField(30);
  private final JCheckBox replace = named(new JCheckBox(Wording.of("export.replace")), "replace");
  private final DefaultListModel<String> files = new DefaultListModel<>();
  private final JLabel state = named(new JLabel(Wording.of("export.idle")), "state");
  private final JProgressBar progress = named(new JProgressBar(0, 100), "progress");
  private final JButton write = named(new JButton(Wording.of("export.write")), "write");
  private final JButton stop = named(new JButton(Wording.of("export.stop")), "stop");
  private final transient ExportModel model;
  private transient ExportProgress last = new ExportProgress.Idle();

  /**
   * A dialog that is not open yet.
   *
   * @param tags the script's own language first, then those of its translations
   * @param to the proposed folder
   * @param model made with the listener that it calls
   */
  ExportDialog(
      Window owner,
      List<String> tags,
      Path to,
      Function<Consumer<ExportProgress>, ExportModel> model) {
    super(owner, Wording.of("export.title"), ModalityType.MODELESS);
    this.model = model.apply(this::show);
    setName("export");
    for (Kind kind : Kind.values()) {
      kinds.put(kind, asked("export.kind." + kind));
    }
    for (String tag : tags) {
      JCheckBox box = asked(LanguageName.of(tag), "export.language." + tag);
      box.setSelected(tag.equals(tags.get(0)));
      languages.put(tag, box);
    }
    folder.setText(to.toString());
    folder.setName("export.folder");
    folder.addActionListener(event -> ask());
    replace.addActionListener(event -> show(last));
    write.addActionListener(event -> write());
    stop.addActionListener(event -> this.model.stop());
    layOut();
    show(new ExportProgress.Idle());
  }

  private static <T extends JComponent> T named(T part, String name) {
    part.setName("export." + name);
    return part;
  }

  private JCheckBox asked(String key) {
    return asked(Wording.of(key), key);
  }

  private JCheckBox asked(String words, String name) {
    JCheckBox box = new JCheckBox(words);
    box.setName(name);
    box.addActionListener(event -> ask());
    return box;
  }

  private void layOut() {
    JPanel content = new JPanel(new MigLayout("insets 18, gap 6 10, fill, wrap 1", "[grow,fill]"));
    content.add(new JLabel(Wording.of("export.what")));
    kinds.values().forEach(box -> content.add(box, "gapleft 12"));
    content.add(new JLabel(Wording.of("export.languages")), "gaptop 8");
    JPanel languageBoxes = new JPanel(new MigLayout("insets 0, gap 10, wrap 4"));
    languages.values().forEach(languageBoxes::add);
    content.add(languageBoxes, "gapleft 12");
    content.add(where(), "gaptop 8");
    content.add(replace);
    content.add(fileList(), "gaptop 8, grow, push, hmin 120");
    content.add(progress);
    content.add(end());
    setContentPane(content);
    getRootPane().setDefaultButton(write);
    getRootPane()
        .registerKeyboardAction(
            event -> leave(),
            KeyStroke.getKeyStroke(KeyEvent.VK_ESCAPE, 0),
            JComponent.WHEN_IN_FOCUSED_WINDOW);
    setDefaultCloseOperation(DO_NOTHING_ON_CLOSE);
    addWindowListener(
        new WindowAdapter() {
          @Override
          public void windowClosing(WindowEvent event) {
            leave();
          }
        });
    pack();
    setLocationRelativeTo(getOwner());
  }

  private JPanel where() {
    JPanel where = new JPanel(new MigLayout("insets 0, gap 8, fillx", "[][grow,fill][]"));
    JLabel label = new JLabel(Wording.of("export.folder"));
    label.setLabelFor(folder);
    where.add(label);
    where.add(folder, "wmin 120");
    JButton choose = named(new JButton(Wording.of("export.choose")), "choose");
    choose.addActionListener(event -> choose());
    where.add(choose);
    return where;
  }

  private JScrollPane fileList() {
    JList<String> list = new JList<>(files);
    list.setName("export.files");
    list.getAccessibleContext().setAccessibleName(Wording.of("export.files"));
    return new JScrollPane(list);
  }

  private JPanel end() {
    JPanel end = new JPanel(new MigLayout("insets 0, gap 8, fillx", "[grow,fill][][][]"));
    JButton close = named(new JButton(Wording.of("export.close")), "close");
    close.addActionListener(event -> leave());
    end.add(state, "wmin 0");
    end.add(stop);
    end.add(close);
    end.add(write);
    return end;
  }

  private void choose() {
    JFileChooser chooser = new JFileChooser(folder.getText());
    chooser.setName("chooser");
    chooser.setDialogTitle(Wording.of("export.chooser"));
    chooser.setFileSelectionMode(JFileChooser.DIRECTORIES_ONLY);
    if (chooser.showDialog(this, Wording.of("export.here")) == JFileChooser.APPROVE_OPTION) {
      folder.setText(chooser.getSelectedFile().getPath());
      ask();
    }
  }

  private void ask() {
    Set<Kind> asked = new LinkedHashSet<>();
    kinds.forEach(
        (kind, box) -> {
          if (box.isSelected()) {
            asked.add(kind);
          }
        });
    List<String> tags =
        languages.entrySet().stream()
            .filter(entry -> entry.getValue().isSelected())
            .map(Map.Entry::getKey)
            .toList();
    withFolder(to -> model.ask(new Order(asked, tags), to));
  }

  private void write() {
    withFolder(to -> model.write(new OutputFolder(to, replace.isSelected())));
  }

  private void withFolder(Consumer<Path> does) {
    try {
      does.accept(Path.of(folder.getText()));
    } catch (InvalidPathException e) {
      show(new ExportProgress.Refused(Wording.of("export.noFolder", folder.getText())));
    }
  }

  private void leave() {
    model.stop();
    dispose();
  }

  private void show(ExportProgress now) {
    last = now;
    write.setEnabled(false);
    stop.setEnabled(now instanceof ExportProgress.Writing);
    progress.setValue(0);
    progress.setIndeterminate(now instanceof ExportProgress.Preparing);
    if (now instanceof ExportProgress.Idle) {
      files.clear();
      state.setText(Wording.of("export.idle"));
    } else if (now instanceof ExportProgress.Preparing) {
      state.setText(Wording.of("export.preparing"));
    } else if (now instanceof ExportProgress.Ready ready) {
      ready(ready);
    } else if (now instanceof ExportProgress.Writing writing) {
      progress.setValue(writing.percent());
      state.setText(Wording.of("export.writing", writing.percent()));
    } else if (now instanceof ExportProgress.Written written) {
      progress.setValue(100);
      state.setText(Wording.of("export.written", written.files().size()));
    } else if (now instanceof ExportProgress.Refused refused) {
      state.setText(refused.sentence());
    }
    state.setToolTipText(state.getText());
  }

  private void ready(ExportProgress.Ready ready) {
    files.clear();
    for (Path file : ready.files()) {
      String name = String.valueOf(file.getFileName());
      files.addElement(ready.taken().contains(file) ? Wording.of("export.taken", name) : name);
    }
    boolean free = ready.taken().isEmpty() || replace.isSelected();
    write.setEnabled(free && !ready.files().isEmpty());
    state.setText(
        free
            ? Wording.of("export.ready", ready.files().size())
            : Wording.of("export.inTheWay", ready.taken().size()));
  }
}
