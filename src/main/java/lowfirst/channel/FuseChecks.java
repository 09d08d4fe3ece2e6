package lowfirst.channel;

import java.util.List;
import lowfirst.channel.ChannelInputs.Fitted;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Source;

/** Whether the fuse carries the load, survives the inrush, and protects what follows it. */
final class FuseChecks {
  private static final Datum ENDURANCE =
      Datum.constant(
          "share of I2t",
          FuseFamily.ENDURANCE,
          Dimension.RATIO,
          Source.standard("Littelfuse catalogue, Chart 2: 22 % for 100 000 pulses"));

  private FuseChecks() {}

  /** Adds the checks of the fuse. */
  static void into(ChannelInputs in, List<Check> checks) {
    if (!in.has(Fitted.FUSE)) {
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
      checks.add(
          Check.of(
              CheckKind.FUSE_PULSE,
              PulseShape.RECTANGLE.jouleIntegral(in.inrushAmps(), in.high(Term.INRUSH_TIME)),
              FuseFamily.ENDURANCE * in.low(Term.FUSE_MELTING),
              in.datum(Term.INRUSH),
              in.datum(Term.INRUSH_TIME),
              in.datum(Term.FUSE_MELTING),
              ENDURANCE));
    }
    checks.add(
        Check.of(
            CheckKind.FUSE_VOLTAGE,
            in.supplyHigh(),
            in.low(Term.FUSE_VOLTAGE),
            in.datum(Term.SUPPLY),
            in.datum(Term.FUSE_VOLTAGE)));
    checks.add(
        Check.of(
            CheckKind.FUSE_PROTECTS_TRACK,
            family.openingAmperes(in.high(Term.FUSE_RATING)),
            PathChecks.track(in).amperes(PrintedTrack.FAULT_CELSIUS - in.ambient()),
            in.datum(Term.FUSE_RATING),
            rules,
            in.datum(Term.TRACE_WIDTH),
            in.datum(Term.TRACE_COPPER),
            in.datum(Term.AMBIENT),
            PathChecks.TRACK_RULE));
    checks.add(
        Check.of(
            CheckKind.FUSE_PROTECTS_WIRE,
            family.openingAmperes(in.high(Term.FUSE_RATING)),
            Conductor.openAirAmperes(in.low(Term.WIRE_AREA)),
            in.datum(Term.FUSE_RATING),
            rules,
            in.datum(Term.WIRE_AREA),
            Datum.constant(
                "I(open air)",
                Conductor.openAirAmperes(in.low(Term.WIRE_AREA)),
                Dimension.CURRENT,
                Conductor.OPEN_AIR)));
  }
}
