package lowfirst.swap.subject;

import static java.util.regex.Pattern.CASE_INSENSITIVE;
import static lowfirst.part.PartKind.BIPOLAR_TRANSISTOR;
import static lowfirst.part.PartKind.BRIDGE_RECTIFIER;
import static lowfirst.part.PartKind.CRYSTAL;
import static lowfirst.part.PartKind.FUSE;
import static lowfirst.part.PartKind.HEATSINK;
import static lowfirst.part.PartKind.INDUCTOR;
import static lowfirst.part.PartKind.LED;
import static lowfirst.part.PartKind.MOSFET;
import static lowfirst.part.PartKind.POTENTIOMETER;
import static lowfirst.part.PartKind.REGULATOR;
import static lowfirst.part.PartKind.RESISTOR;
import static lowfirst.part.PartKind.RESISTOR_NETWORK;
import static lowfirst.part.PartKind.SOCKET;
import static lowfirst.part.PartKind.ZENER_DIODE;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lowfirst.marking.RegulatorNumber;
import lowfirst.part.DatasheetLine;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Source;

/**
 * What the text of a part states in the trade's own words: "T 2 A", "X7R", "DIP-28 15.24",
 * "wire-wound", "2-pole P5.08". Each becomes a line of the same form as a datasheet's, and so do
 * the value and ratings that were read with the part type.
 */
public final class StatedFacts {
  private static final Set<PartKind> CAPACITORS = where(PartKind::isCapacitor);
  private static final Set<PartKind> DIODES = where(PartKind::isDiode);
  private static final Set<PartKind> DUAL_IN_LINE =
      EnumSet.of(SOCKET, PartKind.INTEGRATED_CIRCUIT, PartKind.OPTOCOUPLER, PartKind.DRIVER_ARRAY);
  private static final Set<PartKind> HEADERS = EnumSet.of(PartKind.CONNECTOR, PartKind.PIN_HEADER);
  private static final Set<PartKind> CONTACTS =
      EnumSet.of(PartKind.SCREW_TERMINAL, PartKind.CONNECTOR, PartKind.PIN_HEADER);
  private static final Set<PartKind> ONE_VOLTAGE =
      EnumSet.of(PartKind.RELAY, PartKind.BUZZER, PartKind.MOTOR, PartKind.BATTERY);

  /** The first form of a symbol that fits wins. */
  private static final List<Form> FORMS =
      List.of(
          word(
              "characteristic",
              EnumSet.of(FUSE),
              "re-?settable|poly[ -]?fuse|\\bp?ptc\\b|self[ -]?(?:reset|recover|heal)",
              "resettable"),
          word("characteristic", EnumSet.of(FUSE), "\\bT ?\\d|slow|time[- ]?(?:lag|delay)", "T"),
          word("characteristic", EnumSet.of(FUSE), "\\bF ?\\d|fast|quick", "F"),
          text("package", EnumSet.of(FUSE), "\\b(5 ?x ?20|6\\.3 ?x ?32|radial|blade)"),
          amount("Irated", EnumSet.of(FUSE), "(\\d+(?:\\.\\d+)? ?m?A)\\b", Dimension.CURRENT),
          amount("Vrated", EnumSet.of(FUSE), "(\\d+ ?V)", Dimension.VOLTAGE),
          amount("Irated", CONTACTS, "(\\d+(?:\\.\\d+)? ?A)\\b", Dimension.CURRENT),
          text("rows", HEADERS, "(?<!\\d)(\\d ?[x×] ?\\d+)(?!\\d)"),
          word("gender", HEADERS, "\\b(?:female|socket|receptacle)", "female"),
          word("gender", HEADERS, "\\b(?:male|pin ?(?:header|strip)|box ?header)", "male"),
          amount(
              "poles",
              CONTACTS,
              "(?<![x×\\d])(?<![x×] )(\\d+)[- ]?(?:pole|way|pin|pos)",
              Dimension.RATIO),
          amount("poles", CONTACTS, "(?<!\\d)1 ?[x×] ?(\\d+)", Dimension.RATIO),
          word("dielectric", CAPACITORS, "C0G|COG|NP0|NPO", "C0G"),
          text("dielectric", CAPACITORS, "\\b(X[5-8][RSTU]|Y5[VUT]|Z5U)\\b"),
          word("dielectric", CAPACITORS, "\\bfilm\\b|polyester|polypropylene|\\bMK[TPS]", "film"),
          word("ESRclass", CAPACITORS, "low[- ]?ESR", "low"),
          amount("Tmax", CAPACITORS, "(\\d{2,3} ?°?C)\\b", Dimension.TEMPERATURE),
          word("technology", EnumSet.of(RESISTOR), "wire[- ]?wound", "wire-wound"),
          word("technology", EnumSet.of(RESISTOR), "carbon[- ]?film", "carbon film"),
          word("technology", EnumSet.of(RESISTOR), "carbon[- ]?comp", "carbon composition"),
          word("technology", EnumSet.of(RESISTOR), "metal[- ]?film", "metal film"),
          word("technology", EnumSet.of(RESISTOR), "metal[- ]?oxide", "metal oxide"),
          amount("TCR", EnumSet.of(RESISTOR), "(\\d+) ?ppm", Dimension.TEMPERATURE_COEFFICIENT),
          amount("Vmax", EnumSet.of(RESISTOR), "(\\d+ ?V)\\b", Dimension.VOLTAGE),
          word("taper", EnumSet.of(POTENTIOMETER), "\\blog|\\baudio\\b", "logarithmic"),
          word("taper", EnumSet.of(POTENTIOMETER), "\\blin", "linear"),
          text("taperLetter", EnumSet.of(POTENTIOMETER), "\\b([ABC]) ?\\d{1,3} ?[kM]\\d?\\b"),
          text("taperLetter", EnumSet.of(POTENTIOMETER), "\\b\\d{1,3} ?[kM]\\d?([ABC])\\b"),
          text("colour", EnumSet.of(LED), "\\b(red|green|yellow|orange|amber|blue|white)\\b"),
          amount("size", EnumSet.of(LED), "(\\d+(?:\\.\\d+)? ?mm)", Dimension.LENGTH),
          amount("pinCount", DUAL_IN_LINE, "\\bDI[LP][- ]?(\\d+)", Dimension.RATIO),
          amount("row", DUAL_IN_LINE, "\\b(7\\.62|10\\.16|15\\.24)", Dimension.LENGTH),
          word("row", EnumSet.of(SOCKET), "\\b300 ?mil|narrow", "7.62 mm"),
          word("row", EnumSet.of(SOCKET), "\\b600 ?mil|wide", "15.24 mm"),
          // JEDEC MS-001; of 22 pins and more other widths are sold, too
          word("row", EnumSet.of(SOCKET), "\\bDI[LP][- ]?(?:[468]|1[468]|20)(?!\\d)", "7.62 mm"),
          amount(
              "pitch", EnumSet.allOf(PartKind.class), "\\bP ?(\\d+(?:\\.\\d+)?)", Dimension.LENGTH),
          amount(
              "pitch",
              CONTACTS,
              "(?<![\\d.])(1\\.27|2(?:\\.0|\\.00|\\.5|\\.54)?|3\\.5|3\\.81|3\\.96|5\\.08|7\\.62) ?mm",
              Dimension.LENGTH),
          // where nothing else is said, common practice
          word("pitch", EnumSet.of(PartKind.PIN_HEADER), "header|strip|socket", "2.54 mm"),
          amount(
              "Vnominal",
              ONE_VOLTAGE,
              "(?<![-–.\\d])(\\d+(?:\\.\\d+)? ?V)(?:[ -]?DC)?\\b(?! ?(?:AC|[-–]|to\\b))",
              Dimension.VOLTAGE),
          amount(
              "Irated",
              EnumSet.of(INDUCTOR, BRIDGE_RECTIFIER),
              "(?<![.\\d])(\\d+(?:\\.\\d+)? ?m?A)\\b",
              Dimension.CURRENT),
          amount(
              "VRRM", EnumSet.of(BRIDGE_RECTIFIER), "(?<![.\\d])(\\d+ ?V)\\b", Dimension.VOLTAGE),
          amount(
              "Rth", EnumSet.of(HEATSINK), "(\\d+(?:\\.\\d+)? ?K/W)", Dimension.THERMAL_RESISTANCE),
          amount("pinCount", EnumSet.of(RESISTOR_NETWORK), "\\bSI[LP][- ]?(\\d+)", Dimension.RATIO),
          amount("f0", EnumSet.of(CRYSTAL), "(\\d+(?:\\.\\d+)? ?[kM]Hz)", Dimension.FREQUENCY),
          amount("CL", EnumSet.of(CRYSTAL), "(\\d+(?:\\.\\d+)? ?pF)", Dimension.CAPACITANCE),
          amount("df", EnumSet.of(CRYSTAL), "(\\d+) ?ppm", Dimension.TEMPERATURE_COEFFICIENT),
          text("polarity", EnumSet.of(BIPOLAR_TRANSISTOR), "\\b(NPN|PNP)\\b"),
          word("polarity", EnumSet.of(MOSFET), "\\bN[- ]?ch", "N-channel"),
          word("polarity", EnumSet.of(MOSFET), "\\bP[- ]?ch", "P-channel"),
          word("technology", DIODES, "schottky", "Schottky"),
          word("technology", DIODES, "ultra[- ]?fast", "ultra-fast recovery"),
          word("technology", DIODES, "\\bfast\\b", "fast recovery"),
          amount("VZ", EnumSet.of(ZENER_DIODE), "(\\d+(?:\\.\\d+)? ?V)\\b", Dimension.VOLTAGE));

  private StatedFacts() {}

  /** One line for each thing stated. */
  public static List<DatasheetLine> in(PartType type, String description) {
    var lines = new ArrayList<DatasheetLine>();
    type.ratedPower().ifPresent(watts -> lines.add(limit(type, "PD", watts)));
    type.ratedVoltage().ifPresent(volts -> lines.add(limit(type, voltageSymbol(type), volts)));
    String text = String.join(" ", type.text(), type.typeNumber(), type.packageName(), description);
    if (type.kind() == REGULATOR) {
      RegulatorNumber.in(text).ifPresent(number -> lines.addAll(stated(type, number)));
    }
    for (Form form : FORMS) {
      boolean open = lines.stream().noneMatch(line -> line.symbol().equals(form.symbol()));
      if (open && form.kinds().contains(type.kind())) {
        form.in(text).ifPresent(found -> lines.add(line(type, form, found)));
      }
    }
    return lines;
  }

  private static List<DatasheetLine> stated(PartType type, RegulatorNumber number) {
    DatasheetLine volts = limit(type, "VO", number.volts());
    return number
        .amperes()
        .map(amperes -> List.of(volts, limit(type, "IO", amperes)))
        .orElse(List.of(volts));
  }

  /** That a known number stands in the part's own. */
  static DatasheetLine like(PartType type, String known) {
    return line(type, "like", known, Optional.empty());
  }

  private static String voltageSymbol(PartType type) {
    return type.kind() == RESISTOR ? "Vmax" : "Vrated";
  }

  private static DatasheetLine limit(PartType type, String symbol, Quantity amount) {
    return line(type, symbol, "", Optional.of(amount));
  }

  private static DatasheetLine line(PartType type, Form form, String found) {
    Optional<Quantity> amount =
        form.dimension().flatMap(dimension -> Quantity.parse(found, dimension).value());
    return line(type, form.symbol(), amount.isPresent() ? "" : found, amount);
  }

  private static DatasheetLine line(
      PartType type, String symbol, String word, Optional<Quantity> amount) {
    String key = type.name();
    Source source = Source.kit("the text \"" + type.text() + "\"");
    return new DatasheetLine(key, "", symbol, word, Optional.empty(), amount, amount, source);
  }

  private static Set<PartKind> where(java.util.function.Predicate<PartKind> test) {
    var kinds = EnumSet.allOf(PartKind.class);
    kinds.removeIf(test.negate());
    return kinds;
  }

  private static Form word(String symbol, Set<PartKind> kinds, String regex, String word) {
    return new Form(symbol, kinds, Pattern.compile(regex, CASE_INSENSITIVE), word, amountIn(word));
  }

  private static Optional<Dimension> amountIn(String word) {
    return Optional.of(Dimension.LENGTH)
        .filter(dimension -> Quantity.parse(word, dimension).value().isPresent());
  }

  private static Form text(String symbol, Set<PartKind> kinds, String regex) {
    return new Form(symbol, kinds, Pattern.compile(regex, CASE_INSENSITIVE), "", Optional.empty());
  }

  private static Form amount(
      String symbol, Set<PartKind> kinds, String regex, Dimension dimension) {
    return new Form(
        symbol, kinds, Pattern.compile(regex, CASE_INSENSITIVE), "", Optional.of(dimension));
  }

  /** One way to state a fact: a fixed word for whatever matches, or the first group as written. */
  private record Form(
      String symbol,
      Set<PartKind> kinds,
      Pattern pattern,
      String word,
      Optional<Dimension> dimension) {

    Optional<String> in(String text) {
      Matcher matcher = pattern.matcher(text);
      if (!matcher.find()) {
        return Optional.empty();
      }
      return Optional.of(word.isEmpty() ? matcher.group(1) : word);
    }
  }
}
