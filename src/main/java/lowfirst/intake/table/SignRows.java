package lowfirst.intake.table;

import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lowfirst.intake.column.Row;

/** Rows of a text between whose cells a sign stands that is no usual separator: R1 / 10k / 0207. */
final class SignRows {
  /** Signs that hardly stand in a cell. */
  private static final String RARE = "^~!§¦";

  /** Signs that may stand in a cell, and part cells only with a blank on either side. */
  private static final String SPACED = "/:*>\\-–";

  /** May stand in a cell, unless it parts all lines alike. */
  private static final Pattern COLON = Pattern.compile(":");

  /** Lines of a table are at least so many, the header among them. */
  private static final int FEWEST = 2;

  /** A longer line is no row. */
  private static final int LONGEST = 4096;

  private SignRows() {}

  /** The rows of {@code text}, cut at the sign that stands in most lines; none without one. */
  static List<Row> of(String text) {
    String[] lines = text.split("\r\n|\r|\n", -1);
    Pattern best = null;
    long most = FEWEST - 1;
    for (String sign : (RARE + SPACED).split("")) {
      Pattern between = between(sign);
      int cells = RARE.contains(sign) ? 2 : 3;
      long cut =
          text.contains(sign)
              ? Stream.of(lines).filter(line -> cells(between, line).size() >= cells).count()
              : 0;
      if (cut > most) {
        best = between;
        most = cut;
      }
    }
    if (best == null && areEven(lines)) {
      best = COLON;
    }
    if (best == null) {
      return List.of();
    }
    Pattern between = best;
    return IntStream.range(0, lines.length)
        .filter(i -> !lines[i].isBlank())
        .mapToObj(i -> new Row(i + 1, cells(between, lines[i])))
        .toList();
  }

  /** Whether colons part every line, all into as many cells. */
  private static boolean areEven(String[] lines) {
    List<Integer> sizes =
        Stream.of(lines)
            .filter(line -> !line.isBlank())
            .map(line -> cells(COLON, line).size())
            .distinct()
            .toList();
    return sizes.size() == 1 && sizes.get(0) > 2 && lines.length >= FEWEST;
  }

  private static Pattern between(String sign) {
    String blanks = RARE.contains(sign) ? "\\s*" : "\\s+";
    return Pattern.compile(
        blanks + Pattern.quote(sign) + (RARE.contains(sign) ? "\\s*" : "(?:\\s+|$)"));
  }

  private static List<String> cells(Pattern between, String line) {
    return line.length() > LONGEST
        ? List.of(line.strip())
        : Arrays.stream(between.split(line.strip(), -1)).map(String::strip).toList();
  }
}
