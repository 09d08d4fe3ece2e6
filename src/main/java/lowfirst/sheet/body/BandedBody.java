package lowfirst.sheet.body;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import lowfirst.marking.BandSequence;
import lowfirst.marking.Colour;
import lowfirst.part.BodyOutline;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;
import lowfirst.quantity.Tolerance;
import lowfirst.sheet.drawing.Drawing;
import lowfirst.sheet.drawing.Ink;

/**
 * An axial body with colour bands, life size. The bands are too narrow to write on, so each is led
 * to its two-letter code above: colour is never the only carrier.
 */
final class BandedBody {
  private static final Ink CARBON = new Ink(0xE3CFA4);
  private static final Ink METAL = new Ink(0xA9CBE0);
  private static final Ink CHOKE = new Ink(0x9CC08B);
  private static final Ink LINK_BODY = new Ink(0xD9C79F);

  /** Body of the common quarter-watt size, DIN 0207 (Yageo MFR-25: 6.3 × 2.4 mm). */
  private static final double LENGTH = 6.3;

  private static final double DIAMETER = 2.4;
  private static final double LEAD = 4;
  private static final double TYPE = 2.2;
  private static final double LABEL_PITCH = 4.2;
  private static final double ABOVE = 4.6;

  private BandedBody() {}

  static Drawing of(PartType type, Optional<BodyOutline> outline, BandSequence bands) {
    double length = outline.map(body -> longer(body)).filter(mm -> mm > 2).orElse(LENGTH);
    double diameter = outline.map(body -> shorter(body)).filter(mm -> mm > 1).orElse(DIAMETER);
    double labels = bands.count() * LABEL_PITCH;
    double width = Math.max(length + 2 * LEAD, labels) + 1;
    double height = ABOVE + diameter + 0.5;
    double middle = ABOVE + diameter / 2;
    double left = (width - length) / 2;
    var strokes = new Strokes();
    strokes.lead(0.3, middle, left, middle).lead(left + length, middle, width - 0.3, middle);
    strokes.box(left, ABOVE, length, diameter, diameter / 3, body(type));
    List<Colour> colours = bands.bands();
    double thickness = Math.min(0.9, length / (2.0 * colours.size() + 1));
    for (int i = 0; i < colours.size(); i++) {
      Colour colour = colours.get(i);
      double x = left + place(i, colours.size()) * length;
      strokes.box(x - thickness / 2, ABOVE, thickness, diameter, 0, new Ink(colour.rgb()));
      double label = (width - labels) / 2 + (i + 0.5) * LABEL_PITCH;
      strokes.thin(x, ABOVE, label, TYPE + 0.6);
      strokes.label(label, TYPE, TYPE, Ink.BLACK, colour.code());
    }
    return strokes.drawing(width, height, type.kind().words() + " with bands " + bands.words());
  }

  private static double longer(BodyOutline body) {
    return Math.max(body.lengthMillimetres(), body.widthMillimetres());
  }

  private static double shorter(BodyOutline body) {
    return Math.min(body.lengthMillimetres(), body.widthMillimetres());
  }

  /** Where a band sits, as a share of the body; the tolerance band stands apart. */
  private static double place(int band, int count) {
    if (count == 1) {
      return 0.5;
    }
    double first = 0.12;
    if (count == 3) {
      return first + 0.2 * band;
    }
    boolean last = band == count - 1;
    return last ? 0.87 : first + band * 0.48 / (count - 2);
  }

  /** Usual body colours (common practice): tan for carbon film, blue for metal film. */
  private static Ink body(PartType type) {
    if (type.kind() == PartKind.INDUCTOR) {
      return CHOKE;
    }
    if (type.value().filter(value -> value.isZero()).isPresent()) {
      return LINK_BODY;
    }
    return type.tolerance().filter(BandedBody::isNarrow).isPresent() ? METAL : CARBON;
  }

  private static boolean isNarrow(Tolerance tolerance) {
    return tolerance.plus().compareTo(BigDecimal.valueOf(2)) <= 0;
  }
}
