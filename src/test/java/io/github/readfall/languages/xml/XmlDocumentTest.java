package io.github.readfall.languages.xml;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** What we find in a text is what the JDK's own parser finds in it. */
class XmlDocumentTest {

  private static List<String> asTheJdkSays(String xml) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultNSInstance();
    factory.setCoalescing(true);
    List<String> said = new ArrayList<>();
    byte[] bytes = xml.getBytes(StandardCharsets.UTF_8);
    add(
        factory.newDocumentBuilder().parse(new ByteArrayInputStream(bytes)).getDocumentElement(),
        said);
    return said;
  }

  private static void add(Element element, List<String> said) {
    String space = element.getNamespaceURI() == null ? "" : element.getNamespaceURI();
    said.add("{" + space + "}" + element.getLocalName());
    List<String> attributes = new ArrayList<>();
    for (int i = 0; i < element.getAttributes().getLength(); i++) {
      Node each = element.getAttributes().item(i);
      attributes.add(each.getNodeName() + "=" + each.getNodeValue());
    }
    attributes.sort(null);
    said.add(attributes.toString());
    said.add(element.getTextContent());
    for (Node n = element.getFirstChild(); n != null; n = n.getNextSibling()) {
      if (n instanceof Element child) {
        add(child, said);
      }
    }
  }

  private static void add(XmlElement element, List<String> said) {
    said.add("{" + element.namespace() + "}" + element.local());
    said.add(
        element.attributes().stream().map(a -> a.name() + "=" + a.value()).sorted().toList() + "");
    said.add(element.words());
    element.elements().forEach(child -> add(child, said));
  }

  private static void assertSame(String xml) throws Exception {
    List<String> ours = new ArrayList<>();
    add(XmlDocument.of(xml.getBytes(StandardCharsets.UTF_8)).root(), ours);
    assertEquals(asTheJdkSays(xml), ours);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<a/>",
        "<a b='1' c = \"2\"\n/>",
        "<a b='&lt;&#65;&#x1F600;&quot;>'>x &amp; y<![CDATA[<z>]]]]></a>",
        "<?xml version='1.0'?><!-- <a> --><?p <a>?><a><!--<b/>--><b>c</b>\r\nd</a><!-- e -->",
        "<a xmlns='u'><b xmlns=''><c xmlns:p='v'><p:d p:e='1'/></c></b></a>",
        "<ä-b ü='ß'>日本</ä-b>",
        "<a b='x\r\n\ty'/>",
        "<a>&#13;\r\n</a>"
      })
  void aTextIsReadAsTheJdkReadsIt(String xml) throws Exception {
    assertSame(xml);
  }

  @Test
  void aWholeFileIsReadAsTheJdkReadsIt() throws Exception {
    assertSame(Files.readString(Path.of("src/test/resources/xliff/foreign.xlf")));
    assertSame(Files.readString(Path.of("pom.xml")));
  }

  @Test
  void changesAreMadeInTheirPlaces() throws XmlFault {
    XmlDocument document = XmlDocument.of(XmlEncoding.UTF_8, "<a b='1'> <c/> <d>x</d></a>");
    XmlElement root = document.root();
    XmlElement c = root.elements().findFirst().orElseThrow();
    XmlElement d = root.elements().skip(1).findFirst().orElseThrow();
    assertEquals(
        "<a b=\"&quot;2&amp;\"> <c>new</c><e/></a>",
        document
            .with(
                List.of(
                    XmlEdit.without(document.text(), d),
                    XmlEdit.insert(d.end(), "<e/>"),
                    XmlEdit.content(c, "new"),
                    XmlEdit.attribute(root, "b", "\"2&")))
            .text());
  }
}
