package lowfirst.channel.data;

import java.util.List;
import java.util.Optional;
import lowfirst.board.Load;
import lowfirst.channel.check.Datum;
import lowfirst.channel.check.Term;
import lowfirst.channel.formula.FuseFamily;
import lowfirst.quantity.Source;
import lowfirst.quantity.Sourced;

/** What a channel's checks need to know of its load: a row of {@code loads.csv}. */
public final class LoadData {
  private static final double COIL_RISE_KELVIN = 60;

  private LoadData() {}

  /**
   * The numbers of a load.
   *
   * @param volts the nominal voltage of its rail, where known
   * @param railMissing what to write until that is known
   */
  public static List<Datum> of(Load load, Optional<Sourced> volts, String railMissing) {
    var current = new LoadCurrent(load, volts);
    return List.of(
        orRail(current.operating(), load, volts, railMissing),
        orRail(current.inrush(), load, volts, railMissing),
        current.inrushTime(),
        cell(Term.INDUCTANCE, load.inductance(), load, "inductance"),
        cell(Term.ON_TIME, load.onTime(), load, "on time"),
        cell(Term.PERIOD, load.period(), load, "period"),
        cell(Term.DUTY, load.duty(), load, "duty"),
        switchOns(load),
        cell(Term.MAX_ON_TIME, load.maxOnTime(), load, "max on time"),
        cell(
            Term.RATED_DUTY,
            load.ratedDuty(),
            load,
            "rated duty (100 % where it is rated for continuous duty)"),
        cell(Term.PULL_IN, load.pullInVoltage(), load, "pull-in voltage"),
        Datum.statedOr(
            Term.TEMPERATURE_RISE,
            load.temperatureRise(),
            COIL_RISE_KELVIN,
            Source.assumed("60 K", "loads.csv temperature rise")));
  }

  /** The numbers of a load that the tables don't have. */
  public static List<Datum> missing(String why) {
    return List.of(Datum.missing(Term.LOAD_CURRENT, why), Datum.missing(Term.INRUSH, why));
  }

  /** Where only the rail's voltage is missing to know a current, that is asked for. */
  private static Datum orRail(
      Datum amperes, Load load, Optional<Sourced> volts, String railMissing) {
    boolean isStated = load.resistance().isPresent() || load.power().isPresent();
    return amperes.isKnown() || volts.isPresent() || !isStated
        ? amperes
        : Datum.missing(amperes.term(), railMissing);
  }

  private static Datum switchOns(Load load) {
    return load.switchOns().isPresent()
        ? Datum.of(
            Term.SWITCH_ONS, load.switchOns().getAsInt(), Source.kit(load.place() + ", switch-ons"))
        : Datum.of(
            Term.SWITCH_ONS,
            FuseFamily.MOST_PULSES,
            Source.assumed("100 000 times in its life", "loads.csv switch-ons"));
  }

  private static Datum cell(Term term, Optional<Sourced> value, Load load, String column) {
    return Datum.stated(
        term, value, column + " of load " + load.name() + ": write it in loads.csv");
  }
}
