package lowfirst.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import lowfirst.channel.check.Check;
import lowfirst.channel.check.CheckKind;
import lowfirst.channel.check.Verdict;
import lowfirst.channel.data.DatasheetSymbol;
import lowfirst.channel.data.PlausibleAmount;
import lowfirst.intake.shipped.ShippedTables;
import lowfirst.part.DatasheetLine;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A cell that nobody can read is no empty one: what stands there may be what decides. */
class UnreadCellsTest {
  private static final ChannelKit KIT =
      ChannelKit.typical()
          .with("loads", "max on time=1 s; pull-in voltage=12 V; switch-ons=1000")
          .with("channels", "wires together=2; ambient=30 C");

  private static Verdict channel(ChannelKit kit) {
    return kit.finding().verdict();
  }

  private static Verdict rail(ChannelKit kit) {
    return LoadFindings.of(kit.kit()).rails().get(0).verdict();
  }

  @Test
  void an_optional_rating_that_cannot_be_read_leaves_the_channel_undecided() {
    assertEquals(Verdict.CARRIES, channel(KIT), "so that the test is not idle");
    ChannelKit bad = KIT.with("loads", "pull-in voltage=5 bananas");
    assertEquals(Verdict.UNDECIDED, channel(bad));
    Check check = bad.check(CheckKind.CELLS_READ);
    assertEquals(1, check.missing().size());
    assertTrue(check.missing().get(0).contains("pull-in voltage"), check.missing().get(0));
    assertFalse(KIT.finding().check(CheckKind.CELLS_READ).isPresent());
    assertEquals(Verdict.CARRIES, channel(KIT.with("loads", "pull-in voltage=")), "not stated");
  }

  /** Every cell that holds a number or a designator, made unreadable or unknown by itself. */
  @Test
  void no_cell_that_cannot_be_read_leaves_anything_carrying() {
    var carried = new ArrayList<String>();
    int tried = 0;
    for (String row : List.of("rails", "rails.logic", "drivers", "loads", "channels")) {
      for (Map.Entry<String, String> cell : cells(KIT.row(row)).entrySet()) {
        boolean isText = List.of("load", "channel", "rail", "driver").contains(cell.getKey());
        if (!isText && Character.isDigit(cell.getValue().charAt(0))) {
          for (String text : List.of("5 bananas", "?", "tbd")) {
            tried++;
            if (channel(KIT.with(row, cell.getKey() + "=" + text)) == Verdict.CARRIES) {
              carried.add(row + " " + cell + " as " + text);
            }
          }
        }
      }
    }
    assertEquals(List.of(), carried);
    assertTrue(tried >= 75, "" + tried);
  }

  private static Map<String, String> cells(String row) {
    var cells = new LinkedHashMap<String, String>();
    for (String cell : row.split("; ")) {
      cells.put(cell.substring(0, cell.indexOf('=')), cell.substring(cell.indexOf('=') + 1));
    }
    return cells;
  }

  @ParameterizedTest
  @CsvSource({
    "channels, gate resistor=?",
    "channels, gate resistor=tbd",
    "channels, gate resistor=R1 and another",
    "channels, flyback diode=?",
    "channels, pull-down side=somewhere",
    "drivers, at reset=who knows",
    "rails.logic, voltage=0 V",
    "rails.logic, voltage=-5 V",
    "channels, trace copper=35",
    // as they stand they may be a thousand times more than was meant, or less
    "channels, wire length=2",
    "channels, trace width=100",
    "rails, return length=1",
    "drivers, current limit=40",
    "loads, pull-in voltage=0 V",
    "loads, on time=100",
    "loads, period=600",
    "loads, max on time=500",
  })
  void what_is_not_known_is_not_taken_as_none(String row, String cell) {
    assertNotEquals(Verdict.CARRIES, channel(KIT.with(row, cell)));
  }

  /** Columns that a kit may do without: not to know them is not to do without. */
  @ParameterizedTest
  @CsvSource({
    "loads, inrush",
    "loads, max on time",
    "drivers, PWM frequency",
    "rails, short-circuit current",
    "rails, loads on at once",
    "channels, heatsink",
    "channels, wires together",
  })
  void a_number_that_is_not_known_is_not_one_that_does_not_apply(String row, String column) {
    for (String none : List.of("", "-", "n/a", "none")) {
      assertEquals(Verdict.CARRIES, channel(KIT.with(row, column + "=" + none)), none);
    }
    for (String open : List.of("?", "tbd", "TBA", "unknown")) {
      ChannelKit kit = KIT.with(row, column + "=" + open);
      assertEquals(Verdict.UNDECIDED, channel(kit), open);
      assertTrue(kit.check(CheckKind.CELLS_READ).missing().get(0).contains(column), open);
    }
  }

  @ParameterizedTest
  @CsvSource({"low, CARRIES", "driven low, CARRIES", "n/a, CARRIES", "Hi-Z, CARRIES"})
  void words_of_a_reset_are_read(String words, Verdict verdict) {
    assertEquals(verdict, channel(KIT.with("drivers", "at reset=" + words)));
  }

  @Test
  void a_setting_that_cannot_be_read_concerns_everything() {
    ChannelKit kit = KIT.setting("ambient", "5 bananas");
    assertEquals(Verdict.UNDECIDED, channel(kit));
    assertEquals(Verdict.UNDECIDED, rail(kit));
    assertTrue(kit.check(CheckKind.CELLS_READ).missing().get(0).contains("kit.properties"));
  }

  @Test
  void a_row_that_was_left_out_may_hang_on_any_rail() {
    assertEquals(Verdict.CARRIES, rail(KIT));
    ChannelKit more = KIT.with("loads.2", "load=heater; kind=; rail=power; current=4 A");
    assertEquals(Verdict.UNDECIDED, rail(more), "a load of no kind is left out");
    assertEquals(Verdict.CARRIES, channel(more), "the other channel has nothing to do with it");
    assertEquals(Verdict.UNDECIDED, rail(KIT.with("rails", "short-circuit current=many")));
  }

  /** The first row counts, and the second may be the one that was meant. */
  @ParameterizedTest
  @CsvSource({
    "rails, rail=power; voltage=48 V",
    "rails.logic, rail=logic; voltage=3.3 V",
    "drivers, driver=pin; high level min=2 V",
    "loads, load=striker; kind=solenoid; rail=power; resistance=2 Ohm",
  })
  void a_second_row_of_the_same_name_leaves_what_rests_on_the_first_undecided(
      String row, String second) {
    ChannelKit kit = KIT.with(row + ".again", second);
    assertEquals(Verdict.UNDECIDED, channel(kit));
    assertTrue(kit.check(CheckKind.CELLS_READ).missing().get(0).contains(file(row)));
    assertEquals(
        Verdict.CARRIES, channel(KIT.with(row + ".again", second.replace("=", "=other "))));
  }

  private static String file(String row) {
    return row.replace(".logic", "") + ".csv:";
  }

  /** The BOM's first row of a place is not the better for standing first. */
  @ParameterizedTest
  @CsvSource({
    "designators=Q1; quantity=1; part type=OTHER; description=MOSFET, UNDECIDED",
    "designators=R2; quantity=1; value=1k 1%; description=resistor, UNDECIDED",
    "designators=F1; quantity=1; part type=OTHER; description=fuse, UNDECIDED",
    "designators=Q2; quantity=1; part type=OTHER; description=MOSFET, CARRIES",
    "designators=Q1; quantity=1; part type=OTHER; description=MOSFET; fitted=no, CARRIES",
  })
  void a_place_with_two_part_types_has_neither(String row, Verdict verdict) {
    assertEquals(verdict, channel(KIT.with("bom.again", row)));
  }

  /** A part that is fitted nobody knows where may be fitted here. */
  @ParameterizedTest
  @CsvSource({
    "board=main-1; designators=Q1; part type fitted=X, UNDECIDED",
    "board=main; designators=Q7; part type fitted=X, UNDECIDED",
    "board=; designators=Q7; part type fitted=X, UNDECIDED",
    "board=main; designators=; part type fitted=X, UNDECIDED",
    "board=main; designators=T-FET; part type fitted=X, UNDECIDED",
    "board=main; designators=R2; part type fitted=, UNDECIDED",
    "board=main; designators=R2; part type fitted=10k 1%, CARRIES",
    "board=MAIN; designators=R2; part type fitted=10k 1%, CARRIES",
    "board=; designators=R2; part type fitted=10k 1%, CARRIES",
  })
  void a_swap_without_a_place_leaves_every_channel_undecided(String swap, Verdict verdict) {
    assertEquals(verdict, channel(KIT.with("swaps", swap)));
  }

  @ParameterizedTest
  @CsvSource({"RthJA, 0", "RthJA, -62", "RthJC, 0", "QGD, -14", "TJ, 0", "ID, 0"})
  void an_amount_of_zero_or_less_in_a_datasheet_promises_nothing(String symbol, String amount) {
    ChannelKit kit =
        KIT.with("channels", "heatsink=5 K/W")
            .withoutDatasheet("T-FET", symbol)
            .withoutDatasheet("T-FET", symbol.equals("QGD") ? "QG" : symbol)
            .datasheet("T-FET", symbol, "", "", amount, unit(symbol));
    boolean free = symbol.equals("RthJA");
    ChannelKit in = free ? kit.with("channels", "heatsink=") : kit;
    assertNotEquals(Verdict.CARRIES, channel(in));
    String asked = symbol.equals("QGD") ? "QG of T-FET" : symbol + " of T-FET: ";
    assertTrue(
        in.finding().checks().stream()
            .flatMap(check -> check.missing().stream())
            .anyMatch(text -> text.startsWith(asked)));
  }

  /** A thousand times better than any part: the unit slipped, and nothing carries on it. */
  @ParameterizedTest
  @CsvSource({
    "RDSon, 'VGS=4V, ID=8A, TJ=25C', 50, uOhm",
    "RthJA, '', 62, mK/W",
    "QG, VGS=5V, 14, pC",
    "VDS, '', 100, kV",
    "TJ, '', 448, C",
  })
  void an_amount_that_no_part_has_promises_nothing(
      String symbol, String condition, String amount, String unit) {
    ChannelKit kit = KIT.withoutDatasheet("T-FET", symbol);
    if (symbol.equals("QG")) {
      kit = kit.withoutDatasheet("T-FET", "QGD");
    }
    ChannelKit slipped = kit.datasheet("T-FET", symbol, condition, "", amount, unit);
    assertNotEquals(Verdict.CARRIES, channel(slipped));
    assertTrue(
        slipped.finding().checks().stream()
            .flatMap(check -> check.missing().stream())
            .anyMatch(text -> text.contains(symbol + " of T-FET")),
        symbol);
  }

  @Test
  void every_amount_of_the_catalogue_is_one_that_a_part_may_have() {
    var beyond = new ArrayList<String>();
    for (DatasheetLine line : ShippedTables.catalogue().lines()) {
      DatasheetSymbol.written(line.symbol())
          .ifPresent(
              symbol ->
                  Stream.of(line.typ(), line.max())
                      .flatMap(Optional::stream)
                      .filter(amount -> amount.amount().signum() > 0)
                      .filter(amount -> !PlausibleAmount.is(symbol, amount))
                      .forEach(
                          amount -> beyond.add(line.partType() + " " + symbol + " " + amount)));
    }
    assertEquals(List.of(), beyond);
  }

  private static String unit(String symbol) {
    return switch (symbol) {
      case "QGD" -> "nC";
      case "TJ" -> "C";
      case "ID" -> "A";
      default -> "K/W";
    };
  }

  @Test
  void a_gate_at_zero_volts_earns_no_line() {
    ChannelKit kit =
        KIT.withoutDatasheet("T-FET", "RDSon")
            .datasheet("T-FET", "RDSon", "VGS=0V, ID=10A", "", "35", "mOhm");
    assertNotEquals(Verdict.CARRIES, channel(kit));
  }
}
