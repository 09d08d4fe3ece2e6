package lowfirst.channel;

import java.util.List;
import lowfirst.channel.check.Check;
import lowfirst.channel.check.CheckKind;
import lowfirst.channel.check.Datum;
import lowfirst.channel.check.Term;
import lowfirst.channel.formula.Conductor;
import lowfirst.channel.formula.PrintedTrack;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Source;

/** Whether track, contact and wire carry the load, and what they lose. */
final class PathChecks {
  static final Datum TRACK_RULE =
      Datum.constant(
          "dT", PrintedTrack.RISE_KELVIN, Dimension.TEMPERATURE_RISE, PrintedTrack.IPC_2221);

  /** Share of the rail that the way to the load may lose. */
  private static final double DROP_SHARE = 0.05;

  private static final Datum DROP_RULE =
      Datum.constant(
          "share of Vnom",
          DROP_SHARE,
          Dimension.RATIO,
          Source.standard("common practice: 5 % of the rail"));

  private static final Datum NO_TRACK =
      Datum.constant(
          "tracks",
          0,
          Dimension.RATIO,
          Source.kit(
              "channels.csv: no printed track, so the wires must bear it all: none between the"
                  + " parts may be thinner"));

  private PathChecks() {}

  /** Adds the checks of the way to the load. */
  static void into(ChannelInputs in, List<Check> checks) {
    if (in.hasTrack()) {
      checks.add(
          Check.of(
              CheckKind.TRACE_CURRENT,
              in.heatingAmps(),
              track(in).amperes(PrintedTrack.RISE_KELVIN),
              in.datum(Term.LOAD_CURRENT),
              in.datum(Term.SUPPLY),
              in.datum(Term.TRACE_WIDTH),
              in.datum(Term.TRACE_COPPER),
              TRACK_RULE));
    }
    checks.add(
        Check.of(
            CheckKind.CONTACT_CURRENT,
            in.loadAmps(),
            in.low(Term.CONTACT_RATING),
            in.datum(Term.LOAD_CURRENT),
            in.datum(Term.SUPPLY),
            in.datum(Term.CONTACT_RATING)));
    Check wire =
        Check.of(
            CheckKind.WIRE_CURRENT,
            in.heatingAmps(),
            Conductor.amperes(in.low(Term.WIRE_AREA), in.ambient(), in.high(Term.WIRES_TOGETHER)),
            in.datum(Term.LOAD_CURRENT),
            in.datum(Term.SUPPLY),
            in.datum(Term.WIRE_AREA),
            in.datum(Term.WIRES_TOGETHER),
            in.datum(Term.AMBIENT),
            Datum.constant(
                "I(area)",
                Conductor.amperes(in.low(Term.WIRE_AREA)),
                Dimension.CURRENT,
                Conductor.AMPACITY),
            Datum.constant(
                "bundle factor",
                Conductor.bundleFactor(in.high(Term.WIRES_TOGETHER)),
                Dimension.RATIO,
                Conductor.BUNDLE));
    checks.add(in.hasTrack() ? wire : wire.with(NO_TRACK));
    checks.add(
        Check.of(
            CheckKind.WIRE_DROP,
            in.loadAmps() * loopOhms(in),
            DROP_SHARE * in.nominal(Term.SUPPLY),
            Datum.with(
                loopFrom(in),
                in.datum(Term.LOAD_CURRENT),
                in.datum(Term.SUPPLY),
                Datum.constant(
                    "R of 1 km",
                    Conductor.ohmsPerKilometre(in.low(Term.WIRE_AREA)),
                    Dimension.RESISTANCE,
                    Conductor.RESISTANCE),
                DROP_RULE)));
  }

  /** What the resistance of the way to the load follows from. */
  static Datum[] loopFrom(ChannelInputs in) {
    Datum[] wire = {in.datum(Term.WIRE_AREA), in.datum(Term.WIRE_LENGTH)};
    return in.hasTrack()
        ? Datum.with(
            wire,
            in.datum(Term.TRACE_WIDTH),
            in.datum(Term.TRACE_LENGTH),
            in.datum(Term.TRACE_COPPER))
        : wire;
  }

  static PrintedTrack track(ChannelInputs in) {
    return new PrintedTrack(
        in.low(Term.TRACE_WIDTH), in.low(Term.TRACE_COPPER), in.traceIsExternal());
  }

  /** Resistance out and back, hot, in ohms: the wire both ways and the track. */
  static double loopOhms(ChannelInputs in) {
    double hot = ChannelInputs.hotCopperCelsius();
    return 2 * Conductor.ohms(in.low(Term.WIRE_AREA), in.high(Term.WIRE_LENGTH), hot)
        + trackOhms(in, in.high(Term.TRACE_LENGTH), hot);
  }

  /** Resistance of the track; none where wires run from part to part. */
  static double trackOhms(ChannelInputs in, double millimetres, double celsius) {
    return in.hasTrack() ? track(in).ohms(millimetres, celsius) : 0;
  }
}
