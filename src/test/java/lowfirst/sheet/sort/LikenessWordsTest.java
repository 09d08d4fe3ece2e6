package lowfirst.sheet.sort;

import static lowfirst.part.PartTypes.type;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import lowfirst.board.Designator;
import lowfirst.board.Kit;
import lowfirst.marking.BandSequence;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;
import lowfirst.sheet.document.Said;
import lowfirst.sorting.Compartment;
import lowfirst.sorting.Consequence;
import lowfirst.sorting.Likeness;
import lowfirst.sorting.LookAlike;
import lowfirst.sorting.LookAlikes;
import lowfirst.sorting.MeterLimits;
import lowfirst.sorting.Separation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is mistaken for what, why, what that would do, and how to tell them apart. */
class LikenessWordsTest {

  @Test
  void why_two_parts_are_alike_and_what_a_mix_up_does_is_said() {
    Kit kit =
        Said.kit(
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
}
