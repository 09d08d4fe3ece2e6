package lowfirst.sorting;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lowfirst.marking.BandEncoding;
import lowfirst.marking.BandSequence;
import lowfirst.marking.DigitCode;
import lowfirst.marking.Layout;
import lowfirst.marking.RkmCode;
import lowfirst.marking.ToleranceLetter;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;
import lowfirst.part.SurfaceMount;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Tolerance;

/**
 * What to expect on a part of some type: colour bands, or printed text. A maker may print less, or
 * otherwise; so there may be several, the likeliest first.
 *
 * @param bands rows of bands it may carry; empty when it carries text
 * @param texts prints it may carry; empty when it carries bands or nothing
 * @param toleranceAssumed whether a tolerance band or letter stands on an assumption
 */
public record PartMarking(List<BandSequence> bands, List<String> texts, boolean toleranceAssumed) {

  /** From this power on, resistors are cement or wirewound and carry text (common practice). */
  private static final Quantity PRINTED_FROM = Quantity.of("3", Dimension.POWER);

  private static final Set<PartKind> BARE =
      EnumSet.of(
          PartKind.WIRE_LINK,
          PartKind.SOCKET,
          PartKind.HEATSINK,
          PartKind.PIN_HEADER,
          PartKind.SCREW_TERMINAL,
          PartKind.CONNECTOR,
          PartKind.SWITCH,
          PartKind.FUSE_HOLDER,
          PartKind.MOTOR);

  private static final Pattern PLAIN = Pattern.compile("(?=.*\\d)[\\p{L}\\p{N}-]{3,20}");

  /**
   * A single letter behind a number tells its gain group, as bodies print it without a sign between
   * (Pro Electron type designation): BC547_B.
   */
  private static final Pattern GAIN_GROUP = Pattern.compile("([A-Z]{2,3}\\d{2,4})_([A-Z])");

  private static final Pattern FUSE_CURRENT =
      Pattern.compile(
          "(?<![\\p{L}\\d.,])(?:FF|TT|[FMT])?\\s?\\d{1,4}(?:[.,]\\d{1,3})?\\s?m?A(?![\\p{L}\\d])");

  /** Amounts alone rate a part, and makers print them beside a number: 600V / 6A. */
  private static final Pattern RATINGS =
      Pattern.compile(
          "(?:[<>≥≤~+-]?\\s?\\d{1,5}(?:[.,]\\d{1,3})?\\s?[mkµu]?(?:VA?|A|W|Hz|mm|AWG)(?:[ -]?[AD]C)?|[AD]C|[\\s/,;x()-])+");

  private static final PartMarking NOTHING = new PartMarking(List.of(), List.of(), false);

  public PartMarking {
    bands = List.copyOf(bands);
    texts = List.copyOf(texts);
  }

  /** Whether nothing that tells parts of this kind apart is printed on them. */
  public static boolean isBare(PartKind kind) {
    return BARE.contains(kind);
  }

  /** What to expect on a part of this type. */
  public static PartMarking of(PartType type) {
    return switch (type.kind()) {
      case RESISTOR -> resistor(type);
      case INDUCTOR -> inductor(type);
      case TRIMMER, POTENTIOMETER -> printed(coded(type, Dimension.RESISTANCE));
      case RESISTOR_NETWORK -> network(type);
      case CERAMIC_CAPACITOR, CAPACITOR -> ceramic(type);
      case FILM_CAPACITOR -> film(type);
      case ELECTROLYTIC_CAPACITOR, TANTALUM_CAPACITOR -> electrolytic(type);
      case CRYSTAL, RESONATOR -> crystal(type);
      case LED, TRIMMER_CAPACITOR, THERMISTOR, PHOTORESISTOR -> NOTHING;
      case FUSE -> printed(fuse(type));
      default -> isBare(type.kind()) ? NOTHING : printed(typeTexts(type));
    };
  }

  /** Whether it carries colour bands. */
  public boolean isBanded() {
    return !bands.isEmpty();
  }

  /** Whether nothing readable is expected on it. */
  public boolean isUnmarked() {
    return bands.isEmpty() && texts.isEmpty();
  }

  private static PartMarking printed(List<String> texts) {
    return new PartMarking(List.of(), texts, false);
  }

  private static PartMarking resistor(PartType type) {
    Optional<Quantity> ohms = valued(type, Dimension.RESISTANCE);
    if (ohms.isEmpty()) {
      return printed(List.of());
    }
    if (SurfaceMount.isNamed(type)) {
      return printed(coded(type, Dimension.RESISTANCE));
    }
    boolean large = type.ratedPower().filter(w -> w.compareTo(PRINTED_FROM) >= 0).isPresent();
    if (large) {
      String watts = type.ratedPower().orElseThrow().amount().toPlainString() + "W";
      String code = RkmCode.write(ohms.get()).value().orElse(ohms.get().toString());
      return printed(List.of(watts + code + letter(type).orElse("")));
    }
    var bands = new ArrayList<BandSequence>();
    List<Tolerance> tolerances =
        type.tolerance()
            .map(List::of)
            .orElse(List.of(Tolerance.percent("5"), Tolerance.percent("1")));
    for (Tolerance tolerance : tolerances) {
      BandEncoding.encode(ohms.get(), tolerance).value().ifPresent(bands::add);
      boolean narrow = tolerance.plus().compareTo(BigDecimal.valueOf(5)) < 0;
      if (!narrow || type.tolerance().isEmpty()) {
        continue;
      }
      // Older ±1 % and ±2 % parts with an E24 value carry four bands.
      if (tolerance.plus().compareTo(BigDecimal.ONE) >= 0) {
        BandEncoding.encode(ohms.get(), tolerance, Layout.FOUR, OptionalInt.empty())
            .value()
            .ifPresent(bands::add);
      }
    }
    return new PartMarking(
        bands.stream().distinct().toList(), List.of(), type.tolerance().isEmpty());
  }

  /** Moulded axial chokes carry bands in µH, others a digit code; the package tells. */
  private static PartMarking inductor(PartType type) {
    Optional<Quantity> henries = valued(type, Dimension.INDUCTANCE);
    if (henries.isEmpty()) {
      return printed(stated(type));
    }
    var texts = new ArrayList<String>();
    DigitCode.write(henries.get()).ifPresent(texts::add);
    String place = type.packageName().toUpperCase(Locale.ROOT);
    boolean axial = place.contains("AXIAL") || place.contains("DIN0") || place.startsWith("0");
    if (!axial) {
      if (texts.isEmpty()) {
        texts.add(henries.get().toString());
      }
      return printed(texts);
    }
    // The colours of µH are those of as many ohms.
    var micro = new Quantity(henries.get().amount().scaleByPowerOfTen(6), Dimension.RESISTANCE);
    Tolerance tolerance = type.tolerance().orElse(Tolerance.percent("10"));
    var bands = new ArrayList<BandSequence>();
    BandEncoding.encode(micro, tolerance, Layout.FOUR, OptionalInt.empty())
        .value()
        .ifPresent(bands::add);
    return new PartMarking(bands, bands.isEmpty() ? texts : List.of(), type.tolerance().isEmpty());
  }

  private static PartMarking network(PartType type) {
    var texts = new ArrayList<String>();
    valued(type, Dimension.RESISTANCE).flatMap(DigitCode::write).ifPresent(texts::add);
    if (!type.typeNumber().isBlank()) {
      texts.add(0, type.typeNumber());
    }
    return printed(texts.isEmpty() ? stated(type) : texts);
  }

  /** Of words about a fuse its body bears the rated current with the letters before it. */
  private static List<String> fuse(PartType type) {
    Matcher current = FUSE_CURRENT.matcher(type.text());
    return current.find() && number(type).equals(type.text().strip())
        ? List.of(current.group())
        : typeTexts(type);
  }

  /** Cans bear their frequency. */
  private static PartMarking crystal(PartType type) {
    return printed(
        valued(type, Dimension.FREQUENCY)
            .map(hertz -> List.of(hertz.toString()))
            .orElseGet(() -> typeTexts(type)));
  }

  private static List<String> coded(PartType type, Dimension dimension) {
    var texts = new ArrayList<String>();
    Optional<Quantity> value = valued(type, dimension);
    value.flatMap(DigitCode::write).ifPresent(texts::add);
    value.flatMap(amount -> RkmCode.write(amount).value()).ifPresent(texts::add);
    return texts.isEmpty() ? stated(type) : texts;
  }

  private static PartMarking ceramic(PartType type) {
    Optional<Quantity> farads = valued(type, Dimension.CAPACITANCE);
    var texts = new ArrayList<String>();
    String letter = letter(type).orElse("");
    boolean large = farads.filter(amount -> amount.compareTo(ONE_MICRO) >= 0).isPresent();
    if (large && type.kind() == PartKind.CAPACITOR) {
      // Most likely an electrolytic one, which prints its value in full.
      texts.addAll(electrolytic(type).texts());
    }
    farads.flatMap(DigitCode::write).ifPresent(code -> texts.add(code + letter));
    farads.flatMap(amount -> RkmCode.write(amount).value()).ifPresent(texts::add);
    if (farads.isPresent() && farads.get().compareTo(HUNDRED_PICO) < 0) {
      // Small discs print bare picofarads.
      texts.add(farads.get().amount().scaleByPowerOfTen(12).stripTrailingZeros().toPlainString());
    }
    return printed(texts.isEmpty() ? stated(type) : texts.stream().distinct().toList());
  }

  private static final Quantity HUNDRED_PICO = Quantity.of("100E-12", Dimension.CAPACITANCE);
  private static final Quantity ONE_MICRO = Quantity.of("1E-6", Dimension.CAPACITANCE);

  private static PartMarking film(PartType type) {
    Optional<Quantity> farads = valued(type, Dimension.CAPACITANCE);
    var texts = new ArrayList<String>();
    String letter = letter(type).orElse("");
    String volts = type.ratedVoltage().map(v -> v.amount().toPlainString()).orElse("");
    farads
        .flatMap(amount -> RkmCode.write(amount).value())
        .ifPresent(code -> texts.add(code + letter + (letter.isEmpty() ? "" : volts)));
    farads.flatMap(DigitCode::write).ifPresent(code -> texts.add(code + letter));
    farads
        .map(amount -> amount.amount().scaleByPowerOfTen(6).stripTrailingZeros().toPlainString())
        .filter(micro -> micro.contains(".") && micro.length() <= 6)
        .ifPresent(micro -> texts.add(micro.replaceFirst("^0", "") + letter));
    return printed(texts.isEmpty() ? stated(type) : texts);
  }

  private static PartMarking electrolytic(PartType type) {
    Optional<Quantity> farads = valued(type, Dimension.CAPACITANCE);
    if (farads.isEmpty()) {
      return printed(stated(type));
    }
    // Makers print 1500 µF, never 1.5 mF.
    String micro =
        farads.get().amount().scaleByPowerOfTen(6).stripTrailingZeros().toPlainString() + " µF";
    return printed(List.of(micro + type.ratedVoltage().map(volts -> " " + volts).orElse("")));
  }

  /** What is not understood where a value belongs is no print. */
  private static List<String> stated(PartType type) {
    return PLAIN.matcher(type.typeNumber().strip()).matches() ? typeTexts(type) : List.of();
  }

  /** Type numbers as bodies carry them: small glass diodes leave out 1N, 2SC parts the 2S. */
  private static List<String> typeTexts(PartType type) {
    String number = number(type);
    boolean isText = number.equals(type.text().strip());
    if (number.isEmpty() || isText && (isProse(type) || RATINGS.matcher(number).matches())) {
      return List.of();
    }
    if (number.indexOf('_') >= 0) {
      Matcher group = GAIN_GROUP.matcher(number);
      if (group.matches()) {
        return List.of(group.group(1) + group.group(2));
      }
      // Libraries join a number and a package so; no body carries both.
      String stem = number.substring(0, number.indexOf('_'));
      return PLAIN.matcher(stem).matches() ? List.of(stem) : List.of();
    }
    var texts = new ArrayList<String>(List.of(number));
    if (number.matches("1N\\d{3,4}[A-Z]?")) {
      texts.add(number.substring(2));
    } else if (number.matches("2S[ABCDJK]\\d{2,4}[A-Z]?")) {
      texts.add(number.substring(2));
    }
    return texts;
  }

  /** The number on the body; a dealer's order number has the maker's number inside it. */
  private static String number(PartType type) {
    String text = type.text().strip();
    String number = type.typeNumber().strip();
    boolean inside =
        PLAIN.matcher(text).matches()
            && Compartments.folded(number).contains(Compartments.folded(text));
    return number.isEmpty() || inside ? text : number;
  }

  /** Whether the BOM's value tells what the part is rather than what stands on it. */
  public static boolean isProse(PartType type) {
    String text = type.text().strip();
    String[] kind = type.kind().words().split(" ");
    return text.isEmpty()
        || !text.matches("(?s).*\\d.*")
        || text.matches("(?s).*[,;]\\s.*|(?:\\S+\\s+){3,}\\S+")
        || text.toLowerCase(Locale.ROOT).contains(kind[kind.length - 1].toLowerCase(Locale.ROOT));
  }

  private static Optional<Quantity> valued(PartType type, Dimension dimension) {
    return type.value().filter(amount -> amount.dimension() == dimension);
  }

  private static Optional<String> letter(PartType type) {
    return type.tolerance()
        .flatMap(tolerance -> type.value().flatMap(v -> ToleranceLetter.of(tolerance, v)))
        .map(ToleranceLetter::name);
  }
}
