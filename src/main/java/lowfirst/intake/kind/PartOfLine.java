package lowfirst.intake.kind;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import lowfirst.marking.WrittenValue;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;
import lowfirst.part.SurfaceMount;
import lowfirst.quantity.Dimension;

/**
 * What the cells of one BOM line say that the part is.
 *
 * @param type the part type
 * @param notUnderstood what was not understood of its value; empty when all was
 */
public record PartOfLine(PartType type, String notUnderstood) {
  /** Names of drawing symbols, which some exports put where the value belongs. */
  private static final Pattern SYMBOL_NAME =
      Pattern.compile(
          "(?i)(r|c|l|d|cp|led|q)(_[a-z0-9]+)*_(small|us|eu|polari[sz]ed|device)(_[a-z0-9]+)*"
              + "|sw_(push|spst|spdt|dpst|dpdt|dip|slide|rotary|reed|nested)[a-z0-9_]*"
              + "|d_(schottky|zener|tvs|photo)[a-z0-9_]*|q_(npn|pnp|nmos|pmos)[a-z0-9_]*");

  /** No capacitor on a board has more, but for those that stand in for a battery. */
  private static final double MOST_FARADS = 0.1;

  private static final double MOST_VOLTS_OF_SUPERCAPACITORS = 6;

  private static final Pattern SUPERCAPACITOR =
      Pattern.compile("(?i)super|ultra|gold|edlc|double.?layer|back.?up|memory");

  /** Dealers number what they sell so, makers hardly a part that has no value: C28233, 595-... */
  private static final Pattern ORDER_NUMBER = Pattern.compile("[A-Z]?\\d{5,9}|\\d{2,4}-\\S+");

  /** The letter of a circuit simulator's model before the type number: D1N4148, Q2N3904. */
  private static final Pattern OF_A_MODEL = Pattern.compile("^[DQ](?=[12]N\\d{3,4}\\D{0,3}$)");

  /** Drawings of resistors and the like in two styles, with the size of the body behind. */
  private static final Pattern DRAWN = Pattern.compile("(?i)(r|c|l|cpol|cp)[-_](eu|us).*");

  private static final String FLAT = " (SMD)";

  private static final Pattern TYPE_NUMBER =
      Pattern.compile("(?=.*\\d)(?=.*\\p{L})[\\p{L}\\p{N}._/+-]{2,30}");

  private static final double ELECTROLYTIC_FROM_FARADS = 9.9e-6;

  /** What these cells say. */
  public static PartOfLine read(LineCells line) {
    LineCells cells = withNumberInPackage(line);
    String value = cells.value();
    String description = cells.description();
    boolean symbolName = isSymbolName(value);
    PartKind likely = KindOfLine.of(cells);
    Optional<Dimension> dimension = likely.measures();
    Optional<WrittenValue> stated =
        dimension.flatMap(
            measured ->
                StatedValue.of(symbolName ? "" : single(value, likely), description, measured)
                    .or(() -> StatedValue.inProse(cells.otherText(), measured)));
    Optional<WrittenValue> numbered =
        stated.isPresent()
            ? Optional.empty()
            : dimension.flatMap(measured -> StatedValue.inNumber(cells.number(), measured));
    Optional<WrittenValue> written = stated.or(() -> numbered);
    boolean guessed = cells.isNumberGuessed();
    boolean coloured = likely == PartKind.LED && KindOfLine.isColour(value);
    boolean dealers =
        guessed
            && ORDER_NUMBER.matcher(cells.number()).matches()
            && (dimension.isPresent()
                    && !value.isEmpty()
                    && Character.isLetter(cells.number().charAt(0))
                || DescriptionWords.typeNumberIn(value).isPresent());
    boolean outdone =
        dealers
            || dimension.isEmpty()
                && (coloured || TYPE_NUMBER.matcher(value).matches())
                && (guessed || ORDER_NUMBER.matcher(cells.number()).matches());
    // What a drawing calls a network is no print on it.
    boolean drawn = guessed && likely == PartKind.RESISTOR_NETWORK && written.isPresent();
    boolean symbol = guessed && written.isEmpty() && DRAWN.matcher(cells.number()).matches();
    String number = numbered.isPresent() || outdone || drawn || symbol ? "" : cells.number();
    String body = cells.packageName().isEmpty() ? value : cells.packageName();
    PartKind kind = SurfaceMount.isChip(body) ? likely : polarised(likely, written, cells);
    String text =
        numbered.isPresent()
            ? cells.number()
            : !value.isEmpty() ? value : !description.isEmpty() ? description : cells.number();
    if (text.isEmpty()) {
      text = cells.otherText().isEmpty() ? cells.kind() : cells.otherText();
    }
    boolean typeNumbered = written.isEmpty() && dimension.isEmpty() && !symbolName;
    var type =
        new PartType(
            kind,
            symbolName && written.isPresent() ? description : text,
            written.map(WrittenValue::value),
            RatingCells.tolerance(cells.tolerance())
                .or(() -> written.flatMap(WrittenValue::tolerance)),
            RatingCells.voltage(cells.voltage())
                .or(() -> RatingCells.voltageAmongPowers(cells.power()))
                .or(() -> written.flatMap(WrittenValue::voltage)),
            RatingCells.power(cells.power())
                .or(() -> RatingCells.powerAmongVoltages(cells.voltage()))
                .or(() -> written.flatMap(WrittenValue::power)),
            number.isEmpty() && typeNumbered ? typeNumber(text, description) : number,
            packageName(cells, text, kind));
    if (isTooLarge(type, description)) {
      return new PartOfLine(
          withoutValue(type),
          "\""
              + type.value().orElseThrow()
              + "\" is more than a capacitor on a board has, unless it stands in for a battery; a"
              + " sign such as µ may be lost");
    }
    // the name of a kind is no number to look a value up by
    boolean unnumbered = guessed || number.isEmpty() || PartKindWords.byName(number).isPresent();
    boolean missing = dimension.isPresent() && written.isEmpty() && unnumbered;
    if (dimension.isEmpty() && kind.isPolarised() && (text + number).isEmpty()) {
      return new PartOfLine(type, "nothing says which " + kind.words() + " this is");
    }
    return new PartOfLine(type, missing ? notUnderstood(text, symbolName, dimension.get()) : "");
  }

  /** Where nothing else says what a part is, a type number under a word for bodies does: device. */
  private static LineCells withNumberInPackage(LineCells cells) {
    boolean silent = (cells.value() + cells.number() + cells.description()).isEmpty();
    String name = cells.packageName();
    return silent && KindOfLine.isSemiconductor(name) ? cells.with(name, "") : cells;
  }

  /** The package, and that a description calls the part soldered flat. */
  private static String packageName(LineCells cells, String text, PartKind kind) {
    String name =
        cells.packageName().isEmpty() ? DescriptionWords.packageIn(text) : cells.packageName();
    boolean flat =
        !SurfaceMount.isNamed(name, kind) && SurfaceMount.isSaidOf(cells.description(), name, kind);
    return flat ? (name + FLAT).strip() : name;
  }

  private static boolean isTooLarge(PartType type, String description) {
    boolean large =
        type.kind().isCapacitor()
            && type.value().filter(value -> value.asDouble() >= MOST_FARADS).isPresent();
    boolean low =
        type.ratedVoltage()
            .filter(volts -> volts.asDouble() <= MOST_VOLTS_OF_SUPERCAPACITORS)
            .isPresent();
    return large && !low && !SUPERCAPACITOR.matcher(type.text() + " " + description).find();
  }

  /** The same part type, its value not understood. */
  public static PartType withoutValue(PartType type) {
    return new PartType(
        type.kind(),
        type.text(),
        Optional.empty(),
        type.tolerance(),
        type.ratedVoltage(),
        type.ratedPower(),
        type.typeNumber(),
        type.packageName());
  }

  /** Of what a line says; a known number that stands alone is sooner one than words are. */
  private static String typeNumber(String text, String description) {
    boolean told = !KindOfLine.isSemiconductor(text) && KindOfLine.isSemiconductor(description);
    return withoutModel(DescriptionWords.typeNumberIn(text).orElse(told ? description : text));
  }

  /** A type number without the letter of a circuit simulator's model before it. */
  static String withoutModel(String text) {
    return OF_A_MODEL.matcher(text).replaceFirst("");
  }

  /**
   * A capacitor of which nothing more is said is electrolytic from 10 µF on: common practice, since
   * leaded ones of other kinds are hardly made so large. To take it for polarised is the safe side.
   * So is one that only the drawing of its body calls ceramic.
   */
  private static PartKind polarised(
      PartKind kind, Optional<WrittenValue> written, LineCells cells) {
    boolean large =
        written.filter(found -> found.value().asDouble() >= ELECTROLYTIC_FROM_FARADS).isPresent();
    boolean drawn =
        kind == PartKind.CERAMIC_CAPACITOR
            && cells.texts().stream()
                .noneMatch(cell -> PartKindWords.byWords(cell).filter(kind::equals).isPresent());
    return (kind == PartKind.CAPACITOR || drawn) && large ? PartKind.ELECTROLYTIC_CAPACITOR : kind;
  }

  /** Of a network of {@code 8x10k}, or {@code 10k x 8}, the value of one resistor. */
  private static String single(String value, PartKind kind) {
    return kind == PartKind.RESISTOR_NETWORK
        ? value.replaceFirst(
            "^\\d{1,2}\\s*[x×]\\s*(?=\\d)|(?<=[\\dkKMRΩ])\\s*[x×]\\s*\\d{1,2}$", "")
        : value;
  }

  /** Whether a text names a drawing symbol instead of a value. */
  public static boolean isSymbolName(String text) {
    return SYMBOL_NAME.matcher(text).matches();
  }

  private static String notUnderstood(String text, boolean symbolName, Dimension dimension) {
    if (text.isEmpty()) {
      return "the value is missing";
    }
    if (SpreadsheetDate.is(text)) {
      return "\"" + text + "\" is a date, as a spreadsheet makes of a value such as 1-2";
    }
    return symbolName
        ? "\"" + text + "\" names a drawing symbol, not a value"
        : "\""
            + text
            + "\" was not understood as "
            + (dimension == Dimension.INDUCTANCE ? "an " : "a ")
            + dimension.name().toLowerCase(Locale.ROOT);
  }
}
