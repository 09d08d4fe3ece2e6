package lowfirst.swap.subject;

/** Compares words of datasheets as a reader does: case, spaces and punctuation aside. */
public final class Words {
  private Words() {}

  /** Whether both say the same. */
  public static boolean same(String one, String other) {
    if (one.equals(other)) {
      return true;
    }
    int i = 0;
    int j = 0;
    while (true) {
      while (i < one.length() && isFiller(one.charAt(i))) {
        i++;
      }
      while (j < other.length() && isFiller(other.charAt(j))) {
        j++;
      }
      if (i == one.length() || j == other.length()) {
        return i == one.length() && j == other.length();
      }
      if (Character.toUpperCase(one.charAt(i)) != Character.toUpperCase(other.charAt(j))) {
        return false;
      }
      i++;
      j++;
    }
  }

  private static boolean isFiller(char c) {
    return c == ' ' || c == '-' || c == '_' || c == ',' || c == ';' || c == '\u00a0';
  }
}
