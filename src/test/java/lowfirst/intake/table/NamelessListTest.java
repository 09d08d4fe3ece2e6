package lowfirst.intake.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lowfirst.intake.KitReading;
import lowfirst.intake.KitTables;
import lowfirst.problem.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** BOMs that say what to buy, and not where it goes. */
class NamelessListTest {
  private static List<String> bought(KitReading reading) {
    return reading.kit().boards().get(0).items().stream()
        .map(
            item ->
                item.quantity()
                    + " "
                    + item.partType().value().map(Object::toString).orElse(item.partType().text())
                    + " "
                    + item.partType().kind().words())
        .toList();
  }

  private static List<String> bought(String text) {
    return bought(KitTables.read("bom.csv", text));
  }

  @Test
  void a_table_with_counts_tells_the_bag_and_that_nobody_knows_where_parts_go() {
    KitReading reading =
        KitTables.read(
            "bom.csv",
            "Order no;Designation;Number;Price;Link\n"
                + "4711234;Chip resistor 1R;10;0,012;http://dealer.example/1r\n"
                + "4711235;Diode 1N4001;2;0,208;http://dealer.example/1n4001\n"
                + "4711236;Pin header 1x03;1;0,14;http://dealer.example/header\n");
    assertEquals(
        List.of("10 1 Ω resistor", "2 Diode 1N4001 diode", "1 Pin header 1x03 pin header"),
        bought(reading));
    assertEquals("1N4001", reading.kit().boards().get(0).items().get(1).partType().typeNumber());
    assertTrue(
        reading.problems().stream()
            .anyMatch(
                p ->
                    p.kind() == Kind.HEADER_NOT_FOUND
                        && p.message().endsWith("nobody knows where they go")),
        reading.problems().toString());
  }

  @Test
  void a_list_of_lines_counts_before_or_behind_what_there_is_to_buy() {
    assertEquals(
        List.of(
            "2 LM358 dual op amp integrated circuit",
            "5 330 Ω resistor",
            "3 toggle switch switch",
            "4 100 nF capacitor",
            "1 NE555 timer integrated circuit",
            "2 1N4148 diode"),
        bought(
            "2x LM358 dual op amp\n5 x 330 ohm resistors\n3 toggle switch\n100 nF capacitors (4)\n"
                + "- NE555 timer -\n1N4148 x2\n"));
  }

  /** A number may belong to the part: a timer 555, a regulator 7812, a switch of 2 by 6. */
  @ParameterizedTest
  @CsvSource({
    "555 timer, 1",
    "7812 regulator, 1",
    "2x6 switch (x4), 4",
    "12 V relay, 1",
    "2*22pF, 2",
    "10 resistors 1k, 10",
    "16 MHz crystal, 1",
    "3 pcs LED red, 3"
  })
  void what_counts_is_told_from_what_names(String line, int quantity) {
    KitReading reading =
        KitTables.read("bom.txt", "4x red LED\n2x diode 1N4148\n3x 10k resistor\n" + line + "\n");
    assertEquals(quantity, reading.kit().boards().get(0).items().get(3).quantity());
  }

  @Test
  void lines_that_name_no_part_are_said() {
    KitReading reading =
        KitTables.read(
            "bom.txt", "Things for the bell board\n2x LED red\n1x 10k resistor\n3x diode 1N4148\n");
    assertEquals(3, reading.kit().boards().get(0).items().size());
    assertEquals(
        List.of(
            "this line says neither how many nor a known word for a part (\"Things for the bell"
                + " board\"), so nothing was read from it"),
        reading.problems().stream()
            .filter(p -> p.kind() == Kind.ROW_IGNORED)
            .map(p -> p.message())
            .toList());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "This board rings the bells.\nIt has two outputs.\nMind the polarity of the supply.\n",
        "Name,Amount\nfee,12\nrent,400\nwater,30\n",
        "2x\n3x\n4x\n"
      })
  void other_texts_list_nothing(String text) {
    assertEquals(List.of(), bought(text));
  }

  @Test
  void what_an_order_asks_for_is_how_many_there_are() {
    String text =
        "Dealer #,Mfr. #,Maker,Description,Order Qty.,Price\n"
            + "77-AB1,AB1,Bell Works,Carbon film resistors 220 ohms 5%,5,0.10\n"
            + "77-AB2,AB2,Bell Works,Ceramic capacitor 100nF 50V,4,0.11\n"
            + "77-1N5822,1N5822,Bell Works,Schottky diode 3A,3,0.32\n";
    KitReading reading = KitTables.read("bom.csv", text);
    assertEquals(
        List.of(5, 4, 3),
        reading.kit().boards().get(0).items().stream().map(item -> item.quantity()).toList());
  }

  /** Above and below a list with bullets words speak of parts, too. */
  @Test
  void of_prose_around_bullets_nothing_is_read_and_one_thing_said() {
    KitReading reading =
        KitTables.read(
            "bom.txt",
            "10k potentiometers are sold at the dealer's\n\nFinal parts list:\n\n- 555 timer in DIP-8\n"
                + "- schottky diodes (2)\n- 100nF capacitor (2)\n- 4.7 KΩ\n- push button\n\nResistors:\n"
                + "diodes\n");
    assertEquals(
        List.of(
            "1 555 timer in DIP-8 integrated circuit",
            "2 schottky diodes Schottky diode",
            "2 100 nF capacitor",
            "1 4.7 kΩ resistor",
            "1 push button switch"),
        bought(reading));
    assertEquals(
        List.of(
            "from here on no line names parts on the board, such as R1, so nobody knows where they"
                + " go"),
        reading.problems().stream()
            .filter(p -> p.kind() == Kind.HEADER_NOT_FOUND)
            .map(p -> p.message())
            .toList());
  }

  /** A bare µ is of farads or of henries. */
  @Test
  void words_over_a_list_tell_what_its_lines_leave_out() {
    assertEquals(
        List.of(
            "7 100 nF capacitor",
            "4 150 Ω resistor",
            "6 1.5 kΩ resistor",
            "2 Red 20mA THT LED",
            "1 10 µH inductor",
            "2 6mm PCB push button switch",
            "1 10µ THT part of unknown kind"),
        bought(
            KitTables.read(
                "bom.txt",
                "Capacitors:\n- 7x 100n 0603\n\nResistances:\n- 4x 150 0603\n- 6x 1k5 0603\n\nLEDs:\n"
                    + "- 2x Red 20mA THT\n\nInductors:\n- 1x 10µ THT\n\nRelays:\n"
                    + "- 2x 6mm PCB push button\n\nOthers:\n- 1x 10µ THT\n")));
  }

  @Test
  void of_a_list_to_buy_neither_its_header_again_nor_its_sum_is_bought_once_more() {
    assertEquals(
        List.of("4 10 kΩ resistor", "2 100 nF capacitor", "3 1 kΩ resistor"),
        bought(
            KitTables.read(
                "bom.csv",
                "Description,Shop,Qty\nResistor 10k,A,4\nCapacitor 100nF,B,2\n,,\n"
                    + "Description,Shop,Qty\nResistor 1k,B,3\nTotal,,9\n")));
  }
}
