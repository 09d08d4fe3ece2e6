package lowfirst.sheet.loads;

import java.util.Locale;
import java.util.Optional;
import lowfirst.channel.CarryLimit;
import lowfirst.channel.ChannelInputs.Fitted;
import lowfirst.channel.ChannelStudy;
import lowfirst.channel.RailFinding;
import lowfirst.channel.Remedy;
import lowfirst.channel.SumFinding;
import lowfirst.channel.check.Check;
import lowfirst.channel.check.CheckKind;
import lowfirst.channel.check.Term;
import lowfirst.channel.check.Verdict;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;

/** How the findings of channels and rails are worded. */
public final class LoadsWords {
  private LoadsWords() {}

  /** The one line that a beginner reads. */
  public static String line(ChannelStudy study) {
    Check limiting = study.finding().limitedBy();
    return switch (study.finding().verdict()) {
      case CARRIES -> carries(study);
      case OVERLOADED -> overloaded(study, limiting);
      case UNDECIDED ->
          "undecided: "
              + (limiting.missing().isEmpty()
                  ? why(limiting)
                  : missing(study) + " missing, first " + limiting.missing().get(0));
    };
  }

  private static String carries(ChannelStudy study) {
    String now = "carries " + amps(study.inputs().loadAmps());
    Optional<CarryLimit> limit = study.limit();
    if (limit.isEmpty()) {
      return now;
    }
    return now
        + ", up to "
        + ampsDown(limit.get().amperes())
        + limit.get().limitedBy().map(kind -> "; limited by " + part(kind)).orElse("");
  }

  private static String overloaded(ChannelStudy study, Check limiting) {
    String would =
        study.limit().map(limit -> "; would carry " + ampsDown(limit.amperes())).orElse("");
    double amperes = study.inputs().loadAmps();
    return "overloaded"
        + (Double.isFinite(amperes) ? " at " + amps(amperes) : "")
        + ": "
        + part(limiting.kind())
        + ", "
        + (floats(study, limiting) ? "nothing pulls it down" : why(limiting))
        + would;
  }

  private static boolean floats(ChannelStudy study, Check check) {
    return check.kind() == CheckKind.GATE_OFF
        && !study.inputs().has(Fitted.PULL_DOWN)
        && !study.inputs().has(Fitted.DRIVEN_AT_RESET)
        && !study.inputs().has(Fitted.ON_AT_RESET);
  }

  private static String missing(ChannelStudy study) {
    long count =
        study.finding().checks().stream()
            .flatMap(check -> check.missing().stream())
            .distinct()
            .count();
    return count == 1 ? "1 number is" : count + " numbers are";
  }

  private static String why(Check check) {
    if (check.kind() == CheckKind.VOLTAGE_SCOPE) {
      return "above 60 V DC; ask a person licensed to work on it";
    }
    if (Double.isInfinite(check.actualAmount())) {
      return switch (check.kind()) {
        case STAGE_VOLTAGE -> "a coil without a flyback diode";
        case SWITCHING_TIME -> "the gate never gets high enough to switch";
        case JUNCTION_TEMPERATURE, INRUSH_JUNCTION, STALL_JUNCTION ->
            "no steady value: it runs away";
        default -> "without bound";
      };
    }
    if (check.verdict() == Verdict.UNDECIDED) {
      return "it would pass only on a value from memory, in " + check.kind().words();
    }
    boolean least = check.kind().sense() == CheckKind.Sense.AT_LEAST;
    String actual = amount(check.actual());
    String allowed = amount(check.allowed());
    if (actual.equals(allowed)) {
      actual = check.actual().map(q -> q.rounded(5)).orElse("?");
      allowed = check.allowed().map(q -> q.rounded(5)).orElse("?");
    }
    return actual + (least ? " of at least " : " of at most ") + allowed;
  }

  /** What a person calls the part that a check is about. */
  static String part(CheckKind kind) {
    return switch (kind) {
      case CELLS_READ -> "a cell that can't be read";
      case OWN_PARTS -> "a part of several channels";
      case VOLTAGE_SCOPE -> "the rail's voltage";
      case GATE_LEVEL -> "the gate's on-voltage";
      case GATE_LIMIT -> "the gate's highest voltage";
      case GATE_OFF -> "the gate's off-voltage";
      case GATE_DRIVE_CURRENT -> "the driver's current";
      case PULL_DOWN_POWER, GATE_RESISTOR_POWER -> "the gate's resistors";
      case SWITCHING_TIME -> "the switching time";
      case DRAIN_CURRENT, SAFE_AREA -> "the MOSFET's current";
      case INRUSH_CURRENT -> "the inrush";
      case JUNCTION_TEMPERATURE, INRUSH_JUNCTION -> "the MOSFET's heat";
      case STALL_CURRENT, STALL_JUNCTION -> "a jam of the motor";
      case DRAIN_VOLTAGE -> "the MOSFET's voltage";
      case AVALANCHE_CURRENT, AVALANCHE_ENERGY, REPETITIVE_AVALANCHE -> "the missing diode";
      case ON_TIME, LOAD_DUTY -> "the load's on time";
      case PULL_IN -> "the coil's pull-in";
      case DIODE_VOLTAGE, DIODE_PEAK, DIODE_CURRENT, DIODE_TEMPERATURE, DIODE_RECOVERY ->
          "the flyback diode";
      case RELEASE_TIME -> "the coil's release";
      case FUSE_HOLDER -> "the fuse holder";
      case FUSE_CURRENT, FUSE_PULSE, FUSE_VOLTAGE, FUSE_BREAKING, FUSE_HOLDS -> "the fuse";
      case FUSE_PROTECTS_TRACK, TRIP_PROTECTS_TRACK -> "the track behind the fuse";
      case FUSE_PROTECTS_WIRE, TRIP_PROTECTS_WIRE -> "the wire behind the fuse";
      case UNFUSED_TRACK -> "the track without a fuse";
      case UNFUSED_WIRE -> "the wire without a fuse";
      case TRACE_CURRENT -> "the copper track";
      case CONTACT_CURRENT, CONTACT_FAULT -> "the contact";
      case WIRE_CURRENT, WIRE_DROP -> "the wire";
      case STAGE_CURRENT, STAGE_TOTAL, STAGE_VOLTAGE, STAGE_TEMPERATURE -> "the driver";
      case FORCED_GAIN -> "the base current";
      case OPTO_CURRENT -> "the optocoupler";
      case RAIL_CURRENT, RAIL_INRUSH, SUPPLY_POWER, SUPPLY_INRUSH -> "the supply";
      case RETURN_CURRENT, RETURN_CONTACTS, RETURN_DROP -> "the return";
    };
  }

  /** One change, as an instruction. */
  static String words(Remedy remedy) {
    String alone = remedy.carriesAlone() ? "; then it carries" : "";
    return switch (remedy.action()) {
      case LOOK_UP -> remedy.missing();
      case FIT -> "fit " + part(remedy) + alone;
      case RAISE -> raise(remedy) + alone;
      case LOWER -> lower(remedy) + alone;
    };
  }

  private static String part(Remedy remedy) {
    Fitted fit = remedy.fit().orElseThrow();
    String value = remedy.value().map(v -> " of " + v.rounded(3)).orElse("");
    return switch (fit) {
      case HEATSINK -> "a heatsink" + value + " or less, its contact included";
      case PULL_DOWN -> "a pull-down" + value + " at the gate";
      case FLYBACK_DIODE ->
          remedy.check() == CheckKind.STAGE_VOLTAGE
              ? "a flyback diode across the load; or join the driver's own clamp diodes to the load's"
                  + " rail, and name the driver as flyback diode in channels.csv"
              : "a flyback diode across the load";
      case GATE_RESISTOR -> "a gate resistor";
      case FUSE ->
          "a fuse, on the board or in the lead, and name it in the BOM and in channels.csv";
      case FUSE_HOLDER, PWM, DRIVEN_AT_RESET, ON_AT_RESET, OPTOCOUPLED_GATE, LEVEL_STATED ->
          fit.name().toLowerCase(Locale.ROOT);
    };
  }

  private static String raise(Remedy remedy) {
    return name(remedy.term().orElseThrow()) + " of at least " + value(remedy);
  }

  private static String lower(Remedy remedy) {
    return name(remedy.term().orElseThrow()) + " of at most " + value(remedy);
  }

  private static String value(Remedy remedy) {
    return remedy.value().orElseThrow().rounded(3);
  }

  /** What a person calls a number that is to change. */
  static String name(Term term) {
    return switch (term) {
      case ON_RESISTANCE -> "another MOSFET: RDS(on) at this gate voltage, 25 °C,";
      case DRIVE_LEVEL -> "a driver with a high level";
      case LOAD_CURRENT -> "a load";
      case HEATSINK -> "a heatsink";
      case ON_TIME -> "an on time";
      case PERIOD -> "a time from one stroke to the next";
      case PULL_DOWN -> "a pull-down";
      case GATE_RESISTOR -> "a gate resistor";
      case WIRE_AREA -> "a wire";
      case TRACE_WIDTH -> "a track width";
      case TRACE_COPPER -> "copper";
      case FUSE_RATING -> "a fuse";
      case FUSE_TRIP -> "a resettable fuse with a trip current";
      case DRAIN_RATING -> "a voltage rating";
      case FUSE_BREAKING -> "a fuse with a breaking capacity for DC";
      case SHORT_CIRCUIT -> "a supply with a short-circuit current";
      case CONTACT_RATING -> "a contact rating";
      case WIRE_LENGTH -> "a wire length, one way,";
      case AMBIENT -> "air at the board";
      case INRUSH -> "an inrush";
      case INRUSH_TIME -> "a length of the inrush";
      case SWITCH_ONS -> "a number of switch-ons in its life";
      case DRIVE_LOW -> "a driver with a low level";
      case DRIVE_CEILING -> "a driver's supply, its tolerance included,";
      case GATE_RATING -> "a MOSFET with a VGS rating";
      case DRAIN_CURRENT_RATING -> "a part with a current rating";
      case PULSE_CURRENT_RATING -> "a MOSFET with a pulse rating (IDM)";
      case PWM_FREQUENCY -> "a PWM frequency";
      case FUSE_MELTING -> "a fuse with a melting I²t";
      case FUSE_HOLDER -> "a fuse holder";
      case FUSE_VOLTAGE -> "a fuse with a rated voltage for DC";
      case DIODE_REVERSE_RATING -> "a diode with VRRM";
      case DIODE_AVERAGE_RATING -> "a diode with an average current";
      case DIODE_PEAK_RATING -> "a diode with a peak current";
      case DIODE_RECOVERY -> "a diode with a recovery time";
      case DIODE_RTH -> "a cooler diode: RthJA";
      case PULL_DOWN_RATING -> "a pull-down with a power rating";
      case GATE_RESISTOR_RATING -> "a gate resistor with a power rating";
      case INPUT_CURRENT -> "an input current";
      case OTHERS_ON_STAGE -> "other loads on this driver together";
      case RETURN_LIFT -> "a drop in the return";
      case PULL_IN -> "a coil with a pull-in voltage";
      case RAIL_LIMIT -> "a supply (or loads switched on one after another) with a current limit";
      case SUPPLY_LIMIT ->
          "a supply unit (or loads switched on one after another) with a power limit";
      case RETURN_AREA -> "a return wire";
      case RETURN_LENGTH -> "a return wire, one way,";
      case RETURN_CONTACTS -> "a number of contacts in parallel";
      case DIODE_FORWARD -> "a clamp (diode with a zener in series)";
      default -> "a part with " + term.symbol();
    };
  }

  /** What it is, and what the kit calls it: {@code rail bells}. */
  static String name(SumFinding sum) {
    return kind(sum) + " " + sum.name();
  }

  /** Whether it is a rail or a supply unit. */
  static String kind(SumFinding sum) {
    return sum instanceof RailFinding ? "rail" : "supply";
  }

  /** What a number is called where a person writes it, and its symbol: {@code trace width w}. */
  static String noun(Term term) {
    String where = term.where();
    int blank = where.indexOf(' ');
    boolean inTable = where.substring(0, Math.max(0, blank)).matches("(?!datasheets).+[.].+");
    String words = inTable ? where.substring(blank + 1).replaceAll("[,;].*", "") + " " : "";
    return words.startsWith("rows ") ? term.symbol() : words + term.symbol();
  }

  static String amps(double amperes) {
    return Double.isFinite(amperes)
        ? Quantity.of(amperes, Dimension.CURRENT).rounded(3)
        : "an unknown current";
  }

  /** A limit is never rounded up. */
  private static String ampsDown(double amperes) {
    var digits =
        new java.math.BigDecimal(amperes)
            .round(new java.math.MathContext(2, java.math.RoundingMode.DOWN));
    return new Quantity(digits, Dimension.CURRENT).toString();
  }

  static String celsius(double celsius) {
    return String.format(Locale.ROOT, "%.0f °C", celsius);
  }

  /** An amount, or nothing where there is none. */
  public static String amount(Optional<Quantity> quantity) {
    return quantity.map(q -> q.rounded(3)).orElse("?");
  }

  /** What a check found. */
  public static String actual(Check check) {
    return Double.isInfinite(check.actualAmount()) ? "no limit" : amount(check.actual());
  }

  /** How far what was found is from what is allowed. */
  public static String margin(Check check) {
    double margin = check.margin();
    return Double.isFinite(margin) ? String.format(Locale.ROOT, "%+.0f %%", 100 * margin) : "";
  }
}
