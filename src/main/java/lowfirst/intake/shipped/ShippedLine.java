package lowfirst.intake.shipped;

import java.util.Optional;
import lowfirst.part.DatasheetLine;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Source;
import org.apache.commons.csv.CSVRecord;

/**
 * One row of the part catalogue: {@code part type, maker, symbol, condition, min, typ, max, unit,
 * source}. A source that starts with "from memory" makes the line one that can pass nothing.
 */
final class ShippedLine {
  private static final String MEMORY = "from memory";

  private ShippedLine() {}

  static DatasheetLine of(CSVRecord row) {
    Dimension dimension =
        Quantity.measuredIn(row.get("unit"))
            .orElseThrow(() -> new IllegalStateException("unit of " + row));
    return new DatasheetLine(
        row.get("part type"),
        row.get("maker"),
        row.get("symbol"),
        row.get("condition"),
        value(row, "min", dimension),
        value(row, "typ", dimension),
        value(row, "max", dimension),
        source(row.get("maker"), row.get("source")));
  }

  private static Optional<Quantity> value(CSVRecord row, String column, Dimension dimension) {
    String number = row.get(column);
    return number.isEmpty()
        ? Optional.empty()
        : Optional.of(Quantity.parse(number + row.get("unit"), dimension).orThrow());
  }

  private static Source source(String maker, String citation) {
    if (citation.isBlank() || maker.isBlank()) {
      throw new IllegalStateException("a catalogue row names its maker and source");
    }
    return citation.startsWith(MEMORY)
        ? new Source(Source.Origin.MEMORY, citation)
        : Source.datasheet(citation);
  }
}
