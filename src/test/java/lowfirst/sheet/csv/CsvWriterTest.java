package lowfirst.sheet.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.StringReader;
import java.util.Arrays;
import java.util.List;
import lowfirst.sheet.document.Block;
import lowfirst.sheet.document.Block.Cell;
import lowfirst.sheet.document.Block.Table;
import lowfirst.sheet.document.Document;
import org.apache.commons.csv.CSVFormat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CsvWriterTest {

  private static Table table(String caption, List<String> headers, String... cells) {
    return new Table(
        caption,
        headers.stream().map(h -> new Table.Column(h, Table.Align.START, 1)).toList(),
        List.of(new Table.Row(Arrays.stream(cells).map(Cell::of).toList())));
  }

  @Test
  void all_tables_share_one_header_and_every_record_is_as_long() {
    var document =
        new Document(
            "Steps",
            "",
            List.of(
                new Block.Heading(2, "Batch 1"),
                table("Resistors", List.of("Step", "Reading (Ω)"), "1", "4.65 kΩ, 4.75 kΩ"),
                new Block.Heading(2, "Batch 2"),
                table("Diodes", List.of("Step", "Which way round"), "2", "ring to \"K\"")));
    assertEquals(
        "section,table,step,reading_ohm,which_way_round\r\n"
            + "Batch 1,Resistors,1,\"4.65 kΩ, 4.75 kΩ\",\r\n"
            + "Batch 2,Diodes,2,,\"ring to \"\"K\"\"\"\r\n",
        CsvWriter.write(document));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"=1+1", "+1+cmd|' /C calc'!A0", "-2+3", "@SUM(A1)", "\t=1", "\r=1", "＝1", "-(1)"})
  void a_cell_that_would_start_a_formula_is_made_harmless(String cell) {
    assertEquals("'" + cell, CsvWriter.harmless(cell));
  }

  @ParameterizedTest
  @ValueSource(strings = {"-12.5", "+5", "-1e-3", "-12 V", "+24V", "-", "-5 %", "R1-R4", "1-2"})
  void numbers_with_a_sign_stay_numbers(String cell) {
    assertEquals(cell, CsvWriter.harmless(cell));
  }

  @Test
  void what_was_written_reads_back() throws Exception {
    String cell = "a,\"b\"\r\nc; 'd' Ω µ";
    var document = new Document("T", "", List.of(table("", List.of("A"), cell)));
    try (var parser = CSVFormat.RFC4180.parse(new StringReader(CsvWriter.write(document)))) {
      assertEquals(cell, parser.getRecords().get(1).get(2));
    }
  }

  @ParameterizedTest
  @CsvSource({
    "Junction temperature (°C), junction_temperature_degc",
    "Width [mm], width_mm",
    "RDS(on) µΩ, rds_on_uohm",
    "Part type, part_type"
  })
  void headers_are_friendly_to_programs(String header, String name) {
    assertEquals(name, CsvWriter.machineName(header));
  }

  @Test
  void a_section_is_the_headings_above_and_a_new_chapter_ends_the_last_section() {
    var document =
        new Document(
            "T",
            "",
            List.of(
                new Block.Heading(2, "One"),
                table("t", List.of("A"), "1"),
                new Block.Heading(3, "deep"),
                table("", List.of("A"), "2"),
                new Block.Heading(2, "Two"),
                table("", List.of("A"), "a\u00a0b")));
    assertEquals(
        "section,table,a\r\nOne,t,1\r\nOne / deep,,2\r\nTwo,,a b\r\n", CsvWriter.write(document));
  }

  @Test
  void no_two_columns_have_one_name_and_none_is_without() {
    var document =
        new Document(
            "T",
            "",
            List.of(
                new Block.Heading(2, "One"),
                table("t", List.of("A", "a", "", "Section", "Table"), "1", "2", "3", "4", "5")));
    assertEquals(
        "section,table,a,a_2,column_3,section_4,table_5\r\nOne,t,1,2,3,4,5\r\n",
        CsvWriter.write(document));
  }

  @Test
  void a_document_without_tables_is_a_header() {
    assertEquals("section,table\r\n", CsvWriter.write(new Document("T", "", List.of())));
  }
}
