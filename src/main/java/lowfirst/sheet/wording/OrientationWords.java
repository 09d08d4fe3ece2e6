package lowfirst.sheet.wording;

import java.util.Locale;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;
import lowfirst.sheet.body.LeadedBodies;
import lowfirst.sheet.body.Stance;
import lowfirst.sorting.PartMarking;

/**
 * Which way round a part goes: what on the part is lined up with what on the board.
 *
 * <p>The same stripe means minus on an aluminium electrolytic and plus on a tantalum one; the same
 * transistor outline comes with three pin orders. So every sentence names the part's kind.
 */
public final class OrientationWords {
  private static final String EITHER = "either way round";

  private OrientationWords() {}

  /** Whether a wrong way round does harm, or may; then every sheet says which is the right one. */
  public static boolean matters(PartType type) {
    return type.kind() != PartKind.RESISTOR && !of(type).equals(EITHER);
  }

  /** The words for a part type. */
  public static String of(PartType type) {
    return Stance.of(type).isTransistorLike() ? onLeads(type) : byKind(type);
  }

  private static String byKind(PartType type) {
    return switch (type.kind()) {
      case RESISTOR -> resistor(type);
      case WIRE_LINK,
          CERAMIC_CAPACITOR,
          FILM_CAPACITOR,
          INDUCTOR,
          CRYSTAL,
          FUSE,
          VARISTOR,
          THERMISTOR,
          PHOTORESISTOR ->
          EITHER;
      case CAPACITOR ->
          EITHER
              + " if it is ceramic or film; a can's stripe is minus, a tantalum's stripe is plus";
      case ELECTROLYTIC_CAPACITOR -> electrolytic(type);
      case TANTALUM_CAPACITOR ->
          "the stripe or + and the longer lead are plus: into the hole marked +"
              + " (the opposite of an aluminium can's stripe)";
      case DIODE, SCHOTTKY_DIODE, ZENER_DIODE ->
          "the band is the cathode: over the bar printed on the board";
      case LED ->
          "the shorter lead, at the flat of the rim, is the cathode: to the flat or bar printed on"
              + " the board; check it in the sheet";
      case BRIDGE_RECTIFIER -> "+ - and ~ on the body over the same signs on the board";
      case TRANSISTOR, BIPOLAR_TRANSISTOR, JFET, MOSFET, THYRISTOR, REGULATOR -> onLeads(type);
      case INTEGRATED_CIRCUIT, OPTOCOUPLER, DRIVER_ARRAY ->
          "the notch or dot is the pin 1 end: over the notch printed on the board; then read the"
              + " type number again";
      case SOCKET ->
          "the notch over the notch printed on the board: it tells later how the part goes in";
      case RESISTOR_NETWORK ->
          "the dot or bar is pin 1: to the square pad or the 1 printed on the board";
      case DISPLAY ->
          "the decimal point's corner as printed on the board; check pin 1 in the sheet";
      case BUZZER, MICROPHONE, BATTERY -> "+ to the + printed on the board";
      case MODULE -> "pin 1 to pin 1, as printed on the board";
      case SCREW_TERMINAL -> "the wire openings outwards, to the edge of the board";
      case CONNECTOR, FUSE_HOLDER, PIN_HEADER ->
          "as the outline on the board shows; a keyed one with its key on the key's side";
      case TRIMMER, POTENTIOMETER ->
          "as the outline on the board shows: turned about, it works backwards";
      case RELAY, SWITCH, RESONATOR, MOTOR ->
          "its pins fit only one way, or either; compare with the outline on the board";
      case TRIMMER_CAPACITOR, HEATSINK, BOARD_FEATURE, HARDWARE, UNKNOWN ->
          "as the outline on the board shows";
    };
  }

  private static String resistor(PartType type) {
    boolean banded = PartMarking.of(type).bands().stream().anyMatch(bands -> bands.count() > 1);
    return banded
        ? EITHER + "; turn all tolerance bands to one side, then they are easy to check"
        : EITHER;
  }

  private static String electrolytic(PartType type) {
    return isAxial(type)
        ? "the arrows point to the minus lead: away from the hole marked +"
        : "the longer lead is plus: into the hole marked +; the stripe on the can marks minus and"
            + " faces away from it";
  }

  private static boolean isAxial(PartType type) {
    return type.packageName().toUpperCase(Locale.ROOT).contains("AXIAL");
  }

  private static String onLeads(PartType type) {
    String name = type.packageName().toUpperCase(Locale.ROOT).replace("-", "");
    if (name.contains("TO92")) {
      return "the flat over the flat printed on the board, if this type's pin order is the board's: "
          + pinOrder(type);
    }
    if (Stance.of(type) == Stance.BENT_OVER) {
      return "as the outline on the board shows, the hole of the tab over the board's; check the"
          + " type's pin order";
    }
    if (LeadedBodies.isTo126(name)) {
      return "the metal face to the thick line printed on the board; check the type's pin order";
    }
    if (name.contains("TO220") || name.contains("TO247")) {
      return "the metal tab to the thick line printed on the board; check the type's pin order";
    }
    return "as the outline on the board shows; check the type's pin order: one outline comes with"
        + " several";
  }

  /** Flat towards the reader, from left to right (public tables of transistor families). */
  private static String pinOrder(PartType type) {
    if (type.kind() != PartKind.BIPOLAR_TRANSISTOR) {
      return "check it in the sheet";
    }
    String number = (type.typeNumber() + type.text()).toUpperCase(Locale.ROOT);
    String usual = "with the flat to you, ";
    if (number.startsWith("2N") || number.startsWith("PN")) {
      return usual + "2N types are mostly E-B-C, others not; check it in the sheet";
    }
    if (number.startsWith("2S")) {
      return usual + "2S types are mostly E-C-B; check it in the sheet";
    }
    if (number.startsWith("BC")) {
      return usual + "BC types are mostly C-B-E; check it in the sheet";
    }
    return "check it in the sheet";
  }
}
