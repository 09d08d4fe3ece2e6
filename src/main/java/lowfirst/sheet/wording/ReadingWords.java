package lowfirst.sheet.wording;

import java.math.MathContext;
import java.math.RoundingMode;
import lowfirst.part.PartType;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Source;
import lowfirst.sorting.Meter;
import lowfirst.sorting.MeterLimits;

/** Which meter reading to accept before a part is fitted. */
public final class ReadingWords {
  /** No hand-held meter shows more. */
  private static final int MOST_DIGITS = 6;

  private ReadingWords() {}

  /** The words for a part type; empty where a multimeter tells nothing. */
  public static String of(PartType type, Meter meter) {
    return MeterLimits.of(type, meter).map(ReadingWords::limits).orElseGet(() -> byKind(type));
  }

  private static String limits(MeterLimits limits) {
    String tolerance =
        limits.tolerance()
            + (limits.toleranceSource().origin() == Source.Origin.ASSUMED ? ", assumed" : "");
    String leads = limits.leadsMatter() ? "; take off what the joined probes read" : "";
    String sure =
        limits
            .accept()
            .map(
                range ->
                    "; surely within "
                        + limits.tolerance()
                        + (range.low().equals(range.high())
                            ? " at " + shown(range.low())
                            : " from " + shown(range.low()) + " to " + shown(range.high())))
            .orElse("; this meter can't prove " + limits.tolerance());
    return outer(limits) + " (" + tolerance + " and the meter's own error)" + sure + leads;
  }

  /** The readings outside of which a part is surely out of tolerance. */
  public static String outer(MeterLimits limits) {
    String from = limits.rejectBelow().isZero() ? "up to " : shown(limits.rejectBelow()) + " to ";
    return from + shown(limits.rejectAbove());
  }

  /** A reading as a meter shows it. */
  public static String shown(Quantity reading) {
    MathContext digits = new MathContext(MOST_DIGITS, RoundingMode.HALF_EVEN);
    return MarkingWords.value(new Quantity(reading.amount().round(digits), reading.dimension()));
  }

  /** Forward voltages at a meter's test current, common practice; no limits to reject by. */
  private static String byKind(PartType type) {
    return switch (type.kind()) {
      case DIODE, ZENER_DIODE ->
          "diode test: about 0.5 to 0.8 V with the black lead on the band's side, nothing the other"
              + " way";
      case SCHOTTKY_DIODE ->
          "diode test: about 0.15 to 0.45 V with the black lead on the band's side, nothing the"
              + " other way";
      case LED -> "diode test: it glows with the black lead on the cathode; many meters do this";
      case FUSE -> "next to 0 Ω";
      default -> "";
    };
  }
}
