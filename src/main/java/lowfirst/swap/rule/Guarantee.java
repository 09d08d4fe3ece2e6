package lowfirst.swap.rule;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import lowfirst.part.DatasheetLine;
import lowfirst.quantity.Quantity;
import lowfirst.swap.subject.Evidence;
import lowfirst.swap.subject.SwapPart;
import lowfirst.swap.subject.Words;

/**
 * What lines of datasheets promise of one symbol. Of several makers the weakest counts, since
 * either part may come.
 *
 * @param better which of two amounts is the stronger promise
 * @param column where it stands
 */
record Guarantee(Better better, Column column) {

  /** Which column of a line is the guarantee that counts. */
  enum Column {
    /** The max, or the min where no max stands. */
    LIMIT,
    /** The min: gains, transfer ratios, levels that an output reaches. */
    MIN;

    /** Absent where it is zero: no part guarantees that. */
    Optional<Quantity> of(DatasheetLine line) {
      Optional<Quantity> stated = this == MIN ? line.min() : SwapPart.limit(line);
      return stated.filter(amount -> !amount.isZero());
    }
  }

  /** Whether a line promises anything. */
  boolean isIn(DatasheetLine line) {
    return column.of(line).isPresent();
  }

  /** What a line promises. */
  Evidence of(DatasheetLine line) {
    return Evidence.of(column.of(line).orElseThrow(), line.condition(), line.source());
  }

  /** What the BOM's part is held to: of each maker the strongest line, of these the weakest. */
  Optional<Evidence> asked(List<DatasheetLine> lines) {
    var strongest = new LinkedHashMap<String, DatasheetLine>();
    for (DatasheetLine line : lines) {
      if (isIn(line)) {
        strongest.merge(line.maker(), line, this::stronger);
      }
    }
    return strongest.values().stream().reduce(this::weaker).map(this::of);
  }

  /** What a candidate is held to: the weakest of its lines. */
  Optional<Evidence> offered(List<DatasheetLine> lines) {
    return weakest(lines, line -> true);
  }

  /** The weakest of the lines under one test condition. */
  Optional<Evidence> under(String condition, List<DatasheetLine> lines) {
    return weakest(lines, line -> Words.same(line.condition(), condition));
  }

  private Optional<Evidence> weakest(List<DatasheetLine> lines, Predicate<DatasheetLine> meant) {
    DatasheetLine weakest = null;
    for (DatasheetLine line : lines) {
      if (isIn(line) && meant.test(line)) {
        weakest = weakest == null ? line : weaker(line, weakest);
      }
    }
    return Optional.ofNullable(weakest).map(this::of);
  }

  private DatasheetLine weaker(DatasheetLine one, DatasheetLine other) {
    return strength(one, other) <= 0 ? one : other;
  }

  private DatasheetLine stronger(DatasheetLine one, DatasheetLine other) {
    return strength(one, other) >= 0 ? one : other;
  }

  /** Above nothing where the first promises more than the second. */
  private int strength(DatasheetLine one, DatasheetLine other) {
    int order = amount(one).amount().compareTo(amount(other).amount());
    return better == Better.MORE ? order : -order;
  }

  private Quantity amount(DatasheetLine line) {
    return column.of(line).orElseThrow();
  }
}
