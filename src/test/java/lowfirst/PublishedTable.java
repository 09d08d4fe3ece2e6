package lowfirst;

import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** A table of published values with its provenance, from {@code src/test/resources/published}. */
public final class PublishedTable {
  /** The provenance that each file must state, one comment line each. */
  public static final List<String> STATED = List.of("source", "where", "read on", "tolerance");

  private PublishedTable() {}

  /** The rows of one table, each a map from header to cell; cells may be empty. */
  public static List<Map<String, String>> rows(String file) {
    String lines =
        text(file).lines().filter(line -> !line.startsWith("#")).collect(Collectors.joining("\n"));
    CSVFormat format = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();
    try (var records = format.parse(new StringReader(lines))) {
      return records.getRecords().stream().map(CSVRecord::toMap).toList();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /** The whole file, provenance included. */
  public static String text(String file) {
    String path = "/published/" + file;
    try (InputStream in = PublishedTable.class.getResourceAsStream(path)) {
      if (in == null) {
        throw new IllegalArgumentException("no such table: " + path);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
