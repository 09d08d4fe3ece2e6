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
 * @param asked what the BOM asks for there, in words; empty until the swap is applied to its kit
 */
public record Swap(
    String board,
    List<Designator> designators,
    String fitted,
    String reason,
    String who,
    String date,
    Place place,
    String asked) {

  public Swap {
    designators = List.copyOf(designators);
  }

  /** A swap as it is written, not yet applied to its kit. */
  public Swap(
      String board,
      List<Designator> designators,
      String fitted,
      String reason,
      String who,
      String date,
      Place place) {
    this(board, designators, fitted, reason, who, date, place, "");
  }

  /** Whether it is of this board design. */
  public boolean isOn(String name) {
    return board.isBlank() || board.equals(name);
  }

  /** The same swap with what the BOM asks for there. */
  public Swap inPlaceOf(String asked) {
    return new Swap(board, designators, fitted, reason, who, date, place, asked);
  }
}
