package lowfirst.intake.workbook;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import lowfirst.intake.column.Row;
import lowfirst.intake.text.PipeTable;
import lowfirst.intake.text.Rows;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.jsoup.parser.StreamParser;

/**
 * The tables of a web page (HTML Living Standard, 4.9 Tabular data), as spreadsheet programs save
 * them and notes embed them: all rows one after the other, with the headings between them. Nothing
 * is fetched and no script is run.
 */
public final class WebPage {
  private static final Pattern TABLE = Pattern.compile("(?i)<table\\b");
  private static final Pattern CELL = Pattern.compile("(?i)<t[dh]\\b");
  private static final Pattern HIDDEN = Pattern.compile("(?i)display\\s*:\\s*none");

  private static final Set<String> CELLS = Set.of("td", "th");
  private static final Set<String> HEADINGS = Set.of("caption", "h1", "h2", "h3", "h4", "h5", "h6");
  private static final String ANY_HEADING = String.join(",", HEADINGS);
  private static final String STRUCK = "s,strike,del,[style*=line-through]";

  /** More elements in one row are no row of parts; so many at once are kept in memory. */
  private static final int MOST_IN_A_ROW = 5_000;

  /** A page of parts is far shorter; what lies between elements is kept in memory, too. */
  private static final int MOST_SIGNS = 1 << 20;

  private static final int MOST_COLUMNS = 256;

  /** Elements inside elements inside elements: no page of parts has so many. */
  private static final int DEEPEST = 64;

  private final List<Row> rows = new ArrayList<>();
  private final List<Integer> hidden = new ArrayList<>();
  private final List<StruckCells.Struck> struck = new ArrayList<>();

  /** By its column, how many more rows a cell of a row above reaches into. */
  private final int[] reaching = new int[MOST_COLUMNS];

  private Element table;

  /** Headings in a row that is not complete: of its cell, or over tables that it lays out. */
  private final List<Element> open = new ArrayList<>();

  private WebPage() {}

  /** Whether a text is a page with a table, or notes with such a one in them. */
  public static boolean isOne(String text) {
    return text.indexOf('<') >= 0
        && TABLE.matcher(text).find()
        && CELL.matcher(text).find()
        && (text.stripLeading().startsWith("<") || !PipeTable.isIn(text));
  }

  /**
   * The rows of all tables as one sheet; never throws. Their numbers are lines of the file; where
   * several rows stand in one line, the rows are counted.
   */
  public static Workbook of(String file, String text) {
    if (text.length() > MOST_SIGNS) {
      return tooLarge(file);
    }
    var page = new WebPage();
    try (var elements =
        new StreamParser(Parser.htmlParser().setTrackPosition(true).setMaxDepth(DEEPEST))) {
      // The library counts lines by their line feeds.
      String lines = text.replace("\r\n", "\n").replace('\r', '\n');
      boolean whole = page.read(elements.parse(lines, "").iterator());
      return whole ? new Workbook(List.of(page.grid()), List.of()) : tooLarge(file);
    }
  }

  private static Workbook tooLarge(String file) {
    return new Workbook(
        List.of(),
        List.of(
            new Problem(
                Kind.FILE_TOO_LARGE,
                Place.ofFile(file),
                "this page is longer than "
                    + (MOST_SIGNS >> 20)
                    + " MB, or has more than "
                    + MOST_IN_A_ROW
                    + " elements in one row, so it was not read",
                "export just the table of parts, as CSV (comma-separated text)")));
  }

  /** Whether all was read. What was is let go of, so that a long page takes little memory. */
  private boolean read(Iterator<Element> elements) {
    int held = 0;
    while (elements.hasNext() && held <= MOST_IN_A_ROW) {
      Element element = elements.next();
      String tag = element.normalName();
      boolean isRow = tag.equals("tr");
      if (isRow) {
        addRow(element);
      } else if (HEADINGS.contains(tag)) {
        open.add(element);
      }
      boolean isInRow = element.parent() != null && element.parent().closest("tr") != null;
      if (!isInRow) {
        sayHeadings();
      }
      if (isRow || !(isInRow || isInHeading(element))) {
        element.remove();
        held = 0;
      } else {
        held++;
      }
    }
    return !elements.hasNext();
  }

  private static boolean isInHeading(Element element) {
    return element.parent() != null && element.parent().closest(ANY_HEADING) != null;
  }

  private void sayHeadings() {
    open.forEach(heading -> add(heading, List.of(heading.text())));
    open.clear();
  }

  @SuppressWarnings("ReferenceEquality") // another table, not one that says the same
  private void addRow(Element row) {
    if (row.selectFirst("table") != null) {
      row.select(ANY_HEADING).remove();
    } else {
      open.removeIf(heading -> heading.closest("tr") == row);
    }
    sayHeadings();
    Element in = row.closest("table");
    if (table != in) {
      Arrays.fill(reaching, 0);
      table = in;
    }
    var cells = new ArrayList<String>();
    for (Element cell : row.children()) {
      if (CELLS.contains(cell.normalName())) {
        fill(cells);
        if (cells.size() < MOST_COLUMNS) {
          addCell(cell, cells, row);
        }
      }
    }
    for (int column = cells.size(); column < MOST_COLUMNS; column++) {
      reaching[column] = Math.max(0, reaching[column] - 1);
    }
    add(row, cells);
    if (row.hasAttr("hidden") || HIDDEN.matcher(row.attr("style")).find()) {
      hidden.add(rows.size());
    }
  }

  /** Blanks where cells of rows above reach down to. */
  private void fill(List<String> cells) {
    while (cells.size() < MOST_COLUMNS && reaching[cells.size()] > 0) {
      reaching[cells.size()]--;
      cells.add("");
    }
  }

  /** A cell stands where it begins; what else it covers is blank. */
  private void addCell(Element cell, List<String> cells, Element row) {
    String text = cell.text();
    String through = row.is(STRUCK) ? text : cell.select(STRUCK).text();
    if (!through.isBlank()) {
      struck.add(
          new StruckCells.Struck(rows.size() + 1, cells.size(), through.length() >= text.length()));
    }
    int last = Math.min(MOST_COLUMNS, cells.size() + Math.max(1, span(cell, "colspan")));
    int down = Math.max(0, span(cell, "rowspan") - 1);
    while (cells.size() < last) {
      reaching[cells.size()] = down;
      cells.add(text);
      text = "";
    }
  }

  private static int span(Element cell, String attribute) {
    String number = cell.attr(attribute).strip();
    return number.matches("\\d{1,5}") ? Integer.parseInt(number) : 1;
  }

  private void add(Element element, List<String> cells) {
    List<String> stripped = cells.stream().map(Rows::stripped).toList();
    boolean isBlank = stripped.stream().allMatch(String::isEmpty);
    int line = element.sourceRange().start().lineNumber();
    rows.add(new Row(line, isBlank ? List.of() : stripped));
  }

  /** Rows by their lines, where these tell them apart; and without blank ones. */
  private Workbook.Grid grid() {
    int line = 0;
    boolean apart = true;
    for (Row row : rows) {
      apart &= row.isBlank() || row.line() > line;
      line = row.isBlank() ? line : row.line();
    }
    int[] numbers = new int[rows.size()];
    var shown = new ArrayList<Row>();
    for (int i = 0; i < numbers.length; i++) {
      numbers[i] = apart ? rows.get(i).line() : i + 1;
      Row row = new Row(numbers[i], rows.get(i).cells());
      if (!row.isBlank()) {
        shown.add(row);
      }
    }
    return new Workbook.Grid(
        "web page",
        shown,
        hidden.stream().map(number -> numbers[number - 1]).toList(),
        struck.stream()
            .map(
                cell -> new StruckCells.Struck(numbers[cell.line() - 1], cell.cell(), cell.whole()))
            .toList());
  }
}
