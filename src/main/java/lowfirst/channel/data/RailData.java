package lowfirst.channel.data;

import java.util.List;
import lowfirst.board.Rail;
import lowfirst.channel.check.Datum;
import lowfirst.channel.check.Term;
import lowfirst.quantity.Source;

/** What a rail's checks need to know of its supply and its return: a row of {@code rails.csv}. */
public final class RailData {
  private RailData() {}

  /** The numbers of a rail. */
  public static List<Datum> of(Rail rail) {
    return List.of(
        Datum.stated(Term.RAIL_LIMIT, rail.currentLimit(), at(rail, "current limit")),
        WireArea.of(
            Term.RETURN_AREA,
            rail.returnWire(),
            rail.place(),
            "return wire",
            at(rail, "return wire")),
        Datum.stated(Term.RETURN_LENGTH, rail.returnLength(), at(rail, "return length")),
        returnContacts(rail),
        Datum.stated(Term.RETURN_CONTACT_RATING, rail.contactRating(), at(rail, "contact rating")));
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
