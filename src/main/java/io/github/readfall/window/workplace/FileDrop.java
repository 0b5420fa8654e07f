package io.github.readfall.window.workplace;

import java.awt.Component;
import java.awt.Container;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.TransferHandler;
import javax.swing.text.JTextComponent;

/** Opens a file or folder that is discarded; other drops are handled as before. */
public final class FileDrop extends TransferHandler {

  private static final long serialVersionUID = 1;

  private final transient Consumer<Path> open;
  private final transient Optional<TransferHandler> before;

  private FileDrop(Consumer<Path> open, Optional<TransferHandler> before) {
    this.open = open;
    this.before = before;
  }

  /** Opens files discarded on a component or on any text in it. */
  public static void on(JComponent component, Consumer<Path> open) {
    component.setTransferHandler(new FileDrop(open, Optional.empty()));
    onTexts(component, open);
  }

  private static void onTexts(Container container, Consumer<Path> open) {
    for (Component child : container.getComponents()) {
      if (child instanceof JTextComponent text) {
        text.setTransferHandler(new FileDrop(open, Optional.ofNullable(text.getTransferHandler())));
      } else if (child instanceof Container inner) {
        onTexts(inner, open);
      }
    }
  }

  @Override
  public boolean canImport(TransferSupport support) {
    return isFiles(support) || before.filter(handler -> handler.canImport(support)).isPresent();
  }

  private static boolean isFiles(TransferSupport support) {
    return support.isDataFlavorSupported(DataFlavor.javaFileListFlavor);
  }

  @Override
  public boolean importData(TransferSupport support) {
    if (!isFiles(support)) {
      return before.filter(handler -> handler.importData(support)).isPresent();
    }
    Optional<Path> first = first(support);
    first.ifPresent(open);
    return first.isPresent();
  }

  private static Optional<Path> first(TransferSupport support) {
    try {
      Object files = support.getTransferable().getTransferData(DataFlavor.javaFileListFlavor);
      return files instanceof List<?> list && !list.isEmpty() && list.get(0) instanceof File file
          ? Optional.of(file.toPath())
          : Optional.empty();
    } catch (UnsupportedFlavorException | IOException e) {
      return Optional.empty(); // the drag was withdrawn
    }
  }

  @Override
  public int getSourceActions(JComponent component) {
    return before.map(handler -> handler.getSourceActions(component)).orElse(NONE);
  }

  @Override
  public void exportToClipboard(
      JComponent component, java.awt.datatransfer.Clipboard clipboard, int action) {
    before.ifPresent(handler -> handler.exportToClipboard(component, clipboard, action));
  }

  @Override
  public void exportAsDrag(JComponent component, java.awt.event.InputEvent event, int action) {
    before.ifPresent(handler -> handler.exportAsDrag(component, event, action));
  }
}
