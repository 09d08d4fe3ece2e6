package lowfirst.sheet.pdf;

import java.util.Optional;

/**
 * Something that stands on one page undivided: a line of text, a row, a figure.
 *
 * @param spaceAbove points left free above it, except at the top of a page
 * @param height points
 * @param joint what may come between it and the next piece
 * @param header painted again where this piece comes to stand at the top of a page
 * @param painter paints it
 */
record Piece(
    double spaceAbove, double height, Joint joint, Optional<Piece> header, Painter painter) {

  /** What may come between a piece and the next. */
  enum Joint {
    /** A new page, if need be. */
    FREE,
    /** Nothing: a heading stays with what it heads. */
    STAYS_WITH_NEXT,
    /** A new page where what follows, up to the next of these, doesn't fit on the rest of this. */
    SECTION
  }

  /** Paints a piece with its upper edge at {@code top}, points from the top of the page. */
  interface Painter {
    void paint(Page page, double top);
  }

  /** The same piece, painted otherwise. */
  Piece painted(Painter other) {
    return new Piece(spaceAbove, height, joint, header, other);
  }

  /** The same piece with so many points more below it; as it is where they are less than none. */
  Piece higher(double points) {
    return new Piece(spaceAbove, height + Math.max(0, points), joint, header, painter);
  }

  /** The same piece, joined otherwise. */
  Piece joined(Joint other) {
    return new Piece(spaceAbove, height, other, header, painter);
  }
}
