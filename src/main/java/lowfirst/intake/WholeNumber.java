package lowfirst.intake;

import java.util.OptionalInt;

/** Whole numbers as counts have them. */
final class WholeNumber {
  private WholeNumber() {}

  /** The number, if the text is nothing else and has at most nine digits. */
  static OptionalInt in(String text) {
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
