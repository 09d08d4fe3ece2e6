package lowfirst.sheet.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A caution: a bar at its side, the general warning sign (a triangle with an exclamation mark, as
 * ISO 7010 W001), the word, and the text.
 */
final class CautionPieces {
  private static final double LEFT = Paper.MARGIN_MILLIMETRES * Paper.POINTS;
  private static final double INDENT = 30;
  private static final String WORD = "Caution: ";

  private CautionPieces() {}

  static List<Piece> of(String text, OpenDocument document) {
    Tags.Element element = document.tags().document().child("P");
    double width =
        Math.min(
            document.paper().bodyWidthMillimetres() * Paper.POINTS - INDENT, Style.LONGEST_LINE);
    EmbeddedFont bold = document.bold();
    double leading = Style.TEXT * Style.LEADING;
    List<Lines.Line> lines = Lines.of(bold.face(), Style.TEXT, WORD + text).within(width);
    var pieces = new ArrayList<Piece>();
    for (int at = 0; at < lines.size(); at++) {
      Lines.Line line = lines.get(at);
      boolean first = at == 0;
      boolean last = at == lines.size() - 1;
      double padding = (first ? 3 : 0) + (last ? 3 : 0);
      double height = (lines.size() == 1 ? Math.max(leading, 14) : leading) + padding;
      pieces.add(
          new Piece(
              first ? 6 : 0,
              height,
              last ? Piece.Joint.FREE : Piece.Joint.STAYS_WITH_NEXT,
              Optional.empty(),
              (page, top) -> {
                PageContent content = page.content();
                content.beginArtifact();
                content.fillBox(LEFT, top, 2.2, height, Style.INK);
                if (first) {
                  sign(content, bold, LEFT + 8, top + 2);
                }
                content.endMarked();
                page.begin(element);
                double y = top + (first ? 3 : 0) + Style.TEXT * Style.BASELINE;
                content.text(bold, Style.TEXT, LEFT + INDENT, y, Style.INK, line.text());
                content.endMarked();
              }));
    }
    return pieces;
  }

  private static void sign(PageContent content, EmbeddedFont bold, double x, double y) {
    content.stroke(Style.INK, 1.3);
    content.fill(0xFFE9A8);
    content.moveTo(x + 8, y);
    content.lineTo(x + 16, y + 13.5);
    content.lineTo(x, y + 13.5);
    content.close();
    content.paint('B');
    content.text(bold, 10, x + 6.35, y + 12.1, Style.INK, "!");
  }
}
