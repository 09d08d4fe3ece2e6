package lowfirst.sheet;

import java.util.Locale;
import java.util.Optional;
import lowfirst.marking.BandEncoding;
import lowfirst.marking.BandSequence;
import lowfirst.marking.DigitCode;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Tolerance;

/** What stands on a part, so that a hand finds it in the bag. */
final class MarkingWords {
  private static final Tolerance FIVE_PERCENT = Tolerance.percent("5");
  private static final Tolerance ONE_PERCENT = Tolerance.percent("1");

  private static final double LARGEST_CODED_FARADS = 1e-6;

  private MarkingWords() {}

  /** The marking to look for; empty when the kind bears none. */
  static String of(PartType type) {
    return switch (type.kind()) {
      case RESISTOR -> bands(type);
      case CERAMIC_CAPACITOR, FILM_CAPACITOR, CAPACITOR, TANTALUM_CAPACITOR -> code(type);
      case ELECTROLYTIC_CAPACITOR -> printedValue(type);
      case WIRE_LINK, SOCKET, HEATSINK, PIN_HEADER, SCREW_TERMINAL, CONNECTOR, MOTOR -> "";
      default -> printedNumber(type);
    };
  }

  /** A value as the trade writes it: capacitors in µF, however large. */
  static String value(Quantity value) {
    boolean inMicrofarads = value.dimension() == Dimension.CAPACITANCE && value.asDouble() >= 1e-3;
    return inMicrofarads
        ? value.amount().movePointRight(6).stripTrailingZeros().toPlainString() + " µF"
        : value.toString();
  }

  private static String bands(PartType type) {
    if (type.value().isEmpty()) {
      return "";
    }
    Quantity value = type.value().get();
    if (type.tolerance().isPresent()) {
      return bands(value, type.tolerance().get())
          .map(BandSequence::words)
          .map(words -> "bands " + words)
          .orElse("printed in figures");
    }
    Optional<BandSequence> four = bands(value, FIVE_PERCENT);
    Optional<BandSequence> five = bands(value, ONE_PERCENT);
    String either =
        java.util.stream.Stream.of(four, five)
            .flatMap(Optional::stream)
            .map(BandSequence::words)
            .distinct()
            .collect(java.util.stream.Collectors.joining(", or "));
    return either.isEmpty()
        ? "printed in figures"
        : "bands " + either + " (tolerance not stated: the last band may differ)";
  }

  private static Optional<BandSequence> bands(Quantity value, Tolerance tolerance) {
    return BandEncoding.encode(value, tolerance).value();
  }

  private static String code(PartType type) {
    return type.value().map(value -> "printed " + code(type.kind(), value)).orElse("");
  }

  /** Small values bear a digit code; of kinds that are large when they are large, only those. */
  private static String code(PartKind kind, Quantity value) {
    boolean plain = kind == PartKind.CAPACITOR || kind == PartKind.TANTALUM_CAPACITOR;
    double largest = plain ? LARGEST_CODED_FARADS : 10 * LARGEST_CODED_FARADS;
    Optional<String> code = value.asDouble() <= largest ? DigitCode.write(value) : Optional.empty();
    return code.map(digits -> digits + " or ").orElse("") + value(value);
  }

  private static String printedValue(PartType type) {
    return type.value()
        .map(
            value ->
                "printed " + value + type.ratedVoltage().map(voltage -> " " + voltage).orElse(""))
        .orElse("");
  }

  private static String printedNumber(PartType type) {
    boolean named = type.kind() != PartKind.UNKNOWN && type.kind() != PartKind.LED;
    String number = number(type);
    return named && type.value().isEmpty() && !number.isEmpty() ? "printed " + number : "";
  }

  /**
   * The number that a part goes by: the BOM's value where it is one, since a library's device name
   * may differ from it, else the type number. Prose in the value column is no number.
   */
  static String number(PartType type) {
    String text = type.text().strip();
    String[] kind = type.kind().words().split(" ");
    boolean prose =
        text.isEmpty()
            || (text.contains(" ") && !text.matches(".*\\d.*"))
            || text.matches("(?s).*[,;]\\s.*|(?:\\S+\\s+){3,}\\S+")
            || text.toLowerCase(Locale.ROOT)
                .contains(kind[kind.length - 1].toLowerCase(Locale.ROOT));
    return prose && !type.typeNumber().isBlank() ? type.typeNumber().strip() : text;
  }
}
