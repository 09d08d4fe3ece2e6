package lowfirst.part;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lowfirst.part.OutlineName.Posture;
import lowfirst.part.OutlineRules.Asked;
import lowfirst.problem.Reading;

/** Bodies with rows of pins at a fixed pitch: dual in-line, single in-line, pin headers. */
final class PinnedOutlines {
  private static final Pattern DIP =
      Pattern.compile("(?<![A-Z])(?:P|C|S|N|CER)?DI[PL][ _-]?0*(\\d{1,2})(?!\\d|\\.\\d|X\\d)");

  /** Pitch, span and height in hundredths of a millimetre, and pins: DIP254P762X533-18. */
  private static final Pattern LAND = Pattern.compile("^DIP254P(\\d{3,4})X\\d{3}-(\\d{1,2})$");

  private static final Pattern SIP = Pattern.compile("(?<![A-Z])SI[PL][ _-]?0*(\\d{1,2})(?!\\d)");

  private static final double DIP_PITCH_MILLIMETRES = 2.54;

  private final OutlineName name;
  private final PartKind kind;
  private final BodyOutlines table;

  PinnedOutlines(Asked asked) {
    this.name = asked.name();
    this.kind = asked.kind();
    this.table = asked.table();
  }

  Optional<Reading<BodyOutline>> dip() {
    Matcher land = LAND.matcher(name.text());
    OptionalInt pins =
        land.matches() ? OptionalInt.of(Integer.parseInt(land.group(2))) : name.number(DIP);
    boolean nothingBut = kind == PartKind.SOCKET && name.has("DIP", "DIL");
    if (kind == PartKind.SWITCH || (pins.isEmpty() && !nothingBut)) {
      return Optional.empty();
    }
    boolean socket = kind == PartKind.SOCKET || name.has("SOCKET", "SOCKEL");
    double span =
        land.matches() ? Integer.parseInt(land.group(1)) / 100.0 : rowSpan(pins.orElse(8));
    String row =
        socket
            ? "DIP socket"
            : kind == PartKind.BRIDGE_RECTIFIER
                ? "DIP bridge"
                : span > 12 ? "PDIP 600 mil" : "PDIP 300 mil";
    int pinsInARow = pins.orElse(0) / 2;
    return table
        .named(row)
        .map(
            found ->
                Asked.sized(
                    found,
                    pinsInARow * DIP_PITCH_MILLIMETRES,
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

  Optional<Reading<BodyOutline>> network() {
    OptionalInt pins = name.number(SIP);
    if (pins.isEmpty() && kind != PartKind.RESISTOR_NETWORK) {
      return Optional.empty();
    }
    return table
        .named("SIP network low")
        .map(
            row ->
                Asked.sized(
                    row,
                    pins.orElse(0) * DIP_PITCH_MILLIMETRES,
                    row.widthMillimetres(),
                    DIP_PITCH_MILLIMETRES,
                    pins.orElse(0)))
        .map(outline -> Reading.of(outline, "single row of pins"));
  }

  Optional<Reading<BodyOutline>> header() {
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
                Asked.sized(
                    found,
                    rows.get(1) * pitch,
                    rows.get(0) * pitch,
                    pitch,
                    rows.get(0) * rows.get(1)))
        .map(outline -> Reading.of(outline, "rows and pins from the name"));
  }
}
