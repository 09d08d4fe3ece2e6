package lowfirst.sheet.check;

import java.util.ArrayList;
import java.util.List;
import lowfirst.intake.table.Understanding;
import lowfirst.problem.Excerpt;
import lowfirst.sheet.document.Block;
import lowfirst.sheet.document.Block.Cell;
import lowfirst.sheet.document.Block.Facts;
import lowfirst.sheet.document.Block.Heading;
import lowfirst.sheet.document.Block.Table;
import lowfirst.sheet.document.Tables;

/** How each table of a kit was understood: its form, its columns, and its first rows. */
final class UnderstandingBlocks {
  private static final List<Table.Column> COLUMNS =
      List.of(
          Tables.numbers("column", 6),
          Tables.words("header", 18),
          Tables.words("taken for", 14),
          Tables.words("because of", 18),
          Tables.words("first rows", 40),
          Tables.words("to change it", 26));

  private UnderstandingBlocks() {}

  /** The blocks about these tables. */
  static List<Block> of(List<Understanding> tables) {
    var blocks = new ArrayList<Block>();
    for (Understanding table : tables) {
      blocks.add(new Heading(2, "How " + table.file() + " was understood"));
      blocks.add(facts(table));
      if (!table.columns().isEmpty()) {
        blocks.add(columns(table));
      }
    }
    return blocks;
  }

  private static Facts facts(Understanding table) {
    var facts = new ArrayList<Facts.Fact>();
    facts.add(new Facts.Fact("table", table.table()));
    facts.add(new Facts.Fact("encoding", table.encoding()));
    facts.add(new Facts.Fact("cells parted by", table.separator()));
    facts.add(new Facts.Fact("header", header(table.headerLine())));
    facts.add(new Facts.Fact("rows", table.rows() + ""));
    table.notes().forEach(note -> facts.add(new Facts.Fact("taken", note)));
    return new Facts(facts);
  }

  private static String header(int line) {
    if (line < 0) {
      return "none needed, the standard names everything";
    }
    return line > 0 ? "in line " + line : "none found";
  }

  private static Table columns(Understanding table) {
    var rows = new ArrayList<Table.Row>();
    for (Understanding.UnderstoodColumn column : table.columns()) {
      rows.add(
          new Table.Row(
              List.of(
                  Cell.of(column.number() + ""),
                  Cell.of(column.header()),
                  Cell.of(column.meaning().isEmpty() ? "not used" : column.meaning()),
                  Cell.of(column.basis()),
                  Cell.of(firstCells(table, column.number() - 1)),
                  Cell.of(column.key().isEmpty() ? "" : "--column " + column.key() + "=..."))));
    }
    return new Table("", COLUMNS, rows);
  }

  private static String firstCells(Understanding table, int cell) {
    var texts = new ArrayList<String>();
    for (List<String> row : table.firstRows()) {
      String text = cell < row.size() ? row.get(cell) : "";
      texts.add(Excerpt.of(text, 24));
    }
    return String.join(" | ", texts);
  }
}
