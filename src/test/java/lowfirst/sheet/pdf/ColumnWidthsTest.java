package lowfirst.sheet.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How a width is shared out; every case worked out by hand. */
class ColumnWidthsTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // Too narrow for what the columns can't do without: all give up the same share, a half.
        "100 60 40 | 200 60 40 | 1 1 1 | 100 | 50 30 20",
        // Exactly the least widths.
        "50 30 20 | 200 60 40 | 1 1 1 | 100 | 50 30 20",
        // Room for everything: 40 are left and go out 1 to 3.
        "10 10 | 20 40 | 1 3 | 100 | 30 70",
        // Exactly the natural widths.
        "10 10 | 40 60 | 1 3 | 100 | 40 60",
        // Between: by weight, 1 to 3.
        "10 10 | 90 90 | 1 3 | 100 | 25 75",
        // By weight the first would get 10; it needs 30, so the others share 70 by 1 to 1.
        "30 5 5 | 60 90 90 | 1 4.5 4.5 | 100 | 30 35 35",
        // By weight the second would get 60; it takes no more than its 20, the rest goes out 1 to
        // 1.
        "5 5 5 | 90 20 90 | 1 3 1 | 100 | 40 20 40",
        // One column has it all.
        "10 | 400 | 0.01 | 100 | 100",
      })
  void a_width_is_shared_by_weight_between_least_and_natural(
      String least, String natural, String weight, double width, String shared) {
    assertArrayEquals(
        numbers(shared),
        ColumnWidths.of(numbers(least), numbers(natural), numbers(weight), width),
        1e-6);
  }

  private static double[] numbers(String text) {
    return Stream.of(text.split(" ")).mapToDouble(Double::parseDouble).toArray();
  }
}
