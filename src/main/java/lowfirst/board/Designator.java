package lowfirst.board;

/**
 * A reference designator such as R12, Q3 or {@code L1-In}: an exact text. Sorted as a person would:
 * R2 before R10.
 */
public final class Designator implements Comparable<Designator> {
  private final String text;

  /** Kept beside the text: asked for so often that following the text to it counts. */
  private final int hash;

  private Designator(String text) {
    if (text.isBlank() || !text.equals(text.strip())) {
      throw new IllegalArgumentException("not a designator: \"" + text + "\"");
    }
    this.text = text;
    this.hash = text.hashCode();
  }

  /** A trusted designator. */
  public static Designator of(String text) {
    return new Designator(text);
  }

  /** As it is written. */
  public String text() {
    return text;
  }

  /** The letters it starts with, in capitals: {@code R} of R12; empty when it starts otherwise. */
  public String prefix() {
    int end = 0;
    while (end < text.length() && Character.isLetter(text.charAt(end))) {
      end++;
    }
    return text.substring(0, end).toUpperCase(java.util.Locale.ROOT);
  }

  @Override
  public int compareTo(Designator other) {
    return compareNaturally(text, other.text);
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
        || other instanceof Designator that && hash == that.hash && text.equals(that.text);
  }

  @Override
  public int hashCode() {
    return hash;
  }

  @Override
  public String toString() {
    return text;
  }
}
