package lowfirst.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lowfirst.board.Designator;

/**
 * Reads the cell of a BOM that lists designators, as people write them: one after the other with
 * any separator, as ranges, in words, with remarks. What is clear from its form is taken, what was
 * taken for granted is remarked, and the rest is other text. One reader reads one cell.
 */
final class DesignatorReader {
  /** A longer word is no designator. */
  private static final int LONGEST = 40;

  private static final Pattern NUMBERED = Pattern.compile("[\\p{L}_]+\\d[\\p{L}\\p{N}_.+-]*");

  private static final Pattern RUN_TOGETHER =
      Pattern.compile("([A-Z]{1,3})(\\d{1,4})(?:\\1\\d{1,4})+");
  private static final Pattern SPACED_DASH =
      Pattern.compile(
          "(?<=\\d)\\s+([-–—−])\\s*(?=[\\p{L}_]*\\d)|(?<=\\d)([-–—−])\\s+(?=[\\p{L}_]*\\d)");

  /** And, in the languages of the headers. */
  private static final String AND_WORDS = "(?:and|und|et|y|e|en|oraz|i|a)";

  /** Signs and words between designators that are no usual separators. */
  private static final Pattern AND =
      Pattern.compile("(?iU)\\s*[/&+]\\s*|\\s+" + AND_WORDS + "\\s+");

  /** 2, 3 and 4, 5-7: numbers without letters. */
  private static final Pattern NUMBERS =
      Pattern.compile("(?iU)\\d{1,4}(?:(?:\\s*[-–/&+]\\s*|\\s+" + AND_WORDS + "\\s+)\\d{1,4})*");

  private static final Pattern NO_NUMBER = Pattern.compile("\\D+");

  private static final Pattern BRACKETED = Pattern.compile("[(\\[]([\\p{L}]{1,4}\\d{1,5})[)\\]]");

  private static final Pattern REMARK = Pattern.compile("\\s*\\(([^)]*)\\)\\s*");

  /** A remark on one designator: C2(100n), C31 do not install. */
  private static final Pattern REMARKED =
      Pattern.compile("([\\p{L}_]+\\d{1,6})\\s*(?:\\(([^()]*)\\)|\\s(\\D{4,}))");

  private final List<Designator> designators = new ArrayList<>();
  private final List<String> others = new ArrayList<>();
  private final List<String> remarks = new ArrayList<>();
  private final List<String> faults = new ArrayList<>();
  private int empties;
  private boolean endsEmpty;

  private DesignatorReader() {}

  /** What the cell lists; never throws. */
  static DesignatorList read(String written) {
    Optional<StatedCount> count = StatedCount.in(written);
    String cell = count.isPresent() ? count.get().designators() : written;
    var reader = new DesignatorReader();
    reader.parts(cell);
    return reader.list(count.isPresent() ? count.get().parts() : 0);
  }

  private void parts(String cell) {
    int from = 0;
    for (int at = 0; at < cell.length(); at++) {
      if (isSeparator(cell.charAt(at))) {
        part(plainBlanks(cell.substring(from, at)).strip());
        from = at + 1;
      }
    }
    part(plainBlanks(cell.substring(from)).strip());
  }

  private static boolean isSeparator(char c) {
    return switch (c) {
      case ',', ';', '\n', '\r', '|', '，', '、', '；' -> true;
      default -> false;
    };
  }

  /** With plain blanks for those of typographers. */
  private static String plainBlanks(String text) {
    StringBuilder plain = null;
    for (int at = 0; at < text.length(); at++) {
      char c = text.charAt(at);
      if (c > 127 && Character.isSpaceChar(c)) {
        plain = plain == null ? new StringBuilder(text) : plain;
        plain.setCharAt(at, ' ');
      }
    }
    return plain == null ? text : plain.toString();
  }

  private void part(String text) {
    endsEmpty = text.isEmpty();
    if (text.isEmpty()) {
      empties++;
    } else if (!Cells.isNone(text)) {
      words(text.indexOf(' ') < 0 ? text : SPACED_DASH.matcher(text).replaceAll("$1$2"));
    }
  }

  /** What stands between two separators: the first of these that it can be. */
  private void words(String text) {
    if (DesignatorSpelling.isPlain(text)) {
      add(text);
      return;
    }
    boolean told =
        carriesOn(text)
            || date(text)
            || range(text)
            || joined(text)
            || respelt(text)
            || remarked(text);
    if (!told) {
      spaced(text);
    }
  }

  /** Numbers that rise after a designator, as in Q1, 2, 3 and 4-6, leave its letters out. */
  private boolean carriesOn(String text) {
    if (designators.isEmpty() || !NUMBERS.matcher(text).matches()) {
      return false;
    }
    Designator before = designators.get(designators.size() - 1);
    if (before.prefix().isEmpty()) {
      return false;
    }
    for (String number : NO_NUMBER.split(text)) {
      String last = before.text().substring(before.prefix().length());
      boolean rises =
          WholeNumber.in(number).orElse(-1) > WholeNumber.in(last).orElse(Integer.MAX_VALUE);
      if (!rises) {
        return false;
      }
      before = Designator.of(before.prefix() + number);
    }
    String letters = before.prefix();
    remarks.add(
        "\""
            + text
            + "\" after "
            + designators.get(designators.size() - 1)
            + " was read as more "
            + letters);
    for (String piece : AND.split(text)) {
      words(letters + piece);
    }
    return true;
  }

  private boolean date(String text) {
    boolean date = SpreadsheetDate.wasDesignator(text);
    if (date) {
      faults.add("\"" + text + "\" is a date, as a spreadsheet makes of a designator such as DEC1");
    }
    return date;
  }

  /** R1-R4 and R1-4. */
  private boolean range(String word) {
    Optional<DesignatorRange> found = DesignatorRange.in(word);
    if (found.isEmpty()) {
      return false;
    }
    DesignatorRange range = found.get();
    if (range.isSlip()) {
      faults.add("the range \"" + word + "\" runs from " + range.first() + " to " + range.last());
      return true;
    }
    if (!range.repeatsLetters()) {
      remarks.add("\"" + word + "\" was read as a range of " + range.size() + " designators");
    }
    for (int number = range.first(); number <= range.last(); number++) {
      add(range.letters() + number);
    }
    return true;
  }

  /** R8 and R9, R8/R9: only where every piece is a designator by itself. */
  private boolean joined(String text) {
    String[] pieces = text.length() > 200 ? new String[0] : AND.split(text);
    if (pieces.length < 2 || !List.of(pieces).stream().allMatch(DesignatorSpelling::isPlain)) {
      return false;
    }
    remarks.add("\"" + text + "\" was read as " + pieces.length + " designators");
    for (String piece : pieces) {
      add(piece);
    }
    return true;
  }

  /** (R8), R 8. */
  private boolean respelt(String text) {
    Matcher bracketed = BRACKETED.matcher(text);
    Optional<String> spelt =
        bracketed.matches() ? Optional.of(bracketed.group(1)) : DesignatorSpelling.together(text);
    if (spelt.isPresent()) {
      remarks.add("\"" + text + "\" was read as " + spelt.get());
      add(spelt.get());
    }
    return spelt.isPresent();
  }

  /** One designator with a remark, in brackets or on leaving it out. */
  private boolean remarked(String text) {
    Matcher remarked = REMARKED.matcher(text);
    if (!remarked.matches()) {
      return false;
    }
    boolean bracketed = remarked.group(2) != null;
    String remark = bracketed ? remarked.group(2) : remarked.group(3);
    if (!bracketed && !FittedSigns.leaveOut(remark)) {
      return false;
    }
    add(remarked.group(1));
    others.add(remark.strip());
    return true;
  }

  /** Designators with blanks between them, if all words are such; else a name. */
  private void spaced(String text) {
    if (text.indexOf(' ') < 0 && text.indexOf('\t') < 0) {
      word(text);
      return;
    }
    String bare = REMARK.matcher(text).replaceAll(" ").strip();
    String[] words = bare.split("\\s+");
    if (List.of(words).stream().allMatch(word -> NUMBERED.matcher(word).matches())) {
      for (String word : words) {
        word(word);
      }
    } else {
      others.add(text);
    }
  }

  private void word(String word) {
    if (range(word)) {
      return;
    }
    Matcher together = RUN_TOGETHER.matcher(word);
    if (together.matches()) {
      String prefix = together.group(1);
      remarks.add("\"" + word + "\" was read as several designators run together");
      for (String number : word.substring(prefix.length()).split(prefix)) {
        add(prefix + number);
      }
    } else {
      add(word);
    }
  }

  private void add(String text) {
    if (text.length() > LONGEST) {
      faults.add("\"" + text.substring(0, LONGEST) + "...\" is too long to be a designator");
    } else {
      designators.add(Designator.of(DesignatorSpelling.inCapitals(text)));
    }
  }

  private DesignatorList list(int counted) {
    return new DesignatorList(
        designators,
        String.join(", ", others),
        remarks,
        faults,
        endsEmpty ? empties - 1 : empties,
        counted);
  }
}
