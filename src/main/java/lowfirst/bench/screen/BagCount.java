package lowfirst.bench.screen;

import java.util.Optional;
import lowfirst.part.PartType;
import lowfirst.progress.Progress;
import lowfirst.sorting.SortLine;

/**
 * How many of a part should be in its bag now: what arrived, less what is on the boards and what
 * was set aside as unfit.
 *
 * @param label the bag's label; may be empty
 * @param left how many should be there
 */
record BagCount(String label, long left) {

  /** The count for a part type; empty when the kit has no bag list or it doesn't name the part. */
  static Optional<BagCount> of(Optional<SortLine> line, Progress progress, PartType type) {
    if (line.isEmpty() || line.get().arrived().isEmpty()) {
      return Optional.empty();
    }
    long used =
        progress.plan().steps().stream()
            .filter(step -> step.partType().equals(type))
            .flatMap(step -> Progress.spotsOf(step).stream())
            .mapToLong(spot -> progress.record(spot).takenFromBag())
            .sum();
    return Optional.of(
        new BagCount(String.join(", ", line.get().bags()), line.get().arrived().getAsInt() - used));
  }
}
