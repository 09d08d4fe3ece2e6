package lowfirst.sheet.pdf;

import java.util.List;
import java.util.Optional;
import lowfirst.sheet.document.Block.Cell;
import lowfirst.sheet.document.Block.Table.Align;
import lowfirst.sheet.drawing.Drawing;

/** One cell, measured once and then painted in whatever width its column gets. */
final class CellLayout {
  /** Space between a cell's drawing and its text. */
  private static final double GAP = 2;

  /** Room that text beside a drawing needs: a word or two. */
  private static final double LEAST_BESIDE = 45;

  private final Cell cell;
  private final Align align;
  private final EmbeddedFont font;
  private final double size;
  private final Lines lines;

  CellLayout(Cell cell, Align align, EmbeddedFont font, double size) {
    this.cell = cell;
    this.align = align;
    this.font = font;
    this.size = size;
    this.lines = isBox() ? Lines.of(font.face(), size, "") : textOf(cell, font, size);
  }

  private static Lines textOf(Cell cell, EmbeddedFont font, double size) {
    return Lines.of(font.face(), size, cell.text());
  }

  private boolean isBox() {
    return cell.entry() == Cell.Entry.BOX || cell.entry() == Cell.Entry.BOX_TICKED;
  }

  private boolean isField() {
    return cell.entry() == Cell.Entry.FIELD;
  }

  /** What the column can't do without. */
  double leastWidth(double most) {
    double drawing = cell.drawing().map(d -> d.widthMillimetres() * Paper.POINTS).orElse(0.0);
    double entry = isBox() ? Style.BOX : isField() ? 3.6 * Style.BOX : 0;
    double word = Math.min(lines.widestWord(), Style.LONGEST_WORD);
    double content = Math.max(entry, Math.max(word, drawing));
    return Math.min(most, content) + 2 * Style.CELL_SIDE;
  }

  /** What the column would take on one line. */
  double naturalWidth() {
    double entry = isBox() ? Style.BOX : isField() ? 6 * Style.BOX : 0;
    double content = indent() + (lines.isBlank() ? 0 : lines.naturalWidth());
    return Math.max(entry, content) + 2 * Style.CELL_SIDE;
  }

  /**
   * A cell in a column of this width: its text below its drawing, or beside where that is lower.
   */
  Placed within(double width) {
    double inner = Math.max(4, width - 2 * Style.CELL_SIDE);
    if (lines.isBlank()) {
      return new Placed(this, width, 0, List.of());
    }
    var below = new Placed(this, width, 0, lines.within(inner));
    double room = inner - indent();
    if (cell.drawing().isEmpty() || room < Math.max(lines.widestWord(), LEAST_BESIDE)) {
      return below;
    }
    var beside = new Placed(this, width, indent(), lines.within(room));
    return beside.height() < below.height() ? beside : below;
  }

  /** Where text beside the drawing begins; 0 without one. */
  private double indent() {
    return cell.drawing().map(d -> d.widthMillimetres() * Paper.POINTS + 2 * GAP).orElse(0.0);
  }

  /**
   * A cell whose width is known, with the lines of text that stand on the page in question.
   *
   * @param indent how far the text stands to the right, beside the drawing; 0 below it
   */
  record Placed(CellLayout layout, double width, double indent, List<Lines.Line> lines) {

    private double scale() {
      double inner = width - 2 * Style.CELL_SIDE;
      return layout
          .cell
          .drawing()
          .map(d -> Math.min(1, inner / (d.widthMillimetres() * Paper.POINTS)))
          .orElse(1.0);
    }

    private double drawingHeight() {
      return layout
          .cell
          .drawing()
          .map(d -> d.heightMillimetres() * Paper.POINTS * scale())
          .orElse(0.0);
    }

    /** How far below the upper edge of the content the text begins. */
    private double textTop() {
      boolean below = indent == 0 && !lines.isEmpty() && layout.cell.drawing().isPresent();
      return below ? drawingHeight() + GAP : 0;
    }

    double height() {
      double text = lines.size() * layout.size * Style.LEADING;
      double content = Math.max(drawingHeight(), textTop() + text);
      if (layout.isBox()) {
        content = Math.max(content, Style.BOX);
      }
      return Math.max(layout.isField() ? Style.WRITING : 0, content + 2 * Style.CELL_EDGE);
    }

    /** How many lines fit into a height. */
    int fitting(double height) {
      double room = height - 2 * Style.CELL_EDGE;
      return Math.max(1, (int) (room / (layout.size * Style.LEADING)));
    }

    /** The same cell with some of its lines, without its drawing and entry after the first part. */
    Placed part(int from, int to) {
      CellLayout rest =
          from == 0
              ? layout
              : new CellLayout(
                  new Cell("", Optional.empty(), Cell.Entry.NONE),
                  layout.align,
                  layout.font,
                  layout.size);
      int size = lines.size();
      return new Placed(
          rest, width, indent, lines.subList(Math.min(from, size), Math.min(to, size)));
    }

    /** Paints the cell with its left upper corner at x, y; {@code words} name its field. */
    void paint(
        Page page, OpenDocument document, Tags.Element element, Corner corner, String words) {
      if (layout.isBox()) {
        double x = corner.x() + Style.CELL_SIDE;
        boolean ticked = layout.cell.entry() == Cell.Entry.BOX_TICKED;
        double y = corner.y() + Style.CELL_EDGE;
        document
            .fields()
            .box(new FormFields.Spot(page, x, y, Style.BOX, Style.BOX), ticked, words, element);
      } else if (layout.isField()) {
        paintField(page, document, element, corner, words);
      } else {
        paintContent(page, document, element, corner);
      }
    }

    private void paintField(
        Page page, OpenDocument document, Tags.Element element, Corner corner, String words) {
      double x = corner.x() + Style.CELL_SIDE;
      double inner = width - 2 * Style.CELL_SIDE;
      double text = lines.size() * layout.size * Style.LEADING + 2 * Style.CELL_EDGE;
      double y = corner.y() + Math.max(Style.WRITING, text) - 3;
      page.content().beginArtifact();
      page.content().line(x, y, x + inner, y, 0.6, Style.SOFT);
      page.content().endMarked();
      double height = Math.max(lines.size() * layout.size * Style.LEADING, 1.4 * layout.size) + 3;
      document
          .fields()
          .line(
              new FormFields.Spot(page, x, y - height, inner, height),
              new FormFields.Filling(
                  lines.stream().map(Lines.Line::text).toList(),
                  layout.size,
                  layout.size * Style.LEADING),
              words,
              element);
    }

    private void paintContent(
        Page page, OpenDocument document, Tags.Element element, Corner corner) {
      double y = corner.y() + Style.CELL_EDGE;
      if (layout.cell.drawing().isPresent()) {
        Drawing drawing = layout.cell.drawing().get();
        page.begin(element.child("Figure").words(drawing.words()));
        DrawingPainter.paint(
            drawing, page.content(), document.stamps(), corner.x() + Style.CELL_SIDE, y, scale());
        page.content().endMarked();
      }
      if (!lines.isEmpty()) {
        page.begin(element);
        paintLines(page.content(), corner.x() + indent, y + textTop());
        page.content().endMarked();
      }
    }

    /** Paints the text once more, outside the structure: a header on a further page. */
    void paintAsArtifact(PageContent content, Corner corner) {
      paintLines(content, corner.x(), corner.y() + Style.CELL_EDGE);
    }

    private void paintLines(PageContent content, double left, double top) {
      double inner = width - indent - 2 * Style.CELL_SIDE;
      double y = top + layout.size * Style.BASELINE;
      for (Lines.Line line : lines) {
        double shift = layout.align == Align.END ? inner - line.width() : 0;
        double x = left + Style.CELL_SIDE + shift;
        content.text(layout.font, layout.size, x, y, Style.INK, line.text());
        y += layout.size * Style.LEADING;
      }
    }
  }

  /** Where a cell's left upper corner stands on the page. */
  record Corner(double x, double y) {}
}
