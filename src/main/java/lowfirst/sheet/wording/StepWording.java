package lowfirst.sheet.wording;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lowfirst.assembly.Batch;
import lowfirst.assembly.Step;
import lowfirst.board.Board;
import lowfirst.board.Kit;
import lowfirst.board.Placement;
import lowfirst.board.Swap;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;
import lowfirst.sorting.Meter;

/** A step in words: what to pick, where it goes, which caution applies. */
public final class StepWording {
  /** With more places than this, positions in figures don't help; the board map does. */
  private static final int MOST_POSITIONS = 4;

  /** A capacitor that can hold a charge worth minding: common practice. */
  private static final double CHARGE_WORTH_MINDING_FARADS = 100e-6;

  private StepWording() {}

  /** What an accepted swap put there, why and by whom; empty where the BOM's own part goes. */
  public static String swapped(Kit kit, Step step) {
    if (kit.swaps().isEmpty()) {
      return "";
    }
    return step.designators().stream()
        .flatMap(place -> kit.swapAt(step.board(), place).stream())
        .map(StepWording::swapped)
        .distinct()
        .collect(Collectors.joining("; "));
  }

  private static String swapped(Swap swap) {
    String asked = swap.asked().isEmpty() ? "what the BOM asks for" : swap.asked();
    String why = swap.reason().isBlank() ? "" : ": " + swap.reason();
    String signed = (swap.who() + " " + swap.date()).strip();
    return "in place of " + asked + why + (signed.isEmpty() ? "" : " (" + signed + ")");
  }

  /** How many of what to pick, for example {@code 8 × 330 Ω ±5 % resistor, DIN0207}. */
  public static String pick(Step step) {
    return pick(step, name(step.partType()));
  }

  /** The same with the part type's name, where that is known. */
  public static String pick(Step step, String name) {
    String what = step.partsToPick() + " × " + name;
    return step.units() > 1
        ? what + " (" + step.designators().size() + " for each of " + step.units() + " boards)"
        : what;
  }

  /** A part type with what tells it from its neighbours in the bag. */
  public static String name(PartType type) {
    var words = new ArrayList<String>();
    words.add(shortName(type));
    type.tolerance().ifPresent(tolerance -> words.add(tolerance.toString()));
    type.ratedVoltage().ifPresent(voltage -> words.add(voltage.toString()));
    type.ratedPower().ifPresent(power -> words.add(power.toString()));
    Stream.of(type.typeNumber(), packageName(type))
        .map(String::strip)
        .filter(text -> !text.isEmpty() && !text.equals(core(type)))
        .filter(text -> words.stream().noneMatch(said -> said.contains(text)))
        .forEach(words::add);
    return String.join(", ", words);
  }

  /** The package without the name of a design tool's library. */
  private static String packageName(PartType type) {
    return type.packageName().substring(type.packageName().lastIndexOf(':') + 1);
  }

  /** A part type in two words, for example {@code 4.7 kΩ resistor} or {@code 1N4148 diode}. */
  public static String shortName(PartType type) {
    String core = core(type);
    String kind = type.kind().words();
    String lower = core.toLowerCase(Locale.ROOT);
    String last = kind.substring(kind.lastIndexOf(' ') + 1);
    if (core.isEmpty() || kind.toLowerCase(Locale.ROOT).contains(lower)) {
      return kind;
    }
    if (type.kind() == PartKind.UNKNOWN) {
      return core + " (kind not known)";
    }
    boolean isSocket = type.kind() == PartKind.SOCKET && SOCKET.matcher(lower).find();
    if (isSocket || lower.contains(kind.toLowerCase(Locale.ROOT))) {
      return core;
    }
    // "female header" of the kind "pin header"
    return lower.endsWith(" " + last)
        ? core.substring(0, core.length() - last.length()) + kind
        : core + " " + kind;
  }

  /** Which may be one for a relay, of which the kind's own words say nothing. */
  private static final Pattern SOCKET = Pattern.compile("\\b(socket|base)$");

  private static String core(PartType type) {
    return type.value().map(MarkingWords::value).orElseGet(() -> MarkingWords.number(type));
  }

  /** The marking to look for on the part; empty when it bears none. */
  public static String marking(Step step) {
    return MarkingWords.of(step.partType());
  }

  /** What the positions of {@link #where} are counted from. */
  public static String origin(Optional<Board.Size> edge) {
    return edge.isPresent()
        ? "Positions are right/up, in mm from the board's lower left corner seen from the top."
        : "Positions are x/y as the placement list counts them, seen from the top.";
  }

  /**
   * The places in the order to fill, with positions in figures where they are few.
   *
   * @param edge of the board among the placements, where it is known
   */
  public static String where(Step step, Optional<Board.Size> edge) {
    String list = DesignatorWords.list(step.designators());
    String side = " (" + step.side().words() + " side)";
    if (step.placements().isEmpty()) {
      return list + side + "; not in the placement list: find it by the print on the board";
    }
    if (step.designators().size() > MOST_POSITIONS) {
      return list + side;
    }
    String positions =
        step.placements().stream()
            .map(placement -> position(placement, edge))
            .collect(Collectors.joining(", "));
    return list + side + " at " + positions + " mm";
  }

  private static String position(Placement placement, Optional<Board.Size> edge) {
    return String.format(
        Locale.ROOT,
        "%.1f/%.1f",
        placement.xMillimetres() - edge.map(Board.Size::left).orElse(0.0),
        placement.yMillimetres() - edge.map(Board.Size::bottom).orElse(0.0));
  }

  /** Which way round. */
  public static String wayRound(Step step) {
    return OrientationWords.of(step.partType());
  }

  /** The meter reading to accept; empty where a multimeter tells nothing. */
  public static String reading(Step step, Meter meter) {
    return ReadingWords.of(step.partType(), meter);
  }

  /** How to seat it. */
  public static String seat(Step step) {
    return SolderingWords.seat(step);
  }

  /** How to solder and trim it. */
  public static String solder(Step step) {
    return SolderingWords.solder(step);
  }

  /** What to look for then. */
  public static String lookFor(Step step) {
    return SolderingWords.lookFor(step);
  }

  /** Why the step stands here: its height and the rule that put it there. */
  public static String rule(Step step) {
    return step.why();
  }

  /** The caution that stands where the hand is, if one applies to this step. */
  public static Optional<String> caution(Step step) {
    PartType type = step.partType();
    if (type.kind().isStaticSensitive()) {
      return Optional.of(
          "static can destroy it unnoticed: wear a wrist strap tied to earth through its resistor,"
              + " or touch earthed metal first, and hold it by the body (ANSI/ESD S20.20).");
    }
    boolean large =
        type.kind() == PartKind.ELECTROLYTIC_CAPACITOR
            && type.value()
                .filter(value -> value.asDouble() >= CHARGE_WORTH_MINDING_FARADS)
                .isPresent();
    if (large) {
      return Optional.of(
          "wrong way round it can burst: check + twice. Once powered it stays charged: discharge it"
              + " through a resistor before you touch the board.");
    }
    if (type.kind() == PartKind.ELECTROLYTIC_CAPACITOR
        || type.kind() == PartKind.TANTALUM_CAPACITOR) {
      return Optional.of("wrong way round it can burst or burn: check + twice.");
    }
    return Optional.empty();
  }

  /** What to do at the flip that ends a batch: goes on from "Flip now". */
  public static String flip(Batch batch, int units) {
    int parts = batch.partsPerUnit();
    return parts == 1
        ? flip("the part", "it", units)
        : flip(parts == 2 ? "both parts" : "all " + parts + " parts", "them", units);
  }

  /** What to do at each of several flips. */
  public static String flip(int units) {
    return flip("all parts of the step", "them", units);
  }

  private static String flip(String parts, String them, int units) {
    String each = units > 1 ? "each of the " + units + " boards" : "the board";
    return "with "
        + parts
        + " seated, lay a stiff card or foam over "
        + them
        + ", turn "
        + each
        + " over and solder. Then turn back and inspect.";
  }

  /** What a batch is called, for example {@code Batch 3: 24 parts, 2.3 to 3.6 mm}. */
  public static String batchTitle(Batch batch) {
    int parts = batch.partsPerUnit();
    String count = Counted.of(parts, "part");
    String side = batch.steps().get(0).side().words() + " side";
    return "Batch "
        + batch.number()
        + ": "
        + count
        + (batch.isPluggedIn() ? " to plug in" : ", " + heights(batch))
        + ", "
        + side;
  }

  private static String heights(Batch batch) {
    var known = new DoubleSummaryStatistics();
    batch.steps().forEach(step -> step.seatedHeightMillimetres().ifPresent(known));
    if (known.getCount() == 0) {
      return "height not known";
    }
    String low = millimetres(known.getMin());
    String high = known.getMax() == known.getMin() ? low : millimetres(known.getMax());
    return low.equals(high) ? low + " mm" : low + " to " + high + " mm";
  }

  /** A height to a tenth of a millimetre. */
  public static String millimetres(double height) {
    return BigDecimal.valueOf(height).setScale(1, RoundingMode.HALF_UP).toPlainString();
  }
}
