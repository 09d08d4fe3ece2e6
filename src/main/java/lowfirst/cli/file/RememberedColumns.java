package lowfirst.cli.file;

import java.io.IOException;
import java.io.PrintStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;
import lowfirst.cli.process.CannotReadOrWrite;
import lowfirst.intake.column.ColumnMap;

/** Writes what the user said about columns into the kit, so that it need not be said again. */
public final class RememberedColumns {
  private RememberedColumns() {}

  /** Adds to the kit's column map; says so, or why not, on {@code err}. */
  public static void add(Path kit, ColumnMap told, PrintStream err) {
    Path file = kit.resolve(ColumnMap.FILE);
    try {
      Map<String, String> before = known(file);
      var entries = new TreeMap<>(before);
      entries.putAll(told.entries());
      if (!entries.equals(before)) {
        write(file, entries);
        err.println("lowfirst: remembered in " + file);
      }
    } catch (IOException | IllegalArgumentException | CannotReadOrWrite failed) {
      err.println("lowfirst: the columns are not remembered: " + failed.getMessage());
    }
  }

  private static Map<String, String> known(Path file) throws IOException {
    var entries = new TreeMap<String, String>();
    if (Files.exists(file)) {
      var properties = new Properties();
      properties.load(new StringReader(Files.readString(file)));
      properties.forEach((key, value) -> entries.put(key + "", value + ""));
    }
    return entries;
  }

  private static void write(Path file, Map<String, String> entries) {
    var text =
        new StringBuilder(
            "# Which header holds which column; written by --column, yours to edit.\n");
    entries.forEach(
        (key, value) ->
            text.append(escaped(key)).append(" = ").append(escaped(value)).append('\n'));
    ReportFolder.put(file, text.toString().getBytes(StandardCharsets.UTF_8));
  }

  private static String escaped(String text) {
    return text.replaceAll("([\\\\:=#! ])", "\\\\$1");
  }
}
