package lowfirst.marking;

import java.math.BigDecimal;
import java.util.Optional;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Tolerance;

/**
 * Tolerance letters of IEC 60062, clause 5. B to Z: makers' tables agree; E, L, P and W (±0.005 to
 * ±0.05 %) are from memory of the standard. Below 10 pF, B, C, D, F and G are picofarads, not per
 * cent.
 */
public enum ToleranceLetter {
  E("0.005", "0.005", ""),
  L("0.01", "0.01", ""),
  P("0.02", "0.02", ""),
  W("0.05", "0.05", ""),
  B("0.1", "0.1", "0.1"),
  C("0.25", "0.25", "0.25"),
  D("0.5", "0.5", "0.5"),
  F("1", "1", "1"),
  G("2", "2", "2"),
  H("3", "3", ""),
  J("5", "5", ""),
  K("10", "10", ""),
  M("20", "20", ""),
  N("30", "30", ""),
  Q("10", "30", ""),
  T("10", "50", ""),
  S("20", "50", ""),
  Z("20", "80", "");

  private static final Quantity TEN_PICOFARAD = Quantity.of("10E-12", Dimension.CAPACITANCE);

  private final Tolerance percent;
  private final Optional<Tolerance> picofarad;

  ToleranceLetter(String minusPercent, String plusPercent, String picofarad) {
    this.percent = Tolerance.percent(minusPercent, plusPercent);
    this.picofarad =
        picofarad.isEmpty()
            ? Optional.empty()
            : Optional.of(
                Tolerance.absolute(
                    new BigDecimal(picofarad).scaleByPowerOfTen(-12).toPlainString()));
  }

  /** The letter, if it is one of the code. */
  public static Optional<ToleranceLetter> of(char letter) {
    for (ToleranceLetter known : values()) {
      if (known.name().charAt(0) == letter) {
        return Optional.of(known);
      }
    }
    return Optional.empty();
  }

  /** What a letter behind a value says; nothing where there is none, or none of the code. */
  static Optional<Tolerance> read(String letter, Quantity value) {
    return letter.isEmpty()
        ? Optional.empty()
        : of(letter.charAt(0)).flatMap(known -> known.tolerance(value));
  }

  /** The letter of a tolerance on a part of this value, if it has one. */
  public static Optional<ToleranceLetter> of(Tolerance tolerance, Quantity value) {
    for (ToleranceLetter known : values()) {
      if (known.tolerance(value).filter(tolerance::equals).isPresent()) {
        return Optional.of(known);
      }
    }
    return Optional.empty();
  }

  /** What it means on most parts, in per cent. */
  public Tolerance percent() {
    return percent;
  }

  /**
   * What makers' own prints use the same letter for; empty when all agree. Source: Vishay Resistor
   * Color Card (script marking), and distributors' capacitor tables.
   */
  public String otherUse() {
    return switch (this) {
      case P -> "some capacitor makers: +100/-0 % or +80/-0 %";
      case T -> "on some resistors: ±0.01 %";
      case H -> "on some resistors: ±0.02 %";
      case Z -> "on some resistors: ±0.025 %";
      case B, C, D, F, G -> "on capacitors below 10 pF: pF instead of %";
      case E, L, W, J, K, M, N, Q, S -> "";
    };
  }

  /** What it means on a part of this value: B, C, D, F and G are picofarads below 10 pF. */
  public Optional<Tolerance> tolerance(Quantity value) {
    boolean small =
        value.dimension() == Dimension.CAPACITANCE && value.compareTo(TEN_PICOFARAD) < 0;
    return small && picofarad.isPresent() ? picofarad : Optional.of(percent);
  }
}
