package lowfirst.swap;

import java.util.Optional;

/** How one rule comes to its answer; empty when it does not concern this swap. */
@FunctionalInterface
interface Judgement {
  Optional<Answer> of(SwapCase swap);
}
