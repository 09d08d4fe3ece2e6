package lowfirst.bench.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lowfirst.assembly.Step;
import lowfirst.bench.page.StepScreen.Advice;
import lowfirst.progress.State;
import lowfirst.sheet.sort.BriefLikeness;
import lowfirst.sheet.steps.HandAdvice;
import lowfirst.sorting.SortLine;
import lowfirst.sorting.SortPlan;

/** What to know of a step's parts before they are in: which way round, how, what looks alike. */
record StepAdvice(SortPlan sorting, Step step) {

  /** In a round of work, the most important first. */
  List<Advice> in(State round) {
    var all = new ArrayList<Advice>();
    if (round == State.SEATED) {
      lookAlike().ifPresent(one -> all.add(advice(one)));
    }
    HandAdvice.of(step, round).forEach(one -> all.add(advice(one)));
    return all;
  }

  /** The line of the sorting plan that this step's parts come from. */
  Optional<SortLine> line() {
    return sorting.lines().stream()
        .filter(
            line ->
                line.compartment().uses().stream()
                    .filter(use -> use.board().equals(step.board()))
                    .anyMatch(use -> use.designators().contains(step.designators().get(0))))
        .findFirst();
  }

  /** The worst mix-up that this part can be in; one warning is read, five are not. */
  private Optional<HandAdvice> lookAlike() {
    Optional<Integer> here = line().map(line -> line.compartment().number());
    return sorting.lookAlikes().stream()
        .filter(
            alike ->
                here.filter(n -> n == alike.one().number() || n == alike.other().number())
                    .isPresent())
        .findFirst()
        .map(
            alike ->
                new HandAdvice(
                    HandAdvice.Kind.LOOK_ALIKE, BriefLikeness.of(alike, here.orElseThrow())));
  }

  private static Advice advice(HandAdvice advice) {
    return switch (advice.kind()) {
      case WAY_ROUND -> new Advice("way", "⟳", advice.kind().words(), advice.text());
      case HOW -> new Advice("how", "→", advice.kind().words(), advice.text());
      case LOOK_ALIKE -> new Advice("look", "≈", advice.kind().words(), advice.text());
      case CAUTION -> new Advice("caution", "⚠", advice.kind().words(), advice.text());
    };
  }
}
