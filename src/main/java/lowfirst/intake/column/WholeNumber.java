package lowfirst.intake.column;

import java.util.OptionalInt;

/** Whole numbers as counts have them. */
public final class WholeNumber {
  private WholeNumber() {}

  /** The number, if the text is nothing else and has at most nine digits. */
  public static OptionalInt in(String text) {
    if (text.isEmpty() || text.length() > 9) {
      return OptionalInt.empty();
    }
    int number = 0;
    for (int i = 0; i < text.length(); i++) {
      int digit = text.charAt(i) - '0';
      if (digit < 0 || digit > 9) {
        return OptionalInt.empty();
      }
      number = number * 10 + digit;
    }
    return OptionalInt.of(number);
  }
}
