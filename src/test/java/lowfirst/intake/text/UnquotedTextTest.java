package lowfirst.intake.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import lowfirst.intake.column.Row;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Held to Commons CSV, which reads the same texts as a general-purpose library does. */
class UnquotedTextTest {

  private static final String SIGNS = "ab1;,\t\n\r \u00a0Ωé";

  private record Line(int number, List<String> cells) {}

  private static List<Line> ours(String text, char separator) {
    return UnquotedText.rows(text, separator).stream()
        .map(row -> new Line(row.line(), List.copyOf(row.cells())))
        .toList();
  }

  /** The library's records, without blanks around cells and without blank records. */
  private static List<Line> library(String text, char separator) throws IOException {
    CSVFormat format =
        CSVFormat.DEFAULT.builder().setDelimiter(separator).setIgnoreEmptyLines(false).get();
    var lines = new ArrayList<Line>();
    try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
      for (CSVRecord csv : parser) {
        List<String> cells =
            Stream.of(csv.values()).map(cell -> cell.replace('\u00a0', ' ').strip()).toList();
        if (cells.stream().anyMatch(cell -> !cell.isEmpty())) {
          // Nothing is quoted, so that each record is one line.
          lines.add(new Line((int) csv.getRecordNumber(), cells));
        }
      }
    }
    return lines;
  }

  @ParameterizedTest
  @CsvSource({"','", "';'", "'\t'"})
  void rows_and_cells_are_those_that_a_library_reads(char separator) throws IOException {
    var random = new Random(20261128);
    for (int i = 0; i < 5_000; i++) {
      var text = new StringBuilder();
      int length = random.nextInt(40);
      for (int at = 0; at < length; at++) {
        text.append(SIGNS.charAt(random.nextInt(SIGNS.length())));
      }
      assertEquals(
          library(text.toString(), separator), ours(text.toString(), separator), text.toString());
    }
  }

  @Test
  void a_row_of_many_cells_keeps_them_all() throws IOException {
    String text = "x,".repeat(100) + "last\n" + "y,".repeat(33);
    assertEquals(101, ours(text, ',').get(0).cells().size());
    assertEquals(library(text, ','), ours(text, ','));
  }

  @Test
  void a_cell_that_says_the_same_as_an_earlier_one_is_that_one() {
    List<Row> rows = UnquotedText.rows("R1,TO-220,top\nR2,TO-220,top", ',');
    assertSame(rows.get(0).cell(1), rows.get(1).cell(1));
    assertSame(rows.get(0).cell(2), rows.get(1).cell(2));
  }

  /** By String's hash, "Aa" and "BB" fall on one slot. */
  @Test
  void different_cells_on_one_slot_stay_different() {
    assertEquals("Aa".hashCode(), "BB".hashCode());
    assertEquals(
        List.of(new Line(1, List.of("Aa", "BB")), new Line(2, List.of("BB", "Aa"))),
        ours("Aa,BB\nBB,Aa", ','));
  }

  @Test
  void it_is_only_for_texts_without_quotes() {
    assertTrue(UnquotedText.is("R1,10k"));
    assertFalse(UnquotedText.is("\"R1, R2\",10k"));
  }
}
