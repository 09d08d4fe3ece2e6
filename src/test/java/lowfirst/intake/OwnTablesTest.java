package lowfirst.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import lowfirst.board.Kit;
import lowfirst.board.Load;
import lowfirst.board.OutputChannel;
import lowfirst.board.OutputChannel.PullDownSide;
import lowfirst.board.OutputChannel.TraceLayer;
import lowfirst.board.Rail;
import lowfirst.part.DatasheetLine;
import lowfirst.problem.Kind;
import lowfirst.problem.Problem;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Source;
import lowfirst.quantity.Sourced;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The tables that a kit's author writes: what a cell may hold, and what is made of it. */
class OwnTablesTest {
  private static final String BOM = "designators,value\n\"R1, R2, Q1, D1, F1\",1k\n";

  // --- amounts

  /** A column of loads.csv, what stands in it, and the fault; empty where it is read. */
  @ParameterizedTest(name = "{0} {1}")
  @CsvSource({
    "resistance, 12 Ω, ''",
    "resistance, 0, OUT_OF_RANGE",
    "resistance, -12, OUT_OF_RANGE",
    "resistance, 12 A, UNIT_UNKNOWN",
    "resistance, low, CELL_UNREADABLE",
    "resistance, n/a, ''",
    "tolerance, 0, ''",
    "tolerance, -1 %, OUT_OF_RANGE",
    "duty, 100 %, ''",
    "duty, 100.1 %, OUT_OF_RANGE",
    "duty, 0, OUT_OF_RANGE",
    "switch-ons, 1, ''",
    "switch-ons, 0, CELL_UNREADABLE",
    "switch-ons, 1.5, CELL_UNREADABLE",
  })
  void an_amount_of_a_load_is_read_or_said_where_it_stands(
      String column, String text, String kind) {
    KitReading reading =
        KitTables.read("loads.csv", "load,kind," + column + "\nbell,solenoid," + text + "\n");
    List<Problem> found =
        reading.problems().stream().filter(p -> p.place().file().equals("loads.csv")).toList();
    assertEquals(
        kind.isEmpty() ? List.of() : List.of(Kind.valueOf(kind) + " 2 3"),
        found.stream()
            .map(p -> p.kind() + " " + p.place().line() + " " + p.place().column())
            .toList());
    assertEquals(1, reading.kit().loads().size(), "the rest of the row counts");
  }

  @ParameterizedTest(name = "{0} {1}")
  @CsvSource({
    "inductance mH, 30, 30 mH",
    "inductance (mH), 30, 30 mH",
    "inductance in mH, 30, 30 mH",
    "inductance_mH, 30, 30 mH",
    "'inductance, mH', 30, 30 mH",
    "inductance (mH), 0.03 H, 0.03 H",
    "Inductance [µH], 30, 30 µH",
    "inductance, 30 mH, 30 mH",
    "inductance H, 0.03, 0.03 H",
  })
  void a_header_of_a_kits_own_table_carries_any_unit(String header, String cell, String amount) {
    Load load = load(header, cell);
    assertEquals(
        Quantity.parse(amount, Dimension.INDUCTANCE).value(),
        load.inductance().map(Sourced::quantity));
  }

  @Test
  void a_column_that_a_table_about_channels_does_not_have_is_said() {
    KitReading reading =
        KitTables.read("rails.csv", "rail,voltage,Isc,,note\na,24 V,90,,thin wire\n");
    assertEquals(
        List.of("1 3", "1 5"),
        reading.problems().stream()
            .filter(problem -> problem.kind() == Kind.COLUMN_NOT_USED)
            .map(problem -> problem.place().line() + " " + problem.place().column())
            .toList());
    KitReading bag = KitTables.read("bag.csv", "part type,quantity,shelf\n1k,3,left\n");
    assertEquals(0, count(bag, Kind.COLUMN_NOT_USED), "what nobody judges by");
  }

  @Test
  void units_in_headers_hold_for_each_kind_of_amount() {
    assertEquals(0.25, load("on time ms", "250").onTime().orElseThrow().asDouble());
    assertEquals(40, load("temperature rise K", "40").temperatureRise().orElseThrow().asDouble());
    assertEquals(4700, load("resistance kOhm", "4.7").resistance().orElseThrow().asDouble());
    assertEquals(25, load("rated duty %", "25").ratedDuty().orElseThrow().asDouble());
    assertEquals(1.5, load("inrush mA", "1500").inrush().orElseThrow().asDouble(), 1e-9);
    KitReading rail =
        KitTables.read("rails.csv", "rail,short-circuit current kA,return length cm\na,1.2,30\n");
    Rail read = rail.kit().rails().get(0);
    assertEquals(1200, read.shortCircuitCurrent().orElseThrow().asDouble(), 1e-9);
    assertEquals(300, read.returnLength().orElseThrow().asDouble(), 1e-9);
    KitReading driver = KitTables.read("drivers.csv", "driver,high level min\npin,4.6\n");
    assertEquals(
        4.6, driver.kit().drivers().get(0).highLevelMin().orElseThrow().asDouble(), "no minutes");
  }

  /** An amount of another kind is no bare number: 50 W limit no current to 50 A. */
  @ParameterizedTest
  @ValueSource(strings = {"inrush W", "inrush (ms)", "inrush kohm"})
  void a_unit_of_something_else_in_a_header_is_said_at_each_cell(String header) {
    KitReading reading =
        KitTables.read("loads.csv", "load,kind," + header + "\nbell,solenoid,50\n");
    assertEquals(1, count(reading, Kind.UNIT_UNKNOWN));
    assertEquals(Optional.empty(), reading.kit().loads().get(0).inrush());
  }

  private static Load load(String header, String cell) {
    KitReading reading =
        KitTables.read("loads.csv", "load,kind,\"" + header + "\"\nbell,solenoid," + cell + "\n");
    return reading.kit().loads().get(0);
  }

  /** A fuse breaks every short of a supply that gives nothing. */
  @Test
  void a_supply_or_a_contact_of_no_current_is_a_fault_and_counts_as_unstated() {
    KitReading reading =
        KitTables.read(
            "rails.csv",
            "rail,voltage,current limit,short-circuit current,contact rating\nbells,24 V,0 A,0,0\n",
            "channels.csv",
            "channel,contact rating\n1,0 A\n");
    assertEquals(4, count(reading, Kind.OUT_OF_RANGE));
    Rail rail = reading.kit().rails().get(0);
    assertEquals(
        List.of(Optional.empty(), Optional.empty(), Optional.empty()),
        List.of(rail.currentLimit(), rail.shortCircuitCurrent(), rail.contactRating()));
    assertEquals(Optional.empty(), reading.kit().channels().get(0).contactRating());
  }

  @Test
  void each_column_of_a_load_goes_where_it_belongs() {
    Load load =
        KitTables.read(
                "loads.csv",
                "load,kind,rail,current,resistance,power,inductance,on time,period,inrush,"
                    + "inrush time,duty,max on time,pull-in voltage,rated duty,tolerance,"
                    + "temperature rise,switch-ons\n"
                    + "bell,coil,bells,2 A,12 Ω,48 W,30 mH,40 ms,2 s,5 A,7 ms,10 %,90 ms,18 V,25 %,"
                    + "6 %,80 K,1000\n")
            .kit()
            .loads()
            .get(0);
    assertEquals("bell SOLENOID bells", load.name() + " " + load.kind() + " " + load.rail());
    assertEquals(
        List.of(
            "2 A", "12 Ω", "48 W", "30 mH", "40 ms", "2 s", "5 A", "7 ms", "10 %", "90 ms", "18 V",
            "25 %", "6 %", "80 K"),
        shown(
            List.of(
                load.current(),
                load.resistance(),
                load.power(),
                load.inductance(),
                load.onTime(),
                load.period(),
                load.inrush(),
                load.inrushTime(),
                load.duty(),
                load.maxOnTime(),
                load.pullInVoltage(),
                load.ratedDuty(),
                load.tolerance(),
                load.temperatureRise())));
    assertEquals(OptionalInt.of(1000), load.switchOns());
  }

  @Test
  void a_bare_number_is_in_the_unit_of_its_header_and_cites_its_cell() {
    Rail rail =
        KitTables.read("rails.csv", "rail,voltage,current limit (A)\nbells,24 V,20\n")
            .kit()
            .rails()
            .get(0);
    Sourced limit = rail.currentLimit().orElseThrow();
    assertEquals("20 A", limit.quantity().toString());
    assertTrue(limit.source().text().startsWith("rails.csv:2"), limit.source().text());
    assertEquals(Source.Origin.KIT, limit.source().origin());
  }

  @ParameterizedTest
  @CsvSource({
    "Solenoid, SOLENOID",
    "LED strip, LED",
    "bulb, LAMP",
    "heater, RESISTIVE",
    "pump, MOTOR",
    "contactor, RELAY",
    "electromagnet, SOLENOID",
    "gadget, ''",
  })
  void a_kind_of_load_is_one_of_the_known(String text, String kind) {
    KitReading reading = KitTables.read("loads.csv", "load,kind\nbell," + text + "\n");
    assertEquals(
        kind.isEmpty() ? List.of() : List.of(Load.LoadKind.valueOf(kind)),
        reading.kit().loads().stream().map(Load::kind).toList());
    assertEquals(kind.isEmpty() ? 1 : 0, count(reading, Kind.CELL_UNREADABLE));
  }

  // --- channels

  @Test
  void each_column_of_a_channel_goes_where_it_belongs() {
    OutputChannel channel =
        channels(
                "channel,mosfet,gate resistor,pull-down,flyback diode,fuse,heatsink,driver,"
                    + "trace width,trace length,trace copper,contact rating,wire,wire length,"
                    + "wires together,load,ambient",
                "1,Q1,R1,R2,D1,F1,20 K/W,pin,2 mm,50 mm,35 µm,10 A,AWG 18,3 m,4,bell,50 °C")
            .get(0);
    assertEquals(
        "[Q1] [R1] [R2] [D1] [F1]",
        List.of(
                channel.mosfet(),
                channel.gateResistor(),
                channel.pullDown(),
                channel.flybackDiode(),
                channel.fuse())
            .stream()
            .map(part -> part.stream().toList().toString())
            .reduce((one, other) -> one + " " + other)
            .orElseThrow());
    assertEquals(
        List.of("20 K/W", "2 mm", "50 mm", "0.035 mm", "10 A", "3000 mm", "50 °C"),
        shown(
            List.of(
                channel.heatsink(),
                channel.traceWidth(),
                channel.traceLength(),
                channel.traceCopper(),
                channel.contactRating(),
                channel.wireLength(),
                channel.ambient())));
    assertEquals(
        "pin AWG 18 bell kit",
        String.join(" ", channel.driver(), channel.wire(), channel.load(), channel.board()));
    assertEquals(OptionalInt.of(4), channel.wiresTogether());
  }

  @ParameterizedTest
  @CsvSource({
    "gate, inner, GATE, INTERNAL",
    "Driver, Outer, DRIVER, EXTERNAL",
    "'', '', UNSTATED, UNSTATED",
    "?, -, UNSTATED, UNSTATED",
    "at the driver, bottom, DRIVER, EXTERNAL",
  })
  void a_side_of_the_pull_down_and_a_layer_of_the_track_are_known_words(
      String side, String layer, PullDownSide pullDown, TraceLayer trace) {
    OutputChannel channel =
        channels("channel,pull-down side,trace layer", "1," + side + "," + layer).get(0);
    assertEquals(pullDown, channel.pullDownSide());
    assertEquals(trace, channel.traceLayer());
  }

  /** Per cent or a share of one: 0.5 may be half the time, and 0.05 five per cent. */
  @ParameterizedTest
  @CsvSource({
    "duty, 50 %, 50 %, 0",
    "duty, 50, 50 %, 0",
    "duty, 0.5, nothing, 1",
    "duty, 1, nothing, 1",
    "duty, 1 %, 1 %, 0",
    "duty %, 0.5, 0.5 %, 0",
    "tolerance, 5, 5 %, 0",
    "tolerance, 1, 1 %, 0",
    "tolerance, ±5 %, 5 %, 0",
    "tolerance, +/-10%, 10 %, 0",
    "tolerance, 0.05, nothing, 1",
    "tolerance, 0.5 %, 0.5 %, 0",
    "tolerance, 0, 0 %, 0",
  })
  void a_share_without_its_sign_is_asked_for(
      String header, String cell, String shown, int questions) {
    KitReading reading =
        KitTables.read("loads.csv", "load,kind," + header + "\na,LED," + cell + "\n");
    assertEquals(questions, count(reading, Kind.UNIT_UNKNOWN));
    Load load = reading.kit().loads().get(0);
    assertEquals(
        List.of(shown), shown(List.of(header.startsWith("duty") ? load.duty() : load.tolerance())));
  }

  /** Wires from part to part; where a width is stated there is a track. */
  @ParameterizedTest
  @CsvSource({
    "none, '', NONE, nothing",
    "'', None, NONE, nothing",
    "Point to point, '', NONE, nothing",
    "2 mm, none, UNSTATED, 2 mm",
    "-, '', UNSTATED, nothing",
    "100 mil, '', UNSTATED, 2.54 mm",
    "100 mm, '', UNSTATED, nothing",
  })
  void a_channel_may_have_no_track(String width, String layer, TraceLayer trace, String shown) {
    OutputChannel channel =
        channels("channel,trace width,trace layer", "1," + width + "," + layer).get(0);
    assertEquals(trace, channel.traceLayer());
    assertEquals(List.of(shown), shown(List.of(channel.traceWidth())));
  }

  /** The contact alone has more; who means that there is none writes so. */
  @ParameterizedTest
  @CsvSource({
    "10 K/W, 10 K/W, 0",
    "0.1 K/W, 0.1 K/W, 0",
    "none, nothing, 0",
    "0, nothing, 1",
    "0.05 K/W, nothing, 1",
    "10 mK/W HS1, nothing, 1",
  })
  void a_heatsink_that_would_keep_all_heat_away_is_a_fault(String cell, String shown, int faults) {
    KitReading reading =
        KitTables.read("bom.csv", BOM, "channels.csv", "channel,heatsink\n1," + cell + "\n");
    assertEquals(faults, count(reading, Kind.OUT_OF_RANGE));
    assertEquals(List.of(shown), shown(List.of(reading.kit().channels().get(0).heatsink())));
  }

  @Test
  void other_words_for_side_and_layer_are_faults_and_leave_them_unstated() {
    KitReading reading =
        KitTables.read(
            "bom.csv", BOM, "channels.csv", "channel,pull-down side,trace layer\n1,left,third\n");
    assertEquals(2, count(reading, Kind.CELL_UNREADABLE));
    OutputChannel channel = reading.kit().channels().get(0);
    assertEquals(PullDownSide.UNSTATED, channel.pullDownSide());
    assertEquals(TraceLayer.UNSTATED, channel.traceLayer());
  }

  @ParameterizedTest
  @ValueSource(strings = {"\"Q1, Q2\"", "the big one"})
  void a_channel_has_one_mosfet(String cell) {
    KitReading reading =
        KitTables.read("bom.csv", BOM, "channels.csv", "channel,mosfet\n1," + cell + "\n");
    assertEquals(1, count(reading, Kind.DESIGNATOR_UNREADABLE));
    assertEquals(Optional.empty(), reading.kit().channels().get(0).mosfet());
  }

  @Test
  void every_part_of_a_channel_has_to_be_on_its_board() {
    KitReading reading =
        KitTables.read(
            "bom.csv",
            BOM,
            "channels.csv",
            "channel,mosfet,gate resistor,pull-down,flyback diode,fuse\n1,Q9,R9,R8,D9,F9\n");
    assertEquals(
        List.of(2, 3, 4, 5, 6),
        reading.problems().stream()
            .filter(p -> p.kind() == Kind.REFERENCE_UNKNOWN)
            .map(p -> p.place().column())
            .toList());
  }

  // --- names

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "rails.csv | rail,voltage | a,5 V",
        "drivers.csv | driver,kind | a,logic pin",
        "loads.csv | load,kind | a,lamp",
        "channels.csv | channel,load | a,",
      })
  void a_name_stands_once_in_its_table(String file, String header, String row) {
    String other = row.replaceFirst("a", "b");
    String table = header + "\n" + row + "\n" + other + "\n" + row + "\n";
    KitReading reading = KitTables.read("bom.csv", BOM, file, table);
    assertEquals(
        List.of(file + " 4"),
        reading.problems().stream()
            .filter(p -> p.kind() == Kind.NAME_TWICE)
            .map(p -> p.place().file() + " " + p.place().line())
            .toList());
  }

  @Test
  void the_same_name_may_stand_in_two_tables() {
    KitReading reading =
        KitTables.read(
            "rails.csv", "rail,voltage\na,5 V\n", "loads.csv", "load,kind,rail\na,lamp,a\n");
    assertEquals(0, count(reading, Kind.NAME_TWICE));
    assertEquals(0, count(reading, Kind.REFERENCE_UNKNOWN));
  }

  @ParameterizedTest
  @CsvSource({"8, 'r1, r2, r3, r4, r5, r6, r7, r8'", "9, 'r1, r2, r3, r4, r5, r6, r7, r8, ...'"})
  void up_to_eight_names_are_offered_for_one_that_is_unknown(int rails, String offered) {
    var table = new StringBuilder("rail,voltage\n");
    for (int i = rails; i > 0; i--) {
      table.append("r").append(i).append(",5 V\n");
    }
    KitReading reading =
        KitTables.read(
            "rails.csv", table.toString(), "loads.csv", "load,kind,rail\nbell,lamp,other\n");
    assertEquals(
        "write one of: " + offered,
        reading.problems().stream()
            .filter(p -> p.kind() == Kind.REFERENCE_UNKNOWN)
            .findFirst()
            .orElseThrow()
            .remedy());
  }

  // --- datasheets, bag, swaps

  @ParameterizedTest
  @CsvSource({
    "sheet 1, DATASHEET",
    "'', MEMORY",
    "From memory of an older sheet, MEMORY",
  })
  void a_datasheet_line_without_a_source_is_from_memory(String source, Source.Origin origin) {
    DatasheetLine line = datasheet("BP-1,RDSon,VGS=5V,,30,40 mΩ,mΩ," + source);
    assertEquals(origin, line.source().origin());
  }

  @Test
  void a_bare_value_has_the_rows_unit_and_another_its_own() {
    DatasheetLine line = datasheet("BP-1,RDSon,VGS=5V,-,30,0.04 Ω,mΩ,sheet 1");
    assertEquals(Optional.empty(), line.min());
    assertEquals("30 mΩ", line.typ().orElseThrow().toString());
    assertEquals("40 mΩ", line.max().orElseThrow().toString());
    assertEquals("VGS=5V", line.condition());
  }

  @Test
  void a_parts_list_is_read_like_datasheets_and_its_faults_stand_in_order() {
    String list = DATASHEETS + "BP-1,RDSon,,,30,,furlong,s\nBP-2,VF,,,1,,V,s\n,VF,,,1,,V,s\n";
    DrawerReader.Drawer drawer =
        DrawerReader.read("drawer.csv", list.getBytes(StandardCharsets.UTF_8));
    assertEquals(
        List.of("BP-2"), drawer.parts().lines().stream().map(DatasheetLine::partType).toList());
    assertEquals(
        List.of("UNIT_UNKNOWN 2", "CELL_EMPTY 4"),
        drawer.problems().stream().map(p -> p.kind() + " " + p.place().line()).toList());
  }

  @ParameterizedTest
  @CsvSource({
    "'BP-1,RDSon,,,30,,furlong,s', UNIT_UNKNOWN",
    "'BP-1,,,,30,,mΩ,s', CELL_EMPTY",
    "',RDSon,,,30,,mΩ,s', CELL_EMPTY",
    "'BP-1,RDSon,,,much,,mΩ,s', CELL_UNREADABLE",
  })
  void a_datasheet_line_that_cannot_be_read_is_said(String row, Kind kind) {
    KitReading reading = KitTables.read("datasheets.csv", DATASHEETS + row + "\n");
    assertEquals(1, count(reading, kind));
  }

  /** "500." of milliamperes is half an ampere; as amperes it would let a channel pass. */
  @ParameterizedTest
  @ValueSource(strings = {"500", "500.", "500.0", "'500,'"})
  void a_number_that_ends_in_its_point_has_no_unit_of_its_own(String text) {
    String cell = text.replace("'", "\"");
    assertEquals(
        0.5, datasheet("BP-1,IC,,,," + cell + ",mA,s").max().orElseThrow().asDouble(), 1e-12);
    Rail rail =
        KitTables.read(
                "rails.csv", "rail,voltage,return length (cm)\nbells,24 V,%s\n".formatted(cell))
            .kit()
            .rails()
            .get(0);
    assertEquals(5000, rail.returnLength().orElseThrow().asDouble(), 1e-9);
  }

  private static final String DATASHEETS = "part type,symbol,condition,min,typ,max,unit,source\n";

  private static DatasheetLine datasheet(String row) {
    return KitTables.read("datasheets.csv", DATASHEETS + row + "\n")
        .kit()
        .datasheets()
        .about("BP-1")
        .get(0);
  }

  @Test
  void a_line_of_the_bag_has_a_part_and_a_number_which_may_be_nought() {
    KitReading reading =
        KitTables.read(
            "bag.csv", "part,quantity,bag\n330R,0,A1\n1k,,A2\n2k,some,A3\n,4,A4\n4k7,12,\n");
    assertEquals(
        List.of("330R 0 A1", "4k7 12 "),
        reading.kit().bag().stream()
            .map(line -> line.text() + " " + line.quantity() + " " + line.bag())
            .toList());
    assertEquals(2, count(reading, Kind.CELL_EMPTY));
    assertEquals(1, count(reading, Kind.CELL_UNREADABLE));
  }

  @Test
  void a_swap_names_designators_and_what_is_fitted() {
    KitReading reading =
        KitTables.read(
            "bom.csv",
            BOM,
            "swaps.csv",
            "board,designators,fitted,reason,who,date\n"
                + "kit,\"R1, R2\",2k,sold out,Ada,2026-01-02\n"
                + ",R1,3k,,,\n,R9,3k,,,\nattic,R1,3k,,,\nkit,,3k,,,\nkit,R1,,,,\nkit,-,3k,,,\n");
    Kit kit = reading.kit();
    assertEquals(
        "kit [R1, R2] 2k sold out Ada 2026-01-02",
        kit.swaps().get(0).board()
            + " "
            + kit.swaps().get(0).designators()
            + " "
            + kit.swaps().get(0).fitted()
            + " "
            + kit.swaps().get(0).reason()
            + " "
            + kit.swaps().get(0).who()
            + " "
            + kit.swaps().get(0).date());
    assertEquals(
        List.of("R9 is on no board", "there is no board \"attic\" in boards.csv"),
        reading.problems().stream()
            .filter(p -> p.kind() == Kind.REFERENCE_UNKNOWN)
            .map(Problem::message)
            .toList());
    assertEquals(2, count(reading, Kind.CELL_EMPTY));
    assertEquals(1, count(reading, Kind.DESIGNATOR_UNREADABLE));
  }

  private static List<OutputChannel> channels(String header, String row) {
    return KitTables.read("bom.csv", BOM, "channels.csv", header + "\n" + row + "\n")
        .kit()
        .channels();
  }

  private static List<String> shown(List<Optional<Sourced>> amounts) {
    return amounts.stream()
        .map(amount -> amount.map(Sourced::quantity).map(Object::toString).orElse("nothing"))
        .toList();
  }

  private static long count(KitReading reading, Kind kind) {
    return reading.problems().stream().filter(problem -> problem.kind() == kind).count();
  }
}
