package lowfirst.channel.data;

import java.util.OptionalDouble;
import lowfirst.board.Bounds;
import lowfirst.channel.check.Datum;
import lowfirst.channel.check.Term;
import lowfirst.channel.formula.Conductor;
import lowfirst.problem.Place;
import lowfirst.problem.Reading;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Source;

/** The cross-section of one core of a wire, as a table states it. */
final class WireArea {
  private WireArea() {}

  /**
   * The cross-section; missing where it isn't understood, or is more than a wire has.
   *
   * @param column what the text stands in
   * @param asked what to do where the text tells nothing
   */
  static Datum of(Term term, String text, Place place, String column, String asked) {
    OptionalDouble area = Conductor.squareMillimetres(ofOneCore(text));
    if (area.isEmpty()) {
      return Datum.missing(term, asked);
    }
    Reading<Quantity> within =
        Bounds.WIRE_AREA.within(column, Quantity.of(area.getAsDouble(), Dimension.AREA));
    Source source = Source.kit(place + ", " + column + " " + text + Conductor.doubt(text));
    return within.isRead()
        ? Datum.of(term, area.getAsDouble(), source)
        : Datum.missing(term, place + ": " + within.fault() + "; " + within.remedy());
  }

  /** A cable of {@code 2 x 0.75 mm²} has that area out and back; two in parallel have more. */
  private static String ofOneCore(String wire) {
    return wire.replaceFirst("^\\s*\\d{1,2}\\s*[xX×]\\s*(?=\\S)", "");
  }
}
