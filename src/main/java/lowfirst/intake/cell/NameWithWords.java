package lowfirst.intake.cell;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lowfirst.board.Designator;
import lowfirst.intake.kind.PartKindGuess;
import lowfirst.intake.kind.PartKindWords;
import lowfirst.part.PartKind;

/**
 * One designator with words about its part in the same cell: R1 - 10k - 1/4W, C2(100n), IC1 LM358N
 * DIP8.
 *
 * @param name the designator as it is written
 * @param words what is said of the part
 */
record NameWithWords(String name, String words) {
  /** All that is known of a part, one after the other: R1 - 10k - 1/4W. */
  private static final Pattern FIELDS =
      Pattern.compile("([\\p{L}_]{1,4}\\d{1,5})\\s+[-–—/|]\\s+(([^\\s,;]+).*)");

  /** A remark on one designator: C2(100n), C31 do not install. */
  private static final Pattern REMARKED =
      Pattern.compile("([\\p{L}_]+\\d{1,6})\\s*(?:\\(([^()]*)\\)|\\s(\\D{4,}))");

  private static final Pattern TYPE_NUMBER =
      Pattern.compile("\\s*((\\S+)\\s+([A-Z]{2,4}\\d{3,5}[A-Z]{0,3})(?:\\s.*)?)");

  private static final Pattern KIND =
      Pattern.compile("(\\p{L}{1,4}\\d{1,5})\\s+(\\p{L}[\\p{L} .-]+)");

  private static final Pattern NUMBER = Pattern.compile("\\d+");

  /** A name and what tells of its part, unless that is one more name, or the end of a range. */
  static Optional<NameWithWords> inFields(String cell) {
    Matcher fields = FIELDS.matcher(cell);
    return fields.matches()
            && isKnown(fields.group(1))
            && !NUMBER.matcher(fields.group(3)).matches()
            && !isKnown(fields.group(3))
        ? Optional.of(new NameWithWords(fields.group(1), fields.group(2)))
        : Optional.empty();
  }

  /** One with a remark, in brackets or on leaving it out. */
  static Optional<NameWithWords> remarked(String text) {
    Matcher remarked = REMARKED.matcher(text);
    if (!remarked.matches()) {
      return Optional.empty();
    }
    boolean bracketed = remarked.group(2) != null;
    String remark = bracketed ? remarked.group(2) : remarked.group(3);
    return bracketed || FittedSigns.leaveOut(remark)
        ? Optional.of(new NameWithWords(remarked.group(1), remark.strip()))
        : Optional.empty();
  }

  /** The letters of a kind of part, then letters of none and many digits: IC1 LM358N DIP8. */
  static Optional<NameWithWords> beforeTypeNumber(String text) {
    Matcher matcher = TYPE_NUMBER.matcher(text);
    return matcher.matches()
            && DesignatorSpelling.isPlain(matcher.group(2))
            && isKnown(matcher.group(2))
            && !isKnown(matcher.group(3))
        ? Optional.of(
            new NameWithWords(
                matcher.group(2), matcher.group(1).substring(matcher.group(2).length()).strip()))
        : Optional.empty();
  }

  /**
   * A name and the kind of its part, no other than its letters tell: R1 resistor, T1 Transistor.
   */
  static Optional<NameWithWords> beforeKind(String text) {
    Matcher matcher = KIND.matcher(text);
    if (!matcher.matches() || !DesignatorSpelling.isPlain(matcher.group(1))) {
      return Optional.empty();
    }
    Optional<PartKind> usual = PartKindWords.byLetters(Designator.of(matcher.group(1)).prefix());
    return PartKindWords.byName(matcher.group(2))
        .filter(kind -> usual.stream().allMatch(of -> PartKindGuess.areKin(of, kind)))
        .map(kind -> new NameWithWords(matcher.group(1), matcher.group(2)));
  }

  /** Whether a word begins as designators of a known kind do. */
  private static boolean isKnown(String word) {
    return DesignatorSpelling.isNumbered(word)
        && PartKindWords.byLetters(Designator.of(word).prefix()).isPresent();
  }
}
