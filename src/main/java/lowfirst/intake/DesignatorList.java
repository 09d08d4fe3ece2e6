package lowfirst.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lowfirst.board.Designator;

/**
 * The designators that a BOM cell lists: {@code R1, R2}, {@code C4 C5}, {@code R1-R4, R7}.
 *
 * @param designators in the order written, ranges filled in
 * @param otherText what stands there but is no designator, such as the name of an accessory
 * @param remarks what was taken for granted while reading
 * @param faults what could not be read
 * @param empties how many places between separators were empty, one at the end not counted
 * @param counted how many the cell itself says there are, as in {@code 2x C1, C2}; 0 without
 */
public record DesignatorList(
    List<Designator> designators,
    String otherText,
    List<String> remarks,
    List<String> faults,
    int empties,
    int counted) {

  private static final char FIRST_CYRILLIC = '\u0400';
  private static final String CYRILLIC = "АВСЕНКМОРТХ";
  private static final String LATIN = "ABCEHKMOPTX";

  /** A longer word is no designator. */
  private static final int LONGEST = 40;

  /** A range that holds more is a slip of the pen. */
  private static final int WIDEST = 2000;

  private static final Pattern RANGE =
      Pattern.compile(
          "(?iU)([\\p{L}_]+)(\\d{1,6})(?:\\s*(?:-|–|—|−|\\.{2,3}|…|~|～|〜|:|[-=–]>|→|至|到|から)\\s*"
              + "|\\s+(?:to|bis|thru|through|à|au|al|do|až|tot|t/m|t\\.?e\\.?m\\.?|по|до)\\s+)"
              + "([\\p{L}_]*)(\\d{1,6})");
  private static final Pattern NUMBERED = Pattern.compile("[\\p{L}_]+\\d[\\p{L}\\p{N}_.+-]*");
  private static final Pattern APART = Pattern.compile("(\\p{L}{1,4})\\s+(\\d{1,4})");
  private static final Pattern RUN_TOGETHER =
      Pattern.compile("([A-Z]{1,3})(\\d{1,4})(?:\\1\\d{1,4})+");
  private static final Pattern SPACED_DASH =
      Pattern.compile(
          "(?<=\\d)\\s+([-–—−])\\s*(?=[\\p{L}_]*\\d)|(?<=\\d)([-–—−])\\s+(?=[\\p{L}_]*\\d)");

  /** Signs and words between designators that are no usual separators. */
  private static final Pattern AND =
      Pattern.compile("(?iU)\\s*[/&+]\\s*|\\s+(?:and|und|et|y|e|en|oraz|i|a)\\s+");

  /** Letters in small, which the standards of designators have in capitals. */
  private static final Pattern SMALL = Pattern.compile("[a-z]{1,3}\\d{1,5}");

  /** 2, 3 and 4, 5-7: numbers without letters. */
  private static final Pattern NUMBERS =
      Pattern.compile(
          "(?iU)\\d{1,4}(?:(?:\\s*[-–/&+]\\s*|\\s+(?:and|und|et|y|e|en|oraz|i|a)\\s+)\\d{1,4})*");

  private static final Pattern NO_NUMBER = Pattern.compile("\\D+");

  private static final Pattern BRACKETED = Pattern.compile("[(\\[]([\\p{L}]{1,4}\\d{1,5})[)\\]]");

  /** How many there are, before or behind them: 2x C1, C2; (2) C1, C2; C1, C2 (2x); C1, C2, 2x. */
  private static final Pattern COUNT_BEFORE =
      Pattern.compile(
          "(?iu)(?:\\((\\d{1,4})\\s?[x×]?\\)\\s*|(\\d{1,4})\\s?(?:[x×*:]\\s*|pcs?\\.?\\s+|st(?:k|ück)?\\.?\\s+))(?=\\p{L}{1,4}\\d)");

  private static final Pattern COUNT_BEHIND =
      Pattern.compile(
          "(?:[\\s,;]*\\((?:(\\d{1,4})\\s?[xX×]|[x×]\\s?(\\d{1,4}))\\)|[\\s,;]+(\\d{1,4})\\s?[x×])$");

  private static final Pattern NONE = Pattern.compile("[-–—]+|[?]+|(?i:n/?a|none|nil|null|tb[ad])");
  private static final String SEPARATORS = ",;\n\r|，、；";
  private static final Pattern REMARK = Pattern.compile("\\s*\\(([^)]*)\\)\\s*");

  /** A remark on one designator: C2(100n), C31 do not install. */
  private static final Pattern REMARKED =
      Pattern.compile("([\\p{L}_]+\\d{1,6})\\s*(?:\\(([^()]*)\\)|\\s(\\D{4,}))");

  public DesignatorList {
    designators = List.copyOf(designators);
    remarks = List.copyOf(remarks);
    faults = List.copyOf(faults);
  }

  /** Reads a cell; never throws. */
  public static DesignatorList parse(String written) {
    var reader = new Reader();
    String cell = reader.withoutCount(written);
    int from = 0;
    for (int at = 0; at < cell.length(); at++) {
      if (SEPARATORS.indexOf(cell.charAt(at)) >= 0) {
        reader.part(plainBlanks(cell.substring(from, at)).strip());
        from = at + 1;
      }
    }
    reader.part(plainBlanks(cell.substring(from)).strip());
    return reader.list();
  }

  /** One that needs no reading. */
  static DesignatorList of(Designator designator) {
    return new DesignatorList(List.of(designator), "", List.of(), List.of(), 0, 0);
  }

  /** The same with other designators, such as parts for their units. */
  DesignatorList naming(List<Designator> others) {
    return new DesignatorList(others, otherText, remarks, faults, empties, counted);
  }

  /** The same where some of its words are names of parts, such as SWITCH LEFT. */
  DesignatorList withWords(Set<String> names) {
    if (otherText.isEmpty() || names.isEmpty()) {
      return this;
    }
    var more = new ArrayList<>(designators);
    var others = new ArrayList<String>();
    for (String words : otherText.split(", ")) {
      if (names.contains(words)) {
        more.add(Designator.of(words));
      } else {
        others.add(words);
      }
    }
    return new DesignatorList(more, String.join(", ", others), remarks, faults, empties, counted);
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

  /** The one designator that a cell of a placement list names, spelt as a BOM's would be. */
  static String spelt(String cell) {
    if (isPlain(cell)) {
      return inCapitals(cell);
    }
    Matcher apart = APART.matcher(cell);
    return inCapitals(apart.matches() ? apart.group(1) + apart.group(2) : cell);
  }

  /** c2 is C2 on the board; a name with capitals or other signs stays as it is. */
  private static String inCapitals(String written) {
    String text = written.charAt(0) >= FIRST_CYRILLIC ? inLatin(written) : written;
    char first = text.charAt(0);
    return first >= 'a' && first <= 'z' && SMALL.matcher(text).matches()
        ? text.toUpperCase(Locale.ROOT)
        : text;
  }

  /** Cyrillic letters that look like those of a designator are typed in their place. */
  private static String inLatin(String text) {
    var latin = new StringBuilder(text);
    for (int at = 0; at < latin.length() && !Character.isDigit(latin.charAt(at)); at++) {
      int alike = CYRILLIC.indexOf(latin.charAt(at));
      if (alike < 0) {
        return text;
      }
      latin.setCharAt(at, LATIN.charAt(alike));
    }
    return latin.toString();
  }

  /** The usual designator, which needs no further look: up to four letters and six digits. */
  private static boolean isPlain(String text) {
    int letters = 0;
    while (letters < text.length() && Character.isLetter(text.charAt(letters))) {
      letters++;
    }
    int at = letters;
    while (at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
      at++;
    }
    int digits = at - letters;
    return at == text.length() && letters >= 1 && letters <= 4 && digits >= 1 && digits <= 6;
  }

  /** Whether the cell says that there is none. */
  static boolean isNone(String cell) {
    return cell.isEmpty()
        || cell.length() <= 6
            && !Character.isDigit(cell.charAt(cell.length() - 1))
            && NONE.matcher(cell).matches();
  }

  /** Gathers what one cell holds. */
  private static final class Reader {
    private final List<Designator> designators = new ArrayList<>();
    private final List<String> others = new ArrayList<>();
    private final List<String> remarks = new ArrayList<>();
    private final List<String> faults = new ArrayList<>();
    private int counted;
    private int empties;
    private boolean endsEmpty;

    /** The cell without the count before or behind its designators. */
    private String withoutCount(String cell) {
      char first = cell.isEmpty() ? ' ' : cell.charAt(0);
      char last = cell.isEmpty() ? ' ' : cell.charAt(cell.length() - 1);
      boolean before = first == '(' || (first >= '0' && first <= '9');
      boolean behind = last == ')' || last == 'x' || last == '×';
      if (!before && !behind) {
        return cell;
      }
      Matcher count = (before ? COUNT_BEFORE : COUNT_BEHIND).matcher(cell);
      if (!(before ? count.lookingAt() : count.find())) {
        return cell;
      }
      for (int group = 1; group <= count.groupCount(); group++) {
        counted = count.group(group) == null ? counted : Integer.parseInt(count.group(group));
      }
      return before ? cell.substring(count.end()) : cell.substring(0, count.start());
    }

    private void part(String text) {
      endsEmpty = text.isEmpty();
      if (text.isEmpty()) {
        empties++;
      } else if (!isNone(text)) {
        words(text.indexOf(' ') < 0 ? text : SPACED_DASH.matcher(text).replaceAll("$1$2"));
      }
    }

    private void words(String text) {
      if (isPlain(text)) {
        add(text);
        return;
      }
      if (carriesOn(text)) {
        return;
      }
      if (SpreadsheetDate.wasDesignator(text)) {
        faults.add(
            "\"" + text + "\" is a date, as a spreadsheet makes of a designator such as DEC1");
        return;
      }
      if (range(text) || joined(text)) {
        return;
      }
      Matcher bracketed = BRACKETED.matcher(text);
      if (bracketed.matches()) {
        remarks.add("\"" + text + "\" was read as " + bracketed.group(1));
        add(bracketed.group(1));
        return;
      }
      Matcher apart = APART.matcher(text);
      if (apart.matches()) {
        remarks.add("\"" + text + "\" was read as " + apart.group(1) + apart.group(2));
        add(apart.group(1) + apart.group(2));
        return;
      }
      Matcher remarked = REMARKED.matcher(text);
      boolean leavesOut =
          remarked.matches()
              && remarked.group(2) == null
              && FittedSigns.leaveOut(remarked.group(3));
      if (remarked.matches() && (remarked.group(2) != null || leavesOut)) {
        add(remarked.group(1));
        others.add((remarked.group(2) == null ? remarked.group(3) : remarked.group(2)).strip());
        return;
      }
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

    /** R8 and R9, R8/R9: only where every piece is a designator by itself. */
    private boolean joined(String text) {
      String[] pieces = text.length() > 200 ? new String[0] : AND.split(text);
      if (pieces.length < 2 || !List.of(pieces).stream().allMatch(DesignatorList::isPlain)) {
        return false;
      }
      remarks.add("\"" + text + "\" was read as " + pieces.length + " designators");
      for (String piece : pieces) {
        add(piece);
      }
      return true;
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

    /** R1-R4 and R1-4 are ranges; L1-In is a name. */
    private boolean range(String word) {
      Matcher range = RANGE.matcher(word);
      if (!range.matches()
          || !(range.group(3).isEmpty() || range.group(3).equals(range.group(1)))) {
        return false;
      }
      int first = Integer.parseInt(range.group(2));
      int last = Integer.parseInt(range.group(4));
      if (last < first || last - first >= WIDEST) {
        faults.add("the range \"" + word + "\" runs from " + first + " to " + last);
        return true;
      }
      if (range.group(3).isEmpty()) {
        remarks.add(
            "\"" + word + "\" was read as a range of " + (last - first + 1) + " designators");
      }
      for (int number = first; number <= last; number++) {
        add(range.group(1) + number);
      }
      return true;
    }

    private void add(String text) {
      if (text.length() > LONGEST) {
        faults.add("\"" + text.substring(0, LONGEST) + "...\" is too long to be a designator");
      } else {
        designators.add(Designator.of(inCapitals(text)));
      }
    }

    private DesignatorList list() {
      return new DesignatorList(
          designators,
          String.join(", ", others),
          remarks,
          faults,
          endsEmpty ? empties - 1 : empties,
          counted);
    }
  }
}
