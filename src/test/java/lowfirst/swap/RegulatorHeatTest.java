package lowfirst.swap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import lowfirst.quantity.Quantity;
import lowfirst.swap.rule.Answer;
import lowfirst.swap.rule.RegulatorRule;
import lowfirst.swap.rule.SwapVerdict;
import lowfirst.swap.subject.Evidence;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What a regulator must be able to give off, by hand. Unless a case says otherwise: 20 V and 5 %
 * before it, 5 V behind it, no quiescent current, a junction of 125 °C less 25 K to spare, air of
 * 40 °C. So 60 K are left for 16 V times the current: at 0.25 A that is 4 W, 15 K/W.
 */
class RegulatorHeatTest {
  private static final String RAILS = "rail,voltage,tolerance,current limit\n";
  private static final String FED = "logic,5 V,5 %,0.25 A\n";
  private static final String BEFORE = "supply,20 V,5 %,\n";
  private static final String LOADS = "load,kind,rail,current,resistance,power\n";
  private static final String SHEET = "VO,,5,5,,V; TJ,,,,125,C; IQ,,,,0,A";

  private static SwapFinding swap(String air, String rails, String loads, String sheet) {
    var tables = new HashMap<String, String>();
    tables.put("kit.properties", air.isEmpty() ? "title = test\n" : "ambient = " + air + "\n");
    tables.put("boards.csv", "board,count,bom,placements\nmain,1,bom.csv,\n");
    tables.put("bom.csv", "designators,quantity,part type,description\nU1,1,OLD,regulator\n");
    tables.put("rails.csv", RAILS + rails);
    tables.put("loads.csv", LOADS + loads);
    tables.put("channels.csv", channels(loads));
    tables.put(
        "datasheets.csv",
        "part type,symbol,condition,min,typ,max,unit,source\n"
            + rows("OLD", "kind,voltage regulator,,,,; VO,,,5,,V; IO,,,,1.5,A")
            + rows("NEW", "kind,voltage regulator,,,,; " + sheet));
    return SwapFinding.ofParts(SmallKit.swap(SmallKit.of(tables), "U1", "NEW"));
  }

  private static String channels(String loads) {
    var rows = new StringBuilder("channel,board,load\n");
    loads.lines().forEach(row -> rows.append("to %1$s,main,%1$s\n".formatted(row.split(",")[0])));
    return rows.toString();
  }

  private static String rows(String part, String lines) {
    var rows = new StringBuilder();
    for (String line : lines.split("; ")) {
      rows.append(part).append(',').append(line).append(",test sheet\n");
    }
    return rows.toString();
  }

  private static Answer heat(String air, String rails, String loads, String sheet) {
    return swap(air, rails, loads, sheet).reason(RegulatorRule.HEAT).orElseThrow().answer();
  }

  private static Answer heat(String rails, String loads, double kelvinPerWatt) {
    return heat("40 C", rails, loads, SHEET + "; RthJA,,,," + kelvinPerWatt + ",K/W");
  }

  private static void asks(double kelvinPerWatt, Answer answer) {
    assertEquals(
        kelvinPerWatt,
        answer.asked().flatMap(Evidence::quantity).map(Quantity::asDouble).orElseThrow(),
        1e-4 * kelvinPerWatt,
        answer::toString);
  }

  /** 1 A for 1.5 A: what is drawn at most tells, or what the loads draw at least. */
  @ParameterizedTest
  @CsvSource({
    "0.25 A, '', fits, 3",
    "1 A, '', fits, 0",
    "1.2 A, '', does not fit, -0.166667",
    "'', '', undecided, ",
    "'', 'heater,resistive,logic,0.5 A,,', undecided, ",
    "'', 'heater,resistive,logic,1.25 A,,', does not fit, -0.2",
  })
  void less_current_is_enough_where_no_more_is_drawn(
      String limit, String load, String verdict, Double margin) {
    String rails = BEFORE + FED.replace("0.25 A", limit);
    Answer answer =
        swap("40 C", rails, load.isEmpty() ? "" : load + "\n", SHEET + "; IO,,,,1,A")
            .reason(RegulatorRule.OUTPUT_CURRENT)
            .orElseThrow()
            .answer();
    assertEquals(verdict, answer.verdict().words());
    assertEquals(margin == null ? 0 : margin, answer.margin().orElse(0), 1e-6);
  }

  @ParameterizedTest(name = "{0} K/W: {1}")
  @CsvSource({"12, fits, 0.25", "15, fits, 0", "16, undecided, "})
  void it_fits_where_it_bears_all_that_the_rail_behind_it_may_draw(
      double kelvinPerWatt, String verdict, Double margin) {
    Answer answer = heat(BEFORE + FED, "", kelvinPerWatt);
    assertEquals(verdict, answer.verdict().words());
    asks(15, answer);
    if (margin == null) {
      assertTrue(answer.margin().isEmpty());
      assertTrue(answer.missing().get(0).contains("draw from rail logic"), answer::toString);
    } else {
      assertEquals(margin, answer.margin().orElseThrow(), 1e-9);
    }
  }

  /** By its typical 5 V it would do with 12 K/W for 15; its least voltage nobody promises. */
  @Test
  void a_typical_output_voltage_lets_nothing_pass() {
    String typical = SHEET.replace("VO,,5,5,,V", "VO,,,5,,V");
    Answer heat = heat("40 C", BEFORE + FED, "", typical + "; RthJA,,,,12,K/W");
    assertEquals(List.of("least VO of NEW: a row in datasheets.csv"), heat.missing());
    Answer dropout =
        swap("40 C", BEFORE + FED, "", SHEET + "; dropout,,,,2,V")
            .reason(RegulatorRule.DROPOUT)
            .orElseThrow()
            .answer();
    assertEquals(List.of("greatest VO of NEW: a row in datasheets.csv"), dropout.missing());
  }

  /** 16 V times the loads' current; 60 K over that is all it may have. */
  @ParameterizedTest(name = "{0}, {1} K/W: {2}")
  @CsvSource({
    // 0.125 A are 2 W and ask for 30 K/W
    "'lamp,resistive,logic,125 mA,,',  31, does not fit",
    "'lamp,resistive,logic,125 mA,,',  30, undecided",
    "'lamp,resistive,logic,,40 Ohm,',  31, does not fit",
    "'lamp,resistive,logic,,40 Ohm,',  29, undecided",
    "'lamp,resistive,logic,,,0.625 W', 31, does not fit",
    "'lamp,resistive,logic,,,0.625 W', 29, undecided",
    "'lamp,resistive,supply,125 mA,,', 99, undecided",
  })
  void its_loads_alone_may_overheat_it(String load, double kelvinPerWatt, String verdict) {
    String unlimited = "logic,5 V,5 %,\n";
    assertEquals(
        verdict, heat(BEFORE + unlimited, load + "\n", kelvinPerWatt).verdict().words(), load);
    assertEquals(
        verdict,
        heat(BEFORE + "logic,5 V,5 %,1 A\n", load + "\n", kelvinPerWatt).verdict().words());
  }

  @Test
  void the_loads_of_its_rail_add_up() {
    Answer answer =
        heat(
            BEFORE + "logic,5 V,5 %,1 A\n",
            "one,resistive,logic,75 mA,,\ntwo,resistive,logic,50 mA,,\n",
            31);
    assertEquals(SwapVerdict.DOES_NOT_FIT, answer.verdict());
    asks(30, answer);
  }

  /** The sum of a case, with one number other than usual. */
  @ParameterizedTest(name = "{0} {1} {2}: {3} K/W")
  @CsvSource({
    // no tolerance stated: 10 %, 22 V, 17 V times 0.25 A
    "40 C, 'supply,20 V,,', '',                  14.1176",
    // the highest rail before it counts
    "40 C, 'low,12 V,5 %,\nsupply,20 V,5 %,', '', 15",
    "40 C, 'supply,20 V,5 %,\nlow,12 V,5 %,', '', 15",
    // its own 20 mA from 21 V are 0.42 W more, and 10 mA where the sheet is silent
    "40 C, 'supply,20 V,5 %,', 'IQ,,,,20,mA',    13.5747",
    "40 C, 'supply,20 V,5 %,', IQ,               14.2518",
    // no air stated: 50 °C
    "'',   'supply,20 V,5 %,', '',               12.5",
    // its output may be as low as 4.8 V: 16.2 V
    "40 C, 'supply,20 V,5 %,', 'VO,,4.8,5,,V',   14.8148",
  })
  void every_number_counts_at_its_worst(String air, String rails, String line, double asked) {
    String symbol = line.isEmpty() ? "" : line.split(",", 2)[0];
    var sheet = new StringBuilder("RthJA,,,,99,K/W");
    for (String usual : SHEET.split("; ")) {
      boolean replaced = usual.split(",", 2)[0].equals(symbol);
      sheet.append(!replaced ? "; " + usual : line.contains(",") ? "; " + line : "");
    }
    Answer answer = heat(air, rails + "\n" + FED, "", sheet.toString());
    asks(asked, answer);
    String words = answer.asked().orElseThrow().word();
    assertEquals(air.isEmpty(), words.contains("air of 50 °C assumed"), words);
    assertEquals(line.equals("IQ"), words.contains("IQ of 10 mA assumed"), words);
  }

  @Test
  void a_junction_that_may_get_no_hotter_than_the_air_leaves_room_for_nothing() {
    Answer answer =
        heat(
            "40 C",
            BEFORE + "logic,5 V,5 %,1 A\n",
            "lamp,resistive,logic,1 mA,,\n",
            "VO,,,5,,V; IQ,,,,0,A; TJ,,,,60,C; RthJA,,,,1,K/W");
    assertEquals(SwapVerdict.DOES_NOT_FIT, answer.verdict());
    assertEquals(-1, answer.margin().orElseThrow(), 1e-9);
  }

  /** It feeds the rail of its own voltage, and hangs on a higher one. */
  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({
    "'supply,20 V,5 %,\nlogic,5.2 V,5 %,0.25 A', true",
    "'supply,20 V,5 %,\nlogic,4.8 V,5 %,0.25 A', true",
    "'supply,20 V,5 %,\nlogic,5.4 V,5 %,0.25 A', false",
    "'supply,20 V,5 %,\nlogic,4.6 V,5 %,0.25 A', false",
    "'supply,20 V,5 %,',                         false",
    "'supply,5.2 V,5 %,',                        false",
  })
  void without_the_two_rails_nothing_can_be_worked_out(String rails, boolean known) {
    Answer answer = heat(rails + "\n", "", 99);
    assertEquals(SwapVerdict.UNDECIDED, answer.verdict());
    assertEquals(known, answer.asked().isPresent());
    assertEquals(
        !known,
        answer
            .missing()
            .get(0)
            .equals("the rail before the regulator and the rail that it feeds: rails.csv"));
  }

  @ParameterizedTest
  @CsvSource({"RthJA, 'TJ,,,,125,C'", "TJ, 'RthJA,,,,20,K/W'"})
  void what_its_sheet_lacks_is_named(String symbol, String line) {
    Answer answer = heat("40 C", BEFORE + FED, "", "VO,,,5,,V; " + line);
    assertEquals(List.of(symbol + " of NEW: a row in datasheets.csv"), answer.missing());
  }

  @Test
  void with_no_current_known_it_is_the_draw_that_is_missing() {
    Answer answer = heat(BEFORE + "logic,5 V,5 %,\n", "", 20);
    assertEquals(SwapVerdict.UNDECIDED, answer.verdict());
    assertTrue(answer.asked().isEmpty(), answer::toString);

    // its own current is only assumed, and what is assumed condemns nothing alone
    Answer hot = heat("40 C", BEFORE + FED, "", "VO,,,5,,V; TJ,,,,125,C; RthJA,,,,300,K/W");
    assertEquals(SwapVerdict.UNDECIDED, hot.verdict());
  }

  /** One rail above its output is surely the one before it; of two, either may be. */
  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({
    "'supply,6 V,5 %,',                  does not fit",
    "'supply,6 V,5 %,\nmore,20 V,5 %,',  undecided",
    "'supply,8 V,5 %,\nmore,20 V,5 %,',  fits",
    // 10 % where no tolerance is stated: 7.74 V leave 1.97 V of the 2 V that it needs
    "'supply,7.74 V,5 %,',               fits",
    "'supply,7.74 V,,',                  does not fit",
  })
  void the_lowest_rail_before_it_must_leave_the_drop_that_it_needs(String rails, String verdict) {
    String text = rails + "\n" + FED;
    SwapFinding finding =
        swap("40 C", text, "", SHEET.replace("5,,V", "5,5,V") + "; dropout,,,,2,V");
    assertEquals(
        verdict, finding.reason(RegulatorRule.DROPOUT).orElseThrow().verdict().words(), rails);
  }
}
