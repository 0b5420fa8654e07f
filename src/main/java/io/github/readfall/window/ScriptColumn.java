package io.github.readfall.window;

import io.github.readfall.base.wording.Wording;
import io.github.readfall.series.EpisodeFiles;
import io.github.readfall.window.languages.TranslationPanel;
import io.github.readfall.window.parts.Heading;
import io.github.readfall.window.parts.SecondaryLabel;
import io.github.readfall.window.script.ScriptEditor;
import io.github.readfall.window.workplace.OpenEpisode;
import java.awt.BorderLayout;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;

/** The script, with its episode and whether it is saved. */
final class ScriptColumn extends JPanel {

  private static final long serialVersionUID = 1;

  private final JComboBox<Choice> episodes = new JComboBox<>();
  private final JLabel saved = new JLabel();
  private final Heading heading;
  private final TranslationPanel translation = new TranslationPanel();
  private transient Optional<EpisodeFiles> open = Optional.empty();
  private transient Consumer<EpisodeFiles> chosenListener = files -> {};
  private boolean isFilling;

  /** An episode in the list. */
  private record Choice(EpisodeFiles files) {
    @Override
    public String toString() {
      Path folder = files.script().toAbsolutePath().getParent();
      return folder == null || folder.getFileName() == null
          ? files.script().toString()
          : folder.getFileName().toString();
    }
  }

  ScriptColumn(ScriptEditor editor) {
    super(new BorderLayout());
    episodes.setName("episodes");
    episodes.getAccessibleContext().setAccessibleName(Wording.of("script.episodes"));
    episodes.addActionListener(
        event -> {
          if (!isFilling && episodes.getSelectedItem() instanceof Choice choice) {
            showChosen(open); // shows the other one when it is open
            chosenListener.accept(choice.files());
          }
        });
    saved.setName("saved");
    heading = new Heading(Wording.of("script.title"), saved, episodes);
    heading.setLabelFor(editor);
    add(heading, BorderLayout.NORTH);
    add(editor);
    add(translation, BorderLayout.SOUTH);
    SecondaryLabel.style(saved);
  }

  /** Sets the listener that opens another episode of the series. */
  void onChosen(Consumer<EpisodeFiles> listener) {
    chosenListener = listener;
  }

  /** The translation of the cue at the caret. */
  TranslationPanel translation() {
    return translation;
  }

  /** Shows the name of the open episode, and lists the others of its series. */
  void show(OpenEpisode opened) {
    isFilling = true;
    episodes.removeAllItems();
    List<EpisodeFiles> siblings = opened.siblings();
    siblings.forEach(files -> episodes.addItem(new Choice(files)));
    episodes.setVisible(siblings.size() > 1);
    open = Optional.of(opened.files());
    showChosen(open);
  }

  private void showChosen(Optional<EpisodeFiles> files) {
    isFilling = true;
    files.map(Choice::new).ifPresent(episodes::setSelectedItem);
    isFilling = false;
  }

  /** Shows the title of the episode. */
  void title(String title) {
    heading.setTitle(title.isBlank() ? Wording.of("script.title") : title);
  }

  /** Shows whether everything is saved. */
  void showSaved(boolean isAllSaved) {
    saved.setText(Wording.of(isAllSaved ? "script.saved" : "script.unsaved"));
  }
}
