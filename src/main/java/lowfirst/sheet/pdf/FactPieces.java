package lowfirst.sheet.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lowfirst.sheet.document.Block.Facts;
import lowfirst.sheet.drawing.Drawing;

/** Names with what they are, the names in a column of their own; to the right what they tell of. */
final class FactPieces {
  private static final double LEFT = Paper.MARGIN_MILLIMETRES * Paper.POINTS;
  private static final double GAP = 10;

  /** Of the width of a page, for a picture: the rest is for words. */
  private static final double PICTURE_SHARE = 0.4;

  private FactPieces() {}

  static List<Piece> of(Facts facts, OpenDocument document) {
    double body = document.paper().bodyWidthMillimetres() * Paper.POINTS;
    Typeface bold = document.bold().face();
    double names = 0;
    for (Facts.Fact fact : facts.facts()) {
      double width = Lines.of(bold, Style.CELL, fact.name()).naturalWidth();
      names = Math.max(names, Math.min(width, body * 0.35));
    }
    Optional<Picture> picture = facts.picture().map(drawing -> Picture.of(drawing, document));
    double room = body - names - GAP - picture.map(shown -> shown.width() + GAP).orElse(0.0);
    Tags.Element list = document.tags().document().child("L");
    var pieces = new ArrayList<Piece>();
    for (Facts.Fact fact : facts.facts()) {
      pieces.addAll(fact(fact, document, list.child("LI"), names, room));
    }
    if (picture.isPresent() && !pieces.isEmpty()) {
      return together(picture.get().beside(pieces));
    }
    return isShort(pieces, document) ? together(pieces) : pieces;
  }

  /** A picture at the right edge, life size or as large as there is room for; lengths in points. */
  private record Picture(
      Drawing drawing, double scale, double left, Tags.Element element, OpenDocument document) {

    static Picture of(Drawing drawing, OpenDocument document) {
      double body = document.paper().bodyWidthMillimetres() * Paper.POINTS;
      double scale =
          Math.min(1, body * PICTURE_SHARE / (drawing.widthMillimetres() * Paper.POINTS));
      double left = LEFT + body - drawing.widthMillimetres() * Paper.POINTS * scale;
      Tags.Element element = document.tags().document().child("Figure").words(drawing.words());
      return new Picture(drawing, scale, left, element, document);
    }

    double width() {
      return drawing.widthMillimetres() * Paper.POINTS * scale;
    }

    /** The same pieces with the picture to their right, the last one as high as it needs. */
    List<Piece> beside(List<Piece> pieces) {
      double height = drawing.heightMillimetres() * Paper.POINTS * scale;
      double words = pieces.stream().mapToDouble(p -> p.spaceAbove() + p.height()).sum();
      var beside = new ArrayList<>(pieces);
      Piece first = beside.get(0);
      beside.set(
          0,
          first.painted(
              (page, top) -> {
                page.begin(element);
                DrawingPainter.paint(drawing, page.content(), document.stamps(), left, top, scale);
                page.content().endMarked();
                first.painter().paint(page, top);
              }));
      int last = beside.size() - 1;
      beside.set(last, beside.get(last).higher(height + first.spaceAbove() - words));
      return beside;
    }
  }

  /** A third of a page: the facts of a step are read together, a long list may go on overleaf. */
  private static boolean isShort(List<Piece> pieces, OpenDocument document) {
    double height = pieces.stream().mapToDouble(piece -> piece.spaceAbove() + piece.height()).sum();
    return height < document.paper().heightPoints() / 3;
  }

  private static List<Piece> together(List<Piece> pieces) {
    int last = pieces.size() - 1;
    for (int at = 0; at < last; at++) {
      pieces.set(at, pieces.get(at).joined(Piece.Joint.STAYS_WITH_NEXT));
    }
    return pieces;
  }

  private static List<Piece> fact(
      Facts.Fact fact, OpenDocument document, Tags.Element item, double names, double room) {
    double measure = Math.min(room, Style.LONGEST_LINE);
    List<Lines.Line> name =
        Lines.of(document.bold().face(), Style.CELL, fact.name()).within(names + 0.01);
    List<Lines.Line> text =
        Lines.of(document.regular().face(), Style.TEXT, fact.text()).within(measure);
    Tags.Element label = item.child("Lbl");
    Tags.Element words = item.child("LBody");
    var pieces = new ArrayList<Piece>();
    int lines = Math.max(name.size(), text.size());
    for (int at = 0; at < lines; at++) {
      int line = at;
      pieces.add(
          new Piece(
              at == 0 ? 2.5 : 0,
              Style.TEXT * Style.LEADING,
              at == lines - 1 ? Piece.Joint.FREE : Piece.Joint.STAYS_WITH_NEXT,
              Optional.empty(),
              (page, top) -> {
                double y = top + Style.TEXT * Style.BASELINE;
                put(page, label, document.bold(), Style.CELL, LEFT, y, name, line);
                put(page, words, document.regular(), Style.TEXT, LEFT + names + GAP, y, text, line);
              }));
    }
    return pieces;
  }

  private static void put(
      Page page,
      Tags.Element element,
      EmbeddedFont font,
      double size,
      double x,
      double y,
      List<Lines.Line> lines,
      int at) {
    if (at < lines.size() && !lines.get(at).text().isEmpty()) {
      page.begin(element);
      page.content().text(font, size, x, y, Style.INK, lines.get(at).text());
      page.content().endMarked();
    }
  }
}
