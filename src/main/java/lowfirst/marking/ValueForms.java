package lowfirst.marking;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Tolerance;

/**
 * The forms in which people write one value inside a longer text: the RKM code of IEC 60062, or a
 * number with a prefix or a unit. Finds every one of them and leaves the rest.
 */
final class ValueForms {

  /** A value found, and how it was written. */
  record Found(Quantity value, Optional<Tolerance> tolerance, String rule) {}

  private static final String RKM_RULE = "RKM code (IEC 60062)";
  private static final String PREFIX_RULE = "number with a prefix";
  private static final String UNIT_RULE = "number with a unit";

  private static final Map<String, Integer> EXPONENTS =
      Map.ofEntries(
          Map.entry("", 0),
          Map.entry("R", 0),
          Map.entry("r", 0),
          Map.entry("E", 0),
          Map.entry("L", -3),
          Map.entry("m", -3),
          Map.entry("u", -6),
          Map.entry("n", -9),
          Map.entry("p", -12),
          Map.entry("k", 3),
          Map.entry("K", 3),
          Map.entry("kilo", 3),
          Map.entry("M", 6),
          Map.entry("meg", 6),
          Map.entry("G", 9),
          Map.entry("T", 12),
          Map.entry("uu", -12),
          Map.entry("mm", -12));

  private final Optional<Dimension> expected;
  private final List<Found> found = new ArrayList<>();
  private String rest;

  private ValueForms(String text, Optional<Dimension> expected) {
    this.rest = text;
    this.expected = expected;
  }

  /** Every value in {@code text}, which has been normalised by {@link WrittenValue}. */
  static ValueForms in(String text, Optional<Dimension> expected) {
    var forms = new ValueForms(text, expected);
    forms.takeAll(ValueForm.OHMS);
    forms.takeAll(ValueForm.FARADS);
    forms.takeAll(ValueForm.HENRIES);
    if (forms.mayBe(Dimension.RESISTANCE)) {
      forms.takeAll(ValueForm.RKM_OHMS);
      forms.takeAll(ValueForm.R_SUFFIX);
      forms.takeAll(ValueForm.KILO);
    }
    if (expected.isPresent() && forms.mayBe(Dimension.RESISTANCE)) {
      if (forms.found.isEmpty()) {
        // Only then: in prose, R27 is the name of a part.
        forms.takeAll(ValueForm.RKM_OHMS_LEADING);
      }
      forms.takeAll(ValueForm.KILO_WITH_TAPER);
    }
    if (forms.mayBe(Dimension.CAPACITANCE) || forms.mayBe(Dimension.INDUCTANCE)) {
      forms.takeAll(ValueForm.RKM_SMALL);
      forms.takeAll(ValueForm.SMALL);
      if (expected.isPresent() && forms.found.isEmpty()) {
        forms.takeAll(ValueForm.R_AS_POINT);
      }
    }
    return forms;
  }

  private boolean mayBe(Dimension dimension) {
    return expected.isEmpty() || expected.get() == dimension;
  }

  List<Found> found() {
    return found;
  }

  /** The text without the values; a NUL stands where one was. */
  String rest() {
    return rest;
  }

  private void takeAll(ValueForm form) {
    Matcher matcher = form.pattern().matcher(rest);
    var kept = new StringBuilder();
    int from = 0;
    while (matcher.find()) {
      Optional<Found> value = read(form, matcher);
      if (value.isPresent()) {
        found.add(value.get());
        kept.append(rest, from, matcher.start()).append(" \u0000 ");
        from = matcher.end();
      }
    }
    rest = kept.append(rest.substring(from)).toString();
  }

  private Optional<Found> read(ValueForm form, Matcher match) {
    return switch (form) {
      case OHMS -> ohms(match);
      case R_SUFFIX -> ohmsWithR(match);
      case RKM_OHMS -> rkmOhms(match);
      case RKM_OHMS_LEADING -> rkmOhmsLeading(match);
      case KILO -> kilo(match);
      case KILO_WITH_TAPER -> kiloWithTaper(match);
      case FARADS -> farads(match);
      case HENRIES -> henries(match);
      case RKM_SMALL -> rkmSmall(match);
      case SMALL -> small(match);
      case R_AS_POINT -> rAsPoint(match);
    };
  }

  private Optional<Found> ohms(Matcher match) {
    return found(match.group(1), match.group(2), Dimension.RESISTANCE, "", UNIT_RULE);
  }

  private Optional<Found> ohmsWithR(Matcher match) {
    String rule = match.group(3).equals("E") ? "E for ohms, an older custom" : RKM_RULE;
    if (match.group(3).equals("E") && expected.isEmpty()) {
      return Optional.empty();
    }
    if ((match.group(2) + match.group(3) + match.group(4)).equalsIgnoreCase("meg")) {
      return found(match.group(1), "M", Dimension.RESISTANCE, "", UNIT_RULE);
    }
    return found(match.group(1), match.group(2), Dimension.RESISTANCE, match.group(4), rule);
  }

  private Optional<Found> rkmOhms(Matcher match) {
    String number = match.group(1) + "." + match.group(3);
    String mark = match.group(2);
    Optional<Found> value = found(number, mark, Dimension.RESISTANCE, match.group(4), RKM_RULE);
    if (mark.equals("E")) {
      // 4E7 can't be 40 MΩ, which nobody sells; 1E3 can be 1.3 Ω or 1 kΩ.
      BigDecimal power = new BigDecimal(match.group(1) + "E" + match.group(3));
      boolean sold = Series.E24.contains(new Quantity(power, Dimension.RESISTANCE));
      return sold || expected.isEmpty()
          ? Optional.empty()
          : value.map(v -> new Found(v.value(), v.tolerance(), "E for ohms, an older custom"));
    }
    boolean unsure = expected.isEmpty() && "LGT".contains(mark);
    return unsure ? Optional.empty() : value.filter(this::isBelievable);
  }

  private Optional<Found> rkmOhmsLeading(Matcher match) {
    if (followsWords(match)) {
      return Optional.empty();
    }
    return found(
        "0." + match.group(2), match.group(1), Dimension.RESISTANCE, match.group(3), RKM_RULE);
  }

  private Optional<Found> kilo(Matcher match) {
    boolean apart = !match.group(2).isEmpty();
    if (expected.isEmpty() && (apart || "GT".contains(match.group(3)))) {
      return Optional.empty();
    }
    return found(match.group(1), match.group(3), Dimension.RESISTANCE, match.group(4), PREFIX_RULE);
  }

  private Optional<Found> kiloWithTaper(Matcher match) {
    int first = match.group(1) == null ? 5 : 1;
    return found(match.group(first), match.group(first + 2), Dimension.RESISTANCE, "", PREFIX_RULE);
  }

  private Optional<Found> farads(Matcher match) {
    String prefix = match.group(2);
    if (prefix.isEmpty() && expected.filter(Dimension.CAPACITANCE::equals).isEmpty()) {
      return Optional.empty();
    }
    // Megafarads don't exist: MF and MFD are an old way to write microfarads.
    boolean old = prefix.equals("M") || match.group().toLowerCase(Locale.ROOT).endsWith("mfd");
    String rule =
        old
            ? "MF and MFD are old for µF"
            : match.group().matches("(?s).*[Ff]{2}") ? "unit with a slip of the pen" : UNIT_RULE;
    if (prefix.equals("m") && !old) {
      rule = "mF as millifarad; some old sheets meant µF";
    }
    boolean pico = prefix.equalsIgnoreCase("mm");
    String read = pico ? "p" : old ? "u" : prefix.toLowerCase(Locale.ROOT);
    return found(match.group(1), read, Dimension.CAPACITANCE, "", rule);
  }

  private Optional<Found> henries(Matcher match) {
    String prefix = match.group(2).toLowerCase(Locale.ROOT);
    if (prefix.isEmpty() && expected.filter(Dimension.INDUCTANCE::equals).isEmpty()) {
      return Optional.empty();
    }
    return found(match.group(1), prefix, Dimension.INDUCTANCE, "", UNIT_RULE);
  }

  private Optional<Found> rkmSmall(Matcher match) {
    boolean henry = match.group(5).equalsIgnoreCase("h");
    Dimension dimension = henry ? Dimension.INDUCTANCE : expected.orElse(Dimension.CAPACITANCE);
    String mark = match.group(2);
    boolean unsure = Character.isUpperCase(mark.charAt(0)) || mark.equals("m");
    if (expected.isEmpty() && (unsure || match.group(1).isEmpty()) && match.group(5).isEmpty()) {
      return Optional.empty();
    }
    if (match.group(1).isEmpty() && match.group(5).isEmpty() && followsWords(match)) {
      return Optional.empty();
    }
    return found(
            (match.group(1).isEmpty() ? "0" : match.group(1)) + "." + match.group(3),
            mark.toLowerCase(Locale.ROOT),
            dimension,
            match.group(4),
            RKM_RULE)
        .filter(this::isBelievable);
  }

  private Optional<Found> small(Matcher match) {
    String prefix = match.group(3);
    boolean unsure =
        Character.isUpperCase(prefix.charAt(0)) || prefix.equals("m") || !match.group(2).isEmpty();
    if (expected.isEmpty() && unsure) {
      return Optional.empty();
    }
    Dimension dimension = expected.orElse(Dimension.CAPACITANCE);
    String rule = expected.isPresent() ? PREFIX_RULE : PREFIX_RULE + ", taken for farads";
    return found(match.group(1), prefix.toLowerCase(Locale.ROOT), dimension, match.group(4), rule)
        .filter(this::isBelievable);
  }

  /**
   * A letter and a number after words name a part, as in "above U3"; a value stands before them.
   */
  private boolean followsWords(Matcher match) {
    return rest.substring(0, match.start()).chars().anyMatch(Character::isLetter);
  }

  /** R as a decimal mark has nothing to do with ohms here: 3R9 is 3.9 pF or 3.9 µH. */
  private Optional<Found> rAsPoint(Matcher match) {
    Dimension dimension = expected.orElseThrow();
    if (match.group(1).isEmpty() && followsWords(match)) {
      return Optional.empty();
    }
    String whole = match.group(1).isEmpty() ? "0" : match.group(1);
    return found(
        whole + "." + match.group(2),
        dimension == Dimension.CAPACITANCE ? "p" : "u",
        dimension,
        match.group(3),
        dimension == Dimension.CAPACITANCE
            ? "R as the decimal mark of pF"
            : "R as the decimal mark of µH");
  }

  /** Where nothing says what it is, only a preferred number is taken for a value. */
  private boolean isBelievable(Found value) {
    return expected.isPresent()
        || Series.E24.contains(value.value())
        || Series.E96.contains(value.value())
        || value.value().isZero();
  }

  private static Optional<Found> found(
      String number, String prefix, Dimension dimension, String letter, String rule) {
    Integer exponent =
        EXPONENTS.containsKey(prefix)
            ? EXPONENTS.get(prefix)
            : EXPONENTS.get(prefix.toLowerCase(Locale.ROOT));
    if (exponent == null) {
      return Optional.empty();
    }
    var value = new Quantity(WrittenRatings.number(number).scaleByPowerOfTen(exponent), dimension);
    return Optional.of(new Found(value, ToleranceLetter.read(letter, value), rule));
  }
}
