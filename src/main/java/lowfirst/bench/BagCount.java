package lowfirst.bench;

import java.util.List;
import java.util.Optional;
import lowfirst.board.BagLine;
import lowfirst.board.Kit;
import lowfirst.part.PartType;
import lowfirst.progress.Progress;
import lowfirst.progress.State;

/**
 * How many of a part should be in its bag now: what arrived, less what is on the boards. Parts that
 * were set aside as damaged are gone too, but no record says so; the count is then one too high.
 *
 * @param label the bag's label; may be empty
 * @param left how many should be there
 */
record BagCount(String label, long left) {

  /** The count for a part type; empty when {@code bag.csv} doesn't name it. */
  static Optional<BagCount> of(Kit kit, Progress progress, PartType type) {
    List<BagLine> lines = kit.bag().stream().filter(line -> names(line, type)).toList();
    if (lines.isEmpty()) {
      return Optional.empty();
    }
    long used =
        progress.plan().steps().stream()
            .filter(step -> step.partType().equals(type))
            .flatMap(step -> Progress.spotsOf(step).stream())
            .map(spot -> progress.record(spot).state())
            .filter(state -> state != State.TO_DO && state != State.SET_ASIDE)
            .count();
    int arrived = lines.stream().mapToInt(BagLine::quantity).sum();
    return Optional.of(new BagCount(lines.get(0).bag(), arrived - used));
  }

  private static boolean names(BagLine line, PartType type) {
    String text = line.text().strip();
    return text.equalsIgnoreCase(type.text().strip())
        || !type.typeNumber().isBlank() && text.equalsIgnoreCase(type.typeNumber().strip());
  }
}
