package io.github.readfall.languages.xml;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CharsetEncoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The encoding of an XML file, found by XML 1.0, appendix F.
 *
 * @param charset of its text
 * @param mark true if the file begins with U+FEFF
 */
public record XmlEncoding(Charset charset, boolean mark) {

  /** The encoding of new files. */
  public static final XmlEncoding UTF_8 = new XmlEncoding(StandardCharsets.UTF_8, false);

  private static final List<Charset> KNOWN =
      List.of(
          StandardCharsets.UTF_8,
          StandardCharsets.UTF_16LE,
          StandardCharsets.UTF_16BE,
          StandardCharsets.ISO_8859_1,
          StandardCharsets.US_ASCII);

  private static final Pattern DECLARED =
      Pattern.compile("^<\\?xml\\s[^>]*?encoding\\s*=\\s*[\"']([^\"']*)[\"']");

  private static final int HEAD_BYTES = 200;
  private static final char MARK = '\uFEFF';

  /**
   * The encoding of a file.
   *
   * @throws XmlFault where it is none that is read, or not the one that the file names
   */
  public static XmlEncoding of(byte[] bytes) throws XmlFault {
    Optional<XmlEncoding> seen = seen(bytes);
    Charset head = seen.map(XmlEncoding::charset).orElse(StandardCharsets.ISO_8859_1);
    String start = new String(bytes, 0, Math.min(bytes.length, HEAD_BYTES), head);
    Matcher declared = DECLARED.matcher(start.startsWith("\uFEFF") ? start.substring(1) : start);
    if (!declared.find()) {
      return seen.orElse(UTF_8);
    }
    String name = declared.group(1).toUpperCase(Locale.ROOT);
    if (seen.isPresent()) {
      if (!seen.get().isCalled(name)) {
        throw new XmlFault(
            1, "it claims to be " + name + ", but it is not: save it again, as UTF-8.");
      }
      return seen.get();
    }
    return KNOWN.stream()
        .filter(charset -> !charset.name().startsWith("UTF-16"))
        .filter(charset -> charset.name().equals(name))
        .findFirst()
        .map(charset -> new XmlEncoding(charset, false))
        .orElseThrow(
            () -> new XmlFault(1, "it is written as " + name + ": save it again, as UTF-8."));
  }

  /** The encoding that the first bytes prove. */
  private static Optional<XmlEncoding> seen(byte[] bytes) {
    if (starts(bytes, 0xEF, 0xBB, 0xBF)) {
      return Optional.of(new XmlEncoding(StandardCharsets.UTF_8, true));
    }
    if (starts(bytes, 0xFF, 0xFE) || starts(bytes, '<', 0)) {
      return Optional.of(new XmlEncoding(StandardCharsets.UTF_16LE, bytes[0] != '<'));
    }
    if (starts(bytes, 0xFE, 0xFF) || starts(bytes, 0, '<')) {
      return Optional.of(new XmlEncoding(StandardCharsets.UTF_16BE, bytes[0] != 0));
    }
    return Optional.empty();
  }

  private static boolean starts(byte[] bytes, int... with) {
    for (int i = 0; i < with.length; i++) {
      if (i >= bytes.length || (bytes[i] & 0xFF) != with[i]) {
        return false;
      }
    }
    return true;
  }

  private boolean isCalled(String name) {
    return charset.name().equals(name)
        || (name.equals("UTF-16") && charset.name().startsWith("UTF-16"));
  }

  /**
   * The text of a file, without its mark.
   *
   * @throws XmlFault if bytes belong to no character
   */
  public String text(byte[] bytes) throws XmlFault {
    try {
      String text =
          charset
              .newDecoder()
              .onMalformedInput(CodingErrorAction.REPORT)
              .onUnmappableCharacter(CodingErrorAction.REPORT)
              .decode(ByteBuffer.wrap(bytes))
              .toString();
      return mark ? text.substring(1) : text;
    } catch (CharacterCodingException e) {
      throw new XmlFault(
          0, "it holds bytes that are no " + charset.name() + ": save it again, as UTF-8.");
    }
  }

  /** The bytes of a text; a character that the encoding lacks is written by its number. */
  public byte[] bytes(String text) {
    CharsetEncoder encoder = charset.newEncoder();
    String whole = mark ? MARK + text : text;
    if (encoder.canEncode(whole)) {
      return whole.getBytes(charset);
    }
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    whole
        .codePoints()
        .mapToObj(Character::toString)
        .map(c -> encoder.canEncode(c) ? c : "&#x" + Integer.toHexString(c.codePointAt(0)) + ";")
        .forEach(c -> bytes.writeBytes(c.getBytes(charset)));
    return bytes.toByteArray();
  }
}
