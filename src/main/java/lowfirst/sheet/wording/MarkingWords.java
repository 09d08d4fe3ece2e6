package lowfirst.sheet.wording;

import java.util.stream.Collectors;
import lowfirst.marking.BandSequence;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.sorting.PartMarking;

/** What stands on a part, so that a hand finds it in the bag. */
public final class MarkingWords {

  private MarkingWords() {}

  /** The marking to look for; empty when the kind bears none. */
  static String of(PartType type) {
    return type.kind() == PartKind.UNKNOWN ? "" : expected(PartMarking.of(type));
  }

  private static String expected(PartMarking marking) {
    if (marking.isUnmarked()) {
      return "";
    }
    String assumed =
        marking.toleranceAssumed() && marking.bands().stream().anyMatch(bands -> bands.count() > 1)
            ? " (tolerance not stated: the last band may differ)"
            : "";
    return marking.isBanded()
        ? "bands "
            + marking.bands().stream().map(BandSequence::words).collect(Collectors.joining(", or "))
            + assumed
        : "printed " + String.join(" or ", marking.texts());
  }

  /** A value as the trade writes it: capacitors in µF, however large. */
  public static String value(Quantity value) {
    boolean inMicrofarads = value.dimension() == Dimension.CAPACITANCE && value.asDouble() >= 1e-3;
    return inMicrofarads
        ? value.amount().movePointRight(6).stripTrailingZeros().toPlainString() + " µF"
        : value.toString();
  }

  private static boolean isColoured(PartType type) {
    return type.kind() == PartKind.LED && !type.text().isBlank();
  }

  /**
   * The number that a part goes by: the BOM's value where it is one, since a library's device name
   * may differ from it, else the type number. Prose in the value column is no number, but of an LED
   * it is the colour.
   */
  static String number(PartType type) {
    return PartMarking.isProse(type) && !isColoured(type) && !type.typeNumber().isBlank()
        ? type.typeNumber().strip()
        : type.text().strip();
  }
}
