package lowfirst.sheet.wording;

import static lowfirst.part.PartTypes.type;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lowfirst.assembly.Batch;
import lowfirst.assembly.Rule;
import lowfirst.assembly.Step;
import lowfirst.board.Designator;
import lowfirst.board.Side;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Single sentences at the bench: which way round, how to seat. */
class HandWordsTest {

  private static Step step(
      PartType type, Step.Stage stage, OptionalDouble height, String... names) {
    return new Step(
        1,
        "b",
        1,
        type,
        names.length == 0
            ? List.of(Designator.of("X1"))
            : java.util.Arrays.stream(names).map(Designator::of).toList(),
        List.of(),
        Side.TOP,
        height,
        Rule.LOWEST_FIRST,
        "lowest first",
        stage);
  }

  private static Step soldered(PartType type) {
    return step(type, Step.Stage.SOLDER, OptionalDouble.of(3));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "MOSFET | T1 | TO-220 | the metal tab to the thick line printed on the board; check the type's"
            + " pin order",
        "REGULATOR | T1 | TO247 | the metal tab to the thick line printed on the board; check the"
            + " type's pin order",
        "THYRISTOR | T1 | to-126 | the metal face to the thick line printed on the board; check the"
            + " type's pin order",
        "MOSFET | T1 | SOT | as the outline on the board shows; check the type's pin order: one"
            + " outline comes with several",
        "BIPOLAR_TRANSISTOR | PN2222 | TO-92 | the flat over the flat printed on the board, if this"
            + " type's pin order is the board's: with the flat to you, 2N types are mostly E-B-C,"
            + " others not; check it in the sheet",
        "BIPOLAR_TRANSISTOR | 2SC1 | TO92 | the flat over the flat printed on the board, if this type's"
            + " pin order is the board's: with the flat to you, 2S types are mostly E-C-B; check it"
            + " in the sheet",
        "BIPOLAR_TRANSISTOR | BC1 | TO92 | the flat over the flat printed on the board, if this type's"
            + " pin order is the board's: with the flat to you, BC types are mostly C-B-E; check it"
            + " in the sheet",
        "BIPOLAR_TRANSISTOR | XY1 | TO92 | the flat over the flat printed on the board, if this type's"
            + " pin order is the board's: check it in the sheet",
        "CAPACITOR | 1n | '' | either way round if it is ceramic or film; a can's stripe is minus, a"
            + " tantalum's stripe is plus",
        "FUSE | 2 A | '' | either way round",
      })
  void which_way_round_a_part_goes(PartKind kind, String text, String name, String words) {
    assertEquals(words, OrientationWords.of(type(kind, text, name.replace("''", ""))));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "RESISTOR | Vertical | | SOLDER | standing, 0.5 to 1.3 mm above the board",
        "DIODE | standing | | SOLDER | standing, 0.5 to 1.3 mm above the board",
        "RESISTOR | | 1 | SOLDER | 1 W and more: lying 1.5 mm or more above the board, so that heat"
            + " gets away",
        "RESISTOR | | 0.9 | SOLDER | lying flat and centred; bend the leads 0.8 mm or more from the"
            + " body",
        "INDUCTOR | | | SOLDER | lying flat and centred; bend the leads 0.8 mm or more from the body",
        "MOSFET | | | FASTEN_AND_SOLDER | bolt it to its heatsink first, insulated where its sheet"
            + " asks for it, then seat both and solder",
        "MOSFET | | | SOLDER | upright, leads not forced apart; solder the middle lead last",
        "INTEGRATED_CIRCUIT | | | SOLDER | every pin through its hole, flat on the board",
        "INTEGRATED_CIRCUIT | | | PLUG_IN | straighten the pins on the table, all of them over their"
            + " contacts, then press down evenly",
        "HEATSINK | | | SOLDER | bolt what it carries to it first, then seat all together",
      })
  void how_a_part_is_seated(
      PartKind kind, String name, String watts, Step.Stage stage, String words) {
    assertEquals(
        words,
        SolderingWords.seat(
            step(type(kind, "x", name == null ? "" : name, watts), stage, OptionalDouble.of(3))));
  }

  @Test
  void how_a_part_is_soldered_and_looked_at() {
    assertEquals(
        "nothing to solder",
        SolderingWords.solder(
            step(type(PartKind.MODULE, "x", ""), Step.Stage.PLUG_IN, OptionalDouble.of(3))));
    assertEquals(
        "one pin first, check that it sits flat, then the rest; don't trim",
        SolderingWords.solder(soldered(type(PartKind.RELAY, "x", ""))));
    assertEquals(
        "its pins, if it has any; a hotter or larger tip helps; don't trim",
        SolderingWords.solder(soldered(type(PartKind.HEATSINK, "x", ""))));
    // A limit has its time, its distance where one is stated, and its source.
    String led = SolderingWords.solder(soldered(type(PartKind.LED, "red", "")));
    assertTrue(
        led.matches(
            "2 to 3 s a joint; trim so that the end shows, about 1 mm; 2\\.5 mm at most\\. Heat: at most"
                + " \\d+ °C for [\\d.]+ s( at [\\d.]+ mm from the body)?.* \\[.+].*"),
        led);
    assertTrue(
        SolderingWords.lookFor(soldered(type(PartKind.SOCKET, "x", "")))
            .startsWith("mounting: not tilted, every pin through; orientation: checked before"));
    assertTrue(
        SolderingWords.lookFor(soldered(type(PartKind.RELAY, "x", "")))
            .startsWith("mounting: upright, not tilted; joint: wetted"));
    assertEquals(
        "orientation: notch over notch; mounting: no pin bent under or beside its contact",
        SolderingWords.lookFor(
            step(type(PartKind.MODULE, "x", ""), Step.Stage.PLUG_IN, OptionalDouble.of(3))));
  }

  /** 100 µF can hold a charge worth minding; a smaller one and a tantalum can still burst. */
  @ParameterizedTest
  @CsvSource({
    "ELECTROLYTIC_CAPACITOR, 1E-4, stays charged",
    "ELECTROLYTIC_CAPACITOR, 0.99E-4, can burst or burn",
    "TANTALUM_CAPACITOR, 1E-3, can burst or burn",
    "FILM_CAPACITOR, 1E-3, ''",
  })
  void a_capacitor_is_cautioned_by_its_kind_and_size(PartKind kind, String farads, String words) {
    var type =
        new PartType(
            kind,
            "",
            Optional.of(Quantity.of(farads, Dimension.CAPACITANCE)),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            "",
            "");
    String caution = StepWording.caution(soldered(type)).orElse("");
    assertTrue(words.isEmpty() ? caution.isEmpty() : caution.contains(words), caution);
  }

  @ParameterizedTest
  @CsvSource({
    "'2.5', '1 part, 2.5 mm'",
    "'2.5 3.6', '2 parts, 2.5 to 3.6 mm'",
    "'2.51 2.54', '2 parts, 2.5 mm'",
    "'2.5 2.5 ?', '3 parts, 2.5 mm'",
    "'?', '1 part, height not known'",
  })
  void a_batch_goes_by_its_parts_and_heights(String heights, String words) {
    var steps =
        java.util.Arrays.stream(heights.split(" "))
            .map(
                height ->
                    step(
                        type(PartKind.RESISTOR, "1k", ""),
                        Step.Stage.SOLDER,
                        height.equals("?")
                            ? OptionalDouble.empty()
                            : OptionalDouble.of(Double.parseDouble(height))))
            .toList();
    assertEquals(
        "Batch 7: " + words + ", top side", StepWording.batchTitle(new Batch(7, "b", steps)));
  }

  @Test
  void a_part_is_named_with_what_tells_it_from_its_neighbours() {
    var type =
        new PartType(
            PartKind.CERAMIC_CAPACITOR,
            "100n",
            Optional.of(Quantity.of("1E-7", Dimension.CAPACITANCE)),
            Optional.of(lowfirst.quantity.Tolerance.percent("10")),
            Optional.of(Quantity.of("50", Dimension.VOLTAGE)),
            Optional.of(Quantity.of("0.25", Dimension.POWER)),
            "K104",
            "Capacitor_THT:C_Disc_D5");
    assertEquals(
        "100 nF ceramic capacitor, ±10 %, 50 V, 250 mW, K104, C_Disc_D5", StepWording.name(type));
    assertEquals("X1 (kind not known)", StepWording.shortName(type(PartKind.UNKNOWN, "X1", "")));
    assertEquals("relay", StepWording.shortName(type(PartKind.RELAY, "Relay", "")));
    assertEquals("G5 Relay", StepWording.shortName(type(PartKind.RELAY, "G5 Relay", "")));
    PartType socket = type(PartKind.SOCKET, "DIP-8 socket", "DIP-8 socket");
    assertEquals("DIP-8 socket", StepWording.shortName(socket));
    assertEquals("DIP-8 socket", StepWording.name(socket));
    assertEquals("8-pin IC socket", StepWording.name(type(PartKind.SOCKET, "8-pin", "")));
    assertEquals("relay base", StepWording.name(type(PartKind.SOCKET, "relay base", "")));
  }
}
