package lowfirst.swap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import lowfirst.part.PartKind;
import lowfirst.quantity.Source;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What single rules say of words, of missing data and of data from memory. */
class RuleAnswersTest {
  private static Optional<Answer> answer(
      PartKind kind, String rule, String place, String asked, String offered) {
    SwapCase swap = Sheets.swap(kind, place, asked, offered);
    return SwapRules.of(kind).stream()
        .filter(one -> one.toString().equals(rule))
        .findFirst()
        .orElseThrow()
        .judge(swap);
  }

  private static String verdict(Optional<Answer> answer) {
    return answer.map(said -> said.verdict().words()).orElse("silent");
  }

  @ParameterizedTest(name = "{2}: {3} -> {4}")
  @CsvSource({
    // a flyback diode switched at hand-scale times may be any rectifier
    "DIODE, RECOVERY, flyback 24, technology = fast recovery, technology = standard recovery, fits",
    "DIODE, RECOVERY, flyback 24, technology = fast recovery, '', fits",
    // under PWM a slow one never does, not even for a slow one
    "DIODE, RECOVERY, flyback pwm 24, technology = fast recovery, technology = standard recovery, does not fit",
    "DIODE, RECOVERY, flyback pwm 24, technology = standard recovery, technology = standard recovery, does not fit",
    "DIODE, RECOVERY, flyback pwm 24, '', technology = standard recovery, does not fit",
    "DIODE, RECOVERY, flyback pwm 24, technology = fast recovery, technology = Schottky, fits",
    // elsewhere slow does for slow, and nobody knows where the BOM does not say
    "DIODE, RECOVERY, '', technology = standard recovery, technology = standard recovery, fits",
    "DIODE, RECOVERY, '', technology = fast recovery, technology = standard recovery, does not fit",
    "DIODE, RECOVERY, '', '', technology = standard recovery, undecided",
    "DIODE, RECOVERY, '', '', technology = Schottky, fits",
    "DIODE, RECOVERY, '', trr <50e-9 s, trr <75e-9 s, does not fit",
    "DIODE, RECOVERY, '', trr <75e-9 s, trr <50e-9 s, fits",
    // a Schottky leaks: harmless across a coil, to be thought of elsewhere, nothing new for another
    "DIODE, LEAKAGE, '', technology = fast recovery, technology = Schottky, undecided",
    "DIODE, LEAKAGE, '', '', technology = Schottky, undecided",
    "DIODE, LEAKAGE, flyback 24, technology = fast recovery, technology = Schottky, silent",
    "SCHOTTKY_DIODE, LEAKAGE, '', technology = Schottky, technology = Schottky, silent",
    "DIODE, LEAKAGE, '', technology = fast recovery, technology = fast recovery, silent",
    "DIODE, LEAKAGE, '', technology = fast recovery, '', silent",
    // more drop is heat that only the circuit can judge; less is welcome
    "DIODE, FORWARD_VOLTAGE, '', VF@IF=1A <1 V, VF@IF=1A <1.2 V, undecided",
    "DIODE, FORWARD_VOLTAGE, '', VF@IF=1A <1 V, VF@IF=1A <0.9 V, fits",
    "DIODE, FORWARD_VOLTAGE, '', VF@IF=1A <1 V, VF@IF=3A <0.9 V, silent",
    // tabs
    "MOSFET, TAB, '', tab = drain, tab = drain, fits",
    "MOSFET, TAB, '', tab = drain, tab = isolated, fits",
    "MOSFET, TAB, '', tab = isolated, tab = drain, does not fit",
    "MOSFET, TAB, '', tab = drain, '', undecided",
    "MOSFET, TAB, '', '', tab = drain, undecided",
    "MOSFET, TAB, '', '', '', silent",
    // the gate's charge matters where it is switched often, or nobody knows how often
    "MOSFET, GATE_CHARGE, mosfet 24, QG <20e-9 C, QG <40e-9 C, silent",
    "MOSFET, GATE_CHARGE, mosfet pwm 24, QG <20e-9 C, QG <40e-9 C, does not fit",
    "MOSFET, GATE_CHARGE, '', QG <20e-9 C, QG <40e-9 C, does not fit",
    // sheets spell some ratings in other ways, and a fuse's are nominal
    "MOSFET, JUNCTION_LIMIT, '', TJmax <175 degC, TJ <150 degC, does not fit",
    "MOSFET, JUNCTION_LIMIT, '', TJ <150 degC, TJmax <175 degC, fits",
    "MOSFET, DRAIN_VOLTAGE_RATING, '', VDSS <60 V, BVDSS >75 V, fits",
    "MOSFET, GATE_VOLTAGE_RATING, '', VGS <20 V, VGSS <16 V, does not fit",
    "FUSE, NOT_MORE, '', IN ~2 A, Irated ~3.15 A, does not fit",
    "FUSE, ENOUGH, '', IN ~2 A, IN ~1 A, does not fit",
    "FUSE, ENOUGH, '', IN ~2 A, IN ~2 A, fits",
    "FUSE, VOLTAGE, '', VN@DC ~125 V, VN@DC ~32 V, does not fit",
    // a figure for alternating voltage promises nothing of direct; the other way round it does
    "FUSE, VOLTAGE, '', VN@DC ~125 V, VN@AC ~250 V, undecided",
    "FUSE, VOLTAGE, '', VN@DC ~125 V, VN@AC ~63 V, does not fit",
    "FUSE, VOLTAGE, '', VN@DC ~125 V, VN@AC ~250 V; VN@DC ~125 V, fits",
    "FUSE, VOLTAGE, '', VN@AC ~250 V, VN@DC ~250 V, fits",
    "FUSE, BREAKING_CAPACITY, '', breaking@125 V DC <50 A, breaking@250 V AC <1500 A, undecided",
    // a Zener is as good as its band: the nominal voltage alone promises none
    "ZENER_DIODE, VOLTAGE, '', VZ ~12 V, VZ ~12.2 V, fits",
    "ZENER_DIODE, VOLTAGE, '', VZ ~12 V, VZ ~12.5 V, does not fit",
    "ZENER_DIODE, VOLTAGE, '', VZ >11.4 V, VZ ~11.4 V, undecided",
    "ZENER_DIODE, VOLTAGE, '', VZ >11.4 V, VZ >11.5 V, undecided",
    "ZENER_DIODE, VOLTAGE, '', VZ >11.4 V, VZ ~13 V, does not fit",
    "ZENER_DIODE, VOLTAGE, '', VZ ~12 V, '', undecided",
    "ZENER_DIODE, TEST_CURRENT, '', IZT <20e-3 A, IZT <21e-3 A, fits",
    "ZENER_DIODE, TEST_CURRENT, '', IZT <20e-3 A, IZT <5e-3 A, does not fit",
    "ZENER_DIODE, TEST_CURRENT, '', IZT <5e-3 A, IZT <20e-3 A, does not fit",
    "ZENER_DIODE, TEST_CURRENT, '', '', IZT <20e-3 A, silent",
    // a gain is a guaranteed minimum at one current
    "BIPOLAR_TRANSISTOR, GAIN, '', hFE@IC=2mA >200 x, hFE@IC=2mA >300 x, fits",
    "BIPOLAR_TRANSISTOR, GAIN, '', hFE@IC=2mA >200 x, hFE@IC=2mA <900 x, undecided",
    "BIPOLAR_TRANSISTOR, GAIN, '', hFE@IC=2mA >200 x, hFE@IC=100mA >300 x, undecided",
    // built-in diodes must stay, and none need come
    "DRIVER_ARRAY, CLAMP, '', clamp = yes, clamp = no, does not fit",
    "DRIVER_ARRAY, CLAMP, '', clamp = yes, clamp = yes, fits",
    "DRIVER_ARRAY, CLAMP, '', clamp = yes, '', undecided",
    "DRIVER_ARRAY, CLAMP, '', '', clamp = no, silent",
    // a lower breakdown than the rating counts
    "OPTOCOUPLER, COLLECTOR_VOLTAGE, '', VCEO <35 V, VCEO <80 V; VBRCEO >70 V, fits",
    "OPTOCOUPLER, COLLECTOR_VOLTAGE, '', VCEO <35 V, VCEO <80 V; VBRCEO >30 V, does not fit",
    "OPTOCOUPLER, COLLECTOR_VOLTAGE, '', VCEO <35 V, VBRCEO >70 V, fits",
    "OPTOCOUPLER, OUTPUT, '', '', '', silent",
    "OPTOCOUPLER, OUTPUT, '', output = logic gate, '', does not fit",
    "OPTOCOUPLER, OUTPUT, '', output = logic gate, output = logic gate, fits",
  })
  void a_rule_says_what_a_practitioner_says(
      PartKind kind, String rule, String place, String asked, String offered, String verdict) {
    assertEquals(verdict, verdict(answer(kind, rule, place, asked, offered)));
  }

  @ParameterizedTest
  @CsvSource({"flyback pwm 24, fast: the channel is pulse-width modulated", "'', fast recovery"})
  void a_slow_diode_is_told_what_was_wanted_of_it(String place, String wanted) {
    String slow = "technology = standard recovery";
    Answer answer =
        answer(PartKind.DIODE, "RECOVERY", place, "technology = fast recovery", slow).orElseThrow();
    assertEquals(wanted, answer.asked().orElseThrow().word());
  }

  @Test
  void only_a_live_tab_for_an_isolated_one_needs_a_washer() {
    String washer = "it would need an insulating washer and bush";
    assertEquals(washer, tab("isolated", "drain").remark());
    assertEquals("", tab("drain", "isolated").remark());
  }

  private static Answer tab(String asked, String offered) {
    return answer(PartKind.MOSFET, "TAB", "", "tab = " + asked, "tab = " + offered).orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({
    "DIODE, DIODE, true",
    "DIODE, SCHOTTKY_DIODE, true",
    "SCHOTTKY_DIODE, DIODE, true",
    "DIODE, ZENER_DIODE, false",
    "ZENER_DIODE, DIODE, false",
    "FILM_CAPACITOR, CERAMIC_CAPACITOR, true",
    "FILM_CAPACITOR, RESISTOR, false",
    "RESISTOR, FILM_CAPACITOR, false",
    "CRYSTAL, RESONATOR, true",
    "RESONATOR, CRYSTAL, false",
    "CRYSTAL, FUSE, false",
    "MOSFET, BIPOLAR_TRANSISTOR, false",
  })
  void few_kinds_can_do_the_work_of_another(PartKind asked, PartKind offered, boolean can) {
    assertEquals(can, PlaceRule.mayReplace(asked, offered));
  }

  @ParameterizedTest
  @CsvSource({
    "VDS <60 V,          (memory) VDS <75 V, undecided",
    "(memory) VDS <60 V, VDS <75 V,          undecided",
    "VDS <60 V,          (memory) VDS <45 V, does not fit",
    "VDS <60 V,          VDS <75 V,          fits"
  })
  void what_is_only_remembered_makes_nothing_pass(String asked, String offered, String verdict) {
    Answer answer =
        answer(PartKind.MOSFET, "DRAIN_VOLTAGE_RATING", "", asked, offered).orElseThrow();
    assertEquals(verdict, answer.verdict().words());
    List<String> wanted = List.of("a datasheet in place of memory: from memory");
    assertEquals(verdict.equals("undecided") ? wanted : List.of(), answer.missing());
  }

  @Test
  void no_answer_that_lacks_a_datum_or_rests_on_memory_can_be_built_to_fit() {
    Optional<Evidence> sure = Optional.of(Evidence.of("60 V", Source.datasheet("sheet")));
    Optional<Evidence> dim =
        Optional.of(Evidence.of("60 V", new Source(Source.Origin.MEMORY, "from memory")));
    refused(sure, dim, List.of());
    refused(dim, sure, List.of());
    refused(sure, sure, List.of("VDS of NEW"));
  }

  private static void refused(
      Optional<Evidence> asked, Optional<Evidence> offered, List<String> missing) {
    assertThrows(
        IllegalArgumentException.class,
        () ->
            new Answer(
                SwapVerdict.FITS, asked, offered, java.util.OptionalDouble.empty(), missing, ""));
  }

  /** A beginner must be able to ask why of every rule, and an expert where it stands. */
  @ParameterizedTest
  @EnumSource(PartKind.class)
  void every_rule_has_a_name_of_its_own_a_reason_and_a_source(PartKind kind) {
    var names = new HashSet<String>();
    for (SwapRule rule : SwapRules.of(kind)) {
      assertTrue(names.add(rule.words()), rule.words());
      assertFalse(rule.why().isBlank());
      assertFalse(rule.source().text().isBlank());
    }
  }

  @Test
  void a_kind_without_a_table_is_left_to_the_reader() {
    assertTrue(SwapRules.know(PartKind.MOSFET));
    assertFalse(SwapRules.know(PartKind.RELAY));
    assertTrue(SwapRules.of(PartKind.RELAY).contains(OtherKindRule.COMPARE_YOURSELF));
    assertFalse(SwapRules.of(PartKind.MOSFET).contains(OtherKindRule.COMPARE_YOURSELF));
  }
}
