package lowfirst.swap;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import lowfirst.board.Kit;
import lowfirst.intake.shipped.ShippedTables;
import lowfirst.part.BodyOutlines;
import lowfirst.part.DatasheetLine;
import lowfirst.part.Datasheets;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Source;

/** Made-up drawers of any size, the same ones each time, and searches of the sample kit. */
final class Drawers {
  private static final Source SOURCE = Source.datasheet("made up for this test");

  static final BodyOutlines OUTLINES = ShippedTables.bodyOutlines();
  static final Kit KIT =
      BellPlayer.with(Map.of("swaps.csv", "board,designators,part type fitted,reason,who,date\n"));

  private Drawers() {}

  /** A part of the sample kit's driver board. */
  static SwapTarget target(String part) {
    return SwapTarget.named(KIT, part, Optional.of("driver")).get(0);
  }

  static DrawerResult search(String part, Datasheets drawer, int most) {
    return DrawerSearch.of(target(part), KIT, drawer, OUTLINES, most);
  }

  /** Nothing but logic-level MOSFETs in the right package: every rule and check has to be done. */
  static Datasheets ofMosfets(int count) {
    var random = new Random(7);
    var lines = new ArrayList<DatasheetLine>(14 * count);
    for (int i = 0; i < count; i++) {
      mosfet("M" + i, random, lines);
    }
    return Datasheets.of(lines);
  }

  /** What a drawer holds: one MOSFET in eight among diodes, transistors and passives. */
  static Datasheets mixed(int count) {
    var random = new Random(11);
    var lines = new ArrayList<DatasheetLine>(8 * count);
    for (int i = 0; i < count; i++) {
      switch (i % 8) {
        case 0 -> mosfet("M" + i, random, lines);
        case 1, 2 -> diode("D" + i, random, lines);
        case 3 -> words("T" + i, lines, "bipolar transistor", "TO-92", "E B C");
        default -> words("R" + i, lines, "resistor", "0207", "");
      }
    }
    return Datasheets.of(lines);
  }

  private static void words(
      String name, List<DatasheetLine> lines, String kind, String packageName, String pins) {
    lines.add(word(name, "kind", kind));
    lines.add(word(name, "package", packageName));
    if (!pins.isEmpty()) {
      lines.add(word(name, "pins", pins));
    }
  }

  private static void mosfet(String name, Random random, List<DatasheetLine> lines) {
    words(name, lines, "MOSFET", "TO-220", "G D S");
    lines.add(word(name, "polarity", "N-channel"));
    lines.add(word(name, "tab", "drain"));
    lines.add(max(name, "VDS", "", pick(random, "30", "40", "55", "60", "100"), Dimension.VOLTAGE));
    lines.add(max(name, "VGS", "", pick(random, "16", "20"), Dimension.VOLTAGE));
    lines.add(threshold(name));
    String ohms = "0.0" + (10 + random.nextInt(90));
    lines.add(
        max(
            name,
            "RDSon",
            "VGS=" + pick(random, "4", "4.5", "10") + "V, TJ=25C",
            ohms,
            Dimension.RESISTANCE));
    lines.add(max(name, "ID", "TC=25C", "" + (10 + random.nextInt(60)), Dimension.CURRENT));
    lines.add(max(name, "QG", "VGS=5V", "4e-8", Dimension.CHARGE));
    lines.add(max(name, "RthJC", "", "1." + random.nextInt(9), Dimension.THERMAL_RESISTANCE));
    lines.add(max(name, "RthJA", "", "62", Dimension.THERMAL_RESISTANCE));
    lines.add(max(name, "TJ", "", pick(random, "150", "175"), Dimension.TEMPERATURE));
  }

  private static void diode(String name, Random random, List<DatasheetLine> lines) {
    words(name, lines, "diode", "DO-201AD", "");
    lines.add(word(name, "technology", "fast recovery"));
    lines.add(max(name, "VRRM", "", pick(random, "100", "200", "400"), Dimension.VOLTAGE));
    lines.add(max(name, "IFav", "TA=75C", pick(random, "1", "3"), Dimension.CURRENT));
    lines.add(max(name, "VF", "IF=3A", "1.2", Dimension.VOLTAGE));
    lines.add(max(name, "RthJA", "", "30", Dimension.THERMAL_RESISTANCE));
    lines.add(max(name, "TJ", "", "150", Dimension.TEMPERATURE));
  }

  private static String pick(Random random, String... choices) {
    return choices[random.nextInt(choices.length)];
  }

  private static DatasheetLine word(String name, String symbol, String word) {
    return new DatasheetLine(
        name, "", symbol, word, Optional.empty(), Optional.empty(), Optional.empty(), SOURCE);
  }

  private static DatasheetLine max(
      String name, String symbol, String condition, String amount, Dimension dimension) {
    return new DatasheetLine(
        name,
        "",
        symbol,
        condition,
        Optional.empty(),
        Optional.empty(),
        Optional.of(Quantity.of(amount, dimension)),
        SOURCE);
  }

  private static DatasheetLine threshold(String name) {
    return new DatasheetLine(
        name,
        "",
        "VGSth",
        "",
        Optional.of(Quantity.of("1", Dimension.VOLTAGE)),
        Optional.empty(),
        Optional.of(Quantity.of("2", Dimension.VOLTAGE)),
        SOURCE);
  }
}
