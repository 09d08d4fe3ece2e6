package lowfirst.intake.shipped;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import lowfirst.part.BodyOutline;
import lowfirst.part.BodyOutlines;
import lowfirst.part.PartKind;
import lowfirst.quantity.Source;
import org.apache.commons.csv.CSVRecord;

/** A row of the package table; its head explains the columns. */
final class ShippedOutline {
  private ShippedOutline() {}

  static BodyOutlines.Row of(CSVRecord row) {
    var outline =
        new BodyOutline(
            row.get("name"),
            number(row.get("height mm")),
            number(row.get("stand-off mm")),
            number(row.get("length mm")),
            number(row.get("width mm")),
            number(row.get("pitch mm")),
            (int) number(row.get("pins")),
            source(row.get("origin"), row.get("source")));
    Set<PartKind> kinds = EnumSet.noneOf(PartKind.class);
    list(row.get("assumed for")).forEach(kind -> kinds.add(PartKind.valueOf(kind)));
    return new BodyOutlines.Row(
        outline, list(row.get("other names")), list(row.get("usual for")), kinds);
  }

  private static Source source(String origin, String text) {
    return switch (origin) {
      case "datasheet" -> Source.datasheet(text);
      case "standard" -> Source.standard(text);
      case "computed" -> Source.computed(text);
      case "model" -> Source.computed("measured on a public body model, no datasheet: " + text);
      case "memory" -> new Source(Source.Origin.MEMORY, text);
      case "assumed" -> Source.assumed(text, "the BOM's height column");
      default -> throw new IllegalStateException("body-outlines.csv: origin " + origin);
    };
  }

  private static double number(String cell) {
    return cell.isEmpty() ? 0 : Double.parseDouble(cell);
  }

  private static List<String> list(String cell) {
    return cell.isEmpty() ? List.of() : List.of(cell.split("\\|"));
  }
}
