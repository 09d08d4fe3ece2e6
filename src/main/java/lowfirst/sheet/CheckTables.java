package lowfirst.sheet;

import java.util.List;
import java.util.stream.Collectors;
import lowfirst.channel.check.Check;
import lowfirst.channel.check.Check.Input;
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
            Tables.words("check", 17),
            Tables.words("finding", 10),
            Tables.numbers("actual", 9),
            Tables.numbers("allowed", 9),
            Tables.numbers("margin", 8),
            Tables.words("formula, numbers and their sources", 47)),
        checks.stream()
            .map(
                check ->
                    Tables.row(
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
            Tables.words("number", 18), Tables.numbers("value", 12), Tables.words("source", 70)),
        checks.stream()
            .flatMap(check -> check.inputs().stream())
            .distinct()
            .map(
                input ->
                    Tables.row(
                        input.symbol(),
                        input.value().quantity().rounded(4),
                        input.value().source().text()))
            .distinct()
            .toList());
  }
}
