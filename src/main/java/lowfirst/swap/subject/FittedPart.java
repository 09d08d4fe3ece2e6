package lowfirst.swap.subject;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lowfirst.marking.WrittenValue;
import lowfirst.part.DatasheetLine;
import lowfirst.part.Datasheets;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Tolerance;

/**
 * The part type that a text names as a substitute: a type number that some datasheet line is about,
 * or a value with its ratings. The text is read in the light of the part it would replace, so that
 * {@code 4k7} is a resistor for a resistor. A maker in brackets picks that maker's lines: {@code
 * IRF540N (Intersil)}.
 */
public final class FittedPart {
  private static final Pattern WITH_MAKER = Pattern.compile("(.+?)\\s*\\(([^()]+)\\)\\s*");
  private static final Pattern PITCHED =
      Pattern.compile("(?i)\\bP\\s?\\d+(?:\\.\\d+)?|\\bDI[LP][- ]?\\d+|\\bTO-?\\d+\\w*");

  /** A symbol that only one kind of part has, for datasheet rows that state no kind. */
  private static final Map<String, PartKind> TELLING =
      Map.of(
          "VDS", PartKind.MOSFET,
          "RDSon", PartKind.MOSFET,
          "VRRM", PartKind.DIODE,
          "VZ", PartKind.ZENER_DIODE,
          "CTR", PartKind.OPTOCOUPLER,
          "hFE", PartKind.BIPOLAR_TRANSISTOR,
          "characteristic", PartKind.FUSE,
          "Ihold", PartKind.FUSE,
          "VO", PartKind.REGULATOR);

  private static final Map<String, PartKind> BY_WORDS =
      Stream.of(PartKind.values())
          .collect(
              Collectors.toMap(
                  kind -> kind.words().toLowerCase(Locale.ROOT), kind -> kind, (a, b) -> a));

  private FittedPart() {}

  /** The part type that {@code text} names in place of {@code asked}. */
  public static PartType of(String text, PartType asked, Datasheets datasheets) {
    return of(text, asked, linesAbout(text, datasheets));
  }

  /** The same, where the datasheet lines about it have been found already. */
  public static PartType of(String text, PartType asked, List<DatasheetLine> lines) {
    return lines.isEmpty() ? byWords(text, asked) : byLines(text, asked, lines);
  }

  /** The lines about a part type; where the text names a maker, only that maker's. */
  public static List<DatasheetLine> linesAbout(String text, Datasheets datasheets) {
    List<DatasheetLine> exact = datasheets.about(text);
    Matcher named = WITH_MAKER.matcher(text);
    if (!exact.isEmpty() || !named.matches()) {
      return exact;
    }
    return datasheets.about(named.group(1)).stream()
        .filter(line -> isMaker(line.maker(), named.group(2)))
        .toList();
  }

  private static boolean isMaker(String maker, String written) {
    return !maker.isBlank()
        && maker.toLowerCase(Locale.ROOT).contains(written.strip().toLowerCase(Locale.ROOT));
  }

  /** What its lines lack, a text that begins with a value says itself. */
  private static PartType byLines(String text, PartType asked, List<DatasheetLine> lines) {
    Optional<PartType> worded =
        Optional.of(byWords(text, asked)).filter(words -> Character.isDigit(text.charAt(0)));
    return new PartType(
        kind(lines).orElse(asked.kind()),
        text,
        amount(lines, "R")
            .or(() -> amount(lines, "C"))
            .or(() -> amount(lines, "L"))
            .or(() -> worded.flatMap(PartType::value)),
        tolerance(lines).or(() -> worded.flatMap(PartType::tolerance)),
        amount(lines, "Vrated").or(() -> worded.flatMap(PartType::ratedVoltage)),
        worded.flatMap(PartType::ratedPower),
        text,
        word(lines, "package").orElse(""));
  }

  /** The kind that the lines say, if they say one. */
  public static Optional<PartKind> kind(List<DatasheetLine> lines) {
    Optional<String> stated = word(lines, "kind");
    if (stated.isPresent()) {
      PartKind kind = BY_WORDS.get(stated.get().strip().toLowerCase(Locale.ROOT));
      if (kind != null) {
        return Optional.of(kind);
      }
    }
    for (DatasheetLine line : lines) {
      if (TELLING.containsKey(line.symbol())) {
        return Optional.of(TELLING.get(line.symbol()));
      }
    }
    return Optional.empty();
  }

  private static Optional<String> word(List<DatasheetLine> lines, String symbol) {
    for (DatasheetLine line : lines) {
      if (line.symbol().equals(symbol) && !line.condition().isBlank()) {
        return Optional.of(line.condition());
      }
    }
    return Optional.empty();
  }

  private static Optional<Quantity> amount(List<DatasheetLine> lines, String symbol) {
    for (DatasheetLine line : lines) {
      if (line.symbol().equals(symbol)) {
        return line.typ().or(line::max).or(line::min);
      }
    }
    return Optional.empty();
  }

  /** A tolerance as a datasheet row writes it: ±10 %, or -20/+80 %. */
  private static Optional<Tolerance> tolerance(List<DatasheetLine> lines) {
    return word(lines, "tolerance")
        .flatMap(
            text -> WrittenValue.parse("1F " + text, Optional.of(Dimension.CAPACITANCE)).value())
        .flatMap(WrittenValue::tolerance);
  }

  private static PartType byWords(String text, PartType asked) {
    PartKind kind = kindInWords(text, asked.kind());
    Optional<WrittenValue> written =
        dimension(kind)
            .flatMap(measured -> WrittenValue.parse(text, Optional.of(measured)).value());
    boolean resized =
        PITCHED.matcher(text).find()
            || written.flatMap(WrittenValue::power).isPresent()
                && !written.flatMap(WrittenValue::power).equals(asked.ratedPower());
    return new PartType(
        kind,
        text,
        written.map(WrittenValue::value),
        written.flatMap(WrittenValue::tolerance),
        written.flatMap(WrittenValue::voltage),
        written.flatMap(WrittenValue::power),
        dimension(kind).isPresent() ? "" : text,
        resized || kind != asked.kind() ? packageIn(text) : asked.packageName());
  }

  private static String packageIn(String text) {
    Matcher matcher = PITCHED.matcher(text);
    return matcher.find() ? matcher.group() : "";
  }

  private static PartKind kindInWords(String text, PartKind asked) {
    String words = text.toLowerCase(Locale.ROOT);
    if (asked.isCapacitor()) {
      if (words.contains("electrolytic") || words.contains("alumin")) {
        return PartKind.ELECTROLYTIC_CAPACITOR;
      }
      if (words.contains("tantal")) {
        return PartKind.TANTALUM_CAPACITOR;
      }
      if (words.matches(".*\\b(x[5-8][rstu]|c0g|cog|np0|npo|y5[vut]|z5u|ceramic)\\b.*")) {
        return PartKind.CERAMIC_CAPACITOR;
      }
      if (words.matches(".*\\b(film|polyester|polypropylene|mk[tps]\\d?)\\b.*")) {
        return PartKind.FILM_CAPACITOR;
      }
    }
    if (asked.isDiode() && words.matches(".*\\bled\\b.*")) {
      return PartKind.LED;
    }
    if (asked.isDiode() && words.contains("schottky")) {
      return PartKind.SCHOTTKY_DIODE;
    }
    return asked;
  }

  /** What the value of a kind measures, where values are compared as amounts. */
  public static Optional<Dimension> dimension(PartKind kind) {
    return kind.measures().filter(measured -> measured != Dimension.FREQUENCY);
  }
}
