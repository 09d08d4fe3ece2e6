package lowfirst.board;

import java.util.List;
import lowfirst.problem.Place;

/**
 * An accepted substitute: one row of {@code swaps.csv}.
 *
 * @param board the board design; empty means every board
 * @param designators where it is fitted
 * @param fitted the part type fitted, as written
 * @param reason why
 * @param who who accepted it
 * @param date when, as written
 */
public record Swap(
    String board,
    List<Designator> designators,
    String fitted,
    String reason,
    String who,
    String date,
    Place place) {

  public Swap {
    designators = List.copyOf(designators);
  }
}
