package lowfirst.channel.data;

import java.util.List;
import lowfirst.board.Rail;
import lowfirst.channel.check.Datum;
import lowfirst.channel.check.Term;
import lowfirst.channel.formula.Conductor;
import lowfirst.quantity.Source;

/** What a rail's checks need to know of its supply and its return: a row of {@code rails.csv}. */
public final class RailData {
  private RailData() {}

  /** The numbers of a rail. */
  public static List<Datum> of(Rail rail) {
    return List.of(
        Datum.stated(Term.RAIL_LIMIT, rail.currentLimit(), at(rail, "current limit")),
        returnArea(rail),
        Datum.stated(Term.RETURN_LENGTH, rail.returnLength(), at(rail, "return length")),
        returnContacts(rail),
        Datum.stated(Term.RETURN_CONTACT_RATING, rail.contactRating(), at(rail, "contact rating")));
  }

  private static Datum returnArea(Rail rail) {
    var area = Conductor.squareMillimetres(rail.returnWire());
    return area.isPresent()
        ? Datum.of(
            Term.RETURN_AREA,
            area.getAsDouble(),
            Source.kit(
                rail.place()
                    + ", return wire "
                    + rail.returnWire()
                    + Conductor.doubt(rail.returnWire())))
        : Datum.missing(Term.RETURN_AREA, at(rail, "return wire"));
  }

  private static Datum returnContacts(Rail rail) {
    return rail.returnContacts().isPresent()
        ? Datum.of(
            Term.RETURN_CONTACTS,
            rail.returnContacts().getAsInt(),
            Source.kit(rail.place() + ", return contacts"))
        : Datum.missing(Term.RETURN_CONTACTS, at(rail, "return contacts"));
  }

  /** What to do about an empty cell of a rail. */
  public static String at(Rail rail, String column) {
    return column + " of rail " + rail.name() + ": write it in rails.csv";
  }
}
