package lowfirst.problem;

import java.util.Comparator;

/**
 * Where something stands in the user's tables.
 *
 * @param file the path as the user would type it, relative to the kit
 * @param line the line the record starts on, from 1; 0 when the whole file is meant
 * @param column the column, from 1; 0 when the whole line is meant
 * @param header the header of that column, empty when there is none
 * @param cell the text of the cell as it stands in the file, empty when the whole line is meant
 */
public record Place(String file, int line, int column, String header, String cell)
    implements Comparable<Place> {

  private static final Comparator<Place> SOURCE_ORDER =
      Comparator.comparing(Place::file)
          .thenComparingInt(Place::line)
          .thenComparingInt(Place::column);

  /** The whole file. */
  public static Place ofFile(String file) {
    return new Place(file, 0, 0, "", "");
  }

  /** A whole line. */
  public static Place ofLine(String file, int line) {
    return new Place(file, line, 0, "", "");
  }

  /** One cell. */
  public static Place ofCell(String file, int line, int column, String header, String cell) {
    return new Place(file, line, column, header, cell);
  }

  @Override
  public int compareTo(Place other) {
    return SOURCE_ORDER.compare(this, other);
  }

  /** For example {@code bom.csv:12, column 3 "Qty" (12 cm)}. */
  @Override
  public String toString() {
    var text = new StringBuilder(file);
    if (line > 0) {
      text.append(':').append(line);
    }
    if (column > 0) {
      text.append(", column ").append(column);
    }
    if (!header.isEmpty()) {
      text.append(" \"").append(header).append('"');
    }
    if (column > 0) {
      text.append(" (").append(cell.isEmpty() ? "empty" : shortened(cell)).append(')');
    }
    return text.toString();
  }

  private static String shortened(String cell) {
    String line = cell.replaceAll("\\p{Cntrl}+", " ");
    return Excerpt.of(line, 60);
  }
}
