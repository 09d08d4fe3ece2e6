package lowfirst.intake.xml;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Numbers after XML Schema part 2, 3.2.5: double; those that are no length are left out. */
class XmlNumberTest {

  @ParameterizedTest
  @CsvSource({"12.5, 12.5", "-1, -1", "+3, 3", "1e3, 1000", "25E-1, 2.5", ".5, 0.5", "007, 7"})
  void a_number_has_a_sign_a_point_and_an_exponent(String text, double number) {
    assertEquals(OptionalDouble.of(number), XmlNumber.in(text));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "", "1,5", "1 000", "1d", "0x1p3", "NaN", "INF", "1e400", "e", "1e", "--1", "1.2.3"
      })
  void other_texts_are_none(String text) {
    assertEquals(OptionalDouble.empty(), XmlNumber.in(text));
  }

  @ParameterizedTest(name = "{0} digits")
  @CsvSource({"40, true", "41, false"})
  void a_number_has_forty_signs_at_most(int signs, boolean number) {
    assertEquals(number, XmlNumber.in("0".repeat(signs - 1) + "1").isPresent());
  }
}
