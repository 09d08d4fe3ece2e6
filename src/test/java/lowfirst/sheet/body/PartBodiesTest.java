package lowfirst.sheet.body;

import static lowfirst.board.SampleBoards.type;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import lowfirst.marking.BandSequence;
import lowfirst.part.BodyOutline;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Source;
import lowfirst.quantity.Tolerance;
import lowfirst.sheet.drawing.Drawing;
import lowfirst.sheet.drawing.Shape;
import lowfirst.sorting.PartMarking;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Pictures of parts, shape by shape, in hundredths of a millimetre, added up by hand: half a
 * millimetre around the body, leads that start at it, print in its middle as large as fits (a
 * capital is 0.72 of its height wide, and its middle 0.36 above the baseline).
 */
class PartBodiesTest {

  private static Optional<BodyOutline> outline(
      double length, double width, double height, int pins) {
    return Optional.of(
        new BodyOutline("body", height, 0, length, width, 0, pins, Source.kit("by hand")));
  }

  private static Drawing picture(PartType type, Optional<BodyOutline> outline, String print) {
    return PartPicture.of(
        type,
        outline,
        new PartMarking(List.of(), print.isEmpty() ? List.of() : List.of(print), false));
  }

  private static Drawing picture(PartKind kind, Optional<BodyOutline> outline, String print) {
    return picture(type(kind, "", ""), outline, print);
  }

  private static void assertDrawn(Drawing drawing, String... size_then_shapes) {
    var told =
        Stream.concat(
                Stream.of(
                    told("%s by %s", drawing.widthMillimetres(), drawing.heightMillimetres())),
                drawing.shapes().stream().map(shape -> shape.fold(new Teller())))
            .toList();
    assertEquals(String.join("\n", size_then_shapes), String.join("\n", told));
  }

  private static String told(String format, double... numbers) {
    Object[] words =
        Arrays.stream(numbers)
            .mapToObj(
                number ->
                    java.math.BigDecimal.valueOf(Math.round(number * 100), 2)
                        .stripTrailingZeros()
                        .toPlainString())
            .toArray();
    return String.format(Locale.ROOT, format, words);
  }

  /** A shape in words; a radius of corners is left out. */
  private static final class Teller implements Shape.Pen<String> {
    @Override
    public String line(Shape.Line line) {
      return told("line %s %s to %s %s", line.x1(), line.y1(), line.x2(), line.y2());
    }

    @Override
    public String box(Shape.Box box) {
      return told("box %s %s, %s by %s", box.x(), box.y(), box.width(), box.height());
    }

    @Override
    public String circle(Shape.Circle circle) {
      return told("circle %s %s, %s", circle.x(), circle.y(), circle.radius());
    }

    @Override
    public String path(Shape.Path path) {
      return "path of " + path.points().size();
    }

    @Override
    public String label(Shape.Label label) {
      return label.text() + told(" at %s %s, %s", label.x(), label.y(), label.size());
    }

    @Override
    public String stamp(Shape.Stamp stamp) {
      return "stamp";
    }
  }

  // --- two leads

  @Test
  void a_disc_stands_on_leads_a_third_from_its_middle() {
    assertDrawn(
        picture(PartKind.CERAMIC_CAPACITOR, Optional.empty(), "104"),
        "6 by 10.8",
        "line 1.33 4.5 to 1.33 10.5",
        "line 4.67 4.5 to 4.67 10.5",
        "circle 3 3, 2.5",
        "104 at 3 3.72, 1.99");
    assertDrawn(
        picture(PartKind.VARISTOR, outline(10, 4, 12, 2), "104"),
        "11 by 15.8",
        "line 2.17 9.5 to 2.17 15.5",
        "line 8.83 9.5 to 8.83 15.5",
        "circle 5.5 5.5, 5",
        "104 at 5.5 6.29, 2.2");
  }

  @Test
  void a_box_stands_on_leads_near_its_ends() {
    assertDrawn(
        picture(PartKind.FILM_CAPACITOR, Optional.empty(), "100n"),
        "8 by 11.8",
        "line 1.55 6.5 to 1.55 11.5",
        "line 6.45 6.5 to 6.45 11.5",
        "box 0.5 0.5, 7 by 6",
        "100n at 4 4.29, 2.19");
    assertDrawn(
        picture(type(PartKind.RELAY, "RLY", ""), outline(20, 15, 16, 5), ""),
        "21 by 21.8",
        "line 3.5 16.5 to 3.5 21.5",
        "line 17.5 16.5 to 17.5 21.5",
        "box 0.5 0.5, 20 by 16",
        "RLY at 10.5 9.29, 2.2");
    // A text of up to 14 letters is printed where nothing else is known.
    assertEquals(
        4,
        picture(type(PartKind.RELAY, "14 letters now", ""), Optional.empty(), "").shapes().size());
    assertEquals(
        3,
        picture(type(PartKind.RELAY, "15 letters here", ""), Optional.empty(), "").shapes().size());
  }

  @Test
  void a_can_has_a_stripe_of_minus_signs_over_its_shorter_lead() {
    assertDrawn(
        picture(PartKind.ELECTROLYTIC_CAPACITOR, Optional.empty(), "100 µF 25 V"),
        "8.3 by 18.5",
        "line 3.08 11.5 to 3.08 18",
        "line 6.92 11.5 to 6.92 16.5",
        "box 1.5 0.5, 6.3 by 11",
        "box 6.29 0.5, 1.26 by 11",
        "− at 6.92 3.75, 2.2",
        "− at 6.92 6.5, 2.2",
        "− at 6.92 9.25, 2.2",
        "100 µF at 3.89 4.56, 1.05",
        "25 V at 3.89 7.17, 1.58",
        "+ at 1.68 16.5, 2.2");
    // A thin can is drawn 5 mm wide, so that its print can be read.
    Drawing thin = picture(PartKind.ELECTROLYTIC_CAPACITOR, outline(4, 4, 7, 2), "10µ");
    assertTrue(
        thin.shapes().stream().anyMatch(s -> s.fold(new Teller()).equals("box 1.5 0.5, 5 by 7")));
    assertEquals(9, thin.shapes().size());
  }

  @Test
  void a_drop_has_its_plus_over_the_longer_lead() {
    assertDrawn(
        picture(PartKind.TANTALUM_CAPACITOR, Optional.empty(), "10"),
        "6 by 14",
        "line 1.75 5.5 to 1.75 13.5",
        "line 4.25 5.5 to 4.25 12",
        "circle 3 3, 2.5",
        "10 at 3 3.79, 2.2",
        "+ at 0.75 8, 2.2");
  }

  @Test
  void a_trimmer_has_three_leads() {
    assertDrawn(
        picture(PartKind.TRIMMER, Optional.empty(), "103"),
        "10.5 by 13.8",
        "line 2.69 10 to 2.69 13.5",
        "line 5.25 10 to 5.25 13.5",
        "line 7.82 10 to 7.82 13.5",
        "box 0.5 0.5, 9.5 by 9.5",
        "circle 8.48 2.02, 0.95",
        "103 at 5.25 6.99, 2.2");
  }

  @Test
  void a_wire_link_is_a_bracket() {
    assertDrawn(picture(PartKind.WIRE_LINK, Optional.empty(), ""), "12 by 7.5", "path of 4");
  }

  /** A size that is too small to be true, or not known, leaves the usual body. */
  @ParameterizedTest
  @CsvSource({
    "CERAMIC_CAPACITOR, 2, 2, 3",
    "FILM_CAPACITOR, 1, 1, 1",
    "ELECTROLYTIC_CAPACITOR, 2, 2, 3",
    "TANTALUM_CAPACITOR, 2, 2, 3",
    "TRIMMER, 3, 3, 3",
    "DIODE, 2, 1, 1",
    "LED, 1, 1, 1",
    "SCREW_TERMINAL, 4, 4, 3",
    "RESISTOR_NETWORK, 2, 2, 2",
    "PIN_HEADER, 0, 0, 1",
  })
  void a_size_too_small_to_be_true_leaves_the_usual_body(
      PartKind kind, double length, double width, double height) {
    assertEquals(
        picture(kind, Optional.empty(), "X").shapes(),
        picture(kind, outline(length, width, height, 0), "X").shapes());
  }

  @ParameterizedTest
  @CsvSource({
    "CERAMIC_CAPACITOR, ceramic capacitor with the print 104",
    "FILM_CAPACITOR, film capacitor with the print 104",
    "TRIMMER, trimmer with the print 104",
    "ELECTROLYTIC_CAPACITOR, 'electrolytic capacitor with the print 104; the stripe is at the"
        + " negative, shorter lead'",
    "TANTALUM_CAPACITOR, 'tantalum capacitor with the print 104; + is at the positive, longer lead'",
    "ZENER_DIODE, 'Zener diode with the print 104; the band is at the cathode, K'",
    "MOSFET, MOSFET in a TO-220 body seen from its front with the print 104",
    "BIPOLAR_TRANSISTOR, bipolar transistor in a TO-92 body seen from its flat side with the print"
        + " 104",
    "RESISTOR_NETWORK, resistor network in a row of 9 pins with the print 104; the dot is at pin 1",
    "OPTOCOUPLER, 'optocoupler with 8 pins seen from above with the print 104; notch at the left, pin"
        + " 1 below it'",
    "SOCKET, 'IC socket with 8 pins seen from above; notch at the left, pin 1 below it'",
    "PIN_HEADER, 'pin header, 1 × 2 pins, seen from above'",
    "SCREW_TERMINAL, 'screw terminal with 2 poles, seen from above'",
    "WIRE_LINK, bare wire bent to a bracket",
  })
  void a_picture_is_told_in_words(PartKind kind, String words) {
    assertEquals(words, picture(kind, Optional.empty(), "104").words());
  }

  // --- diodes and transistors

  @Test
  void a_diode_has_its_band_at_the_cathode() {
    assertDrawn(
        picture(PartKind.DIODE, Optional.empty(), "1N4007"),
        "15 by 6",
        "line 0.3 4.25 to 5 4.25",
        "line 10 4.25 to 14.7 4.25",
        "box 5 3, 5 by 2.5",
        "box 8.9 3, 0.65 by 2.5",
        "K at 11.6 3.45, 2",
        "1N4007 at 4.68 2, 2");
    // Short enough to stand on the body; its length is the larger number, whichever that is.
    for (Optional<BodyOutline> body :
        List.of(outline(9.5, 5.3, 5.3, 2), outline(5.3, 9.5, 5.3, 2))) {
      assertDrawn(
          picture(PartKind.DIODE, body, "BY"),
          "19.5 by 8.8",
          "line 0.3 5.65 to 5 5.65",
          "line 14.5 5.65 to 19.2 5.65",
          "box 5 3, 9.5 by 5.3",
          "box 12.41 3, 1.24 by 5.3",
          "K at 16.1 4.85, 2",
          "BY at 8.71 6.99, 3.71");
    }
    // On glass nothing is printed that an eye could read.
    Drawing glass = picture(PartKind.DIODE, outline(3.9, 2.1, 2, 2), "A");
    assertEquals("A at 7.18 2, 2", glass.shapes().get(5).fold(new Teller()));
    assertEquals(0xE0A874, fill(glass, 2));
    assertEquals(0x000000, fill(glass, 3));
    Drawing mould = picture(PartKind.DIODE, outline(3.9, 2.2, 2, 2), "A");
    assertEquals(0x33373B, fill(mould, 2));
    assertEquals(0xE8EAEC, fill(mould, 3));
  }

  private static int fill(Drawing drawing, int shape) {
    return ((Shape.Box) drawing.shapes().get(shape)).paint().fill().orElseThrow().rgb();
  }

  @Test
  void a_led_has_its_flat_and_shorter_lead_at_the_cathode() {
    Drawing red = picture(type(PartKind.LED, " red ", ""), Optional.empty(), "");
    assertDrawn(
        red,
        "11 by 14.8",
        "line 4.23 7.5 to 4.23 14.5",
        "line 6.77 7.5 to 6.77 12.5",
        "circle 5.5 2.8, 2.5",
        "box 3 2.8, 5 by 4.1",
        "box 2.6 6.6, 5.5 by 0.9",
        "A + at 2.3 12.5, 2",
        "K at 8.5 12.5, 2");
    assertEquals("red LED; flat rim and shorter lead are the cathode, K", red.words());
    assertEquals(0xE05A50, fill(red, 3));
    assertEquals(0xECECE6, fill(picture(type(PartKind.LED, "clear", ""), Optional.empty(), ""), 3));
    assertEquals(9, picture(PartKind.LED, outline(3, 3, 4, 2), "").widthMillimetres(), 1e-9);
  }

  @Test
  void a_transistor_has_its_pins_numbered_from_the_left() {
    assertDrawn(
        picture(PartKind.BIPOLAR_TRANSISTOR, Optional.empty(), "BC547"),
        "8.4 by 13.2",
        "line 2.93 5.1 to 2.93 11.1",
        "1 at 2.93 13.1, 1.6",
        "line 4.2 5.1 to 4.2 11.1",
        "2 at 4.2 13.1, 1.6",
        "line 5.47 5.1 to 5.47 11.1",
        "3 at 5.47 13.1, 1.6",
        "path of 6",
        "BC547 at 4.2 3.23, 1.19");
    assertDrawn(
        picture(PartKind.MOSFET, Optional.empty(), "T1"),
        "11.2 by 25.2",
        "line 3.06 16.1 to 3.06 22.1",
        "1 at 3.06 24.1, 1.9",
        "line 5.6 16.1 to 5.6 22.1",
        "2 at 5.6 24.1, 1.9",
        "line 8.14 16.1 to 8.14 22.1",
        "3 at 8.14 24.1, 1.9",
        "box 0.5 0.5, 10.2 by 6.9",
        "circle 5.6 3.3, 1.9",
        "box 0.5 7.1, 10.2 by 9",
        "T1 at 5.6 12.26, 2.4");
    // onsemi case 77-09: E 7.4 to 7.8, D 10.6 to 11.1, Q 3.8 to 4.2, P 2.9 to 3.3, e 2.04 to 2.54.
    assertDrawn(
        picture(type(PartKind.BIPOLAR_TRANSISTOR, "", "TO-126"), Optional.empty(), "T1"),
        "8.6 by 20.4",
        "line 2.01 11.35 to 2.01 17.35",
        "1 at 2.01 19.35, 1.9",
        "line 4.3 11.35 to 4.3 17.35",
        "2 at 4.3 19.35, 1.9",
        "line 6.59 11.35 to 6.59 17.35",
        "3 at 6.59 19.35, 1.9",
        "box 0.5 0.5, 7.6 by 10.85",
        "circle 4.3 4.5, 1.55",
        "T1 at 4.3 9.56, 2.4");
  }

  @ParameterizedTest
  @CsvSource({
    "MOSFET, TO-92, TO-92",
    "MOSFET, TO92, TO-92",
    "MOSFET, '', TO-220",
    "BIPOLAR_TRANSISTOR, '', TO-92",
    "BIPOLAR_TRANSISTOR, TO-220-3, TO-220",
    "REGULATOR, to-92_inline, TO-92",
    "THYRISTOR, TO-126, TO-126",
    "BIPOLAR_TRANSISTOR, SOT-32, TO-126",
    "MOSFET, TO-225AA, TO-126",
  })
  void the_package_decides_which_body_a_transistor_has(PartKind kind, String name, String body) {
    String words = picture(type(kind, "", name), Optional.empty(), "").words();
    assertTrue(words.contains(body + " body"), words);
  }

  // --- rows of pins

  @Test
  void an_integrated_circuit_has_its_pins_in_two_rows() {
    Drawing dip = picture(type(PartKind.DRIVER_ARRAY, "", "DIP-4"), Optional.empty(), "NE");
    assertDrawn(
        dip,
        "6.08 by 12.4",
        "line 1.77 0.4 to 1.77 2",
        "line 1.77 8.4 to 1.77 10",
        "line 4.31 0.4 to 4.31 2",
        "line 4.31 8.4 to 4.31 10",
        "box 0.5 1.6, 5.08 by 7.2",
        "circle 0.5 5.2, 0.9",
        "circle 1.77 7.6, 0.4",
        "NE at 3.04 5.99, 2.2",
        "1 at 1.77 12, 1.8");
    assertDrawn(
        picture(type(PartKind.SOCKET, "", "DIP-4"), Optional.empty(), ""),
        "6.08 by 12.4",
        "line 1.77 0.4 to 1.77 2",
        "line 1.77 8.4 to 1.77 10",
        "line 4.31 0.4 to 4.31 2",
        "line 4.31 8.4 to 4.31 10",
        "box 0.5 1.6, 5.08 by 7.2",
        "box 2.2 4, 1.68 by 2.4",
        "circle 0.5 5.2, 0.9",
        "circle 1.77 7.6, 0.4",
        // 4.06 over 6 letters.
        "4 pins at 3.04 5.54, 0.94",
        "1 at 1.77 12, 1.8");
  }

  /** From 24 pins on a body is 15.24 mm wide between its rows, unless its name says 300 mil. */
  @ParameterizedTest
  @CsvSource({
    "DIP-14, 0, 14, 18.78, 12.4",
    "DIP-22, 0, 22, 28.94, 12.4",
    "DIP-24, 0, 24, 31.48, 19.7",
    "DIP-28 300 mil, 0, 28, 36.56, 12.4",
    "DIP-48, 0, 48, 51.8, 19.7",
    "'', 0, 8, 11.16, 12.4",
    "DIP-14, 16, 16, 21.32, 12.4",
    "DIP-14, 4, 4, 6.08, 12.4",
    "DIP-14, 3, 14, 18.78, 12.4",
    "DIP-2, 0, 2, 6.08, 12.4",
  })
  void the_number_of_pins_makes_the_body(
      String name, int pins, int told, double width, double height) {
    Drawing dip =
        picture(
            type(PartKind.INTEGRATED_CIRCUIT, "", name),
            pins == 0 ? Optional.empty() : outline(0, 0, 4, pins),
            "");
    assertEquals(width, dip.widthMillimetres(), 1e-9);
    assertEquals(height, dip.heightMillimetres(), 1e-9);
    assertTrue(dip.words().contains("with " + told + " pins"), dip.words());
  }

  @Test
  void a_network_has_its_dot_at_pin_1() {
    assertDrawn(
        picture(PartKind.RESISTOR_NETWORK, outline(8, 2, 5, 3), "103"),
        "8.62 by 11.4",
        "line 1.77 5.4 to 1.77 9",
        "line 4.31 5.4 to 4.31 9",
        "line 6.85 5.4 to 6.85 9",
        "box 0.5 0.5, 7.62 by 5",
        "circle 1.77 4.3, 0.5",
        "103 at 4.31 3.39, 2.2",
        "1 at 1.77 11, 1.8");
  }

  @Test
  void a_header_has_a_square_for_each_pin() {
    assertDrawn(
        picture(type(PartKind.PIN_HEADER, "2x2", ""), Optional.empty(), ""),
        "6.08 by 6.08",
        "box 0.5 0.5, 5.08 by 5.08",
        "box 1.45 1.45, 0.64 by 0.64",
        "box 3.99 1.45, 0.64 by 0.64",
        "box 1.45 3.99, 0.64 by 0.64",
        "box 3.99 3.99, 0.64 by 0.64");
  }

  @ParameterizedTest
  @CsvSource({
    "1x3, 0, '1 × 3 pins'",
    "2 X 5, 0, '2 × 5 pins'",
    "'', 4, '1 × 4 pins'",
    "'', 0, '1 × 2 pins'",
    "0x0, 0, '1 × 1 pins'",
    "4x40, 0, '4 × 40 pins'",
  })
  void the_text_says_how_many_pins_a_header_has(String text, int pins, String words) {
    Optional<BodyOutline> body = pins == 0 ? Optional.empty() : outline(0, 0, 8, pins);
    Drawing header = picture(type(PartKind.PIN_HEADER, text, ""), body, "");
    assertTrue(header.words().contains(words), header.words());
  }

  @Test
  void a_header_out_of_the_ordinary_is_a_box() {
    for (String text : List.of("5x3", "1x41")) {
      Drawing header = picture(type(PartKind.PIN_HEADER, text, ""), Optional.empty(), "");
      assertEquals(4, header.shapes().size(), text);
    }
  }

  /** 15 mm for three poles: 5 each, the screws 0.36 of that. */
  @Test
  void a_terminal_has_a_slotted_screw_for_each_pole() {
    assertDrawn(
        picture(type(PartKind.SCREW_TERMINAL, "3 poles", ""), outline(15, 10, 12, 3), ""),
        "16 by 11",
        "box 0.5 0.5, 15 by 10",
        "circle 3 5, 1.8",
        "line 1.74 5 to 4.26 5",
        "circle 8 5, 1.8",
        "line 6.74 5 to 9.26 5",
        "circle 13 5, 1.8",
        "line 11.74 5 to 14.26 5");
    // Without an outline 5.08 mm a pole; never more than a dozen poles, nor a larger screw.
    Drawing usual = picture(type(PartKind.SCREW_TERMINAL, "2", ""), Optional.empty(), "");
    assertEquals(11.16, usual.widthMillimetres(), 1e-9);
    assertEquals(9, usual.heightMillimetres(), 1e-9);
    Drawing many = picture(type(PartKind.SCREW_TERMINAL, "13", ""), Optional.empty(), "");
    assertEquals(12 * 5.08 + 1, many.widthMillimetres(), 1e-9);
    Drawing wide = picture(type(PartKind.SCREW_TERMINAL, "2", ""), outline(20, 10, 12, 2), "");
    assertEquals("circle 5.5 5, 1.9", wide.shapes().get(1).fold(new Teller()));
  }

  // --- bands

  private static Drawing banded(PartKind kind, String ohms, String percent, String bands) {
    var type =
        new PartType(
            kind,
            "",
            Optional.of(
                Quantity.of(
                    ohms, kind == PartKind.INDUCTOR ? Dimension.INDUCTANCE : Dimension.RESISTANCE)),
            percent.isEmpty() ? Optional.empty() : Optional.of(Tolerance.percent(percent)),
            Optional.empty(),
            Optional.empty(),
            "",
            "");
    return PartPicture.of(
        type,
        Optional.empty(),
        new PartMarking(
            List.of(BandSequence.parse(bands).value().orElseThrow()), List.of(), false));
  }

  /**
   * Four labels of 4.2 and 1 around are wider than a body of 6.3 with leads of 4. The bands stand
   * at 12, 36, 60 and 87 % of the body.
   */
  @Test
  void bands_stand_on_the_body_and_their_codes_above_it() {
    assertDrawn(
        banded(PartKind.RESISTOR, "4700", "5", "yellow violet red gold"),
        "17.8 by 7.5",
        "line 0.3 5.8 to 5.75 5.8",
        "line 12.05 5.8 to 17.5 5.8",
        "box 5.75 4.6, 6.3 by 2.4",
        "box 6.16 4.6, 0.7 by 2.4",
        "line 6.51 4.6 to 2.6 2.8",
        "YE at 2.6 2.2, 2.2",
        "box 7.67 4.6, 0.7 by 2.4",
        "line 8.02 4.6 to 6.8 2.8",
        "VT at 6.8 2.2, 2.2",
        "box 9.18 4.6, 0.7 by 2.4",
        "line 9.53 4.6 to 11 2.8",
        "RD at 11 2.2, 2.2",
        "box 10.88 4.6, 0.7 by 2.4",
        "line 11.23 4.6 to 15.2 2.8",
        "GD at 15.2 2.2, 2.2");
  }

  @Test
  void one_band_stands_in_the_middle_and_three_stand_at_the_first_end() {
    // 6.3 with two leads of 4, and 1 around: 15.3. The body starts at 4.5.
    Drawing link = banded(PartKind.RESISTOR, "0", "", "black");
    assertEquals("box 7.2 4.6, 0.9 by 2.4", link.shapes().get(3).fold(new Teller()));
    Drawing three = banded(PartKind.RESISTOR, "4700", "20", "yellow violet red");
    assertEquals("box 4.81 4.6, 0.9 by 2.4", three.shapes().get(3).fold(new Teller()));
    assertEquals("box 6.07 4.6, 0.9 by 2.4", three.shapes().get(6).fold(new Teller()));
    assertEquals("box 7.33 4.6, 0.9 by 2.4", three.shapes().get(9).fold(new Teller()));
  }

  @Test
  void the_colour_of_the_body_is_the_usual_one() {
    assertEquals(0xE3CFA4, fill(banded(PartKind.RESISTOR, "4700", "5", "ye vt rd gd"), 2));
    assertEquals(0xE3CFA4, fill(banded(PartKind.RESISTOR, "4700", "", "ye vt rd gd"), 2));
    assertEquals(0xA9CBE0, fill(banded(PartKind.RESISTOR, "4700", "1", "ye vt bk bn bn"), 2));
    assertEquals(0xA9CBE0, fill(banded(PartKind.RESISTOR, "4700", "2", "ye vt bk bn rd"), 2));
    assertEquals(0xD9C79F, fill(banded(PartKind.RESISTOR, "0", "", "black"), 2));
    assertEquals(0x9CC08B, fill(banded(PartKind.INDUCTOR, "4.7E-5", "5", "ye vt bk gd"), 2));
  }

  @Test
  void a_banded_body_is_as_large_as_its_outline() {
    var type = type(PartKind.RESISTOR, "", "");
    var marking =
        new PartMarking(
            List.of(BandSequence.parse("ye vt rd gd").value().orElseThrow()), List.of(), false);
    for (Optional<BodyOutline> body : List.of(outline(12, 4.5, 5, 2), outline(4.5, 12, 5, 2))) {
      assertEquals(
          "box 4.5 4.6, 12 by 4.5",
          PartPicture.of(type, body, marking).shapes().get(2).fold(new Teller()));
    }
    assertEquals(
        "box 5.75 4.6, 6.3 by 2.4",
        PartPicture.of(type, outline(2, 1, 5, 2), marking).shapes().get(2).fold(new Teller()));
  }
}
