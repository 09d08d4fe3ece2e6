package lowfirst.intake.cell;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lowfirst.board.Designator;
import lowfirst.intake.column.WholeNumber;
import lowfirst.intake.kind.SpreadsheetDate;

/**
 * Reads the cell of a BOM that lists designators, as people write them: one after the other with
 * any separator, as ranges, in words, with remarks. What is clear from its form is taken, what was
 * taken for granted is remarked, and the rest is other text. One reader reads one cell.
 */
final class DesignatorReader {
  /** A longer word is no designator. */
  private static final int LONGEST = 40;

  private static final Pattern RUN_TOGETHER =
      Pattern.compile("([A-Z]{1,3})(\\d{1,4})(?:\\1\\d{1,4})+");
  private static final Pattern SPACED_DASH =
      Pattern.compile(
          "(?<=\\d)\\s+([-–—−])\\s*(?=[\\p{L}_]*\\d)|(?<=\\d)([-–—−])\\s+(?=[\\p{L}_]*\\d)");

  private static final Pattern SPACED_TO =
      Pattern.compile("(?iU)(?<=\\d)\\s+" + DesignatorRange.TO_WORDS + "\\s+(?=[\\p{L}_]*\\d)");

  /** And, in the languages of the headers. */
  private static final String AND_WORDS = "(?:and|und|et|y|e|en|oraz|i|a)";

  /** Signs and words between designators that are no usual separators. */
  private static final Pattern AND =
      Pattern.compile("(?iU)\\s*[/&+]\\s*|\\s+" + AND_WORDS + "\\s+");

  /** 2, 3 and 4, 5-7: numbers without letters. */
  private static final Pattern NUMBERS =
      Pattern.compile("(?iU)\\d{1,4}(?:(?:\\s*[-–/&+]\\s*|\\s+" + AND_WORDS + "\\s+)\\d{1,4})*");

  private static final Pattern NO_NUMBER = Pattern.compile("\\D+");

  /** What stands behind the letters of a name. */
  private static final Pattern NO_LETTERS = Pattern.compile("\\P{L}.*");

  private static final Pattern SEVERAL = Pattern.compile("\\d[,;\\s]+\\p{L}");

  /** R1.R2, of which no letters differ: A1.R5 is a name. */
  private static final Pattern DOTTED = Pattern.compile("([A-Z]{1,3})\\d{1,4}(?:\\.\\1\\d{1,4})+");

  /** Signs of notes around a designator. */
  private static final Pattern MARKED = Pattern.compile("[*†‡~]*([\\p{L}_]{1,4}\\d{1,5})[*†‡!~]*");

  private static final Pattern AND_SO_ON =
      Pattern.compile("(?iU)etc\\.?|usw\\.?|и т\\.?\\s?д\\.?|\\.{2,}|…");

  /** R1=10k, R1-10k. */
  private static final Pattern WITH_VALUE =
      Pattern.compile(
          "([\\p{L}_]{1,4}\\d{1,4})\\s*[-=:]\\s*\\d+(?:[.,]\\d+)?\\s?[kKMRnpuµΩ]\\w{0,4}");

  private static final Pattern BRACKETED = Pattern.compile("[(\\[]([\\p{L}]{1,4}\\d{1,5})[)\\]]");

  /** What leads the eye to a row, of a list that could be unfolded, too. */
  private static final String BULLETS = ">•·▸►▶";

  /** A remark, and no name: (optional). */
  private static final Pattern NOTHING_ELSE = Pattern.compile("\\(\\D+\\)");

  private static final Pattern REMARK = Pattern.compile("\\s*\\(([^)]*)\\)\\s*");

  private final List<Designator> designators = new ArrayList<>();
  private final List<String> others = new ArrayList<>();
  private final List<String> remarks = new ArrayList<>();
  private final List<String> faults = new ArrayList<>();
  private int empties;
  private boolean endsEmpty;

  private final String cell;

  private DesignatorReader(String cell) {
    this.cell = cell;
  }

  /** What the cell lists; never throws. */
  static DesignatorList read(String written) {
    Optional<StatedCount> count = StatedCount.in(written);
    String cell = count.isPresent() ? count.get().designators() : written;
    var reader = new DesignatorReader(cell);
    Optional<NameWithWords> fields = NameWithWords.inFields(cell);
    if (SharedLetters.isCell(cell)) {
      reader.words(cell);
    } else if (fields.isPresent()) {
      reader.named(cell, fields.get());
    } else {
      reader.parts(bare(cell));
    }
    return reader.list(count.isPresent() ? count.get().parts() : 0);
  }

  /** Without brackets around all of it. */
  private static String bare(String cell) {
    int last = cell.length() - 1;
    boolean within =
        last > 0
            && (cell.charAt(0) == '(' && cell.charAt(last) == ')'
                || cell.charAt(0) == '[' && cell.charAt(last) == ']')
            && cell.indexOf(cell.charAt(0), 1) < 0;
    return within && SEVERAL.matcher(cell).find() ? cell.substring(1, last) : cell;
  }

  private void parts(String cell) {
    int from = 0;
    for (int at = 0; at < cell.length(); at++) {
      // A stroke carries on a name: PSU_5V,_3W.
      boolean carriesOn = at + 1 < cell.length() && cell.charAt(at + 1) == '_';
      if (isSeparator(cell.charAt(at)) && !carriesOn) {
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
    if (DesignatorSpelling.isPlain(text)) {
      add(text);
    } else if (text.isEmpty()) {
      empties++;
    } else if (text.length() > 2
        && text.charAt(0) == '"'
        && text.charAt(text.length() - 1) == '"') {
      part(text.substring(1, text.length() - 1).strip());
    } else if (text.length() > 2 && BULLETS.indexOf(text.charAt(0)) >= 0 && text.charAt(1) == ' ') {
      part(text.substring(2).strip());
    } else if (NOTHING_ELSE.matcher(text).matches()) {
      others.add(text);
    } else if (!Cells.isNone(text)) {
      words(text.indexOf(' ') < 0 ? text : closedUp(text));
    }
  }

  /** Ranges without blanks, which may part designators: R1 - R3 R5 to R7. */
  private static String closedUp(String text) {
    String dashes = SPACED_DASH.matcher(text).replaceAll("$1$2");
    return SPACED_TO.matcher(dashes).replaceAll("-");
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
            || spread(text)
            || remarked(text)
            || strange(text);
    if (!told) {
      spaced(text);
    }
  }

  /** Numbers that rise after a designator, as in Q1, 2, 3 and 4-6, leave its letters out. */
  private boolean carriesOn(String text) {
    if (designators.isEmpty() || !NUMBERS.matcher(text).matches()) {
      return false;
    }
    String letters = NO_LETTERS.matcher(lastText()).replaceFirst("");
    String last = lastText().substring(letters.length());
    if (letters.isEmpty()) {
      return false;
    }
    for (String number : NO_NUMBER.split(text)) {
      if (WholeNumber.in(number).orElse(-1) <= WholeNumber.in(last).orElse(Integer.MAX_VALUE)) {
        return false;
      }
      last = number;
    }
    remarks.add("\"" + text + "\" after " + lastText() + " was read as more " + letters);
    for (String piece : AND.split(text)) {
      words(letters + piece);
    }
    return true;
  }

  private String lastText() {
    return designators.get(designators.size() - 1).text();
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
    String base = range.letters() + range.first() + "-";
    // LM358-1, LM358-2: no range runs so far down, least of all twice.
    boolean twice = range.isSlip() && cell.indexOf(base) < cell.lastIndexOf(base);
    boolean pins = twice || !designators.isEmpty() && lastText().startsWith(base);
    if (!range.repeatsLetters()
        && (pins || range.last() == range.first() && word.startsWith(base))) {
      // J1-1, J1-2: places of one part.
      add(word);
      return true;
    }
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

  /** R8 and R9, R8/R9: only where every piece is a designator by itself, or a range. */
  private boolean joined(String text) {
    String[] pieces =
        text.length() > 200
            ? new String[0]
            : DOTTED.matcher(text).matches() ? text.split("\\.") : AND.split(text);
    if (pieces.length < 2 || !List.of(pieces).stream().allMatch(DesignatorReader::isWhole)) {
      return false;
    }
    int before = designators.size();
    for (String piece : pieces) {
      words(piece);
    }
    remarks.add("\"" + text + "\" was read as " + (designators.size() - before) + " designators");
    return true;
  }

  private static boolean isWhole(String piece) {
    return DesignatorSpelling.isPlain(piece)
        || DesignatorSpelling.isNamedAndNumbered(piece)
        || DesignatorRange.in(piece).filter(DesignatorRange::repeatsLetters).isPresent();
  }

  /** R[1-4], R1/2/3, U1A-D. */
  private boolean spread(String text) {
    List<String> names = SharedLetters.in(text);
    if (!names.isEmpty()) {
      remarks.add("\"" + text + "\" was read as " + String.join(", ", names));
      names.forEach(this::words);
    }
    return !names.isEmpty();
  }

  /** What would else be taken for a name: marks of notes, a value, and so on. */
  private boolean strange(String text) {
    Matcher marked = MARKED.matcher(text);
    if (marked.matches() && marked.group(1).length() < text.length()) {
      remarks.add("\"" + text + "\" was read as " + marked.group(1));
      add(marked.group(1));
      return true;
    }
    Matcher value = WITH_VALUE.matcher(text);
    if (value.matches()) {
      faults.add("\"" + text + "\" holds a value beside the designator");
      add(value.group(1));
      return true;
    }
    boolean more = !designators.isEmpty() && AND_SO_ON.matcher(text).matches();
    if (more) {
      faults.add("\"" + text + "\" stands for designators that are not named");
    }
    return more;
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

  private boolean remarked(String text) {
    Optional<NameWithWords> remarked = NameWithWords.remarked(text);
    remarked.ifPresent(this::named);
    return remarked.isPresent();
  }

  private void named(NameWithWords found) {
    add(found.name());
    others.add(found.words());
  }

  private void named(String text, NameWithWords found) {
    remarks.add("\"" + text + "\" was read as " + found.name() + " and words about it");
    named(found);
  }

  /** Designators with blanks between them, if all words are such; else a name. */
  private void spaced(String text) {
    if (text.indexOf(' ') < 0 && text.indexOf('\t') < 0) {
      word(text);
      return;
    }
    Optional<NameWithWords> typed =
        NameWithWords.beforeTypeNumber(text).or(() -> NameWithWords.beforeKind(text));
    String bare = REMARK.matcher(text).replaceAll(" ").strip();
    String[] words = bare.split("\\s+");
    if (typed.isPresent()) {
      named(text, typed.get());
    } else if (words.length > 1 && List.of(words).stream().allMatch(DesignatorSpelling::isName)
        || DesignatorSpelling.isNumbered(bare)) {
      for (String word : words) {
        word(word);
      }
      // One that names parts, such as (not D5), is not passed over.
      REMARK
          .matcher(text)
          .results()
          .map(remark -> remark.group(1).strip())
          .filter(LostNames::areIn)
          .forEach(others::add);
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
