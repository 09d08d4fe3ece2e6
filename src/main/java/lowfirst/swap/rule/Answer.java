package lowfirst.swap.rule;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lowfirst.swap.subject.Evidence;

/**
 * What one rule answers.
 *
 * @param verdict what it says
 * @param asked what the part on the BOM asks for or gives; absent when that is what is missing
 * @param offered what the candidate gives; absent when that is what is missing
 * @param margin how much better the candidate is than it must be: 0.25 is a quarter; absent where
 *     better and worse have no size
 * @param missing the data that are missing, each as "symbol of part: where to write it"
 * @param remark one sentence for a beginner; may be empty
 */
public record Answer(
    SwapVerdict verdict,
    Optional<Evidence> asked,
    Optional<Evidence> offered,
    OptionalDouble margin,
    List<String> missing,
    String remark) {

  public Answer {
    missing = List.copyOf(missing);
    boolean remembered =
        asked.stream().anyMatch(e -> !e.source().canPass())
            || offered.stream().anyMatch(e -> !e.source().canPass());
    if (verdict == SwapVerdict.FITS && (remembered || !missing.isEmpty())) {
      throw new IllegalArgumentException("nothing fits on missing or remembered data: " + remark);
    }
  }

  /** The two in words, one verdict. Remembered evidence turns a pass into undecided. */
  public static Answer of(SwapVerdict verdict, Evidence asked, Evidence offered, String remark) {
    return sized(verdict, asked, offered, OptionalDouble.empty(), remark);
  }

  /** The two with the size of the difference. Remembered evidence turns a pass into undecided. */
  static Answer sized(
      SwapVerdict verdict, Evidence asked, Evidence offered, OptionalDouble margin, String remark) {
    boolean canPass = asked.source().canPass() && offered.source().canPass();
    if (verdict == SwapVerdict.FITS && !canPass) {
      return new Answer(
          SwapVerdict.UNDECIDED,
          Optional.of(asked),
          Optional.of(offered),
          margin,
          List.of("a datasheet in place of memory: " + remembered(asked, offered)),
          remark);
    }
    return new Answer(verdict, Optional.of(asked), Optional.of(offered), margin, List.of(), remark);
  }

  private static String remembered(Evidence asked, Evidence offered) {
    return (asked.source().canPass() ? offered : asked).source().text();
  }

  /** Undecided, since something is not known. */
  static Answer missing(
      Optional<Evidence> asked, Optional<Evidence> offered, List<String> missing, String remark) {
    return new Answer(
        SwapVerdict.UNDECIDED, asked, offered, OptionalDouble.empty(), missing, remark);
  }

  /** The same, with other words for the beginner. */
  Answer remarking(String words) {
    return new Answer(verdict, asked, offered, margin, missing, words);
  }
}
