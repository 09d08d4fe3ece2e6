package lowfirst.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import lowfirst.board.Item;
import lowfirst.board.Item.Fitting;
import lowfirst.problem.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lists among notes: headings over them (CommonMark, ATX headings), and rows about other rows. */
class NotesTest {

  /** No table counts its parts, and one blank column stands before the first bar of each row. */
  private static final String TABLES =
      """
      # Bells

      ## Fitted
      | Ref | Value |
      |---|---|
      | R1 | 10k |
      | R2 | 22k |

      ## %s
      | Ref | Value |
      |---|---|
      | R3 | 10k |
      | C4 | 100n |

      ## Connectors
      | Ref | Value |
      |---|---|
      | J1 | header 2 |
      """;

  private static final String BULLETS =
      """
      # Bells

      - R1: 10k
      - R2: 22k

      ## %s ##
      - R3: 10k
      - C4: 100n

      ## Connectors
      - J1: header 2
      """;

  @ParameterizedTest
  @CsvSource({
    "Not fitted, NOT_FITTED",
    "DNP, NOT_FITTED",
    "Optional, OPTIONAL",
    "Spare parts, FITTED",
  })
  void a_heading_of_notes_tells_of_the_parts_below_it(String heading, Fitting fitting) {
    var expected =
        List.of("[R1] FITTED", "[R2] FITTED", "[R3] " + fitting, "[C4] " + fitting, "[J1] FITTED");
    assertEquals(expected, read(KitTables.read("bom.md", TABLES.formatted(heading))));
    assertEquals(expected, read(KitTables.read("bom.md", BULLETS.formatted(heading))));
  }

  @ParameterizedTest
  @CsvSource({"# DNP, NOT_FITTED", "## not fitted, NOT_FITTED", "# 1 % film, FITTED"})
  void a_comment_in_a_table_heads_rows_only_where_it_leaves_them_out(
      String comment, Fitting fitting) {
    String bom = "Ref,Value,Package\nR1,10k,0207\n%s\nR2,22k,0207\n".formatted(comment);
    assertEquals(List.of("[R1] FITTED", "[R2] " + fitting), read(KitTables.read("bom.csv", bom)));
  }

  @Test
  void a_row_that_goes_on_about_the_part_above_is_no_part() {
    KitReading reading =
        KitTables.read(
            "bom.csv",
            """
            Ref,Part,Qty,Remark
            R1,10k,1,
            ,or 9k1,,if there is none
            Q1,IRF540N,1,
            ,oder IRFZ44N,,
            ,Oregon pine panel,1,
            """);
    assertEquals(List.of("[R1] FITTED", "[Q1] FITTED", "[] FITTED"), read(reading));
    assertEquals(
        2, reading.problems().stream().filter(it -> it.kind() == Kind.OPTIONAL_PART).count());
  }

  private static List<String> read(KitReading reading) {
    return reading.kit().boards().get(0).items().stream().map(NotesTest::shown).toList();
  }

  private static String shown(Item item) {
    return item.designators() + " " + item.fitting();
  }
}
