package lowfirst.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lowfirst.channel.CoilRelease.Way;
import lowfirst.channel.check.Term;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a Zener or a resistor in series with the flyback diode would change. */
class CoilReleaseTest {
  /** 24 V on 24 ohms, 5 % more of one and less of the other. */
  private static final double AMPS = 1.05 / 0.95;

  private static final ChannelKit TYPICAL = ChannelKit.typical();

  private static CoilRelease of(ChannelInputs in, Way way) {
    return CoilRelease.of(in).stream().filter(r -> r.way() == way).findFirst().orElseThrow();
  }

  @Test
  void the_largest_standard_values_below_the_margin_are_taken() {
    ChannelInputs in = TYPICAL.inputs();
    // 0.8 x 100 V less 25.2 V and 1.1 V leaves 53.7 V: 51 V and 5 % is 53.55 V
    assertEquals(51, of(in, Way.ZENER).value().orElseThrow().asDouble(), 1e-9);
    assertEquals(25.2 + 1.1 + 53.55, of(in, Way.ZENER).drainVolts(), 1e-9);
    // at 1.1053 A 46.3 ohms and 5 %: 43 ohms
    assertEquals(43, of(in, Way.RESISTOR).value().orElseThrow().asDouble(), 1e-9);
    assertEquals(25.2 + 1.1 + AMPS * 43 * 1.05, of(in, Way.RESISTOR).drainVolts(), 1e-9);
    assertEquals(26.3, of(in, Way.DIODE).drainVolts(), 1e-9);
  }

  @Test
  void each_time_is_the_closed_form_of_its_loop_at_its_slowest() {
    ChannelInputs in = TYPICAL.inputs();
    double ohms = 25.2 / AMPS;
    double zener = 0.95 * 51 + 0.4;
    assertEquals(
        0.05 / ohms * Math.log(1 + AMPS * ohms / zener), of(in, Way.ZENER).seconds(), 1e-9);
    double loop = ohms + 0.95 * 43;
    assertEquals(
        0.05 / loop * Math.log(1 + AMPS * loop / 0.4), of(in, Way.RESISTOR).seconds(), 1e-9);
    assertTrue(of(in, Way.DIODE).seconds() > 4 * of(in, Way.ZENER).seconds());
  }

  @Test
  void the_added_part_takes_no_more_than_the_coil_stored_and_its_mean_follows_the_rate() {
    ChannelInputs in = TYPICAL.inputs();
    double stored = 0.5 * 0.05 * AMPS * AMPS;
    for (Way way : List.of(Way.ZENER, Way.RESISTOR)) {
      CoilRelease release = of(in, way);
      assertTrue(release.partJoules() > 0.3 * stored && release.partJoules() < stored, "" + way);
      assertEquals(release.partJoules() / 1, release.partWatts(), 1e-12, "once a second");
    }
    ChannelInputs pwm =
        TYPICAL.with("drivers", "PWM frequency=500 Hz").with("loads", "duty=40 %").inputs();
    assertEquals(0.6 * AMPS * 1.05 * 51, of(pwm, Way.ZENER).partWatts(), 1e-9, "in every pause");
  }

  @Test
  void twice_as_often_is_twice_the_heat_and_under_pwm_a_resistor_carries_in_every_pause() {
    ChannelInputs often = TYPICAL.with("loads", "period=0.5 s").inputs();
    for (Way way : List.of(Way.ZENER, Way.RESISTOR)) {
      assertEquals(2 * of(often, way).partJoules(), of(often, way).partWatts(), 1e-12, "" + way);
    }
    ChannelInputs pwm =
        TYPICAL.with("drivers", "PWM frequency=500 Hz").with("loads", "duty=40 %").inputs();
    assertEquals(0.6 * AMPS * AMPS * 1.05 * 43, of(pwm, Way.RESISTOR).partWatts(), 1e-9);
  }

  /** By steps of 10 ns through L di/dt = -(R i + V): the Zener's 53.55 V, and 45.15 ohms. */
  @Test
  void the_heat_of_the_added_part_is_that_of_its_loop_run_down_step_by_step() {
    assertEquals(0.0232894, of(TYPICAL.inputs(), Way.ZENER).partJoules(), 1e-7);
    assertEquals(0.0200826, of(TYPICAL.inputs(), Way.RESISTOR).partJoules(), 1e-7);
  }

  /** Usable is 0.8 of the rating; 25.2 V and 1.1 V of it are gone, and 5 % of the Zener's own. */
  @ParameterizedTest
  @CsvSource({"44, 8.2", "45, 9.1", "46.1, 10", "50, 13", "120, 62", "167, 100", "400, 200"})
  void the_zener_is_the_largest_of_e24_that_fits(double rating, double volts) {
    ChannelInputs in = TYPICAL.inputs().with(Term.DRAIN_RATING, rating);
    assertEquals(volts, of(in, Way.ZENER).value().orElseThrow().asDouble(), 1e-9);
  }

  @Test
  void where_the_rating_leaves_no_room_only_the_diode_is_shown() {
    ChannelInputs tight = TYPICAL.inputs().with(Term.DRAIN_RATING, 34);
    assertEquals(1, CoilRelease.of(tight).size(), "27.2 V less 26.3 V");
  }

  @Test
  void what_is_missing_is_named_and_nothing_is_made_up() {
    ChannelInputs in = TYPICAL.with("loads", "inductance=").inputs();
    assertTrue(CoilRelease.of(in).isEmpty());
    assertEquals(
        List.of("inductance of load striker: write it in loads.csv"), CoilRelease.missing(in));
    ChannelInputs lamp = TYPICAL.with("loads", "kind=lamp; inductance=").inputs();
    assertTrue(CoilRelease.of(lamp).isEmpty() && !CoilRelease.concerns(lamp));
  }
}
