package lowfirst.intake.bom;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import lowfirst.board.Item;
import lowfirst.intake.cell.DesignatorList;
import lowfirst.intake.cell.DoneWords;
import lowfirst.intake.cell.FittedSigns;
import lowfirst.intake.cell.FittingWords;
import lowfirst.intake.column.Column;
import lowfirst.intake.column.TableRow;
import lowfirst.intake.table.Table;
import lowfirst.part.PartType;
import lowfirst.problem.Kind;
import lowfirst.problem.Problem;

/**
 * Whether the part of a BOM line is fitted: by its columns for that, its quantity, a heading over
 * it, or its words.
 */
final class LineFitting {
  /** Where words may say it, whatever else the column is for. */
  private static final List<Column> PLACES =
      List.of(
          Column.DESCRIPTION,
          Column.PART_TYPE,
          Column.PACKAGE,
          Column.QUANTITY,
          Column.HEIGHT,
          Column.TOLERANCE,
          Column.VOLTAGE,
          Column.POWER,
          Column.KIND);

  private final FittingHeadings headings;
  private final List<Problem> problems;
  private final FittingWords words = new FittingWords();
  private final Map<String, Boolean> leftOut = new HashMap<>();

  /** What is found wrong or taken for granted goes to {@code problems}. */
  LineFitting(Table table, List<Problem> problems) {
    this.headings = new FittingHeadings(table);
    this.problems = problems;
  }

  /** Says how headings over rows were taken. */
  void sayHeadings() {
    headings.said().forEach(problems::add);
  }

  /** Whether the part of a line is fitted. */
  Item.Fitting of(TableRow row, DesignatorList list, OptionalInt quantity, PartType type) {
    Optional<Item.Fitting> headed =
        headings.over(row.line()).filter(said -> row.text(Column.FITTED).isEmpty());
    if (headed.filter(Item.Fitting.NOT_FITTED::equals).isPresent()
        || isLeftOut(row)
        || (quantity.isPresent() && quantity.getAsInt() == 0)) {
      return Item.Fitting.NOT_FITTED;
    }
    if (saysLeftOut(type.text())
        || saysLeftOut(list.otherText())
        || PLACES.stream().anyMatch(column -> saysLeftOut(row.text(column)))) {
      if (FittedSigns.isYes(row.text(Column.FITTED))) {
        problems.add(saysBoth(row, type));
      }
      return Item.Fitting.NOT_FITTED;
    }
    boolean optional = words.areOptional(row) || FittedSigns.isYes(row.text(Column.OPTIONAL));
    if (!optional && words.leaveOut(row, list.otherText(), type.kind())) {
      return Item.Fitting.NOT_FITTED;
    }
    return optional || headed.isPresent() ? Item.Fitting.OPTIONAL : Item.Fitting.FITTED;
  }

  private static Problem saysBoth(TableRow row, PartType type) {
    return row.problem(
        Kind.OPTIONAL_PART,
        Column.FITTED,
        "this says that the part is fitted, but other words of the row (\""
            + type.text()
            + "\") say that it is not; it was left out",
        "correct whichever is wrong");
  }

  /** Lines say the same again and again. */
  private boolean saysLeftOut(String text) {
    return !text.isEmpty() && leftOut.computeIfAbsent(text, FittedSigns::leaveOut);
  }

  /** Whether a column for it says that the line is not fitted. */
  private boolean isLeftOut(TableRow row) {
    String fitted = row.text(Column.FITTED);
    if (FittedSigns.sayLeftOut(fitted, row.text(Column.NOT_FITTED))) {
      return true;
    }
    if (fitted.isEmpty()
        || FittedSigns.isYes(fitted)
        || FittedSigns.isOptional(fitted)
        || !DoneWords.in(fitted).isEmpty()) {
      return false;
    }
    problems.add(
        row.problem(
            Kind.CELL_UNREADABLE,
            Column.FITTED,
            "\"" + row.text(Column.FITTED) + "\" does not say whether the part is fitted",
            "write yes, no or optional; here it was taken as fitted"));
    return false;
  }

  /** What is left to decide about a part that is fitted. */
  void sayLeftOpen(TableRow row, DesignatorList list) {
    if (!FittedSigns.isYes(row.text(Column.FITTED))) {
      words
          .leaveOpen(row)
          .or(() -> words.leaveOpen(row, list.otherText()))
          .ifPresent(problems::add);
    }
  }
}
