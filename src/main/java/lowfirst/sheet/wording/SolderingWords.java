package lowfirst.sheet.wording;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import lowfirst.assembly.Step;
import lowfirst.part.HeatLimit;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;
import lowfirst.sheet.body.Stance;

/**
 * How to seat, solder and trim a part, and what to look for then.
 *
 * <p>Seating: NASA-STD-8739.3 [8.4.2] for axial parts, IPC-A-610F p. 7-14 for radial ones. The trim
 * length is a compromise of two documents (NASA 0.5 mm least; IPC-A-610 class 2 2.5 mm most), not
 * one clause. What to look for follows the headings of IPC-A-610 in our own words.
 */
final class SolderingWords {
  private static final String TRIM = "trim so that the end shows, about 1 mm; 2.5 mm at most";

  private static final String DIPPED =
      "upright, 0.3 to 2 mm above the board, no coating in the holes";

  private static final String PARALLEL = "mounting: parallel to the board, centred";
  private static final String UPRIGHT = "mounting: upright, not tilted";

  private SolderingWords() {}

  /** How to seat it on the board. */
  static String seat(Step step) {
    PartType type = step.partType();
    return switch (Stance.of(type)) {
      case LYING -> lying(type);
      case ON_END -> "standing, 0.5 to 1.3 mm above the board";
      case ON_LEADS -> onLeads(step);
      case BENT_OVER ->
          "lying: bend the leads first, held between the bend and the body, so that the hole of the"
              + " tab meets the board's";
      case AS_ITS_KIND -> byKind(step);
    };
  }

  private static String byKind(Step step) {
    PartType type = step.partType();
    return switch (type.kind()) {
      case WIRE_LINK -> "flat on the board, not tight";
      case CERAMIC_CAPACITOR,
          CAPACITOR,
          TANTALUM_CAPACITOR,
          RESONATOR,
          VARISTOR,
          THERMISTOR,
          PHOTORESISTOR ->
          DIPPED;
      case FILM_CAPACITOR -> isBoxed(type) ? "upright, down on the board" : DIPPED;
      case CRYSTAL ->
          "upright, 0.3 to 2 mm above the board, so that its can touches no pad or track";
      case ELECTROLYTIC_CAPACITOR -> "upright, down on the board or up to 2 mm above it";
      case LED -> "upright; bend leads before soldering only, 2 mm or more from the lens, once";
      case RESISTOR,
          INDUCTOR,
          DIODE,
          SCHOTTKY_DIODE,
          ZENER_DIODE,
          TRANSISTOR,
          BIPOLAR_TRANSISTOR,
          JFET,
          MOSFET,
          THYRISTOR,
          REGULATOR ->
          "upright, down on the board and square to it";
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
          TRIMMER_CAPACITOR,
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

  /** A moulded box with feet; its leads carry no coating. */
  private static boolean isBoxed(PartType type) {
    String name = type.packageName().toUpperCase(Locale.ROOT);
    return name.contains("BOX") || name.contains("C_RECT");
  }

  private static String lying(PartType type) {
    boolean hot = type.ratedPower().filter(power -> power.asDouble() >= 1).isPresent();
    return hot
        ? "1 W and more: lying 1.5 mm or more above the board, so that heat gets away"
        : "lying flat and centred; bend the leads 0.8 mm or more from the body";
  }

  private static String onLeads(Step step) {
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
    boolean transistorLike = Stance.of(step.partType()).isTransistorLike();
    String joints =
        switch (transistorLike ? PartKind.BIPOLAR_TRANSISTOR : kind) {
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
        switch (Stance.of(step.partType())) {
          case LYING -> PARALLEL;
          case BENT_OVER -> "mounting: flat, hole over hole";
          case ON_END, ON_LEADS -> UPRIGHT;
          case AS_ITS_KIND ->
              switch (step.partType().kind()) {
                case WIRE_LINK -> PARALLEL;
                case SOCKET, INTEGRATED_CIRCUIT, OPTOCOUPLER, DRIVER_ARRAY ->
                    "mounting: not tilted, every pin through";
                default -> UPRIGHT;
              };
        };
    String orientation =
        step.partType().kind().isPolarised() ? "; orientation: checked before soldering" : "";
    return mounting
        + orientation
        + "; joint: wetted all round, the hole filled, no bridge; lead end: visible; part: no crack,"
        + " marking readable";
  }
}
