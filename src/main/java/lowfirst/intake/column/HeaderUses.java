package lowfirst.intake.column;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Which cell of a header names which column, as far as it is found. */
public final class HeaderUses {
  private final TableKind kind;
  private final Map<Column, String> told;
  private final List<String> names;
  private final List<Header.Use> uses = new ArrayList<>();
  private final boolean[] taken;

  /**
   * A header of which nothing is found yet.
   *
   * @param told the columns that the user names
   * @param names what stands over each column of the table
   */
  public HeaderUses(TableKind kind, Map<Column, String> told, List<String> names) {
    this.kind = kind;
    this.told = told;
    this.names = new ArrayList<>(names);
    this.taken = new boolean[names.size()];
  }

  /** What the header is that of. */
  public TableKind kind() {
    return kind;
  }

  /** What stands over each column. */
  public List<String> names() {
    return names;
  }

  /** What is found, in the order of finding. */
  public List<Header.Use> all() {
    return uses;
  }

  /** Takes a cell for a column. */
  public void add(Column column, int cell, Header.Basis basis) {
    uses.add(new Header.Use(column, cell, basis));
    taken[cell] = true;
  }

  /** A column behind the last that has a header. */
  public void addBehind(Column column, Header.Basis basis) {
    uses.add(new Header.Use(column, names.size(), basis));
    names.add("");
  }

  /** The same cell for another column. */
  public void replace(Header.Use use, Column column, Header.Basis basis) {
    uses.remove(use);
    uses.add(new Header.Use(column, use.cell(), basis));
  }

  /** Whether no column is found in a cell. */
  public boolean isFree(int cell) {
    return !taken[cell];
  }

  /** Whether a column is found. */
  public boolean has(Column column) {
    return cellOf(column) >= 0;
  }

  /** Whether neither a cell nor the user names it. */
  public boolean lacks(Column column) {
    return !has(column) && !told.containsKey(column);
  }

  /** The cell that names a column; -1 when none does. */
  public int cellOf(Column column) {
    for (Header.Use use : uses) {
      if (use.column() == column) {
        return use.cell();
      }
    }
    return -1;
  }

  /** How many columns have a header that is sure. */
  public long sure() {
    return uses.stream().filter(use -> use.basis() == Header.Basis.HEADER).count();
  }

  /** Columns that no header names yet: the required ones first. */
  public Set<Column> wanted() {
    var wanted = new LinkedHashSet<>(kind.required());
    wanted.addAll(EnumSet.allOf(Column.class));
    wanted.remove(Column.POSITION);
    wanted.removeAll(told.keySet());
    uses.forEach(use -> wanted.remove(use.column()));
    return wanted;
  }
}
