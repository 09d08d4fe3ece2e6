package lowfirst.swap;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lowfirst.assembly.AssemblyOptions;
import lowfirst.assembly.AssemblyOrder;
import lowfirst.assembly.AssemblyPlan;
import lowfirst.assembly.Step;
import lowfirst.board.Designator;
import lowfirst.board.Kit;
import lowfirst.part.BodyOutlines;
import lowfirst.part.PartType;
import lowfirst.sorting.LookAlike;
import lowfirst.sorting.LookAlikes;
import lowfirst.swap.subject.SwapCase;
import lowfirst.swap.subject.SwappedKit;

/**
 * What a swap does to the order of assembly.
 *
 * @param before the step that fits the part now
 * @param after the step that would fit the candidate
 * @param others further steps that move to another batch, each with its designators
 * @param newLookAlikes what the candidate can be mistaken for that was not there before
 * @param goneLookAlikes what can no longer be mistaken
 */
public record BoardChange(
    Optional<Step> before,
    Optional<Step> after,
    List<Moved> others,
    List<LookAlike> newLookAlikes,
    List<LookAlike> goneLookAlikes) {

  /**
   * A step that moves with it.
   *
   * @param designators what it fits
   * @param fromBatch its batch before
   * @param toBatch its batch after
   */
  public record Moved(List<Designator> designators, int fromBatch, int toBatch) {}

  public BoardChange {
    others = List.copyOf(others);
    newLookAlikes = List.copyOf(newLookAlikes);
    goneLookAlikes = List.copyOf(goneLookAlikes);
  }

  /** Plans the kit twice: as it is, and with the swap. */
  static BoardChange of(SwapCase swap, BodyOutlines outlines) {
    Kit now = SwappedKit.of(swap.kit(), outlines);
    AssemblyPlan before = AssemblyOrder.of(now, AssemblyOptions.USUAL);
    Kit tried = ChannelChanges.tried(swap, outlines);
    AssemblyPlan after = AssemblyOrder.of(tried, AssemblyOptions.USUAL);
    List<LookAlike> alikeBefore = LookAlikes.in(now);
    List<LookAlike> alikeAfter = LookAlikes.in(tried);
    String board = swap.board().name();
    Designator place = swap.designators().get(0);
    return new BoardChange(
        before.stepOf(board, place),
        after.stepOf(board, place),
        moved(swap, before, after),
        beyond(alikeAfter, alikeBefore),
        beyond(alikeBefore, alikeAfter));
  }

  /**
   * The pairs of the first that the second has not. A part type may be worded otherwise once
   * another item is its first; so a pair is also known by its names, one pair of the second for
   * each.
   */
  private static List<LookAlike> beyond(List<LookAlike> pairs, List<LookAlike> known) {
    var names = new ArrayList<>(apart(known, pairs).map(BoardChange::names).toList());
    return apart(pairs, known).filter(pair -> !names.remove(names(pair))).toList();
  }

  /** The pairs of the first whose two part types are no pair of the second. */
  private static Stream<LookAlike> apart(List<LookAlike> pairs, List<LookAlike> others) {
    Set<Set<PartType>> types = others.stream().map(BoardChange::types).collect(Collectors.toSet());
    return pairs.stream().filter(pair -> !types.contains(types(pair)));
  }

  private static Set<PartType> types(LookAlike pair) {
    return new HashSet<>(List.of(pair.one().type(), pair.other().type()));
  }

  private static Set<String> names(LookAlike pair) {
    return new HashSet<>(List.of(pair.one().type().words(), pair.other().type().words()));
  }

  private static List<Moved> moved(SwapCase swap, AssemblyPlan before, AssemblyPlan after) {
    var moved = new ArrayList<Moved>();
    for (var batch : before.batches()) {
      for (Step step : batch.steps()) {
        boolean own = step.designators().stream().anyMatch(swap.designators()::contains);
        int to = batchOf(after, step);
        if (step.board().equals(swap.board().name()) && !own && to != batch.number() && to > 0) {
          moved.add(new Moved(step.designators(), batch.number(), to));
        }
      }
    }
    return moved;
  }

  private static int batchOf(AssemblyPlan plan, Step step) {
    for (var batch : plan.batches()) {
      for (Step other : batch.steps()) {
        if (other.board().equals(step.board())
            && other.designators().contains(step.designators().get(0))) {
          return batch.number();
        }
      }
    }
    return 0;
  }
}
