package lowfirst.intake;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/** The words and signs by which a cell says that a part is fitted or not; common practice. */
final class FittedSigns {
  private static final Set<String> YES =
      Set.of(
          "yes",
          "y",
          "true",
          "1",
          "x",
          "fitted",
          "fit",
          "mounted",
          "populated",
          "ja",
          "j",
          "oui",
          "o",
          "si",
          "sí",
          "s",
          "ok",
          "✓",
          "✔",
          "+",
          "place",
          "assemble",
          "bestückt",
          "tak",
          "ano",
          "sim",
          "sì",
          "да",
          "是");

  private static final Set<String> NO =
      Set.of(
          "no",
          "n",
          "false",
          "0",
          "-",
          "nein",
          "non",
          "not fitted",
          "not mounted",
          "none",
          "✗",
          "✘",
          "excluded",
          "exclude",
          "unpopulated",
          "nee",
          "nie",
          "ne",
          "não",
          "нет",
          "否");

  private static final Pattern NOT_FITTED =
      Pattern.compile(
          "(?iU)^(nf|nm|nb|np|n/[fmp])$"
              + "|(^|[\\s(\\[/,;*_])(dnf|dnp|dni|dns|n\\.\\s?[fmbp]\\.|do[ -]not"
              + "[ -](fit|place|populate|mount|install|stuff)|don't (fit|place|populate)|not"
              + "[ -](fitted|populated|mounted|placed|installed)|no[ -]?(pop|fit|stuff|load)|nicht"
              + " best(ü|ue)ckt|nicht best(ü|ue)cken|non mont(é|e)|unpopulated)($|[\\s)\\]/,;.:*_])");

  private static final Pattern OPTIONAL =
      Pattern.compile(
          "(?iU)\\b(op[tcz]ional(e|mente)?|optionnel|optioneel|opcjonaln\\w*|opt\\.?)(\\W|$)");

  /** A longer text is prose. */
  private static final int LONGEST = 60;

  private FittedSigns() {}

  /** Whether a cell about fitting means yes. */
  static boolean isYes(String text) {
    return YES.contains(text.toLowerCase(Locale.ROOT));
  }

  /** Whether a cell about fitting means no. */
  static boolean isNo(String text) {
    return NO.contains(text.toLowerCase(Locale.ROOT));
  }

  /** Whether a cell about fitting leaves it to the builder. */
  static boolean isOptional(String text) {
    return OPTIONAL.matcher(text).find();
  }

  /** Whether a text about whatever says that the part is not fitted. */
  static boolean leaveOut(String text) {
    return NOT_FITTED.matcher(text).find();
  }

  /** Whether a cell of a column that nothing is known about says so, short enough for it. */
  static boolean mayLeaveOut(String text) {
    return text.length() > 1
        && text.length() < LONGEST
        && !isYes(text)
        && (leaveOut(text) || FittingWords.leaveOut(text));
  }

  /** Whether one of the two cells about fitting says that the part is not fitted. */
  static boolean sayLeftOut(String fitted, String notFitted) {
    return (!notFitted.isEmpty() && !isNo(notFitted))
        || (!fitted.isEmpty()
            && !isYes(fitted)
            && !isOptional(fitted)
            && (isNo(fitted) || mayLeaveOut(fitted)));
  }

  /** Whether a cell says that a part is fitted or not, and nothing else. */
  static boolean isOne(String text) {
    return isYes(text) || isNo(text) || isOptional(text) || mayLeaveOut(text);
  }
}
