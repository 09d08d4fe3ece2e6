package lowfirst.marking;

/**
 * What each place of a row of bands stands for; d is a digit, m the multiplier, t the tolerance.
 */
public enum Layout {
  /** One black band in the middle: a wire link in a resistor's body. */
  LINK("single black band: 0 Ω link", 1),
  THREE("3 bands: two figures, multiplier; no tolerance band means ±20 %", 3),
  FOUR("4 bands: two figures, multiplier, tolerance", 4),
  FIVE("5 bands: three figures, multiplier, tolerance", 5),
  SIX("6 bands: three figures, multiplier, tolerance, temperature coefficient", 6),
  /**
   * Makers' practice: a fifth black band for wirewound, a fifth white one for fusible (Token
   * "DIRECT"; BCcomponents NFR25H).
   */
  FOUR_AND_SPECIAL("4 bands and a special one: black is wirewound, white is fusible", 5),
  /** US military, MIL-R-39008 family: failure rate in % per 1000 h. Colours from memory. */
  FOUR_AND_FAILURE_RATE("4 bands and a failure-rate band (US military, old moulded parts)", 5),
  /**
   * High-voltage metal glaze: yellow and grey stand for gold and silver, whose metal flakes would
   * spoil the lacquer (Vishay VR25, seen on "2.7 MOhm ±5 % (VR): red violet green yellow").
   */
  FOUR_HIGH_VOLTAGE("4 bands on a high-voltage part: yellow is ±5 %, grey ±10 %", 4),
  INDUCTOR_THREE("3 bands in µH: two figures, multiplier; no tolerance band means ±20 %", 3),
  INDUCTOR_FOUR("4 bands in µH: two figures, multiplier, tolerance", 4),
  /** MIL-C-15305: a double-wide silver band first; gold in place 2 or 3 is the decimal point. */
  INDUCTOR_MILITARY("wide silver band first, then the value in µH, then the tolerance", 5);

  private final String words;
  private final int bands;

  Layout(String words, int bands) {
    this.words = words;
    this.bands = bands;
  }

  /** What each place stands for. */
  public String words() {
    return words;
  }

  /** How many bands it has; the military inductor may leave out the last. */
  public int bands() {
    return bands;
  }

  /** Whether parts marked so are rare or old. */
  boolean isUnusual() {
    return this == FOUR_AND_FAILURE_RATE || this == FOUR_HIGH_VOLTAGE;
  }
}
