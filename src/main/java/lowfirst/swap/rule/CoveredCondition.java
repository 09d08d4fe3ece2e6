package lowfirst.swap.rule;

import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import lowfirst.part.TestCondition;
import lowfirst.swap.subject.Words;

/**
 * Whether what is promised under one test condition holds under another, too: where all of it is
 * the same, or harder in a way in which the amount can only get worse.
 */
final class CoveredCondition {

  /** Which end of a condition is the harder one. */
  private enum Harder {
    HIGHER,
    LOWER
  }

  private static final Map<String, Harder> HOTTER =
      Map.of(
          "TA", Harder.HIGHER,
          "TAMB", Harder.HIGHER,
          "TC", Harder.HIGHER,
          "TMB", Harder.HIGHER,
          "TL", Harder.HIGHER);

  /**
   * What makes an amount worse, by its symbol. A rating falls with the temperature up to which it
   * holds. A junction drops more at more current, a saturated transistor also with less base
   * current; a gate takes more charge up to a higher voltage; a Zener's slope is steeper at more
   * current; gain grows with the collector's voltage. Of gain over current, and of surges and
   * avalanches, nothing is said: there no direction is the harder one everywhere.
   */
  private static final Map<String, Map<String, Harder>> HARDER =
      Map.of(
          "ID", HOTTER,
          "PD", HOTTER,
          "QG", Map.of("VGS", Harder.HIGHER),
          "VF", Map.of("IF", Harder.HIGHER),
          "VCEsat", Map.of("IC", Harder.HIGHER, "IB", Harder.LOWER),
          "VBEon", Map.of("IC", Harder.HIGHER),
          "VIon", Map.of("IC", Harder.HIGHER),
          "ZZ", Map.of("IZ", Harder.LOWER),
          "hFE", Map.of("VCE", Harder.LOWER));

  /** Sheets give what states no temperature at 25 °C. */
  private static final Set<String> USUALLY_25 = Set.of("TJ", "TA", "TAMB");

  private static final double USUAL_CELSIUS = 25;

  private CoveredCondition() {}

  /** Whether a promise of this symbol under one condition is one under the other as well. */
  static boolean covers(String symbol, String stated, String wanted) {
    if (wanted.isBlank() || Words.same(stated, wanted)) {
      return true;
    }
    TestCondition has = TestCondition.parse(stated);
    TestCondition asks = TestCondition.parse(wanted);
    Map<String, Harder> harder = HARDER.getOrDefault(symbol, Map.of());
    return Words.same(has.words(), asks.words())
        && asks.names().stream().allMatch(name -> isAsHard(name, has, asks, harder))
        && has.names().stream().allMatch(name -> isAsHard(name, has, asks, harder));
  }

  private static boolean isAsHard(
      String name, TestCondition has, TestCondition asks, Map<String, Harder> harder) {
    OptionalDouble stated = value(name, has, harder);
    OptionalDouble wanted = value(name, asks, harder);
    if (stated.isEmpty() || wanted.isEmpty()) {
      return false;
    }
    double more = stated.getAsDouble() - wanted.getAsDouble();
    Harder way = harder.get(name);
    return more == 0 || (more > 0 ? way == Harder.HIGHER : way == Harder.LOWER);
  }

  private static OptionalDouble value(
      String name, TestCondition condition, Map<String, Harder> harder) {
    boolean usual =
        !condition.names().contains(name) && USUALLY_25.contains(name) && !harder.containsKey(name);
    return usual ? OptionalDouble.of(USUAL_CELSIUS) : condition.value(name);
  }
}
