package lowfirst.swap.subject;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The family letters of 74-series logic: what its inputs take for a high, how far its outputs
 * swing, and what supply it runs from.
 *
 * <p>HC and HCT: JEDEC JESD7A (HC from 2 V to 6 V, VIH 70 % of VCC; HCT at 5 V, VIH 2.0 V; both
 * swing to the rails). LS and its kin: TTL levels at 5 V, a high of 2.7 V or less is allowed.
 */
public enum LogicFamily {
  TTL("", Input.TTL, Output.TTL, 4.75, 5.25),
  LS("LS", Input.TTL, Output.TTL, 4.75, 5.25),
  ALS("ALS", Input.TTL, Output.TTL, 4.5, 5.5),
  F("F", Input.TTL, Output.TTL, 4.5, 5.5),
  S("S", Input.TTL, Output.TTL, 4.75, 5.25),
  HC("HC", Input.CMOS, Output.RAIL_TO_RAIL, 2, 6),
  HCT("HCT", Input.TTL, Output.RAIL_TO_RAIL, 4.5, 5.5),
  AC("AC", Input.CMOS, Output.RAIL_TO_RAIL, 2, 6),
  ACT("ACT", Input.TTL, Output.RAIL_TO_RAIL, 4.5, 5.5),
  AHC("AHC", Input.CMOS, Output.RAIL_TO_RAIL, 2, 5.5),
  AHCT("AHCT", Input.TTL, Output.RAIL_TO_RAIL, 4.5, 5.5);

  /** What an input takes for a high. */
  public enum Input {
    TTL,
    CMOS
  }

  /** How far an output swings. */
  public enum Output {
    TTL,
    RAIL_TO_RAIL
  }

  private static final Pattern NAME = Pattern.compile("74([A-Z]{0,4}?)(\\d{2,5})(?!\\d)");

  private final String letters;
  private final Input input;
  private final Output output;
  private final double leastSupplyVolts;
  private final double mostSupplyVolts;

  LogicFamily(
      String letters, Input input, Output output, double leastSupplyVolts, double mostSupplyVolts) {
    this.letters = letters;
    this.input = input;
    this.output = output;
    this.leastSupplyVolts = leastSupplyVolts;
    this.mostSupplyVolts = mostSupplyVolts;
  }

  /** What its inputs take for high and low. */
  public Input input() {
    return input;
  }

  /** What its outputs reach and drive. */
  public Output output() {
    return output;
  }

  /** Whether it may run from a supply between these voltages. */
  public boolean runsFrom(double leastVolts, double mostVolts) {
    return leastVolts >= leastSupplyVolts && mostVolts <= mostSupplyVolts;
  }

  /** For example {@code 4.5 V to 5.5 V}. */
  public String supplyRange() {
    return leastSupplyVolts + " V to " + mostSupplyVolts + " V";
  }

  /** A 74-series type: its family and its function number. */
  public record Named(LogicFamily family, String function) {}

  /** The 74-series type in a part's name, maker's letters aside: SN74HC595N, MC74HCT244A. */
  public static Optional<Named> in(SwapPart part) {
    String text = (part.type().typeNumber() + " " + part.type().text()).toUpperCase(Locale.ROOT);
    Matcher matcher = NAME.matcher(text);
    while (matcher.find()) {
      for (LogicFamily family : values()) {
        if (family.letters.equals(matcher.group(1))) {
          return Optional.of(new Named(family, matcher.group(2)));
        }
      }
    }
    return Optional.empty();
  }
}
