package lowfirst.sheet.pdf;

/**
 * A sheet of paper, upright or on its side.
 *
 * @param widthMillimetres across the lines of text
 * @param heightMillimetres down the page
 */
public record Paper(double widthMillimetres, double heightMillimetres) {
  /** ISO 216 A4, upright. */
  public static final Paper A4 = new Paper(210, 297);

  /** ANSI A, "US Letter", 8.5 by 11 inches, upright. */
  public static final Paper LETTER = new Paper(215.9, 279.4);

  /** White space at each edge; the foot line stands inside the lower one. */
  static final double MARGIN_MILLIMETRES = 15;

  /** Points (1/72 inch) in a millimetre. */
  static final double POINTS = 72 / 25.4;

  public Paper {
    if (!(Math.min(widthMillimetres, heightMillimetres) >= 80)
        || !(Math.max(widthMillimetres, heightMillimetres) <= 5000)) {
      throw new IllegalArgumentException(
          "no paper: " + widthMillimetres + " by " + heightMillimetres + " mm");
    }
  }

  /** The same sheet on its other side: portrait becomes landscape. */
  public Paper turned() {
    return new Paper(heightMillimetres, widthMillimetres);
  }

  /** Width that can be printed on, millimetres. */
  public double bodyWidthMillimetres() {
    return widthMillimetres - 2 * MARGIN_MILLIMETRES;
  }

  /** Height that can be printed on, millimetres. */
  public double bodyHeightMillimetres() {
    return heightMillimetres - 2 * MARGIN_MILLIMETRES;
  }

  double widthPoints() {
    return widthMillimetres * POINTS;
  }

  double heightPoints() {
    return heightMillimetres * POINTS;
  }
}
