package lowfirst.swap;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lowfirst.part.DatasheetLine;
import lowfirst.part.Datasheets;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Source;
import lowfirst.swap.subject.FittedPart;
import lowfirst.swap.subject.SwapCase;

/**
 * Datasheets of two parts, OLD and NEW, each in one line of text: {@code [Maker] RDSon@VGS=4V <0.05
 * Ohm; (memory) VDS >60 V; technology = Schottky}. An amount is at most, at least or typical;
 * {@code >11.4<12.6 V} is at least the one and at most the other.
 */
final class Sheets {
  private static final Map<String, Dimension> UNITS =
      Map.ofEntries(
          Map.entry("V", Dimension.VOLTAGE),
          Map.entry("A", Dimension.CURRENT),
          Map.entry("Ohm", Dimension.RESISTANCE),
          Map.entry("W", Dimension.POWER),
          Map.entry("degC", Dimension.TEMPERATURE),
          Map.entry("K/W", Dimension.THERMAL_RESISTANCE),
          Map.entry("C", Dimension.CHARGE),
          Map.entry("F", Dimension.CAPACITANCE),
          Map.entry("H", Dimension.INDUCTANCE),
          Map.entry("s", Dimension.TIME),
          Map.entry("J", Dimension.ENERGY),
          Map.entry("mm", Dimension.LENGTH),
          Map.entry("A2s", Dimension.JOULE_INTEGRAL),
          Map.entry("x", Dimension.RATIO));
  private static final Pattern LINE =
      Pattern.compile(
          "(\\(memory\\) )?(?:\\[(\\w+)] )?(\\w+)(?:@([^<>~]*))?"
              + " (?:= (.+)|([<>~])([^<~\\s]+)(?:~([^<\\s]+))?(?:<(\\S+))? (\\S+))");

  private Sheets() {}

  /** The case of NEW in place of OLD. */
  static SwapCase swap(PartKind kind, String place, String asked, String offered) {
    var all = new ArrayList<>(lines("OLD", kind, asked));
    all.addAll(lines("NEW", kind, offered));
    return swap(kind, place, "OLD", "NEW", Datasheets.of(all));
  }

  /** The case of one named part in place of another. */
  static SwapCase swap(
      PartKind kind, String place, String asked, String offered, Datasheets datasheets) {
    PartType type = FittedPart.of(asked, blank(kind), datasheets);
    return SwapPlaces.swap(type, "", offered, place, datasheets);
  }

  /** A part of which only the kind is known. */
  static PartType blank(PartKind kind) {
    return PartType.named(kind, "", "", "");
  }

  static List<DatasheetLine> lines(String part, PartKind kind, String text) {
    var lines = new ArrayList<DatasheetLine>();
    lines.add(line(part, "kind = " + kind.words()));
    for (String one : text.isEmpty() ? new String[0] : text.split("; ")) {
      lines.add(line(part, one));
    }
    return lines;
  }

  private static DatasheetLine line(String part, String text) {
    Matcher read = LINE.matcher(text);
    assertTrue(read.matches(), text);
    Optional<Quantity> amount = amount(read, 7);
    return new DatasheetLine(
        part,
        orNothing(read.group(2)),
        read.group(3),
        read.group(5) == null ? orNothing(read.group(4)) : read.group(5),
        amount.filter(a -> read.group(6).equals(">")),
        amount(read, 8).or(() -> amount.filter(a -> read.group(6).equals("~"))),
        amount(read, 9).or(() -> amount.filter(a -> read.group(6).equals("<"))),
        read.group(1) == null
            ? Source.datasheet("test sheet")
            : new Source(Source.Origin.MEMORY, "from memory"));
  }

  private static Optional<Quantity> amount(Matcher read, int group) {
    return Optional.ofNullable(read.group(group))
        .map(number -> Quantity.of(number, UNITS.get(read.group(10))));
  }

  private static String orNothing(String text) {
    return text == null ? "" : text;
  }
}
