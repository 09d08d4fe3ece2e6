package lowfirst.intake;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import lowfirst.board.Kit;
import lowfirst.intake.table.Understanding;
import lowfirst.problem.Problem;
import lowfirst.problem.Severity;

/** What came of reading a kit: the good part, and every problem in source order. */
public final class KitReading {
  private final Kit kit;
  private final List<Problem> found;
  private final Supplier<List<Problem>> doubts;
  private final List<Understanding> understood;

  /** All problems, once they were asked for. */
  private Optional<List<Problem>> problems = Optional.empty();

  /**
   * A reading.
   *
   * @param kit what could be read
   * @param found every fault, and what else was met in reading
   * @param doubts cautions and notes between the tables, none of them a fault; only {@code check}
   *     asks for them, and they take longer than the rest of the checks
   * @param understood how each table was understood, in the order read
   */
  KitReading(
      Kit kit,
      List<Problem> found,
      Supplier<List<Problem>> doubts,
      List<Understanding> understood) {
    this.kit = kit;
    this.found = List.copyOf(found);
    this.doubts = doubts;
    this.understood = List.copyOf(understood);
  }

  /** One whose problems are all known. */
  public KitReading(Kit kit, List<Problem> problems, List<Understanding> understood) {
    this(kit, problems, List::of, understood);
  }

  /** The same problems with another kit, as with swaps in place. */
  public KitReading with(Kit other) {
    return new KitReading(other, found, doubts, understood);
  }

  /** What could be read. */
  public Kit kit() {
    return kit;
  }

  /** Everything wrong in single tables and between them. */
  public synchronized List<Problem> problems() {
    if (problems.isEmpty()) {
      Stream<Problem> all = Stream.concat(found.stream(), doubts.get().stream());
      problems = Optional.of(all.sorted().toList());
    }
    return problems.get();
  }

  /** How each table was understood, in the order read. */
  public List<Understanding> understood() {
    return understood;
  }

  /** Whether a person has to look at something before soldering. */
  public boolean needsALook() {
    return problems().stream().anyMatch(problem -> problem.severity() != Severity.NOTE);
  }

  /** How many cells, rows or files could not be used as they stand. */
  public long faults() {
    return found.stream().filter(problem -> problem.severity() == Severity.FAULT).count();
  }
}
