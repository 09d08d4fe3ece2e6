package lowfirst.intake.design;

import java.util.OptionalDouble;
import java.util.regex.Pattern;
import lowfirst.intake.xml.XmlCursor;
import lowfirst.intake.xml.XmlCursor.Refused;
import lowfirst.intake.xml.XmlCursor.Spot;
import lowfirst.intake.xml.XmlNumber;

/**
 * Walks through the elements of an IPC-2581 file, reads their attributes by the types that the
 * standard gives them, and counts what is kept of it, so that no file fills the memory.
 */
final class DesignCursor {
  /** The name of the root element. */
  static final String ROOT = "IPC-2581";

  /** A board with more parts, packages and bill lines than this is not built by hand. */
  private static final int MOST_RECORDS = 200_000;

  /** What a name is about, in a qualified name. */
  private static final Pattern QUALIFIER = Pattern.compile("^[A-Z_]{2,20}:(?=.)");

  private final XmlCursor xml;
  private int records;

  private DesignCursor(XmlCursor xml) {
    this.xml = xml;
  }

  /** A cursor on the root element of a design. */
  static DesignCursor of(byte[] bytes) throws Refused {
    XmlCursor xml = XmlCursor.of(bytes);
    if (!xml.root().equals(ROOT)) {
      throw new Refused(xml.spot(), "its root element is not " + ROOT);
    }
    return new DesignCursor(xml);
  }

  /** Counts one more thing that is kept. */
  void count() throws Refused {
    if (++records > MOST_RECORDS) {
      throw new Refused(xml.spot(), "it holds more than " + MOST_RECORDS + " parts and packages");
    }
  }

  /** How deep the element at hand lies; the root lies at 1. */
  int depth() {
    return xml.depth();
  }

  /** Goes to the next child of the element that lies at {@code parent}; false after the last. */
  boolean next(int parent) throws Refused {
    return xml.next(parent);
  }

  /** The name of the element at hand. */
  String name() {
    return xml.name();
  }

  /** Where the element at hand starts. */
  Spot spot() {
    return xml.spot();
  }

  /** An attribute of the element at hand as it is written; empty when it has none of that name. */
  String attribute(String name) {
    return xml.attribute(name);
  }

  /** A name without its qualifier: {@code CMP:R1} is R1 among the components. */
  String reference(String attribute) {
    return QUALIFIER.matcher(attribute(attribute)).replaceFirst("");
  }

  /** Whether an attribute says so, for which XML Schema has two words. */
  boolean isTrue(String attribute) {
    String text = attribute(attribute);
    return text.equals("true") || text.equals("1");
  }

  /** A number; empty when the attribute is missing or holds none. */
  OptionalDouble number(String attribute) {
    return XmlNumber.in(attribute(attribute));
  }
}
