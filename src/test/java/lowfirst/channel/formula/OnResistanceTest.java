package lowfirst.channel.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lowfirst.quantity.Source;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Two makers' lines of one type number, invented: A states 35 mΩ at 10 V up to 10 A and 50 mΩ at
 * 4.5 V up to 8 A, B states 40 mΩ at 10 V up to 6 A alone.
 */
class OnResistanceTest {
  private static final OnResistance.Line A_FULL = line("A", 10, 10, 0.035);
  private static final OnResistance.Line A_LOGIC = line("A", 4.5, 8, 0.050);
  private static final OnResistance.Line B_FULL = line("B", 10, 6, 0.040);

  private static OnResistance.Line line(String maker, double volts, double amps, double ohms) {
    return new OnResistance.Line(maker, volts, amps, ohms, ohms, Source.datasheet("test sheet"));
  }

  @ParameterizedTest(name = "{0} V, {1} A: {2} ohms")
  @CsvSource({
    // at its own voltage and current a line still holds, a hair beyond it does not
    "10,   10,    0.035",
    "12,   1,     0.035",
    "9.99, 5,     0.050",
    "4.5,  8,     0.050",
    "4.5,  8.01,  NaN",
    "10,   8.01,  0.035",
    "10,   10.01, NaN",
    "4.49, 1,     NaN",
  })
  void a_line_holds_from_its_gate_voltage_up_to_its_current(
      double volts, double amps, double ohms) {
    for (List<OnResistance.Line> lines :
        List.of(List.of(A_FULL, A_LOGIC), List.of(A_LOGIC, A_FULL))) {
      assertEquals(ohms, OnResistance.of(lines).earned(volts, amps).maxOhms());
    }
  }

  @ParameterizedTest(name = "{0} V, {1} A: {2} ohms")
  @CsvSource({"10, 6, 0.040", "10, 6.01, NaN", "9.99, 1, NaN"})
  void of_several_makers_each_must_earn_a_line_and_the_largest_counts(
      double volts, double amps, double ohms) {
    for (List<OnResistance.Line> lines :
        List.of(List.of(A_FULL, A_LOGIC, B_FULL), List.of(B_FULL, A_LOGIC, A_FULL))) {
      assertEquals(ohms, OnResistance.of(lines).earned(volts, amps).maxOhms());
    }
  }

  @ParameterizedTest(name = "{0} A: {1} V with A alone, {2} V with both")
  @CsvSource({
    "6,     4.5,      10",
    "8,     4.5,      Infinity",
    "8.01,  10,       Infinity",
    "10,    10,       Infinity",
    "10.01, Infinity, Infinity",
  })
  void the_least_gate_voltage_is_that_at_which_every_maker_has_a_line(
      double amps, double alone, double both) {
    assertEquals(alone, OnResistance.of(List.of(A_FULL, A_LOGIC)).leastGateVolts(amps));
    assertEquals(both, OnResistance.of(List.of(A_FULL, A_LOGIC, B_FULL)).leastGateVolts(amps));
  }

  @Test
  void without_a_line_nothing_is_specified() {
    OnResistance none = OnResistance.of(List.of());
    assertEquals(List.of(), none.lines());
    assertSame(OnResistance.NOT_SPECIFIED, none.earned(20, 0));
    assertTrue(Double.isNaN(none.leastGateVolts(0)));
    assertEquals(List.of(A_FULL), OnResistance.of(List.of(A_FULL)).lines());
  }
}
