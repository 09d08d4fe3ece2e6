package lowfirst.intake.xml;

import java.io.ByteArrayInputStream;
import java.io.InputStreamReader;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import lowfirst.intake.text.Rows;

/**
 * Walks through the elements of an XML document (XML 1.0), within bounds: no document type, so no
 * entities of the file's own; not too deep; no tag too long. Names are taken without their
 * namespace.
 */
public final class XmlCursor {
  private static final Pattern ENCODING =
      Pattern.compile(
          "^\\W{0,3}<\\?xml[^>]{1,100}encoding\\s*=\\s*[\"']([A-Za-z][A-Za-z0-9._-]{0,30})[\"']");

  /** Bytes looked at to find what the first line states. */
  private static final int DECLARATION = 200;

  /** No board is described more deeply than this. */
  private static final int DEEPEST = 64;

  /** Bytes looked at to find the root. */
  private static final int PROLOGUE = 1 << 14;

  /** A tag with more characters than this is no part of a board. */
  private static final int LONGEST_TAG = 1 << 20;

  private final byte[] bytes;
  private final XMLStreamReader reader;
  private int depth;
  private Spot before = new Spot(1, 1);
  private Spot spot = new Spot(1, 1);

  /** Where an element starts: line and column, from 1. */
  public record Spot(int line, int column) {}

  /** Why a document is not read on, and where. */
  public static final class Refused extends Exception {
    private static final long serialVersionUID = 1;
    private final transient Spot spot;
    private final String remedy;

    /** One that a new export mends. */
    public Refused(Spot spot, String message) {
      this(spot, message, "export it again from the board's design");
    }

    /** One that {@code remedy} mends. */
    public Refused(Spot spot, String message, String remedy) {
      super(message);
      this.spot = spot;
      this.remedy = remedy;
    }

    /** What to do. */
    public String remedy() {
      return remedy;
    }

    /** Where. */
    public Spot spot() {
      return spot;
    }
  }

  private XmlCursor(byte[] bytes, XMLStreamReader reader) {
    this.bytes = bytes;
    this.reader = reader;
  }

  /** A cursor before the root element. */
  public static XmlCursor of(byte[] bytes) throws Refused {
    checkTags(bytes);
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setProperty(XMLInputFactory.IS_COALESCING, false);
    // Names are cut here, so that a prefix that nobody declared does no harm.
    factory.setProperty(XMLInputFactory.IS_NAMESPACE_AWARE, false);
    try {
      return new XmlCursor(bytes, reader(factory, bytes));
    } catch (XMLStreamException notXml) {
      throw new Refused(new Spot(1, 1), "this is not XML");
    }
  }

  /** Of bytes that are no letters the parser writes to the console, so it is given letters. */
  private static XMLStreamReader reader(XMLInputFactory factory, byte[] bytes)
      throws XMLStreamException {
    String start = start(bytes);
    boolean wide = start.indexOf('\0') >= 0;
    Optional<Charset> charset = wide ? Optional.empty() : charset(start);
    int mark = start.startsWith("\u00ef\u00bb\u00bf") ? 3 : 0;
    var stream = new ByteArrayInputStream(bytes, mark, bytes.length - mark);
    return charset.isEmpty()
        ? factory.createXMLStreamReader(stream)
        : factory.createXMLStreamReader(new InputStreamReader(stream, charset.get().newDecoder()));
  }

  /** What the first line states, else what XML takes for granted; empty where nobody knows it. */
  private static Optional<Charset> charset(String start) {
    Matcher stated = ENCODING.matcher(start);
    String name = stated.find() ? stated.group(1) : "UTF-8";
    return Charset.isSupported(name) ? Optional.of(Charset.forName(name)) : Optional.empty();
  }

  /** The line of the first bytes that are no letters. */
  private Spot noLetters() {
    CharsetDecoder decoder = charset(start(bytes)).orElse(StandardCharsets.UTF_8).newDecoder();
    ByteBuffer in = ByteBuffer.wrap(bytes);
    var out = CharBuffer.allocate(1 << 13);
    while (decoder.decode(in, out, true).isOverflow()) {
      out.clear();
    }
    int line = 1;
    for (int at = 0; at < in.position(); at++) {
      line += bytes[at] == '\n' ? 1 : 0;
    }
    return new Spot(line, 1);
  }

  private static String start(byte[] bytes) {
    return new String(bytes, 0, Math.min(bytes.length, DECLARATION), StandardCharsets.ISO_8859_1);
  }

  /** The parser keeps a whole tag in memory, several times over. */
  private static void checkTags(byte[] bytes) throws Refused {
    int opened = -1;
    int line = 1;
    for (int at = 0; at < bytes.length; at++) {
      byte b = bytes[at];
      line += b == '\n' ? 1 : 0;
      if (b == '<' && opened < 0) {
        opened = at;
      } else if (b == '>') {
        opened = -1;
      }
      if (opened >= 0 && at - opened > LONGEST_TAG) {
        throw new Refused(new Spot(line, 1), "a tag is longer than 1 MB");
      }
    }
  }

  /** Goes to the root element; its name. */
  public String root() throws Refused {
    return next(0) ? name() : "";
  }

  /** How deep the element at hand lies; the root lies at 1. */
  public int depth() {
    return depth;
  }

  /** Goes to the next child of the element that lies at {@code parent}; false after the last. */
  public boolean next(int parent) throws Refused {
    try {
      while (reader.hasNext()) {
        int event = reader.next();
        // After text the parser has taken the sign that opens the tag.
        boolean text = event == XMLStreamConstants.CHARACTERS || event == XMLStreamConstants.SPACE;
        spot = before;
        before = here(text ? 1 : 0);
        switch (event) {
          case XMLStreamConstants.DTD ->
              throw new Refused(
                  before,
                  "it has a document type, which could hide what is in it",
                  "export it again without one, or delete it: from <!DOCTYPE to its >");
          case XMLStreamConstants.START_ELEMENT -> {
            depth++;
            if (depth > DEEPEST) {
              throw new Refused(spot, "its elements lie more than " + DEEPEST + " deep");
            }
            if (depth == parent + 1) {
              return true;
            }
          }
          case XMLStreamConstants.END_ELEMENT -> {
            depth--;
            if (depth < parent) {
              return false;
            }
          }
          default -> {
            // Texts and comments say nothing of parts.
          }
        }
      }
      return false;
    } catch (XMLStreamException | RuntimeException broken) {
      boolean bytes =
          broken instanceof XMLStreamException stream
              && stream.getNestedException() instanceof CharacterCodingException;
      throw bytes
          ? new Refused(
              noLetters(),
              "there are letters here in another encoding than its first line states",
              "export it again, or correct encoding=\"...\" in its first line")
          : new Refused(
              here(0),
              "the XML is broken here: it breaks off, a tag does not fit, or a sign &...; is not"
                  + " known");
    }
  }

  private Spot here(int back) {
    return new Spot(
        Math.max(1, reader.getLocation().getLineNumber()),
        Math.max(1, reader.getLocation().getColumnNumber() - back));
  }

  /** The name of the element at hand. */
  public String name() {
    String name = reader.getLocalName();
    return name.substring(name.indexOf(':') + 1);
  }

  /** Where the element at hand starts. */
  public Spot spot() {
    return spot;
  }

  /** An attribute of the element at hand; empty when it has none of that name. */
  public String attribute(String name) {
    for (int i = 0; i < reader.getAttributeCount(); i++) {
      String own = reader.getAttributeLocalName(i);
      boolean prefixed = own.length() > name.length() && own.endsWith(name);
      if (own.equals(name) || (prefixed && own.charAt(own.length() - name.length() - 1) == ':')) {
        return Rows.stripped(reader.getAttributeValue(i));
      }
    }
    return "";
  }

  /** The text of the element at hand, which has no other in it and is left. */
  public String text() throws Refused {
    try {
      depth--;
      return reader.getElementText();
    } catch (XMLStreamException | RuntimeException broken) {
      throw new Refused(here(0), "the XML is broken here: this element holds a text and no more");
    }
  }

  /** Whether these bytes start as an XML document whose root has this name. */
  public static boolean startsWith(byte[] bytes, String root) {
    var start = new StringBuilder();
    for (int at = 0; at < Math.min(bytes.length, PROLOGUE); at++) {
      // UTF-16 of these letters has a zero beside each.
      if (bytes[at] != 0) {
        start.append((char) (bytes[at] & 0xFF));
      }
    }
    int at = start.indexOf("<");
    while (at >= 0 && at + 1 < start.length()) {
      if (start.charAt(at + 1) == '?') {
        at = after(start, "?>", at);
      } else if (start.charAt(at + 1) == '!') {
        boolean comment = start.indexOf("<!--", at) == at;
        at = after(start, comment ? "-->" : ">", at);
      } else {
        String name = start.substring(at + 1).split("[\\s/>]", 2)[0];
        return name.substring(name.indexOf(':') + 1).equals(root);
      }
    }
    return false;
  }

  /** The next tag after the end of a comment, an instruction or a document type. */
  private static int after(StringBuilder text, String end, int from) {
    int found = text.indexOf(end, from);
    return found < 0 ? -1 : text.indexOf("<", found);
  }
}
