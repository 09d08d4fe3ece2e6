package lowfirst.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import lowfirst.assembly.Batch;
import lowfirst.assembly.Rule;
import lowfirst.assembly.Step;
import lowfirst.board.Designator;
import lowfirst.board.Side;
import lowfirst.marking.BandSequence;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.sorting.Compartment;
import lowfirst.sorting.Consequence;
import lowfirst.sorting.Likeness;
import lowfirst.sorting.LookAlike;
import lowfirst.sorting.MeterLimits;
import lowfirst.sorting.Separation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Single sentences at the bench: which way round, how to seat, what is mistaken for what. */
class HandWordsTest {

  private static PartType type(PartKind kind, String text, String packageName) {
    return type(kind, text, packageName, null);
  }

  private static PartType type(PartKind kind, String text, String packageName, String watts) {
    return new PartType(
        kind,
        text,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.ofNullable(watts).map(w -> Quantity.of(w, Dimension.POWER)),
        "",
        packageName);
  }

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

  // --- look-alikes

  private static Compartment compartment(int number, PartType type, Compartment.Role... roles) {
    return new Compartment(
        number,
        type,
        List.of(new Compartment.Use("b", List.of(Designator.of("R" + number)), 1, 1)),
        1,
        Optional.empty(),
        java.util.Set.of(roles),
        List.of());
  }

  private static final Compartment ONE =
      compartment(
          1,
          type(PartKind.DIODE, "1N4148", "DO-35"),
          Compartment.Role.PULL_DOWN,
          Compartment.Role.FUSE);
  private static final Compartment OTHER = compartment(2, type(PartKind.DIODE, "1N914", "DO-35"));

  private static LookAlike alike(
      Likeness likeness, Consequence consequence, Separation.Test test, MeterLimits... limits) {
    return new LookAlike(
        ONE,
        OTHER,
        likeness,
        consequence,
        ONE,
        1,
        new Separation(
            test,
            limits.length > 0 ? Optional.of(limits[0]) : Optional.empty(),
            limits.length > 1 ? Optional.of(limits[1]) : Optional.empty()));
  }

  private static BandSequence bands(String text) {
    return BandSequence.parse(text).value().orElseThrow();
  }

  @Test
  void why_two_parts_are_alike_is_said_in_full_and_in_one_breath() {
    record Case(Likeness likeness, String full, String brief) {}
    for (Case one :
        List.of(
            new Case(
                new Likeness.Reversed(bands("bn rd bk bk bn")),
                "[BN RD BK BK BN] from the other end is [BN BK BK RD BN]",
                "that is what the bands say from the other end"),
            new Case(
                new Likeness.AlikeBands(
                    bands("ye vt rd gd"),
                    bands("ye vt og gd"),
                    List.of(3),
                    java.util.Set.of(
                        Likeness.Circumstance.TRITANOPIA, Likeness.Circumstance.POOR_LIGHT)),
                "[YE VT RD GD] and [YE VT OG GD]: red/orange in band 3; anybody in poor light,"
                    + " blue-blind eyes",
                "red or orange in band 3"),
            new Case(new Likeness.SameText("104"), "both may be printed 104", "the same print"),
            new Case(
                new Likeness.CodeAsNumber("100"),
                "the print 100 is a digit code of one, and as a number the other",
                "the print is a digit code for one and a number for the other"),
            new Case(
                new Likeness.SameValue(),
                "the same value; only a rating or the body differs",
                "the same value, another rating"),
            new Case(
                new Likeness.SameBody("TO-92"),
                "the same body (TO-92); only the print differs; the order of the pins may differ, too",
                "the same body, another print"),
            new Case(
                new Likeness.SameBody("DO-35"),
                "the same body (DO-35); only the print differs",
                "the same body, another print"))) {
      LookAlike pair = alike(one.likeness(), Consequence.HARMLESS, Separation.Test.READ_THE_NUMBER);
      assertEquals(one.full(), LikenessWords.why(pair).replace('\u00a0', ' '));
      assertEquals(
          "not the 1N914 diode: " + one.brief() + ". Read the type number under a lens.",
          BriefLikeness.of(pair, 1));
      assertEquals(
          "not the 1N4148 diode: " + one.brief() + ". Read the type number under a lens.",
          BriefLikeness.of(pair, 2));
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "LOAD_OUT_OF_CONTROL | a load switches on by itself, or the MOSFET overheats, where 1N4148"
            + " diode (gate pull-down, fuse of a channel) belongs",
        "PROTECTION_LOST | a part loses its protection or is overloaded, where 1N4148 diode (gate"
            + " pull-down, fuse of a channel) belongs",
        "SWITCHING_SPOILT | the MOSFET switches too slowly or its driver is overloaded, where 1N4148"
            + " diode (gate pull-down, fuse of a channel) belongs",
        "PART_DESTROYED | a part can be destroyed at first power, where 1N4148 diode (gate pull-down,"
            + " fuse of a channel) belongs",
        "CIRCUIT_MISBEHAVES | the circuit misbehaves",
        "HARMLESS | little: brightness or precision differs",
      })
  void what_a_mix_up_would_do_is_said(Consequence consequence, String words) {
    LookAlike pair = alike(new Likeness.SameValue(), consequence, Separation.Test.READ_THE_NUMBER);
    String said = LikenessWords.consequence(pair);
    assertEquals(words, said);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "KIND_BY_OHMS | measure the resistance: a resistor reads its value, a capacitor goes to open,"
            + " an inductor reads a few ohms",
        "COUNT_THE_LEADS | count the leads and compare the bodies",
        "READ_THE_NUMBER | read the type number under a lens",
        "READ_THE_RATING | read the rating on the body or its bag, and compare the sizes",
        "LIGHT_IT | light it: 1 kΩ in series on 5 V",
        "KEEP_IN_ITS_BAG | a multimeter can't tell: keep each in the bag it came in",
      })
  void how_to_tell_them_apart_is_said(Separation.Test test, String words) {
    LookAlike pair = alike(new Likeness.SameValue(), Consequence.HARMLESS, test);
    assertEquals(words, LikenessWords.test(pair));
  }

  @Test
  void two_readings_stand_side_by_side() {
    var kit =
        Said.kit(
            "kit.properties",
            "meter = 0.5 % + 2 of 6000\n",
            "bom.csv",
            "designators,value\nR1,4k7 5%\nR2,47k 5%\n");
    var types = kit.boards().get(0).items().stream().map(item -> item.partType()).toList();
    var meter = lowfirst.sorting.Meter.of(kit.settings());
    MeterLimits low = MeterLimits.of(types.get(0), meter).orElseThrow();
    MeterLimits high = MeterLimits.of(types.get(1), meter).orElseThrow();
    LookAlike pair =
        alike(new Likeness.SameValue(), Consequence.HARMLESS, Separation.Test.OHMS, low, high);
    assertEquals(
        "measure the resistance: 4.437 kΩ to 4.966 kΩ for 4.7 kΩ, or 44.37 kΩ to 49.66 kΩ for 47 kΩ",
        LikenessWords.test(pair));
    assertTrue(BriefLikeness.of(pair, 1).endsWith(". Measure it."));
    LookAlike farads =
        alike(new Likeness.SameValue(), Consequence.HARMLESS, Separation.Test.FARADS);
    assertTrue(LikenessWords.test(farads).startsWith("measure the capacitance: "));
    assertTrue(BriefLikeness.of(farads, 1).endsWith(". Measure it."));
  }

  // --- a code to scan

  /** The finder patterns of a QR code (ISO/IEC 18004): 7 by 7 modules in three corners. */
  @Test
  void a_code_has_its_finder_patterns_and_a_quiet_zone() {
    var code = StepCode.of("step 3 of driver-2", 25);
    List<lowfirst.sheet.drawing.Shape.Box> runs =
        code.shapes().stream().map(lowfirst.sheet.drawing.Shape.Box.class::cast).toList();
    // 18 letters with correction M fit version 2: 25 modules and two of quiet on each side.
    double module = 25 / 29.0;
    assertEquals(module, runs.get(0).height(), 1e-9);
    boolean[][] dark = new boolean[29][29];
    for (var run : runs) {
      int x = (int) Math.round(run.x() / module);
      int y = (int) Math.round(run.y() / module);
      int length = (int) Math.round(run.width() / module);
      assertEquals(run.x(), x * module, 1e-9);
      assertEquals(run.width(), length * module, 1e-9);
      IntStream.range(x, x + length).forEach(at -> dark[y][at] = true);
    }
    for (int[] corner : new int[][] {{2, 2}, {20, 2}, {2, 20}}) {
      for (int y = -1; y <= 7; y++) {
        for (int x = -1; x <= 7; x++) {
          int ring = Math.max(Math.abs(x - 3), Math.abs(y - 3));
          assertEquals(
              ring == 3 || ring <= 1, dark[corner[1] + y][corner[0] + x], x + " " + y + " of ring");
        }
      }
    }
    for (int i = 0; i < 29; i++) {
      for (int edge : new int[] {0, 1, 27, 28}) {
        assertTrue(!dark[i][edge] && !dark[edge][i], "the quiet zone is white");
      }
    }
    assertEquals("code to scan: step 3 of driver-2", code.words());
    assertEquals(25, code.widthMillimetres());
    assertEquals(25, code.heightMillimetres());
  }
}
