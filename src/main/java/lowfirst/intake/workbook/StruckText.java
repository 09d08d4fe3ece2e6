package lowfirst.intake.workbook;

import lowfirst.intake.text.Rows;
import lowfirst.intake.xml.XmlCursor;

/**
 * Which letters of a spreadsheet's text are struck through (ECMA-376 part 1: 18.4.4 r, 18.4.7 rPr,
 * 18.4.10 strike). Blanks look like nothing.
 *
 * @param struck whether some have a font of their own that is
 * @param plain whether some have a font of their own that is not
 * @param likeCell whether some have the font of the cell
 */
record StruckText(boolean struck, boolean plain, boolean likeCell) {
  /** All letters have the font of the cell. */
  static final StruckText LIKE_CELL = new StruckText(false, false, true);

  /** Whether any letter is, in a cell whose own font is or isn't. */
  boolean anyStruck(boolean cell) {
    return struck || (likeCell && cell);
  }

  /** Whether any letter is not. */
  boolean anyPlain(boolean cell) {
    return plain || (likeCell && !cell);
  }

  /** The text in the element at hand, which the cursor leaves. */
  static StruckText in(XmlCursor cursor) throws XmlCursor.Refused {
    var text = new StruckText(false, false, false);
    int depth = cursor.depth();
    while (cursor.next(depth)) {
      switch (cursor.name()) {
        case "t" -> text = text.with(isBlank(cursor) ? text : LIKE_CELL);
        case "r" -> text = text.with(run(cursor));
        default -> {
          // How it is pronounced, which is no part of it.
        }
      }
    }
    return text;
  }

  private static StruckText run(XmlCursor cursor) throws XmlCursor.Refused {
    StruckText font = LIKE_CELL;
    boolean blank = true;
    int depth = cursor.depth();
    while (cursor.next(depth)) {
      if (cursor.name().equals("rPr")) {
        boolean struck = isStruckFont(cursor);
        font = new StruckText(struck, !struck, false);
      } else if (cursor.name().equals("t")) {
        blank &= isBlank(cursor);
      }
    }
    return blank ? new StruckText(false, false, false) : font;
  }

  private static boolean isBlank(XmlCursor cursor) throws XmlCursor.Refused {
    return Rows.stripped(cursor.text()).isEmpty();
  }

  private StruckText with(StruckText more) {
    return new StruckText(struck || more.struck, plain || more.plain, likeCell || more.likeCell);
  }

  /** Whether the font in the element at hand, which the cursor leaves, has the strike. */
  static boolean isStruckFont(XmlCursor cursor) throws XmlCursor.Refused {
    boolean struck = false;
    int depth = cursor.depth();
    while (cursor.next(depth)) {
      String value = cursor.attribute("val");
      struck |= cursor.name().equals("strike") && !value.equals("0") && !value.equals("false");
    }
    return struck;
  }
}
