package lowfirst.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lowfirst.board.Designator;
import lowfirst.board.Kit;
import lowfirst.board.SampleBoards;
import lowfirst.board.Unit;
import lowfirst.board.UnitChannels;
import lowfirst.intake.KitFiles;
import lowfirst.intake.KitReader;
import lowfirst.part.PartKind;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.sorting.LookAlike;
import lowfirst.sorting.LookAlikes;
import lowfirst.sorting.Meter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lists, amounts, look-alikes and currents in words. */
class WordsTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "R1 | R1",
        "R1 R2 | R1, R2",
        "R1 R2 R3 | R1-R3",
        "R1 R2 R3 R5 R6 | R1-R3, R5, R6",
        "R3 R2 R1 | R3, R2, R1",
        "R9 R10 R11 C12 | R9-R11, C12",
        "R1 R02 R3 | R1, R02, R3",
        "R1 R2 R2 R3 | R1, R2, R2, R3",
        "IN OUT R1A | IN, OUT, R1A",
      })
  void runs_of_three_and_more_designators_are_joined(String names, String words) {
    assertEquals(
        words, DesignatorWords.list(Stream.of(names.split(" ")).map(Designator::of).toList()));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "R12: 4.7 kΩ ±1 % | R 12: 4.7 kiloohms plus or minus 1 per cent",
        "100 nF at 63V | 100 nanofarads at 63 volts",
        "3 × 2.5 mm | 3 times 2.5 millimetres",
        "5 mA, 5 MW | 5 milliamperes, 5 megawatts",
        "10–20 Hz | 10 to 20 hertz",
        "4 Values | 4 Values",
      })
  void a_voice_says_units_in_full_and_figures_apart(String text, String spoken) {
    assertEquals(spoken, Spoken.of(text));
  }

  @ParameterizedTest
  @CsvSource({
    "http://192.168.1.20:7000, http://192.168.1.20:7000/step/3",
    "http://bench//, http://bench/step/3",
    "'', step 3 of driver-2",
  })
  void a_code_leads_to_the_step_or_names_it(String bench, String text) {
    var address = new StepAddress(bench.isEmpty() ? Optional.empty() : Optional.of(bench));
    assertEquals(text, address.of(3, new Unit("driver", 2)));
  }

  @ParameterizedTest
  @CsvSource({"0.001, 1000 µF", "0.0047, 4700 µF", "0.00047, 470 µF", "1e-7, 100 nF"})
  void capacitors_are_in_microfarads_however_large(String farads, String words) {
    assertEquals(words, MarkingWords.value(Quantity.of(farads, Dimension.CAPACITANCE)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "RESISTOR | 4k7 | '' ",
        "MOSFET | BP-N60L | printed BP-N60L",
        "LED | red | ''",
        "UNKNOWN | X1 | ''",
        "SOCKET | 8-pin | ''",
      })
  void what_stands_on_a_part_is_said_where_it_bears_anything(
      PartKind kind, String text, String words) {
    assertEquals(
        words.equals("''") ? "" : words, MarkingWords.of(SampleBoards.type(kind, text, "")));
  }

  // --- look-alikes

  @Test
  void why_two_parts_are_alike_and_what_a_mix_up_does_is_said() {
    Kit kit =
        kit(
            "bom.csv",
            """
            designators,value,package,description,tolerance
            R1,10k,DIN0207,,1 %
            R2,120R,DIN0207,,1 %
            C1,10p,,ceramic,
            C2,100p,,ceramic,
            C3,47n 50V,,ceramic,
            C4,47n 100V,,ceramic,
            L1,47mH,,choke,
            """);
    List<LookAlike> found = LookAlikes.in(kit);
    assertTrue(said(found, "10 kΩ").contains(" from the other end is "), said(found, "10 kΩ"));
    assertTrue(
        said(found, "10 pF").contains("100 is a digit code of one, and as a number the other"),
        said(found, "10 pF"));
    assertTrue(said(found, "50 V").contains("the same value; only a rating"), said(found, "50 V"));
    assertTrue(said(found, "47 mH").contains("both may be printed 473"), said(found, "47 mH"));
    LookAlike rating =
        found.stream()
            .filter(one -> LikenessWords.why(one).startsWith("the same value"))
            .findFirst()
            .orElseThrow();
    assertTrue(
        LikenessWords.consequence(rating).startsWith("a part loses its protection"),
        LikenessWords.consequence(rating));
    assertEquals(
        "read the rating on the body or its bag, and compare the sizes",
        LikenessWords.test(rating));
    assertEquals(
        "not the 47 nF ceramic capacitor, 100 V: the same value, another rating. Read the rating on the"
            + " body or its bag, and compare the sizes.",
        BriefLikeness.of(rating, rating.one().number()));
  }

  private static String said(List<LookAlike> found, String part) {
    StringBuilder said = new StringBuilder();
    for (LookAlike alike : found) {
      String pair = alike.one().uses() + " " + words(alike.one()) + words(alike.other());
      if (pair.contains(part)) {
        said.append(LikenessWords.why(alike)).append(" | ");
      }
    }
    return said.toString();
  }

  private static String words(lowfirst.sorting.Compartment compartment) {
    return compartment.type().value().map(Object::toString).orElse("")
        + " "
        + compartment.type().ratedVoltage().map(Object::toString).orElse("")
        + " ";
  }

  // --- readings

  @Test
  void a_reading_to_accept_is_said_with_what_it_rests_on() {
    Kit kit =
        kit(
            "kit.properties",
            "meter = 0 % + 3 of 1000\n",
            "bom.csv",
            "designators,value,tolerance\nR1,50,10 %\nR2,5,\nR3,10,2 %\nD1,1N4148,\nF1,2 A fuse,\nU1,NE555,\n");
    // 3 counts of 0.1 Ω are w = 0.346 Ω about the limits of 45 and 55 Ω.
    assertEquals(
        "44.6 Ω to 55.4 Ω (±10 % and the meter's own error); surely within ±10 % from 45.4 Ω to"
            + " 54.6 Ω",
        reading(kit, 0));
    assertTrue(reading(kit, 1).contains("±5 %, assumed"), reading(kit, 1));
    assertTrue(reading(kit, 1).endsWith("; take off what the joined probes read"), reading(kit, 1));
    assertTrue(reading(kit, 3).startsWith("diode test: about 0.5 to 0.8 V"), reading(kit, 3));
    assertEquals("next to 0 Ω", reading(kit, 4));
    assertEquals("", reading(kit, 5));
  }

  /**
   * 3 counts of 10 pF, the last digit of 10 nF in 1000 counts, are w = 35 pF about 20.9 and 23.1.
   */
  @Test
  void a_value_below_what_the_meter_shows_has_no_lower_reading() {
    Kit kit =
        kit(
            "kit.properties",
            "meter capacitance = 0 % + 3 of 1000\n",
            "bom.csv",
            "designators,value,tolerance\nC1,22p,5 %\n");
    assertEquals(
        "up to 60 pF (±5 % and the meter's own error); this meter can't prove ±5 %",
        reading(kit, 0));
  }

  private static String reading(Kit kit, int item) {
    return ReadingWords.of(
        kit.boards().get(0).items().get(item).partType(), Meter.of(kit.settings()));
  }

  // --- currents and channels

  /** By hand: 24 V over 12 Ω is 2 A, 48 W at 24 V is 2 A; both off by 5 % make 10 %. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "current=3 A | 3 A",
        "current=3 A,tolerance=10 % | 3 A (2.7 A to 3.3 A)",
        "resistance=12 Ω | 2 A (1.9 A to 2.1 A)",
        "resistance=12 Ω,tolerance=5 % | 2 A (1.8 A to 2.2 A)",
        "power=48 W | 2 A (1.9 A to 2.1 A)",
        "current=3 A,inrush=9 A | 3 A; at switching on up to 9 A",
        "on time=2 s | not known: write the current of \"bell\" in loads.csv",
      })
  void a_load_takes_what_its_data_give(String data, String words) {
    String[] pairs = data.split(",");
    String header = "load,kind,rail";
    String row = "bell,solenoid,bells";
    for (String pair : pairs) {
      header += "," + pair.split("=")[0];
      row += "," + pair.split("=")[1];
    }
    Kit kit =
        kit(
            "rails.csv",
            "rail,voltage,tolerance\nbells,24 V,5 %\n",
            "loads.csv",
            header + "\n" + row + "\n");
    assertEquals(words, ExpectedCurrent.words(kit.loads().get(0), Optional.of(kit.rails().get(0))));
    assertTrue(
        ExpectedCurrent.words(kit.loads().get(0), Optional.empty())
            .startsWith(data.startsWith("current") ? "3 A" : "not known"));
  }

  @Test
  void a_unit_has_the_channels_that_bear_its_serial_or_all() {
    assertEquals(
        List.of("driver-1", "driver-1.2"), channels("driver-1,driver-1.2,driver-2.1,driver-12"));
    assertEquals(List.of("a", "b"), channels("a,b"));
  }

  private static List<String> channels(String names) {
    Kit kit =
        kit(
            "boards.csv",
            "board,count,bom\ndriver,2,bom.csv\nother,1,bom.csv\n",
            "bom.csv",
            "designators,value\nR1,1k\n",
            "channels.csv",
            "channel,board\n" + names.replace(",", ",driver\n") + ",driver\nx,other\n");
    return UnitChannels.of(kit, new Unit("driver", 1)).stream()
        .map(channel -> channel.name())
        .toList();
  }

  private static Kit kit(String... namesAndTexts) {
    var files = new java.util.TreeMap<String, byte[]>();
    for (int i = 0; i < namesAndTexts.length; i += 2) {
      files.put(
          namesAndTexts[i], namesAndTexts[i + 1].getBytes(java.nio.charset.StandardCharsets.UTF_8));
    }
    return KitReader.read(new KitFiles("kit", files, List.of())).kit();
  }
}
