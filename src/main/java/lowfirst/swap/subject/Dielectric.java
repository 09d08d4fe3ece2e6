package lowfirst.swap.subject;

import java.util.Locale;
import java.util.Optional;
import lowfirst.part.PartKind;
import lowfirst.quantity.Source;

/**
 * What lies between the plates, and how steady it keeps the capacitance over its temperature range.
 *
 * <p>The changes are those of EIA-198 as Murata prints them in the part numbering of its radial
 * lead ceramics: C0G 30 ppm/K (0.3 % over 100 K), X7R ±15 %, X7S ±22 %, Y5V +22/-82 %, Z5U +22/-56
 * %.
 */
public enum Dielectric {
  C0G(1, 0.3),
  FILM(1, 5),
  X7R(2, 15),
  X5R(2, 15),
  X8R(2, 15),
  X7S(2, 22),
  X7T(2, 33),
  Z5U(3, 56),
  Y5V(3, 82);

  /** Where the changes stand. */
  public static final Source SOURCE =
      Source.datasheet(
          "EIA-198 codes as printed in Murata's part numbering of radial lead ceramics");

  private final int steadiness;
  private final double lossPercent;

  Dielectric(int steadiness, double lossPercent) {
    this.steadiness = steadiness;
    this.lossPercent = lossPercent;
  }

  /** 1 keeps its value, 2 changes, 3 may lose most of it. */
  public int steadiness() {
    return steadiness;
  }

  /** How far the capacitance may fall over the temperature range, per cent. */
  public double lossPercent() {
    return lossPercent;
  }

  /** The dielectric of a part, from its text, its datasheet or its kind. */
  public static Optional<Dielectric> of(SwapPart part) {
    Optional<Dielectric> stated =
        part.word("dielectric").flatMap(evidence -> named(evidence.word()));
    return stated.isEmpty() && part.type().kind() == PartKind.FILM_CAPACITOR
        ? Optional.of(FILM)
        : stated;
  }

  private static Optional<Dielectric> named(String word) {
    String code = word.toUpperCase(Locale.ROOT).strip();
    for (Dielectric dielectric : values()) {
      if (dielectric.name().equals(code)) {
        return Optional.of(dielectric);
      }
    }
    return Optional.empty();
  }
}
