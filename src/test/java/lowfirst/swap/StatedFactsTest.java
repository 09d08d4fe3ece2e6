package lowfirst.swap;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import lowfirst.part.DatasheetLine;
import lowfirst.part.Datasheets;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;
import lowfirst.swap.subject.FittedPart;
import lowfirst.swap.subject.StatedFacts;
import lowfirst.swap.subject.SwapPart;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the words on a bag or in a BOM say of a part. */
class StatedFactsTest {
  private static List<DatasheetLine> lines(PartKind kind, String text) {
    return StatedFacts.in(FittedPart.of(text, Sheets.blank(kind), Datasheets.of(List.of())), "");
  }

  private static String said(DatasheetLine line) {
    return line.symbol() + " " + line.max().map(Object::toString).orElse("") + line.condition();
  }

  @ParameterizedTest(name = "{1}")
  @CsvSource({
    "FUSE, T 2 A 250 V 5x20, 'characteristic T; package 5x20; Irated 2 A; Vrated 250 V'",
    "FUSE, 500mA quick radial, 'characteristic F; package radial; Irated 500 mA'",
    "FUSE, slow blade 10A, 'characteristic T; package blade; Irated 10 A'",
    "CERAMIC_CAPACITOR, 100n x7r 50V P5.08, 'Vrated 50 V; dielectric x7r; pitch 5.08 mm'",
    "CERAMIC_CAPACITOR, 22p NP0, 'dielectric C0G'",
    "ELECTROLYTIC_CAPACITOR, 470uF 35V low-ESR 105 C, 'Vrated 35 V; ESRclass low; Tmax 105 °C'",
    "RESISTOR, 10k wirewound 5W, 'PD 5 W; technology wire-wound'",
    "RESISTOR, 1M metal film 50ppm 350V, 'Vmax 350 V; technology metal film; TCR 50 ppm/K'",
    "LED, Amber 3 mm, 'colour Amber; size 3 mm'",
    "SOCKET, DIP-28 600mil, 'pinCount 28; row 15.24 mm'",
    "SOCKET, DIL 28 7.62, 'pinCount 28; row 7.62 mm'",
    "SCREW_TERMINAL, 3-pole P5.08 16 A, 'Irated 16 A; poles 3; pitch 5.08 mm'",
    "CRYSTAL, 16 MHz 18 pF 30ppm, 'f0 16 MHz; CL 18 pF; df 30 ppm/K'",
    "DIODE, 1 A ultrafast, 'technology ultra-fast recovery'",
    "DIODE, 1 A fast, 'technology fast recovery'",
    "BIPOLAR_TRANSISTOR, BC547 NPN, 'polarity NPN'",
    "MOSFET, N-channel 60V, 'polarity N-channel'",
    "MOSFET, P channel 60V, 'polarity P-channel'",
    "ZENER_DIODE, 12 V 0.5W, 'VZ 12 V'",
    // words of another trade are not taken for this kind's
    "RESISTOR, 10k fast red NPN, ''",
    "DIODE, T 2 A DIP-28, ''",
  })
  void words_become_facts_of_the_kinds_that_they_are_used_for(
      PartKind kind, String text, String facts) {
    assertEquals(
        facts,
        lines(kind, text).stream().map(StatedFactsTest::said).collect(Collectors.joining("; ")));
  }

  @Test
  void a_description_speaks_too_and_a_sheet_before_both() {
    PartType type = FittedPart.of("D-1", Sheets.blank(PartKind.DIODE), Datasheets.of(List.of()));
    assertEquals(
        List.of("technology Schottky"),
        StatedFacts.in(type, "small Schottky").stream().map(StatedFactsTest::said).toList());
    Datasheets sheet = Datasheets.of(Sheets.lines("F-1 2 A", PartKind.FUSE, "Irated <1.6 A"));
    SwapPart part =
        SwapPart.offered(FittedPart.of("F-1 2 A", type, sheet), Optional.empty(), sheet);
    assertEquals("1.6 A", part.greatest("Irated").orElseThrow().quantity().get().toString());
  }

  /** A report calls a part what a person would ask for at the counter. */
  @Test
  void a_part_is_called_by_its_number_or_its_value_or_its_kind() {
    Datasheets none = Datasheets.of(List.of());
    PartType resistor = FittedPart.of("10k 1%", Sheets.blank(PartKind.RESISTOR), none);
    PartType diode = FittedPart.of("1N4004", Sheets.blank(PartKind.DIODE), none);
    assertEquals("10k 1%", SwapPart.offered(resistor, Optional.empty(), none).name());
    assertEquals("1N4004", SwapPart.offered(diode, Optional.empty(), none).name());
    assertEquals(
        "relay", SwapPart.offered(Sheets.blank(PartKind.RELAY), Optional.empty(), none).name());
  }
}
