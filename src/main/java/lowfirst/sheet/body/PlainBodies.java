package lowfirst.sheet.body;

import java.util.Optional;
import lowfirst.part.BodyOutline;
import lowfirst.part.PartKind;
import lowfirst.sheet.drawing.Drawing;
import lowfirst.sheet.drawing.Ink;

/** Discs, boxes, cans and drops with two leads, seen from the side with the print, life size. */
final class PlainBodies {
  private static final Ink CERAMIC = new Ink(0xD9A15B);
  private static final Ink FILM = new Ink(0xC8503C);
  private static final Ink CAN = new Ink(0x2C3A55);
  private static final Ink STRIPE = new Ink(0xC9D0DA);
  private static final Ink DROP = new Ink(0xD9B23C);
  private static final Ink PALE = new Ink(0xDDE1E4);
  private static final Ink TRIMMER = new Ink(0x4F77B0);

  private static final double LEADS = 5;
  private static final double TYPE = 2.2;

  private PlainBodies() {}

  static Drawing link() {
    return new Strokes()
        .open(1, 7, 1, 1.5, 11, 1.5, 11, 7)
        .drawing(12, 7.5, "bare wire bent to a bracket");
  }

  static Drawing disc(PartKind kind, Optional<BodyOutline> outline, String text) {
    double diameter = outline.map(BodyOutline::lengthMillimetres).filter(mm -> mm > 2).orElse(5.0);
    double middle = diameter / 2 + 0.5;
    double bottom = diameter + 0.5;
    return new Strokes()
        .lead(middle - diameter / 3, bottom - 1, middle - diameter / 3, bottom + LEADS)
        .lead(middle + diameter / 3, bottom - 1, middle + diameter / 3, bottom + LEADS)
        .circle(middle, middle, diameter / 2, CERAMIC)
        .fitted(middle, middle, diameter * 0.86, TYPE, Ink.BLACK, text)
        .drawing(diameter + 1, bottom + LEADS + 0.3, kind.words() + print(text));
  }

  static Drawing box(PartKind kind, Optional<BodyOutline> outline, String text) {
    double length = outline.map(BodyOutline::lengthMillimetres).filter(mm -> mm > 1).orElse(7.0);
    double height =
        outline.map(BodyOutline::seatedHeightMillimetres).filter(mm -> mm > 1).orElse(6.0);
    Ink fill = kind == PartKind.FILM_CAPACITOR ? FILM : PALE;
    Ink ink = kind == PartKind.FILM_CAPACITOR ? Ink.WHITE : Ink.BLACK;
    double bottom = height + 0.5;
    return new Strokes()
        .lead(0.5 + length * 0.15, bottom, 0.5 + length * 0.15, bottom + LEADS)
        .lead(0.5 + length * 0.85, bottom, 0.5 + length * 0.85, bottom + LEADS)
        .box(0.5, 0.5, length, height, 0.4, fill)
        .fitted(0.5 + length / 2, 0.5 + height / 2, length * 0.9, TYPE, ink, text)
        .drawing(length + 1, bottom + LEADS + 0.3, kind.words() + print(text));
  }

  /** The stripe with minus signs stands over the shorter, negative lead. */
  static Drawing can(Optional<BodyOutline> outline, String text) {
    double diameter = outline.map(BodyOutline::widthMillimetres).filter(mm -> mm > 2).orElse(6.3);
    double height =
        outline.map(BodyOutline::seatedHeightMillimetres).filter(mm -> mm > 3).orElse(11.0);
    double width = Math.max(diameter, 5);
    double left = 1.5;
    double bottom = height + 0.5;
    double stripe = left + width * 0.76;
    double middle = left + width * 0.38;
    var strokes =
        new Strokes()
            .lead(left + width * 0.25, bottom, left + width * 0.25, bottom + LEADS + 1.5)
            .lead(left + width * 0.86, bottom, left + width * 0.86, bottom + LEADS)
            .box(left, 0.5, width, height, 0.5, CAN)
            .box(stripe, 0.5, width * 0.2, height, 0, STRIPE);
    for (double y = height * 0.25; y < height * 0.95; y += height * 0.25) {
      strokes.label(stripe + width * 0.1, y + 1, TYPE, Ink.BLACK, "−");
    }
    String[] parts = text.split(" (?=\\d)", 2);
    strokes.fitted(middle, height * 0.38, width * 0.72, TYPE, Ink.WHITE, parts[0]);
    if (parts.length > 1) {
      strokes.fitted(middle, height * 0.6, width * 0.72, TYPE, Ink.WHITE, parts[1]);
    }
    strokes.label(left + width * 0.25 - 1.4, bottom + LEADS, TYPE, Ink.BLACK, "+");
    return strokes.drawing(
        left + width + 0.5,
        bottom + LEADS + 2,
        "electrolytic capacitor" + print(text) + "; the stripe is at the negative, shorter lead");
  }

  /** On a tantalum drop the sign is at the positive, longer lead: the other way than on a can. */
  static Drawing drop(Optional<BodyOutline> outline, String text) {
    double diameter = outline.map(BodyOutline::lengthMillimetres).filter(mm -> mm > 2).orElse(5.0);
    double middle = diameter / 2 + 0.5;
    double bottom = diameter + 2;
    return new Strokes()
        .lead(middle - diameter / 4, bottom - 1.5, middle - diameter / 4, bottom + LEADS + 1.5)
        .lead(middle + diameter / 4, bottom - 1.5, middle + diameter / 4, bottom + LEADS)
        .circle(middle, middle, diameter / 2, DROP)
        .fitted(middle, middle, diameter * 0.8, TYPE, Ink.BLACK, text)
        .label(middle - diameter / 4 - 1, bottom + 1, TYPE, Ink.BLACK, "+")
        .drawing(
            diameter + 1,
            bottom + LEADS + 2,
            "tantalum capacitor" + print(text) + "; + is at the positive, longer lead");
  }

  static Drawing trimmer(PartKind kind, Optional<BodyOutline> outline, String text) {
    double side = outline.map(BodyOutline::lengthMillimetres).filter(mm -> mm > 3).orElse(9.5);
    return new Strokes()
        .lead(0.5 + side * 0.23, side + 0.5, 0.5 + side * 0.23, side + 4)
        .lead(0.5 + side * 0.5, side + 0.5, 0.5 + side * 0.5, side + 4)
        .lead(0.5 + side * 0.77, side + 0.5, 0.5 + side * 0.77, side + 4)
        .box(0.5, 0.5, side, side, 0.3, TRIMMER)
        .circle(0.5 + side * 0.84, 0.5 + side * 0.16, side * 0.1, new Ink(0xD8B24A))
        .fitted(0.5 + side / 2, 0.5 + side * 0.6, side * 0.8, TYPE, Ink.WHITE, text)
        .drawing(side + 1, side + 4.3, kind.words() + print(text));
  }

  static String print(String text) {
    return text.isBlank() ? "" : " with the print " + text;
  }
}
