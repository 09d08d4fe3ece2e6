package lowfirst.sheet.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import lowfirst.sheet.document.Block.Cell;
import lowfirst.sheet.document.Block.Table;
import lowfirst.sheet.pdf.CellLayout.Corner;
import lowfirst.sheet.pdf.CellLayout.Placed;

/**
 * The rows of a table as pieces, the header first; the header comes again on each page. A row that
 * leaves its first cell empty goes on with the row above.
 */
final class TablePieces {
  /** Of a page, for the first row: it stays with the headings and the header above it. */
  private static final double FIRST_SHARE = 0.8;

  private static final Cell BLANK = Cell.of("");

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
    for (int row = 0; row < rows.size(); ) {
      int end = row + 1;
      while (end < rows.size() && goesOn(table.rows().get(end))) {
        end++;
      }
      pieces.addAll(group(row, end, row == 0 ? room * FIRST_SHARE : room, room, repeated));
      row = end;
    }
    return pieces;
  }

  /** Whether a row leaves its first cell to the row above: without that one it says nothing. */
  private static boolean goesOn(Table.Row row) {
    return !row.cells().isEmpty() && row.cells().get(0).equals(BLANK);
  }

  /** A row and those that go on with it, which stay together. */
  private List<Piece> group(
      int from, int end, double first, double room, Optional<Piece> repeated) {
    List<List<Placed>> group = rows.subList(from, end).stream().map(this::placed).toList();
    double[] heights = heights(group, spanning(from, end));
    var pieces = new ArrayList<Piece>();
    boolean fits = DoubleStream.of(heights).sum() <= first;
    for (int row = from; row < end; row++) {
      Tags.Element rowElement = element.child("TR");
      List<Placed> cells = group.get(row - from);
      if (fits) {
        var look = new Look(heights[row - from], row + 1 < end ? spanning(from, end) : 0);
        pieces.add(rowPiece(cells, look, rowElement, table.rows().get(row), repeated));
      } else {
        for (List<Placed> part : parts(cells, row == from ? first : room, room)) {
          var look = new Look(height(part), 0);
          pieces.add(rowPiece(part, look, rowElement, table.rows().get(row), repeated));
        }
      }
      if (row + 1 < end) {
        int last = pieces.size() - 1;
        pieces.set(last, pieces.get(last).joined(Piece.Joint.STAYS_WITH_NEXT));
      }
    }
    return pieces;
  }

  /** How many columns, from the first on, the rows leave to the first of them; 0 for one row. */
  private int spanning(int from, int end) {
    int columns = 0;
    while (end > from + 1 && columns < widths.length - 1 && isLeftToFirst(from, end, columns)) {
      columns++;
    }
    return columns;
  }

  private boolean isLeftToFirst(int from, int end, int column) {
    return table.rows().subList(from + 1, end).stream()
        .allMatch(row -> column >= row.cells().size() || row.cells().get(column).equals(BLANK));
  }

  /** What the first row has in its first columns may reach down beside the rows that go on. */
  private static double[] heights(List<List<Placed>> group, int spanning) {
    double[] heights =
        group.stream().mapToDouble(row -> height(row.subList(spanning, row.size()))).toArray();
    double reaching = height(group.get(0).subList(0, spanning));
    int last = heights.length - 1;
    heights[last] += Math.max(0, reaching - DoubleStream.of(heights).sum());
    return heights;
  }

  /**
   * How a row stands in its group.
   *
   * @param height points
   * @param open how many columns, from the first on, have no rule below: they go on in the next row
   */
  private record Look(double height, int open) {}

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
          rule(content, LEFT, top + height, Style.RULE, Style.INK);
        });
  }

  private Piece rowPiece(
      List<Placed> cells, Look look, Tags.Element element, Table.Row row, Optional<Piece> header) {
    return new Piece(
        0,
        look.height(),
        Piece.Joint.FREE,
        header,
        (page, top) -> {
          double x = LEFT;
          double ruled = LEFT;
          for (int column = 0; column < cells.size(); column++) {
            Placed cell = cells.get(column);
            Corner corner = new Corner(x, top);
            cell.paint(page, document, element.child("TD"), corner, fieldName(row, column));
            x += cell.width();
            ruled = column < look.open() ? x : ruled;
          }
          rule(page.content(), ruled, top + look.height(), Style.HAIRLINE, Style.HAIR);
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

  private void rule(PageContent content, double left, double y, double width, int rgb) {
    double right = LEFT + document.paper().bodyWidthMillimetres() * Paper.POINTS;
    content.beginArtifact();
    content.line(left, y, right, y, width, rgb);
    content.endMarked();
  }
}
