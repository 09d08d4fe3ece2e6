package lowfirst.marking;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import lowfirst.quantity.Tolerance;

/**
 * A colour of the code of IEC 60062:2016, clause 3, with what it means in each place.
 *
 * <p>Source of digits, multipliers up to 10⁶ and tolerances: Vishay Draloric/Beyschlag "Resistor
 * Color Card", "according to IEC 60062". Pink: abstract of IEC 60062:2016. Multipliers above 10⁶
 * and the temperature coefficients of black, green and grey stand on public charts only. Two-letter
 * codes: IEC 60757.
 */
public enum Colour {
  PINK("pink", "PK", -1, -3, "", "", -1, 0xE78AB4, "pnk"),
  SILVER("silver", "SR", -1, -2, "10", "10", -1, 0xB4BAC0, "slv sil ag"),
  GOLD("gold", "GD", -1, -1, "5", "5", -1, 0xB8912F, "gld au"),
  BLACK("black", "BK", 0, 0, "", "", 250, 0x0E0E10, "blk"),
  BROWN("brown", "BN", 1, 1, "1", "1", 100, 0x6F4226, "brn br"),
  RED("red", "RD", 2, 2, "2", "2", 50, 0xB3262E, ""),
  ORANGE("orange", "OG", 3, 3, "0.05", "", 15, 0xE8731C, "org orn"),
  YELLOW("yellow", "YE", 4, 4, "0.02", "", 25, 0xF2CB1D, "yel ylw"),
  GREEN("green", "GN", 5, 5, "0.5", "0.5", 20, 0x3F8F3A, "grn"),
  BLUE("blue", "BU", 6, 6, "0.25", "0.25", 10, 0x1F5FA8, "blu"),
  VIOLET("violet", "VT", 7, 7, "0.1", "0.1", 5, 0x7C4A8C, "vio vlt purple pur"),
  GREY("grey", "GY", 8, 8, "0.01", "0.05", 1, 0x80868B, "gray gry"),
  WHITE("white", "WH", 9, 9, "", "", -1, 0xF4F2EA, "wht");

  private static final Map<String, Colour> BY_WORD = new HashMap<>();

  static {
    for (Colour colour : values()) {
      BY_WORD.put(colour.word, colour);
      BY_WORD.put(colour.code.toLowerCase(Locale.ROOT), colour);
      for (String other : colour.otherWords) {
        BY_WORD.put(other, colour);
      }
    }
  }

  private final String word;
  private final String code;
  private final int digit;
  private final int exponent;
  private final Optional<Tolerance> tolerance;
  private final Optional<Tolerance> olderTolerance;
  private final int ppmPerKelvin;
  private final int rgb;
  private final List<String> otherWords;

  Colour(
      String word,
      String code,
      int digit,
      int exponent,
      String tolerancePercent,
      String olderTolerancePercent,
      int ppmPerKelvin,
      int rgb,
      String otherWords) {
    this.word = word;
    this.code = code;
    this.digit = digit;
    this.exponent = exponent;
    this.tolerance = percent(tolerancePercent);
    this.olderTolerance = percent(olderTolerancePercent);
    this.ppmPerKelvin = ppmPerKelvin;
    this.rgb = rgb;
    this.otherWords = otherWords.isEmpty() ? List.of() : List.of(otherWords.split(" "));
  }

  private static Optional<Tolerance> percent(String text) {
    return text.isEmpty() ? Optional.empty() : Optional.of(Tolerance.percent(text));
  }

  /**
   * The colour of an English name, a common abbreviation of it, or an IEC 60757 code, in any case.
   */
  public static Optional<Colour> named(String text) {
    return Optional.ofNullable(BY_WORD.get(text.strip().toLowerCase(Locale.ROOT)));
  }

  /** The colour with this digit. */
  static Colour ofDigit(int digit) {
    return values()[BLACK.ordinal() + digit];
  }

  /** The colour with this power of ten, if there is one. */
  static Optional<Colour> ofExponent(int exponent) {
    for (Colour colour : values()) {
      if (colour.exponent == exponent) {
        return Optional.of(colour);
      }
    }
    return Optional.empty();
  }

  /** The colour with this tolerance, if there is one. */
  static Optional<Colour> ofTolerance(Tolerance tolerance, Edition edition) {
    Optional<Tolerance> wanted = Optional.of(tolerance);
    for (Colour colour : values()) {
      if (colour.tolerance(edition).equals(wanted)) {
        return Optional.of(colour);
      }
    }
    return Optional.empty();
  }

  /** The colour with this temperature coefficient, if there is one. */
  static Optional<Colour> ofPpmPerKelvin(int ppmPerKelvin) {
    return Arrays.stream(values())
        .filter(colour -> colour.ppmPerKelvin == ppmPerKelvin && ppmPerKelvin >= 0)
        .findFirst();
  }

  /** Its English name. */
  public String word() {
    return word;
  }

  /** Its IEC 60757 code, such as BN for brown. */
  public String code() {
    return code;
  }

  /** Whether it stands for a digit: pink, silver and gold don't. */
  public boolean isDigit() {
    return digit >= 0;
  }

  /** Its digit; -1 when it has none. */
  int digit() {
    return digit;
  }

  /** The power of ten it stands for in the multiplier's place. */
  public int exponent() {
    return exponent;
  }

  /** The tolerance it stands for, if any. */
  public Optional<Tolerance> tolerance(Edition edition) {
    return edition == Edition.OLDER ? olderTolerance : tolerance;
  }

  /** The temperature coefficient it stands for in the sixth place, 10⁻⁶ per kelvin, if any. */
  public OptionalInt ppmPerKelvin() {
    return ppmPerKelvin < 0 ? OptionalInt.empty() : OptionalInt.of(ppmPerKelvin);
  }

  /**
   * A typical look of it as 0xRRGGBB, for drawings and for judging which colours are confused.
   * Paint varies from maker to maker; no standard fixes it for parts.
   */
  public int rgb() {
    return rgb;
  }
}
