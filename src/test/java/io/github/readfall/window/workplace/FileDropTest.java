package io.github.readfall.window.workplace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.BorderLayout;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.StringSelection;
import java.awt.datatransfer.Transferable;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.File;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.TransferHandler.TransferSupport;
import org.junit.jupiter.api.Test;

class FileDropTest {

  private final JTextArea text = new JTextArea();
  private final JPanel panel = new JPanel(new BorderLayout());
  private final List<Path> opened = new ArrayList<>();

  FileDropTest() {
    panel.add(text);
    FileDrop.on(panel, opened::add);
  }

  /** Files as a desktop drops them. */
  private record Files(List<File> files) implements Transferable {
    @Override
    public DataFlavor[] getTransferDataFlavors() {
      return new DataFlavor[] {DataFlavor.javaFileListFlavor};
    }

    @Override
    public boolean isDataFlavorSupported(DataFlavor flavor) {
      return flavor.equals(DataFlavor.javaFileListFlavor);
    }

    @Override
    public Object getTransferData(DataFlavor flavor) throws UnsupportedFlavorException {
      return files;
    }
  }

  private static boolean drop(JComponent on, Transferable what) {
    return on.getTransferHandler().importData(new TransferSupport(on, what));
  }

  @Test
  void aFileIsOpenedWhereverItIsDropped() {
    Files files = new Files(List.of(new File("ep01"), new File("ep02")));
    assertTrue(drop(panel, files));
    assertTrue(drop(text, files));
    assertEquals(List.of(Path.of("ep01"), Path.of("ep01")), opened);
    assertEquals("", text.getText());
  }

  @Test
  void droppedTextIsInsertedIntoTheText() {
    assertTrue(drop(text, new StringSelection("ILSE: Hush.")));
    assertEquals("ILSE: Hush.", text.getText());
    assertFalse(drop(panel, new StringSelection("ILSE: Hush.")));
    assertEquals(List.of(), opened);
  }

  @Test
  void nothingIsOpenedIfNothingIsDropped() {
    assertFalse(drop(panel, new Files(List.of())));
  }
}
