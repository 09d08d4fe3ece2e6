package lowfirst.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import lowfirst.cli.process.ExitStatus;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The verb code, in-process. */
class CodeCommandTest {

  @Test
  void a_print_is_said_with_every_part_that_may_carry_it() {
    assertEquals(
        """
        473
        ===

        What it is
        ----------

        meanings
        on a       it means  read as
        ---------  --------  ------------------------------------------
        resistor   47 kΩ     two figures and the number of zeros, in Ω
        capacitor  47 nF     two figures and the number of zeros, in pF
        inductor   47 mH     two figures and the number of zeros, in µH

        The print alone can't tell: the kind of part decides. A resistor reads its value on a meter, a
        capacitor goes to open, an inductor reads a few ohms.
        """,
        Outcome.of("code", "473").out());
  }

  @Test
  void a_tolerance_without_a_colour_is_refused_and_the_rest_is_still_said() {
    assertEquals(
        """
        2.2k
        ====

        What it is
        ----------

        value    2.2 kΩ
        read as  number with a prefix

        How 2.2 kΩ is written on parts
        ------------------------------

        codes
        form   marking  read as
        -----  -------  -----------------------------------------------------------------------
        bands  none     the colour code can't write ±7 %: no colour stands for this tolerance
        print  2K2      RKM code (IEC 60062)
        print  222      figures and the number of zeros
        """
            .replaceAll("-{20,}", "-"),
        Outcome.of("code", "2.2k", "--tolerance", "7%").out().replaceAll("-{20,}", "-"));
  }

  @ParameterizedTest
  @CsvSource({
    "brown black orange gold, 0, 10 kΩ ±5 %",
    "BN BK OG GD, 0, 10 kΩ ±5 %",
    "BNBKOGGD, 0, 10 kΩ ±5 %",
    "BN BK BK RD BN, 1, ambiguous: measure it",
    "BN BK BK RD BN --from-start, 0, 10 kΩ ±1 %",
    "4k7, 0, [YE VT RD GD]",
    "104K, 0, '100 nF, ±10 %'",
    "red violet brown black --as inductor, 0, 270 µH ±20 %",
    "4.7k --tolerance 1%, 0, [YE VT BK BN BN]",
    "4.7k --tolerance 1% --coefficient 50, 0, [YE VT BK BN BN RD]",
    "red red black brown grey --edition older --from-start, 0, ±0.05 %",
    "X7R, 0, '-55 to +125 °C, ±15 %'",
    "1H, 0, rated 50 V",
    "BC547, 0, a type number",
    "1n4148, 0, 'diode  a type number'",
    "78L05, 0, 'regulator  5 V'",
    "4n35, 0, optocoupler",
    "4n35, 0, 4.35 nF",
    "T500mAL250V, 0, 'fuse  500 mA, rated 250 V, time-lag (slow); low'",
    "XQ9, 1, No code of a value",
    "B10K, 0, 'potentiometer  10 kΩ, B: linear, on older European'",
    "470 16V, 0, 'capacitor  470 µF, rated 16 V'",
    "470 16V, 0, 'The print alone can''t tell: measure the part.'",
    "16.000, 0, 'in µF; rare'",
    "5D-9, 0, 9 mm wide",
    "1N5819, 0, Schottky",
    "black red, 1, no code"
  })
  void one_marking_is_looked_up(String line, int status, String said) {
    String[] words = ("code " + line).split(" ");
    Outcome outcome = Outcome.of(words);
    assertEquals("", outcome.err());
    assertTrue(outcome.out().contains(said), outcome::out);
    assertEquals(status, outcome.status(), outcome::out);
  }

  @ParameterizedTest
  @CsvSource({
    "code, Missing required parameter",
    "code 4k7 --as spoon, --as: write resistor",
    "code 4k7 --edition 1066, --edition: write 2016 or older",
    "code 4k7 --tolerance much, --tolerance: write per cent",
    "code 4k7 --tolerance -1%, --tolerance: write per cent"
  })
  void a_slip_in_the_options_is_named_and_nothing_is_printed(String line, String said) {
    Outcome outcome = Outcome.of(line.split(" "));
    assertEquals(ExitStatus.USAGE, outcome.status());
    assertEquals("", outcome.out());
    assertTrue(outcome.err().contains(said), outcome::err);
  }

  @Test
  void machines_get_one_table() {
    String csv = Outcome.of("code", "473", "--csv").out();
    assertTrue(csv.startsWith("section,table,"), csv);
    assertTrue(csv.contains("capacitor,47 nF"), csv);
  }
}
