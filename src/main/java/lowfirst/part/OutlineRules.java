package lowfirst.part;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import lowfirst.part.OutlineName.Posture;
import lowfirst.problem.Reading;
import lowfirst.quantity.Source;

/**
 * How a package or footprint name becomes a body outline: the rules, the surest first.
 *
 * <p>The first rule that tells a height wins. Where none does, the first that tells a body wins,
 * and the height stays unknown: an electrolytic's height is its can's length, which a diameter
 * doesn't tell.
 */
final class OutlineRules {
  /** Kinds of which a name that nobody knows is hardly that of the assumed body. */
  private static final Set<PartKind> COME_IN_MANY =
      EnumSet.of(PartKind.INTEGRATED_CIRCUIT, PartKind.OPTOCOUPLER, PartKind.DRIVER_ARRAY);

  private OutlineRules() {}

  /**
   * What is asked: which body this name stands for on a part of this kind.
   *
   * @param table the rows that names may stand for
   */
  record Asked(OutlineName name, PartKind kind, BodyOutlines table) {

    /** An outline whose measures the name itself states; height 0 when it states none. */
    BodyOutline made(
        double height, double length, double width, double pitch, int pins, String how) {
      return new BodyOutline(
          name.text(), height, 0, length, width, pitch, pins, Source.computed(how));
    }

    /** A row of the table with the measures that the name states. */
    static BodyOutline sized(BodyOutline row, double length, double width, double pitch, int pins) {
      return new BodyOutline(
          row.name(),
          row.seatedHeightMillimetres(),
          row.standOffMillimetres(),
          length,
          width,
          pitch,
          pins,
          row.source());
    }
  }

  /** That a name is that of a body which has no seated height. */
  static Reading<BodyOutline> flat(String name) {
    return Reading.fault(
        "\"" + name + "\" is a surface-mount body",
        "solder it flat before the through-hole parts; it has no seated height here");
  }

  /**
   * The outline that a name stands for.
   *
   * @param mayAssume whether the height assumed for the kind may stand in for one that nothing
   *     tells
   */
  static Reading<BodyOutline> read(
      OutlineName name, PartKind kind, BodyOutlines table, boolean mayAssume) {
    if (SurfaceMount.isNamed(name.text(), kind)) {
      return flat(name.text());
    }
    var asked = new Asked(name, kind == PartKind.UNKNOWN ? guessed(name) : kind, table);
    var pinned = new PinnedOutlines(asked);
    var capacitors = new CapacitorOutlines(asked);
    var leaded = new LeadedOutlines(asked);
    var named = new NamedOutlines(asked);
    List<Supplier<Optional<Reading<BodyOutline>>>> surestFirst =
        List.of(
            pinned::dip,
            capacitors::can,
            leaded::axial,
            named::statedHeight,
            pinned::header,
            named::tableName,
            pinned::network,
            capacitors::disc,
            capacitors::box,
            leaded::led,
            leaded::choke,
            named::bodyOnly);
    List<Reading<BodyOutline>> found =
        surestFirst.stream().map(Supplier::get).flatMap(Optional::stream).toList();
    return found.stream()
        .filter(reading -> reading.orThrow().height().isPresent())
        .findFirst()
        .or(() -> mayAssume ? assumed(asked, found.stream().findFirst()) : Optional.empty())
        .or(() -> found.stream().findFirst())
        .orElseGet(() -> nothing(name));
  }

  /** The same outline with another height and source. */
  static BodyOutline with(BodyOutline row, double height, Source source) {
    return new BodyOutline(
        row.name(),
        height,
        row.standOffMillimetres(),
        row.lengthMillimetres(),
        row.widthMillimetres(),
        row.pitchMillimetres(),
        row.pins(),
        source);
  }

  /** Design tools start a footprint's name with what it is for. */
  private static PartKind guessed(OutlineName name) {
    String text = name.text();
    if (text.startsWith("LED")) {
      return PartKind.LED;
    }
    if (text.startsWith("CP_") || text.startsWith("CPOL") || text.startsWith("ELKO")) {
      return PartKind.ELECTROLYTIC_CAPACITOR;
    }
    if (text.startsWith("R_") || text.startsWith("RES-")) {
      return PartKind.RESISTOR;
    }
    if (text.startsWith("D_") || text.startsWith("DIODE-")) {
      return PartKind.DIODE;
    }
    return text.startsWith("C_") ? PartKind.CAPACITOR : PartKind.UNKNOWN;
  }

  /** The outline assumed for this kind, with the body that the name tells. */
  private static Optional<Reading<BodyOutline>> assumed(
      Asked asked, Optional<Reading<BodyOutline>> body) {
    boolean otherwise =
        asked.name().posture() == Posture.STANDING
            || asked.kind() == PartKind.ELECTROLYTIC_CAPACITOR
            || (COME_IN_MANY.contains(asked.kind())
                && body.isEmpty()
                && !asked.name().text().isBlank());
    return otherwise
        ? Optional.empty()
        : asked
            .table()
            .assumedFor(asked.kind())
            .map(row -> body.flatMap(Reading::value).map(seen -> inBody(row, seen)).orElse(row))
            .map(outline -> Reading.of(outline, "assumed for a " + asked.kind().words()));
  }

  private static BodyOutline inBody(BodyOutline row, BodyOutline seen) {
    return Asked.sized(
        row,
        seen.lengthMillimetres(),
        seen.widthMillimetres(),
        seen.pitchMillimetres(),
        seen.pins());
  }

  private static Reading<BodyOutline> nothing(OutlineName name) {
    return name.text().isBlank()
        ? Reading.fault(
            "no package is named", "give the seated height in the BOM, in a column \"height mm\"")
        : Reading.fault(
            "the package \"" + name.text() + "\" is not in the package table",
            "measure the part and give its seated height in the BOM, in a column \"height mm\"");
  }
}
