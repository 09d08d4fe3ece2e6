package lowfirst.sheet.loads;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import lowfirst.channel.ChannelInputs;
import lowfirst.channel.ChannelInputs.Fitted;
import lowfirst.channel.ChannelStudy;
import lowfirst.channel.CoilRelease;
import lowfirst.channel.CoilRelease.Way;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.sheet.document.Block;
import lowfirst.sheet.document.Block.Cell;
import lowfirst.sheet.document.Block.Facts;
import lowfirst.sheet.document.Block.Paragraph;
import lowfirst.sheet.document.Block.Table;
import lowfirst.sheet.document.Tables;

/** How a coil lets go, in words: one line for a beginner, a table for whoever wants it faster. */
final class ReleaseWords {
  static final String FORMULA =
      "t = (L/R)·ln(1 + I·R/V); V = VF, with a Zener VZ + VF; R with a resistor the sum; drain ="
          + " Vmax + VF + VZ, or + I·R; value: the largest of E24, 5 %, with drain ≤ 0.8·VDS";

  private ReleaseWords() {}

  /** The line for a beginner; absent for loads that aren't coils with a diode. */
  static Optional<Facts.Fact> fact(ChannelStudy study) {
    ChannelInputs in = study.inputs();
    if (!CoilRelease.concerns(in)) {
      return Optional.empty();
    }
    List<String> missing = CoilRelease.missing(in);
    String words =
        missing.isEmpty()
            ? "the coil's current is gone after "
                + study.releases().stream()
                    .map(way -> time(way) + " with " + part(way))
                    .collect(Collectors.joining(", "))
                + room(study)
            : "not worked out; missing: " + String.join("; ", missing);
    return Optional.of(new Facts.Fact("letting go", words));
  }

  private static String room(ChannelStudy study) {
    return study.releases().size() > 1
        ? ""
        : "; the switch's voltage rating leaves no room for a Zener or a resistor to hasten it";
  }

  /** The table, with what to mind; empty where nothing can be added. */
  static List<Block> blocks(ChannelStudy study) {
    if (study.releases().size() < 2) {
      return List.of();
    }
    List<Table.Row> rows =
        study.releases().stream()
            .map(
                way ->
                    new Table.Row(
                        List.of(
                            Cell.of(part(way)),
                            Cell.of(time(way)),
                            Cell.of(volts(way.drainVolts())),
                            Cell.of(heat(way)))))
            .toList();
    var table =
        new Table(
            "How the coil lets go, and what would change it",
            List.of(
                Tables.words("the current dies in", 40),
                Tables.numbers("gone after", 14),
                Tables.numbers("drain up to", 14),
                Tables.words("heat in the added part", 32)),
            rows);
    return List.of(table, new Paragraph(advice(study.inputs())));
  }

  /** Its rows for machines: what it is, how long, the drain, the heat. */
  static List<String[]> cells(ChannelStudy study) {
    var rows = new ArrayList<String[]>();
    for (CoilRelease way : study.releases()) {
      rows.add(
          new String[] {
            "coil current gone, " + part(way),
            time(way),
            "drain up to " + volts(way.drainVolts()) + (heat(way).isEmpty() ? "" : "; " + heat(way))
          });
    }
    return rows;
  }

  private static String advice(ChannelInputs in) {
    String pwm =
        in.has(Fitted.PWM)
            ? " This driver uses PWM: an added part then carries the coil's current in every pause,"
                + " as counted here, and the coil holds less current."
            : "";
    return "Both go in series with the diode, never in its place: "
        + FORMULA
        + ". A Zener's voltage rises with its current: take one that clamps at no more than "
        + volts(CoilRelease.roomVolts(in))
        + " at "
        + LoadsWords.amps(in.loadAmps())
        + " and bears the heat. The coil itself lets go before all current is gone."
        + pwm;
  }

  private static String part(CoilRelease release) {
    String value = release.value().map(v -> v.rounded(3)).orElse("");
    return switch (release.way()) {
      case DIODE -> "the diode alone";
      case ZENER -> "a " + value + " Zener in series";
      case RESISTOR -> value + " in series";
    };
  }

  private static String heat(CoilRelease release) {
    if (release.way() == Way.DIODE) {
      return "";
    }
    String each = Quantity.of(release.partJoules(), Dimension.ENERGY).rounded(2) + " each time";
    return Double.isFinite(release.partWatts())
        ? each + ", " + Quantity.of(release.partWatts(), Dimension.POWER).rounded(2) + " as a mean"
        : each;
  }

  private static String time(CoilRelease release) {
    return Quantity.of(release.seconds(), Dimension.TIME).rounded(2);
  }

  private static String volts(double volts) {
    return String.format(Locale.ROOT, "%.1f V", volts);
  }
}
