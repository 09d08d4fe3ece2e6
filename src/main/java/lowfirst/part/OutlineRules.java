package lowfirst.part;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
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
  private static final Pattern DIP =
      Pattern.compile("(?<![A-Z])(?:P|C|S|N|CER)?DI[PL][ _-]?0*(\\d{1,2})(?!\\d|\\.\\d|X\\d)");
  private static final Pattern SIP = Pattern.compile("(?<![A-Z])SI[PL][ _-]?0*(\\d{1,2})(?!\\d)");

  /** Pitch and body in tenths of a millimetre: {@code C050-025X075}. */
  private static final Pattern TENTHS =
      Pattern.compile("(?<![A-Z0-9])C(\\d{2,3})-(\\d{3})X(\\d{3})(?!\\d)");

  /** Pitch and can diameter of a radial electrolytic: {@code E7.5-18}. */
  private static final Pattern CAN =
      Pattern.compile("^E(\\d{1,2}(?:\\.\\d)?)-(\\d{1,2}(?:\\.\\d)?)$");

  private static final double DIP_PITCH_MILLIMETRES = 2.54;

  /** Bent lead above the body of a standing axial part; rows 0204 to 0617 give 2.5 to 3.6 mm. */
  private static final double STANDING_BEND_MILLIMETRES = 3.0;

  /** Coating that runs down a disc's leads; makers leave 1 to 3 mm. */
  private static final double DISC_COATING_MILLIMETRES = 2.0;

  private final OutlineName name;
  private final PartKind kind;
  private final BodyOutlines table;

  private OutlineRules(OutlineName name, PartKind kind, BodyOutlines table) {
    this.name = name;
    this.kind = kind;
    this.table = table;
  }

  /** The outline that a name stands for. */
  static Reading<BodyOutline> read(OutlineName name, PartKind kind, BodyOutlines table) {
    var rules = new OutlineRules(name, kind == PartKind.UNKNOWN ? guessed(name) : kind, table);
    List<Supplier<Optional<Reading<BodyOutline>>>> surestFirst =
        List.of(
            rules::dip,
            rules::can,
            rules::axial,
            rules::statedHeight,
            rules::header,
            rules::tableName,
            rules::network,
            rules::disc,
            rules::box,
            rules::led,
            rules::choke,
            rules::bodyOnly);
    List<Reading<BodyOutline>> found =
        surestFirst.stream().map(Supplier::get).flatMap(Optional::stream).toList();
    Stream<Reading<BodyOutline>> tall =
        found.stream().filter(reading -> reading.orThrow().height().isPresent());
    return tall.findFirst()
        .or(() -> rules.assumed(found.stream().findFirst()))
        .or(() -> found.stream().findFirst())
        .orElseGet(rules::nothing);
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

  private Optional<Reading<BodyOutline>> dip() {
    OptionalInt pins = name.number(DIP);
    boolean nothingBut = kind == PartKind.SOCKET && name.has("DIP", "DIL");
    if (kind == PartKind.SWITCH || (pins.isEmpty() && !nothingBut)) {
      return Optional.empty();
    }
    boolean socket = kind == PartKind.SOCKET || name.has("SOCKET", "SOCKEL");
    double span = rowSpan(pins.orElse(8));
    String row =
        socket
            ? "DIP socket"
            : kind == PartKind.BRIDGE_RECTIFIER
                ? "DIP bridge"
                : span > 12 ? "PDIP 600 mil" : "PDIP 300 mil";
    return table
        .named(row)
        .map(
            found ->
                sized(
                    found,
                    pins.orElse(0) / 2 * DIP_PITCH_MILLIMETRES,
                    socket || found.widthMillimetres() == 0
                        ? span + DIP_PITCH_MILLIMETRES
                        : found.widthMillimetres(),
                    span,
                    pins.orElse(0)))
        .map(outline -> Reading.of(outline, "pins and row spacing from the name"));
  }

  /** The distance of the two rows: as stated, or 300 mil up to 22 pins and 600 mil above. */
  private double rowSpan(int pins) {
    OptionalDouble stated = name.measure("W");
    if (stated.isPresent() && stated.getAsDouble() >= 7) {
      return stated.getAsDouble();
    }
    return pins > 22 && !name.has("300", "SLIM", "NARROW", "SKINNY") ? 15.24 : 7.62;
  }

  /** An electrolytic's can: the height is its length, never its diameter. */
  private Optional<Reading<BodyOutline>> can() {
    boolean isCan =
        kind == PartKind.ELECTROLYTIC_CAPACITOR
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
        Reading.of(made(length.orElse(0), d, d, pitch, 2, "can length stated in the name"), rule));
  }

  /** A cylinder between two leads: lying it is as tall as thick, standing as tall as long. */
  private Optional<Reading<BodyOutline>> axial() {
    OptionalDouble length = name.measure("L");
    OptionalDouble diameter = name.diameter();
    boolean twoLeads =
        name.has("AXIAL", "RES-TH")
            || kind == PartKind.RESISTOR
            || kind.isDiode()
            || kind == PartKind.INDUCTOR;
    if (!twoLeads || name.has("RADIAL") || diameter.isEmpty() || length.isEmpty()) {
      return Optional.empty();
    }
    double d = diameter.getAsDouble();
    double l = length.getAsDouble();
    double pitch = name.measure("P").orElse(0);
    if (name.posture() == Posture.STANDING) {
      BodyOutline standing =
          table
              .named(bodySize() + " standing")
              .map(row -> sized(row, d, d, pitch, 2))
              .orElseGet(
                  () ->
                      made(
                          l + STANDING_BEND_MILLIMETRES,
                          d,
                          d,
                          pitch,
                          2,
                          "body length from the name and 3 mm of bent lead"));
      return Optional.of(Reading.of(standing, "standing, body length from the name"));
    }
    return Optional.of(
        Reading.of(
            made(d, l, d, pitch, 2, "body diameter stated in the name"),
            "lying, body diameter from the name"));
  }

  /** A body size such as 0207 among the words, or nothing that the table knows. */
  private String bodySize() {
    return name.words().stream()
        .map(word -> word.replace("DIN", ""))
        .filter(word -> word.matches("0\\d{3}"))
        .findFirst()
        .orElse("?");
  }

  private Optional<Reading<BodyOutline>> statedHeight() {
    OptionalDouble height = name.measure("H");
    if (height.isEmpty() || height.getAsDouble() == 0) {
      return Optional.empty();
    }
    double across = name.diameter().orElse(0);
    return Optional.of(
        Reading.of(
            made(
                height.getAsDouble(),
                name.measure("L").orElse(across),
                name.measure("W").orElse(across),
                name.measure("P").orElse(0),
                0,
                "height stated in the name"),
            "height from the name"));
  }

  /** The longest run of words that the table names, in the posture that the name states. */
  private Optional<Reading<BodyOutline>> tableName() {
    List<String> words = name.words();
    for (int length = Math.min(4, words.size()); length > 0; length--) {
      for (int from = 0; from + length <= words.size(); from++) {
        Optional<BodyOutline> row = row(String.join(" ", words.subList(from, from + length)));
        if (row.isPresent()) {
          BodyOutline found = row.get();
          List<Integer> rows = name.rows();
          int pins = rows.isEmpty() ? found.pins() : rows.get(0) * rows.get(1);
          double pitch = name.measure("P").orElse(found.pitchMillimetres());
          double row_ = rows.isEmpty() || pitch == 0 ? 0 : rows.get(1) * pitch;
          return Optional.of(
              Reading.of(
                  sized(
                      found,
                      found.lengthMillimetres() > 0 ? found.lengthMillimetres() : row_,
                      found.widthMillimetres(),
                      pitch,
                      pins),
                  "the outline " + found.name()));
        }
      }
    }
    return Optional.empty();
  }

  /** A table row by one name, also without what follows its last hyphen or a bent-lead mark. */
  private Optional<BodyOutline> row(String words) {
    String plain = words.replaceFirst("(?<=\\d)Z\\d+$", "").replaceFirst("(?<=^0\\d{3})V$", "");
    String shorter = plain.replaceFirst("-[A-Z0-9.]*$", "");
    String shortest = shorter.replaceFirst("-[A-Z0-9.]*$", "");
    return Stream.of(plain, shorter, shortest)
        .filter(text -> text.length() >= 2 && !text.matches("\\d{1,2}"))
        .flatMap(text -> inPosture(text).stream())
        .findFirst();
  }

  private Optional<BodyOutline> inPosture(String text) {
    Optional<BodyOutline> plain = table.named(text);
    if (plain.isEmpty() || name.posture() == Posture.NOT_STATED) {
      return plain;
    }
    String wanted = name.posture() == Posture.LYING ? " lying" : " standing";
    String base = plain.get().name().replaceFirst(" (lying|standing)$", "");
    return table.named(base + wanted).or(() -> table.named(text + wanted)).or(() -> known(plain));
  }

  /** A row that knows only the other posture does not tell this one's height. */
  private Optional<BodyOutline> known(Optional<BodyOutline> plain) {
    return plain.map(
        row ->
            row.name().endsWith(name.posture() == Posture.LYING ? " standing" : " lying")
                ? with(row, 0, row.source())
                : row);
  }

  private Optional<Reading<BodyOutline>> network() {
    OptionalInt pins = name.number(SIP);
    if (pins.isEmpty() && kind != PartKind.RESISTOR_NETWORK) {
      return Optional.empty();
    }
    return table
        .named("SIP network low")
        .map(
            row ->
                sized(
                    row,
                    pins.orElse(0) * DIP_PITCH_MILLIMETRES,
                    row.widthMillimetres(),
                    DIP_PITCH_MILLIMETRES,
                    pins.orElse(0)))
        .map(outline -> Reading.of(outline, "single row of pins"));
  }

  private Optional<Reading<BodyOutline>> disc() {
    OptionalDouble diameter = name.diameter();
    if (!name.has("DISC", "DISK") || diameter.isEmpty()) {
      return Optional.empty();
    }
    double d = diameter.getAsDouble();
    return Optional.of(
        Reading.of(
            made(
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
  private Optional<Reading<BodyOutline>> box() {
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
        row.map(found -> Reading.of(sized(found, length, width, pitch, 2), "box of this pitch"))
            .orElseGet(
                () ->
                    Reading.of(
                        made(0, length, width, pitch, 2, "body stated in the name"),
                        "pitch and body from the name; its height is not in it")));
  }

  private Optional<BodyOutline> filmRow(double pitch) {
    return Stream.of("2.5", "5", "7.5", "10", "15", "22.5", "27.5")
        .filter(known -> Math.abs(Double.parseDouble(known) - pitch) < 0.3)
        .findFirst()
        .flatMap(known -> table.named("film box pitch " + known));
  }

  private Optional<Reading<BodyOutline>> led() {
    if (kind != PartKind.LED && !name.text().startsWith("LED")) {
      return Optional.empty();
    }
    double d = name.diameter().orElse(0);
    String row = Math.abs(d - 3) < 0.3 ? "LED 3 mm" : Math.abs(d - 5) < 0.3 ? "LED 5 mm" : "";
    return table.named(row).map(found -> Reading.of(found, "lens diameter from the name"));
  }

  private Optional<Reading<BodyOutline>> choke() {
    if (kind != PartKind.INDUCTOR || !name.has("RADIAL")) {
      return Optional.empty();
    }
    return name.diameter().stream()
        .boxed()
        .flatMap(
            d ->
                Stream.of(7, 10, 12)
                    .filter(known -> Math.abs(known - d) <= 0.5)
                    .flatMap(known -> table.named("radial choke D" + known).stream()))
        .findFirst()
        .map(found -> Reading.of(found, "choke diameter from the name"));
  }

  private Optional<Reading<BodyOutline>> header() {
    List<Integer> rows = name.rows();
    boolean pins =
        name.has("PINHEADER", "PIN HEADER", "PIN_HEADER")
            || name.text().startsWith("HDR")
            || (kind == PartKind.PIN_HEADER && !name.has("IDC", "BOX", "SOCKET", "FEMALE"));
    if (!pins || rows.isEmpty()) {
      return Optional.empty();
    }
    double pitch = name.measure("P").orElse(DIP_PITCH_MILLIMETRES);
    boolean lying = name.posture() == Posture.LYING;
    String row =
        !lying
            ? "pin header"
            : rows.get(0) > 1 ? "pin header right angle two rows" : "pin header right angle";
    return table
        .named(row)
        .map(
            found ->
                sized(
                    found,
                    rows.get(1) * pitch,
                    rows.get(0) * pitch,
                    pitch,
                    rows.get(0) * rows.get(1)))
        .map(outline -> Reading.of(outline, "rows and pins from the name"));
  }

  /** The name tells a body from above, and not how tall it is. */
  private Optional<Reading<BodyOutline>> bodyOnly() {
    double across = name.diameter().orElse(0);
    double length = name.measure("L").orElse(across);
    double width = name.measure("W").orElse(across);
    if (kind == PartKind.WIRE_LINK || length == 0 || width == 0) {
      return Optional.empty();
    }
    return Optional.of(
        Reading.of(
            made(0, length, width, name.measure("P").orElse(0), 0, "body stated in the name"),
            "body from the name; its height is not in it"));
  }

  /** The outline assumed for this kind, with the body that the name tells. */
  private Optional<Reading<BodyOutline>> assumed(Optional<Reading<BodyOutline>> body) {
    boolean otherwise =
        name.posture() == Posture.STANDING || kind == PartKind.ELECTROLYTIC_CAPACITOR;
    return otherwise
        ? Optional.empty()
        : table
            .assumedFor(kind)
            .map(
                row ->
                    body.flatMap(Reading::value)
                        .map(
                            seen ->
                                sized(
                                    row,
                                    seen.lengthMillimetres(),
                                    seen.widthMillimetres(),
                                    seen.pitchMillimetres(),
                                    seen.pins()))
                        .orElse(row))
            .map(outline -> Reading.of(outline, "assumed for a " + kind.words()));
  }

  private Reading<BodyOutline> nothing() {
    return name.text().isBlank()
        ? Reading.fault(
            "no package is named", "give the seated height in the BOM, in a column \"height mm\"")
        : Reading.fault(
            "the package \"" + name.text() + "\" is not in the package table",
            "measure the part and give its seated height in the BOM, in a column \"height mm\"");
  }

  private BodyOutline made(
      double height, double length, double width, double pitch, int pins, String how) {
    return new BodyOutline(
        name.text(), height, 0, length, width, pitch, pins, Source.computed(how));
  }

  private static BodyOutline sized(
      BodyOutline row, double length, double width, double pitch, int pins) {
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

  private static OptionalDouble first(OptionalDouble one, OptionalDouble other) {
    return one.isPresent() ? one : other;
  }
}
