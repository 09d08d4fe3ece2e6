package lowfirst.sheet.loads;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import lowfirst.channel.BuildSpread;
import lowfirst.sheet.document.Block.Paragraph;
import lowfirst.sheet.document.Block.Table;
import lowfirst.sheet.document.Document;
import lowfirst.sheet.document.Tables;

/** What many builds with other parts of the same bag would do. */
public final class BuildsDocument {
  private BuildsDocument() {}

  /** How many of many builds would be overloaded. */
  public static Document of(String title, Map<String, BuildSpread> spreads, long seed) {
    var rows =
        spreads.entrySet().stream()
            .map(
                entry ->
                    Tables.row(
                        entry.getKey(),
                        "" + entry.getValue().builds(),
                        "" + entry.getValue().overloaded(),
                        String.format(
                            Locale.ROOT, "%.2f %%", 100 * entry.getValue().overloadedShare()),
                        "" + entry.getValue().undecided()))
            .toList();
    return new Document(
        "Builds of " + title,
        "",
        List.of(
            new Paragraph(
                "Every number evenly between its corners, seed "
                    + seed
                    + ". The corners above decide; this only shows how near they are."),
            new Table(
                "builds",
                List.of(
                    Tables.words("channel", 30),
                    Tables.numbers("builds", 10),
                    Tables.numbers("overloaded", 12),
                    Tables.numbers("share", 10),
                    Tables.numbers("undecided", 12)),
                rows)));
  }
}
