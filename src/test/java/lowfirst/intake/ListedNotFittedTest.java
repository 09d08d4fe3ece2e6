package lowfirst.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import lowfirst.board.Item;
import lowfirst.problem.Kind;
import lowfirst.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a placement list says about fitting, where the BOM says otherwise. */
class ListedNotFittedTest {
  private static final String BOM = "ref,qty,value\n\"R1, R2\",2,10k\nC1,1,100n\n";

  @ParameterizedTest(name = "{0}: {1} and {2}")
  @CsvSource({
    "DNP, '', x, R2",
    "DNP, no, DNP, R2",
    "DNP, x, 1, 'R1, R2'",
    "Fitted, yes, no, R2",
    "Populate, 1, 0, R2",
    "Fitted, yes, '', ''",
    "Value, 10k, 10k DNP, R2",
    "Value, 10k (not fitted), 10k, R1",
    "Value, 10k, 10k, ''",
    "Side, top, bottom, ''",
  })
  void what_the_list_leaves_out_and_the_bom_fits_is_said(
      String header, String first, String second, String named) {
    String list = "ref,x mm,y mm,%s%nR1,1,2,%s%nR2,30,2,%s%n".formatted(header, first, second);
    List<Problem> said = said(BOM, list);
    assertEquals(named.isEmpty() ? 0 : 1, said.size());
    if (!named.isEmpty()) {
      boolean one = named.indexOf(',') < 0;
      assertEquals(
          "this list says that "
              + named
              + (one
                  ? " is not fitted, but the BOM fits it, and counts"
                  : " are not fitted, but the BOM fits them, and counts"),
          said.get(0).message());
      assertEquals("placements.csv", said.get(0).place().file());
      assertEquals(named.startsWith("R1") ? 2 : 3, said.get(0).place().line());
    }
  }

  @Test
  void where_the_bom_leaves_it_out_too_nothing_is_said() {
    String list = "ref,x mm,y mm,DNP\nR1,1,2,\nR2,30,2,\nC1,60,2,x\n";
    assertEquals(List.of(), said(BOM.replace("100n", "100n DNP"), list));
    assertEquals(List.of(), said(BOM.replace("C1,1,100n\n", ""), list));
    assertEquals(1, said(BOM, list).size());
  }

  @ParameterizedTest(name = "bom.csv: {0}")
  @ValueSource(strings = {"ref,value\nR1,1k\n", ""})
  void what_the_list_leaves_out_and_no_bom_names_is_not_fitted_and_that_is_said(String bom) {
    String list = "ref,value,x mm,y mm\nR1,1k,1,2\nR2,DNP,30,2\nJ3,header (DNP),60,2\n";
    KitReading reading =
        bom.isEmpty()
            ? KitTables.read("placements.csv", list)
            : KitTables.read("bom.csv", bom, "placements.csv", list);
    assertEquals(
        List.of("[R1]"),
        reading.kit().boards().get(0).items().stream()
            .filter(Item::isFitted)
            .map(item -> item.designators().toString())
            .toList());
    assertEquals(
        List.of(
            "R2 has a position, but its row says it is not fitted",
            "J3 has a position, but its row says it is not fitted"),
        reading.problems().stream()
            .filter(problem -> problem.kind() == Kind.PLACED_BUT_NOT_FITTED)
            .map(Problem::message)
            .toList());
  }

  @ParameterizedTest(name = "{0} parts")
  @CsvSource({"6, ''", "7, ' and 1 more'", "8, ' and 2 more'"})
  void of_many_six_are_named(int parts, String more) {
    var bom = new StringBuilder("ref,value\n");
    var list = new StringBuilder("ref,x mm,y mm,DNP\n");
    for (int i = 1; i <= parts; i++) {
      bom.append("R").append(i).append(",1k\n");
      list.append("R").append(i).append(",").append(20 * i).append(",2,x\n");
    }
    assertEquals(
        "this list says that R1, R2, R3, R4, R5, R6"
            + more
            + " are not fitted, but the BOM fits them, and counts",
        said(bom.toString(), list.toString()).get(0).message());
  }

  private static List<Problem> said(String bom, String list) {
    return KitTables.read("bom.csv", bom, "placements.csv", list).problems().stream()
        .filter(problem -> problem.kind() == Kind.OPTIONAL_PART)
        .toList();
  }
}
