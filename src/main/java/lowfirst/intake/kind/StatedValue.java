package lowfirst.intake.kind;

import java.util.Optional;
import java.util.regex.Pattern;
import lowfirst.marking.WrittenValue;
import lowfirst.problem.Reading;
import lowfirst.quantity.Dimension;

/** Finds the value of a part where people write it: its own cell, a description, a number. */
final class StatedValue {
  private static final Pattern MILLI_OR_MEGA =
      Pattern.compile("(?=\\P{Ll}*$)(?=.*\\d\\s?MOHMS?(?!\\p{L})).*(?<!\\p{L})(?!MOHM)\\p{L}{3}.*");
  private static final Pattern HERTZ = Pattern.compile("\\d\\s?[kKmM]?[hH][zZ](?!\\p{L})");

  /** The size of a chip resistor or capacitor by IEC 60115-8, in hundredths of an inch. */
  private static final Pattern CHIP_SIZE =
      Pattern.compile("(?<![\\w.,])0(?:1005|201|402|603|805)(?![\\w.,])");

  /** A resistance in whole ohms, short enough for no maker's number. */
  private static final Pattern WHOLE_OHMS = Pattern.compile("[1-9]\\d{0,2}");

  /** No maker's number says so. */
  private static final Pattern WITH_UNIT =
      Pattern.compile("(?i)\\d\\s?[km]?\\s?(ohms?|Ω)(?!\\p{L})|\\d\\s?[pnuµ]f(?!\\p{L})");

  private static final String SIZE = "(0402|0603|0805|1206|1210|2010|2512)";

  /** A number, perhaps with the size of a chip, is all that a description says: 330 1206. */
  private static final Pattern NUMBER_AND_SIZE =
      Pattern.compile("(?!" + SIZE + "$)\\d{1,4}([.,]\\d{1,2})?(\\s+\\(?" + SIZE + "\\)?)?");

  private StatedValue() {}

  /** The value with its ratings, which may stand in the description; the value may, too. */
  static Optional<WrittenValue> of(String cell, String description, Dimension measured) {
    String value = CHIP_SIZE.matcher(cell).replaceAll("");
    Optional<Dimension> expected = Optional.of(measured);
    Reading<WrittenValue> own =
        WrittenValue.parse(isMilliOrMega(value, measured) ? "" : value, expected);
    if (description.isEmpty() || value.equals(description)) {
      return own.value();
    }
    if (value.isEmpty()
        && measured == Dimension.RESISTANCE
        && NUMBER_AND_SIZE.matcher(description).matches()) {
      return WrittenValue.parse(description, expected).value();
    }
    if (!own.isRead() && isMilliOrMega(description, measured)) {
      return Optional.empty();
    }
    if (!own.isRead()) {
      return inProse(description, measured)
          .or(() -> inProse(DescriptionWords.withoutMeasures(description), measured));
    }
    WrittenValue alone = own.orThrow();
    // With its unit, since a bare number between words would be no value.
    Optional<WrittenValue> both =
        WrittenValue.parse(alone.value() + " ; " + description, expected).value();
    return Optional.of(
        both.filter(found -> found.value().sameAs(alone.value()))
            .map(
                found ->
                    new WrittenValue(
                        alone.value(),
                        alone.tolerance().or(found::tolerance),
                        alone.voltage().or(found::voltage),
                        alone.power().or(found::power),
                        alone.leftover()))
            .orElse(alone));
  }

  /** Words all in capitals, which may have had a small m: 10 mΩ or 10 MΩ. */
  private static boolean isMilliOrMega(String text, Dimension measured) {
    return measured == Dimension.RESISTANCE
        && text.contains("MOHM")
        && MILLI_OR_MEGA.matcher(text).matches();
  }

  static Optional<WrittenValue> inProse(String text, Dimension measured) {
    return WrittenValue.parse(text, Optional.of(measured))
        .value()
        .filter(found -> carriesUnit(text, measured));
  }

  /** A bare number in prose is no value. */
  private static boolean carriesUnit(String description, Dimension measured) {
    if (measured == Dimension.FREQUENCY) {
      return HERTZ.matcher(description).find();
    }
    return WrittenValue.showsUnit(description, measured);
  }

  /** Some write the value where the maker's number belongs: 24k, 100n, 330. */
  static Optional<WrittenValue> inNumber(String number, Dimension measured) {
    boolean ohms = measured == Dimension.RESISTANCE && WHOLE_OHMS.matcher(number).matches();
    return WrittenValue.parse(number, Optional.of(measured))
        .value()
        .filter(found -> found.leftover().isEmpty() || WITH_UNIT.matcher(number).find())
        .filter(found -> ohms || WrittenValue.showsUnit(number, measured));
  }
}
