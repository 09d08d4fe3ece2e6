package lowfirst.sheet.body;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lowfirst.part.BodyOutline;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;
import lowfirst.sheet.drawing.Drawing;
import lowfirst.sheet.drawing.Ink;

/** Parts with rows of pins, seen from above, life size: pitch 2.54 mm. */
final class PinnedBodies {
  private static final Ink MOULD = new Ink(0x33373B);
  private static final Ink SOCKET = new Ink(0x5A5F64);
  private static final Ink TERMINAL = new Ink(0x3E7A52);
  private static final Ink SCREW = new Ink(0xD0D4D8);
  private static final double PITCH = 2.54;
  private static final double TYPE = 2.2;
  private static final Pattern NUMBER = Pattern.compile("(\\d{1,2})(?=\\D|$)");
  private static final Pattern ROWS = Pattern.compile("(\\d)\\s*[xX×]\\s*(\\d{1,2})");

  private static final Pattern POLES =
      Pattern.compile("(?i)(\\d{1,2})[-_ ]?(?:pol|pos|way|pin|p(?![a-z0-9.]))|\\b1x0?(\\d{1,2})");

  private PinnedBodies() {}

  /** Notch at the left: pin 1 is the lower left one. */
  static Drawing dual(
      PartKind kind, String packageName, Optional<BodyOutline> outline, String text) {
    int pins =
        outline.map(BodyOutline::pins).filter(n -> n >= 4).orElseGet(() -> pins(packageName, 8));
    int side = Math.max(2, Math.min(20, pins / 2));
    double length = side * PITCH;
    boolean wide = pins >= 24 && !packageName.toLowerCase(java.util.Locale.ROOT).contains("300");
    double width = wide ? 13.7 : 6.4;
    var strokes = new Strokes();
    for (int pin = 0; pin < side; pin++) {
      double x = 0.5 + PITCH / 2 + pin * PITCH;
      strokes.lead(x, 0.4, x, 2).lead(x, 2 + width, x, 3.6 + width);
    }
    boolean socket = kind == PartKind.SOCKET;
    strokes.box(0.5, 1.6, length, width + 0.8, 0.3, socket ? SOCKET : MOULD);
    if (socket) {
      strokes.box(2.2, 4, length - 3.4, width - 4, 0.2, Ink.WHITE);
    }
    strokes
        .circle(0.5, 2 + width / 2, 0.9, Ink.WHITE)
        .circle(0.5 + PITCH / 2, 1.2 + width, 0.4, Ink.WHITE)
        .fitted(
            0.5 + length / 2,
            2 + width / 2,
            length * 0.8,
            TYPE,
            socket ? Ink.BLACK : Ink.WHITE,
            socket ? pins + " pins" : text);
    strokes.label(0.5 + PITCH / 2, 5.6 + width, 1.8, Ink.BLACK, "1");
    return strokes.drawing(
        length + 1,
        6 + width,
        kind.words()
            + " with "
            + pins
            + " pins seen from above"
            + PlainBodies.print(socket ? "" : text)
            + "; notch at the left, pin 1 below it");
  }

  /** The dot is at pin 1. */
  static Drawing single(Optional<BodyOutline> outline, String text) {
    int pins = outline.map(BodyOutline::pins).filter(n -> n >= 3).orElse(9);
    double length = pins * PITCH;
    var strokes = new Strokes();
    for (int pin = 0; pin < pins; pin++) {
      double x = 0.5 + PITCH / 2 + pin * PITCH;
      strokes.lead(x, 5.4, x, 9);
    }
    strokes
        .box(0.5, 0.5, length, 5, 0.4, MOULD)
        .circle(0.5 + PITCH / 2, 4.3, 0.5, Ink.WHITE)
        .fitted(0.5 + length / 2, 2.6, length * 0.8, TYPE, Ink.WHITE, text)
        .label(0.5 + PITCH / 2, 11, 1.8, Ink.BLACK, "1");
    return strokes.drawing(
        length + 1,
        11.4,
        "resistor network in a row of "
            + pins
            + " pins"
            + PlainBodies.print(text)
            + "; the dot is at pin 1");
  }

  static Drawing header(PartType type, Optional<BodyOutline> outline) {
    Matcher rows = ROWS.matcher(type.text() + " " + type.packageName());
    boolean written = rows.find();
    int across = written ? Math.max(1, Integer.parseInt(rows.group(1))) : 1;
    int along =
        written
            ? Math.max(1, Integer.parseInt(rows.group(2)))
            : outline.map(BodyOutline::pins).filter(n -> n > 0).orElse(2);
    if (across > 4 || along > 40) {
      return PlainBodies.box(type.kind(), outline, type.text());
    }
    var strokes = new Strokes();
    strokes.box(0.5, 0.5, along * PITCH, across * PITCH, 0.3, MOULD);
    for (int row = 0; row < across; row++) {
      for (int pin = 0; pin < along; pin++) {
        double x = 0.5 + PITCH * (pin + 0.5);
        double y = 0.5 + PITCH * (row + 0.5);
        strokes.box(x - 0.32, y - 0.32, 0.64, 0.64, 0, SCREW);
      }
    }
    return strokes.drawing(
        along * PITCH + 1,
        across * PITCH + 1,
        type.kind().words() + ", " + across + " × " + along + " pins, seen from above");
  }

  static Drawing terminal(PartType type, Optional<BodyOutline> outline) {
    int poles = outline.map(BodyOutline::pins).filter(n -> n > 0).orElseGet(() -> poles(type));
    double length =
        outline.map(BodyOutline::lengthMillimetres).filter(mm -> mm > 4).orElse(poles * 5.08);
    double width = outline.map(BodyOutline::widthMillimetres).filter(mm -> mm > 4).orElse(8.0);
    var strokes = new Strokes();
    strokes.box(0.5, 0.5, length, width, 0.3, TERMINAL);
    for (int pole = 0; pole < poles; pole++) {
      double x = 0.5 + length * (pole + 0.5) / poles;
      double radius = Math.min(1.9, length / poles * 0.36);
      strokes
          .circle(x, 0.5 + width * 0.45, radius, SCREW)
          .thin(x - radius * 0.7, 0.5 + width * 0.45, x + radius * 0.7, 0.5 + width * 0.45);
    }
    return strokes.drawing(
        length + 1, width + 1, "screw terminal with " + poles + " poles, seen from above");
  }

  /** A number that counts poles: 2-pole, 3 way, 1x04, or nothing but a number; else two. */
  private static int poles(PartType type) {
    Matcher alone = NUMBER.matcher(type.text().strip());
    Matcher counted = POLES.matcher(type.text() + " " + type.packageName());
    String number =
        alone.matches()
            ? alone.group(1)
            : !counted.find() ? "2" : counted.group(counted.group(1) == null ? 2 : 1);
    return Math.max(1, Math.min(12, Integer.parseInt(number)));
  }

  private static int pins(String text, int fallback) {
    Matcher number = NUMBER.matcher(text);
    return number.find() ? Math.max(1, Integer.parseInt(number.group(1))) : fallback;
  }
}
