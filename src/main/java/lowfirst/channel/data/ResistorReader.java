package lowfirst.channel.data;

import java.util.List;
import lowfirst.board.Bounds;
import lowfirst.channel.check.Datum;
import lowfirst.channel.check.Role;
import lowfirst.channel.check.Term;
import lowfirst.channel.formula.ResistorRating;
import lowfirst.part.PartType;
import lowfirst.problem.Reading;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Source;

/** Finds what a channel needs to know of a resistor, in the BOM. */
final class ResistorReader {
  private static final String RESISTOR_TOLERANCE = "5 %";

  private ResistorReader() {}

  static PartData resistor(Role role, Term term, Term rating, String name, PartType type) {
    if (type.value().isEmpty()) {
      return missing(role, term, name, type, "value of \"" + name + "\": write it in the BOM");
    }
    Quantity nominal = type.value().get();
    Reading<Quantity> within =
        role == Role.GATE_RESISTOR
            ? Bounds.GATE_RESISTOR.within("gate resistor", nominal)
            : Bounds.PULL_DOWN.within("pull-down", nominal);
    if (!within.isRead()) {
      return missing(
          role, term, name, type, within.fault() + "; " + within.remedy() + ", in the BOM");
    }
    var tolerance = type.tolerance().orElseGet(() -> lowfirst.quantity.Tolerance.percent("5"));
    Source source =
        type.tolerance().isPresent()
            ? Source.kit("the BOM: " + type.text() + " " + tolerance)
            : Source.kit("the BOM: " + type.text() + ", ±" + RESISTOR_TOLERANCE + " assumed");
    return PartData.plain(
        role,
        name,
        type.kind(),
        List.of(
            Datum.of(
                term,
                tolerance.lowest(nominal).asDouble(),
                nominal.asDouble(),
                tolerance.highest(nominal).asDouble(),
                source),
            ratedPower(rating, type)));
  }

  private static PartData missing(Role role, Term term, String name, PartType type, String why) {
    return PartData.plain(role, name, type.kind(), List.of(Datum.missing(term, why)));
  }

  private static Datum ratedPower(Term rating, PartType type) {
    return type.ratedPower()
        .map(power -> Datum.of(rating, power.asDouble(), Source.kit("the BOM: " + type.text())))
        .orElseGet(
            () ->
                Datum.of(
                    rating,
                    ResistorRating.SMALLEST_WATTS,
                    Source.assumed("1/8 W", "the BOM's value, as 220R 0.25W")));
  }
}
