package lowfirst.board;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Finds parts by their designators. Those with usual ones stand in rows, R1 to R99 behind one
 * another, since a large board looks each of its placements up and a map follows four objects to
 * one.
 */
final class PartIndex {
  private static final int SLOTS = 64;

  private final Map<Integer, Row> rows = new HashMap<>();

  /** The row used last of those whose letters fall on the same slot. */
  private final Row[] used = new Row[SLOTS];

  private final Map<Designator, BoardPart> others = new HashMap<>();
  private final List<BoardPart> all = new ArrayList<>();

  /** How many more places rows may have: a few high numbers make no long rows. */
  private int placesLeft;

  /** The parts whose designators start with the same letters, each at the place of its number. */
  private static final class Row {
    private final int letters;
    private BoardPart[] parts = new BoardPart[0];

    /** Whether some number was too high for it. */
    private boolean hasOthers;

    private Row(int letters) {
      this.letters = letters;
    }
  }

  /**
   * An empty index.
   *
   * @param most how many parts will be asked for at most
   */
  PartIndex(int most) {
    this.placesLeft = 64 + 8 * most;
  }

  /** Every part, in the order in which they were first asked for. */
  List<BoardPart> all() {
    return all;
  }

  /** The part of a designator, made where there is none yet. */
  BoardPart of(Designator designator) {
    if (!designator.isUsual()) {
      return others.computeIfAbsent(designator, this::made);
    }
    int letters = designator.letters();
    Row row = row(letters);
    if (row == null) {
      row = new Row(letters);
      rows.put(letters, row);
    }
    BoardPart known = find(row, designator);
    if (known != null) {
      return known;
    }
    BoardPart part = made(designator);
    if (hasPlace(row, designator.figures())) {
      row.parts[designator.figures()] = part;
    } else {
      row.hasOthers = true;
      others.put(designator, part);
    }
    return part;
  }

  /** The part of a designator; null when there is none. */
  BoardPart find(Designator designator) {
    if (!designator.isUsual()) {
      return others.get(designator);
    }
    Row row = row(designator.letters());
    return row == null ? null : find(row, designator);
  }

  /** The row of these letters; null when there is none. Mostly it was used just before. */
  private Row row(int letters) {
    int slot = (letters ^ letters >>> 16 ^ letters >>> 24) & SLOTS - 1;
    if (used[slot] == null || used[slot].letters != letters) {
      Row row = rows.get(letters);
      used[slot] = row == null ? used[slot] : row;
      return row;
    }
    return used[slot];
  }

  private BoardPart find(Row row, Designator designator) {
    int place = designator.figures();
    BoardPart part = place < row.parts.length ? row.parts[place] : null;
    return part == null && row.hasOthers ? others.get(designator) : part;
  }

  private BoardPart made(Designator designator) {
    var part = new BoardPart(designator);
    all.add(part);
    return part;
  }

  /** Lengthens the row where it ends before this place, by half at least, if that may be. */
  private boolean hasPlace(Row row, int place) {
    int length = row.parts.length;
    if (place < length) {
      return true;
    }
    int longer = Math.max(place + 1, length + length / 2);
    if (longer - length > placesLeft) {
      return false;
    }
    placesLeft -= longer - length;
    row.parts = Arrays.copyOf(row.parts, longer);
    return true;
  }
}
