package lowfirst.channel.data;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lowfirst.channel.check.Datum;
import lowfirst.channel.check.Role;
import lowfirst.channel.check.Term;
import lowfirst.part.DatasheetLine;
import lowfirst.part.PartKind;
import lowfirst.part.RatedTemperature;
import lowfirst.part.TestCondition;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Source;

/** Finds what a channel needs to know of its flyback diode, in a datasheet. */
final class DiodeReader {
  private DiodeReader() {}

  /**
   * Words for diodes that are made to break down: suppressor diodes by what they are called and by
   * the series of their numbers (common practice of the trade).
   */
  private static final Pattern SUPPRESSOR =
      Pattern.compile(
          "suppressor|transient voltage|\\btvs\\b|\\bp[46]ke\\d|\\b1[.,]?5ke\\d|\\b5kp\\d",
          Pattern.CASE_INSENSITIVE);

  /** Where fast recovery ends: FR101 to FR107, Taiwan Semiconductor, are 150 to 500 ns. */
  private static final double FAST_SECONDS = 500e-9;

  private static final double MOST_KELVIN_PER_WATT = 500;

  private static final Source AT_MOST =
      Source.standard(
          "more than of any body with leads: the smallest, DO-35, has 350 K/W (Vishay 81857)");

  private static final Source AT_LEAST =
      Source.standard("standard recovery: the typical time, or more than a fast diode's 500 ns");

  /** Where the current of an array's outputs is rated. */
  private static final Datum OUTPUTS_RATED_AT =
      Datum.of(
          Term.DIODE_RATING_AIR, 25, Source.datasheet("Motorola MC1413/D: ratings at TA = 25 °C"));

  static PartData diode(String name, PartKind kind, Ratings ratings, String bomWords) {
    var data = new ArrayList<Datum>();
    data.add(
        breaksDown(kind, ratings, name + " " + bomWords)
            ? breakdown(ratings, name)
            : stated(
                kind,
                ratings,
                Term.DIODE_REVERSE_RATING,
                DatasheetSymbol.VRRM,
                DatasheetSymbol.VCEO));
    Datum average =
        stated(kind, ratings, Term.DIODE_AVERAGE_RATING, DatasheetSymbol.IFAV, DatasheetSymbol.IC);
    data.add(average);
    boolean asOutputs =
        kind == PartKind.DRIVER_ARRAY && ratings.about(DatasheetSymbol.IFAV).isEmpty();
    Datum ratedAt = asOutputs ? OUTPUTS_RATED_AT : ratedAt(ratings, average, name);
    data.add(ratedAt);
    Datum peak =
        stated(kind, ratings, Term.DIODE_PEAK_RATING, DatasheetSymbol.IFRM, DatasheetSymbol.IC);
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
    data.add(ratings.testedUpTo(Term.DIODE_FORWARD_CURRENT, DatasheetSymbol.VF, "IF"));
    Datum junction = ratings.limit(Term.DIODE_JUNCTION_RATING, DatasheetSymbol.TJ);
    data.add(junction);
    Datum resistance = ratings.harm(Term.DIODE_RTH, DatasheetSymbol.RTHJA);
    data.add(
        resistance.isKnown()
            ? resistance
            : impliedResistance(
                resistance, average, ratedAt, forward, junction, typicalResistance(ratings)));
    data.add(
        kind == PartKind.SCHOTTKY_DIODE
            ? Datum.of(Term.DIODE_RECOVERY, 0, Source.standard("a Schottky diode stores no charge"))
            : recovery(ratings, name));
    return PartData.plain(Role.FLYBACK_DIODE, name, kind, data);
  }

  /**
   * How long it conducts backwards. Makers promise no time of a rectifier of standard recovery:
   * what is known is that it takes longer than a fast one, or about the typical time.
   */
  private static Datum recovery(Ratings ratings, String name) {
    Datum stated = ratings.harm(Term.DIODE_RECOVERY, DatasheetSymbol.TRR);
    boolean isStandard =
        ratings.lines().stream()
            .anyMatch(
                line ->
                    line.symbol().equals("technology")
                        && line.condition().equalsIgnoreCase("standard recovery"));
    if (stated.isKnown() || !isStandard) {
      return stated;
    }
    double least =
        ratings.about(DatasheetSymbol.TRR).stream()
            .flatMap(line -> line.typ().stream())
            .mapToDouble(Quantity::asDouble)
            .min()
            .orElse(FAST_SECONDS);
    return new Datum(
        stated.term(),
        "trr at least",
        stated.dimension(),
        least,
        Double.NaN,
        Double.NaN,
        AT_LEAST,
        "trr of "
            + name
            + ", of which makers promise none, since it recovers as standard rectifiers do: fit a"
            + " fast or a Schottky diode, or write trr max in datasheets.csv");
  }

  /**
   * A rating; the clamp diodes inside an array stand what its outputs do (TI SLRS027M, February
   * 2013, absolute maximum ratings at 25 °C: output clamp current 500 mA and clamp diode reverse
   * voltage 50 V, as each collector).
   */
  private static Datum stated(
      PartKind kind, Ratings ratings, Term term, DatasheetSymbol own, DatasheetSymbol outputs) {
    Datum stated = ratings.limit(term, own);
    return kind == PartKind.DRIVER_ARRAY && !stated.isKnown()
        ? ratings.limit(term, outputs)
        : stated;
  }

  /** Whether it is a Zener or a suppressor diode, by its kind, its datasheet or its words. */
  private static boolean breaksDown(PartKind kind, Ratings ratings, String words) {
    boolean stated =
        Stream.of(DatasheetSymbol.VZ, DatasheetSymbol.VBR, DatasheetSymbol.VRWM)
            .anyMatch(symbol -> !ratings.about(symbol).isEmpty());
    return kind == PartKind.ZENER_DIODE || stated || SUPPRESSOR.matcher(words).find();
  }

  /**
   * Where a diode that is made to break down begins to: no VRRM says so, and across a coil it would
   * join the rail to the switch. At 0.8 of VZ min, the share of a rating that is used, makers state
   * its leakage (Fairchild 1N4728A to 1N4764A, Rev. G2, from 10 V on: IR at VR = 7.6 V for VZ min =
   * 9.5 V).
   */
  private static Datum breakdown(Ratings ratings, String name) {
    Term term = Term.DIODE_REVERSE_RATING;
    List<Datum> begins =
        Stream.of(
                ratings.least(term, DatasheetSymbol.VZ),
                ratings.least(term, DatasheetSymbol.VBR),
                ratings.limit(term, DatasheetSymbol.VRWM))
            .filter(Datum::isKnown)
            .toList();
    if (begins.isEmpty()) {
      return Datum.missing(
          term,
          "VZ (of a Zener diode), VBR or VRWM (of a suppressor) of "
              + name
              + ", from which on it conducts backwards: write its min in datasheets.csv");
    }
    return Stream.concat(
            begins.stream(),
            Stream.of(ratings.limit(term, DatasheetSymbol.VRRM)).filter(Datum::isKnown))
        .min(Comparator.comparingDouble(Datum::nominal))
        .orElseThrow();
  }

  /**
   * Up to which temperature the average current is rated: that of the air or, where some maker
   * holds the leads or the case at it, that of those, which may be far above the air. Which of them
   * it is can't be guessed: on a heatsink the same part is rated several times higher.
   */
  private static Datum ratedAt(Ratings ratings, Datum average, String name) {
    var stated = new ArrayList<DatasheetLine>(2);
    var data = new ArrayList<Datum>(2);
    boolean metal = false;
    for (DatasheetLine line : ratings.about(DatasheetSymbol.IFAV)) {
      Optional<RatedTemperature> at = RatedTemperature.in(TestCondition.parse(line.condition()));
      if (at.isPresent()) {
        stated.add(line);
        metal |= !at.get().isOfAir();
        data.add(Datum.of(Term.DIODE_RATING_AIR, at.get().celsius(), line.source()));
      }
    }
    if (stated.isEmpty() || ratings.silentMaker(stated).isPresent()) {
      return Datum.missing(
          Term.DIODE_RATING_AIR,
          average.isKnown()
              ? "the temperature at which IFav of "
                  + name
                  + " is rated: write it in datasheets.csv, condition of IFav (TA=... of the air,"
                  + " TL=... of the leads, TC=... of the case)"
              : average.missing());
    }
    Datum coolest = Collections.min(data, Comparator.comparingDouble(Datum::nominal));
    return metal ? Datum.of(Term.DIODE_RATING_LEAD, coolest.nominal(), coolest.source()) : coolest;
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
   * as the maker did. A rating at the leads' or the case's temperature tells nothing of the way
   * from there to the air, nor does one at a temperature that isn't stated: then all that is known
   * is that no body with leads is worse than the smallest.
   */
  private static Datum impliedResistance(
      Datum absent, Datum average, Datum air, Datum forward, Datum junction, Datum typical) {
    if (!average.isKnown()
        || !forward.isKnown()
        || !junction.isKnown()
        || !air.isKnown()
        || air.term() == Term.DIODE_RATING_LEAD) {
      return new Datum(
          absent.term(),
          "RthJA at most",
          absent.dimension(),
          Double.NaN,
          Double.NaN,
          MOST_KELVIN_PER_WATT,
          AT_MOST,
          absent.missing());
    }
    double watts = forward.high() * average.low();
    double implied = (junction.low() - air.low()) / watts;
    return typical.isKnown() && typical.high() > implied
        ? typical
        : Datum.of(
            Term.DIODE_RTH,
            implied,
            Source.computed("(TJmax − TA)/(VF·IFav), " + average.source()));
  }

  /** The greatest typical one: it promises nothing, but where it is the worse it counts. */
  private static Datum typicalResistance(Ratings ratings) {
    return ratings.about(DatasheetSymbol.RTHJA).stream()
        .flatMap(
            line ->
                line
                    .typ()
                    .map(
                        typ ->
                            Datum.of(
                                Term.DIODE_RTH,
                                typ.asDouble(),
                                new Source(
                                    line.source().origin(),
                                    "typical, and more than (TJmax − TA)/(VF·IFav): "
                                        + line.source().text())))
                    .stream())
        .max(Comparator.comparingDouble(Datum::nominal))
        .orElse(Datum.missing(Term.DIODE_RTH));
  }
}
