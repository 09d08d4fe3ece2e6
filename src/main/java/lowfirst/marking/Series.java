package lowfirst.marking;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Tolerance;

/**
 * The series of preferred numbers of IEC 60063:2015.
 *
 * <p>Member k of series En is 10^(k/n), k = 0 … n-1, rounded to two figures up to E24 and to three
 * from E48 on. Nine members differ from the rule for historical reasons: eight of E24 (2.7, 3.0,
 * 3.3, 3.6, 3.9, 4.3, 4.7 and 8.2), which E12, E6 and E3 inherit, and 9.20 in E192.
 */
public enum Series {
  E3(3),
  E6(6),
  E12(12),
  E24(24),
  E48(48),
  E96(96),
  E192(192);

  private final int[] members;

  /** Members as three figures, 100 to 999. */
  private final BitSet threeFigures = new BitSet(1000);

  Series(int size) {
    members = new int[size];
    boolean twoFigures = size <= 24;
    for (int k = 0; k < size; k++) {
      double exact = Math.pow(10, (double) k / size);
      int rounded = (int) Math.round(exact * (twoFigures ? 10 : 100));
      members[k] = twoFigures ? ofE24(rounded) : ofE192(rounded);
      threeFigures.set(twoFigures ? members[k] * 10 : members[k]);
    }
  }

  /** Rounded as the rule says, or what history made of it. */
  private static int ofE24(int rounded) {
    return switch (rounded) {
      case 26, 29, 32, 35, 38, 42, 46 -> rounded + 1;
      case 83 -> 82;
      default -> rounded;
    };
  }

  private static int ofE192(int rounded) {
    return rounded == 919 ? 920 : rounded;
  }

  /** The members of one decade: two figures (10 to 91) up to E24, three (100 to 988) from E48. */
  public List<Integer> members() {
    return Arrays.stream(members).boxed().toList();
  }

  /** Whether it is a member times a power of ten; {@code figures} from 100 to 999. */
  boolean containsFigures(int figures) {
    return threeFigures.get(figures);
  }

  /** Whether an amount is a member times a power of ten. */
  public boolean contains(Quantity amount) {
    Optional<Integer> figures = figures(amount);
    return figures.isPresent() && containsFigures(figures.get());
  }

  /** The first three figures, if there are no more. */
  private static Optional<Integer> figures(Quantity amount) {
    BigDecimal plain = amount.amount();
    if (plain.signum() <= 0 || plain.precision() > 3) {
      return Optional.empty();
    }
    return Optional.of(plain.scaleByPowerOfTen(2 - magnitude(plain)).intValueExact());
  }

  private static int magnitude(BigDecimal amount) {
    return amount.precision() - amount.scale() - 1;
  }

  /** The least member times a power of ten at or above an amount, or at most 0.1 % below it. */
  public double atOrAbove(double amount) {
    double decade = Math.pow(10, Math.floor(Math.log10(amount)));
    for (int member : members) {
      double candidate = member * decade / members[0];
      if (candidate >= amount * 0.999) {
        return candidate;
      }
    }
    return 10 * decade;
  }

  /**
   * The finest series in which parts of a tolerance are sold; E24 values are sold at every
   * tolerance. A tolerance suggests a series, it doesn't prove one (IEC 60063:2015).
   */
  static Series soldAt(Tolerance tolerance) {
    double percent = tolerance.plus().doubleValue();
    return percent >= 5 ? E24 : percent >= 2 ? E48 : percent >= 1 ? E96 : E192;
  }

  /** Whether parts of this tolerance are sold with these three figures. */
  static boolean sold(int threeFigures, Tolerance tolerance) {
    return E24.containsFigures(threeFigures) || soldAt(tolerance).containsFigures(threeFigures);
  }
}
