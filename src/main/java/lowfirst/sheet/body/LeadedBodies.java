package lowfirst.sheet.body;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lowfirst.part.BodyOutline;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;
import lowfirst.sheet.drawing.Drawing;
import lowfirst.sheet.drawing.Ink;
import lowfirst.sheet.drawing.Shape.Label;

/** Diodes, LEDs and three-lead parts as they look in the hand, life size. */
public final class LeadedBodies {
  private static final Ink MOULD = new Ink(0x33373B);
  private static final Ink GLASS = new Ink(0xE0A874);
  private static final Ink BAND = new Ink(0xE8EAEC);
  private static final Ink METAL = new Ink(0xC5CAD0);
  private static final Map<String, Ink> LENSES =
      Map.of(
          "RED", new Ink(0xE05A50),
          "GREEN", new Ink(0x6DBB63),
          "YELLOW", new Ink(0xF0D048),
          "BLUE", new Ink(0x6A9BE0),
          "ORANGE", new Ink(0xF0964A),
          "WHITE", new Ink(0xF8F8F4),
          "AMBER", new Ink(0xF0B04A));

  /** Of which most are small. */
  private static final Set<PartKind> SMALL =
      EnumSet.of(PartKind.TRANSISTOR, PartKind.BIPOLAR_TRANSISTOR, PartKind.JFET);

  private static final Pattern LEADS = Pattern.compile("TO-?(?:220|247|264|126)-([2-7])(?!\\d)");

  /** The names of one body (JEDEC, its later name, IEC). */
  private static final Pattern TO_126 = Pattern.compile("TO-?(?:126|225)|SOT-?32(?!\\d)");

  private static final double LEAD = 5;
  private static final double TYPE = 2.0;

  private LeadedBodies() {}

  /** The band is at the cathode. */
  static Drawing diode(PartKind kind, Optional<BodyOutline> outline, String text) {
    double length =
        outline
            .map(body -> Math.max(body.lengthMillimetres(), body.widthMillimetres()))
            .filter(mm -> mm > 2)
            .orElse(5.0);
    double diameter =
        outline
            .map(body -> Math.min(body.lengthMillimetres(), body.widthMillimetres()))
            .filter(mm -> mm > 1)
            .orElse(2.5);
    boolean glass = diameter <= 2.1;
    double top = 3;
    double middle = top + diameter / 2;
    double width = length + 2 * LEAD;
    var strokes =
        new Strokes()
            .lead(0.3, middle, LEAD, middle)
            .lead(LEAD + length, middle, width - 0.3, middle)
            .box(LEAD, top, length, diameter, 0.3, glass ? GLASS : MOULD)
            .box(LEAD + length * 0.78, top, length * 0.13, diameter, 0, glass ? Ink.BLACK : BAND)
            .label(LEAD + length + 1.6, middle - 0.8, TYPE, Ink.BLACK, "K");
    if (glass || Label.width(text, 1.4) > length * 0.75) {
      double room = LEAD + length;
      double half = Math.min(room, Label.width(text, TYPE)) / 2;
      strokes.fitted(Math.max(half, room - 1 - half), TYPE * 0.64, room, TYPE, Ink.BLACK, text);
    } else {
      strokes.fitted(LEAD + length * 0.39, middle, length * 0.72, diameter * 0.7, Ink.WHITE, text);
    }
    return strokes.drawing(
        width,
        top + diameter + 0.5,
        kind.words() + PlainBodies.print(text) + "; the band is at the cathode, K");
  }

  /** Flat side of the rim and shorter lead are the cathode (usual; check the maker's sheet). */
  static Drawing led(PartType type, Optional<BodyOutline> outline) {
    double diameter = outline.map(BodyOutline::widthMillimetres).filter(mm -> mm > 1).orElse(5.0);
    String colour = type.text().strip().toUpperCase(Locale.ROOT);
    Ink lens =
        LENSES.entrySet().stream()
            .filter(known -> colour.contains(known.getKey()))
            .map(Map.Entry::getValue)
            .findFirst()
            .orElse(new Ink(0xECECE6));
    double left = 3;
    double middle = left + diameter / 2;
    double dome = diameter / 2;
    double rim = diameter * 1.5;
    return new Strokes()
        .lead(middle - 1.27, rim, middle - 1.27, rim + LEAD + 2)
        .lead(middle + 1.27, rim, middle + 1.27, rim + LEAD)
        .circle(middle, dome + 0.3, dome, lens)
        .box(left, dome + 0.3, diameter, rim - dome - 0.9, 0, lens)
        .box(left - 0.4, rim - 0.9, diameter + 0.5, 0.9, 0, lens)
        .label(middle - 3.2, rim + LEAD, TYPE, Ink.BLACK, "A +")
        .label(middle + 3, rim + LEAD, TYPE, Ink.BLACK, "K")
        .drawing(
            diameter + 2 * left,
            rim + LEAD + 2.3,
            type.text().strip() + " LED; flat rim and shorter lead are the cathode, K");
  }

  /** A transistor's body: small with a flat, or with a metal tab. */
  static Drawing onLeads(
      PartKind kind, String packageName, Optional<BodyOutline> outline, String text) {
    String name =
        (outline.map(BodyOutline::name).orElse("") + " " + packageName).toUpperCase(Locale.ROOT);
    if (isTo126(name)) {
      return medium(kind, text);
    }
    boolean small = name.contains("TO-92") || name.contains("TO92");
    return small || !name.contains("TO-") && SMALL.contains(kind)
        ? small(kind, text)
        : power(kind, leads(name), text);
  }

  /** Whether a package's name, in capitals, is one of that body's: it has no tab. */
  public static boolean isTo126(String name) {
    return TO_126.matcher(name).find();
  }

  /** TO-92 from its flat side; body 4.7 × 4.6 mm (Jiangsu CJ). Pins count from the left. */
  private static Drawing small(PartKind kind, String text) {
    var strokes = new Strokes();
    pins(strokes, 3, 4.2, 1.27, 5.1);
    strokes
        .path(MOULD, 2.4, 0.5, 6.0, 0.5, 6.55, 1.1, 6.55, 5.1, 1.85, 5.1, 1.85, 1.1)
        .fitted(4.2, 2.8, 4.3, 1.8, Ink.WHITE, text);
    return strokes.drawing(
        8.4,
        13.2,
        kind.words() + " in a TO-92 body seen from its flat side" + PlainBodies.print(text));
  }

  /**
   * TO-126 from its front; body 7.6 × 10.85 mm, hole 3.1 mm wide 4 mm below its upper edge, leads
   * 2.29 mm apart (onsemi case 77-09, TO-225, the middle of each range).
   */
  private static Drawing medium(PartKind kind, String text) {
    var strokes = new Strokes();
    pins(strokes, 3, 4.3, 2.29, 11.35);
    strokes
        .box(0.5, 0.5, 7.6, 10.85, 0.4, MOULD)
        .circle(4.3, 4.5, 1.55, Ink.WHITE)
        .fitted(4.3, 8.7, 7, 2.4, Ink.WHITE, text);
    return strokes.drawing(
        8.6,
        20.4,
        kind.words() + " in a TO-126 body seen from its front" + PlainBodies.print(text));
  }

  /** TO-220 from the front; body 10.2 × 9 mm, tab 15.6 mm high (Vishay 95222). */
  private static Drawing power(PartKind kind, int leads, String text) {
    var strokes = new Strokes();
    pins(strokes, leads, 5.6, leads > 3 ? 1.7 : 2.54, 16.1);
    strokes
        .box(0.5, 0.5, 10.2, 6.9, 0.4, METAL)
        .circle(5.6, 3.3, 1.9, Ink.WHITE)
        .box(0.5, 7.1, 10.2, 9, 0.4, MOULD)
        .fitted(5.6, 11.4, 9.4, 2.4, Ink.WHITE, text);
    return strokes.drawing(
        11.2,
        25.2,
        kind.words() + " in a TO-220 body seen from its front" + PlainBodies.print(text));
  }

  /** How many leads the name of a body with a tab counts, such as TO-220-5; mostly three. */
  private static int leads(String name) {
    Matcher counted = LEADS.matcher(name);
    return counted.find() ? Integer.parseInt(counted.group(1)) : 3;
  }

  private static void pins(Strokes strokes, int leads, double middle, double pitch, double from) {
    for (int pin = 1; pin <= leads; pin++) {
      double x = middle + (pin - (leads + 1) / 2.0) * pitch;
      strokes.lead(x, from, x, from + 6);
      strokes.label(x, from + 8, pitch > 2 ? 1.9 : 1.6, Ink.BLACK, String.valueOf(pin));
    }
  }
}
