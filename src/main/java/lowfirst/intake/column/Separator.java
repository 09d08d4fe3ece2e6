package lowfirst.intake.column;

import java.util.Locale;
import java.util.Optional;

/** What stands between the cells of a row. */
public enum Separator {
  COMMA(',', "commas"),
  SEMICOLON(';', "semicolons"),
  TAB('\t', "tabs"),
  BAR('|', "bars"),
  /** A sign that is none of these, the same between all cells. */
  SIGNS(' ', "another sign"),
  /** Any run of blanks. */
  BLANKS(' ', "blanks"),
  /** Runs of two blanks or more, so that a cell may hold single ones. */
  WIDE_BLANKS(' ', "runs of blanks"),
  /** Columns of characters that are blank in every line. */
  FIXED_WIDTH(' ', "fixed widths"),
  /** None: a part a line, as one jots it down. */
  LINES(' ', "lines of designators and words"),
  /** None: a line for each thing that is known of a part. */
  RECORDS(' ', "records, a line for each column"),
  /** None: the file is a spreadsheet, which knows its cells. */
  SHEET('\0', "the file's own grid");

  private final char character;
  private final String words;

  Separator(char character, String words) {
    this.character = character;
    this.words = words;
  }

  /** The character, for those that are one. */
  public char character() {
    return character;
  }

  /** Whether one character separates cells, as CSV has it. */
  public boolean isOneCharacter() {
    return character != ' ' && character != '\0';
  }

  /** What a person calls it. */
  public String words() {
    return words;
  }

  /** The separator that a column map names, for example {@code semicolon}. */
  static Optional<Separator> named(String name) {
    String wanted = name.strip().toLowerCase(Locale.ROOT).replace('-', '_').replaceAll("s$", "");
    for (Separator separator : values()) {
      String own = separator.name().toLowerCase(Locale.ROOT).replaceAll("s$", "");
      if (own.equals(wanted)
          || (separator.isOneCharacter() && name.equals(separator.character + ""))) {
        return Optional.of(separator);
      }
    }
    return Optional.empty();
  }
}
