package lowfirst.intake.text;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import lowfirst.intake.column.Row;
import lowfirst.intake.column.Separator;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A text cut into rows and cells by one separator.
 *
 * @param rows every row that is not blank, in order
 * @param problems quotes that never close
 */
public record Rows(List<Row> rows, List<Problem> problems) {

  /** A quoted cell that runs over more lines than this has lost its closing quote. */
  private static final int LINES_IN_A_CELL = 30;

  public Rows {
    rows = List.copyOf(rows);
    problems = List.copyOf(problems);
  }

  /** The rows of {@code text} between separators of one character; never throws. */
  public static Rows separated(String file, String text, Separator separator) {
    if (UnquotedText.is(text)) {
      return new Rows(UnquotedText.rows(text, separator.character()), List.of());
    }
    CSVFormat format = format(separator);
    try {
      List<Row> rows = parsed(text, format, 1);
      if (!hasRunAway(rows)) {
        return new Rows(unwrapped(rows, format), List.of());
      }
    } catch (IOException | UncheckedIOException | IllegalStateException quoteNeverCloses) {
      // Read below line by line, so that one lost quote costs one line.
    }
    return lineByLine(file, text, format);
  }

  private static CSVFormat format(Separator separator) {
    return CSVFormat.DEFAULT
        .builder()
        .setDelimiter(separator.character())
        .setIgnoreEmptyLines(false)
        .setTrailingData(true)
        .get();
  }

  private static List<Row> parsed(String text, CSVFormat format, int firstLine) throws IOException {
    var rows = new ArrayList<Row>();
    try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
      // A record only knows the line where it ended.
      long start = firstLine;
      for (CSVRecord csv : parser) {
        Row row = row((int) start, csv);
        if (!row.isBlank()) {
          rows.add(row);
        }
        start = firstLine + parser.getCurrentLineNumber();
      }
    }
    return rows;
  }

  private static Row row(int line, CSVRecord csv) {
    var cells = new String[csv.size()];
    for (int i = 0; i < cells.length; i++) {
      cells[i] = stripped(csv.get(i));
    }
    return Row.holding(line, cells);
  }

  /** Without blanks around it, no-break ones included. */
  public static String stripped(String cell) {
    return cell.indexOf('\u00a0') < 0 ? cell.strip() : cell.replace('\u00a0', ' ').strip();
  }

  /** Only what covers many lines is looked at: up to where the next row starts. */
  private static boolean hasRunAway(List<Row> rows) {
    for (int i = 0; i < rows.size(); i++) {
      boolean last = i + 1 == rows.size();
      boolean tall = last || rows.get(i + 1).line() - rows.get(i).line() > LINES_IN_A_CELL;
      if (tall && hasRunAway(rows.get(i))) {
        return true;
      }
    }
    return false;
  }

  private static boolean hasRunAway(Row row) {
    for (String cell : row.cells()) {
      int lines = 0;
      for (int at = cell.indexOf('\n'); at >= 0 && lines <= LINES_IN_A_CELL; lines++) {
        at = cell.indexOf('\n', at + 1);
      }
      if (lines > LINES_IN_A_CELL) {
        return true;
      }
    }
    return false;
  }

  private static Rows lineByLine(String file, String text, CSVFormat format) {
    CSVFormat bare = format.builder().setQuote(null).get();
    var rows = new ArrayList<Row>();
    var problems = new ArrayList<Problem>();
    int number = 0;
    for (String line : text.split("\r\n|\r|\n", -1)) {
      number++;
      if (line.isBlank()) {
        continue;
      }
      try {
        rows.addAll(parsed(line, format, number));
      } catch (IOException | UncheckedIOException | IllegalStateException quoteNeverCloses) {
        problems.add(
            new Problem(
                Kind.QUOTE_UNBALANCED,
                Place.ofLine(file, number),
                "a quote is opened and never closed",
                "close the quote, or write \"\" for an inch sign inside a quoted cell"));
        rows.addAll(trusted(line, bare, number));
      }
    }
    return new Rows(unwrapped(rows, format), problems);
  }

  private static List<Row> trusted(String line, CSVFormat bare, int number) {
    try {
      return parsed(line, bare, number).stream()
          .map(row -> new Row(number, row.cells().stream().map(Rows::unquoted).toList()))
          .toList();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  private static String unquoted(String cell) {
    return stripped(cell.replaceAll("^\"|\"$", ""));
  }

  /** Some programs quote each row as one cell, its own quotes doubled: such rows are read again. */
  private static List<Row> unwrapped(List<Row> rows, CSVFormat format) {
    String delimiter = format.getDelimiterString();
    long wrapped = 0;
    for (Row row : rows) {
      wrapped += isWrapped(row, delimiter) ? 1 : 0;
    }
    if (rows.size() < 2 || wrapped * 2 <= rows.size()) {
      return rows;
    }
    var inner = new ArrayList<Row>();
    for (Row row : rows) {
      inner.addAll(isWrapped(row, delimiter) ? inside(row, format) : List.of(row));
    }
    return inner;
  }

  private static boolean isWrapped(Row row, String delimiter) {
    return !row.fillsMoreThan(1) && row.cell(0).contains(delimiter);
  }

  private static List<Row> inside(Row row, CSVFormat format) {
    try {
      return parsed(row.cell(0), format, row.line());
    } catch (IOException | UncheckedIOException | IllegalStateException quoteNeverCloses) {
      return List.of(row);
    }
  }
}
