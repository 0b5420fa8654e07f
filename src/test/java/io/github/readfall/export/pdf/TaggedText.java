package io.github.readfall.export.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkedContentReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDMarkedContent;
import org.apache.pdfbox.text.PDFMarkedContentExtractor;

/** A document as a reader hears it: its elements in order, and what is drawn for each. */
final class TaggedText {

  /**
   * An element.
   *
   * @param lines what is drawn for it, a text for each line of letters
   */
  record Element(PDStructureElement element, List<String> lines) {
    String type() {
      return element.getStructureType();
    }
  }

  private final Map<COSDictionary, Map<Integer, PDMarkedContent>> pages = new HashMap<>();

  private TaggedText(PDDocument document) throws IOException {
    for (PDPage page : document.getPages()) {
      PDFMarkedContentExtractor extractor = new PDFMarkedContentExtractor();
      extractor.processPage(page);
      Map<Integer, PDMarkedContent> contents = new HashMap<>();
      for (PDMarkedContent content : extractor.getMarkedContents()) {
        contents.put(content.getMCID(), content);
      }
      pages.put(page.getCOSObject(), contents);
    }
  }

  /** Every element, parents before their kids. */
  static List<Element> of(PDDocument document) throws IOException {
    List<Element> elements = new ArrayList<>();
    PDStructureNode root = document.getDocumentCatalog().getStructureTreeRoot();
    new TaggedText(document).add(root, elements);
    return elements;
  }

  private void add(PDStructureNode node, List<Element> elements) {
    for (Object kid : node.getKids()) {
      if (kid instanceof PDStructureElement element) {
        List<String> lines = new ArrayList<>();
        elements.add(new Element(element, lines));
        for (Object own : element.getKids()) {
          if (own instanceof PDMarkedContentReference reference) {
            Optional.ofNullable(pages.get(reference.getPage().getCOSObject()))
                .map(page -> page.get(reference.getMCID()))
                .ifPresent(content -> collect(content, lines));
          }
        }
        add(element, elements);
      }
    }
  }

  private static void collect(PDMarkedContent content, List<String> lines) {
    for (Object part : content.getContents()) {
      if (part instanceof PDMarkedContent inner) {
        if (inner.getActualText() != null) {
          lines.add(inner.getActualText());
        }
        collect(inner, lines);
      }
    }
  }
}
