package lowfirst.intake.table;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lowfirst.intake.column.HeaderUnit;
import lowfirst.intake.column.PlainNumber;
import lowfirst.intake.column.Row;

/** What lines of prose around a table state for all its rows: the unit, the side of the board. */
final class Preamble {
  private static final Pattern UNIT =
      Pattern.compile(
          "(?iU)(?:\\b(?:u?units?|measure(?:ment)?s?|metric|(?:maß)?einheit(?:en)?|maße|unit(?:é|e)s?|unidad(?:es)?|unità"
              + "|jednostk[ai]|jednotk[ay]|единиц[аы](?: измерения)?|单位|単位|dimensions?|coordinates?|positions?)\\b"
              + "(?:\\s*(?:used|of|are|is|in|for|measurement|length|metric|imperial|coordinates?|[:=]))*\\s*[:：=,(-]?\\s*"
              + "|\\b(?:x\\W{1,5}y|all|values|lengths|distances|numbers)\\s+(?:are\\s+)?in\\s+)"
              + "(mm|мм|millimet(?:er|re)s?|mils?|thou?|inch(?:es)?|in|um|µm|μm|microns?)\\b");

  private static final Pattern SIDE =
      Pattern.compile("(?i)\\b(?:side|layer)\\s*[:=]\\s*([\\p{L}.]+)");

  private Preamble() {}

  /** The unit that some line states for bare numbers. */
  static Optional<String> unit(List<Row> lines) {
    return found(UNIT, lines).map(HeaderUnit::canonical);
  }

  /** The word for the side that some line states for every row. */
  static Optional<String> side(List<Row> lines) {
    return found(SIDE, lines);
  }

  /**
   * The lines in front of the first row with two numbers, where one of them states a unit or a
   * side; none otherwise. A header may be among them.
   */
  static List<Row> before(List<Row> rows) {
    int lines = 0;
    while (lines < Math.min(rows.size(), Cut.SEARCHED) && numbers(rows.get(lines)) < 2) {
      lines++;
    }
    List<Row> before = rows.subList(0, lines);
    return lines < rows.size() && (unit(before).isPresent() || side(before).isPresent())
        ? before
        : List.of();
  }

  private static long numbers(Row row) {
    return row.cells().stream().filter(cell -> PlainNumber.in(cell).isPresent()).count();
  }

  private static Optional<String> found(Pattern pattern, List<Row> lines) {
    for (Row line : lines) {
      Matcher matcher = pattern.matcher(String.join(" ", line.cells()));
      if (matcher.find()) {
        return Optional.of(matcher.group(1).toLowerCase(Locale.ROOT));
      }
    }
    return Optional.empty();
  }
}
