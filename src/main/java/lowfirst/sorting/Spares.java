package lowfirst.sorting;

import lowfirst.part.PartKind;

/**
 * How many spares to buy: parts that get lost, bent or burnt (common practice, no standard says).
 */
final class Spares {
  private Spares() {}

  static int of(PartKind kind, int quantity) {
    return switch (kind) {
      case RESISTOR, CERAMIC_CAPACITOR, CAPACITOR -> Math.max(2, tenth(quantity));
      case FUSE -> Math.max(2, tenth(quantity));
      case DIODE,
          SCHOTTKY_DIODE,
          ZENER_DIODE,
          LED,
          TRANSISTOR,
          BIPOLAR_TRANSISTOR,
          JFET,
          MOSFET,
          FILM_CAPACITOR ->
          Math.max(1, tenth(quantity));
      case ELECTROLYTIC_CAPACITOR, TANTALUM_CAPACITOR, REGULATOR -> 1;
      default -> 0;
    };
  }

  private static int tenth(int quantity) {
    return (quantity + 9) / 10;
  }
}
