package lowfirst.swap.rule;

import java.util.Optional;
import lowfirst.swap.subject.SwapCase;

/** How one rule comes to its answer; empty when it does not concern this swap. */
@FunctionalInterface
interface Judgement {
  Optional<Answer> of(SwapCase swap);
}
