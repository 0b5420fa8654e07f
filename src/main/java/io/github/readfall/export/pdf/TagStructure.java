package io.github.readfall.export.pdf;

import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkInfo;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;

/**
 * The structure of a document in reading order (ISO 32000-1, 14.7 and 14.8): for readers who
 * listen, and for programs that extract its text.
 */
final class TagStructure {

  static final String DOCUMENT = "Document";
  static final String SECTION = "Sect";
  static final String TITLE = "H1";
  static final String HEADING = "H2";
  static final String TEXT = "P";
  static final String FIGURE = "Figure";
  static final String CAPTION = "Caption";
  static final String NOTE = "Annot";

  private final PDDocument document;
  private final PDStructureTreeRoot root = new PDStructureTreeRoot();
  private final PDStructureElement whole;

  /** The elements of the content of each page and annotation, by its number. */
  private final List<COSBase> parents = new ArrayList<>();

  TagStructure(PDDocument document) {
    this.document = document;
    this.whole = new PDStructureElement(DOCUMENT, root);
    root.appendKid(whole);
  }

  /** A part of the document as a whole, after those that it has. */
  PDStructureElement add(String type) {
    return add(type, whole);
  }

  /** A part of another, after those that it has. */
  PDStructureElement add(String type, PDStructureElement parent) {
    PDStructureElement element = new PDStructureElement(type, parent);
    parent.appendKid(element);
    return element;
  }

  /** The number of a page or annotation, whose content belongs to this. */
  int number(COSBase elements) {
    parents.add(elements);
    return parents.size() - 1;
  }

  /** Puts it into the document. */
  void finish() {
    COSArray numbers = new COSArray();
    for (int i = 0; i < parents.size(); i++) {
      numbers.add(COSInteger.get(i));
      numbers.add(parents.get(i));
    }
    COSDictionary tree = new COSDictionary();
    tree.setItem(COSName.NUMS, numbers);
    root.getCOSObject().setItem(COSName.PARENT_TREE, tree);
    root.setParentTreeNextKey(parents.size());
    document.getDocumentCatalog().setStructureTreeRoot(root);
    PDMarkInfo mark = new PDMarkInfo();
    mark.setMarked(true);
    document.getDocumentCatalog().setMarkInfo(mark);
  }
}
