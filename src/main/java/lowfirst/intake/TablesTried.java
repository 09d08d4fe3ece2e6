package lowfirst.intake;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import lowfirst.intake.column.ColumnMap;
import lowfirst.intake.column.TableKind;
import lowfirst.intake.table.DecodedFile;
import lowfirst.intake.table.Table;
import lowfirst.intake.table.TableReader;

/**
 * The files of a kit as tables. Who only asks which kind a file is reads all of it; so what was
 * read is kept until it is taken.
 */
final class TablesTried {
  private final KitFiles files;
  private final ColumnMap map;

  /** By its file, the table as it was asked for last. */
  private final Map<String, Table> read = new HashMap<>();

  private Optional<DecodedFile> decoded = Optional.empty();

  TablesTried(KitFiles files, ColumnMap map) {
    this.files = files;
    this.map = map;
  }

  /** A file as a table of a kind; without rows where there is no such file. */
  Table look(TableKind kind, String path) {
    Table last = read.get(path);
    if (last != null && last.kind() == kind) {
      return last;
    }
    Table table = TableReader.read(kind, decoded(path), map);
    read.put(path, table);
    return table;
  }

  /** The same for its last reader: nothing of the file is kept any longer. */
  Table take(TableKind kind, String path) {
    Table table = look(kind, path);
    read.remove(path);
    decoded = Optional.empty();
    return table;
  }

  /** Kinds are tried file by file, so the last one is enough. */
  private DecodedFile decoded(String path) {
    DecodedFile found =
        decoded
            .filter(file -> file.file().equals(path))
            .orElseGet(() -> DecodedFile.of(path, files.file(path).orElse(new byte[0])));
    decoded = Optional.of(found);
    return found;
  }
}
