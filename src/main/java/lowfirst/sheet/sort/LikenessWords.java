package lowfirst.sheet.sort;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import lowfirst.marking.BandSequence;
import lowfirst.sheet.wording.MarkingWords;
import lowfirst.sheet.wording.ReadingWords;
import lowfirst.sheet.wording.StepWording;
import lowfirst.sorting.Compartment.Role;
import lowfirst.sorting.Likeness;
import lowfirst.sorting.Likeness.Circumstance;
import lowfirst.sorting.LookAlike;
import lowfirst.sorting.MeterLimits;
import lowfirst.sorting.Separation;

/** Look-alikes in words: why two parts are taken for each other, and how to tell them apart. */
final class LikenessWords implements Likeness.Cases<String> {
  private static final LikenessWords WORDS = new LikenessWords();

  private LikenessWords() {}

  /** Why two part types can be mistaken for each other. */
  static String why(LookAlike alike) {
    return alike.likeness().fold(WORDS);
  }

  @Override
  public String reversed(Likeness.Reversed reversed) {
    BandSequence bands = reversed.bands();
    return unbroken(bands) + " from the other end is " + unbroken(bands.reversed());
  }

  /** A row of bands that no line break tears apart. */
  static String unbroken(BandSequence bands) {
    return bands.toString().replace(' ', '\u00a0');
  }

  @Override
  public String alikeBands(Likeness.AlikeBands alike) {
    var pairs = new ArrayList<String>();
    for (int place : alike.places()) {
      pairs.add(
          alike.one().bands().get(place - 1).word()
              + "/"
              + alike.other().bands().get(place - 1).word()
              + " in band "
              + place);
    }
    return unbroken(alike.one())
        + " and "
        + unbroken(alike.other())
        + ": "
        + String.join(", ", pairs)
        + "; "
        + circumstances(alike.circumstances());
  }

  /** Who takes one colour for the other. */
  static String circumstances(Set<Circumstance> circumstances) {
    return circumstances.stream()
        .sorted()
        .map(LikenessWords::circumstance)
        .collect(Collectors.joining(", "));
  }

  private static String circumstance(Circumstance circumstance) {
    return switch (circumstance) {
      case POOR_LIGHT -> "anybody in poor light";
      case PROTANOPIA -> "red-blind eyes";
      case DEUTERANOPIA -> "green-blind eyes";
      case TRITANOPIA -> "blue-blind eyes";
    };
  }

  @Override
  public String sameText(Likeness.SameText same) {
    return "both may be printed " + same.text();
  }

  @Override
  public String codeAsNumber(Likeness.CodeAsNumber code) {
    return "the print " + code.text() + " is a digit code of one, and as a number the other";
  }

  @Override
  public String sameValue(Likeness.SameValue same) {
    return "the same value; only a rating or the body differs";
  }

  @Override
  public String sameBody(Likeness.SameBody body) {
    String pins = body.body().startsWith("TO-") ? "; the order of the pins may differ, too" : "";
    return "the same body (" + body.body() + "); only the print differs" + pins;
  }

  /** What a mix-up would do, and where. */
  static String consequence(LookAlike alike) {
    String place = StepWording.shortName(alike.worsePlace().type()) + roles(alike);
    return switch (alike.consequence()) {
      case LOAD_OUT_OF_CONTROL ->
          "a load switches on by itself, or the MOSFET overheats, where " + place + " belongs";
      case PROTECTION_LOST ->
          "a part loses its protection or is overloaded, where " + place + " belongs";
      case SWITCHING_SPOILT ->
          "the MOSFET switches too slowly or its driver is overloaded, where " + place + " belongs";
      case PART_DESTROYED -> "a part can be destroyed at first power, where " + place + " belongs";
      case CIRCUIT_MISBEHAVES -> "the circuit misbehaves";
      case HARMLESS -> "little: brightness or precision differs";
    };
  }

  private static String roles(LookAlike alike) {
    List<String> roles =
        alike.worsePlace().roles().stream().sorted().map(LikenessWords::role).toList();
    return roles.isEmpty() ? "" : " (" + String.join(", ", roles) + ")";
  }

  private static String role(Role role) {
    return switch (role) {
      case PULL_DOWN -> "gate pull-down";
      case MOSFET -> "MOSFET of a channel";
      case FLYBACK_DIODE -> "flyback diode";
      case FUSE -> "fuse of a channel";
      case GATE_RESISTOR -> "gate resistor";
    };
  }

  /** The test that tells them apart. */
  static String test(LookAlike alike) {
    Separation separation = alike.separation();
    return switch (separation.test()) {
      case OHMS -> "measure the resistance: " + bothReadings(alike);
      case FARADS -> "measure the capacitance: " + bothReadings(alike);
      case KIND_BY_OHMS ->
          "measure the resistance: a resistor reads its value, a capacitor goes to open, an"
              + " inductor reads a few ohms";
      case COUNT_THE_LEADS -> "count the leads and compare the bodies";
      case READ_THE_NUMBER -> "read the type number under a lens";
      case READ_THE_RATING -> "read the rating on the body or its bag, and compare the sizes";
      case LIGHT_IT -> "light it: 1 kΩ in series on 5 V";
      case KEEP_IN_ITS_BAG -> "a multimeter can't tell: keep each in the bag it came in";
    };
  }

  private static String bothReadings(LookAlike alike) {
    Separation separation = alike.separation();
    String one = separation.one().map(LikenessWords::reading).orElse("");
    String other = separation.other().map(LikenessWords::reading).orElse("");
    return one + ", or " + other;
  }

  private static String reading(MeterLimits limits) {
    return ReadingWords.shown(limits.rejectBelow())
        + " to "
        + ReadingWords.shown(limits.rejectAbove())
        + " for "
        + MarkingWords.value(limits.nominal());
  }
}
