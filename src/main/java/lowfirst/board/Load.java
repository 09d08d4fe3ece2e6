package lowfirst.board;

import java.util.Optional;
import java.util.OptionalInt;
import lowfirst.problem.Place;
import lowfirst.quantity.Sourced;

/**
 * What a channel switches: one row of {@code loads.csv}.
 *
 * @param name what channels call it
 * @param kind solenoid, relay, motor, lamp, LED, resistive, capacitive
 * @param rail the supply it hangs on
 * @param current operating current
 * @param resistance cold resistance
 * @param power rated power
 * @param inductance for coils
 * @param onTime longest time on in one go
 * @param period shortest time from one switching-on to the next
 * @param inrush peak at switching on
 * @param inrushTime how long the inrush lasts
 * @param duty on share under PWM, per cent
 * @param maxOnTime how long it may stay on by its own rating
 * @param pullInVoltage least voltage at which it still pulls in, cold
 * @param ratedDuty largest on share that it bears by its own rating, per cent
 * @param tolerance how far its current may be above or below what is stated, per cent
 * @param temperatureRise how much hotter than the air it gets in service, kelvin
 * @param switchOns how often it is switched on in its life
 */
public record Load(
    String name,
    LoadKind kind,
    String rail,
    Optional<Sourced> current,
    Optional<Sourced> resistance,
    Optional<Sourced> power,
    Optional<Sourced> inductance,
    Optional<Sourced> onTime,
    Optional<Sourced> period,
    Optional<Sourced> inrush,
    Optional<Sourced> inrushTime,
    Optional<Sourced> duty,
    Optional<Sourced> maxOnTime,
    Optional<Sourced> pullInVoltage,
    Optional<Sourced> ratedDuty,
    Optional<Sourced> tolerance,
    Optional<Sourced> temperatureRise,
    OptionalInt switchOns,
    Place place) {

  /** The kinds of load that behave differently at switching on and off. */
  public enum LoadKind {
    SOLENOID("solenoid"),
    RELAY("relay"),
    MOTOR("motor"),
    LAMP("lamp"),
    LED("LED"),
    RESISTIVE("resistive"),
    CAPACITIVE("capacitive");

    private final String words;

    LoadKind(String words) {
      this.words = words;
    }

    /** What a person calls it. */
    public String words() {
      return words;
    }

    /** Whether switching it off throws energy back. */
    public boolean isInductive() {
      return this == SOLENOID || this == RELAY || this == MOTOR;
    }
  }
}
