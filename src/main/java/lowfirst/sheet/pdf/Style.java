package lowfirst.sheet.pdf;

/** Sizes in points, inks as 0xRRGGBB: one quiet look for every sheet. */
final class Style {
  static final double TITLE = 18;
  static final double CHAPTER = 12.5;
  static final double SECTION = 10.5;
  static final double TEXT = 9.5;
  static final double CELL = 8.5;
  static final double HEADER = 7.5;
  static final double FOOT = 7.5;

  /** Distance of baselines, of the type size. */
  static final double LEADING = 1.3;

  static final int INK = 0x111111;
  static final int SOFT = 0x555555;
  static final int HAIR = 0xBBBBBB;

  static final double HAIRLINE = 0.4;
  static final double RULE = 0.9;

  /** White space left and right of what stands in a cell. */
  static final double CELL_SIDE = 3;

  /** White space above and below what stands in a cell. */
  static final double CELL_EDGE = 2.6;

  /** A longer word, such as a package name, is broken rather than let squeeze other columns. */
  static final double LONGEST_WORD = 84;

  /** Side of a box to tick: 4.2 mm, enough for a pen. */
  static final double BOX = 12;

  /** Least height of a row with a line to write on: 7 mm. */
  static final double WRITING = 20;

  /** Largest width of running text: longer lines are hard to read. */
  static final double LONGEST_LINE = 480;

  /** From the top of a line to its baseline, of the type size. */
  static final double BASELINE = 0.95;

  private Style() {}
}
