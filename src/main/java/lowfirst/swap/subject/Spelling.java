package lowfirst.swap.subject;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lowfirst.part.DatasheetLine;
import lowfirst.quantity.Quantity;

/**
 * The symbols of datasheet lines as the rules spell them. Sheets write some of them otherwise; a
 * rating that a rule does not find would else not be asked for.
 */
final class Spelling {
  private static final Map<String, String> USUAL =
      Map.of(
          "IN", "Irated",
          "Ihold", "Irated",
          "IH", "Irated",
          "VN", "Vrated",
          "breaking capacity", "breaking",
          "VDSS", "VDS",
          "BVDSS", "VDS",
          "VGSS", "VGS",
          "TJmax", "TJ");

  /** Ratings that are nominal amounts, and so may stand in any column. */
  private static final Set<String> NOMINAL = Set.of("Irated", "Vrated");

  private Spelling() {}

  /** The same lines, spelt as the rules do. */
  static List<DatasheetLine> of(List<DatasheetLine> lines) {
    if (lines.stream().allMatch(Spelling::isUsual)) {
      return lines;
    }
    var usual = new ArrayList<DatasheetLine>(lines.size());
    for (DatasheetLine line : lines) {
      usual.add(isUsual(line) ? line : respelt(line));
    }
    return usual;
  }

  private static boolean isUsual(DatasheetLine line) {
    return !USUAL.containsKey(line.symbol()) && !isBareNominal(line);
  }

  private static boolean isBareNominal(DatasheetLine line) {
    return NOMINAL.contains(line.symbol()) && SwapPart.limit(line).isEmpty();
  }

  private static DatasheetLine respelt(DatasheetLine line) {
    String symbol = USUAL.getOrDefault(line.symbol(), line.symbol());
    Optional<Quantity> most =
        NOMINAL.contains(symbol) ? SwapPart.limit(line).or(line::typ) : line.max();
    return new DatasheetLine(
        line.partType(),
        line.maker(),
        symbol,
        line.condition(),
        line.min(),
        line.typ(),
        most,
        line.source());
  }
}
