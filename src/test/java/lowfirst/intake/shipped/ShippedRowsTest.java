package lowfirst.intake.shipped;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import lowfirst.part.BodyOutlines;
import lowfirst.part.DatasheetLine;
import lowfirst.part.PartKind;
import lowfirst.quantity.Source;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Rows of the tables that come with the program. */
class ShippedRowsTest {
  private static final String LINE = "part type,maker,symbol,condition,min,typ,max,unit,source\n";
  private static final String OUTLINE =
      "name,height mm,stand-off mm,length mm,width mm,pitch mm,pins,origin,source,other names,"
          + "usual for,assumed for\n";

  @Test
  void a_row_of_the_catalogue_has_its_numbers_in_its_unit() {
    DatasheetLine line = ShippedLine.of(row(LINE + "BP-1,M. Aker,RDSon,VGS = 5 V,,30,40,mΩ,doc 7"));
    assertEquals(
        "BP-1 M. Aker RDSon VGS = 5 V",
        String.join(" ", line.partType(), line.maker(), line.symbol(), line.condition()));
    assertEquals(Optional.empty(), line.min());
    assertEquals("30 mΩ", line.typ().orElseThrow().toString());
    assertEquals("40 mΩ", line.max().orElseThrow().toString());
    assertEquals(Source.datasheet("doc 7"), line.source());
  }

  @Test
  void what_is_from_memory_can_make_nothing_pass() {
    Source source =
        ShippedLine.of(row(LINE + "BP-1,Any,VF,,,1,,V,from memory of a sheet")).source();
    assertEquals(new Source(Source.Origin.MEMORY, "from memory of a sheet"), source);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "BP-1,,VF,,,1,,V,doc 7",
        "BP-1,Any,VF,,,1,,V,",
        "BP-1,Any,VF,,,1,,furlong,doc 7",
      })
  void a_row_that_lacks_maker_source_or_unit_stops_the_program(String row) {
    CSVRecord record = row(LINE + row);
    assertThrows(IllegalStateException.class, () -> ShippedLine.of(record));
  }

  @Test
  void a_row_of_the_package_table_has_its_measures_and_names() {
    BodyOutlines.Row read =
        ShippedOutline.of(
            row(OUTLINE + "box,10.5,0.5,7,5,5.08,2,standard,norm 1,crate|case,BX|BY,RELAY|FUSE"));
    assertEquals(OptionalDouble.of(10.5), read.outline().height());
    assertEquals(
        "box 0.5 7.0 5.0 5.08 2",
        read.outline().name()
            + " "
            + read.outline().standOffMillimetres()
            + " "
            + read.outline().lengthMillimetres()
            + " "
            + read.outline().widthMillimetres()
            + " "
            + read.outline().pitchMillimetres()
            + " "
            + read.outline().pins());
    assertEquals(List.of("crate", "case"), read.otherNames());
    assertEquals(List.of("BX", "BY"), read.usualFor());
    assertEquals(Set.of(PartKind.RELAY, PartKind.FUSE), read.assumedFor());
  }

  @Test
  void empty_cells_are_nothing_known() {
    BodyOutlines.Row read = ShippedOutline.of(row(OUTLINE + "box,,,,,,,memory,a guess,,,"));
    assertEquals(OptionalDouble.empty(), read.outline().height());
    assertEquals(Optional.empty(), read.outline().body());
    assertEquals(List.of(), read.otherNames());
    assertEquals(List.of(), read.usualFor());
    assertEquals(Set.of(), read.assumedFor());
  }

  @ParameterizedTest
  @CsvSource({
    "datasheet, DATASHEET",
    "standard, STANDARD",
    "computed, COMPUTED",
    "model, COMPUTED",
    "memory, MEMORY",
    "assumed, ASSUMED",
  })
  void a_measure_says_where_it_comes_from(String origin, Source.Origin read) {
    assertEquals(
        read,
        ShippedOutline.of(row(OUTLINE + "box,1,,,,,," + origin + ",words,,,"))
            .outline()
            .source()
            .origin());
  }

  @Test
  void another_origin_stops_the_program() {
    CSVRecord record = row(OUTLINE + "box,1,,,,,,hearsay,words,,,");
    assertThrows(IllegalStateException.class, () -> ShippedOutline.of(record));
  }

  private static CSVRecord row(String table) {
    try (var parser =
        CSVFormat.DEFAULT
            .builder()
            .setHeader()
            .setSkipHeaderRecord(true)
            .get()
            .parse(new StringReader(table))) {
      return parser.getRecords().get(0);
    } catch (IOException impossible) {
      throw new java.io.UncheckedIOException(impossible);
    }
  }
}
