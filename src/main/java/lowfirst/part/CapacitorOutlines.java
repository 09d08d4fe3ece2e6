package lowfirst.part;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lowfirst.part.OutlineRules.Asked;
import lowfirst.problem.Reading;

/** Capacitors: cans, discs and boxes. A can's height is its length, never its diameter. */
final class CapacitorOutlines {
  /** Pitch and body in tenths of a millimetre: {@code C050-025X075}. */
  private static final Pattern TENTHS =
      Pattern.compile("(?<![A-Z0-9])C(\\d{2,3})-(\\d{3})X(\\d{3})(?!\\d)");

  /** Pitch and can diameter of a radial electrolytic: {@code E7.5-18}. */
  private static final Pattern CAN =
      Pattern.compile("^E(\\d{1,2}(?:\\.\\d)?)-(\\d{1,2}(?:\\.\\d)?)$");

  /** Coating that runs down a disc's leads; makers leave 1 to 3 mm. */
  private static final double DISC_COATING_MILLIMETRES = 2.0;

  private final Asked asked;
  private final OutlineName name;
  private final PartKind kind;
  private final BodyOutlines table;

  CapacitorOutlines(Asked asked) {
    this.asked = asked;
    this.name = asked.name();
    this.kind = asked.kind();
    this.table = asked.table();
  }

  /** An electrolytic's can: the height is its length, never its diameter. */
  Optional<Reading<BodyOutline>> can() {
    boolean isCan =
        kind == PartKind.ELECTROLYTIC_CAPACITOR
            || CAN.matcher(name.text()).matches()
            || (kind == PartKind.CAPACITOR && name.has("RADIAL") && name.size().size() == 2)
            || (kind == PartKind.CAPACITOR && name.text().startsWith("CP"));
    if (!isCan || name.has("AXIAL")) {
      return Optional.empty();
    }
    List<Double> size = name.size();
    Matcher short_ = CAN.matcher(name.text());
    OptionalDouble diameter = name.diameter();
    OptionalDouble length = first(name.measure("H"), name.measure("L"));
    double pitch = name.measure("P").orElse(0);
    if (short_.matches()) {
      pitch = Double.parseDouble(short_.group(1));
      diameter = OptionalDouble.of(Double.parseDouble(short_.group(2)));
    } else if (diameter.isEmpty() && size.size() == 2) {
      diameter = OptionalDouble.of(size.get(0));
      length = OptionalDouble.of(size.get(1));
    }
    if (diameter.isEmpty()) {
      return Optional.empty();
    }
    double d = diameter.getAsDouble();
    String rule =
        length.isPresent()
            ? "the can's length from the name"
            : "the can's diameter from the name; its length, which is its height, is not in it";
    return Optional.of(
        Reading.of(
            asked.made(length.orElse(0), d, d, pitch, 2, "can length stated in the name"), rule));
  }

  Optional<Reading<BodyOutline>> disc() {
    OptionalDouble diameter = name.diameter();
    if (!name.has("DISC", "DISK") || diameter.isEmpty()) {
      return Optional.empty();
    }
    double d = diameter.getAsDouble();
    return Optional.of(
        Reading.of(
            asked.made(
                d + DISC_COATING_MILLIMETRES,
                d,
                name.measure("W").orElse(0),
                name.measure("P").orElse(0),
                2,
                "disc diameter from the name and 2 mm of coated lead (1 to 3 mm)"),
            "disc diameter from the name"));
  }

  /**
   * A film capacitor's box stands as tall as its pitch tells; a ceramic one's is about the same.
   */
  Optional<Reading<BodyOutline>> box() {
    Matcher tenths = TENTHS.matcher(name.text());
    boolean inTenths = tenths.find();
    double pitch =
        inTenths ? Double.parseDouble(tenths.group(1)) / 10 : name.measure("P").orElse(0);
    double width =
        inTenths ? Integer.parseInt(tenths.group(2)) / 10.0 : name.measure("W").orElse(0);
    double length =
        inTenths ? Integer.parseInt(tenths.group(3)) / 10.0 : name.measure("L").orElse(0);
    if (!kind.isCapacitor() || pitch == 0 || (length == 0 && width == 0)) {
      return Optional.empty();
    }
    Optional<BodyOutline> row =
        kind == PartKind.CERAMIC_CAPACITOR && pitch < 6
            ? table.named("radial MLCC")
            : kind == PartKind.FILM_CAPACITOR || name.has("RECT", "MKS", "FKS", "FKP")
                ? filmRow(pitch)
                : Optional.empty();
    return Optional.of(
        row.map(
                found ->
                    Reading.of(Asked.sized(found, length, width, pitch, 2), "box of this pitch"))
            .orElseGet(
                () ->
                    Reading.of(
                        asked.made(0, length, width, pitch, 2, "body stated in the name"),
                        "pitch and body from the name; its height is not in it")));
  }

  private Optional<BodyOutline> filmRow(double pitch) {
    return Stream.of("2.5", "5", "7.5", "10", "15", "22.5", "27.5")
        .filter(known -> Math.abs(Double.parseDouble(known) - pitch) < 0.3)
        .findFirst()
        .flatMap(known -> table.named("film box pitch " + known));
  }

  private static OptionalDouble first(OptionalDouble one, OptionalDouble other) {
    return one.isPresent() ? one : other;
  }
}
