package lowfirst.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.OptionalDouble;
import lowfirst.board.Board;
import lowfirst.board.Designator;
import lowfirst.part.BodyOutline;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the cells of a BOM line tell of a body. */
class OutlinesFoundTest {

  /** Heights of size 0207 and 0617 as in the package table. */
  @ParameterizedTest
  @CsvSource({
    "4k7 0.25W, '', '', 2.5",
    "4k7, '', '', 2.5",
    "4R7 3W, '', '', ",
    "4R7 3W, axial, '', ",
    "4R7 3W, 0617, '', 6.0",
    "4R7 3W, '', 6.5, 6.5",
  })
  void a_power_resistor_has_the_height_that_is_told_and_no_assumed_one(
      String value, String packageName, String height, Double expected) {
    Board board =
        KitTables.read(
                "bom.csv",
                "designators,value,package,height mm\nR1,%s,%s,%s\n"
                    .formatted(value, packageName, height))
            .kit()
            .boards()
            .get(0);
    OptionalDouble found =
        board
            .outlineOf(Designator.of("R1"))
            .map(BodyOutline::height)
            .orElse(OptionalDouble.empty());
    assertEquals(expected == null ? OptionalDouble.empty() : OptionalDouble.of(expected), found);
  }
}
