package lowfirst.marking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.Random;
import lowfirst.problem.Reading;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What people write into the value cells of bills of materials. */
class WrittenValueTest {

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "above U3, CAPACITANCE",
    "beside u47, CAPACITANCE",
    "see R47, RESISTANCE",
    "at R12, INDUCTANCE",
    "10-30M, RESISTANCE",
    "1-2n2, CAPACITANCE",
    // one of two values
    "resistors for the lamps (330/1k), RESISTANCE",
    "15/22uF 35V, CAPACITANCE",
    "AB5D18NP-100NC, INDUCTANCE"
  })
  void the_name_of_a_part_and_a_range_are_no_values(String text, Dimension measured) {
    assertFalse(WrittenValue.parse(text, Optional.of(measured)).isRead());
  }

  @ParameterizedTest(name = "{0} as {1} is {2}")
  @CsvSource(
      delimiter = '|',
      nullValues = "-",
      value = {
        // text | expected | value | tolerance | voltage | power | leftover
        "4k7 | RESISTANCE | 4.7 kΩ | - | - | - | -",
        "R47 | RESISTANCE | 470 mΩ | - | - | - | -",
        // the size of a chip is neither value nor power
        "10k-1% | RESISTANCE | 10 kΩ | ±1 % | - | - | -",
        "68 (0603) | RESISTANCE | 68 Ω | - | - | - | -",
        "100 1206 | RESISTANCE | 100 Ω | - | - | - | -",
        "3299W 20k | RESISTANCE | 20 kΩ | - | - | - | 3299W",
        "1MEG | RESISTANCE | 1 MΩ | - | - | - | -",
        "5.1k XYF5101V 75V | RESISTANCE | 5.1 kΩ | - | 75 V | - | XYF5101V",
        "10k R0805W | RESISTANCE | 10 kΩ | - | - | - | R0805W",
        "10k R1206W | RESISTANCE | 10 kΩ | - | - | - | R1206W",
        "1/4W 10k | RESISTANCE | 10 kΩ | - | - | 250 mW | -",
        "10k MF0.25W | RESISTANCE | 10 kΩ | - | - | 250 mW | MF",
        // what a circuit has there is no rating of the part
        "47 µF, 12 V input bulk | CAPACITANCE | 47 µF | - | - | - | 12 V input bulk",
        "47 µF 35V, 12V rail | CAPACITANCE | 47 µF | - | 35 V | - | 12V rail",
        "100n 5V supply 50V | CAPACITANCE | 100 nF | - | 50 V | - | 5V supply",
        "22u 25V bulk | CAPACITANCE | 22 µF | - | 25 V | - | bulk",
        "10uF/25 | CAPACITANCE | 10 µF | - | - | - | 25",
        "0805/100n | CAPACITANCE | 100 nF | - | - | - | 0805",
        "u47 | CAPACITANCE | 470 nF | - | - | - | -",
        "4.7 k | RESISTANCE | 4.7 kΩ | - | - | - | -",
        "4,7k | RESISTANCE | 4.7 kΩ | - | - | - | -",
        "4R7 | RESISTANCE | 4.7 Ω | - | - | - | -",
        "470 metal film resistor DIN0207 | RESISTANCE | 470 Ω | - | - | - | metal film resistor DIN0207",
        "4700 | RESISTANCE | 4.7 kΩ | - | - | - | -",
        "100n | CAPACITANCE | 100 nF | - | - | - | -",
        "0.1uF | CAPACITANCE | 100 nF | - | - | - | -",
        "10µF/25V | CAPACITANCE | 10 µF | - | 25 V | - | -",
        "10μF/25V | CAPACITANCE | 10 µF | - | 25 V | - | -",
        "220uF 25V Low-ESR | CAPACITANCE | 220 µF | - | 25 V | - | Low-ESR",
        "1K Ohms | RESISTANCE | 1 kΩ | - | - | - | -",
        "510K Ohms | RESISTANCE | 510 kΩ | - | - | - | -",
        "270 Ohms | RESISTANCE | 270 Ω | - | - | - | -",
        "10 pf | CAPACITANCE | 10 pF | - | - | - | -",
        "10uf 50V | CAPACITANCE | 10 µF | - | 50 V | - | -",
        "1000Ω | RESISTANCE | 1 kΩ | - | - | - | -",
        "1000\u2126 | RESISTANCE | 1 kΩ | - | - | - | -",
        "680,1W | RESISTANCE | 680 Ω | - | - | 1 W | -",
        "10k,1W | RESISTANCE | 10 kΩ | - | - | 1 W | -",
        "4k7,5% | RESISTANCE | 4.7 kΩ | ±5 % | - | - | -",
        "1500u/100V | CAPACITANCE | 1500 µF | - | 100 V | - | -",
        ".001uF | CAPACITANCE | 1 nF | - | - | - | -",
        ".022uF Capacitor | CAPACITANCE | 22 nF | - | - | - | Capacitor",
        "4k7 1% 0.25W | RESISTANCE | 4.7 kΩ | ±1 % | - | 250 mW | -",
        "4k7 ±1 % 1/4W | RESISTANCE | 4.7 kΩ | ±1 % | - | 250 mW | -",
        "1/4W 10k | RESISTANCE | 10 kΩ | - | - | 250 mW | -",
        "0.1ufF | CAPACITANCE | 100 nF | - | - | - | -",
        "100R Resistor | RESISTANCE | 100 Ω | - | - | - | Resistor",
        "Capacitor 680 uF | CAPACITANCE | 680 µF | - | - | - | Capacitor",
        "330uF 20v | CAPACITANCE | 330 µF | - | 20 V | - | -",
        "100ohm | RESISTANCE | 100 Ω | - | - | - | -",
        "0.1uF Ceramic | CAPACITANCE | 100 nF | - | - | - | Ceramic",
        "68uH | INDUCTANCE | 68 µH | - | - | - | -",
        "4R7 | INDUCTANCE | 4.7 µH | - | - | - | -",
        "3R9 | CAPACITANCE | 3.9 pF | - | - | - | -",
        "10UH | INDUCTANCE | 10 µH | - | - | - | -",
        "47K3 | RESISTANCE | 47.3 kΩ | - | - | - | -",
        "4K7K | RESISTANCE | 4.7 kΩ | ±10 % | - | - | -",
        "47KJ | RESISTANCE | 47 kΩ | ±5 % | - | - | -",
        "47K | RESISTANCE | 47 kΩ | - | - | - | -",
        "4M7M | RESISTANCE | 4.7 MΩ | ±20 % | - | - | -",
        "R47 | RESISTANCE | 470 mΩ | - | - | - | -",
        "0R | RESISTANCE | 0 Ω | - | - | - | -",
        "0 | RESISTANCE | 0 Ω | - | - | - | -",
        "10mΩ | RESISTANCE | 10 mΩ | - | - | - | -",
        "2.2Meg | RESISTANCE | 2.2 MΩ | - | - | - | -",
        "2.2 Megohm | RESISTANCE | 2.2 MΩ | - | - | - | -",
        "10 Kohm | RESISTANCE | 10 kΩ | - | - | - | -",
        "100E | RESISTANCE | 100 Ω | - | - | - | -",
        "4E7 | RESISTANCE | 4.7 Ω | - | - | - | -",
        "100uH 200 mΩ | INDUCTANCE | 100 µH | - | - | - | -",
        "16000000 | FREQUENCY | 16 MHz | - | - | - | -",
        "2.20E+03 | RESISTANCE | 2.2 kΩ | - | - | - | -",
        "4.70E-01 1% | RESISTANCE | 470 mΩ | ±1 % | - | - | -",
        "1.00E-07 | CAPACITANCE | 100 nF | - | - | - | -",
        "10 кОм | RESISTANCE | 10 kΩ | - | - | - | -",
        "1МОм 5% | RESISTANCE | 1 MΩ | ±5 % | - | - | -",
        "0,1 мкФ 50 В | CAPACITANCE | 100 nF | - | 50 V | - | -",
        "22пФ | CAPACITANCE | 22 pF | - | - | - | -",
        "100 мкГн | INDUCTANCE | 100 µH | - | - | - | -",
        "B10K | RESISTANCE | 10 kΩ | - | - | - | B",
        "W20K | RESISTANCE | 20 kΩ | - | - | - | W",
        "10KB | RESISTANCE | 10 kΩ | - | - | - | B",
        "470u-16V | CAPACITANCE | 470 µF | - | 16 V | - | -",
        "470uF16V | CAPACITANCE | 470 µF | - | 16 V | - | -",
        "100n X7R 50V 10% | CAPACITANCE | 100 nF | ±10 % | 50 V | - | X7R",
        "22uF -20/+80% | CAPACITANCE | 22 µF | -20/+80 % | - | - | -",
        "4n7J100 | CAPACITANCE | - | - | - | - | -",
        "100NF | CAPACITANCE | 100 nF | - | - | - | -",
        "10MFD | CAPACITANCE | 10 µF | - | - | - | -",
        "47mmfd | CAPACITANCE | 47 pF | - | - | - | -",
        "104 | CAPACITANCE | 100 nF | - | - | - | -",
        "479 | CAPACITANCE | 4.7 pF | - | - | - | -",
        "0.047 | CAPACITANCE | 47 nF | - | - | - | -",
        "1e-07 | CAPACITANCE | 100 nF | - | - | - | -",
        "MF1/4W-470Ω±1% T | RESISTANCE | 470 Ω | ±1 % | - | 250 mW | MF T",
        "27V | VOLTAGE | 27 V | - | - | - | -",
        "ZENER,27V | VOLTAGE | 27 V | - | - | - | ZENER",
        "5V1 | VOLTAGE | 5.1 V | - | - | - | -",
        "BZX55C5V1 | VOLTAGE | 5.1 V | - | - | - | BZX55C",
        "500mA | CURRENT | 500 mA | - | - | - | -",
        "16MHz | FREQUENCY | 16 MHz | - | - | - | -",
        "CRYSTAL 16MHZ | FREQUENCY | 16 MHz | - | - | - | CRYSTAL",
        "16mhz | FREQUENCY | 16 MHz | - | - | - | -",
        "16m | FREQUENCY | 16 MHz | - | - | - | -",
        "32.768KHZ | FREQUENCY | 32.768 kHz | - | - | - | -",
        "8MHz-18pF | FREQUENCY | 8 MHz | - | - | - | 18pF",
        "4k7 | - | 4.7 kΩ | - | - | - | -",
        "10k | - | 10 kΩ | - | - | - | -",
        "100nF 50V | - | 100 nF | - | 50 V | - | -",
        "100n | - | 100 nF | - | - | - | -",
        "10uH | - | 10 µH | - | - | - | -",
        "220R | - | 220 Ω | - | - | - | -",
      })
  void a_written_value_is_read(
      String text,
      Dimension expected,
      String value,
      String tolerance,
      String voltage,
      String power,
      String leftover) {
    Reading<WrittenValue> reading = WrittenValue.parse(text, Optional.ofNullable(expected));
    if (value == null) {
      assertFalse(reading.isRead(), reading::toString);
      return;
    }
    assertTrue(reading.isRead(), reading::toString);
    WrittenValue written = reading.orThrow();
    assertEquals(value, written.value().toString());
    assertEquals(Optional.ofNullable(tolerance), written.tolerance().map(Object::toString));
    assertEquals(Optional.ofNullable(voltage), written.voltage().map(Quantity::toString));
    assertEquals(Optional.ofNullable(power), written.power().map(Quantity::toString));
    assertEquals(leftover == null ? "" : leftover, written.leftover());
    assertFalse(reading.rule().isEmpty());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "1N4148",
        "1n4148",
        "1N4001",
        "LM7805",
        "7805",
        "BC547",
        "BC547B",
        "74HC245",
        "2N7000",
        "2n7000",
        "2N3904",
        "TIP120",
        "4N35",
        "4n35",
        "4N25",
        "6N137",
        "6n137",
        "4040",
        "CD4026BE",
        "555",
        "NE555",
        "ULN2803A",
        "6A05-T",
        "MCT6H",
        "LM2596S-5.0",
        "1N5822",
        "TL431",
        "IRLZ44N",
        "R_Small_US",
        "Conn_01x02",
        "DIP-16_W7.62mm",
        "PinHeader_1x01_P1.00mm_Vertical",
        "12x12mm tactile switch",
        "EC2-4.5NU",
        "HC-49/U",
        "16MHz",
        "16 MHz",
        "12 cm",
        "2 pin",
        "4mm OD plastic tubing",
        "M3",
        "WS2812B",
        "78L05",
        "2SC1815",
        "MountingHole",
        "?",
        "",
        " ",
        "DNP",
        "-",
        "5 M",
        "4 H",
        "LED 3mm",
        "10x12.5mm",
        "3V3",
        "5V",
        "1A",
        "F1A",
        "PIC16F628A",
        "1N4733A",
        "BZX55C5V1",
        "100",
        "1K x 2 4k7",
        "XC9572XL-10PCG44C",
        "24C02",
        "93C46",
        "62256",
        "27C256",
        "Arduino Nano",
        "PUN-4x0.75",
        "C1206C226M8RACTU",
        "0,1"
      })
  void without_a_kind_of_part_a_type_number_is_no_value(String text) {
    Reading<WrittenValue> reading = WrittenValue.parse(text, Optional.empty());
    assertFalse(reading.isRead(), () -> text + " was read as " + reading);
    assertFalse(reading.fault().isEmpty());
    assertFalse(reading.remedy().isEmpty());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "1N4148",
        "LM7805",
        "BC547",
        "74HC245",
        "R_Small_US",
        "Conn_01x02",
        "100nF",
        "10uH",
        "1,000",
        "4,700",
        "103",
        "472",
        "1E3",
        "10k 22k",
        "4m7",
        "DNP",
        "",
        "Rsense",
        "2N7000",
        "4k7k7",
        "k",
        "..",
        "1.2.3",
        "4..7k",
        "2x10k"
      })
  void a_resistor_cell_without_one_clear_resistance_is_not_guessed(String text) {
    Reading<WrittenValue> reading = WrittenValue.parse(text, Optional.of(Dimension.RESISTANCE));
    assertFalse(reading.isRead(), () -> text + " was read as " + reading);
  }

  @ParameterizedTest
  @ValueSource(strings = {"100", "22", "4700", "2,200uF", "10k", "4k7", "BC547", "1N4148", "4N35"})
  void a_capacitor_cell_without_one_clear_capacitance_is_not_guessed(String text) {
    Reading<WrittenValue> reading = WrittenValue.parse(text, Optional.of(Dimension.CAPACITANCE));
    if (text.equals("4N35")) {
      assertEquals("4.35 nF", reading.orThrow().value().toString());
    } else {
      assertFalse(reading.isRead(), () -> text + " was read as " + reading);
    }
  }

  @Test
  void no_text_whatsoever_makes_it_throw() {
    var random = new Random(20261125);
    String alphabet = "0123456789kKMRrnuµpmFΩHVW%±+-/,. eE()[]\u0000\u00a0ohmABCJ;_";
    for (int round = 0; round < 200_000; round++) {
      var text = new StringBuilder();
      int length = random.nextInt(14);
      for (int i = 0; i < length; i++) {
        text.append(alphabet.charAt(random.nextInt(alphabet.length())));
      }
      Optional<Dimension> expected =
          round % 2 == 0
              ? Optional.empty()
              : Optional.of(Dimension.values()[random.nextInt(Dimension.values().length)]);
      Reading<WrittenValue> reading = WrittenValue.parse(text.toString(), expected);
      assertTrue(
          reading.isRead() ? reading.fault().isEmpty() : !reading.remedy().isEmpty(),
          text::toString);
    }
  }

  /** A guess at a custom is told as one, so that a person can disagree with it. */
  @ParameterizedTest(name = "{0}: {2}")
  @CsvSource({
    "100E, RESISTANCE, 'E for ohms, an older custom'",
    "4E7, RESISTANCE, 'E for ohms, an older custom'",
    "1mF, CAPACITANCE, mF as millifarad; some old sheets meant µF",
    "10MFD, CAPACITANCE, MF and MFD are old for µF",
    "10MF, CAPACITANCE, MF and MFD are old for µF",
    "10mfd, CAPACITANCE, MF and MFD are old for µF",
    "100nFF, CAPACITANCE, unit with a slip of the pen",
  })
  void an_old_custom_is_named(String text, Dimension dimension, String rule) {
    assertEquals(rule, WrittenValue.parse(text, Optional.of(dimension)).rule());
  }

  @Test
  void what_is_no_custom_is_not_called_one() {
    String rule = WrittenValue.parse("100R", Optional.of(Dimension.RESISTANCE)).rule();
    assertFalse(rule.contains("custom"), rule);
    String plain = WrittenValue.parse("100nF", Optional.of(Dimension.CAPACITANCE)).rule();
    assertFalse(plain.contains("old") || plain.contains("slip"), plain);
  }

  @Test
  void farads_alone_are_a_value_only_where_a_capacitance_is_looked_for() {
    assertEquals("1 F", value("1 F", Optional.of(Dimension.CAPACITANCE)));
    assertEquals("", value("1 F", Optional.empty()));
  }

  private static String value(String text, Optional<Dimension> expected) {
    return WrittenValue.parse(text, expected)
        .value()
        .map(written -> written.value().toString())
        .orElse("");
  }

  @Test
  void only_an_amount_of_what_is_measured_shows_its_unit() {
    assertTrue(WrittenValue.showsUnit("4k7", Dimension.RESISTANCE));
    assertFalse(WrittenValue.showsUnit("4k7", Dimension.CAPACITANCE));
    assertFalse(WrittenValue.showsUnit("a resistor", Dimension.RESISTANCE));
    assertFalse(WrittenValue.showsUnit("4k7 " + "x".repeat(10_000), Dimension.RESISTANCE));
  }

  @Test
  void only_letters_of_that_script_are_looked_at_for_its_units() {
    assertTrue(CyrillicUnits.mayStandIn("10 к"));
    assertFalse(CyrillicUnits.mayStandIn("10 kΩ ½ µ \u2126"));
  }
}
