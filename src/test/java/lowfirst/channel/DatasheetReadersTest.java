package lowfirst.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lowfirst.channel.check.Check;
import lowfirst.channel.check.CheckKind;
import lowfirst.channel.check.Datum;
import lowfirst.channel.check.Term;
import lowfirst.channel.check.Verdict;
import lowfirst.channel.formula.FuseFamily;
import lowfirst.channel.formula.HotFactor;
import lowfirst.channel.formula.OnResistance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a channel takes from the lines about its parts. */
class DatasheetReadersTest {
  private static final ChannelKit TYPICAL = ChannelKit.typical();

  private static ChannelKit only(
      String part, String symbol, String condition, String max, String unit) {
    return TYPICAL.withoutDatasheet(part, symbol).datasheet(part, symbol, condition, "", max, unit);
  }

  @Test
  void a_line_of_rdson_counts_with_its_gate_voltage_when_cold_and_guaranteed() {
    ChannelKit bare = TYPICAL.withoutDatasheet("T-FET", "RDSon");
    ChannelInputs in =
        bare.datasheet("T-FET", "RDSon", "VGS=4V", "", "60", "mOhm")
            .datasheet("T-FET", "RDSon", "VGS=4V, TJ=100C", "", "20", "mOhm")
            .datasheet("T-FET", "RDSon", "TJ=25C", "", "10", "mOhm")
            .line("T-FET", "RDSon", "VGS=3V", "", "15", "", "mOhm", "sheet")
            .inputs();
    assertEquals(1, in.onResistance().lines().size());
    OnResistance.Line line = in.onResistance().lines().get(0);
    assertEquals(0.060, line.maxOhms(), 1e-12);
    assertEquals(Double.POSITIVE_INFINITY, line.amps(), "no test current, no limit");
    assertEquals(0.060, line.typicalOhms(), 1e-12, "the maximum where no typical is stated");
    ChannelInputs typical =
        bare.line("T-FET", "RDSon", "VGS=4V", "", "45", "60", "mOhm", "sheet").inputs();
    assertEquals(0.75, typical.low(Term.ON_RESISTANCE_FACTOR), 1e-12, "45 mΩ of 60 mΩ");
    assertEquals(1, typical.high(Term.ON_RESISTANCE_FACTOR), 1e-12);
    assertEquals(1, bare.inputs().low(Term.ON_RESISTANCE_FACTOR), 1e-12);
  }

  @Test
  void a_resistance_at_a_negative_gate_voltage_tells_of_a_p_channel() {
    ChannelKit bare = TYPICAL.withoutDatasheet("T-FET", "RDSon");
    ChannelKit wrong = bare.datasheet("T-FET", "RDSon", "VGS=-10V, ID=-8A", "", "20", "mOhm");
    assertEquals(Verdict.UNDECIDED, wrong.finding().verdict());
    assertFalse(wrong.inputs().knows(Term.DRAIN_RATING));
    assertTrue(wrong.inputs().datum(Term.DRAIN_RATING).missing().contains("P-channel"));
  }

  @Test
  void a_hot_line_of_rdson_gives_the_hot_factor_over_its_cold_twin() {
    ChannelKit bare =
        TYPICAL.withoutDatasheet("T-FET", "RDSonRatio").withoutDatasheet("T-FET", "RDSon");
    ChannelKit cold = bare.datasheet("T-FET", "RDSon", "VGS=10V", "", "40", "mOhm");
    ChannelKit both =
        cold.datasheet("T-FET", "RDSon", "VGS=4V, TJ=20C", "", "50", "mOhm")
            .datasheet("T-FET", "RDSon", "VGS=10V, TJ=125C", "", "70", "mOhm");
    assertEquals(1.75, both.inputs().hotFactor().at(125), 1e-9, "70 mΩ over 40 mΩ, not 50 mΩ");
    ChannelKit otherGate = cold.datasheet("T-FET", "RDSon", "VGS=5V, TJ=125C", "", "70", "mOhm");
    assertEquals(HotFactor.DEFAULT, otherGate.inputs().hotFactor(), "no twin at 5 V");
    assertEquals(HotFactor.DEFAULT, cold.inputs().hotFactor());
    // with two cold lines at one gate voltage the smaller makes the steeper curve
    ChannelKit two = both.datasheet("T-FET", "RDSon", "VGS=10V, ID=1A", "", "35", "mOhm");
    assertEquals(2, two.inputs().hotFactor().at(125), 1e-9);
  }

  @Test
  void of_several_hot_factors_at_one_temperature_the_largest_counts_and_a_typical_one_gets_more() {
    ChannelKit bare = TYPICAL.withoutDatasheet("T-FET", "RDSonRatio");
    ChannelKit typical = bare.line("T-FET", "RDSonRatio", "TJ=100C", "", "1.5", "", "", "sheet");
    assertEquals(1.55, typical.inputs().hotFactor().at(100), 1e-9, "read off a curve: 0.05 more");
    ChannelKit two = typical.datasheet("T-FET", "RDSonRatio", "TJ=100C", "", "1.7", "");
    assertEquals(1.7, two.inputs().hotFactor().at(100), 1e-9);
    String curve = "a typical curve, which promises nothing, and 0.05 for reading it: sheet";
    String said = typical.inputs().hotFactor().source().text();
    assertTrue(said.startsWith(curve), said);
    assertTrue(two.inputs().hotFactor().source().text().startsWith(curve), "part of it still is");
    ChannelKit limit = bare.datasheet("T-FET", "RDSonRatio", "TJ=100C", "", "1.7", "");
    assertFalse(limit.inputs().hotFactor().source().text().contains("typical"));
    assertTrue(bare.inputs().hotFactor().source().text().contains("four typical curves"));
    ChannelKit nowhere = bare.datasheet("T-FET", "RDSonRatio", "", "", "3", "");
    assertEquals(HotFactor.DEFAULT, nowhere.inputs().hotFactor(), "at no temperature");
  }

  @Test
  void a_foster_network_is_read_up_to_its_first_gap() {
    ChannelKit foster =
        TYPICAL
            .line("T-FET", "Rth1", "", "", "0.5", "", "K/W", "sheet")
            .line("T-FET", "tau1", "", "", "1", "", "ms", "sheet")
            .line("T-FET", "Rth2", "", "", "1", "", "K/W", "sheet")
            .line("T-FET", "tau2", "", "", "1", "", "s", "sheet")
            .line("T-FET", "Rth4", "", "", "9", "", "K/W", "sheet")
            .line("T-FET", "tau4", "", "", "1", "", "us", "sheet");
    // after 1 ms: 0.5 · (1 − 1/e), and of the slow one about a thousandth
    double expected = 0.5 * (1 - Math.exp(-1)) + (1 - Math.exp(-0.001));
    assertEquals(expected, foster.inputs().impedance().after(0.001, 1.5), 1e-9);
    ChannelKit half = TYPICAL.line("T-FET", "Rth1", "", "", "0.5", "", "K/W", "sheet");
    assertFalse(half.inputs().impedance().isKnown(), "a resistance without its time");
  }

  @Test
  void points_of_impedance_and_safe_area_need_their_conditions() {
    ChannelInputs in =
        TYPICAL
            .datasheet("T-FET", "ZthJC", "t=1s", "", "1.2", "K/W")
            .datasheet("T-FET", "ZthJC", "t=0.1s", "", "0.6", "K/W")
            .datasheet("T-FET", "ZthJC", "single pulse", "", "0.1", "K/W")
            .line("T-FET", "ZthJC", "t=0.01s", "", "0.1", "", "K/W", "sheet")
            .datasheet("T-FET", "SOA", "VDS=30V, t=1ms", "", "5", "A")
            .datasheet("T-FET", "SOA", "VDS=60V", "", "50", "A")
            .datasheet("T-FET", "SOA", "t=1s", "", "50", "A")
            .line("T-FET", "SOA", "VDS=60V, t=1s", "", "50", "", "A", "sheet")
            .inputs();
    assertEquals(0.6, in.impedance().after(0.005, 1.5), 1e-12, "the first guaranteed point");
    assertEquals(1.2, in.impedance().after(0.5, 1.5), 1e-12, "the next later one");
    assertEquals(1.5, in.impedance().after(2, 1.5), 1e-12, "beyond the last: the steady one");
    assertEquals(5, in.safeArea().amperes(30, 0.001), 1e-12);
    assertEquals(0, in.safeArea().amperes(31, 0.001), 1e-12);
    assertEquals(0, in.safeArea().amperes(30, 0.002), 1e-12);
    assertFalse(TYPICAL.inputs().safeArea().isKnown());
  }

  @Test
  void what_a_mosfets_sheet_leaves_out_is_taken_from_what_it_says() {
    assertEquals(
        14,
        TYPICAL.withoutDatasheet("T-FET", "IDM").inputs().low(Term.PULSE_CURRENT_RATING),
        "ID where IDM is not given");
    ChannelInputs noPlateau = TYPICAL.withoutDatasheet("T-FET", "VGSpl").inputs();
    // threshold 1.2 V to 2.2 V: from there to 1.5 V above
    assertEquals(1.2, noPlateau.low(Term.PLATEAU), 1e-9);
    assertEquals(2.45, noPlateau.nominal(Term.PLATEAU), 1e-9);
    assertEquals(3.7, noPlateau.high(Term.PLATEAU), 1e-9);
    assertFalse(
        TYPICAL
            .withoutDatasheet("T-FET", "VGSpl")
            .withoutDatasheet("T-FET", "VGSth")
            .inputs()
            .knows(Term.PLATEAU));
    assertEquals(
        30e-9,
        TYPICAL.withoutDatasheet("T-FET", "QGD").inputs().high(Term.MILLER_CHARGE),
        1e-15,
        "the whole QG");
    // QG takes in QGS, QGD and what follows: all of it at the plateau is the slowest edge
    ChannelInputs noSource = TYPICAL.withoutDatasheet("T-FET", "QGS").inputs();
    assertEquals(0, noSource.high(Term.GATE_SOURCE_CHARGE));
    assertEquals(30e-9, noSource.high(Term.MILLER_CHARGE), 1e-15, "not QGD alone");
    assertFalse(
        TYPICAL
            .withoutDatasheet("T-FET", "QGS")
            .withoutDatasheet("T-FET", "QG")
            .inputs()
            .knows(Term.GATE_SOURCE_CHARGE),
        "nothing tells it");
    assertEquals(1e-9, TYPICAL.inputs().high(Term.OUTPUT_CAPACITANCE), 1e-15, "assumed");
    assertEquals(
        3e-10,
        TYPICAL
            .line("T-FET", "Coss", "", "", "300", "", "pF", "sheet")
            .datasheet("T-FET", "Coss", "", "", "200", "pF")
            .inputs()
            .high(Term.OUTPUT_CAPACITANCE),
        1e-16,
        "the larger, a typical one too");
  }

  @ParameterizedTest
  @CsvSource({"'IAS=10A', 10", "'ID=7A', 7", "'IAS=5A, ID=7A', 5"})
  void the_avalanche_current_stands_in_the_condition_of_its_energy(String condition, double amps) {
    assertEquals(
        amps,
        only("T-FET", "EAS", condition, "200", "mJ").inputs().low(Term.AVALANCHE_CURRENT_RATING),
        1e-12);
  }

  @Test
  void an_avalanche_energy_without_its_current_asks_for_it() {
    Datum missing =
        only("T-FET", "EAS", "", "200", "mJ").inputs().datum(Term.AVALANCHE_CURRENT_RATING);
    assertEquals(
        "IAS of T-FET: write it in datasheets.csv, condition of EAS (IAS=...)", missing.missing());
  }

  @ParameterizedTest
  @CsvSource({
    "'IC=350mA, IB=500uA', 700",
    "'IC=1mA, IF=20mA',    0.05",
    "'IC=1mA, IB=0A',      ",
    "'IC=1mA',             ",
    "'IB=1mA',             "
  })
  void the_forced_gain_is_that_at_which_saturation_is_specified(String condition, Double gain) {
    ChannelInputs in =
        ChannelKit.array()
            .withoutDatasheet("T-ARRAY", "VCEsat")
            .datasheet("T-ARRAY", "VCEsat", condition, "", "1.6", "V")
            .inputs();
    if (gain == null) {
      assertTrue(
          in.datum(Term.FORCED_GAIN_RATING).missing().contains("VCEsat of T-ARRAY with its IC="));
    } else {
      assertEquals(gain, in.low(Term.FORCED_GAIN_RATING), 1e-9);
    }
  }

  @Test
  void of_two_saturations_the_smaller_gain_counts() {
    ChannelInputs in =
        ChannelKit.array()
            .datasheet("T-ARRAY", "VCEsat", "IC=100mA, IB=250uA", "", "1.1", "V")
            .inputs();
    assertEquals(400, in.low(Term.FORCED_GAIN_RATING), 1e-9);
  }

  @Test
  void of_a_p_channel_part_all_but_its_drain_rating_is_still_known() {
    ChannelInputs in = TYPICAL.with("bom.Q1", "description=MOSFET, P-channel").inputs();
    assertFalse(in.knows(Term.DRAIN_RATING));
    assertEquals(16, in.low(Term.GATE_RATING), 1e-12);
    assertEquals(62, in.high(Term.RTH_AIR), 1e-12);
  }

  @Test
  void what_a_diodes_sheet_leaves_out_follows_from_its_rating() {
    // IFav 3 A at 75 °C and 1.1 V promises (150 − 75) K/3.3 W
    assertEquals(
        75 / 3.3, TYPICAL.withoutDatasheet("T-DIODE", "RthJA").inputs().high(Term.DIODE_RTH), 1e-9);
    for (String needed : List.of("IFav", "VF", "TJ")) {
      assertFalse(
          TYPICAL
              .withoutDatasheet("T-DIODE", "RthJA")
              .withoutDatasheet("T-DIODE", needed)
              .inputs()
              .knows(Term.DIODE_RTH),
          needed);
    }
    assertEquals(Math.PI * 3, TYPICAL.inputs().low(Term.DIODE_PEAK_RATING), 1e-9, "π · 3 A");
    assertEquals(
        20,
        TYPICAL
            .datasheet("T-DIODE", "IFRM", "", "", "20", "A")
            .inputs()
            .low(Term.DIODE_PEAK_RATING),
        1e-9);
    assertFalse(TYPICAL.withoutDatasheet("T-DIODE", "IFav").inputs().knows(Term.DIODE_PEAK_RATING));
    assertEquals(
        0.4, TYPICAL.inputs().low(Term.DIODE_FORWARD), 1e-12, "cold and at little current");
    assertEquals(
        0.3, only("T-DIODE", "VF", "IF=3A", "0.3", "V").inputs().low(Term.DIODE_FORWARD), 1e-12);
  }

  @ParameterizedTest
  @CsvSource({
    "TA=75C, DIODE_RATING_AIR, 75",
    "TL=90C, DIODE_RATING_LEAD, 90",
    "TC=100C, DIODE_RATING_LEAD, 100",
    "'TA = 75 °C', DIODE_RATING_AIR, 75",
    "Tamb=55C, DIODE_RATING_AIR, 55",
    "'TA=55C, TL=90C', DIODE_RATING_AIR, 55"
  })
  void a_diodes_rating_holds_up_to_the_temperature_in_its_condition(
      String condition, Term term, double celsius) {
    ChannelInputs in = only("T-DIODE", "IFav", condition, "3", "A").inputs();
    assertEquals(celsius, in.low(term), 1e-12);
    assertEquals(term == Term.DIODE_RATING_LEAD, in.knows(Term.DIODE_RATING_LEAD));
  }

  /** Who writes 3 A and no temperature may have read it at a case of 125 °C. */
  @ParameterizedTest
  @ValueSource(strings = {"", "half wave", "TA=25...75C", "TA=room"})
  void a_diodes_rating_at_no_stated_temperature_decides_nothing(String condition) {
    ChannelKit kit = only("T-DIODE", "IFav", condition, "3", "A");
    assertFalse(kit.inputs().knows(Term.DIODE_RATING_LEAD));
    assertEquals(
        "the temperature at which IFav of T-DIODE is rated: write it in datasheets.csv, condition of"
            + " IFav (TA=... of the air, TL=... of the leads, TC=... of the case)",
        kit.inputs().datum(Term.DIODE_RATING_AIR).missing());
    assertEquals(
        Verdict.UNDECIDED, kit.finding().check(CheckKind.DIODE_CURRENT).orElseThrow().verdict());
    assertFalse(kit.withoutDatasheet("T-DIODE", "RthJA").inputs().knows(Term.DIODE_RTH));
    ChannelKit stated = kit.datasheet("T-DIODE", "IFav", "TA=75C", "", "3", "A");
    assertEquals(75, stated.inputs().low(Term.DIODE_RATING_AIR), 1e-12, "another line states it");
  }

  /** (150 − 75) K/(1.1 V · 3 A) is 22.7 K/W with the leads as the maker holds them. */
  @ParameterizedTest
  @CsvSource({"60, 60", "10, 22.72727272727"})
  void a_typical_way_to_the_air_counts_where_it_is_worse_than_the_one_that_is_promised(
      String typical, double kelvinPerWatt) {
    ChannelKit bare = TYPICAL.withoutDatasheet("T-DIODE", "RthJA");
    ChannelKit kit = bare.line("T-DIODE", "RthJA", "", "", typical, "", "K/W", "sheet");
    assertEquals(kelvinPerWatt, kit.inputs().high(Term.DIODE_RTH), 1e-9);
    ChannelKit leads =
        kit.withoutDatasheet("T-DIODE", "IFav")
            .datasheet("T-DIODE", "IFav", "TL=75C", "", "3", "A");
    assertFalse(leads.inputs().knows(Term.DIODE_RTH), "alone it promises nothing");
  }

  @Test
  void an_average_current_that_is_not_known_is_asked_for_once() {
    Check check =
        TYPICAL
            .withoutDatasheet("T-DIODE", "IFav")
            .finding()
            .check(CheckKind.DIODE_CURRENT)
            .orElseThrow();
    assertEquals(1, check.missing().size(), () -> check.missing().toString());
  }

  /** Of a range the end that is harder to earn: the gate pulled to 10 V, and 2 A of current. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "VGS=4.5...10V, ID=2A; 10; 2",
        "VGS=4.5V to 10V, ID=2...25A; 10; 2",
        "VGS=4.5-10 V; 10; Infinity",
        "VGS = 4.5 V – 10 V, ID=100...500mA; 10; 0.1",
        "VGS=10V/4.5V, ID=500mA to 1A; 10; 0.5",
        "VGS=4,5V and 10V; 10; Infinity",
        "VGS=5V, ID=25A, TJ=25C; 5; 25",
        "VGS=5V, ID=25A, TJ=25...150C; 5; 25",
        "VGS=5V, ID=25A -55C; 5; 25",
      })
  void of_a_range_in_a_condition_the_end_counts_that_is_harder_to_earn(
      String condition, double volts, double amps) {
    OnResistance.Line line =
        only("T-FET", "RDSon", condition, "60", "mOhm").inputs().onResistance().lines().get(0);
    assertEquals(volts, line.gateVolts(), 1e-12);
    assertEquals(amps, line.amps(), 1e-12);
  }

  @Test
  void a_range_of_negative_gate_voltages_tells_of_a_p_channel_too() {
    ChannelKit bare = TYPICAL.withoutDatasheet("T-FET", "RDSon");
    ChannelKit wrong = bare.datasheet("T-FET", "RDSon", "VGS=-4.5...-10V", "", "20", "mOhm");
    assertFalse(wrong.inputs().knows(Term.DRAIN_RATING));
  }

  @Test
  void of_a_range_no_other_number_is_taken() {
    assertFalse(
        only("T-FET", "EAS", "IAS=5...10A", "200", "mJ")
            .inputs()
            .knows(Term.AVALANCHE_CURRENT_RATING));
  }

  @Test
  void a_rating_at_the_leads_tells_nothing_of_the_way_to_the_air() {
    ChannelKit leads = only("T-DIODE", "IFav", "TL=75C", "3", "A");
    assertEquals(40, leads.inputs().high(Term.DIODE_RTH), 1e-9, "stated");
    assertFalse(leads.withoutDatasheet("T-DIODE", "RthJA").inputs().knows(Term.DIODE_RTH));
    // where some maker rates so, the lowest temperature is taken for that of the leads
    ChannelKit both = leads.datasheet("T-DIODE", "IFav", "TA=70C", "", "3", "A");
    assertEquals(70, both.inputs().low(Term.DIODE_RATING_LEAD), 1e-12);
  }

  @Test
  void a_schottky_diode_recovers_at_once_and_an_arrays_diode_bears_what_its_outputs_do() {
    ChannelKit schottky =
        TYPICAL.withoutDatasheet("T-DIODE", "trr").with("bom.D1", "description=diode, Schottky");
    assertEquals(0, schottky.inputs().high(Term.DIODE_RECOVERY));
    assertFalse(
        TYPICAL.withoutDatasheet("T-DIODE", "trr").inputs().knows(Term.DIODE_RECOVERY), "others");
    ChannelKit inside =
        TYPICAL
            .with("bom.U1", "designators=U1; quantity=1; part type=ULN2803A")
            .with("channels", "flyback diode=U1");
    assertEquals(50, inside.inputs().low(Term.DIODE_REVERSE_RATING), 1e-12);
  }

  @Test
  void a_fuse_is_of_the_one_standard_that_is_named() {
    assertEquals(FuseFamily.UL_248_14, TYPICAL.inputs().fuseFamily());
    assertEquals(FuseFamily.IEC_60127, family("fuse IEC 60127-2"));
    assertEquals(FuseFamily.UNSTATED, family("fuse"));
    assertEquals(FuseFamily.UNSTATED, family("fuse UL 248-14 and IEC 60127"), "both say nothing");
    assertEquals(
        FuseFamily.IEC_60127,
        TYPICAL
            .with("bom.F1", "description=fuse")
            .datasheet("T-FUSE", "family", "IEC 60127-3", "", "", "")
            .inputs()
            .fuseFamily());
  }

  private static FuseFamily family(String description) {
    return TYPICAL.with("bom.F1", "description=" + description).inputs().fuseFamily();
  }

  @Test
  void a_fuse_rated_in_milliamperes_with_a_decimal_is_read() {
    ChannelKit kit = TYPICAL.withoutDatasheet("T-FUSE", "IN");
    assertEquals(
        0.63,
        kit.with("bom.F1", "description=fuse T630mA UL 248-14").inputs().nominal(Term.FUSE_RATING),
        1e-9);
    assertEquals(
        3.15,
        kit.with("bom.F1", "description=fuse 3.15 A slow").inputs().nominal(Term.FUSE_RATING),
        1e-9);
    assertFalse(kit.with("bom.F1", "description=fuse").inputs().knows(Term.FUSE_RATING));
  }

  /** The letter in place of the point, and the breaking class of IEC 60127 behind it. */
  @ParameterizedTest
  @CsvSource({
    "T6A3, 6.3",
    "T1A6, 1.6",
    "F3A15, 3.15",
    "T1A25L250V, 1.25",
    "T3.15AL250V, 3.15",
    "T2AH250V, 2",
    "T2A250V, 2",
    "2A 250V, 2",
    "6A 5x20, 6",
    "0A5, 0.5",
    "T500mA, 0.5",
    "'6,3 A', 6.3",
  })
  void a_fuse_is_rated_as_its_cap_says(String words, double amperes) {
    ChannelKit kit = TYPICAL.withoutDatasheet("T-FUSE", "IN");
    assertEquals(
        amperes,
        kit.with("bom.F1", "description=fuse " + words).inputs().nominal(Term.FUSE_RATING),
        1e-9);
  }

  @Test
  void a_resistor_is_rated_and_toleranced_as_the_bom_says_or_as_is_assumed() {
    ChannelInputs stated = TYPICAL.with("bom.R2", "value=10k 1% 0.5W").inputs();
    assertEquals(0.5, stated.low(Term.PULL_DOWN_RATING), 1e-12);
    assertEquals(9900, stated.low(Term.PULL_DOWN), 1e-9);
    assertFalse(stated.datum(Term.PULL_DOWN).source().toString().contains("assumed"));
    ChannelInputs bare = TYPICAL.with("bom.R2", "value=10k").inputs();
    assertEquals(0.125, bare.low(Term.PULL_DOWN_RATING), 1e-12);
    assertEquals(9500, bare.low(Term.PULL_DOWN), 1e-9);
    assertEquals(10_500, bare.high(Term.PULL_DOWN), 1e-9);
    assertTrue(bare.datum(Term.PULL_DOWN).source().toString().endsWith("±5 % assumed"));
  }
}
