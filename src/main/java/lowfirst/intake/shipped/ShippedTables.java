package lowfirst.intake.shipped;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import lowfirst.part.BodyOutlines;
import lowfirst.part.Datasheets;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * The tables that come with the tool; a kit's own rows win over them. A fault in one is our own
 * mistake, so it throws.
 */
public final class ShippedTables {
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180
          .builder()
          .setCommentMarker('#')
          .setHeader()
          .setSkipHeaderRecord(true)
          .setIgnoreEmptyLines(true)
          .get();

  private ShippedTables() {}

  /** The part catalogue: datasheet lines of common through-hole parts, read once. */
  public static Datasheets catalogue() {
    return Catalogue.LINES;
  }

  /** The package table: seated heights and body sizes, a source on every row, read once. */
  public static BodyOutlines bodyOutlines() {
    return Outlines.TABLE;
  }

  /** The records of a shipped table, by header. */
  static List<CSVRecord> records(String resource) {
    try (InputStream bytes = ShippedTables.class.getResourceAsStream(resource);
        var reader = new InputStreamReader(bytes, StandardCharsets.UTF_8);
        var parser = FORMAT.parse(reader)) {
      return parser.getRecords();
    } catch (IOException unreadable) {
      throw new UncheckedIOException("the shipped table " + resource, unreadable);
    }
  }

  /** Loaded when first asked for: most commands don't need it. */
  private static final class Catalogue {
    private static final Datasheets LINES =
        Datasheets.of(records("catalogue.csv").stream().map(ShippedLine::of).toList());
  }

  private static final class Outlines {
    private static final BodyOutlines TABLE =
        BodyOutlines.of(records("body-outlines.csv").stream().map(ShippedOutline::of).toList());
  }
}
