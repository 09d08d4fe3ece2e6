package lowfirst.sheet.swap;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import lowfirst.sheet.document.Block;
import lowfirst.sheet.document.Block.Caution;
import lowfirst.sheet.document.Block.Paragraph;
import lowfirst.sheet.document.Block.Table;
import lowfirst.sheet.document.Document;
import lowfirst.sheet.document.Tables;
import lowfirst.sheet.wording.Counted;
import lowfirst.sheet.wording.DesignatorWords;
import lowfirst.swap.DrawerHit;
import lowfirst.swap.DrawerResult;
import lowfirst.swap.subject.SwapCase;

/** What a drawer holds for one place: what fits, what nearly does, what is not known. */
public final class DrawerDocument {
  private DrawerDocument() {}

  /** The result of one search. */
  public static Document of(DrawerResult result) {
    SwapCase question = result.question();
    var blocks = new ArrayList<Block>();
    blocks.add(
        new Paragraph(
            Counted.of(result.looked(), "part type")
                + ": "
                + result.fitting()
                + " fit, "
                + result.undecided()
                + " undecided, "
                + result.misfits()
                + " do not fit."));
    if (!question.uses().isEmpty()) {
      blocks.add(
          new Paragraph(
              "Each was tried in every channel that the part serves: "
                  + question.uses().size()
                  + (question.uses().size() == 1 ? " channel." : " channels.")));
    }
    Stream.of(
            table(
                "What fits, the best margin first",
                List.of("part type", "least margin"),
                result.best().stream().map(hit -> Tables.row(hit.partType(), margin(hit)))),
            table(
                "Near misses: they lack one thing",
                List.of("part type", "margin", "lacks"),
                result.nearMisses().stream().map(DrawerDocument::cells)),
            table(
                "Undecided: their rows leave something out",
                List.of("part type", "margin", "not known"),
                result.open().stream().map(DrawerDocument::cells)))
        .filter(found -> !found.rows().isEmpty())
        .forEach(blocks::add);
    blocks.add(
        new Caution(
            "Before you fit one, ask for it by itself: lowfirst swap <kit> <part> <candidate>"
                + " also looks at bodies, order and look-alikes."));
    return new Document(
        "Drawer for "
            + question.asked().name()
            + " at "
            + DesignatorWords.list(question.designators())
            + " of "
            + question.board().name(),
        "",
        blocks);
  }

  /** The kept part types as one table, for machines. */
  public static Document table(DrawerResult result) {
    var rows =
        Stream.of(result.best(), result.nearMisses(), result.open())
            .flatMap(List::stream)
            .map(
                hit ->
                    Tables.row(
                        hit.partType(),
                        hit.verdict().words(),
                        margin(hit),
                        String.join("; ", hit.lacks())));
    return new Document(
        "Drawer",
        "",
        List.of(table("drawer", List.of("part type", "says", "margin", "lacks"), rows)));
  }

  private static Table table(String caption, List<String> headers, Stream<Table.Row> rows) {
    List<Table.Column> columns = headers.stream().map(h -> Tables.words(h, 1)).toList();
    return new Table(caption, columns, rows.toList());
  }

  private static Table.Row cells(DrawerHit hit) {
    return Tables.row(hit.partType(), margin(hit), String.join("; ", hit.lacks()));
  }

  private static String margin(DrawerHit hit) {
    return Double.isInfinite(hit.margin())
        ? ""
        : SwapWords.percent(OptionalDouble.of(hit.margin()));
  }
}
