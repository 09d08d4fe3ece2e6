package lowfirst.marking;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * What a ceramic capacitor's dielectric code of EIA RS-198 says, such as {@code X7R} or {@code
 * C0G}.
 *
 * <p>Three public tables agree on each letter. Much-copied tables with Z = -10 °C and 7 = 120 °C
 * are wrong: it is +10 °C and 125 °C.
 *
 * @param code as the standard writes it: C0G with a zero
 * @param words what it promises
 */
record Dielectric(String code, String words) {
  private static final Map<Character, String> LOW = Map.of('X', "-55", 'Y', "-30", 'Z', "+10");
  private static final Map<Character, String> HIGH =
      Map.of(
          '2', "+45", '4', "+65", '5', "+85", '6', "+105", '7', "+125", '8', "+150", '9', "+200");
  private static final Map<Character, String> CHANGE =
      Map.ofEntries(
          Map.entry('A', "±1"),
          Map.entry('B', "±1.5"),
          Map.entry('C', "±2.2"),
          Map.entry('D', "±3.3"),
          Map.entry('E', "±4.7"),
          Map.entry('F', "±7.5"),
          Map.entry('P', "±10"),
          Map.entry('R', "±15"),
          Map.entry('S', "±22"),
          Map.entry('T', "+22/-33"),
          Map.entry('U', "+22/-56"),
          Map.entry('V', "+22/-82"));

  private static final Map<Character, Double> FIGURE =
      Map.ofEntries(
          Map.entry('C', 0.0),
          Map.entry('B', 0.3),
          Map.entry('L', 0.8),
          Map.entry('A', 0.9),
          Map.entry('M', 1.0),
          Map.entry('P', 1.5),
          Map.entry('R', 2.2),
          Map.entry('S', 3.3),
          Map.entry('T', 4.7),
          Map.entry('V', 5.6),
          Map.entry('U', 7.5));
  private static final Map<Character, Integer> MULTIPLIER =
      Map.of('0', -1, '1', -10, '2', -100, '3', -1000, '4', 1, '6', 10, '7', 100, '8', 1000);
  private static final Map<Character, Integer> SPREAD =
      Map.of('G', 30, 'H', 60, 'J', 120, 'K', 250, 'L', 500, 'M', 1000, 'N', 2500);

  /** The older names of class 1 by their coefficient: N750 is -750 ppm/K. */
  private static final Map<String, String> OLDER =
      Map.of("NP0", "C0G", "NPO", "C0G", "COG", "C0G", "N750", "U2J", "N1500", "P3K");

  /** What a dielectric code stands for, if it is one. */
  static Optional<Dielectric> of(String text) {
    String upper = text.strip().toUpperCase(Locale.ROOT);
    String code = OLDER.getOrDefault(upper, upper);
    if (code.length() != 3) {
      return Optional.empty();
    }
    char first = code.charAt(0);
    char second = code.charAt(1);
    char third = code.charAt(2);
    if (LOW.containsKey(first) && HIGH.containsKey(second) && CHANGE.containsKey(third)) {
      String words =
          LOW.get(first) + " to " + HIGH.get(second) + " °C, " + CHANGE.get(third) + " % (class 2)";
      return Optional.of(new Dielectric(code, words));
    }
    if (FIGURE.containsKey(first) && MULTIPLIER.containsKey(second) && SPREAD.containsKey(third)) {
      long ppm = Math.round(FIGURE.get(first) * MULTIPLIER.get(second));
      String words = ppm + " ±" + SPREAD.get(third) + " ppm/K from 25 to 85 °C (class 1)";
      return Optional.of(new Dielectric(code, words));
    }
    return Optional.empty();
  }
}
