package lowfirst.swap;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lowfirst.part.Datasheets;
import lowfirst.part.PartKind;
import lowfirst.quantity.Quantity;
import lowfirst.swap.rule.Answer;
import lowfirst.swap.rule.CapacitorRule;
import lowfirst.swap.rule.ContactRule;
import lowfirst.swap.rule.DiodeRule;
import lowfirst.swap.rule.MosfetRule;
import lowfirst.swap.rule.RegulatorRule;
import lowfirst.swap.rule.ResistorRule;
import lowfirst.swap.rule.SwapRule;
import lowfirst.swap.subject.Evidence;
import lowfirst.swap.subject.SwapCase;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The numbers that rules hold against each other, and how much is left, by hand. */
class RuleNumbersTest {
  private static final Map<String, SwapRule> RULES =
      Stream.<SwapRule[]>of(
              MosfetRule.values(),
              DiodeRule.values(),
              RegulatorRule.values(),
              ResistorRule.values(),
              CapacitorRule.values())
          .flatMap(Stream::of)
          .collect(
              Collectors.toMap(
                  rule -> rule.getClass().getSimpleName() + "." + rule, Function.identity()));

  private static Answer sheets(
      PartKind kind, SwapRule rule, String place, String asked, String offered) {
    return answer(Sheets.swap(kind, place, asked, offered), rule);
  }

  private static Answer texts(
      PartKind kind, SwapRule rule, String place, String asked, String offered) {
    return answer(Sheets.swap(kind, place, asked, offered, Datasheets.of(List.of())), rule);
  }

  private static Answer answer(SwapCase swap, SwapRule rule) {
    return SwapFinding.ofParts(swap)
        .reason(rule)
        .orElseThrow(() -> new AssertionError(rule + " says nothing"))
        .answer();
  }

  private static Double amount(Optional<Evidence> evidence) {
    return evidence.flatMap(Evidence::quantity).map(Quantity::asDouble).orElse(null);
  }

  private static void holds(
      Answer answer, String verdict, Double asked, Double offered, Double margin) {
    assertEquals(verdict, answer.verdict().words(), answer::toString);
    near(asked, amount(answer.asked()), "asked");
    near(offered, amount(answer.offered()), "offered");
    near(margin, answer.margin().isPresent() ? answer.margin().getAsDouble() : null, "margin");
  }

  private static void near(Double expected, Double found, String what) {
    if (expected == null) {
      assertEquals(null, found, what);
    } else {
      assertEquals(expected, found, 1e-4 * Math.abs(expected) + 1e-12, what);
    }
  }

  @ParameterizedTest(name = "{1} {2}: {3} -> {4}")
  @CsvSource({
    // ratings: more is better; losses: less is
    "MOSFET, MosfetRule.DRAIN_VOLTAGE_RATING, '', VDS <60 V, VDS <75 V, fits, 60, 75, 0.25",
    "MOSFET, MosfetRule.DRAIN_VOLTAGE_RATING, '', VDS <60 V, VDS <60 V, fits, 60, 60, 0",
    "MOSFET, MosfetRule.DRAIN_VOLTAGE_RATING, '', VDS <60 V, VDS <45 V, does not fit, 60, 45, -0.25",
    "MOSFET, MosfetRule.DRAIN_VOLTAGE_RATING, '', VDS <60 V, VDS >66 V, fits, 60, 66, 0.1",
    "MOSFET, MosfetRule.DRAIN_VOLTAGE_RATING, '', VDS <60 V, VDS ~90 V, undecided, 60, , ",
    "MOSFET, MosfetRule.DRAIN_VOLTAGE_RATING, '', VDS ~60 V, VDS <90 V, undecided, , 90, ",
    "MOSFET, MosfetRule.THERMAL_RESISTANCE, '', RthJC <2 K/W, RthJC <1 K/W, fits, 2, 1, 1",
    // nothing is zero: such a line promises nothing, on either side
    "MOSFET, MosfetRule.THERMAL_RESISTANCE, '', RthJC <2 K/W, RthJC <0 K/W, undecided, 2, , ",
    "MOSFET, MosfetRule.DRAIN_VOLTAGE_RATING, '', VDS <0 V, VDS <60 V, undecided, , 60, ",
    "MOSFET, MosfetRule.DRAIN_VOLTAGE_RATING, '', VDS <60 V, VDS <-100 V, does not fit, 60, -100, -2.66667",
    "MOSFET, MosfetRule.THERMAL_RESISTANCE, '', RthJC <2 K/W, RthJC <2.5 K/W, does not fit, 2, 2.5, -0.2",
    // each maker at its weakest, on either side
    "MOSFET, MosfetRule.DRAIN_VOLTAGE_RATING, '', [A] VDS <60 V; [B] VDS <50 V, VDS <55 V, fits, 50, 55, 0.1",
    "MOSFET, MosfetRule.DRAIN_VOLTAGE_RATING, '', VDS <60 V, [A] VDS <75 V; [B] VDS <54 V, does not fit, 60, 54, -0.1",
    // a maker who says nothing may have made the one in the bag
    "MOSFET, MosfetRule.DRAIN_VOLTAGE_RATING, '', VDS <60 V, [A] VDS <75 V; [B] VGS <20 V, undecided, 60, 75, ",
    "MOSFET, MosfetRule.DRAIN_VOLTAGE_RATING, '', VDS <60 V, [A] VDS <45 V; [B] VGS <20 V, does not fit, 60, 45, -0.25",
    "MOSFET, MosfetRule.DRAIN_VOLTAGE_RATING, '', VDS <60 V, VDS <75 V; [B] VGS <20 V, fits, 60, 75, 0.25",
    "MOSFET, MosfetRule.DRAIN_VOLTAGE_RATING, '', [A] VDS <60 V; [B] VGS <20 V, VDS <75 V, fits, 60, 75, 0.25",
    // the same condition first: the worst of the pairs; else what holds in a warmer case
    "MOSFET, MosfetRule.DRAIN_CURRENT_RATING, '', ID@TC=25C <20 A; ID@TC=100C <10 A, ID@TC=25C <30 A; ID@TC=100C <9 A, does not fit, 10, 9, -0.1",
    "MOSFET, MosfetRule.DRAIN_CURRENT_RATING, '', ID@TC=25C <20 A; ID@TC=100C <10 A, ID@TC=25C <18 A; ID@TC=100C <9.5 A, does not fit, 20, 18, -0.1",
    "MOSFET, MosfetRule.DRAIN_CURRENT_RATING, '', ID@TC=25C <20 A; ID@TC=100C <10 A, ID@TC=80C <30 A; ID@TC=90C <22 A, undecided, 10, 30, ",
    "MOSFET, MosfetRule.DRAIN_CURRENT_RATING, '', ID@TC=25C <20 A; ID@TC=100C <10 A, ID@TC=100C <22 A, fits, 20, 22, 0.1",
    "MOSFET, MosfetRule.DRAIN_CURRENT_RATING, '', [A] ID@TC=25C <20 A; [A] ID@TC=100C <10 A; [B] ID@TC=25C <16 A, ID@TC=90C <18 A, fits, 16, 18, 0.125",
  })
  void two_ratings_are_held_against_each_other(
      PartKind kind,
      String rule,
      String place,
      String asked,
      String offered,
      String verdict,
      Double needs,
      Double gives,
      Double margin) {
    holds(sheets(kind, RULES.get(rule), place, asked, offered), verdict, needs, gives, margin);
  }

  @ParameterizedTest(name = "{0} -> {1}")
  @CsvSource({
    "RDSon@VGS=4V <0.05 Ohm; RDSon@VGS=10V <0.035 Ohm, RDSon@VGS=4V <0.06 Ohm, fits, 4, 4",
    "RDSon@VGS=4V <0.05 Ohm; RDSon@VGS=10V <0.035 Ohm, RDSon@VGS=4.5V <0.04 Ohm, undecided, 4, 4.5",
    "RDSon@VGS=4V <0.05 Ohm; RDSon@VGS=10V <0.035 Ohm, RDSon@VGS=10V <0.02 Ohm, does not fit, 4, 10",
    "RDSon@VGS=4V <0.05 Ohm, RDSon@VGS=4.5V <0.04 Ohm, does not fit, 4, 4.5",
    "RDSon@VGS = 5 V <0.05 Ohm, RDSon@VGS=4.5V <0.04 Ohm, fits, 5, 4.5",
    "RDSon@VGS=4V <0.05 Ohm, RDSon <0.04 Ohm, undecided, 4, ",
    "RDSon@VGS=4V <0.05 Ohm, RDSon@VGS <0.04 Ohm, undecided, 4, ",
    "RDSon@VGS=5 <0.05 Ohm, RDSon@VGS=4.5 <0.04 Ohm, fits, 5, 4.5",
    "RDSon@VGS=4V <0.05 Ohm; RDSon@VGS=4.5V <0.04 Ohm, RDSon@VGS=4.5V <0.04 Ohm, undecided, 4, 4.5",
    "RDSon@VGS=4V <0.05 Ohm, [C] RDSon@VGS=4V <0.04 Ohm; [B] VDS <60 V, undecided, 4, 4",
    "RDSon@VGS=4V <0.05 Ohm, [A] RDSon@VGS=10V <0.04 Ohm; [B] RDSon@VGS=6V <0.04 Ohm, does not fit, 4, 10",
    "RDSon@VGS=4V <0.05 Ohm, RDSon@VGS=3V ~0.04 Ohm; RDSon@VGS=10V <0.05 Ohm, does not fit, 4, 10",
    // whose part it is tells
    "RDSon@VGS=4V <0.05 Ohm, [A] RDSon@VGS=4V <0.04 Ohm; [B] RDSon@VGS=10V <0.04 Ohm, undecided, 4, 10",
  })
  void a_gate_is_held_to_the_lowest_voltage_that_a_line_promises(
      String asked, String offered, String verdict, Double needs, Double gives) {
    Answer answer = sheets(PartKind.MOSFET, MosfetRule.LOGIC_LEVEL, "", asked, offered);
    holds(answer, verdict, needs, gives, null);
    boolean byOther = offered.contains("[A] RDSon@VGS=4V");
    assertEquals(byOther, answer.missing().contains("whose it is: if by A, ask for \"NEW (A)\""));
  }

  @ParameterizedTest(name = "{0} -> {1}")
  @CsvSource({
    "RDSon@VGS=4V <0.05 Ohm; RDSon@VGS=10V <0.035 Ohm, RDSon@VGS=4.5V <0.04 Ohm, does not fit, 0.035, 0.04, -0.125",
    "RDSon@VGS=4V <0.05 Ohm; RDSon@VGS=10V <0.035 Ohm, RDSon@VGS=4V <0.04 Ohm; RDSon@VGS=10V <0.02 Ohm, fits, 0.05, 0.04, 0.25",
    "RDSon@VGS=4V <0.05 Ohm, RDSon@VGS=3V <0.05 Ohm, fits, 0.05, 0.05, 0",
    "RDSon@VGS=10V <0.05 Ohm, [A] RDSon@VGS=10V <0.02 Ohm; [B] RDSon@VGS=10V <0.04 Ohm, fits, 0.05, 0.04, 0.25",
    "RDSon@VGS=4V <0.05 Ohm, [A] RDSon@VGS=4V <0.02 Ohm; [B] RDSon@VGS=10V <0.04 Ohm, undecided, 0.05, 0.04, ",
  })
  void resistances_are_compared_at_the_gate_voltages_of_the_part_asked_for(
      String asked, String offered, String verdict, Double needs, Double gives, Double margin) {
    holds(
        sheets(PartKind.MOSFET, MosfetRule.ON_RESISTANCE, "", asked, offered),
        verdict,
        needs,
        gives,
        margin);
  }

  /** Of a rating in cooler air (TJ − TA)/(TJ − its own TA) is left. */
  @ParameterizedTest(name = "{0} -> {1}")
  @CsvSource({
    "IFav@TA=75C <1 A, IFav@TA=50C <2 A; TJ <150 degC, fits, 1, 2, 1",
    "IFav@TA=75C <1 A, IFav@TA=25C <1.2 A; TJ <150 degC, undecided, 1, 0.72, ",
    "IFav@TA=75C <1 A, IFav@TA=25C <1.2 A, undecided, 1, 1.2, ",
    "IFav@TA=75C <1 A, IFav@TA=25C <1.2 A; TJ <70 degC, undecided, 1, 0, ",
    "IFav@TA=75C <1 A, IFav@TA=100C <1.2 A, fits, 1, 1.2, 0.2",
    "IFav@TA=75C <1 A, IFav <1.2 A, undecided, 1, 1.2, ",
    "IFav <1 A, IFav <1.2 A, fits, 1, 1.2, 0.2",
    "IFav@half wave <1 A, IFav@half wave <1.2 A, undecided, 1, 1.2, ",
    "IFav <1 A, IFav@TA=75C <1.2 A, fits, 1, 1.2, 0.2",
    "IFav <1 A, IFav@TC=75C <1.2 A, undecided, 1, 1.2, ",
    "IFav@TA = 75 <1 A, IFav@TA = 25 degC <1.2 A; TJ <150 degC, undecided, 1, 0.72, ",
    "IFav@TA=75C <1 A, IFav@TC=125C <5 A; TJ <150 degC, undecided, 1, 5, ",
    "IFav@TA=75C <1 A, IFav@Tmb=100C <5 A; TJ <150 degC, undecided, 1, 5, ",
    "IFav@TA=75C <1 A, IFav@TL=90C <5 A; TJ <150 degC, undecided, 1, 5, ",
    "IFav@TL=90C <1 A, IFav@TA=100C <5 A; TJ <150 degC, undecided, 1, 5, ",
    "IFav@TL=90C <1 A, IFav@TC=100C <5 A; TJ <150 degC, undecided, 1, 5, ",
    "IFav@TC=100C <3 A, IFav@Tmb=75C <3.6 A; TJ <125 degC, undecided, 3, 1.8, ",
    "IFav@TC=100C <3 A, IFav@TC=125C <3 A; TJ <150 degC, fits, 3, 3, 0",
    "IFav@TA=25...75C <1 A, IFav@TA=25C <1.2 A; TJ <150 degC, undecided, 1, 1.2, ",
    "IFav@TA=75C <1 A, IFav@TA=25...75C <1.2 A; TJ <150 degC, undecided, 1, 1.2, ",
    "IFav@TA=75C <1 A, IFav@TA=25C <0.8 A; TJ <150 degC, does not fit, 1, 0.8, -0.2",
    "IFav@TA=75C <3 A, IFav@TA=50C <4 A; TJ <150 degC, fits, 3, 4, 0.333333",
    "IFav@TA=75 <1 A, IFav@TA=25 <1.2 A; TJ <150 degC, undecided, 1, 0.72, ",
    "IFav@TA=75C <1 A, IFav@TA=room <1.2 A, undecided, 1, 1.2, ",
    "IFav@TA=25C <1 A, IFav@TA=75C <0.8 A, does not fit, 1, 0.8, -0.2",
    // several lines: each of those asked for has to be kept, by any of the candidate's
    "IFav@TA=25C <2 A; IFav@TA=75C <1 A, IFav@TA=75C <1.2 A, undecided, 2, 1.2, ",
    "IFav@TA=75C <1 A; IFav@TC=100C <3 A, IFav@TA=75C <1 A, undecided, 3, 1, ",
    "IFav@TA=25C <2 A; IFav@TA=75C <1 A, IFav@TA=25C <2.5 A; IFav@TA=75C <1.2 A, fits, 1, 1.2, 0.2",
    "IFav@TA=25C <2 A; IFav@TA=75C <1 A, IFav@TA=25C <4 A; TJ <150 degC, fits, 2, 4, 1",
    "IFav@TA=25C <2 A; IFav@TA=75C <1 A, IFav@TA=25C <2 A; TJ <95 degC, undecided, 1, 0.571429, ",
    "IFav@TL=90C <2 A, IFav@TA=25C <2 A; IFav@TL=90C <2 A, fits, 2, 2, 0",
    // of makers: the BOM accepts what one of its own promises, and any of the candidate's may come
    "[A] IFav@TA=75C <1 A; [B] IFav@TA=75C <1 A; [B] IFav@TA=25C <3 A, IFav@TA=75C <1 A, fits, 1, 1, 0",
    "IFav@TA=75C <1 A, [A] IFav@TA=75C <1 A; [B] IFav@TL=90C <1 A, undecided, 1, 1, ",
  })
  void a_diodes_current_is_compared_in_the_warmer_air(
      String asked, String offered, String verdict, Double needs, Double gives, Double margin) {
    holds(
        sheets(PartKind.DIODE, DiodeRule.AVERAGE_CURRENT, "", asked, offered),
        verdict,
        needs,
        gives,
        margin);
  }

  /** The rail before a regulator has 5 % less at its lowest; its output 5.2 V at its highest. */
  @ParameterizedTest(name = "{0}: {1} -> {2}")
  @CsvSource({
    "rail 12, VO ~5 V, VO ~5 V; VO <5.2 V; dropout <2 V, fits, 6.2, 2, 2.1",
    "rail 6.5, VO ~5 V, VO ~5 V; VO <5.2 V; dropout <2 V, does not fit, 0.975, 2, -0.5125",
    "rail 6.5, VO ~5 V; dropout <2.5 V, VO ~5 V; VO <5.2 V; dropout <2 V, fits, 2.5, 2, 0.25",
    "rail 5.2, VO ~5 V; dropout <1 V, VO ~5 V; VO <5.2 V; dropout <2 V, does not fit, 1, 2, -0.5",
    "rail 12, VO ~5 V, VO ~5 V; VO <5.2 V, undecided, , , ",
  })
  void a_regulator_has_the_room_that_the_rail_before_it_leaves(
      String place,
      String asked,
      String offered,
      String verdict,
      Double needs,
      Double gives,
      Double margin) {
    holds(
        sheets(PartKind.REGULATOR, RegulatorRule.DROPOUT, place, asked, offered),
        verdict,
        needs,
        gives,
        margin);
  }

  /** No hotter by the part's own numbers; else what the rail draws would have to be known. */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "RthJA <50 K/W; TJ <150 degC, fits, 60, 50, 0.2",
    "RthJA <60 K/W; TJ <125 degC, fits, 60, 60, 0",
    "RthJA <60 K/W; TJ <125 degC; IQ <0.01 A, fits, 60, 60, 0",
    "RthJA <60 K/W; TJ <125 degC; IQ <0.02 A, undecided, , 60, ",
    "RthJA <50 K/W; TJ <100 degC, undecided, , 50, ",
    "RthJA <70 K/W; TJ <150 degC, undecided, , 70, ",
    "RthJA <50 K/W, undecided, 60, , ",
    "TJ <150 degC, undecided, 60, , ",
    "RthJA ~50 K/W; TJ <150 degC, undecided, 60, , ",
    "RthJA >50 K/W; TJ <150 degC, undecided, 60, , ",
    "[A] RthJA <50 K/W; [B] RthJA ~90 K/W; TJ <150 degC, undecided, 60, , ",
    "[A] RthJA <50 K/W; [B] RthJA <55 K/W; TJ <150 degC, fits, 60, 55, 0.0909091",
  })
  void a_regulator_may_be_cooler_by_its_own_numbers(
      String offered, String verdict, Double needs, Double gives, Double margin) {
    holds(
        sheets(
            PartKind.REGULATOR,
            RegulatorRule.HEAT,
            "rail 12",
            "VO ~5 V; RthJA <60 K/W; TJ <125 degC",
            "VO ~5 V; " + offered),
        verdict,
        needs,
        gives,
        margin);
  }

  @ParameterizedTest(name = "{1}: {2} -> {3}, {0}")
  @CsvSource({
    // 5.25 V on 330 Ω less 5 %: 87.92 mW
    "gate 24, RESISTOR, ResistorRule.POWER, 330R 5%, 330R 5% 0.25W, fits, 0.087919, 0.25, 1.84353",
    "gate 24, RESISTOR, ResistorRule.POWER, 100R 5%, 100R 5% 0.25W, does not fit, 0.290132, 0.25, -0.13832",
    "gate 24, RESISTOR, ResistorRule.POWER, 330R, 330R 5% 0.25W, fits, 0.083523, 0.25, 1.99320",
    "'', RESISTOR, ResistorRule.POWER, 330R 5% 0.5W, 330R 5% 0.25W, does not fit, 0.5, 0.25, -0.5",
    // a quarter above 24 V and 5 %: 31.5 V
    "rail 24, ELECTROLYTIC_CAPACITOR, CapacitorRule.VOLTAGE, 470uF 20% 63V, 470uF 20% 35V, fits, 31.5, 35, 0.111111",
    "rail 24, ELECTROLYTIC_CAPACITOR, CapacitorRule.VOLTAGE, 470uF 20% 35V, 470uF 20% 25V, does not fit, 35, 25, -0.285714",
    "rail 24, ELECTROLYTIC_CAPACITOR, CapacitorRule.VOLTAGE, 470uF 20% 35V, 470uF 20% 35V, fits, 35, 35, 0",
    "rail 24, ELECTROLYTIC_CAPACITOR, CapacitorRule.VOLTAGE, 470uF 20%, 470uF 20% 35V, fits, 31.5, 35, 0.111111",
    "rail 24, ELECTROLYTIC_CAPACITOR, CapacitorRule.VOLTAGE, 470uF 20%, 470uF 20% 16V, undecided, 31.5, 16, ",
    "rail 24, ELECTROLYTIC_CAPACITOR, CapacitorRule.VOLTAGE, 470uF 20%, 470uF 20% 4V, does not fit, 31.5, 4, -0.873016",
    "'', ELECTROLYTIC_CAPACITOR, CapacitorRule.VOLTAGE, 470uF 20%, 470uF 20% 4V, undecided, , 4, ",
    "rail 24, ELECTROLYTIC_CAPACITOR, CapacitorRule.VOLTAGE, 470uF 20%, 470uF 20%, undecided, 31.5, , ",
    // the square root of 0.25 W times 1 MΩ is 500 V, of 0.25 W times 100 Ω 5 V; the rail 25.2 V
    "'', RESISTOR, ResistorRule.VOLTAGE, 1M 0.25W, 1M 600V, fits, 500, 600, 0.2",
    "rail 24, RESISTOR, ResistorRule.VOLTAGE, 100R 0.25W, 100R 350V, fits, 5, 350, 69",
    "rail 24, RESISTOR, ResistorRule.VOLTAGE, 1M 0.25W, 1M 350V, fits, 25.2, 350, 12.888889",
    // less tolerance, less what heat takes: 0.9 and 0.85 of 100 nF are 76.5 nF
    "'', CERAMIC_CAPACITOR, CapacitorRule.LEAST_CAPACITANCE, 100n X7R 10% 50V, 100n X7R 20% 50V, does not fit, 76.5e-9, 68e-9, -0.111111",
    "'', CERAMIC_CAPACITOR, CapacitorRule.LEAST_CAPACITANCE, 100n X7R 10% 50V, 100n C0G 10% 50V, fits, 76.5e-9, 89.73e-9, 0.172941",
    "'', CERAMIC_CAPACITOR, CapacitorRule.LEAST_CAPACITANCE, 100n X7R 10% 50V, 100n Z5U 10% 50V, does not fit, 76.5e-9, 39.6e-9, -0.482353",
  })
  void what_a_value_says_is_held_to_what_its_place_asks(
      String place,
      PartKind kind,
      String rule,
      String asked,
      String offered,
      String verdict,
      Double needs,
      Double gives,
      Double margin) {
    holds(texts(kind, RULES.get(rule), place, asked, offered), verdict, needs, gives, margin);
  }

  @ParameterizedTest(name = "{1} -> {2}, {0}")
  @CsvSource({
    "'',      10k,     10k 1%,   fits",
    "'',      10k,     10.4k 1%, undecided",
    "'',      10k,     9.6k 1%,  undecided",
    "'',      10k,     11k 1%,   does not fit",
    "'',      10k,     9k1 1%,   does not fit",
    "'',      4k7 5%,  4k7,      undecided",
    "'',      4k7 5%,  BLOB,     undecided",
    "'',      4k7 5%,  4k75,     undecided",
    "'',      4k7 5%,  5k6,      does not fit",
    "'',      330R 1%, 330R 5%,  does not fit",
    "gate 24, 330R 1%, 330R 5%,  fits",
    "gate 24, 330R 1%, 360R 5%,  does not fit",
    "fuse 24, 330R 1%, 330R 5%,  does not fit",
  })
  void a_value_must_lie_in_the_band_that_the_bom_asks_for(
      String place, String asked, String offered, String verdict) {
    Answer answer = texts(PartKind.RESISTOR, ResistorRule.VALUE, place, asked, offered);
    assertEquals(verdict, answer.verdict().words(), answer::toString);
  }

  @Test
  void what_is_left_of_a_current_in_warmer_air_is_told() {
    Answer answer =
        sheets(
            PartKind.DIODE,
            DiodeRule.AVERAGE_CURRENT,
            "",
            "IFav@TA=75C <1 A",
            "IFav@TA=25C <1.2 A; TJ <150 degC");
    assertEquals(
        "it is rated in cooler air: 720 mA is left where the other is rated", answer.remark());
  }

  @Test
  void what_is_missing_is_named_with_the_part_that_lacks_it() {
    assertEquals(
        List.of("VDS of OLD: a row in datasheets.csv", "VDS of NEW: a row in datasheets.csv"),
        sheets(PartKind.MOSFET, MosfetRule.DRAIN_VOLTAGE_RATING, "", "", "").missing());
    assertEquals(
        List.of("VDS of NEW: a row in datasheets.csv"),
        sheets(PartKind.MOSFET, MosfetRule.DRAIN_VOLTAGE_RATING, "", "VDS <60 V", "").missing());
    assertEquals(
        List.of("poles of OLD: in its text or a row in datasheets.csv"),
        sheets(PartKind.CONNECTOR, ContactRule.PIN_COUNT, "", "", "poles <3 x").missing());
    assertEquals(
        List.of("poles of NEW: in its text or a row in datasheets.csv"),
        sheets(PartKind.CONNECTOR, ContactRule.PIN_COUNT, "", "poles <3 x", "").missing());
  }
}
