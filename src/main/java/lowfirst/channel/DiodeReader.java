package lowfirst.channel;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import lowfirst.part.DatasheetLine;
import lowfirst.part.PartKind;
import lowfirst.quantity.Source;

/** Finds what a channel needs to know of its flyback diode, in a datasheet. */
final class DiodeReader {
  private static final List<String> METAL = List.of("TL", "TC", "TMB", "TT");

  private DiodeReader() {}

  static PartData diode(String name, PartKind kind, Ratings ratings) {
    var data = new ArrayList<Datum>();
    Datum reverse = ratings.limit(Term.DIODE_REVERSE_RATING, DatasheetSymbol.VRRM);
    // the clamp diodes inside an array stand what its outputs do
    data.add(
        kind == PartKind.DRIVER_ARRAY && !reverse.isKnown()
            ? ratings.limit(Term.DIODE_REVERSE_RATING, DatasheetSymbol.VCEO)
            : reverse);
    Datum average = ratings.limit(Term.DIODE_AVERAGE_RATING, DatasheetSymbol.IFAV);
    data.add(average);
    Datum ratedAt = ratedAt(ratings, name);
    data.add(ratedAt);
    Datum peak = ratings.limit(Term.DIODE_PEAK_RATING, DatasheetSymbol.IFRM);
    data.add(peak.isKnown() ? peak : impliedPeak(average));
    Datum forward = ratings.harm(Term.DIODE_FORWARD, DatasheetSymbol.VF);
    data.add(
        forward.isKnown()
            ? Datum.of(
                Term.DIODE_FORWARD,
                Math.min(0.4, forward.high()),
                forward.high(),
                forward.high(),
                forward.source())
            : forward);
    Datum junction = ratings.limit(Term.DIODE_JUNCTION_RATING, DatasheetSymbol.TJ);
    data.add(junction);
    Datum resistance = ratings.harm(Term.DIODE_RTH, DatasheetSymbol.RTHJA);
    data.add(
        resistance.isKnown()
            ? resistance
            : impliedResistance(resistance, average, ratedAt, forward, junction));
    data.add(
        kind == PartKind.SCHOTTKY_DIODE
            ? Datum.of(Term.DIODE_RECOVERY, 0, Source.standard("a Schottky diode stores no charge"))
            : ratings.harm(Term.DIODE_RECOVERY, DatasheetSymbol.TRR));
    return PartData.plain(PartData.Role.FLYBACK_DIODE, name, kind, data);
  }

  /**
   * Up to which temperature the average current is rated: that of the air or, where some maker
   * holds the leads or the case at it, that of those, which may be far above the air.
   */
  private static Datum ratedAt(Ratings ratings, String name) {
    List<DatasheetLine> lines = ratings.about(DatasheetSymbol.IFAV);
    boolean leads =
        lines.stream().anyMatch(line -> at(line, "TA").isEmpty() && atMetal(line).isPresent());
    Term term = leads ? Term.DIODE_RATING_LEAD : Term.DIODE_RATING_AIR;
    return lines.stream()
        .flatMap(
            line -> {
              OptionalDouble at = at(line, "TA").isPresent() ? at(line, "TA") : atMetal(line);
              return at.isPresent()
                  ? Stream.of(Datum.of(term, at.getAsDouble(), line.source()))
                  : Stream.empty();
            })
        .min(java.util.Comparator.comparingDouble(Datum::nominal))
        .orElse(
            Datum.of(
                Term.DIODE_RATING_AIR,
                25,
                Source.assumed("rated at 25 °C", "datasheets.csv, IFav of " + name + ", TA=")));
  }

  /** The temperature at which a rating holds the leads, the case or the mounting base. */
  private static OptionalDouble atMetal(DatasheetLine line) {
    return METAL.stream()
        .map(symbol -> at(line, symbol))
        .filter(OptionalDouble::isPresent)
        .findFirst()
        .orElse(OptionalDouble.empty());
  }

  private static OptionalDouble at(DatasheetLine line, String symbol) {
    return TestCondition.parse(line.condition()).value(symbol);
  }

  /** A half-wave rating of an average implies a peak of π times it at every cycle. */
  private static Datum impliedPeak(Datum average) {
    return average.isKnown()
        ? Datum.of(
            Term.DIODE_PEAK_RATING,
            Math.PI * average.low(),
            Source.computed("π·IFav of a half-wave rating, " + average.source()))
        : Datum.missing(Term.DIODE_PEAK_RATING, average.missing());
  }

  /**
   * The rating IFav at TA promises TJ ≤ TJmax there, so RthJA ≤ (TJmax − TA)/(VF·IFav) when mounted
   * as the maker did. A rating at the leads' temperature tells nothing of the way from there to the
   * air.
   */
  private static Datum impliedResistance(
      Datum absent, Datum average, Datum air, Datum forward, Datum junction) {
    if (!average.isKnown()
        || !forward.isKnown()
        || !junction.isKnown()
        || air.term() == Term.DIODE_RATING_LEAD) {
      return absent;
    }
    double watts = forward.high() * average.low();
    return Datum.of(
        Term.DIODE_RTH,
        (junction.low() - air.low()) / watts,
        Source.computed("(TJmax − TA)/(VF·IFav), " + average.source()));
  }
}
