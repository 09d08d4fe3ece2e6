package lowfirst.sorting;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import lowfirst.board.Kit;
import lowfirst.board.SampleBoards;
import lowfirst.part.BodyOutline;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Source;
import lowfirst.sorting.Separation.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How two part types are told apart, how far off one is from the other, and in which bodies. */
class SeparationTest {
  private static final Meter METER = MeterLimitsTest.meter("0.5 % + 2 of 6000");

  @ParameterizedTest
  @CsvSource({
    "RESISTOR 1k 5%, RESISTOR 10k 5%, OHMS",
    "CERAMIC_CAPACITOR 1n, CERAMIC_CAPACITOR 100n, FARADS",
    "RESISTOR 1k 5% 0.25W, RESISTOR 1k 5% 0.5W, READ_THE_RATING",
    "CERAMIC_CAPACITOR 100n 50V, CERAMIC_CAPACITOR 100n 100V, READ_THE_RATING",
    "RESISTOR 1k 5%, RESISTOR 1k 1%, KEEP_IN_ITS_BAG",
    "RESISTOR 10k, TRIMMER 10k, COUNT_THE_LEADS",
    "TRIMMER 10k, TRIMMER 20k, READ_THE_NUMBER",
    "RESISTOR 10k, INDUCTOR 10m, KIND_BY_OHMS",
    "CERAMIC_CAPACITOR 10n, INDUCTOR 10m, KIND_BY_OHMS",
    "CERAMIC_CAPACITOR 10n, DIODE 1N4148, READ_THE_NUMBER",
    "DIODE 1N4148, DIODE 1N4007, READ_THE_NUMBER",
    "LED red, LED green, LIGHT_IT",
    "LED red, DIODE 1N4148, KEEP_IN_ITS_BAG",
    "DIODE 1N4148, LED red, KEEP_IN_ITS_BAG",
  })
  void the_test_is_the_one_that_a_person_with_a_meter_and_a_lens_can_do(
      String one, String other, Test test) {
    assertEquals(test, pair(one, other).separation().test());
  }

  @ParameterizedTest
  @CsvSource({
    "RESISTOR 1k, RESISTOR 4k7, 4.7",
    "RESISTOR 4k7, RESISTOR 1k, 4.7",
    "RESISTOR 0R, RESISTOR 1k, 1",
    "RESISTOR 1k, RESISTOR 0R, 1",
    "RESISTOR 1k, CERAMIC_CAPACITOR 1n, 1",
    "DIODE 1N4148, RESISTOR 1k, 1",
    "RESISTOR 1k, DIODE 1N4148, 1",
  })
  void values_of_one_dimension_are_so_many_times_apart(String one, String other, double ratio) {
    assertEquals(ratio, pair(one, other).ratio(), 1e-12);
  }

  @ParameterizedTest
  @CsvSource({
    "DIODE 1N4148, DIODE 1N4007, DIODE 1N4148",
    "RESISTOR 1k, DIODE 1N4148, DIODE 1N4148",
    "DIODE 1N4148, RESISTOR 1k, DIODE 1N4148",
  })
  void the_worse_place_is_named_and_the_first_where_both_are_as_bad(
      String one, String other, String worse) {
    assertEquals(type(worse), pair(one, other).worsePlace().type());
  }

  /** Names and bodies of two parts, and the body that they share; none when they don't. */
  @ParameterizedTest
  @CsvSource({
    "MOSFET, TO-220, 'TO-220, standing', REGULATOR, TO-220, 'TO-220, lying', TO-220",
    "MOSFET, TO-220, TO-220, MOSFET, TO-92, TO-92, ''",
    "INTEGRATED_CIRCUIT, DIP-8, dual in-line, OPTOCOUPLER, DIP-8, dual in-line,"
        + " 'dual in-line, 8 pins'",
    "INTEGRATED_CIRCUIT, DIP-8, dual in-line, OPTOCOUPLER, DIP-6, dual in-line, ''",
    "DIODE, DO-41, axial, SWITCH, axial, axial, ''",
    "SWITCH, axial, axial, DIODE, DO-41, axial, ''",
  })
  void parts_that_only_their_print_tells_apart_share_a_body(
      PartKind one,
      String onePackage,
      String oneBody,
      PartKind other,
      String otherPackage,
      String otherBody,
      String shared) {
    Kit kit =
        SampleBoards.kit(
            SampleBoards.board("b")
                .part("P1", one, "number 1", onePackage, "")
                .part("P2", other, "number 2", otherPackage, "")
                .outline("P1", body(oneBody))
                .outline("P2", body(otherBody)));
    assertEquals(
        shared.isEmpty() ? List.of() : List.of(new Likeness.SameBody(shared)),
        LookAlikes.in(kit).stream().map(LookAlike::likeness).toList());
  }

  private static BodyOutline body(String name) {
    return new BodyOutline(name, 5, 0, 10, 5, 0, 2, Source.computed("test"));
  }

  private static LookAlike pair(String one, String other) {
    return LookAlike.of(
        compartment(1, one), compartment(2, other), new Likeness.SameValue(), METER);
  }

  private static Compartment compartment(int number, String words) {
    List<Compartment> all = Compartments.of(new SmallKit().item(type(words), "P1").kit());
    Compartment only = all.get(0);
    return new Compartment(
        number,
        only.type(),
        only.uses(),
        only.quantity(),
        only.outline(),
        only.roles(),
        only.descriptions());
  }

  /** A kind and, after a blank, a value or a number. */
  private static PartType type(String words) {
    PartKind kind = PartKind.valueOf(words.substring(0, words.indexOf(' ')));
    String text = words.substring(words.indexOf(' ') + 1);
    return switch (kind) {
      case RESISTOR, TRIMMER -> SmallKit.valued(kind, Dimension.RESISTANCE, text);
      case CERAMIC_CAPACITOR -> SmallKit.valued(kind, Dimension.CAPACITANCE, text);
      case INDUCTOR -> SmallKit.valued(kind, Dimension.INDUCTANCE, text);
      default -> SmallKit.numbered(kind, text);
    };
  }
}
