package lowfirst.intake;

import java.util.List;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/** What the cells of a column look like, for headers that are missing or say little. */
final class CellShapes {
  private static final Pattern DESIGNATORS =
      Pattern.compile(
          "[\\p{L}_]{1,6}[0-9?]{1,4}[\\p{L}_]{0,12}([\\s,;.-]+[\\p{L}_]{0,6}[0-9]{1,4}[\\p{L}_]{0,12})*[,;\\s]*");
  private static final Pattern WHOLE = Pattern.compile("[0-9]{1,5}");
  private static final Pattern NUMBER =
      Pattern.compile("[+-]?[0-9]+([.,][0-9]+)?\\s*(mm|mil|mils|in|inch|um|µm|\")?");
  private static final Pattern SIDE =
      Pattern.compile(
          "(?i)top|bottom|t|b|front|back|top ?layer|bottom ?layer|oben|unten|f\\.cu|b\\.cu");

  private static final Pattern PACKAGE =
      Pattern.compile(
          "(?i)\\b(dip|dil|pdip|to-?\\d{2,3}|do-?\\d{2,3}|axial|radial|sip|tht|smd|sot|soic|qfn)(?![a-z])");

  private CellShapes() {}

  /** Whether a cell reads as designators with numbers. */
  static boolean isDesignators(String text) {
    return text.length() < 2000 && DESIGNATORS.matcher(text).matches();
  }

  /** The share of the filled cells of a column that read as designators with numbers. */
  static double designatorShare(List<Row> rows, int cell) {
    return share(rows, cell, CellShapes::isDesignators);
  }

  /** The share of the filled cells that are whole numbers. */
  static double wholeShare(List<Row> rows, int cell) {
    return share(rows, cell, text -> WHOLE.matcher(text).matches());
  }

  /** The share of the filled cells that are numbers or lengths. */
  static double numberShare(List<Row> rows, int cell) {
    return share(rows, cell, text -> NUMBER.matcher(text).matches());
  }

  /** The share of the filled cells that name a side of the board. */
  static double sideShare(List<Row> rows, int cell) {
    return share(rows, cell, text -> SIDE.matcher(text).matches());
  }

  /** The share of the rows that have anything in this cell. */
  static double filledShare(List<Row> rows, int cell) {
    long filled = rows.stream().filter(row -> !row.cell(cell).isEmpty()).count();
    return rows.isEmpty() ? 0 : (double) filled / rows.size();
  }

  /** The share of the filled cells that name a package. */
  static double packageShare(List<Row> rows, int cell) {
    return share(rows, cell, text -> PACKAGE.matcher(text).find());
  }

  /** Whether a column of whole numbers counts something, and does not just number the rows. */
  static boolean areQuantities(List<Row> rows, int cell) {
    List<String> cells =
        rows.stream().map(row -> row.cell(cell)).filter(t -> !t.isEmpty()).toList();
    if (cells.isEmpty() || wholeShare(rows, cell) < 0.7) {
      return false;
    }
    int following = 0;
    for (int i = 1; i < cells.size(); i++) {
      if (isOneMore(cells.get(i - 1), cells.get(i))) {
        following++;
      }
    }
    return cells.size() < 3 || following < (cells.size() - 1) * 0.8;
  }

  private static boolean isOneMore(String before, String after) {
    return WHOLE.matcher(before).matches()
        && WHOLE.matcher(after).matches()
        && Integer.parseInt(after) == Integer.parseInt(before) + 1;
  }

  private static double share(List<Row> rows, int cell, Predicate<String> shape) {
    int filled = 0;
    int fitting = 0;
    for (Row row : rows) {
      String text = row.cell(cell);
      if (!text.isEmpty()) {
        filled++;
        if (shape.test(text)) {
          fitting++;
        }
      }
    }
    return filled == 0 ? 0 : (double) fitting / filled;
  }
}
