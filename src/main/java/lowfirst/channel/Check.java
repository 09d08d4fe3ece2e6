package lowfirst.channel;

import java.util.List;
import java.util.Optional;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Sourced;

/**
 * One check of a finding, with everything an expert needs to do it again by hand.
 *
 * @param kind which check; a closed set
 * @param verdict what it says
 * @param actual the worst case worked out; absent when a datum is missing
 * @param allowed the limit it is held against; absent when a datum is missing
 * @param formula the equation in plain text, with its symbols
 * @param inputs every number that went in, named, with its source
 * @param missing the data that are missing, each as "symbol of part: where to write it"
 * @param remark one sentence for a beginner
 */
public record Check(
    CheckKind kind,
    Verdict verdict,
    Optional<Quantity> actual,
    Optional<Quantity> allowed,
    String formula,
    List<Input> inputs,
    List<String> missing,
    String remark) {

  /** A named number with its source. */
  public record Input(String symbol, Sourced value) {}

  public Check {
    inputs = List.copyOf(inputs);
    missing = List.copyOf(missing);
    if (verdict == Verdict.CARRIES && (actual.isEmpty() || allowed.isEmpty())) {
      throw new IllegalArgumentException(kind + ": a pass shows its numbers");
    }
    if (verdict == Verdict.CARRIES
        && (!missing.isEmpty()
            || inputs.stream().anyMatch(input -> !input.value().source().canPass()))) {
      throw new IllegalArgumentException(kind + ": nothing passes on missing or remembered data");
    }
  }
}
