package lowfirst.channel.data;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lowfirst.channel.check.Datum;
import lowfirst.channel.check.Role;
import lowfirst.channel.check.Term;
import lowfirst.channel.formula.FuseFamily;
import lowfirst.channel.formula.HotFactor;
import lowfirst.channel.formula.OnResistance;
import lowfirst.channel.formula.SafeArea;
import lowfirst.channel.formula.TransientImpedance;
import lowfirst.part.DatasheetLine;
import lowfirst.part.PartType;
import lowfirst.part.RatedTemperature;
import lowfirst.part.TestCondition;
import lowfirst.quantity.Source;

/** Finds what a channel needs to know of its fuse, in a datasheet or in the BOM. */
public final class FuseReader {
  /** 6.3 A, T6.3A, 500 mA, T3.15AL250V and, with the unit in place of the point, T6A3. */
  private static final Pattern AMPERES =
      Pattern.compile(
          "(?i)(?:(?<![A-Z0-9.,])|(?<=(?<![A-Z0-9])(?:TT?|FF?|M)))(\\d+)(?:"
              + "A(\\d{1,2})(?=[LHE]?(?![A-Z0-9])|[LHE]\\d)"
              + "|(?:[.,](\\d+))?\\s*(m?)A(?:(?![A-Z])|(?=[LHE]\\d)))");

  /** How BOMs word a PTC thermistor that resets; plain PTC, too, in the place of a fuse. */
  private static final Pattern RESETTABLE =
      Pattern.compile("(?i)\\bp?ptc\\b|poly[ -]?fuse|re-?settable|self[ -]?(?:reset|recover|heal)");

  private FuseReader() {}

  static PartData fuse(String name, PartType type, Ratings ratings, String bomWords) {
    var data = new ArrayList<Datum>();
    Datum rated = ratings.rated(Term.FUSE_RATING, DatasheetSymbol.IN, line -> true);
    data.add(rated.isKnown() ? rated : ratingInWords(rated, type, bomWords));
    data.add(
        ratings.rated(
            Term.FUSE_VOLTAGE,
            DatasheetSymbol.VN,
            line -> TestCondition.parse(line.condition()).says("DC")));
    data.add(
        ratings.rated(
            Term.FUSE_BREAKING,
            DatasheetSymbol.BREAKING,
            line -> TestCondition.parse(line.condition()).says("DC")));
    data.add(ratings.rated(Term.FUSE_MELTING, DatasheetSymbol.I2T, line -> true));
    data.addAll(opening(ratings));
    Optional<HoldCurrent> hold = hold(name, type, ratings, bomWords);
    if (hold.isPresent()) {
      data.add(ratings.harm(Term.FUSE_TRIP, DatasheetSymbol.ITRIP));
    }
    String words =
        (bomWords
                + " "
                + ratings.about(DatasheetSymbol.FAMILY).stream()
                    .map(DatasheetLine::condition)
                    .reduce("", (a, b) -> a + " " + b))
            .toUpperCase(Locale.ROOT);
    FuseFamily family = FuseFamily.UNSTATED;
    boolean ul = words.contains("UL 248") || words.contains("UL248");
    boolean iec = words.contains("60127");
    if (ul != iec) {
      family = ul ? FuseFamily.UL_248_14 : FuseFamily.IEC_60127;
    }
    return new PartData(
        Role.FUSE,
        name,
        type.kind(),
        data,
        OnResistance.unknown(),
        HotFactor.DEFAULT,
        TransientImpedance.unknown(),
        SafeArea.unknown(),
        family,
        hold);
  }

  /** How long it may take to open, and from which current on: of several the shortest. */
  private static List<Datum> opening(Ratings ratings) {
    List<DatasheetLine> stated =
        ratings.about(DatasheetSymbol.TOPEN).stream()
            .filter(line -> line.max().isPresent() && openingAmps(line).isPresent())
            .sorted(Comparator.comparingDouble(line -> Ratings.amount(line.max())))
            .toList();
    boolean isOneMakers = stated.stream().map(DatasheetLine::maker).distinct().count() == 1;
    if (!isOneMakers || ratings.silentMaker(stated).isPresent()) {
      return List.of(Datum.missing(Term.FUSE_OPENING), Datum.missing(Term.FUSE_OPENING_CURRENT));
    }
    DatasheetLine soonest = stated.get(0);
    return List.of(
        Datum.of(Term.FUSE_OPENING, Ratings.amount(soonest.max()), soonest.source()),
        Datum.of(Term.FUSE_OPENING_CURRENT, openingAmps(soonest).getAsDouble(), soonest.source()));
  }

  private static OptionalDouble openingAmps(DatasheetLine line) {
    return TestCondition.parse(line.condition()).value("I");
  }

  /** What it holds, where the BOM or a datasheet says that it is a resettable one. */
  private static Optional<HoldCurrent> hold(
      String name, PartType type, Ratings ratings, String bomWords) {
    List<DatasheetLine> stated = ratings.about(DatasheetSymbol.IHOLD);
    boolean isResettable =
        !stated.isEmpty()
            || !ratings.about(DatasheetSymbol.ITRIP).isEmpty()
            || RESETTABLE.matcher(bomWords).find()
            || ratings.lines().stream().anyMatch(FuseReader::saysResettable);
    if (!isResettable) {
      return Optional.empty();
    }
    if (stated.isEmpty()) {
      Datum worded = ratingInWords(Datum.missing(Term.FUSE_RATING), type, bomWords);
      return Optional.of(
          new HoldCurrent(
              name,
              worded.isKnown()
                  ? List.of(point(HoldCurrent.UNSTATED_CELSIUS, worded.low(), worded.source()))
                  : List.of()));
    }
    boolean known = ratings.silentMaker(stated).isEmpty();
    return Optional.of(
        new HoldCurrent(
            name, known ? stated.stream().flatMap(FuseReader::points).toList() : List.of()));
  }

  private static boolean saysResettable(DatasheetLine line) {
    return (line.symbol().equals(DatasheetSymbol.FAMILY.text()) || line.symbol().equals("kind"))
        && RESETTABLE.matcher(line.condition()).find();
  }

  private static Stream<HoldCurrent.Point> points(DatasheetLine line) {
    double air =
        RatedTemperature.in(TestCondition.parse(line.condition()))
            .filter(RatedTemperature::isOfAir)
            .map(RatedTemperature::celsius)
            .orElse(HoldCurrent.UNSTATED_CELSIUS);
    return line.min().or(line::typ).or(line::max).stream()
        .map(amps -> point(air, amps.asDouble(), line.source()));
  }

  private static HoldCurrent.Point point(double air, double amps, Source source) {
    return new HoldCurrent.Point(air, amps, source);
  }

  /** What a holder or a clip bears. */
  public static Datum holder(String name, PartType type, Ratings ratings, String bomWords) {
    Datum absent =
        Datum.missing(
            Term.FUSE_HOLDER,
            "rating of the fuse holder " + name + ", in amperes: write it in the BOM");
    Datum rated = ratings.rated(Term.FUSE_HOLDER, DatasheetSymbol.IN, line -> true);
    return rated.isKnown() ? rated : ratingInWords(absent, type, bomWords);
  }

  private static Datum ratingInWords(Datum absent, PartType type, String bomWords) {
    for (String words : List.of(type.text(), type.typeNumber(), bomWords)) {
      Matcher found = AMPERES.matcher(words);
      if (found.find()) {
        String part = found.group(2) == null ? found.group(3) : found.group(2);
        double amps = Double.parseDouble(found.group(1) + "." + (part == null ? "0" : part));
        double scale = "m".equalsIgnoreCase(found.group(4)) ? 1e-3 : 1;
        return Datum.of(
            absent.term(), amps * scale, Source.kit("the BOM: \"" + found.group() + "\""));
      }
    }
    return absent;
  }
}
