package lowfirst.channel.data;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import lowfirst.channel.check.Datum;
import lowfirst.channel.check.Role;
import lowfirst.channel.check.Term;
import lowfirst.channel.formula.FuseFamily;
import lowfirst.channel.formula.HotFactor;
import lowfirst.channel.formula.OnResistance;
import lowfirst.channel.formula.SafeArea;
import lowfirst.channel.formula.TransientImpedance;
import lowfirst.part.DatasheetLine;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;
import lowfirst.part.TestCondition;

/**
 * What a channel's checks need to know of one part, found once and then used as often as wanted: in
 * place of another by {@code ChannelInputs.with}.
 */
public final class PartData {
  /** Symbols of which the words tell what the part is. */
  private static final Set<String> TELLING = Set.of("kind", "polarity");

  private static final Pattern WRONG_WAY = Pattern.compile("(?i)p[- ]channel|pnp");
  private static final Pattern ALWAYS_ON =
      Pattern.compile(
          "(?i)\\bj-?fet|junction[- ](?:gate )?(?:fet|field)|depletion|normally[- ]on\\b");

  private final Role role;
  private final String name;
  private final PartKind kind;
  private final List<Datum> data;
  private final OnResistance onResistance;
  private final HotFactor hotFactor;
  private final TransientImpedance impedance;
  private final SafeArea safeArea;
  private final FuseFamily family;
  private final Optional<HoldCurrent> hold;

  /** What it was read from; of a part that isn't as it was read, nothing. */
  private final Optional<Origin> origin;

  private record Origin(PartType type, List<DatasheetLine> lines, String bomWords) {}

  /** The same part of each maker, read when first asked for. */
  private final Map<String, PartData> ofMakers = new ConcurrentHashMap<>();

  PartData(
      Role role,
      String name,
      PartKind kind,
      List<Datum> data,
      OnResistance onResistance,
      HotFactor hotFactor,
      TransientImpedance impedance,
      SafeArea safeArea,
      FuseFamily family,
      Optional<HoldCurrent> hold) {
    this.role = role;
    this.name = name;
    this.kind = kind;
    this.data = List.copyOf(data);
    this.onResistance = onResistance;
    this.hotFactor = hotFactor;
    this.impedance = impedance;
    this.safeArea = safeArea;
    this.family = family;
    this.hold = hold;
    this.origin = Optional.empty();
  }

  private PartData(PartData read, Origin origin) {
    this.role = read.role;
    this.name = read.name;
    this.kind = read.kind;
    this.data = read.data;
    this.onResistance = read.onResistance;
    this.hotFactor = read.hotFactor;
    this.impedance = read.impedance;
    this.safeArea = read.safeArea;
    this.family = read.family;
    this.hold = read.hold;
    this.origin = Optional.of(origin);
  }

  /**
   * What is known of a part in a role.
   *
   * @param lines the datasheet lines about it, of one maker or of several
   * @param bomWords everything that the BOM says of it; may name the maker
   */
  public static PartData of(Role role, PartType type, List<DatasheetLine> lines, String bomWords) {
    String name = type.name();
    Ratings ratings = Ratings.of(name, lines, bomWords);
    return new PartData(
        read(role, name, type, lines, bomWords, ratings),
        new Origin(type, ratings.lines(), bomWords));
  }

  private static PartData read(
      Role role,
      String name,
      PartType type,
      List<DatasheetLine> lines,
      String bomWords,
      Ratings ratings) {
    return switch (role) {
      case MOSFET, STAGE -> {
        PartData part = SwitchReader.switching(role, name, switchKind(role, type.kind()), ratings);
        yield whyUnfit(name, type.kind().words() + " " + bomWords, lines)
            .map(part::unfit)
            .orElse(part);
      }
      case FLYBACK_DIODE -> DiodeReader.diode(name, type.kind(), ratings, bomWords);
      case FUSE -> FuseReader.fuse(name, type, ratings, bomWords);
      case GATE_RESISTOR ->
          ResistorReader.resistor(role, Term.GATE_RESISTOR, Term.GATE_RESISTOR_RATING, name, type);
      case PULL_DOWN ->
          ResistorReader.resistor(role, Term.PULL_DOWN, Term.PULL_DOWN_RATING, name, type);
    };
  }

  /** Its makers, where several are known and none is named. */
  public List<String> makers() {
    List<String> makers =
        origin.stream()
            .flatMap(from -> from.lines.stream())
            .map(DatasheetLine::maker)
            .filter(maker -> !maker.isBlank())
            .distinct()
            .toList();
    return makers.size() > 1 ? makers : List.of();
  }

  /** The same part of one of its {@link #makers()}. */
  public PartData of(String maker) {
    Origin from = origin.orElseThrow();
    return ofMakers.computeIfAbsent(
        maker,
        one ->
            of(
                role,
                from.type,
                from.lines.stream().filter(line -> line.maker().equals(one)).toList(),
                from.bomWords));
  }

  /** Why it can't switch a load on the low side, whatever its numbers are; empty if it can. */
  private static Optional<String> whyUnfit(
      String name, String bomWords, List<DatasheetLine> lines) {
    var words = new StringBuilder(bomWords);
    boolean isNegative = false;
    for (DatasheetLine line : lines) {
      if (TELLING.contains(line.symbol())) {
        words.append(' ').append(line.condition());
      }
      isNegative |=
          line.symbol().equals(DatasheetSymbol.RDSON.text())
              && TestCondition.parse(line.condition()).farthest("VGS").orElse(0) < 0;
    }
    if (isNegative || WRONG_WAY.matcher(words).find()) {
      return Optional.of(
          "an N-channel MOSFET or NPN transistor: "
              + name
              + " is P-channel or PNP, which can't switch a load on the low side");
    }
    return ALWAYS_ON.matcher(words).find()
        ? Optional.of(
            "an enhancement MOSFET: "
                + name
                + " is a JFET or a depletion type, which conducts with its gate at 0 V")
        : Optional.empty();
  }

  /** The same part with nothing to pass on. */
  private PartData unfit(String why) {
    var changed = new ArrayList<Datum>();
    for (Datum datum : data) {
      boolean rating = datum.term() == Term.DRAIN_RATING;
      changed.add(rating ? Datum.missing(Term.DRAIN_RATING, why) : datum);
    }
    return new PartData(
        role, name, kind, changed, onResistance, hotFactor, impedance, safeArea, family, hold);
  }

  /** The same part with nothing to pass on, since it isn't there or may not be. */
  public PartData absent(String why) {
    List<Datum> missing = data.stream().map(datum -> Datum.missing(datum.term(), why)).toList();
    return new PartData(
        role,
        name,
        kind,
        missing,
        OnResistance.unknown(),
        hotFactor,
        TransientImpedance.unknown(),
        SafeArea.unknown(),
        family,
        hold.map(of -> new HoldCurrent(of.name(), List.of())));
  }

  /** In the place of a MOSFET a part of unknown kind counts as one. */
  private static PartKind switchKind(Role role, PartKind kind) {
    return switch (kind) {
      case BIPOLAR_TRANSISTOR, DRIVER_ARRAY, OPTOCOUPLER -> kind;
      default -> role == Role.MOSFET ? PartKind.MOSFET : PartKind.INTEGRATED_CIRCUIT;
    };
  }

  static PartData plain(Role role, String name, PartKind kind, List<Datum> data) {
    return new PartData(
        role,
        name,
        kind,
        data,
        OnResistance.unknown(),
        HotFactor.DEFAULT,
        TransientImpedance.unknown(),
        SafeArea.unknown(),
        FuseFamily.UNSTATED,
        Optional.empty());
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

  /** Every number, with its source. */
  public List<Datum> data() {
    return data;
  }

  /** RDS(on) by gate voltage; unknown of all but switches. */
  public OnResistance onResistance() {
    return onResistance;
  }

  /** How RDS(on) grows with temperature. */
  public HotFactor hotFactor() {
    return hotFactor;
  }

  /** How slowly it warms; unknown where no datasheet says. */
  public TransientImpedance impedance() {
    return impedance;
  }

  /** Amperes by volts and time; unknown where no datasheet says. */
  public SafeArea safeArea() {
    return safeArea;
  }

  /** The curve of a fuse; unstated of all else. */
  public FuseFamily family() {
    return family;
  }

  /** What a resettable fuse holds; absent of every other part. */
  public Optional<HoldCurrent> hold() {
    return hold;
  }
}
