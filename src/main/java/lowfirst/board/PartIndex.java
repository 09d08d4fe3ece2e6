package lowfirst.board;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Finds parts by their designators. Usual ones stand in plain arrays, since a large board looks
 * each of its placements up and a map follows four objects to one.
 */
final class PartIndex {
  /** A slot with the number of a usual designator has its part; 0 is a free one. */
  private final long[] numbers;

  private final BoardPart[] numbered;
  private final Map<Designator, BoardPart> others = new HashMap<>();
  private final List<BoardPart> all = new ArrayList<>();

  /**
   * An empty index.
   *
   * @param most how many parts will be asked for at most
   */
  PartIndex(int most) {
    // At most half full, so that a free slot is near.
    int slots = 4 * Integer.highestOneBit(Math.max(1, most));
    this.numbers = new long[slots];
    this.numbered = new BoardPart[slots];
  }

  /** Every part, in the order in which they were first asked for. */
  List<BoardPart> all() {
    return all;
  }

  /** The part of a designator, made where there is none yet. */
  BoardPart of(Designator designator) {
    if (designator.number() == 0) {
      return others.computeIfAbsent(designator, this::made);
    }
    int slot = slot(designator);
    if (numbers[slot] == 0) {
      numbers[slot] = designator.number();
      numbered[slot] = made(designator);
    }
    return numbered[slot];
  }

  /** The part of a designator; null when there is none. */
  BoardPart find(Designator designator) {
    return designator.number() == 0 ? others.get(designator) : numbered[slot(designator)];
  }

  private BoardPart made(Designator designator) {
    var part = new BoardPart(designator);
    all.add(part);
    return part;
  }

  /** Where a usual designator stands, or the free slot where it belongs. */
  private int slot(Designator designator) {
    int slot = designator.hashCode() & numbers.length - 1;
    while (numbers[slot] != 0 && numbers[slot] != designator.number()) {
      slot = slot + 1 & numbers.length - 1;
    }
    return slot;
  }
}
