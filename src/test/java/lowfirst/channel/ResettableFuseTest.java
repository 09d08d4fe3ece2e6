package lowfirst.channel;

import static lowfirst.channel.check.Verdict.CARRIES;
import static lowfirst.channel.check.Verdict.OVERLOADED;
import static lowfirst.channel.check.Verdict.UNDECIDED;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lowfirst.channel.check.Check;
import lowfirst.channel.check.CheckKind;
import lowfirst.channel.check.Term;
import lowfirst.channel.check.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A resettable fuse is none that melts: its maker states what it holds (at 25 °C, less in hotter
 * air), what trips it, and the voltage and current that it bears (selection steps of
 * fusetronics-polyswitch.megastar.com; terms of UL 1434 devices, Littelfuse RF0071). It does not
 * open (forum.digikey.com, "What is a PPTC fuse").
 */
class ResettableFuseTest {
  private static final ChannelKit PTC = ChannelKit.resettable();

  private static Verdict verdict(ChannelKit kit, CheckKind kind) {
    return kit.check(kind).verdict();
  }

  /** 24 V and 5 % over 24 Ω less 5 % are 1.105 A; in air of 40 °C the figure for 60 °C counts. */
  @Test
  void it_holds_what_its_maker_states_for_air_as_hot() {
    Check check = PTC.check(CheckKind.FUSE_HOLDS);
    assertEquals(1.05 / 0.95, check.actualAmount(), 1e-9);
    assertEquals(1.2, check.allowedAmount(), 1e-9);
    assertEquals(CARRIES, PTC.finding().verdict());
    assertEquals(1.8, PTC.setting("ambient", "23 C").check(CheckKind.FUSE_HOLDS).allowedAmount());
    ChannelKit heavy = PTC.with("loads", "resistance=20 Ohm");
    assertEquals(OVERLOADED, verdict(heavy, CheckKind.FUSE_HOLDS));
    Check hotter = PTC.setting("ambient", "61 C").check(CheckKind.FUSE_HOLDS);
    assertEquals(UNDECIDED, hotter.verdict());
    assertEquals(
        List.of(
            "Ihold of T-PTC in air of 61 °C or more, condition TA=: write it in datasheets.csv"),
        hotter.missing());
  }

  /**
   * 0.1 A of another load beside 1.105 A is more than 1.2 A; 1.1 A of inrush, 5 % more at 25.2 V.
   */
  @Test
  void it_holds_what_all_loads_that_share_it_draw() {
    ChannelInputs alone = PTC.inputs();
    Check shared = ChannelKit.check(alone.with(Term.OTHERS_ON_FUSE, 0.1), CheckKind.FUSE_HOLDS);
    assertEquals(1.05 / 0.95 + 0.1, shared.actualAmount(), 1e-9);
    assertEquals(OVERLOADED, shared.verdict());
    ChannelInputs lamp =
        PTC.with("loads", "kind=lamp; inductance=").inputs().with(Term.INRUSH, 1.1);
    ChannelInputs little = lamp.with(Term.OTHERS_ON_FUSE, 0.04);
    assertEquals(CARRIES, ChannelKit.check(little, CheckKind.FUSE_HOLDS).verdict(), "1.195 A");
    ChannelInputs more = lamp.with(Term.OTHERS_ON_FUSE, 0.06);
    assertEquals(UNDECIDED, ChannelKit.check(more, CheckKind.FUSE_HOLDS).verdict(), "1.215 A");
  }

  @Test
  void it_is_not_held_to_what_a_fuse_that_melts_is() {
    for (CheckKind melting :
        List.of(
            CheckKind.FUSE_CURRENT, CheckKind.FUSE_PULSE,
            CheckKind.FUSE_PROTECTS_TRACK, CheckKind.FUSE_PROTECTS_WIRE)) {
      assertFalse(PTC.finding().check(melting).isPresent(), () -> "" + melting);
    }
    assertTrue(CheckKind.TRIP_PROTECTS_TRACK.remark().contains("does not open"));
  }

  /** What trips it late must be borne by the track and the wire, and the rail by itself. */
  @Test
  void it_must_trip_in_time_and_bear_the_rail() {
    assertEquals(3.6, PTC.check(CheckKind.TRIP_PROTECTS_WIRE).actualAmount(), 1e-9);
    ChannelKit thin = PTC.with("channels", "trace width=0.2 mm");
    assertEquals(OVERLOADED, verdict(thin, CheckKind.TRIP_PROTECTS_TRACK));
    ChannelKit late = PTC.withoutDatasheet("T-PTC", "Itrip");
    assertEquals(UNDECIDED, verdict(late, CheckKind.TRIP_PROTECTS_TRACK));
    assertEquals(UNDECIDED, verdict(late, CheckKind.TRIP_PROTECTS_WIRE));
    assertEquals(OVERLOADED, verdict(PTC.with("rails", "voltage=36 V"), CheckKind.FUSE_VOLTAGE));
    assertEquals(
        OVERLOADED, verdict(PTC.with("rails", "current limit=41 A"), CheckKind.FUSE_BREAKING));
    ChannelKit alternating =
        PTC.withoutDatasheet("T-PTC", "Vmax").datasheet("T-PTC", "Vmax", "AC", "", "250", "V");
    assertEquals(UNDECIDED, verdict(alternating, CheckKind.FUSE_VOLTAGE));
  }

  @Test
  void an_inrush_above_what_it_holds_needs_the_curve_of_its_time_to_trip() {
    ChannelKit lamp =
        PTC.with(
            "loads",
            "kind=lamp; inductance=; resistance=; current=0.2 A; inrush=1 A; inrush time=10 ms");
    assertEquals(CARRIES, verdict(lamp, CheckKind.FUSE_HOLDS));
    Check more = lamp.with("loads", "inrush=3 A").check(CheckKind.FUSE_HOLDS);
    assertEquals(UNDECIDED, more.verdict());
    assertEquals(
        List.of(
            "time to trip of T-PTC at the inrush of 3.15 A: its maker's curve; or take one that"
                + " holds the inrush"),
        more.missing());
  }

  /** Where only the BOM states amperes, they are what it holds in a cool room. */
  @ParameterizedTest
  @ValueSource(strings = {"resettable fuse 1.8 A", "Polyfuse 1.8A", "PTC 1.8 A", "PPTC fuse 1.8A"})
  void the_words_of_a_bom_tell_it(String description) {
    ChannelKit worded =
        ChannelKit.typical()
            .with("bom.F1", "part type=T-ELSE; description=" + description)
            .setting("ambient", "20 C");
    assertEquals(1.8, worded.check(CheckKind.FUSE_HOLDS).allowedAmount(), 1e-9);
    ChannelKit warm = worded.setting("ambient", "40 C");
    assertEquals(UNDECIDED, verdict(warm, CheckKind.FUSE_HOLDS));
    assertEquals(UNDECIDED, verdict(worded, CheckKind.TRIP_PROTECTS_WIRE));
  }

  @Test
  void a_part_that_is_not_fitted_holds_nothing() {
    ChannelKit absent = PTC.with("bom.F1", "description=resettable fuse; value=DNF");
    assertFalse(absent.finding().carries());
  }
}
