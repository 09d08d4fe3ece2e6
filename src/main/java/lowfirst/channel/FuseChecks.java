package lowfirst.channel;

import java.util.List;
import lowfirst.channel.ChannelInputs.Fitted;
import lowfirst.channel.check.Check;
import lowfirst.channel.check.CheckKind;
import lowfirst.channel.check.Datum;
import lowfirst.channel.check.Term;
import lowfirst.channel.formula.Conductor;
import lowfirst.channel.formula.FuseFamily;
import lowfirst.channel.formula.PrintedTrack;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Source;

/** Whether the fuse carries the load, survives the inrush, and protects what follows it. */
final class FuseChecks {
  private static final Source CHART =
      Source.standard("Littelfuse catalogue, Chart 2: by number of pulses, 10 s and more apart");
  private static final Datum SELDOM =
      Datum.of(
          Term.PERIOD,
          FuseFamily.COOLING_SECONDS,
          Source.assumed("10 s or more from one switching on to the next", "loads.csv period"));

  private FuseChecks() {}

  /** Adds the checks of the fuse. */
  static void into(ChannelInputs in, List<Check> checks) {
    if (!in.has(Fitted.FUSE)) {
      unfused(in, checks);
      return;
    }
    if (in.hold().isPresent()) {
      breaking(in, checks);
      checks.add(contact(in, in.datum(Term.FUSE_TRIP)));
      ResettableFuseChecks.into(in, in.hold().get(), checks);
      return;
    }
    FuseFamily family = in.fuseFamily();
    Datum rules = Datum.constant("g", family.openingAmperes(1), Dimension.RATIO, family.source());
    checks.add(
        Check.of(
            CheckKind.FUSE_CURRENT,
            in.loadAmps() + in.high(Term.OTHERS_ON_FUSE),
            family.continuousAmperes(in.low(Term.FUSE_RATING), in.ambient()),
            in.datum(Term.LOAD_CURRENT),
            in.datum(Term.SUPPLY),
            in.datum(Term.OTHERS_ON_FUSE),
            in.datum(Term.FUSE_RATING),
            in.datum(Term.AMBIENT),
            rules));
    if (SwitchChecks.hasInrush(in)) {
      checks.add(pulse(in));
    }
    checks.add(contact(in, in.datum(Term.FUSE_RATING)));
    if (in.has(Fitted.FUSE_HOLDER)) {
      Check best = holder(in, in.high(Term.FUSE_HOLDER));
      checks.add(best.upTo(holder(in, in.low(Term.FUSE_HOLDER)), List.of(WHICH_HOLDER)));
    }
    breaking(in, checks);
    track(
        in,
        CheckKind.FUSE_PROTECTS_TRACK,
        family.openingAmperes(in.high(Term.FUSE_RATING)),
        checks,
        in.datum(Term.FUSE_RATING),
        rules);
    checks.add(
        wire(
            in,
            CheckKind.FUSE_PROTECTS_WIRE,
            family.openingAmperes(in.high(Term.FUSE_RATING)),
            in.datum(Term.FUSE_RATING),
            rules));
  }

  private static final Datum WHICH_HOLDER =
      Datum.missing(
          Term.FUSE_HOLDER,
          "which of the board's fuse holders is this fuse's: give it the same number in the BOM, such"
              + " as XF1 for F1");

  /** What a fault may send through the contact for good. */
  private static Check contact(ChannelInputs in, Datum fault) {
    return Check.of(
        CheckKind.CONTACT_FAULT,
        fault.high(),
        in.low(Term.CONTACT_RATING),
        fault,
        in.datum(Term.CONTACT_RATING));
  }

  private static Check holder(ChannelInputs in, double amperes) {
    return Check.of(
        CheckKind.FUSE_HOLDER,
        in.high(Term.FUSE_RATING),
        amperes,
        in.datum(Term.FUSE_RATING),
        in.datum(Term.FUSE_HOLDER));
  }

  /** What it must break: the rail's voltage, and what flows into a short. */
  private static void breaking(ChannelInputs in, List<Check> checks) {
    checks.add(
        Check.of(
            CheckKind.FUSE_VOLTAGE,
            in.supplyHigh(),
            in.low(Term.FUSE_VOLTAGE),
            in.datum(Term.SUPPLY),
            in.datum(Term.FUSE_VOLTAGE)));
    checks.add(
        Check.of(
            CheckKind.FUSE_BREAKING,
            in.high(Term.SHORT_CIRCUIT),
            in.low(Term.FUSE_BREAKING),
            in.datum(Term.SHORT_CIRCUIT),
            in.datum(Term.FUSE_BREAKING)));
  }

  /** What the wire must bear until the fuse acts. */
  static Check wire(ChannelInputs in, CheckKind kind, double amperes, Datum... from) {
    return Check.of(
        kind,
        amperes,
        Conductor.overloadAmperes(
            in.low(Term.WIRE_AREA), in.ambient(), in.high(Term.WIRES_TOGETHER)),
        Datum.with(
            from,
            in.datum(Term.WIRE_AREA),
            in.datum(Term.AMBIENT),
            in.datum(Term.WIRES_TOGETHER),
            Datum.constant(
                "overload", Conductor.OVERLOAD, Dimension.RATIO, Conductor.OVERLOAD_RULE),
            Datum.constant(
                "I(open air)",
                Conductor.openAirAmperes(in.low(Term.WIRE_AREA)),
                Dimension.CURRENT,
                Conductor.OPEN_AIR)));
  }

  /** Without a fuse the supply decides how much flows into a short, and for how long. */
  private static void unfused(ChannelInputs in, List<Check> checks) {
    checks.add(contact(in, in.datum(Term.SHORT_CIRCUIT)));
    track(
        in,
        CheckKind.UNFUSED_TRACK,
        in.high(Term.SHORT_CIRCUIT),
        checks,
        in.datum(Term.SHORT_CIRCUIT));
    double openAir = Conductor.openAirAmperes(in.low(Term.WIRE_AREA));
    checks.add(
        Check.of(
            CheckKind.UNFUSED_WIRE,
            in.high(Term.SHORT_CIRCUIT),
            openAir * Conductor.shareHere(in.ambient(), in.high(Term.WIRES_TOGETHER)),
            in.datum(Term.SHORT_CIRCUIT),
            in.datum(Term.WIRE_AREA),
            in.datum(Term.AMBIENT),
            in.datum(Term.WIRES_TOGETHER),
            Datum.constant("I(open air)", openAir, Dimension.CURRENT, Conductor.OPEN_AIR)));
  }

  /** Adds the check of the track under a fault's current; without a track there is none. */
  static void track(
      ChannelInputs in, CheckKind kind, double amperes, List<Check> checks, Datum... from) {
    if (in.hasTrack()) {
      checks.add(
          Check.of(
              kind,
              amperes,
              PathChecks.track(in).amperes(PrintedTrack.FAULT_CELSIUS - in.ambient()),
              Datum.with(
                  from,
                  in.datum(Term.TRACE_WIDTH),
                  in.datum(Term.TRACE_COPPER),
                  in.datum(Term.AMBIENT),
                  PathChecks.TRACK_RULE)));
    }
  }

  /**
   * I²t of the inrush as a rectangle, which no shape of pulse with that peak and time exceeds; as
   * many of them as come before the fuse has cooled count together.
   */
  static double jouleIntegral(double amperes, double seconds, double periodSeconds) {
    double together = Math.max(1, Math.ceil(FuseFamily.COOLING_SECONDS / periodSeconds - 1e-9));
    return amperes * amperes * seconds * together;
  }

  private static Check pulse(ChannelInputs in) {
    Datum period = in.knows(Term.PERIOD) ? in.datum(Term.PERIOD) : SELDOM;
    double share = FuseFamily.endurance(in.high(Term.SWITCH_ONS));
    Datum rule =
        Double.isNaN(share) && in.knows(Term.SWITCH_ONS)
            ? Datum.missing(
                Term.FUSE_MELTING,
                "share of the melting I²t for more than 100 000 pulses: ask the fuse's maker")
            : Datum.constant("share of I2t", share, Dimension.RATIO, CHART);
    return Check.of(
        CheckKind.FUSE_PULSE,
        jouleIntegral(
            in.inrushAmps() + in.high(Term.OTHERS_ON_FUSE),
            in.high(Term.INRUSH_TIME),
            period.low()),
        share * in.low(Term.FUSE_MELTING),
        in.datum(Term.INRUSH),
        in.datum(Term.LOAD_CURRENT),
        in.datum(Term.SUPPLY),
        in.datum(Term.OTHERS_ON_FUSE),
        in.datum(Term.INRUSH_TIME),
        period,
        in.datum(Term.SWITCH_ONS),
        in.datum(Term.FUSE_MELTING),
        rule);
  }
}
