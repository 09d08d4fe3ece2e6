package lowfirst.sheet;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import lowfirst.channel.BuildSpread;
import lowfirst.sheet.Block.Paragraph;
import lowfirst.sheet.Block.Table;

/** What many builds with other parts of the same bag would do. */
public final class BuildsDocument {
  private BuildsDocument() {}

  /** How many of many builds would be overloaded. */
  public static Document of(String title, Map<String, BuildSpread> spreads, long seed) {
    var rows =
        spreads.entrySet().stream()
            .map(
                entry ->
                    Texts.row(
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
                    new Table.Column("channel", Table.Align.START, 30),
                    new Table.Column("builds", Table.Align.END, 10),
                    new Table.Column("overloaded", Table.Align.END, 12),
                    new Table.Column("share", Table.Align.END, 10),
                    new Table.Column("undecided", Table.Align.END, 12)),
                rows)));
  }
}
