package lowfirst.intake.column;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** How the columns of a table were understood. */
public final class Header {
  private static final Set<Basis> WEAK = EnumSet.of(Basis.LIKELY_HEADER, Basis.CELLS);

  private final int index;
  private final List<String> names;
  private final List<Use> uses;
  private final Optional<CoordinatePair> pair;

  /** By column: asked for every cell of a table. */
  private final int[] cells = new int[Column.values().length];

  /**
   * A header.
   *
   * @param index of the header's row among the rows; -1 when the table has none
   * @param names the header cells; empty texts when there is none
   * @param uses which cell is which column
   * @param pair how x and y stand together in the cell that is both
   */
  public Header(int index, List<String> names, List<Use> uses, Optional<CoordinatePair> pair) {
    this.index = index;
    this.names = List.copyOf(names);
    this.uses = List.copyOf(uses);
    this.pair = pair;
    Arrays.fill(cells, -1);
    for (Use use : this.uses) {
      int column = use.column().ordinal();
      cells[column] = cells[column] < 0 ? use.cell() : cells[column];
    }
  }

  /** Of its row among the rows; -1 when the table has none. */
  public int index() {
    return index;
  }

  /** The header cells. */
  public List<String> names() {
    return names;
  }

  /** Which cell is which column. */
  public List<Use> uses() {
    return uses;
  }

  /** How x and y stand together, where one cell is both. */
  public Optional<CoordinatePair> pair() {
    return pair;
  }

  /** One whose x and y stand in cells of their own. */
  public Header(int index, List<String> names, List<Use> uses) {
    this(index, names, uses, Optional.empty());
  }

  /** How sure one is of a column. */
  public enum Basis {
    /** The user said so. */
    TOLD("you said so"),
    /** Its header is a usual one. */
    HEADER("usual header"),
    /** Its header may mean it, and no other does so better. */
    LIKELY_HEADER("likely header"),
    /** What stands in the cells. */
    CELLS("what its cells look like"),
    /** Its header carries on another one. */
    CARRIED_ON("carries on the column before it"),
    /** Half of the cell of another column. */
    HALF("stands in one cell with the other"),
    /** An element or attribute of a standard has just this meaning. */
    STANDARD("IPC-2581 says so");

    private final String words;

    Basis(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  /**
   * A column found.
   *
   * @param cell its index from 0
   */
  public record Use(Column column, int cell, Basis basis) {}

  /** The cell that holds a column; -1 when none does. */
  public int cellOf(Column column) {
    return cells[column.ordinal()];
  }

  /** The header text over a cell. */
  public String name(int cell) {
    return cell >= 0 && cell < names.size() ? names.get(cell) : "";
  }

  /** Whether the columns are elements of a standard, which leaves nothing to guess. */
  public boolean isStandard() {
    return !uses.isEmpty() && uses.get(0).basis() == Basis.STANDARD;
  }

  /** Whether every column that the table can't do without was found. */
  public boolean isComplete(TableKind kind) {
    return kind.required().stream().allMatch(column -> cellOf(column) >= 0);
  }

  /** Whether words, and not only what the cells look like, name the columns of such a table. */
  public boolean isHeaded(TableKind kind) {
    long byCells = uses.stream().filter(use -> use.basis() == Basis.CELLS).count();
    return isComplete(kind) && index >= 0 && byCells * 2 < uses.size();
  }

  /** Whether a column was found by a likely header or by its cells. */
  boolean isWeak(Column column) {
    return uses.stream().anyMatch(use -> use.column() == column && WEAK.contains(use.basis()));
  }

  /** Whether only what stands in its cells tells that this column was found. */
  public boolean isByCells(Column column) {
    return uses.stream().anyMatch(use -> use.column() == column && use.basis() == Basis.CELLS);
  }

  /** Whether only the cells tell what the columns are. */
  public boolean isGuessed() {
    return uses.stream().allMatch(use -> use.basis() == Basis.CELLS);
  }

  /** How much of the table it explains; 0 when a required column is missing. */
  public int score(TableKind kind) {
    if (!isComplete(kind) || (kind.isExported() && uses.size() < 2)) {
      return 0;
    }
    return uses.stream().mapToInt(use -> WEAK.contains(use.basis()) ? 1 : 3).sum();
  }
}
