package lowfirst.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;

import lowfirst.board.Item;
import lowfirst.part.PartKind;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What a BOM line is taken for when its columns say different things. */
class PartKindTest {
  @ParameterizedTest(name = "{0} {1} {2} {3} is a {4}")
  @CsvSource({
    // a frequency alone is the value of a crystal, whatever letter the layout gave it
    "Q1, 4MHz, XTAL/S, QS, CRYSTAL",
    "Q2, '32,768 kHz', '', HC49, CRYSTAL",
    "Y1, 16 MHz, '', '', CRYSTAL",
    "Q3, BC547, '', TO-92, BIPOLAR_TRANSISTOR",
    "U1, ATMEGA328P 16MHz, '', DIP-28, INTEGRATED_CIRCUIT",
    // the package names the pitch and diameter of a can
    "C7, 1500u/100V, CPOL-EUE7.5-18, 'E7,5-18', ELECTROLYTIC_CAPACITOR",
    "C8, 1500u/100V, CPOL-EUE7.5-18, '', ELECTROLYTIC_CAPACITOR",
    "C1, 0.1uF, C-EU050-025X075, C050-025X075, CAPACITOR",
    // T stands for transistors, transformers and terminals: the letter alone decides nothing
    "T1, Uncoupler 1, 1935161, '', UNKNOWN",
    "T6, Power, 1935161, '', UNKNOWN",
    "T2, BC557, '', TO-92, BIPOLAR_TRANSISTOR",
  })
  void the_kind_is(String designator, String value, String device, String body, PartKind kind) {
    KitReading reading =
        KitTables.read(
            "bom.csv",
            "designators;value;part type;package\n"
                + String.join(";", designator, value, device, body)
                + "\n");
    Item item = reading.kit().boards().get(0).items().get(0);
    assertEquals(kind, item.partType().kind(), reading.problems().toString());
  }

  /**
   * Whatever a kind is called on our own sheets is understood when a list says it; the last three
   * are names for many things.
   */
  @ParameterizedTest
  @EnumSource(
      value = PartKind.class,
      mode = EnumSource.Mode.EXCLUDE,
      names = {"UNKNOWN", "BOARD_FEATURE", "HARDWARE"})
  void every_kind_is_known_by_its_own_words(PartKind kind) {
    KitReading reading =
        KitTables.read("bom.csv", "designators,quantity,description\nZZ1,1," + kind.words() + "\n");
    assertEquals(kind, reading.kit().boards().get(0).items().get(0).partType().kind());
  }
}
