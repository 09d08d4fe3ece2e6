package lowfirst.intake.cell;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Letters said once for several numbers, or a number once for several units: R[1-4], R 1-4, R1/2/3,
 * U1A-D.
 */
final class SharedLetters {
  private static final int LONGEST = 40;

  /** What may end a list whose letters stand before it. */
  private static final String BRACKETS = ")]}";

  /** R[1-4], R{1..4}, R 1-4. */
  private static final Pattern APART =
      Pattern.compile(
          "([\\p{L}_]{1,4})(?:\\s*[\\[{(]\\s*(\\d[^\\[\\]{}()]*)[\\]})]|\\s+(\\d{1,4}\\s*[-–]\\s*\\d{1,4}))");

  /** One number after another without letters: R1/2/3. */
  private static final Pattern BEHIND =
      Pattern.compile("([\\p{L}_]{1,4})(\\d{1,4})((?:\\s*[/&+]\\s*\\d{1,4})+)");

  /** The units of one part: U1A-D, U1A/B. */
  private static final Pattern UNITS =
      Pattern.compile("([\\p{L}_]{1,4}\\d{1,4})([A-Ha-h])([-–/+&])([A-Ha-h])");

  private SharedLetters() {}

  /** Whether a whole cell is letters with a list in brackets, whatever separators that has. */
  static boolean isCell(String cell) {
    return !cell.isEmpty()
        && cell.length() <= LONGEST
        && BRACKETS.indexOf(cell.charAt(cell.length() - 1)) >= 0
        && APART.matcher(cell).matches();
  }

  /**
   * The designators and ranges that a text stands for, each spelt out; none where it shares
   * nothing.
   */
  static List<String> in(String text) {
    if (text.length() > LONGEST) {
      return List.of();
    }
    Matcher apart = APART.matcher(text);
    Matcher behind = BEHIND.matcher(text);
    Matcher units = UNITS.matcher(text);
    if (apart.matches()) {
      return apart(apart.group(1), apart.group(2) == null ? apart.group(3) : apart.group(2));
    }
    if (behind.matches()) {
      return behind(behind.group(1), behind.group(2) + behind.group(3));
    }
    return units.matches() ? units(units) : List.of();
  }

  private static List<String> apart(String letters, String numbers) {
    var names = new ArrayList<String>();
    for (String piece : numbers.split("[,;]")) {
      names.add(letters + piece.strip());
    }
    return names.stream().allMatch(SharedLetters::isNumbered) ? names : List.of();
  }

  private static boolean isNumbered(String name) {
    return DesignatorSpelling.isPlain(name) || DesignatorRange.in(name).isPresent();
  }

  private static List<String> behind(String letters, String numbers) {
    var names = new ArrayList<String>();
    for (String number : numbers.split("\\D+")) {
      names.add(letters + number);
    }
    return names;
  }

  private static List<String> units(Matcher units) {
    char first = units.group(2).charAt(0);
    char last = units.group(4).charAt(0);
    boolean all = "-–".contains(units.group(3));
    var names = new ArrayList<String>();
    for (int unit = first; first < last && unit <= last; unit++) {
      if (all || unit == first || unit == last) {
        names.add(units.group(1) + (char) unit);
      }
    }
    return names;
  }
}
