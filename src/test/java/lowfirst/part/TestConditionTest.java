package lowfirst.part;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import lowfirst.part.RatedTemperature.Place;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers and words of a test condition, and up to which temperature a rating holds. */
class TestConditionTest {
  private static final AtomicInteger TIMES = new AtomicInteger();

  /** Texts read before are kept: blanks at its end make this one another, which says the same. */
  private static TestCondition readAnew(String condition) {
    return TestCondition.parse(condition + " ".repeat(TIMES.incrementAndGet()));
  }

  @ParameterizedTest
  @CsvSource({
    "VGS=10 pulsed, 10",
    "VGS=10 max, 10",
    "VGS=10 V pulsed, 10",
    "VGS=10000mV, 10",
    "VGS=10000 m, 10",
    "'vgs = 4,5 V', 4.5",
    "VGS=-10V, -10",
    "VGS=1e1V, 10",
    "VGS≥0.01kV, 10"
  })
  void a_prefix_stands_before_a_unit_or_alone_and_a_word_is_none(String condition, double volts) {
    TestCondition read = readAnew(condition);
    assertEquals(volts, read.value("VGS").orElseThrow(), 1e-12);
    assertEquals(volts, read.nearest("VGS").orElseThrow(), 1e-12);
    assertEquals(volts, read.farthest("vgs").orElseThrow(), 1e-12);
  }

  @ParameterizedTest
  @CsvSource({
    "IAS=5...10A, 5, 10",
    "IAS=10 A to 5 A, 5, 10",
    "IAS=1-5mA, 0.001, 0.005",
    "IAS=1 A - 5 mA, 0.005, 1",
    "IAS=500mA/1A, 0.5, 1",
    "IAS=1A and 2, 1, 2",
    "IAS=1k or 2 A, 2, 1000",
    "IAS=-4.5...-10A, -4.5, -10",
    "'IAS=-5...5A', -5, 5"
  })
  void of_a_range_there_are_two_ends_and_no_value(String condition, double near, double far) {
    TestCondition range = readAnew(condition);
    assertEquals(OptionalDouble.empty(), range.value("IAS"));
    assertEquals(near, range.nearest("IAS").orElseThrow(), 1e-12);
    assertEquals(far, range.farthest("IAS").orElseThrow(), 1e-12);
  }

  @Test
  void numbers_stand_beside_words_and_leave_them() {
    TestCondition read = readAnew("Pulsed, IC=10 mA, TJ=25...125 °C; per leg");
    assertEquals(Set.of("IC", "TJ"), read.names());
    assertEquals("Pulsed per leg", read.words());
    assertTrue(read.says("PER LEG"));
    assertFalse(read.says("both legs"));
    assertEquals(OptionalDouble.empty(), read.value("VCE"));
    assertEquals(OptionalDouble.empty(), read.nearest("VCE"));
    assertEquals(OptionalDouble.empty(), read.farthest("VCE"));
    assertEquals(Set.of(), readAnew("").names());
  }

  @Test
  void what_is_read_again_is_what_was_read_before() {
    String text = "IF=1A, TJ=25C" + " ".repeat(TIMES.incrementAndGet());
    assertSame(TestCondition.parse(text), TestCondition.parse(text));
  }

  /** Two symbols for each place, as makers write them; of several places the air counts. */
  @ParameterizedTest
  @CsvSource({
    "TA=75C, AIR, 75",
    "Tamb = 40 °C, AIR, 40",
    "TL=100C, LEADS, 100",
    "TT=110C, LEADS, 110",
    "TC=25C, CASE, 25",
    "Tmb=100C, CASE, 100",
    "'TC=100C, TA=25C', AIR, 25",
    "'TC=90C, TL=80C', LEADS, 80",
    "'TA=25...75C, TC=90C', CASE, 90"
  })
  void a_rating_holds_up_to_the_temperature_of_one_place(
      String condition, Place place, double celsius) {
    assertEquals(
        Optional.of(new RatedTemperature(place, celsius)),
        RatedTemperature.in(readAnew(condition)));
    assertEquals(place == Place.AIR, new RatedTemperature(place, celsius).isOfAir());
  }

  @ParameterizedTest
  @CsvSource({"''", "TJ=25C", "VGS=10V", "TA=25...75C"})
  void a_rating_without_one_is_of_no_place(String condition) {
    assertEquals(Optional.empty(), RatedTemperature.in(readAnew(condition)));
  }

  @ParameterizedTest
  @CsvSource({"AIR, TA", "LEADS, TL", "CASE, TC"})
  void a_place_has_its_usual_symbol(Place place, String symbol) {
    assertEquals(symbol, place.symbol());
  }
}
