package lowfirst.sheet.check;

import static lowfirst.sheet.document.Said.assertSays;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import lowfirst.intake.KitReading;
import lowfirst.intake.table.Understanding;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;
import lowfirst.problem.Severity;
import lowfirst.sheet.document.Document;
import lowfirst.sheet.document.Said;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a check of the tables says. */
class CheckDocumentTest {
  private static final String BOM = "designators,quantity,value\nR1 R2,2,1k\nD1,1,DNP\n";
  private static final String PLACED =
      "designator,x mm,y mm,rotation,side\nR1,1,1,0,top\nR2,9,9,0,top\n";

  private static Kind kind(Severity severity) {
    return Stream.of(Kind.values())
        .filter(kind -> kind.severity() == severity)
        .findFirst()
        .orElseThrow();
  }

  private static Problem problem(Severity severity, Place place, String message) {
    return new Problem(kind(severity), place, message, "mend it");
  }

  private static KitReading with(KitReading reading, Problem... problems) {
    return new KitReading(reading.kit(), List.of(problems), reading.understood());
  }

  private static Document all(KitReading reading) {
    return CheckDocument.of(reading, CheckDocument.Extent.ALL);
  }

  private static KitReading clean() {
    return with(
        Said.reading(
            "kit.properties", "title = Clean\n", "bom.csv", BOM, "placements.csv", PLACED));
  }

  @Test
  void tables_that_agree_are_said_to_agree_with_their_counts() {
    Document document = all(clean());
    assertSays(document, "Check of Clean", "# Summary", "found: 0 faults, 0 cautions, 0 notes");
    String last = Said.lines(document).get(Said.lines(document).size() - 1);
    assertEquals(
        "The tables agree. This does not replace looking at the boards and the parts.", last);
    assertTrue(
        Said.lines(document).stream()
            .anyMatch(
                line ->
                    line.endsWith(
                            ": 2 BOM lines, 3 designators (1 not fitted), 2 parts to buy, 2 placements")
                        || line.endsWith(
                            ": 2 BOM lines, 3 designators, 3 parts to buy, 2 placements")),
        Said.lines(document).toString());
  }

  @Test
  void problems_stand_file_by_file_with_line_cell_and_remedy() {
    String longCell = "x".repeat(61);
    Document document =
        all(
            with(
                clean(),
                problem(Severity.FAULT, Place.ofCell("b.csv", 3, 2, "value", "1q"), "no value"),
                problem(Severity.CAUTION, Place.ofCell("b.csv", 4, 5, "", ""), "empty"),
                problem(Severity.NOTE, Place.ofLine("a.csv", 7), "odd"),
                problem(Severity.NOTE, Place.ofFile("a.csv"), "whole"),
                problem(Severity.FAULT, Place.ofCell("b.csv", 5, 2, "value", "a\tb\n"), "signs"),
                problem(Severity.FAULT, Place.ofCell("b.csv", 6, 2, "value", longCell), "long"),
                problem(
                    Severity.FAULT, Place.ofCell("b.csv", 7, 2, "value", "y".repeat(60)), "fits")));
    assertSays(
        document,
        "# a.csv",
        ":  | line | cell | what is wrong | what to do",
        "note |  |  | whole | mend it",
        "note | 7 |  | odd | mend it",
        "# b.csv",
        "fault | 3 | value: 1q | no value | mend it",
        "caution | 4 | column 5: (empty) | empty | mend it",
        "fault | 5 | value: a b  | signs | mend it",
        "fault | 6 | value: " + "x".repeat(57) + "... | long | mend it",
        "fault | 7 | value: " + "y".repeat(60) + " | fits | mend it",
        "found: 4 faults, 1 caution, 2 notes",
        "Look at the faults and cautions before you solder.");
  }

  @Test
  void of_many_of_a_kind_a_dozen_are_shown() {
    for (int count : List.of(12, 13, 14)) {
      var problems = new ArrayList<Problem>();
      for (int line = 1; line <= count; line++) {
        problems.add(problem(Severity.NOTE, Place.ofLine("a.csv", line), "odd " + line));
      }
      problems.add(problem(Severity.FAULT, Place.ofLine("a.csv", 99), "other"));
      KitReading reading = with(clean(), problems.toArray(new Problem[0]));
      Document first = CheckDocument.of(reading, CheckDocument.Extent.FIRST_OF_A_KIND);
      assertEquals(13, Said.rows(first, "").size());
      List<String> hidden =
          Said.lines(first).stream().filter(line -> line.contains("not shown")).toList();
      assertEquals(
          switch (count) {
            case 12 -> List.of();
            case 13 -> List.of("1 more of these kinds is not shown here; --csv shows all.");
            default -> List.of("2 more of these kinds are not shown here; --csv shows all.");
          },
          hidden);
      assertSays(first, "fault | 99 |  | other | mend it");
      assertEquals(count + 1, Said.rows(all(reading), "").size());
      assertFalse(Said.lines(all(reading)).stream().anyMatch(line -> line.contains("not shown")));
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "bom | There was nothing to compare: kit has no placements to hold its BOM against.",
        "placements | There was nothing to compare: kit has no BOM lines to hold its placement list"
            + " against.",
        "none | There was nothing to compare: the kit has no board.",
      })
  void what_cannot_be_compared_is_no_agreement(String tables, String words) {
    KitReading reading =
        switch (tables) {
          case "bom" -> Said.reading("bom.csv", BOM);
          case "placements" -> Said.reading("placements.csv", PLACED);
          default -> Said.reading("kit.properties", "title = x\n");
        };
    if (tables.equals("none") && !reading.kit().boards().isEmpty()) {
      words = "There was nothing to compare: kit has no BOM lines and no placements.";
    }
    assertSays(all(with(reading)), words);
    assertSays(
        all(with(reading, problem(Severity.FAULT, Place.ofFile("a"), "x"))),
        words + " Look at the faults and cautions before you solder.");
  }

  @Test
  void one_board_of_two_may_be_the_one_that_cannot_be_compared() {
    KitReading reading =
        Said.reading(
            "boards.csv",
            "board,count,bom,placements\na,3,bom.csv,p.csv\nb,1,bom.csv,\n",
            "bom.csv",
            "designators,quantity,value\nR1,1,1k\n",
            "p.csv",
            "designator,x mm,y mm,rotation,side\nR1,1,1,0,top\n");
    Document document = all(with(reading));
    assertSays(
        document,
        "a: 3 built, each with 1 BOM line, 1 designator, 1 part to buy, 1 placement",
        "b: 1 BOM line, 1 designator, 1 part to buy, 0 placements",
        "Not every board could be compared: b has no placements to hold its BOM against.");
  }

  // --- how a table was understood

  private static Understanding table(int headerLine) {
    return new Understanding(
        "bom.csv",
        "BOM",
        "UTF-8",
        "commas",
        headerLine,
        List.of(
            new Understanding.UnderstoodColumn(
                1, "Ref", "designators", "designators", "its header"),
            new Understanding.UnderstoodColumn(2, "Misc", "", "", "nothing")),
        List.of("decimal commas"),
        2,
        List.of(List.of("R1", "a text of twenty-four let"), List.of("R2")));
  }

  @Test
  void how_a_table_was_understood_stands_before_what_was_found() {
    var reading = new KitReading(clean().kit(), List.of(), List.of(table(3)));
    assertSays(
        CheckDocument.explained(reading, CheckDocument.Extent.ALL),
        "# How bom.csv was understood",
        "table: BOM",
        "encoding: UTF-8",
        "cells parted by: commas",
        "header: in line 3",
        "rows: 2",
        "taken: decimal commas",
        ": column | header | taken for | because of | first rows | to change it",
        "1 | Ref | designators | its header | R1 | R2 | --column designators=...",
        "2 | Misc | not used | nothing | a text of twenty-four... |  | ",
        "# Summary");
  }

  @ParameterizedTest
  @CsvSource({
    "3, header: in line 3",
    "0, header: none found",
    "-1, 'header: none needed, the standard names everything'",
  })
  void where_the_header_stands_is_told(int line, String words) {
    var reading = new KitReading(clean().kit(), List.of(), List.of(table(line)));
    assertSays(CheckDocument.explained(reading, CheckDocument.Extent.ALL), words);
  }
}
