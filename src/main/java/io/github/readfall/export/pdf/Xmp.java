package io.github.readfall.export.pdf;

/** Writes a document's metadata as XML (ISO 16684-1). */
final class Xmp {

  private static final String PACKET =
      """
      <?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>
      <x:xmpmeta xmlns:x="adobe:ns:meta/">
       <rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
        <rdf:Description rdf:about=""
          xmlns:dc="http://purl.org/dc/elements/1.1/"
          xmlns:pdf="http://ns.adobe.com/pdf/1.3/"
          xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/">
         <dc:title><rdf:Alt><rdf:li xml:lang="x-default">TITLE</rdf:li></rdf:Alt></dc:title>
         <pdf:Producer>PRODUCER</pdf:Producer>
         <pdfuaid:part>1</pdfuaid:part>
        </rdf:Description>
       </rdf:RDF>
      </x:xmpmeta>
      <?xpacket end="w"?>
      """;

  private Xmp() {}

  /**
   * A packet that claims the standard that is met: PDF/UA-1 (ISO 14289-1, clause 5, from memory).
   */
  static String of(String title, String producer) {
    return PACKET.replace("PRODUCER", escaped(producer)).replace("TITLE", escaped(title));
  }

  private static String escaped(String text) {
    StringBuilder out = new StringBuilder();
    text.codePoints()
        .filter(c -> c >= ' ' && c != 0xFFFE && c != 0xFFFF && !(c >= 0xD800 && c <= 0xDFFF))
        .forEach(
            c -> {
              switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                default -> out.appendCodePoint(c);
              }
            });
    return out.toString();
  }
}
