package lowfirst.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lowfirst.problem.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lists of a part a line, and texts without a header that are none. Readings are by hand. */
class PartLinesTest {
  private static List<String> parts(String bom) {
    return KitTables.read("bom.txt", bom).kit().boards().get(0).items().stream()
        .map(i -> i.quantity() + " " + i.designators() + " " + i.partType().text())
        .toList();
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "R2 = 10k, 1 [R2] 10k",
    "R2: 10k, 1 [R2] 10k",
    "R2 -> 10k, 1 [R2] 10k",
    "R2 => 10k, 1 [R2] 10k",
    "R2 – 10k, 1 [R2] 10k",
    "R2 10k, 1 [R2] 10k",
    "- R2 - 10k, 1 [R2] 10k",
    "'2) R2, R3 - 10k', '2 [R2, R3] 10k'",
    "'R2, R3 10k', '2 [R2, R3] 10k'",
    "'R2 R3 10k', '2 [R2, R3] 10k'",
    "'R2, R3, C4: see text', '3 [R2, R3, C4] see text'",
    "'R2 and R3 = 10k', '2 [R2, R3] 10k'",
    "'R2-R4 10k', '3 [R2, R3, R4] 10k'",
    "'R2 - R4 : 10k', '3 [R2, R3, R4] 10k'",
    "'R2-4: 10k', '3 [R2, R3, R4] 10k'",
    "'R2 - 100', '1 [R2] 100'",
    "'R2 - R47', '46 [R2'",
    "Q2 - BC547, 1 [Q2] BC547",
    "Q2 BC547, 1 [Q2] BC547",
    "U2 LM358 op-amp, 1 [U2] LM358 op-amp",
    "'2x R2, R3 10k', '2 [R2, R3] 10k'",
    "'2 R2, R3 10k', '2 [R2, R3] 10k'",
    "'(2) R2, R3: 10k', '2 [R2, R3] 10k'",
    "'R2, R3: 2 x 10k', '2 [R2, R3] 10k'",
    "'3x R2, R3 10k', '3 [R2, R3] 10k'"
  })
  void designators_stand_first(String line, String part) {
    String read = parts("R1 = 1k\n" + line + "\nC1 = 1n\nC2 = 2n2\n").get(1);
    assertTrue(read.startsWith(part), read);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "'10k R2, R3', '2 [R2, R3] 10k'",
    "'10 k R2', '1 [R2] 10 k'",
    "'100 R2', '1 [R2] 100'",
    "'2x 10k R2, R3', '2 [R2, R3] 10k'",
    "'2 10k R2, R3', '2 [R2, R3] 10k'",
    "'10k (R2, R3)', '2 [R2, R3] 10k'",
    "'10k - R2 / R3', '2 [R2, R3] 10k'",
    "'10k: R2-R4', '3 [R2, R3, R4] 10k'",
    "'BC547 Q2', '1 [Q2] BC547'",
    "'4 pin header, 2.54 mm J2', '1 [J2] 4 pin header, 2.54 mm'"
  })
  void or_last(String line, String part) {
    assertEquals(part, parts("1k R1\n" + line + "\n1n C1\n2n2 C2\n").get(1));
  }

  @Test
  void a_designator_without_words_is_a_part_without_a_value() {
    String bom = "C1 -> 10n\nC2 ->\nR1 -> 1k\nR2_A0 ->\n";
    assertEquals(List.of("1 [C1] 10n", "1 [C2] ", "1 [R1] 1k", "1 [R2_A0] "), parts(bom));
    assertEquals(
        List.of(2, 4),
        KitTables.read("bom.txt", bom).problems().stream()
            .filter(problem -> problem.kind() == Kind.VALUE_NOT_UNDERSTOOD)
            .map(problem -> problem.place().line())
            .toList());
  }

  @Test
  void where_a_part_stands_in_words_behind_no_value_is_made_of_its_name() {
    String bom = "C1 above U3\nC2 10n\nR1 see R47\nR2 R47\n";
    assertEquals(
        List.of("", "10 nF", "", "470 mΩ"),
        KitTables.read("bom.txt", bom).kit().boards().get(0).items().stream()
            .map(item -> item.partType().value().map(Object::toString).orElse(""))
            .toList());
  }

  @Test
  void even_columns_are_surer() {
    assertEquals(
        List.of("1 [R1] 10k", "2 [R2, R3] 22k", "1 [C1] 1n"),
        parts("R1;10k;0207\nR2 R3;22k;0207\nC1;1n;disc\n"));
    assertEquals(
        List.of("1 [R1] 100", "1 [R2] 220", "1 [R3] 470"), parts("R1,100\nR2,220\nR3,470\n"));
    String columns = "R1      10k     DIN0207\nR2      22k     DIN0207\nC1      1n      disc\n";
    assertEquals(List.of("1 [R1] 10k", "1 [R2] 22k", "1 [C1] 1n"), parts(columns));
  }

  @Test
  void prose_is_no_list() {
    String prose = "R1 sets the gain.\nTurn it first.\nThen look at C3.\nThe lamp goes on.\n";
    assertEquals(List.of(), parts(prose));
  }

  @Test
  void of_parts_side_by_side_nothing_is_guessed() {
    String bom = "R1 4.7K | D1 1N5817 | Q1 2N3903\nR2 10K  | C1 4.7UF  | \nR3 470K | C2 100N | \n";
    assertEquals(List.of(), parts(bom));
    assertTrue(
        KitTables.problems(KitTables.read("bom.txt", bom)).stream()
            .anyMatch(problem -> problem.contains("bom.txt:1: several parts stand side by side")));
  }

  @Test
  void a_body_at_the_end_of_a_line_names_no_part() {
    assertEquals(
        List.of("1 [C1] 1u", "1 [D1] 1N4148", "1 [R1] 10k"),
        parts("1x 1u C1\n1x 1N4148 D1\n1x 10k R1\nU$3 AB2302 AB2302 SOT23\n").stream()
            .limit(3)
            .toList());
    assertTrue(
        parts("1x 1u C1\n1x 1N4148 D1\n1x 10k R1\nU$3 AB2302 AB2302 SOT23\n").stream()
            .noneMatch(part -> part.contains("[SOT23]")));
  }
}
