package lowfirst.sheet;

import java.util.List;
import java.util.stream.Collectors;
import lowfirst.channel.Check;
import lowfirst.channel.Check.Input;
import lowfirst.sheet.Block.Table;

/** Checks with all that is needed to work them out again: numbers, formulas, sources. */
final class CheckTables {
  private CheckTables() {}

  /** Every check, then every number of them once. */
  static List<Block> of(List<Check> checks) {
    return List.of(checks(checks), sources(checks));
  }

  private static Table checks(List<Check> checks) {
    return new Table(
        "Every check",
        List.of(
            new Table.Column("check", Table.Align.START, 17),
            new Table.Column("finding", Table.Align.START, 10),
            new Table.Column("actual", Table.Align.END, 9),
            new Table.Column("allowed", Table.Align.END, 9),
            new Table.Column("margin", Table.Align.END, 8),
            new Table.Column("formula, numbers and their sources", Table.Align.START, 47)),
        checks.stream()
            .map(
                check ->
                    Texts.row(
                        check.kind().words(),
                        check.verdict().words(),
                        LoadsWords.actual(check),
                        LoadsWords.amount(check.allowed()),
                        LoadsWords.margin(check),
                        expert(check)))
            .toList());
  }

  private static String expert(Check check) {
    String missing =
        check.missing().isEmpty() ? "" : ". MISSING: " + String.join("; ", check.missing());
    String numbers =
        check.inputs().stream()
            .map(CheckTables::number)
            .distinct()
            .collect(Collectors.joining(", "));
    return check.formula() + ". With " + numbers + missing + ". " + check.remark();
  }

  private static String number(Input input) {
    return input.symbol() + " " + input.value().quantity().rounded(4);
  }

  /** Every number that the checks above used, once, with where it came from. */
  private static Table sources(List<Check> checks) {
    return new Table(
        "Where the numbers come from",
        List.of(
            new Table.Column("number", Table.Align.START, 18),
            new Table.Column("value", Table.Align.END, 12),
            new Table.Column("source", Table.Align.START, 70)),
        checks.stream()
            .flatMap(check -> check.inputs().stream())
            .distinct()
            .map(
                input ->
                    Texts.row(
                        input.symbol(),
                        input.value().quantity().rounded(4),
                        input.value().source().text()))
            .distinct()
            .toList());
  }
}
