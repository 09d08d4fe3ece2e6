package lowfirst.marking;

/**
 * Which table of colours a marking is read by.
 *
 * <p>IEC 60062:2016 added pink for 10⁻³. A maker's card "according to IEC 60062" (Vishay Resistor
 * Color Card) gives orange, yellow and grey as ±0.05 %, ±0.02 % and ±0.01 %; many older charts
 * leave orange and yellow empty and have grey as ±0.05 %. In which edition that changed could not
 * be confirmed, so the older table is called after its use, not after a year.
 */
public enum Edition {
  /** IEC 60062:2016, edition 6. */
  IEC_60062_2016("IEC 60062:2016"),
  /** Charts in the older use: no pink, orange or yellow tolerance; grey ±0.05 %. */
  OLDER("older charts");

  private final String words;

  Edition(String words) {
    this.words = words;
  }

  /** How to cite it. */
  public String words() {
    return words;
  }
}
