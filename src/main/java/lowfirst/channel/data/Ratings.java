package lowfirst.channel.data;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import lowfirst.channel.check.Datum;
import lowfirst.channel.check.Term;
import lowfirst.part.DatasheetLine;
import lowfirst.part.TestCondition;
import lowfirst.quantity.Quantity;

/**
 * The datasheet lines of one part type, asked for one number at a time. Where several makers' lines
 * stand under one type number and none is named, the stricter rules; a maker who doesn't state a
 * number leaves it missing.
 */
public final class Ratings {
  private final String typeNumber;
  private final List<DatasheetLine> lines;
  private final List<String> makers;
  private final Map<DatasheetSymbol, List<DatasheetLine>> bySymbol =
      new EnumMap<>(DatasheetSymbol.class);

  private Ratings(String typeNumber, List<DatasheetLine> lines) {
    this.typeNumber = typeNumber;
    this.lines = lines;
    this.makers =
        lines.stream()
            .map(DatasheetLine::maker)
            .filter(maker -> !maker.isBlank())
            .distinct()
            .toList();
    for (DatasheetLine line : lines) {
      DatasheetSymbol.written(line.symbol())
          .ifPresent(
              symbol ->
                  bySymbol
                      .computeIfAbsent(symbol, first -> new ArrayList<>(2))
                      .add(plausible(symbol, line)));
    }
  }

  /**
   * The lines of a part type.
   *
   * @param bomWords everything the BOM says of it; where it names a maker, only that maker counts
   */
  public static Ratings of(String typeNumber, List<DatasheetLine> lines, String bomWords) {
    String words = bomWords.toLowerCase(Locale.ROOT);
    Predicate<DatasheetLine> named =
        line -> !line.maker().isBlank() && isNamed(line.maker().toLowerCase(Locale.ROOT), words);
    boolean anyNamed = lines.stream().anyMatch(named);
    return new Ratings(
        typeNumber, anyNamed ? lines.stream().filter(named).toList() : List.copyOf(lines));
  }

  /** What no part has is left out, and so missing. */
  private static DatasheetLine plausible(DatasheetSymbol symbol, DatasheetLine line) {
    return isPlausible(symbol, line)
        ? line
        : new DatasheetLine(
            line.partType(),
            line.maker(),
            line.symbol(),
            line.condition(),
            line.min().filter(amount -> PlausibleAmount.is(symbol, amount)),
            line.typ().filter(amount -> PlausibleAmount.is(symbol, amount)),
            line.max().filter(amount -> PlausibleAmount.is(symbol, amount)),
            line.source());
  }

  private static boolean isPlausible(DatasheetSymbol symbol, DatasheetLine line) {
    return isPlausible(symbol, line.min())
        && isPlausible(symbol, line.typ())
        && isPlausible(symbol, line.max());
  }

  private static boolean isPlausible(DatasheetSymbol symbol, Optional<Quantity> amount) {
    return amount.isEmpty() || PlausibleAmount.is(symbol, amount.get());
  }

  /** Whether words hold a maker's name as words of their own: "receiver" names no EIC. */
  private static boolean isNamed(String maker, String words) {
    for (int at = words.indexOf(maker); at >= 0; at = words.indexOf(maker, at + 1)) {
      int end = at + maker.length();
      boolean starts = at == 0 || !Character.isLetterOrDigit(words.charAt(at - 1));
      if (starts && (end == words.length() || !Character.isLetterOrDigit(words.charAt(end)))) {
        return true;
      }
    }
    return false;
  }

  /** Lines of one symbol. */
  List<DatasheetLine> about(DatasheetSymbol symbol) {
    return bySymbol.getOrDefault(symbol, List.of());
  }

  /** Every line. */
  List<DatasheetLine> lines() {
    return lines;
  }

  /** A rating: the lowest that any maker guarantees. */
  Datum limit(Term term, DatasheetSymbol symbol) {
    return limit(term, symbol, line -> true);
  }

  /** A rating from the lines that pass {@code wanted}. */
  Datum limit(Term term, DatasheetSymbol symbol, Predicate<DatasheetLine> wanted) {
    return chosen(
        term,
        symbol,
        wanted,
        line -> line.max().or(line::min),
        Comparator.comparingDouble(Datum::nominal));
  }

  /** What is promised to be no less: the lowest guaranteed minimum of the makers'. */
  Datum least(Term term, DatasheetSymbol symbol) {
    return chosen(
        term, symbol, line -> true, DatasheetLine::min, Comparator.comparingDouble(Datum::nominal));
  }

  /** A rating printed as a nominal: whichever column holds it, the lowest of the makers'. */
  Datum rated(Term term, DatasheetSymbol symbol, Predicate<DatasheetLine> wanted) {
    return chosen(
        term,
        symbol,
        wanted,
        line -> line.min().or(line::typ).or(line::max),
        Comparator.comparingDouble(Datum::nominal));
  }

  /** A number that harms: the highest guaranteed maximum of the makers'. */
  Datum harm(Term term, DatasheetSymbol symbol) {
    return harm(term, symbol, line -> true);
  }

  /** A number that harms, from the lines that pass {@code wanted}. */
  Datum harm(Term term, DatasheetSymbol symbol, Predicate<DatasheetLine> wanted) {
    return chosen(
        term,
        symbol,
        wanted,
        DatasheetLine::max,
        Comparator.comparingDouble(Datum::nominal).reversed());
  }

  /**
   * Up to which test current a maximum is promised: of each maker the highest of its lines, and of
   * the makers the lowest. A line that states none is taken as good for any.
   */
  Datum testedUpTo(Term term, DatasheetSymbol symbol, String condition) {
    var highest = new HashMap<String, Datum>();
    for (DatasheetLine line : about(symbol)) {
      if (line.max().isPresent()) {
        double amps =
            TestCondition.parse(line.condition()).value(condition).orElse(Double.POSITIVE_INFINITY);
        highest.merge(
            line.maker(),
            Datum.of(term, amps, line.source()),
            (one, other) -> one.nominal() >= other.nominal() ? one : other);
      }
    }
    return highest.isEmpty()
        ? Datum.missing(term)
        : Collections.min(highest.values(), Comparator.comparingDouble(Datum::nominal));
  }

  /** A number guaranteed between two corners; each maker's spread joined. */
  Datum between(Term term, DatasheetSymbol symbol) {
    List<DatasheetLine> both =
        about(symbol).stream()
            .filter(line -> line.min().isPresent() && line.max().isPresent())
            .toList();
    if (both.isEmpty() || silentMaker(both).isPresent()) {
      return missing(term, symbol, both);
    }
    double low = both.stream().mapToDouble(line -> amount(line.min())).min().orElseThrow();
    double high = both.stream().mapToDouble(line -> amount(line.max())).max().orElseThrow();
    return Datum.of(term, low, (low + high) / 2, high, both.get(0).source());
  }

  private Datum chosen(
      Term term,
      DatasheetSymbol symbol,
      Predicate<DatasheetLine> wanted,
      java.util.function.Function<DatasheetLine, Optional<Quantity>> column,
      Comparator<Datum> strictestFirst) {
    // A loop, not a stream: a drawer search asks this millions of times.
    var stated = new ArrayList<DatasheetLine>(2);
    Datum strictest = null;
    for (DatasheetLine line : about(symbol)) {
      if (wanted.test(line)) {
        Optional<Quantity> stands = column.apply(line);
        if (stands.isPresent()) {
          stated.add(line);
          Datum datum = Datum.of(term, stands.get().asDouble(), line.source());
          if (strictest == null || strictestFirst.compare(datum, strictest) < 0) {
            strictest = datum;
          }
        }
      }
    }
    return strictest == null || silentMaker(stated).isPresent()
        ? missing(term, symbol, stated)
        : strictest;
  }

  private Datum missing(Term term, DatasheetSymbol symbol, List<DatasheetLine> stated) {
    String where = symbol.text() + " of " + typeNumber + ": write it in datasheets.csv";
    Optional<String> silent = stated.isEmpty() ? Optional.empty() : silentMaker(stated);
    boolean typicalOnly = about(symbol).stream().anyMatch(line -> line.typ().isPresent());
    String why = "";
    if (silent.isPresent()) {
      why =
          " ("
              + silent.get()
              + "'s part doesn't state it, "
              + stated.get(0).maker()
              + "'s does: write whose yours is into the BOM's column maker)";
    } else if (typicalOnly) {
      why = ", column " + symbol.column() + " (only a typical value is there, and it can't pass)";
    }
    boolean slipped =
        lines.stream()
            .filter(line -> DatasheetSymbol.written(line.symbol()).equals(Optional.of(symbol)))
            .anyMatch(line -> !isPlausible(symbol, line));
    return Datum.missing(
        term,
        where + (slipped ? ", above zero and in its unit: what is there no part has" : "") + why);
  }

  /** A maker who doesn't state it; a line without a maker speaks for all of them. */
  Optional<String> silentMaker(List<DatasheetLine> stated) {
    if (makers.size() < 2 && !stated.isEmpty()) {
      return Optional.empty();
    }
    if (stated.stream().anyMatch(line -> line.maker().isBlank())) {
      return Optional.empty();
    }
    return makers.stream()
        .filter(maker -> stated.stream().noneMatch(line -> line.maker().equals(maker)))
        .findFirst();
  }

  /** Numbers of the lines of one symbol under a condition that must be given. */
  Stream<double[]> points(DatasheetSymbol symbol, String condition) {
    return about(symbol).stream()
        .filter(line -> TestCondition.parse(line.condition()).value(condition).isPresent())
        .filter(line -> line.max().isPresent())
        .map(
            line ->
                new double[] {
                  TestCondition.parse(line.condition()).value(condition).getAsDouble(),
                  amount(line.max())
                });
  }

  static double amount(Optional<Quantity> quantity) {
    return quantity.map(Quantity::asDouble).orElse(Double.NaN);
  }
}
