package lowfirst.channel;

import java.util.List;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Source;

/** Whether the load itself bears how it is switched. */
final class LoadChecks {
  private static final Datum SCOPE =
      Datum.constant(
          "scope",
          60,
          Dimension.VOLTAGE,
          Source.standard(
              "IEC 60335-1 clause 3.4.2, safety extra-low voltage: 60 V DC; above it local code"
                  + " and licensed practice decide"));

  private LoadChecks() {}

  /** Adds the checks of the load and of the voltage it hangs on. */
  static void into(ChannelInputs in, List<Check> checks) {
    checks.add(
        Check.of(
            CheckKind.VOLTAGE_SCOPE,
            in.supplyHigh(),
            SCOPE.nominal(),
            in.datum(Term.SUPPLY),
            SCOPE));
    if (in.knows(Term.MAX_ON_TIME)) {
      checks.add(
          Check.of(
              CheckKind.ON_TIME,
              in.high(Term.ON_TIME),
              in.low(Term.MAX_ON_TIME),
              in.datum(Term.ON_TIME),
              in.datum(Term.MAX_ON_TIME)));
    }
    if (in.knows(Term.RATED_DUTY)) {
      checks.add(
          Check.of(
              CheckKind.LOAD_DUTY,
              dutyPercent(in.high(Term.ON_TIME), in.low(Term.PERIOD)),
              in.low(Term.RATED_DUTY),
              in.datum(Term.ON_TIME),
              in.datum(Term.PERIOD),
              in.datum(Term.RATED_DUTY)));
    }
    if (in.knows(Term.PULL_IN)) {
      Check pullIn = pullIn(in);
      boolean isSwitchedByStage = in.switching() != ChannelInputs.Switching.MOSFET;
      checks.add(isSwitchedByStage ? StageChecks.promised(in, pullIn) : pullIn);
    }
  }

  /** Duty in per cent: on time over on and off time together. */
  static double dutyPercent(double onSeconds, double periodSeconds) {
    return 100 * onSeconds / periodSeconds;
  }

  private static Check pullIn(ChannelInputs in) {
    double hot = in.ambient() + in.high(Term.TEMPERATURE_RISE);
    double needed = in.high(Term.PULL_IN) * CopperTemperature.factor(20, hot);
    double ohms = PathChecks.loopOhms(in);
    double switched = in.high(Term.SATURATION);
    Datum[] from = {in.datum(Term.SATURATION)};
    if (in.switching() == ChannelInputs.Switching.MOSFET) {
      OnResistance.Line line = in.onResistance().earned(in.gateVolts(), in.loadAmps());
      double junction = SwitchChecks.junctionCelsius(in, line);
      double hottest = Math.min(junction, in.low(Term.JUNCTION_RATING));
      switched = in.loadAmps() * line.maxOhms() * in.hotFactor().at(hottest);
      from = Datum.with(SwitchChecks.heatedBy(in, line, junction), in.datum(Term.JUNCTION_RATING));
    }
    double left = in.low(Term.SUPPLY) - in.loadAmps() * ohms - switched - in.high(Term.RETURN_LIFT);
    return Check.of(
        CheckKind.PULL_IN,
        left,
        needed,
        Datum.with(
            from,
            in.datum(Term.SUPPLY),
            in.datum(Term.LOAD_CURRENT),
            in.datum(Term.WIRE_AREA),
            in.datum(Term.WIRE_LENGTH),
            in.datum(Term.TRACE_WIDTH),
            in.datum(Term.TRACE_LENGTH),
            in.datum(Term.TRACE_COPPER),
            in.datum(Term.RETURN_LIFT),
            in.datum(Term.PULL_IN),
            in.datum(Term.TEMPERATURE_RISE),
            in.datum(Term.AMBIENT)));
  }
}
