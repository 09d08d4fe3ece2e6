package lowfirst.sheet.loads;

import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import lowfirst.channel.check.Check;
import lowfirst.channel.check.Check.Input;
import lowfirst.channel.check.CheckKind;
import lowfirst.sheet.document.Block;
import lowfirst.sheet.document.Block.Table;
import lowfirst.sheet.document.Tables;

/**
 * Checks with all that is needed to work them out again: numbers, formulas, sources. A formula with
 * its remark, and a number with its source, stand once in a document.
 */
final class CheckTables {
  private final Map<CheckKind, String> explained = new EnumMap<>(CheckKind.class);
  private final Set<Table.Row> sourced = new HashSet<>();

  /**
   * Every check, then every number of them that hasn't stood in the document yet.
   *
   * @param name what they are checks of
   */
  List<Block> of(String name, List<Check> checks) {
    Table sources = sources(checks);
    return sources.rows().isEmpty()
        ? List.of(checks(name, checks))
        : List.of(checks(name, checks), sources);
  }

  private Table checks(String name, List<Check> checks) {
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
                        expert(name, check)))
            .toList());
  }

  private String expert(String name, Check check) {
    String before = explained.putIfAbsent(check.kind(), name);
    String missing =
        check.missing().isEmpty() ? "" : ". MISSING: " + String.join("; ", check.missing());
    String numbers =
        check.inputs().stream()
            .map(CheckTables::number)
            .distinct()
            .collect(Collectors.joining(", "));
    return (before == null ? check.formula() : "As at " + before)
        + (numbers.isEmpty() ? "" : ". With " + numbers)
        + missing
        + "."
        + (before == null ? " " + check.remark() : "");
  }

  private static String number(Input input) {
    return input.symbol() + " " + input.value().quantity().rounded(4);
  }

  private Table sources(List<Check> checks) {
    String title =
        sourced.isEmpty()
            ? "Where the numbers come from"
            : "Further numbers, and where they come from";
    List<Table.Row> rows =
        checks.stream()
            .flatMap(check -> check.inputs().stream())
            .distinct()
            .map(
                input ->
                    Tables.row(
                        input.symbol(),
                        input.value().quantity().rounded(4),
                        input.value().source().text()))
            .filter(sourced::add)
            .toList();
    return new Table(
        title,
        List.of(
            Tables.words("number", 18), Tables.numbers("value", 12), Tables.words("source", 70)),
        rows);
  }
}
