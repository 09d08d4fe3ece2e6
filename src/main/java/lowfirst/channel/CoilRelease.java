package lowfirst.channel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lowfirst.board.Load.LoadKind;
import lowfirst.channel.ChannelInputs.Fitted;
import lowfirst.channel.check.Datum;
import lowfirst.channel.check.Term;
import lowfirst.channel.formula.CoilDecay;
import lowfirst.marking.Series;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;

/**
 * How a coil lets go when its channel switches off: with its flyback diode alone, and what a Zener
 * or a resistor in series with that diode would change. Both let the current die faster and raise
 * the drain by the voltage that they add, so each is taken as large as the switch's voltage rating
 * allows: the largest E24 value with rail, tolerance and VF below the margin.
 *
 * @param way what carries the current
 * @param value the Zener's nominal voltage or the resistor's resistance; absent for the diode alone
 * @param seconds until the current is gone, at its slowest: cold coil, high rail, least clamp
 * @param drainVolts highest voltage at the switch that is off
 * @param partJoules heat in the added part at each release, at its most; 0 for the diode alone
 * @param partWatts the same as a mean power; not a number where the period isn't stated
 */
public record CoilRelease(
    Way way,
    Optional<Quantity> value,
    double seconds,
    double drainVolts,
    double partJoules,
    double partWatts) {

  /** What carries the coil's current. */
  public enum Way {
    DIODE,
    ZENER,
    RESISTOR
  }

  /** Zener diodes and resistors of the E24 series are sold within this. */
  static final double TOLERANCE = 0.05;

  /** The smallest Zener of the series, with its tolerance; less room hastens nothing. */
  private static final double LEAST_ROOM_VOLTS = 2.4 * (1 + TOLERANCE);

  private static final double MOST_ZENER_VOLTS = 200;

  /** Whether it is asked at all: a coil that moves something, with a flyback diode. */
  public static boolean concerns(ChannelInputs in) {
    boolean coil = in.loadKind() == LoadKind.SOLENOID || in.loadKind() == LoadKind.RELAY;
    return coil && in.has(Fitted.FLYBACK_DIODE);
  }

  /** What must be known and isn't, each with where to write it. */
  public static List<String> missing(ChannelInputs in) {
    return Stream.of(
            Term.INDUCTANCE, Term.LOAD_CURRENT, Term.SUPPLY, Term.DIODE_FORWARD, Term.DRAIN_RATING)
        .map(in::datum)
        .filter(datum -> !datum.isKnown())
        .map(Datum::missing)
        .toList();
  }

  /** The highest clamp voltage that the switch leaves room for, VF not counted; volts. */
  public static double roomVolts(ChannelInputs in) {
    return VoltageMargin.usableVolts(in, Term.DRAIN_RATING)
        - in.supplyHigh()
        - in.high(Term.DIODE_FORWARD);
  }

  /** The diode alone, then what there is room for; none where a number is missing. */
  public static List<CoilRelease> of(ChannelInputs in) {
    var ways = new ArrayList<CoilRelease>();
    if (!concerns(in) || !missing(in).isEmpty()) {
      return ways;
    }
    ways.add(diode(in));
    double room = roomVolts(in);
    if (room >= LEAST_ROOM_VOLTS) {
      ways.add(zener(in, largest(Math.min(MOST_ZENER_VOLTS, room / (1 + TOLERANCE)))));
      ways.add(resistor(in, largest(room / in.loadAmps() / (1 + TOLERANCE))));
    }
    return ways;
  }

  /** The largest E24 member up to a limit. */
  private static double largest(double limit) {
    double decade = Math.pow(10, Math.floor(Math.log10(limit)) - 1);
    double best = 91 * decade / 10;
    for (int member : Series.E24.members()) {
      best = member * decade <= limit * (1 + 1e-12) ? Math.max(best, member * decade) : best;
    }
    return best;
  }

  private static CoilRelease diode(ChannelInputs in) {
    return new CoilRelease(
        Way.DIODE,
        Optional.empty(),
        DiodeChecks.slowestDecay(in).seconds(),
        in.supplyHigh() + in.high(Term.DIODE_FORWARD),
        0,
        0);
  }

  private static CoilRelease zener(ChannelInputs in, double volts) {
    CoilDecay plain = DiodeChecks.slowestDecay(in);
    CoilDecay slow = plain.clampedBy((1 - TOLERANCE) * volts + plain.volts());
    double most = (1 + TOLERANCE) * volts;
    // least VF leaves the Zener most of the coil's energy
    double joules = most * plain.clampedBy(most + plain.volts()).coulombs();
    return new CoilRelease(
        Way.ZENER,
        Optional.of(Quantity.of(volts, Dimension.VOLTAGE)),
        slow.seconds(),
        in.supplyHigh() + in.high(Term.DIODE_FORWARD) + most,
        joules,
        watts(in, joules, most * in.loadAmps()));
  }

  private static CoilRelease resistor(ChannelInputs in, double ohms) {
    CoilDecay plain = DiodeChecks.slowestDecay(in);
    CoilDecay slow = plain.withSeries((1 - TOLERANCE) * ohms);
    double most = (1 + TOLERANCE) * ohms;
    double joules = plain.withSeries(most).seriesJoules(most);
    return new CoilRelease(
        Way.RESISTOR,
        Optional.of(Quantity.of(ohms, Dimension.RESISTANCE)),
        slow.seconds(),
        in.supplyHigh() + in.high(Term.DIODE_FORWARD) + most * in.loadAmps(),
        joules,
        watts(in, joules, most * in.loadAmps() * in.loadAmps()));
  }

  /** Under PWM the part carries the coil's current in every pause; else once each period. */
  private static double watts(ChannelInputs in, double joules, double carryingWatts) {
    if (in.has(Fitted.PWM)) {
      return in.knows(Term.DUTY) ? carryingWatts * (1 - in.low(Term.DUTY) / 100) : carryingWatts;
    }
    return in.knows(Term.PERIOD) ? joules / in.low(Term.PERIOD) : Double.NaN;
  }
}
