package lowfirst.intake;

import java.util.ArrayList;
import java.util.List;
import lowfirst.intake.column.ColumnMap;
import lowfirst.intake.column.TableKind;
import lowfirst.intake.table.Table;
import lowfirst.intake.table.TableReader;
import lowfirst.part.Datasheets;
import lowfirst.problem.Problem;

/** Reads a parts list of the form of {@code datasheets.csv}: what lies in a drawer. */
public final class DrawerReader {
  private DrawerReader() {}

  /**
   * What a parts list holds.
   *
   * @param parts its lines, the faulty ones left out
   * @param problems what is wrong with it, in source order
   */
  public record Drawer(Datasheets parts, List<Problem> problems) {
    public Drawer {
      problems = problems.stream().sorted().toList();
    }
  }

  /** Reads a list; never throws. */
  public static Drawer read(String file, byte[] bytes) {
    Table table = TableReader.read(TableKind.DATASHEETS, file, bytes, ColumnMap.empty());
    var problems = new ArrayList<Problem>(table.problems());
    Datasheets parts = Datasheets.of(PartTables.datasheets(table, problems));
    return new Drawer(parts, problems);
  }
}
