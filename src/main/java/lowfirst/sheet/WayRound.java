package lowfirst.sheet;

import lowfirst.part.PartKind;

/** What to line up with what, for each kind of part that has one right way round. */
final class WayRound {
  private WayRound() {}

  /** A sentence for the hand; empty for a kind that fits either way round. */
  static String words(PartKind kind) {
    return switch (kind) {
      case ELECTROLYTIC_CAPACITOR ->
          "Striped side is minus and stays away from the hole marked +; the longer lead is plus.";
      case TANTALUM_CAPACITOR ->
          "The end or lead marked + goes to the hole marked +. Wrong way round it can burn.";
      case DIODE, SCHOTTKY_DIODE, ZENER_DIODE ->
          "The ring (cathode) lies over the bar printed on the board.";
      case BRIDGE_RECTIFIER -> "The + on the body stands at the + on the board.";
      case LED ->
          "The flat side and the shorter lead (cathode) stand at the flat side of the print.";
      case BIPOLAR_TRANSISTOR -> "The flat face of the body follows the flat of the print.";
      case MOSFET, THYRISTOR, REGULATOR ->
          "The metal tab stands on the side printed with the double or thick line.";
      case INTEGRATED_CIRCUIT, OPTOCOUPLER, DRIVER_ARRAY ->
          "The notch or dot (pin 1) stands at the notch or dot of the print.";
      case SOCKET -> "The notch stands at the notch of the print, so that the IC will follow it.";
      case DISPLAY, MODULE -> "Pin 1 stands at the square pad or the 1 of the print.";
      case BUZZER, MICROPHONE, BATTERY -> "The + on the body stands at the + on the board.";
      case WIRE_LINK,
          RESISTOR,
          RESISTOR_NETWORK,
          TRIMMER,
          POTENTIOMETER,
          CERAMIC_CAPACITOR,
          FILM_CAPACITOR,
          CAPACITOR,
          INDUCTOR,
          CRYSTAL,
          RESONATOR,
          FUSE,
          FUSE_HOLDER,
          VARISTOR,
          RELAY,
          SWITCH,
          PIN_HEADER,
          CONNECTOR,
          SCREW_TERMINAL,
          HEATSINK,
          MOTOR,
          BOARD_FEATURE,
          HARDWARE,
          UNKNOWN ->
          "";
    };
  }
}
