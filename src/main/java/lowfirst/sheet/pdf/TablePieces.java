package lowfirst.sheet.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lowfirst.sheet.document.Block.Cell;
import lowfirst.sheet.document.Block.Table;
import lowfirst.sheet.pdf.CellLayout.Corner;
import lowfirst.sheet.pdf.CellLayout.Placed;

/** The rows of a table as pieces, the header first; the header comes again on each page. */
final class TablePieces {
  /** Of a page, for the first row: it stays with the headings and the header above it. */
  private static final double FIRST_SHARE = 0.8;

  private static final double LEFT = Paper.MARGIN_MILLIMETRES * Paper.POINTS;

  private final Table table;
  private final OpenDocument document;
  private final Tags.Element element;
  private final double[] widths;
  private final List<List<CellLayout>> rows;

  private TablePieces(Table table, OpenDocument document, Tags.Element element) {
    this.table = table;
    this.document = document;
    this.element = element;
    this.rows = table.rows().stream().map(this::measured).toList();
    this.widths = widths();
  }

  /** The pieces of a table, without its caption. */
  static List<Piece> of(Table table, OpenDocument document, Tags.Element element) {
    return table.columns().isEmpty()
        ? List.of()
        : new TablePieces(table, document, element).pieces();
  }

  private List<CellLayout> measured(Table.Row row) {
    var cells = new ArrayList<CellLayout>();
    for (int column = 0; column < table.columns().size(); column++) {
      Cell cell = column < row.cells().size() ? row.cells().get(column) : Cell.of("");
      Table.Align align = table.columns().get(column).align();
      cells.add(new CellLayout(cell, align, document.regular(), Style.CELL));
    }
    return cells;
  }

  private List<CellLayout> header() {
    return table.columns().stream()
        .map(c -> new CellLayout(Cell.of(c.header()), c.align(), document.bold(), Style.HEADER))
        .toList();
  }

  private double[] widths() {
    int columns = table.columns().size();
    double body = document.paper().bodyWidthMillimetres() * Paper.POINTS;
    var least = new double[columns];
    var natural = new double[columns];
    var weight = new double[columns];
    var all = new ArrayList<>(rows);
    all.add(header());
    for (int column = 0; column < columns; column++) {
      for (List<CellLayout> row : all) {
        least[column] = Math.max(least[column], row.get(column).leastWidth(body * 0.45));
        natural[column] = Math.max(natural[column], row.get(column).naturalWidth());
      }
      natural[column] = Math.max(natural[column], least[column]);
      weight[column] = Math.max(0.01, table.columns().get(column).weight());
    }
    return ColumnWidths.of(least, natural, weight, body);
  }

  private List<Piece> pieces() {
    boolean headed = table.columns().stream().anyMatch(column -> !column.header().isBlank());
    var pieces = new ArrayList<Piece>();
    Optional<Piece> repeated = Optional.empty();
    if (headed) {
      List<Placed> cells = placed(header());
      pieces.add(headerPiece(cells, Optional.of(element.child("TR"))));
      repeated = Optional.of(headerPiece(cells, Optional.empty()));
    }
    double room =
        document.paper().bodyHeightMillimetres() * Paper.POINTS
            - repeated.map(Piece::height).orElse(0.0);
    for (int row = 0; row < rows.size(); row++) {
      Tags.Element rowElement = element.child("TR");
      double first = row == 0 ? room * FIRST_SHARE : room;
      for (List<Placed> part : parts(placed(rows.get(row)), first, room)) {
        pieces.add(rowPiece(part, rowElement, table.rows().get(row), repeated));
      }
      if (row + 1 < rows.size() && goesOn(table.rows().get(row + 1))) {
        int last = pieces.size() - 1;
        pieces.set(last, pieces.get(last).joined(Piece.Joint.STAYS_WITH_NEXT));
      }
    }
    return pieces;
  }

  /** Whether a row leaves its first cell to the row above: without that one it says nothing. */
  private static boolean goesOn(Table.Row row) {
    return !row.cells().isEmpty() && row.cells().get(0).equals(Cell.of(""));
  }

  private List<Placed> placed(List<CellLayout> row) {
    var cells = new ArrayList<Placed>();
    for (int column = 0; column < widths.length; column++) {
      cells.add(row.get(column).within(widths[column]));
    }
    return cells;
  }

  /** A row as it is or, when longer than {@code first}, in parts that each fit. */
  private static List<List<Placed>> parts(List<Placed> row, double first, double room) {
    if (height(row) <= first) {
      return List.of(row);
    }
    var parts = new ArrayList<List<Placed>>();
    int longest = row.stream().mapToInt(cell -> cell.lines().size()).max().orElse(0);
    double drawn = height(row.stream().map(cell -> cell.part(0, 0)).toList());
    int from = 0;
    double left = first - drawn;
    while (from < longest || from == 0) {
      int to = from + row.get(0).fitting(left + 2 * Style.CELL_EDGE);
      int start = from;
      parts.add(row.stream().map(cell -> cell.part(start, to)).toList());
      from = to;
      left = room - 2 * Style.CELL_EDGE;
    }
    return parts;
  }

  private static double height(List<Placed> row) {
    return row.stream().mapToDouble(Placed::height).max().orElse(0);
  }

  private Piece headerPiece(List<Placed> cells, Optional<Tags.Element> row) {
    double height = height(cells);
    return new Piece(
        5,
        height,
        Piece.Joint.STAYS_WITH_NEXT,
        Optional.empty(),
        (page, top) -> {
          PageContent content = page.content();
          double x = LEFT;
          for (Placed cell : cells) {
            Corner corner = new Corner(x, top + height - cell.height());
            if (row.isPresent()) {
              cell.paint(page, document, row.get().child("TH").heads(), corner, "");
            } else {
              content.beginArtifact();
              cell.paintAsArtifact(content, corner);
              content.endMarked();
            }
            x += cell.width();
          }
          rule(content, top + height, Style.RULE, Style.INK);
        });
  }

  private Piece rowPiece(
      List<Placed> cells, Tags.Element element, Table.Row row, Optional<Piece> header) {
    double height = height(cells);
    return new Piece(
        0,
        height,
        Piece.Joint.FREE,
        header,
        (page, top) -> {
          double x = LEFT;
          for (int column = 0; column < cells.size(); column++) {
            Placed cell = cells.get(column);
            Corner corner = new Corner(x, top);
            cell.paint(page, document, element.child("TD"), corner, fieldName(row, column));
            x += cell.width();
          }
          rule(page.content(), top + height, Style.HAIRLINE, Style.HAIR);
        });
  }

  /** What a screen reader calls a field: its row, then its column. */
  private String fieldName(Table.Row row, int column) {
    String header = table.columns().get(column).header();
    String first =
        row.cells().stream()
            .filter(cell -> cell.entry() == Cell.Entry.NONE && !cell.text().isBlank())
            .map(Cell::text)
            .limit(2)
            .reduce((a, b) -> a + ", " + b)
            .orElse(table.caption());
    return header.isBlank() ? first : first + ": " + header;
  }

  private void rule(PageContent content, double y, double width, int rgb) {
    double right = LEFT + document.paper().bodyWidthMillimetres() * Paper.POINTS;
    content.beginArtifact();
    content.line(LEFT, y, right, y, width, rgb);
    content.endMarked();
  }
}
