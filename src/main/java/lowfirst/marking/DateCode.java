package lowfirst.marking;

import java.util.List;
import java.util.Optional;

/**
 * Month of manufacture as two characters of IEC 60062, clause 6 (table from memory of the standard;
 * EPCOS "Marking and ordering code system", May 2009, confirms its use).
 *
 * @param years every year it can be: the letters come round after twenty years
 * @param month 1 to 12
 */
record DateCode(List<Integer> years, int month) {
  private static final String YEARS = "ABCDEFHJKLMNPRSTUVWX";
  private static final String MONTHS = "123456789OND";
  private static final int FIRST_YEAR = 1990;
  private static final int CYCLE = 20;

  /** The month that two characters stand for, if they do. */
  static Optional<DateCode> of(String code) {
    if (code.length() != 2) {
      return Optional.empty();
    }
    int year = YEARS.indexOf(code.charAt(0));
    int month = MONTHS.indexOf(code.charAt(1));
    if (year < 0 || month < 0) {
      return Optional.empty();
    }
    int first = FIRST_YEAR + year;
    return Optional.of(new DateCode(List.of(first, first + CYCLE), month + 1));
  }
}
