package lowfirst.channel;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lowfirst.part.DatasheetLine;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Source;

/**
 * What a channel's checks need to know of one part, found once and then used as often as wanted: in
 * place of another by {@link ChannelInputs#with(PartData)}.
 */
public final class PartData {

  /** The place of a part in a channel. */
  public enum Role {
    SWITCH,
    GATE_RESISTOR,
    PULL_DOWN,
    FLYBACK_DIODE,
    FUSE,
    /** A driver that carries the load itself. */
    STAGE
  }

  private static final Pattern AMPERES =
      Pattern.compile("(?i)(?<![A-Z0-9.,])(\\d+(?:[.,]\\d+)?)\\s*(m?)A(?![A-Z0-9])");
  private static final double RATIO_READING_ERROR = 0.05;
  private static final String RESISTOR_TOLERANCE = "5 %";

  private final Role role;
  private final String name;
  private final PartKind kind;
  private final List<Datum> data;
  private final OnResistance onResistance;
  private final HotFactor hotFactor;
  private final TransientImpedance impedance;
  private final SafeArea safeArea;
  private final FuseFamily family;

  private PartData(
      Role role,
      String name,
      PartKind kind,
      List<Datum> data,
      OnResistance onResistance,
      HotFactor hotFactor,
      TransientImpedance impedance,
      SafeArea safeArea,
      FuseFamily family) {
    this.role = role;
    this.name = name;
    this.kind = kind;
    this.data = List.copyOf(data);
    this.onResistance = onResistance;
    this.hotFactor = hotFactor;
    this.impedance = impedance;
    this.safeArea = safeArea;
    this.family = family;
  }

  /**
   * What is known of a part in a role.
   *
   * @param lines the datasheet lines about it, of one maker or of several
   * @param bomWords everything that the BOM says of it; may name the maker
   */
  public static PartData of(Role role, PartType type, List<DatasheetLine> lines, String bomWords) {
    String name = type.typeNumber().isBlank() ? type.text() : type.typeNumber();
    Ratings ratings = Ratings.of(name, lines, bomWords);
    return switch (role) {
      case SWITCH, STAGE -> switching(role, name, switchKind(role, type.kind()), ratings);
      case FLYBACK_DIODE -> diode(name, type.kind(), ratings);
      case FUSE -> fuse(name, type, ratings, bomWords);
      case GATE_RESISTOR ->
          resistor(role, Term.GATE_RESISTOR, Term.GATE_RESISTOR_RATING, name, type);
      case PULL_DOWN -> resistor(role, Term.PULL_DOWN, Term.PULL_DOWN_RATING, name, type);
    };
  }

  /** In the place of a MOSFET a part of unknown kind counts as one. */
  private static PartKind switchKind(Role role, PartKind kind) {
    return switch (kind) {
      case BIPOLAR_TRANSISTOR, DRIVER_ARRAY, OPTOCOUPLER -> kind;
      default -> role == Role.SWITCH ? PartKind.MOSFET : PartKind.INTEGRATED_CIRCUIT;
    };
  }

  private static PartData plain(Role role, String name, PartKind kind, List<Datum> data) {
    return new PartData(
        role,
        name,
        kind,
        data,
        OnResistance.unknown(),
        HotFactor.DEFAULT,
        TransientImpedance.unknown(),
        SafeArea.unknown(),
        FuseFamily.UNSTATED);
  }

  private static PartData switching(Role role, String name, PartKind kind, Ratings ratings) {
    var data = new ArrayList<Datum>();
    data.add(ratings.harm(Term.RTH_AIR, DatasheetSymbol.RTHJA));
    data.add(ratings.harm(Term.RTH_CASE, DatasheetSymbol.RTHJC));
    data.add(ratings.limit(Term.JUNCTION_RATING, DatasheetSymbol.TJ));
    if (kind != PartKind.MOSFET) {
      data.add(ratings.limit(Term.DRAIN_RATING, DatasheetSymbol.VCEO));
      data.add(ratings.limit(Term.DRAIN_CURRENT_RATING, DatasheetSymbol.IC));
      data.add(ratings.limit(Term.TOTAL_CURRENT_RATING, DatasheetSymbol.ICTOTAL));
      data.add(ratings.harm(Term.BASE_VOLTAGE, DatasheetSymbol.VBESAT));
      data.add(forcedGain(ratings, name));
      data.add(
          kind == PartKind.INTEGRATED_CIRCUIT
              ? ratings.harm(Term.SATURATION, DatasheetSymbol.VSINK)
              : ratings.harm(Term.SATURATION, DatasheetSymbol.VCESAT));
      return plain(role, name, kind, data);
    }
    data.add(ratings.limit(Term.DRAIN_RATING, DatasheetSymbol.VDS));
    data.add(ratings.limit(Term.GATE_RATING, DatasheetSymbol.VGS));
    data.add(ratings.limit(Term.DRAIN_CURRENT_RATING, DatasheetSymbol.ID));
    Datum pulsed = ratings.limit(Term.PULSE_CURRENT_RATING, DatasheetSymbol.IDM);
    data.add(
        pulsed.isKnown() ? pulsed : ratings.limit(Term.PULSE_CURRENT_RATING, DatasheetSymbol.ID));
    Datum threshold = ratings.between(Term.THRESHOLD, DatasheetSymbol.VGSTH);
    data.add(threshold);
    data.add(plateau(ratings, threshold));
    data.add(
        ratings.about(DatasheetSymbol.QGS).isEmpty()
            ? noCharge()
            : ratings.harm(Term.GATE_SOURCE_CHARGE, DatasheetSymbol.QGS));
    Datum miller = ratings.harm(Term.MILLER_CHARGE, DatasheetSymbol.QGD);
    data.add(miller.isKnown() ? miller : ratings.harm(Term.MILLER_CHARGE, DatasheetSymbol.QG));
    data.add(outputCapacitance(ratings));
    data.add(ratings.limit(Term.AVALANCHE_RATING, DatasheetSymbol.EAS));
    data.add(avalancheCurrent(ratings, name));
    data.add(ratings.limit(Term.REPETITIVE_RATING, DatasheetSymbol.EAR));
    OnResistance onResistance = onResistance(ratings);
    data.add(resistanceSpread(onResistance));
    return new PartData(
        role,
        name,
        kind,
        data,
        onResistance,
        hotFactor(ratings),
        impedance(ratings),
        safeArea(ratings),
        FuseFamily.UNSTATED);
  }

  /** Builds lie between the typical resistance and the maximum; checks take the maximum. */
  private static Datum resistanceSpread(OnResistance onResistance) {
    double least =
        onResistance.lines().stream()
            .mapToDouble(line -> line.typicalOhms() / line.maxOhms())
            .min()
            .orElse(1);
    return Datum.of(
        Term.ON_RESISTANCE_FACTOR, least, 1, 1, Source.computed("typical to maximum RDSon"));
  }

  /** Without QGS the whole QG counts as Miller charge, which is the slower. */
  private static Datum noCharge() {
    return Datum.of(
        Term.GATE_SOURCE_CHARGE, 0, Source.computed("counted within QGD or QG, which is given"));
  }

  private static Datum plateau(Ratings ratings, Datum threshold) {
    Datum given = ratings.between(Term.PLATEAU, DatasheetSymbol.VGSPL);
    if (given.isKnown() || !threshold.isKnown()) {
      return given;
    }
    return Datum.of(
        Term.PLATEAU,
        threshold.low(),
        threshold.nominal() + 0.75,
        threshold.high() + 1.5,
        Source.assumed("from VGSth min to 1.5 V above VGSth max", "datasheets.csv VGSpl"));
  }

  private static Datum outputCapacitance(Ratings ratings) {
    return ratings.about(DatasheetSymbol.COSS).stream()
        .flatMap(
            line ->
                line.max().or(line::typ).stream()
                    .map(c -> Datum.of(Term.OUTPUT_CAPACITANCE, c.asDouble(), line.source())))
        .max(java.util.Comparator.comparingDouble(Datum::nominal))
        .orElse(
            Datum.of(Term.OUTPUT_CAPACITANCE, 1e-9, Source.assumed("1 nF", "datasheets.csv Coss")));
  }

  private static Datum avalancheCurrent(Ratings ratings, String name) {
    return ratings.about(DatasheetSymbol.EAS).stream()
        .flatMap(
            line -> {
              TestCondition condition = TestCondition.parse(line.condition());
              OptionalDouble amps =
                  condition.value("IAS").isPresent()
                      ? condition.value("IAS")
                      : condition.value("ID");
              return amps.isPresent()
                  ? Stream.of(
                      Datum.of(Term.AVALANCHE_CURRENT_RATING, amps.getAsDouble(), line.source()))
                  : Stream.empty();
            })
        .min(java.util.Comparator.comparingDouble(Datum::nominal))
        .orElse(
            Datum.missing(
                Term.AVALANCHE_CURRENT_RATING,
                "IAS of " + name + ": write it in datasheets.csv, condition of EAS (IAS=...)"));
  }

  private static Datum forcedGain(Ratings ratings, String name) {
    return ratings.about(DatasheetSymbol.VCESAT).stream()
        .flatMap(
            line -> {
              TestCondition condition = TestCondition.parse(line.condition());
              OptionalDouble out = condition.value("IC");
              OptionalDouble in =
                  condition.value("IB").isPresent() ? condition.value("IB") : condition.value("IF");
              return out.isPresent() && in.isPresent() && in.getAsDouble() > 0
                  ? Stream.of(
                      Datum.of(
                          Term.FORCED_GAIN_RATING,
                          out.getAsDouble() / in.getAsDouble(),
                          line.source()))
                  : Stream.empty();
            })
        .min(java.util.Comparator.comparingDouble(Datum::nominal))
        .orElse(
            Datum.missing(
                Term.FORCED_GAIN_RATING,
                "VCEsat of " + name + " with its IC= and IB= or IF=: write it in datasheets.csv"));
  }

  private static OnResistance onResistance(Ratings ratings) {
    var lines = new ArrayList<OnResistance.Line>();
    var used = new ArrayList<DatasheetLine>();
    for (DatasheetLine line : ratings.about(DatasheetSymbol.RDSON)) {
      TestCondition condition = TestCondition.parse(line.condition());
      OptionalDouble gate = condition.value("VGS");
      boolean cold = condition.value("TJ").orElse(25) <= 25;
      if (gate.isPresent() && cold && line.max().isPresent()) {
        used.add(line);
        double max = line.max().get().asDouble();
        double typical = line.typ().map(Quantity::asDouble).orElse(max);
        lines.add(
            new OnResistance.Line(
                line.maker(),
                gate.getAsDouble(),
                condition.value("ID").orElse(Double.POSITIVE_INFINITY),
                max,
                typical,
                line.source()));
      }
    }
    boolean allMakers = ratings.silentMaker(used).isEmpty();
    return allMakers ? OnResistance.of(lines) : OnResistance.unknown();
  }

  private static HotFactor hotFactor(Ratings ratings) {
    var points = new ArrayList<HotFactor.Point>();
    Source source = HotFactor.DEFAULT.source();
    for (DatasheetLine line : ratings.about(DatasheetSymbol.RDSON_RATIO)) {
      OptionalDouble at = TestCondition.parse(line.condition()).value("TJ");
      Optional<Double> factor =
          line.max()
              .map(Quantity::asDouble)
              .or(() -> line.typ().map(typ -> typ.asDouble() + RATIO_READING_ERROR));
      if (at.isPresent() && factor.isPresent()) {
        points.add(new HotFactor.Point(at.getAsDouble(), factor.get()));
        source = line.source();
      }
    }
    for (DatasheetLine hot : ratings.about(DatasheetSymbol.RDSON)) {
      TestCondition condition = TestCondition.parse(hot.condition());
      double at = condition.value("TJ").orElse(25);
      OptionalDouble cold = coldTwin(ratings, condition);
      if (at > 25 && cold.isPresent() && hot.max().isPresent()) {
        points.add(new HotFactor.Point(at, hot.max().get().asDouble() / cold.getAsDouble()));
        source = hot.source();
      }
    }
    return HotFactor.of(worstOf(points), source);
  }

  /** Where several makers or lines give a factor at one temperature, the largest. */
  private static List<HotFactor.Point> worstOf(List<HotFactor.Point> points) {
    var worst = new java.util.TreeMap<Double, Double>();
    points.forEach(point -> worst.merge(point.celsius(), point.factor(), Math::max));
    return worst.entrySet().stream()
        .map(entry -> new HotFactor.Point(entry.getKey(), entry.getValue()))
        .toList();
  }

  private static OptionalDouble coldTwin(Ratings ratings, TestCondition hot) {
    return ratings.about(DatasheetSymbol.RDSON).stream()
        .filter(
            line -> {
              TestCondition cold = TestCondition.parse(line.condition());
              return cold.value("TJ").orElse(25) <= 25
                  && cold.value("VGS").equals(hot.value("VGS"))
                  && line.max().isPresent();
            })
        .mapToDouble(line -> line.max().orElseThrow().asDouble())
        .min();
  }

  private static TransientImpedance impedance(Ratings ratings) {
    var resistances = new ArrayList<Double>();
    var times = new ArrayList<Double>();
    for (int i = 1; ; i++) {
      OptionalDouble resistance = numbered(ratings, "Rth" + i);
      OptionalDouble time = numbered(ratings, "tau" + i);
      if (resistance.isEmpty() || time.isEmpty()) {
        break;
      }
      resistances.add(resistance.getAsDouble());
      times.add(time.getAsDouble());
    }
    if (!resistances.isEmpty()) {
      return TransientImpedance.foster(
          resistances.stream().mapToDouble(Double::doubleValue).toArray(),
          times.stream().mapToDouble(Double::doubleValue).toArray());
    }
    return TransientImpedance.points(
        ratings
            .points(DatasheetSymbol.ZTHJC, "t")
            .sorted(java.util.Comparator.comparingDouble(point -> point[0]))
            .toList());
  }

  private static OptionalDouble numbered(Ratings ratings, String symbol) {
    return ratings.lines().stream()
        .filter(line -> line.symbol().equals(symbol))
        .flatMap(line -> line.max().or(line::typ).or(line::min).stream())
        .mapToDouble(Quantity::asDouble)
        .findFirst();
  }

  private static SafeArea safeArea(Ratings ratings) {
    return new SafeArea(
        ratings.about(DatasheetSymbol.SOA).stream()
            .filter(line -> line.max().isPresent())
            .flatMap(
                line -> {
                  TestCondition condition = TestCondition.parse(line.condition());
                  OptionalDouble volts = condition.value("VDS");
                  OptionalDouble seconds = condition.value("t");
                  return volts.isPresent() && seconds.isPresent()
                      ? Stream.of(
                          new SafeArea.Point(
                              volts.getAsDouble(),
                              seconds.getAsDouble(),
                              line.max().get().asDouble()))
                      : Stream.empty();
                })
            .toList());
  }

  private static PartData diode(String name, PartKind kind, Ratings ratings) {
    var data = new ArrayList<Datum>();
    data.add(ratings.limit(Term.DIODE_REVERSE_RATING, DatasheetSymbol.VRRM));
    Datum average = ratings.limit(Term.DIODE_AVERAGE_RATING, DatasheetSymbol.IFAV);
    data.add(average);
    Datum ratingAir = ratingAir(ratings, name);
    data.add(ratingAir);
    Datum peak = ratings.limit(Term.DIODE_PEAK_RATING, DatasheetSymbol.IFRM);
    data.add(peak.isKnown() ? peak : impliedPeak(average));
    Datum forward = ratings.harm(Term.DIODE_FORWARD, DatasheetSymbol.VF);
    data.add(
        forward.isKnown()
            ? Datum.of(
                Term.DIODE_FORWARD,
                Math.min(0.4, forward.high()),
                forward.high(),
                forward.high(),
                forward.source())
            : forward);
    Datum junction = ratings.limit(Term.DIODE_JUNCTION_RATING, DatasheetSymbol.TJ);
    data.add(junction);
    Datum resistance = ratings.harm(Term.DIODE_RTH, DatasheetSymbol.RTHJA);
    data.add(
        resistance.isKnown()
            ? resistance
            : impliedResistance(resistance, average, ratingAir, forward, junction));
    data.add(
        kind == PartKind.SCHOTTKY_DIODE
            ? Datum.of(Term.DIODE_RECOVERY, 0, Source.standard("a Schottky diode stores no charge"))
            : ratings.harm(Term.DIODE_RECOVERY, DatasheetSymbol.TRR));
    return plain(Role.FLYBACK_DIODE, name, kind, data);
  }

  private static Datum ratingAir(Ratings ratings, String name) {
    return ratings.about(DatasheetSymbol.IFAV).stream()
        .flatMap(
            line -> {
              TestCondition condition = TestCondition.parse(line.condition());
              OptionalDouble at =
                  condition.value("TA").isPresent() ? condition.value("TA") : condition.value("TL");
              return at.isPresent()
                  ? Stream.of(Datum.of(Term.DIODE_RATING_AIR, at.getAsDouble(), line.source()))
                  : Stream.empty();
            })
        .min(java.util.Comparator.comparingDouble(Datum::nominal))
        .orElse(
            Datum.of(
                Term.DIODE_RATING_AIR,
                25,
                Source.assumed("rated at 25 °C", "datasheets.csv, IFav of " + name + ", TA=")));
  }

  /** A half-wave rating of an average implies a peak of π times it at every cycle. */
  private static Datum impliedPeak(Datum average) {
    return average.isKnown()
        ? Datum.of(
            Term.DIODE_PEAK_RATING,
            Math.PI * average.low(),
            Source.computed("π·IFav of a half-wave rating, " + average.source()))
        : Datum.missing(Term.DIODE_PEAK_RATING, average.missing());
  }

  /**
   * The rating IFav at TA promises TJ ≤ TJmax there, so RthJA ≤ (TJmax − TA)/(VF·IFav) when mounted
   * as the maker did.
   */
  private static Datum impliedResistance(
      Datum absent, Datum average, Datum air, Datum forward, Datum junction) {
    if (!average.isKnown() || !forward.isKnown() || !junction.isKnown()) {
      return absent;
    }
    double watts = forward.high() * average.low();
    return Datum.of(
        Term.DIODE_RTH,
        (junction.low() - air.low()) / watts,
        Source.computed("(TJmax − TA)/(VF·IFav), " + average.source()));
  }

  private static PartData fuse(String name, PartType type, Ratings ratings, String bomWords) {
    var data = new ArrayList<Datum>();
    Datum rated = ratings.rated(Term.FUSE_RATING, DatasheetSymbol.IN, line -> true);
    data.add(rated.isKnown() ? rated : ratingInWords(rated, type, bomWords));
    data.add(
        ratings.rated(
            Term.FUSE_VOLTAGE,
            DatasheetSymbol.VN,
            line -> TestCondition.parse(line.condition()).says("DC")));
    data.add(ratings.rated(Term.FUSE_MELTING, DatasheetSymbol.I2T, line -> true));
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
        family);
  }

  private static Datum ratingInWords(Datum absent, PartType type, String bomWords) {
    if (type.value().filter(v -> v.dimension() == Dimension.CURRENT).isPresent()) {
      return Datum.of(
          Term.FUSE_RATING, type.value().get().asDouble(), Source.kit("the BOM's value"));
    }
    for (String words : List.of(type.text(), type.typeNumber(), bomWords)) {
      Matcher found = AMPERES.matcher(words);
      if (found.find()) {
        double amps = Double.parseDouble(found.group(1).replace(',', '.'));
        double scale = found.group(2).isEmpty() ? 1 : 1e-3;
        return Datum.of(
            Term.FUSE_RATING, amps * scale, Source.kit("the BOM: \"" + found.group() + "\""));
      }
    }
    return absent;
  }

  private static PartData resistor(Role role, Term term, Term rating, String name, PartType type) {
    if (type.value().isEmpty()) {
      return plain(
          role,
          name,
          type.kind(),
          List.of(Datum.missing(term, "value of \"" + name + "\": write it in the BOM")));
    }
    Quantity nominal = type.value().get();
    var tolerance = type.tolerance().orElseGet(() -> lowfirst.quantity.Tolerance.percent("5"));
    Source source =
        type.tolerance().isPresent()
            ? Source.kit("the BOM: " + type.text() + " " + tolerance)
            : Source.kit("the BOM: " + type.text() + ", ±" + RESISTOR_TOLERANCE + " assumed");
    return plain(
        role,
        name,
        type.kind(),
        List.of(
            Datum.of(
                term,
                tolerance.lowest(nominal).asDouble(),
                nominal.asDouble(),
                tolerance.highest(nominal).asDouble(),
                source),
            ratedPower(rating, type)));
  }

  private static Datum ratedPower(Term rating, PartType type) {
    return type.ratedPower()
        .map(power -> Datum.of(rating, power.asDouble(), Source.kit("the BOM: " + type.text())))
        .orElseGet(
            () ->
                Datum.of(
                    rating,
                    ResistorRating.SMALLEST_WATTS,
                    Source.assumed("1/8 W", "the BOM's value, as 220R 0.25W")));
  }

  /** Its place in the channel. */
  public Role role() {
    return role;
  }

  /** What a report calls it. */
  public String name() {
    return name;
  }

  /** What kind of part it is. */
  public PartKind kind() {
    return kind;
  }

  List<Datum> data() {
    return data;
  }

  OnResistance onResistance() {
    return onResistance;
  }

  HotFactor hotFactor() {
    return hotFactor;
  }

  TransientImpedance impedance() {
    return impedance;
  }

  SafeArea safeArea() {
    return safeArea;
  }

  FuseFamily family() {
    return family;
  }
}
