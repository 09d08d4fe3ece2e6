package lowfirst.marking;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lowfirst.problem.Reading;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Tolerance;

/**
 * A value as people write it into a BOM: {@code 4k7 1% 0.25W}, {@code 10µF/25V}, {@code 1K Ohms}.
 *
 * @param value the value
 * @param tolerance the tolerance, where written
 * @param voltage the rated voltage, where written
 * @param power the rated power, where written
 * @param leftover the words that mean none of these, such as {@code Low-ESR}; may be empty
 */
public record WrittenValue(
    Quantity value,
    Optional<Tolerance> tolerance,
    Optional<Quantity> voltage,
    Optional<Quantity> power,
    String leftover) {

  /** Longer cells are prose, not values. */
  private static final int LONGEST = 200;

  private static final String REMEDY =
      "write the value with its unit or letter, such as 4k7, 4.7 kΩ, 100n or 10 µF";

  /** Words for the kind of part, that say nothing about a bare number beside them. */
  private static final Pattern KIND_WORDS =
      Pattern.compile(
          "(?i)\\b(?:resistors?|res|capacitors?|cap|ceramic|electrolytic|elco|film|metal|carbon|oxide|"
              + "din ?0\\d{3}|dis[ck]|wire-?wound|polyester|multilayer|mlcc|"
              + "inductor|choke|trimmer|trimpot|pot|potentiometer|axial|radial)\\b");

  /** A comma that parts words or ratings, not digits of one number. */
  private static final Pattern PARTING_COMMA =
      Pattern.compile("(?<!\\d),|,(?!\\d)|(?<=\\d\\p{L}\\d{0,3}),");

  /** A comma that may be a decimal mark or part thousands: 1,000 but not 0,047. */
  private static final Pattern THOUSANDS =
      Pattern.compile("(?<![\\p{L}\\d.,])[1-9]\\d{0,2}(?:,\\d{3})+(?!\\d)");

  /** A bare number before a value, which stands where the NUL is: 330/1k, 15/22uF. */
  private static final Pattern OTHER_VALUE =
      Pattern.compile("(?<![\\p{L}\\p{N}.,/-])(\\d{1,3}(?:[.,]\\d{1,3})?)\\s?/\\s{0,2}\u0000");

  /** The size of a chip after a value. */
  private static final Pattern CHIP_SIZE =
      Pattern.compile("(?<=\\S)\\s+\\(?(?:0402|0603|0805|1206|1210|1812|2010|2512)\\)?$");

  private static final Pattern BARE = Pattern.compile("\\d{1,9}(?:[.,]\\d{1,9})?|\\.\\d{1,9}");
  private static final Pattern MILLIHERTZ = Pattern.compile("m(?=([hH][zZ])?$)");
  private static final Pattern SCIENTIFIC =
      Pattern.compile("\\d{1,9}(?:\\.\\d{1,9})?(?:e\\d{1,2}|[eE][+-]\\d{1,2})");

  /**
   * Reads a value with the ratings beside it. Never throws.
   *
   * @param expected what the value measures, where the kind of part tells; without it only a text
   *     that shows a unit, or an unmistakable letter code of a preferred number, is a value
   */
  public static Reading<WrittenValue> parse(String text, Optional<Dimension> expected) {
    if (text.length() > LONGEST) {
      return Reading.fault("this is too long to be a value", REMEDY);
    }
    String plain = normalised(text);
    if (plain.isEmpty()) {
      return Reading.fault("no value is written here", REMEDY);
    }
    Matcher thousands = THOUSANDS.matcher(plain);
    if (thousands.find()) {
      return Reading.fault(
          "the comma in \"" + thousands.group() + "\" can be a decimal mark or part thousands",
          "write it with a point or a letter, such as 1k or 1.0");
    }
    Reading<WrittenValue> first = read(PARTING_COMMA.matcher(plain).replaceAll(" ; "), expected);
    if (first.isRead() || plain.indexOf(',') < 0) {
      return first;
    }
    // 680,1W: a comma between two numbers that don't make one.
    Reading<WrittenValue> parted = read(plain.replace(",", " ; "), expected);
    return parted.isRead() ? parted : first;
  }

  private static String normalised(String text) {
    return (CyrillicUnits.mayStandIn(text) ? CyrillicUnits.latin(text) : text)
        .replace('\u00b5', 'u')
        .replace('\u03bc', 'u')
        .replace('\u2126', 'Ω')
        .replace("\u00bc", " 1/4 ")
        .replace("\u00bd", " 1/2 ")
        .replace('\u2044', '/')
        .replaceAll("[\\p{Zs}\\p{Cntrl}\\x{FEFF}\\x{200B}]+", " ")
        .strip();
  }

  private static Reading<WrittenValue> read(String text, Optional<Dimension> expected) {
    WrittenRatings ratings = WrittenRatings.in(text, expected);
    if (expected.isPresent() && !isLettered(expected.get())) {
      return readPlain(ratings, expected.get());
    }
    ValueForms forms = ValueForms.in(ratings.rest(), expected);
    List<ValueForms.Found> found = ofKind(forms.found(), expected);
    if (found.isEmpty()) {
      return bare(ratings, expected);
    }
    Quantity value = found.get(0).value();
    for (ValueForms.Found other : found) {
      if (!other.value().equals(value)) {
        return Reading.fault(
            "there are two values: " + value + " and " + other.value(),
            "write one value in a cell");
      }
    }
    Matcher other = OTHER_VALUE.matcher(forms.rest());
    if (other.find()) {
      return Reading.fault(
          "there may be two values: " + other.group(1) + " and " + value,
          "write one value in a cell");
    }
    if (expected.isPresent() && expected.get() != value.dimension()) {
      return Reading.fault(
          value + " is no value for this kind of part", "correct the value or the kind of part");
    }
    return Reading.of(
        with(ratings, value, found.get(0).tolerance(), forms.rest()), found.get(0).rule());
  }

  /** Whether a text shows, by a unit or an unmistakable code, an amount of what is measured. */
  public static boolean showsUnit(String text, Dimension measured) {
    if (text.length() > LONGEST) {
      return false;
    }
    WrittenRatings ratings = WrittenRatings.in(normalised(text), Optional.empty());
    return ValueForms.in(ratings.rest(), Optional.empty()).found().stream()
        .anyMatch(found -> found.value().dimension() == measured);
  }

  /** Beside an inductance, ohms are those of its wire: what the kind of part has counts. */
  private static List<ValueForms.Found> ofKind(
      List<ValueForms.Found> found, Optional<Dimension> expected) {
    if (expected.isEmpty()) {
      return found;
    }
    List<ValueForms.Found> own =
        found.stream().filter(one -> one.value().dimension() == expected.get()).toList();
    return own.isEmpty() ? found : own;
  }

  /** Whether letter codes are used for it: 4k7, 100n, 4R7. */
  private static boolean isLettered(Dimension dimension) {
    return dimension == Dimension.RESISTANCE
        || dimension == Dimension.CAPACITANCE
        || dimension == Dimension.INDUCTANCE;
  }

  private static WrittenValue with(
      WrittenRatings ratings, Quantity value, Optional<Tolerance> byLetter, String rest) {
    return new WrittenValue(
        value,
        ratings.tolerance().isPresent() ? ratings.tolerance() : byLetter,
        ratings.voltage(),
        ratings.power(),
        leftover(rest));
  }

  private static String leftover(String rest) {
    return rest.replaceAll("[\\s;/,\u0000]*\u0000[\\s;/,\u0000]*", " ")
        .replaceAll("\\(\\s*\\)|\\[\\s*\\]", " ")
        .replaceAll("\\s+;\\s+", ", ")
        .replaceAll("\\s[-/+]+(?=\\s)", " ")
        .replaceAll("^[\\s,;/_-]+|[\\s,;/_-]+$", "")
        .replaceAll("\\s+", " ");
  }

  /** A voltage, current, frequency or the like: a number with a unit, or 5V1. */
  private static Reading<WrittenValue> readPlain(WrittenRatings ratings, Dimension expected) {
    String letter = expected.symbol();
    Matcher marked =
        Pattern.compile("(\\d{1,4})" + Pattern.quote(letter) + "(\\d{1,3})(?![\\p{L}\\p{N}])")
            .matcher(ratings.rest());
    if (letter.length() == 1 && marked.find()) {
      Quantity value = Quantity.of(marked.group(1) + "." + marked.group(2), expected);
      String rest = marked.replaceFirst("\u0000");
      return Reading.of(
          with(ratings, value, Optional.empty(), rest), letter + " as the decimal mark");
    }
    Matcher number =
        Pattern.compile(
                "(?<![\\p{L}\\p{N}.,])(?:\\d{1,9}(?:[.,]\\d{1,9})?|\\.\\d{1,9})\\s*[^\\s;,/()\\d-]*")
            .matcher(ratings.rest());
    while (number.find()) {
      Reading<Quantity> amount = amount(number.group().replace(',', '.'), expected);
      boolean withUnit = !BARE.matcher(number.group().strip()).matches();
      boolean whole = number.group().strip().equals(ratings.rest().strip());
      if (amount.isRead() && (withUnit || (whole && !isUnitMissing(amount, expected)))) {
        String rest =
            ratings.rest().substring(0, number.start())
                + "\u0000"
                + ratings.rest().substring(number.end());
        return Reading.of(with(ratings, amount.orThrow(), Optional.empty(), rest), amount.rule());
      }
    }
    return Reading.fault("no value is written here", "write it as " + example(expected));
  }

  /** A crystal of 32.768 or 16 is one of kilohertz or megahertz, and nobody says of which. */
  private static boolean isUnitMissing(Reading<Quantity> amount, Dimension expected) {
    return expected == Dimension.FREQUENCY && amount.orThrow().asDouble() < 1000;
  }

  /** Nothing on a board swings in millihertz: 16mhz is 16 MHz in small letters. */
  private static Reading<Quantity> amount(String text, Dimension expected) {
    return Quantity.parse(
        expected == Dimension.FREQUENCY ? MILLIHERTZ.matcher(text).replaceFirst("M") : text,
        expected);
  }

  private static String example(Dimension expected) {
    return "a number with its unit, such as 3 " + expected.symbol();
  }

  private static Reading<WrittenValue> bare(WrittenRatings ratings, Optional<Dimension> expected) {
    String rest = CHIP_SIZE.matcher(leftover(ratings.rest())).replaceFirst("");
    String number = KIND_WORDS.matcher(rest).replaceAll("").strip();
    if (expected.isEmpty()) {
      return Reading.fault(
          BARE.matcher(number).matches()
              ? "\"" + number + "\" has no unit, and the kind of part is not known"
              : "no value is written here",
          REMEDY);
    }
    boolean scientific = SCIENTIFIC.matcher(number).matches();
    if (!scientific && !BARE.matcher(number).matches()) {
      return Reading.fault("no value is written here", REMEDY);
    }
    String words = KIND_WORDS.matcher(rest).find() ? rest.replace(number, "").strip() : "";
    Reading<Quantity> value =
        scientific
            ? Reading.of(new Quantity(new BigDecimal(number), expected.get()), "number in SI units")
            : BareNumber.read(number.replace(',', '.'), expected.get());
    return value.map(read -> with(ratings, read, Optional.empty(), words));
  }
}
