package lowfirst.sheet.sort;

import static lowfirst.sheet.document.Said.assertSays;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import lowfirst.marking.Edition;
import lowfirst.marking.MarkingLookup;
import lowfirst.marking.PrintedReading.Carrier;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Tolerance;
import lowfirst.sheet.document.Document;
import lowfirst.sheet.document.Said;
import org.junit.jupiter.api.Test;

/** What is said of one marking; values by IEC 60062. */
class CodeDocumentTest {

  private static Document code(String text) {
    return CodeDocument.of(
        MarkingLookup.of(text, MarkingLookup.Question.plain()), Optional.empty());
  }

  private static Document codeOn(Carrier carrier, String text) {
    return CodeDocument.of(
        MarkingLookup.of(
            text,
            new MarkingLookup.Question(
                Optional.of(carrier),
                Edition.IEC_60062_2016,
                MarkingLookup.Start.UNKNOWN,
                Optional.empty(),
                OptionalInt.empty())),
        Optional.empty());
  }

  private static boolean says(Document document, String start) {
    return Said.lines(document).stream().anyMatch(line -> line.startsWith(start));
  }

  /** 4.7 kΩ less and more 5 %: 4465 to 4935 Ω. */
  @Test
  void four_bands_are_told_band_by_band_with_what_they_could_be_else() {
    assertSays(
        code("ye vt rd gd"),
        "ye vt rd gd",
        "[YE VT RD GD]",
        "# What it is",
        "resistor: 4.7 kΩ ±5 %",
        "that is: 4.465 kΩ to 4.935 kΩ",
        "read as: 4 bands: two figures, multiplier, tolerance",
        "table: IEC 60062:2016",
        "how sure: certain: no other value can be read, from either end",
        "bands: band | code | colour | stands for",
        "1 | YE | yellow | figure 4",
        "2 | VT | violet | figure 7",
        "3 | RD | red | × 10^2",
        "4 | GD | gold | tolerance ±5 %",
        "# What else it could be",
        "inductor | 4.7 mH ±5 % | 4 bands in µH: two figures, multiplier, tolerance | yes",
        "A moulded inductor (often green or pale blue, below 10 Ω on a meter) can carry the same"
            + " bands as a resistor.",
        "# If one colour was misread",
        "misreadings: band | read | may be | then it is | mistaken by",
        "3 | red | orange | 47 kΩ ±5 % | anybody in poor light",
        "3 | red | green | 4.7 MΩ ±5 % | green-blind eyes");
    assertFalse(says(code("ye vt rd gd"), "by edition"));
  }

  @Test
  void five_and_six_bands_have_three_figures() {
    assertSays(
        code("bn bk bk gd gd"),
        "resistor: 10 Ω ±5 %",
        "3 | BK | black | figure 0",
        "4 | GD | gold | × 10^-1",
        "5 | GD | gold | tolerance ±5 %");
    Document six = code("bn rd bk rd bn rd");
    assertSays(
        six,
        "resistor: 12 kΩ ±1 %, 50 ppm/K",
        "how sure: likely: the other readings are no values that shops sell; a measurement settles"
            + " it",
        "5 | BN | brown | tolerance ±1 %",
        "6 | RD | red | 50 ppm/K",
        "# What else it could be",
        "resistor | 212 Ω ±2 %, 100 ppm/K | 6 bands: three figures, multiplier, tolerance, temperature"
            + " coefficient, from the other end | no preferred number");
    assertFalse(says(six, "A moulded inductor"), "inductors have no six bands");
  }

  @Test
  void bands_given_from_the_wrong_end_are_turned_round() {
    Document turned = code("gd rd vt ye");
    assertSays(
        turned,
        "resistor: 4.7 kΩ ±5 %",
        "read as: 4 bands: two figures, multiplier, tolerance, from the other end",
        "1 | YE | yellow | figure 4",
        "3 | red | orange | 47 kΩ ±5 % | anybody in poor light");
  }

  @Test
  void a_black_band_alone_is_a_link() {
    Document link = code("black");
    assertSays(link, "resistor: 0 Ω", "1 | BK | black | 0 Ω link");
    assertFalse(says(link, "that is: "), "nothing has no limits");
    assertFalse(says(link, "# What else"));
    assertFalse(says(link, "# If one colour"));
    List<String> codes = Said.rows(code("0"), "codes");
    assertEquals(codes.stream().distinct().toList(), codes);
    assertTrue(
        codes.contains("bands | [BK] black | single black band: 0 Ω link"), codes.toString());
  }

  @Test
  void bands_on_an_inductor_are_read_in_microhenries() {
    Document inductor = codeOn(Carrier.INDUCTOR, "ye vt bk gd");
    assertSays(
        inductor,
        "inductor: 47 µH ±5 %",
        "that is: 44.65 µH to 49.35 µH",
        "table: EIA and MIL-C-15305 custom for moulded inductors",
        "3 | BK | black | × 10^0");
    assertFalse(says(inductor, "A moulded inductor"));
    assertFalse(says(codeOn(Carrier.RESISTOR, "ye vt bk gd"), "A moulded inductor"));
  }

  @Test
  void bands_that_are_no_code_are_told_so() {
    assertSays(
        code("bk bk bk"),
        "[BK BK BK]",
        "These bands are no code, from neither end. A code's first band is never black, gold, silver"
            + " or pink. Look again in daylight, or measure the part.");
  }

  @Test
  void a_text_that_is_no_value_may_be_a_type_number() {
    assertSays(
        code("BC547"),
        "No code of a value: no value is written here. It may be a type number: look it up in its"
            + " datasheet. Colours are written as words or two-letter codes, such as \"yellow violet"
            + " red gold\" or \"YE VT RD GD\".");
  }

  @Test
  void a_print_means_what_the_part_makes_of_it() {
    Document three = code("473");
    assertSays(
        three,
        "meanings: on a | it means | read as",
        "resistor | 47 kΩ | two figures and the number of zeros, in Ω",
        "capacitor | 47 nF | two figures and the number of zeros, in pF",
        "inductor | 47 mH | two figures and the number of zeros, in µH",
        "The print alone can't tell: the kind of part decides. A resistor reads its value on a meter,"
            + " a capacitor goes to open, an inductor reads a few ohms.");
    assertFalse(says(three, "# How "));
    Document one = codeOn(Carrier.RESISTOR, "473J");
    assertSays(
        one,
        "resistor | 47 kΩ, ±5 % | two figures and the number of zeros, in Ω",
        "# How 47 kΩ is written on parts");
    assertFalse(says(one, "The print alone"));
  }

  @Test
  void a_value_is_told_with_how_it_is_written_on_parts() {
    assertSays(
        code("4k7"),
        "resistor | 4.7 kΩ | RKM code (IEC 60062)",
        "# How 4.7 kΩ is written on parts",
        "codes: form | marking | read as",
        "bands at ±5 % | [YE VT RD GD] yellow violet red gold | 4 bands: two figures, multiplier,"
            + " tolerance",
        "bands at ±1 % | [YE VT BK BN BN] yellow violet black brown brown | 5 bands: three figures,"
            + " multiplier, tolerance",
        "print | 4K7 | RKM code (IEC 60062)",
        "print | 472 | figures and the number of zeros");
    assertSays(
        code("4k7 5% 0.25W"),
        "value: 4.7 kΩ, ±5 %, 250 mW",
        "read as: RKM code (IEC 60062)",
        "print | 4K7J | RKM code (IEC 60062)");
    assertSays(code("100n 50V X7R"), "value: 100 nF, 50 V; not read: X7R");
  }

  /** Three figures and a power of ten can't write five figures. */
  @Test
  void what_bands_cannot_say_is_refused_with_the_reason() {
    List<String> rows = Said.rows(code("4712.3 Ω"), "codes");
    assertTrue(rows.stream().anyMatch(row -> row.startsWith("bands | none | ")), rows.toString());
    assertTrue(
        rows.stream().noneMatch(row -> row.matches("bands \\| none \\| *")), rows.toString());
  }

  @Test
  void a_tolerance_has_its_unit() {
    Quantity farads = Quantity.of("4.7E-12", Dimension.CAPACITANCE);
    assertEquals("±5 %", CodeDocument.shown(Tolerance.percent("5"), farads));
    assertEquals("±2 pF", CodeDocument.shown(Tolerance.absolute("2E-12"), farads));
  }
}
