package lowfirst.sheet.pdf;

import java.util.List;
import java.util.Optional;

/** Sets pieces onto pages, one below the other, and starts a new page where they don't fit. */
final class Flow {
  private final OpenDocument document;
  private final double top = Paper.MARGIN_MILLIMETRES * Paper.POINTS;
  private final double bottom;
  private Page page;
  private double y;

  private Flow(OpenDocument document) {
    this.document = document;
    this.bottom = document.paper().heightPoints() - top;
  }

  /** Sets all pieces; at least one page comes out. */
  static void set(List<Piece> pieces, OpenDocument document) {
    var flow = new Flow(document);
    flow.turn();
    int at = 0;
    while (at < pieces.size()) {
      at = flow.setGroup(pieces, at);
    }
  }

  private void turn() {
    page = document.newPage();
    y = top;
  }

  private boolean isFresh() {
    return y == top;
  }

  /** Turns where the pieces up to the next section don't all fit on what is left of the page. */
  private void begin(List<Piece> pieces, int from) {
    double needed = 0;
    for (int at = from; at < pieces.size(); at++) {
      if (pieces.get(at).joint() == Piece.Joint.SECTION) {
        break;
      }
      needed += pieces.get(at).spaceAbove() + pieces.get(at).height();
    }
    if (y + needed > bottom && !isFresh()) {
      turn();
    }
  }

  /** Sets the pieces that stay together, from {@code from}; returns where the next group starts. */
  private int setGroup(List<Piece> pieces, int from) {
    if (pieces.get(from).joint() == Piece.Joint.SECTION) {
      begin(pieces, from + 1);
    }
    int end = from;
    double needed = 0;
    while (end < pieces.size()) {
      Piece piece = pieces.get(end++);
      needed += piece.spaceAbove() + piece.height();
      if (piece.joint() != Piece.Joint.STAYS_WITH_NEXT) {
        break;
      }
    }
    if (y + needed > bottom + 0.01 && !isFresh()) {
      turn();
    }
    for (Piece piece : pieces.subList(from, end)) {
      set(piece);
    }
    return end;
  }

  private void set(Piece piece) {
    // A group taller than a page is broken where it must.
    if (y + spaceAbove(piece) + piece.height() > bottom + 0.01 && !isFresh()) {
      turn();
    }
    Optional<Piece> header = isFresh() ? piece.header() : Optional.empty();
    header.ifPresent(this::put);
    y += header.isPresent() ? 0 : spaceAbove(piece);
    put(piece);
  }

  private double spaceAbove(Piece piece) {
    return isFresh() ? 0 : piece.spaceAbove();
  }

  private void put(Piece piece) {
    piece.painter().paint(page, y);
    y += piece.height();
  }
}
