package lowfirst.board;

/**
 * A reference designator such as R12, Q3 or {@code L1-In}: an exact text. Sorted as a person would:
 * R2 before R10.
 */
public final class Designator implements Comparable<Designator> {
  /** A usual designator has no more letters. */
  private static final int LETTERS = 4;

  /** A usual designator has no more digits. */
  private static final int DIGITS = 6;

  /** Spreads numbers that follow one another: an odd number without a pattern in its bits. */
  private static final long SPREAD = 0x9E3779B97F4A7C15L;

  private final String text;

  /**
   * A usual designator as one number, so that it is compared without following the text: up to four
   * Latin letters from the left, each in a byte, and below them up to six digits that don't start
   * with 0. In its order. Any other designator has 0.
   */
  private final long number;

  private Designator(String text) {
    this.text = text;
    this.number = numberOf(text);
    if (number == 0 && (text.isBlank() || !text.equals(text.strip()))) {
      throw new IllegalArgumentException("not a designator: \"" + text + "\"");
    }
  }

  private static long numberOf(String text) {
    long letters = 0;
    int at = 0;
    for (; at < text.length() && isLetter(text.charAt(at)); at++) {
      letters = letters << 8 | text.charAt(at);
    }
    int digits = text.length() - at;
    if (at == 0 || at > LETTERS || digits == 0 || digits > DIGITS || text.charAt(at) == '0') {
      return 0;
    }
    long value = 0;
    for (int i = at; i < text.length(); i++) {
      if (!isDigit(text.charAt(i))) {
        return 0;
      }
      value = 10 * value + (text.charAt(i) - '0');
    }
    return letters << 8 * (LETTERS - at) + 32 | value;
  }

  private static boolean isLetter(char c) {
    return c >= 'A' && c <= 'Z' || c >= 'a' && c <= 'z';
  }

  /** A trusted designator. */
  public static Designator of(String text) {
    return new Designator(text);
  }

  /** As it is written. */
  public String text() {
    return text;
  }

  /** Whether it is up to four letters and six digits and nothing else, such as R12; most are. */
  public boolean isUsual() {
    return number != 0;
  }

  /** Whether both are usual, with the same letters, and the other has the next number. */
  public boolean isJustBefore(Designator other) {
    return number != 0 && number + 1 == other.number;
  }

  /** Of a usual designator a number for its letters, which no other letters have. */
  int letters() {
    return (int) (number >>> 32);
  }

  /** Of a usual designator its figures: 17 of R17; 1 to 999 999. */
  int figures() {
    return (int) number;
  }

  /** The letters it starts with, in capitals: {@code R} of R12; empty when it starts otherwise. */
  public String prefix() {
    int end = 0;
    while (end < text.length() && Character.isLetter(text.charAt(end))) {
      end++;
    }
    return text.substring(0, end).toUpperCase(java.util.Locale.ROOT);
  }

  /** Whether both start with the same letters, capital or small: R1 and R12. */
  public boolean hasPrefixOf(Designator other) {
    return number != 0 && other.number != 0 && letters() == other.letters()
        || prefix().equals(other.prefix());
  }

  @Override
  public int compareTo(Designator other) {
    return number != 0 && other.number != 0
        ? Long.compare(number, other.number)
        : compareNaturally(text, other.text);
  }

  private static int compareNaturally(String a, String b) {
    int i = 0;
    int j = 0;
    while (i < a.length() && j < b.length()) {
      if (isDigit(a.charAt(i)) && isDigit(b.charAt(j))) {
        int iEnd = digitsEnd(a, i);
        int jEnd = digitsEnd(b, j);
        int byDigits =
            compareNumbers(a, firstFigure(a, i, iEnd), iEnd, b, firstFigure(b, j, jEnd), jEnd);
        if (byDigits != 0) {
          return byDigits;
        }
        i = iEnd;
        j = jEnd;
      } else {
        int byCharacter = Character.compare(a.charAt(i), b.charAt(j));
        if (byCharacter != 0) {
          return byCharacter;
        }
        i++;
        j++;
      }
    }
    int byRest = Integer.compare(a.length() - i, b.length() - j);
    return byRest != 0 ? byRest : a.compareTo(b);
  }

  /** Of two numbers without leading zeros the longer is the larger. */
  private static int compareNumbers(String a, int i, int iEnd, String b, int j, int jEnd) {
    int byLength = Integer.compare(iEnd - i, jEnd - j);
    for (int k = 0; byLength == 0 && i + k < iEnd; k++) {
      if (a.charAt(i + k) != b.charAt(j + k)) {
        return Character.compare(a.charAt(i + k), b.charAt(j + k));
      }
    }
    return byLength;
  }

  /** Past the leading zeros; the last zero of nothing but zeros counts. */
  private static int firstFigure(String text, int from, int end) {
    int first = from;
    while (first < end - 1 && text.charAt(first) == '0') {
      first++;
    }
    return first;
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  private static int digitsEnd(String text, int from) {
    int end = from;
    while (end < text.length() && isDigit(text.charAt(end))) {
      end++;
    }
    return end;
  }

  @Override
  public boolean equals(Object other) {
    return this == other
        || other instanceof Designator that
            && number == that.number
            && (number != 0 || text.equals(that.text));
  }

  @Override
  public int hashCode() {
    return number != 0 ? (int) ((number ^ number >>> 32) * SPREAD >>> 32) : text.hashCode();
  }

  @Override
  public String toString() {
    return text;
  }
}
