package lowfirst.intake;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lowfirst.board.Designator;
import lowfirst.board.Placement;
import lowfirst.marking.WrittenValue;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;
import lowfirst.problem.Kind;
import lowfirst.problem.Problem;
import lowfirst.problem.Reading;
import lowfirst.quantity.Dimension;

/** Tells from BOM rows what to buy: the kind, the value, the ratings, the type number. */
final class PartTypeReader {
  /** Names of drawing symbols, which some exports put where the value belongs. */
  private static final Pattern SYMBOL_NAME =
      Pattern.compile(
          "(?i)(r|c|l|d|cp|led|q)(_[a-z0-9]+)*_(small|us|eu|polari[sz]ed|device)(_[a-z0-9]+)*");

  private static final Pattern MILLI_OR_MEGA =
      Pattern.compile("(?=\\P{Ll}*$)(?=.*\\d\\s?MOHMS?(?!\\p{L})).*(?<!\\p{L})(?!MOHM)\\p{L}{3}.*");
  private static final Pattern DECIMAL_COMMA = Pattern.compile("\\d,\\d{1,2}(?!\\d)");

  /** 4.700 where decimals have a comma. */
  private static final Pattern GROUPED =
      Pattern.compile("(?<![\\d.,])[1-9]\\d{0,2}\\.\\d{3}(?![\\d.])");

  private static final Pattern HERTZ = Pattern.compile("\\d\\s?[kKmM]?[hH][zZ](?!\\p{L})");

  /** The number of a sheet of the drawing before a designator: 2.R1. */
  private static final Pattern IN_SHEET = Pattern.compile("\\d{1,3}[._:-]?([A-Z]{1,4})\\d{1,5}");

  /** A resistance in whole ohms, short enough for no maker's number. */
  private static final Pattern WHOLE_OHMS = Pattern.compile("[1-9]\\d{0,2}");

  /** No maker's number says so. */
  private static final Pattern WITH_UNIT =
      Pattern.compile("(?i)\\d\\s?[km]?\\s?(ohms?|Ω)(?!\\p{L})|\\d\\s?[pnuµ]f(?!\\p{L})");

  /** No capacitor on a board has more, but for those that stand in for a battery. */
  private static final double MOST_FARADS = 0.1;

  private static final double MOST_VOLTS_OF_SUPERCAPACITORS = 6;

  private static final Pattern SUPERCAPACITOR =
      Pattern.compile("(?i)super|ultra|gold|edlc|double.?layer|back.?up|memory");

  // Where what tells of a part stands in the list that is read: the columns, then the designators.
  static final int VALUE = 0;
  static final int DESCRIPTION = 1;
  static final int NUMBER = 2;
  static final int PACKAGE = 3;
  private static final int TOLERANCE = 4;
  private static final int VOLTAGE = 5;
  private static final int POWER = 6;
  static final int LETTERS = 7;
  static final int OTHER_TEXT = 8;

  private static final double ELECTROLYTIC_FROM_FARADS = 9.9e-6;

  private static final List<Column> TELLING =
      List.of(
          Column.VALUE,
          Column.DESCRIPTION,
          Column.PART_TYPE,
          Column.PACKAGE,
          Column.TOLERANCE,
          Column.VOLTAGE,
          Column.POWER);

  /** Rows that say the same are read once: a BOM may have a row for each of many like parts. */
  private final Map<List<String>, Read> known = new HashMap<>();

  /** A part type, and what was not understood of its value; empty when all was. */
  record Read(PartType type, String notUnderstood) {}

  private final List<Placement> placements;
  private final Map<Designator, Placement> byDesignator = new HashMap<>();
  private final boolean hasDecimalCommas;
  private boolean borrows;

  /** Values and packages that the BOM lacks are taken from {@code placements}. */
  PartTypeReader(List<TableRow> rows, List<Placement> placements) {
    this.placements = placements;
    this.hasDecimalCommas =
        rows.stream()
            .map(row -> row.text(Column.VALUE))
            .anyMatch(text -> text.indexOf(',') > 0 && DECIMAL_COMMA.matcher(text).find());
  }

  /** Whether a value or package had to be taken from the placement list. */
  boolean borrows() {
    return borrows;
  }

  /** The part type of a BOM row; adds what was not understood to {@code problems}. */
  PartType read(TableRow row, DesignatorList list, List<Problem> problems) {
    var key = new ArrayList<String>();
    TELLING.forEach(column -> key.add(cell(row, column)));
    borrow(key, list);
    key.add(letters(row, list));
    key.add(list.otherText());
    if (hasDecimalCommas
        && key.get(VALUE).indexOf('.') > 0
        && GROUPED.matcher(key.get(VALUE)).find()) {
      problems.add(
          row.problem(
              Kind.VALUE_NOT_UNDERSTOOD,
              Column.VALUE,
              "\""
                  + key.get(VALUE)
                  + "\" may be a number in thousands, since others have decimal commas",
              "write the value here, such as 4k7, 100n or 10 µH"));
      return withoutValue(read(key).type());
    }
    Read read = known.computeIfAbsent(key, PartTypeReader::read);
    if (!read.notUnderstood().isEmpty() && !FittedSigns.leaveOut(read.type().text())) {
      problems.add(
          row.problem(
              Kind.VALUE_NOT_UNDERSTOOD,
              row.has(Column.VALUE) ? Column.VALUE : Column.DESCRIPTION,
              read.notUnderstood(),
              dimension(read.type().kind()).isPresent()
                  ? "write the value here, such as 4k7, 100n or 10 µH"
                  : "write the type number here"));
    }
    return read.type();
  }

  private static PartType withoutValue(PartType type) {
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

  /** The letters of the first designator, of one that could not be read, too. */
  private static String letters(TableRow row, DesignatorList list) {
    if (!list.designators().isEmpty()) {
      Designator first = list.designators().get(0);
      Matcher inSheet = IN_SHEET.matcher(first.prefix().isEmpty() ? first.text() : "");
      return inSheet.matches() ? inSheet.group(1) : first.prefix();
    }
    String text = row.text(Column.DESIGNATORS);
    return CellShapes.isDesignators(text) ? Designator.of(text).prefix() : "";
  }

  private void borrow(List<String> cells, DesignatorList list) {
    boolean valueTold = !cells.get(VALUE).isEmpty() && !isSymbolName(cells.get(VALUE));
    boolean told = valueTold || !cells.get(DESCRIPTION).isEmpty();
    boolean lacks = !told || cells.get(PACKAGE).isEmpty();
    Placement placed =
        lacks && !list.designators().isEmpty() ? placement(list.designators().get(0)) : null;
    if (placed == null) {
      return;
    }
    if (!told && !placed.valueText().isEmpty() && !isSymbolName(placed.valueText())) {
      cells.set(VALUE, placed.valueText());
      borrows = true;
    }
    if (cells.get(PACKAGE).isEmpty() && !placed.packageText().isEmpty()) {
      cells.set(PACKAGE, placed.packageText());
      borrows = true;
    }
  }

  /** The first placement of a designator; an index of them is made when the first is asked for. */
  private Placement placement(Designator designator) {
    if (byDesignator.isEmpty()) {
      placements.forEach(placed -> byDesignator.putIfAbsent(placed.designator(), placed));
    }
    return byDesignator.get(designator);
  }

  /** Whether a text names a drawing symbol instead of a value. */
  static boolean isSymbolName(String text) {
    return SYMBOL_NAME.matcher(text).matches();
  }

  /** The cell, or nothing where it only says that there is nothing. */
  private static String cell(TableRow row, Column column) {
    String text = row.text(column);
    if (Cells.isNone(text)) {
      return "";
    }
    return column == Column.POWER || column == Column.TOLERANCE
        ? RatingCells.withUnit(text, row.headerOf(column))
        : text;
  }

  private static Read read(List<String> cells) {
    String value = cells.get(VALUE);
    String description = cells.get(DESCRIPTION);
    boolean symbolName = isSymbolName(value);
    PartKind likely = KindOfLine.of(cells);
    Optional<Dimension> dimension = dimension(likely);
    Optional<WrittenValue> stated =
        dimension.flatMap(
            measured ->
                written(symbolName ? "" : single(value, likely), description, measured)
                    .or(() -> inProse(cells.get(OTHER_TEXT), measured)));
    Optional<WrittenValue> numbered =
        stated.isPresent()
            ? Optional.empty()
            : dimension.flatMap(measured -> inNumber(cells.get(NUMBER), measured));
    Optional<WrittenValue> written = stated.or(() -> numbered);
    String number = numbered.isPresent() ? "" : cells.get(NUMBER);
    PartKind kind = polarised(likely, written);
    String text =
        numbered.isPresent()
            ? cells.get(NUMBER)
            : !value.isEmpty() ? value : !description.isEmpty() ? description : number;
    if (text.isEmpty()) {
      text = cells.get(OTHER_TEXT);
    }
    boolean typeNumbered = written.isEmpty() && dimension.isEmpty() && !symbolName;
    var type =
        new PartType(
            kind,
            symbolName && written.isPresent() ? description : text,
            written.map(WrittenValue::value),
            RatingCells.tolerance(cells.get(TOLERANCE))
                .or(() -> written.flatMap(WrittenValue::tolerance)),
            RatingCells.voltage(cells.get(VOLTAGE))
                .or(() -> written.flatMap(WrittenValue::voltage)),
            RatingCells.power(cells.get(POWER)).or(() -> written.flatMap(WrittenValue::power)),
            number.isEmpty() && typeNumbered ? typeNumber(text) : number,
            cells.get(PACKAGE).isEmpty() ? DescriptionWords.packageIn(text) : cells.get(PACKAGE));
    if (isTooLarge(type, description)) {
      return new Read(
          withoutValue(type),
          "\""
              + type.value().orElseThrow()
              + "\" is more than a capacitor on a board has, unless it stands in for a battery; a"
              + " sign such as µ may be lost");
    }
    boolean missing = dimension.isPresent() && written.isEmpty() && number.isEmpty();
    if (dimension.isEmpty() && kind.isPolarised() && (text + number).isEmpty()) {
      return new Read(type, "nothing says which " + kind.words() + " this is");
    }
    return new Read(type, missing ? notUnderstood(text, symbolName, dimension.get()) : "");
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

  /** Some write the value where the maker's number belongs: 24k, 100n, 330. */
  private static Optional<WrittenValue> inNumber(String number, Dimension measured) {
    boolean ohms = measured == Dimension.RESISTANCE && WHOLE_OHMS.matcher(number).matches();
    return WrittenValue.parse(number, Optional.of(measured))
        .value()
        .filter(found -> found.leftover().isEmpty() || WITH_UNIT.matcher(number).find())
        .filter(found -> ohms || WrittenValue.showsUnit(number, measured));
  }

  private static String typeNumber(String text) {
    return DescriptionWords.typeNumberIn(text).orElse(text);
  }

  /**
   * A capacitor of which nothing more is said is electrolytic from 10 µF on: common practice, since
   * leaded ones of other kinds are hardly made so large. To take it for polarised is the safe side.
   */
  private static PartKind polarised(PartKind kind, Optional<WrittenValue> written) {
    boolean large =
        written.filter(found -> found.value().asDouble() >= ELECTROLYTIC_FROM_FARADS).isPresent();
    return kind == PartKind.CAPACITOR && large ? PartKind.ELECTROLYTIC_CAPACITOR : kind;
  }

  /** Of a network of {@code 8x10k}, the value of one resistor. */
  private static String single(String value, PartKind kind) {
    return kind == PartKind.RESISTOR_NETWORK
        ? value.replaceFirst("^\\d{1,2}\\s*[x×]\\s*(?=\\d)", "")
        : value;
  }

  /** The value with its ratings, which may stand in the description; the value may, too. */
  private static Optional<WrittenValue> written(
      String value, String description, Dimension measured) {
    Optional<Dimension> expected = Optional.of(measured);
    Reading<WrittenValue> own =
        WrittenValue.parse(isMilliOrMega(value, measured) ? "" : value, expected);
    if (description.isEmpty() || value.equals(description)) {
      return own.value();
    }
    if (!own.isRead() && isMilliOrMega(description, measured)) {
      return Optional.empty();
    }
    if (!own.isRead()) {
      return inProse(description, measured)
          .or(() -> inProse(DescriptionWords.withoutMeasures(description), measured));
    }
    Optional<WrittenValue> both = WrittenValue.parse(value + " ; " + description, expected).value();
    WrittenValue alone = own.orThrow();
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

  private static Optional<WrittenValue> inProse(String text, Dimension measured) {
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

  /** What the value of a kind measures, if it has one. */
  static Optional<Dimension> dimension(PartKind kind) {
    if (kind.isCapacitor()) {
      return Optional.of(Dimension.CAPACITANCE);
    }
    return switch (kind) {
      case RESISTOR, RESISTOR_NETWORK, TRIMMER, POTENTIOMETER -> Optional.of(Dimension.RESISTANCE);
      case INDUCTOR -> Optional.of(Dimension.INDUCTANCE);
      case CRYSTAL, RESONATOR -> Optional.of(Dimension.FREQUENCY);
      default -> Optional.empty();
    };
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
        : "\"" + text + "\" was not understood as a " + dimension.name().toLowerCase(Locale.ROOT);
  }
}
