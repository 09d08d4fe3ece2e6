package lowfirst.sorting;

import lowfirst.part.PartKind;
import lowfirst.quantity.Tolerance;

/**
 * The tolerance taken where the BOM states none: the widest that shops usually sell for the kind of
 * part (common practice). Whoever uses it says that it is assumed.
 */
final class AssumedTolerance {
  private static final Tolerance FIVE = Tolerance.percent("5");
  private static final Tolerance TEN = Tolerance.percent("10");
  private static final Tolerance TWENTY = Tolerance.percent("20");

  private AssumedTolerance() {}

  static Tolerance of(PartKind kind) {
    return switch (kind) {
      case RESISTOR, RESISTOR_NETWORK -> FIVE;
      case FILM_CAPACITOR, INDUCTOR -> TEN;
      default -> TWENTY;
    };
  }
}
