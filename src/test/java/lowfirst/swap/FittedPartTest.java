package lowfirst.swap;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lowfirst.intake.shipped.ShippedTables;
import lowfirst.part.DatasheetLine;
import lowfirst.part.Datasheets;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Tolerance;
import lowfirst.swap.subject.FittedPart;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How a person names a substitute at the counter, and what is meant. */
class FittedPartTest {
  private static PartType in(PartKind asked, String packageName, String text, String... sheet) {
    var old =
        new PartType(
            asked,
            "as in the BOM",
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.of(Quantity.of("0.25", Dimension.POWER)),
            "",
            packageName);
    var lines = new ArrayList<DatasheetLine>();
    for (String one : sheet) {
      lines.addAll(Sheets.lines(text, PartKind.UNKNOWN, one));
    }
    lines.removeIf(line -> line.symbol().equals("kind"));
    return FittedPart.of(text, old, Datasheets.of(lines));
  }

  private static String words(Optional<?> what) {
    return what.map(Object::toString).orElse("");
  }

  @ParameterizedTest(name = "{1} for a {0}")
  @CsvSource({
    "RESISTOR, 4k7 1% 0.25W,          RESISTOR, 4.7 kΩ, ±1 %, '', 250 mW, P10.16",
    "RESISTOR, 4k7,                   RESISTOR, 4.7 kΩ, '',   '', '',     P10.16",
    // a stronger one is longer, so its body is not the old one's
    "RESISTOR, 4k7 1% 0.5W,           RESISTOR, 4.7 kΩ, ±1 %, '', 500 mW, ''",
    "RESISTOR, 4k7 1% 0.5W P12.7,     RESISTOR, 4.7 kΩ, ±1 %, '', 500 mW, P12.7",
    "INDUCTOR, 100uH 10%,             INDUCTOR, 100 µH, ±10 %, '', '',    P10.16",
    "CAPACITOR, 100n 50V,             CAPACITOR, 100 nF, '', 50 V, '',    P10.16",
    "CERAMIC_CAPACITOR, 1uF 20% 50V electrolytic, ELECTROLYTIC_CAPACITOR, 1 µF, ±20 %, 50 V, '', ''",
    "FILM_CAPACITOR, 1uF 20% 50V aluminium P5.0, ELECTROLYTIC_CAPACITOR, 1 µF, ±20 %, 50 V, '', P5.0",
    "ELECTROLYTIC_CAPACITOR, 10uF 10% 25V tantalum, TANTALUM_CAPACITOR, 10 µF, ±10 %, 25 V, '', ''",
    "FILM_CAPACITOR, 10n X7R 10% 50V, CERAMIC_CAPACITOR, 10 nF, ±10 %, 50 V, '', ''",
    "FILM_CAPACITOR, 10n 10% 50V ceramic, CERAMIC_CAPACITOR, 10 nF, ±10 %, 50 V, '', ''",
    "CERAMIC_CAPACITOR, 10n 5% 63V polyester, FILM_CAPACITOR, 10 nF, ±5 %, 63 V, '', ''",
    "CERAMIC_CAPACITOR, 10n 5% 63V MKT, FILM_CAPACITOR, 10 nF, ±5 %, 63 V, '', ''",
    "DIODE, some Schottky,            SCHOTTKY_DIODE, '', '', '', '', ''",
    "DIODE, 1N4148,                   DIODE, '', '', '', '', P10.16",
    "MOSFET, ceramic film schottky,   MOSFET, '', '', '', '', P10.16",
    "MOSFET, IRLZ44N TO-220,          MOSFET, '', '', '', '', TO-220",
  })
  void a_text_is_read_in_the_light_of_the_part_that_it_would_replace(
      PartKind asked,
      String text,
      PartKind kind,
      String value,
      String tolerance,
      String volts,
      String watts,
      String packageName) {
    PartType type = in(asked, "P10.16", text);
    assertEquals(kind, type.kind());
    assertEquals(value, words(type.value()));
    assertEquals(tolerance, words(type.tolerance()));
    assertEquals(volts, words(type.ratedVoltage()));
    assertEquals(watts, words(type.ratedPower()));
    assertEquals(packageName, type.packageName());
    boolean byValue = kind == PartKind.RESISTOR || kind == PartKind.INDUCTOR || kind.isCapacitor();
    assertEquals(byValue ? "" : text, type.typeNumber());
  }

  /** Where a sheet names no kind, a symbol that only one kind has tells it. */
  @ParameterizedTest
  @CsvSource({
    "VDS <60 V, MOSFET",
    "RDSon@VGS=4V <0.05 Ohm, MOSFET",
    "VRRM <100 V, DIODE",
    "VZ ~12 V, ZENER_DIODE",
    "CTR >0.8 x, OPTOCOUPLER",
    "hFE >100 x, BIPOLAR_TRANSISTOR",
    "VO ~5 V, REGULATOR",
    "characteristic = T, FUSE",
    "kind = zener diode; VRRM <100 V, ZENER_DIODE",
    "kind = gadget; VRRM <100 V, DIODE",
    "TJ <150 degC, RESISTOR",
  })
  void a_sheet_tells_the_kind(String sheet, PartKind kind) {
    var lines = new ArrayList<>(Sheets.lines("NEW", PartKind.UNKNOWN, sheet));
    lines.remove(0);
    assertEquals(
        kind, FittedPart.of("NEW", Sheets.blank(PartKind.RESISTOR), Datasheets.of(lines)).kind());
  }

  /** The row that a report asks for must not make it forget the value. */
  @Test
  void a_value_with_a_row_of_its_own_stays_that_value() {
    PartType type = in(PartKind.RESISTOR, "", "10k 1% 0.5W", "length <6.5 mm");
    assertEquals("10 kΩ", type.value().orElseThrow().toString());
    assertEquals("500 mW", type.ratedPower().orElseThrow().toString());
  }

  /** 7805 stands whole in LM7805CT, and not in 78051. */
  @Test
  void a_known_number_is_found_within_a_longer_one() {
    Datasheets catalogue = ShippedTables.catalogue();
    assertEquals(Optional.of("7805"), catalogue.within("LM7805CT"));
    assertEquals(Optional.of("BC547B"), catalogue.within("BC547BTA"), "the longest");
    assertEquals(Optional.empty(), catalogue.within("78051"));
    assertEquals(Optional.empty(), catalogue.within("ZZ999"));
  }

  @Test
  void value_ratings_and_package_come_from_the_sheet() {
    PartType cap =
        in(
            PartKind.CERAMIC_CAPACITOR,
            "P10.16",
            "RPE",
            "C ~100e-9 F; tolerance = -20/+80 %; Vrated <50 V; package = disc P5.08");
    assertEquals("100 nF", words(cap.value()));
    assertEquals(Optional.of(Tolerance.percent("20", "80")), cap.tolerance());
    assertEquals("50 V", words(cap.ratedVoltage()));
    assertEquals("disc P5.08", cap.packageName());
    assertEquals("RPE", cap.typeNumber());
    assertEquals("10 Ω", words(in(PartKind.RESISTOR, "", "SHUNT", "R <10 Ohm").value()));
    assertEquals("10 Ω", words(in(PartKind.RESISTOR, "", "SHUNT", "R >10 Ohm").value()));
    assertEquals("1 mH", words(in(PartKind.INDUCTOR, "", "CHOKE", "L ~0.001 H").value()));
  }

  /** Several makers print one type number; a name in brackets picks that maker's lines. */
  @ParameterizedTest
  @CsvSource({
    "NEW, 3",
    "NEW (Acorn), 1",
    "NEW (acorn ), 1",
    "NEW (Birch), 1",
    "NEW (Cedar), 0",
    "OTHER (Acorn), 0"
  })
  void a_maker_in_brackets_picks_that_makers_lines(String text, int count) {
    var lines =
        new ArrayList<>(
            Sheets.lines(
                "NEW", PartKind.MOSFET, "[Acorn] VDS <60 V; [Birch] VDS <50 V; TJ <150 degC"));
    lines.remove(0);
    assertEquals(count, FittedPart.linesAbout(text, Datasheets.of(List.copyOf(lines))).size());
  }
}
