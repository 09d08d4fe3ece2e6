package lowfirst.intake;

import java.util.List;

/**
 * A record of a table as it stands in the file.
 *
 * @param line the line it starts on, from 1
 * @param cells its cells, without the blanks around them
 */
record Row(int line, List<String> cells) {

  Row {
    cells = List.copyOf(cells);
  }

  /** The cell at an index from 0; empty when the row is shorter. */
  String cell(int index) {
    return index >= 0 && index < cells.size() ? cells.get(index) : "";
  }

  /** Whether no cell holds anything. */
  boolean isBlank() {
    for (int i = 0; i < cells.size(); i++) {
      if (!cells.get(i).isEmpty()) {
        return false;
      }
    }
    return true;
  }

  /** How many cells hold something. */
  int filled() {
    int filled = 0;
    for (int i = 0; i < cells.size(); i++) {
      filled += cells.get(i).isEmpty() ? 0 : 1;
    }
    return filled;
  }
}
