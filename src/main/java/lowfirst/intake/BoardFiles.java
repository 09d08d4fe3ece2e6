package lowfirst.intake;

import java.util.List;
import java.util.Optional;
import lowfirst.board.Board;

/**
 * A board of the kit and the files that hold its tables.
 *
 * @param name what the kit calls it
 * @param count how many are built
 * @param size the bare board, where {@code boards.csv} states it
 * @param boms the BOM; empty when there is none
 * @param placements one placement list or several, such as one a side
 * @param design an IPC-2581 file, which fills in whatever the tables lack
 */
record BoardFiles(
    String name,
    int count,
    Optional<Board.Size> size,
    List<String> boms,
    List<String> placements,
    Optional<String> design) {

  BoardFiles {
    boms = List.copyOf(boms);
    placements = List.copyOf(placements);
  }
}
