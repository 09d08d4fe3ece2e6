package lowfirst.sheet;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import lowfirst.assembly.Step;
import lowfirst.part.HeatLimit;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;

/**
 * How to seat, solder and trim a part, and what to look for then.
 *
 * <p>Seating: NASA-STD-8739.3 [8.4.2] for axial parts, IPC-A-610F p. 7-14 for radial ones. The trim
 * length is a compromise of two documents (NASA 0.5 mm least; IPC-A-610 class 2 2.5 mm most), not
 * one clause. What to look for follows the headings of IPC-A-610 in our own words.
 */
final class SolderingWords {
  private static final String TRIM = "trim so that the end shows, about 1 mm; 2.5 mm at most";

  private SolderingWords() {}

  /** How to seat it on the board. */
  static String seat(Step step) {
    PartType type = step.partType();
    return switch (type.kind()) {
      case WIRE_LINK -> "flat on the board, not tight";
      case RESISTOR, DIODE, SCHOTTKY_DIODE, ZENER_DIODE, INDUCTOR -> axial(type);
      case CERAMIC_CAPACITOR,
          FILM_CAPACITOR,
          CAPACITOR,
          TANTALUM_CAPACITOR,
          CRYSTAL,
          RESONATOR,
          VARISTOR ->
          "upright, 0.3 to 2 mm above the board, no coating in the holes";
      case ELECTROLYTIC_CAPACITOR -> "upright, down on the board or up to 2 mm above it";
      case LED -> "upright; bend leads before soldering only, 2 mm or more from the lens, once";
      case BIPOLAR_TRANSISTOR, MOSFET, THYRISTOR, REGULATOR -> threeLeads(step);
      case INTEGRATED_CIRCUIT, OPTOCOUPLER, DRIVER_ARRAY, SOCKET, DISPLAY, MODULE ->
          step.stage() == Step.Stage.PLUG_IN
              ? "straighten the pins on the table, all of them over their contacts, then press down"
                  + " evenly"
              : "every pin through its hole, flat on the board";
      case PIN_HEADER,
          CONNECTOR,
          SCREW_TERMINAL,
          RESISTOR_NETWORK,
          SWITCH,
          RELAY,
          FUSE_HOLDER,
          TRIMMER,
          POTENTIOMETER,
          BUZZER,
          BATTERY,
          MOTOR,
          FUSE,
          BRIDGE_RECTIFIER,
          MICROPHONE,
          UNKNOWN ->
          "down on the board and square to it";
      case HEATSINK -> "bolt what it carries to it first, then seat all together";
      case BOARD_FEATURE, HARDWARE -> "as its drawing shows";
    };
  }

  private static String axial(PartType type) {
    String name = type.packageName().toUpperCase(Locale.ROOT);
    if (name.contains("VERTICAL") || name.contains("STANDING")) {
      return "standing, 0.5 to 1.3 mm above the board";
    }
    boolean hot = type.ratedPower().filter(power -> power.asDouble() >= 1).isPresent();
    return hot
        ? "1 W and more: lying 1.5 mm or more above the board, so that heat gets away"
        : "lying flat and centred; bend the leads 0.8 mm or more from the body";
  }

  private static String threeLeads(Step step) {
    return switch (step.stage()) {
      case FASTEN_AND_SOLDER ->
          "bolt it to its heatsink first, insulated where its sheet asks for it, then seat both and"
              + " solder";
      case SOLDER, PLUG_IN -> "upright, leads not forced apart; solder the middle lead last";
    };
  }

  /** How to solder and trim it. */
  static String solder(Step step) {
    PartKind kind = step.partType().kind();
    if (step.stage() == Step.Stage.PLUG_IN) {
      return "nothing to solder";
    }
    String joints =
        switch (kind) {
          case SOCKET,
              INTEGRATED_CIRCUIT,
              OPTOCOUPLER,
              DRIVER_ARRAY,
              DISPLAY,
              MODULE,
              RESISTOR_NETWORK,
              PIN_HEADER,
              CONNECTOR,
              SCREW_TERMINAL,
              RELAY,
              SWITCH,
              FUSE_HOLDER,
              TRIMMER,
              POTENTIOMETER ->
              "one pin first, check that it sits flat, then the rest; don't trim";
          case HEATSINK -> "its pins, if it has any; a hotter or larger tip helps; don't trim";
          default -> "2 to 3 s a joint; " + TRIM;
        };
    String limits = heat(step.partType());
    return limits.isEmpty() ? joints : joints + ". Heat: " + limits;
  }

  /** The published heat limits, each with its distance and source. */
  private static String heat(PartType type) {
    List<HeatLimit> limits = HeatLimit.of(type);
    return limits.stream().map(SolderingWords::heat).collect(Collectors.joining("; "));
  }

  private static String heat(HeatLimit limit) {
    String distance =
        limit.distanceMillimetres() > 0
            ? String.format(
                Locale.ROOT, " at %s mm from the body", plain(limit.distanceMillimetres()))
            : "";
    return String.format(
        Locale.ROOT,
        "at most %s °C for %s s%s%s [%s]",
        plain(limit.celsius()),
        plain(limit.seconds()),
        distance,
        limit.note().isEmpty() ? "" : " (" + limit.note() + ")",
        limit.source());
  }

  private static String plain(double number) {
    return java.math.BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
  }

  /** What to look for afterwards, under the headings of IPC-A-610. */
  static String lookFor(Step step) {
    if (step.stage() == Step.Stage.PLUG_IN) {
      return "orientation: notch over notch; mounting: no pin bent under or beside its contact";
    }
    String mounting =
        switch (step.partType().kind()) {
          case RESISTOR, DIODE, SCHOTTKY_DIODE, ZENER_DIODE, INDUCTOR, WIRE_LINK ->
              "mounting: parallel to the board, centred";
          case SOCKET, INTEGRATED_CIRCUIT, OPTOCOUPLER, DRIVER_ARRAY ->
              "mounting: not tilted, every pin through";
          default -> "mounting: upright, not tilted";
        };
    String orientation =
        step.partType().kind().isPolarised() ? "; orientation: checked before soldering" : "";
    return mounting
        + orientation
        + "; joint: wetted all round, the hole filled, no bridge; lead end: visible; part: no crack,"
        + " marking readable";
  }
}
