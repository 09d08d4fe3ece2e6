package lowfirst.marking;

/**
 * What each place of a row of bands stands for; d is a digit, m the multiplier, t the tolerance.
 */
public enum Layout {
  /** One black band in the middle: a wire link in a resistor's body. */
  LINK("single black band: 0 Ω link"),
  THREE("3 bands: two figures, multiplier; no tolerance band means ±20 %"),
  FOUR("4 bands: two figures, multiplier, tolerance"),
  FIVE("5 bands: three figures, multiplier, tolerance"),
  SIX("6 bands: three figures, multiplier, tolerance, temperature coefficient"),
  /**
   * Makers' practice: a fifth black band for wirewound, a fifth white one for fusible (Token
   * "DIRECT"; BCcomponents NFR25H).
   */
  FOUR_AND_SPECIAL("4 bands and a special one: black is wirewound, white is fusible"),
  /** US military, MIL-R-39008 family: failure rate in % per 1000 h. Colours from memory. */
  FOUR_AND_FAILURE_RATE("4 bands and a failure-rate band (US military, old moulded parts)"),
  /**
   * High-voltage metal glaze: yellow and grey stand for gold and silver, whose metal flakes would
   * spoil the lacquer (Vishay VR25, seen on "2.7 MOhm ±5 % (VR): red violet green yellow").
   */
  FOUR_HIGH_VOLTAGE("4 bands on a high-voltage part: yellow is ±5 %, grey ±10 %"),
  INDUCTOR_THREE("3 bands in µH: two figures, multiplier; no tolerance band means ±20 %"),
  INDUCTOR_FOUR("4 bands in µH: two figures, multiplier, tolerance"),
  /** MIL-C-15305: a double-wide silver band first; gold in place 2 or 3 is the decimal point. */
  INDUCTOR_MILITARY("wide silver band first, then the value in µH, then the tolerance");

  private final String words;

  Layout(String words) {
    this.words = words;
  }

  /** What each place stands for. */
  public String words() {
    return words;
  }

  /** Whether parts marked so are rare or old. */
  boolean isUnusual() {
    return this == FOUR_AND_FAILURE_RATE || this == FOUR_HIGH_VOLTAGE;
  }
}
