package lowfirst.sheet.loads;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import lowfirst.channel.ChannelStudy;
import lowfirst.channel.SumFinding;
import lowfirst.channel.check.Check;
import lowfirst.channel.check.Check.Input;
import lowfirst.sheet.document.Block.Table;
import lowfirst.sheet.document.Document;
import lowfirst.sheet.document.Tables;

/** What {@code loads --csv} prints: every check as a row, nothing wrapped or left out. */
public final class LoadsTable {
  private LoadsTable() {}

  /** Every check of every channel and rail as one table, for machines. */
  public static Document of(
      String title, List<ChannelStudy> studies, List<? extends SumFinding> sums) {
    var rows = new ArrayList<Table.Row>();
    for (ChannelStudy study : studies) {
      for (Check check : study.finding().checks()) {
        rows.add(row("channel", study.inputs().channel().name(), check));
      }
      for (String[] release : ReleaseWords.cells(study)) {
        rows.add(released(study.inputs().channel().name(), release));
      }
    }
    for (SumFinding sum : sums) {
      sum.checks().forEach(check -> rows.add(row(LoadsWords.kind(sum), sum.name(), check)));
    }
    List<Table.Column> columns =
        List.of(
                "of", "name", "check", "verdict", "actual", "allowed", "margin", "formula",
                "inputs", "missing")
            .stream()
            .map(header -> Tables.words(header, 1))
            .toList();
    return new Document("Loads of " + title, "", List.of(new Table("checks", columns, rows)));
  }

  private static Table.Row row(String of, String name, Check check) {
    return Tables.row(
        of,
        name,
        check.kind().words(),
        check.verdict().words(),
        LoadsWords.actual(check),
        LoadsWords.amount(check.allowed()),
        LoadsWords.margin(check),
        check.formula(),
        inputs(check),
        String.join("; ", check.missing()));
  }

  private static Table.Row released(String name, String[] release) {
    return Tables.row(
        "channel",
        name,
        release[0],
        "for information",
        release[1],
        "",
        "",
        ReleaseWords.FORMULA,
        release[2],
        "");
  }

  private static String inputs(Check check) {
    return check.inputs().stream()
        .map(LoadsTable::input)
        .distinct()
        .collect(Collectors.joining("; "));
  }

  private static String input(Input input) {
    return input.symbol()
        + " = "
        + input.value().quantity().rounded(4)
        + " ["
        + input.value().source()
        + "]";
  }
}
