package lowfirst.swap.rule;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lowfirst.part.DatasheetLine;
import lowfirst.swap.rule.Guarantee.Column;
import lowfirst.swap.subject.Evidence;
import lowfirst.swap.subject.SwapCase;
import lowfirst.swap.subject.Words;

/**
 * Compares one symbol of two parts. Lines under the same test condition are held against each
 * other; where none match, the headline limits are. Of what depends on its condition, each line of
 * the BOM's part must be kept by one of the candidate's: any of them may be what the place was
 * chosen for. Where several makers' lines stand under one type number, each part is taken at its
 * weakest: the BOM accepts either, and either may be in the bag.
 */
final class Comparison {

  /** How much an amount depends on its test condition. */
  enum Condition {
    /** Little: a limit that its maker prints as one. The headline limits may be compared. */
    REMARK,
    /** It holds up to there: the headline limits may refuse a candidate, but not pass it. */
    LIMIT,
    /** It was measured there, and tells nothing of elsewhere. */
    TESTED
  }

  /** What is done when the BOM's part does not state the symbol. */
  enum Demand {
    /** It must be known. */
    ALWAYS,
    /** Then the BOM does not ask for it. */
    IF_STATED
  }

  /** A way to compare one symbol. */
  private record Way(String symbol, Guarantee guarantee, Demand demand, Condition condition) {
    Better better() {
      return guarantee.better();
    }
  }

  private static final Guarantee RATING = new Guarantee(Better.MORE, Column.LIMIT);
  private static final Guarantee LEAST = new Guarantee(Better.MORE, Column.MIN);
  private static final Guarantee LOSS = new Guarantee(Better.LESS, Column.LIMIT);

  private Comparison() {}

  private static Judgement by(Way way) {
    return swap -> judged(swap, way);
  }

  /** The candidate's rating must be at least the asked part's. */
  static Judgement atLeast(String symbol) {
    return by(new Way(symbol, RATING, Demand.ALWAYS, Condition.REMARK));
  }

  /** The candidate's rating must be at least what the BOM's part states, if it states one. */
  static Judgement atLeastIfStated(String symbol) {
    return by(new Way(symbol, RATING, Demand.IF_STATED, Condition.REMARK));
  }

  /** The candidate's rating must be at least the asked part's, each where its maker rates it. */
  static Judgement ratedAtLeast(String symbol) {
    return by(new Way(symbol, RATING, Demand.ALWAYS, Condition.LIMIT));
  }

  /** The same, if the BOM's part states one. */
  static Judgement ratedAtLeastIfStated(String symbol) {
    return by(new Way(symbol, RATING, Demand.IF_STATED, Condition.LIMIT));
  }

  /** The candidate's guaranteed minimum must be at least the asked part's, as tested. */
  static Judgement testedAtLeast(String symbol) {
    return by(new Way(symbol, LEAST, Demand.ALWAYS, Condition.TESTED));
  }

  /** The candidate's loss must be at most the asked part's, each where its maker rates it. */
  static Judgement ratedAtMost(String symbol) {
    return by(new Way(symbol, LOSS, Demand.ALWAYS, Condition.LIMIT));
  }

  /** The same, if the BOM's part states one. */
  static Judgement ratedAtMostIfStated(String symbol) {
    return by(new Way(symbol, LOSS, Demand.IF_STATED, Condition.LIMIT));
  }

  /** The candidate's loss must be at most the asked part's. */
  static Judgement atMost(String symbol) {
    return by(new Way(symbol, LOSS, Demand.ALWAYS, Condition.REMARK));
  }

  /** The candidate's loss must be at most what the BOM's part states, if it states one. */
  static Judgement atMostIfStated(String symbol) {
    return by(new Way(symbol, LOSS, Demand.IF_STATED, Condition.REMARK));
  }

  /** The candidate's loss must be at most what the BOM's part states, if any, as tested. */
  static Judgement testedAtMostIfStated(String symbol) {
    return by(new Way(symbol, LOSS, Demand.IF_STATED, Condition.TESTED));
  }

  /** Both must have the same word, such as a pin order. */
  static Judgement sameWord(String symbol) {
    return swap -> words(swap, symbol, Demand.ALWAYS);
  }

  /** Both must have the same word, if the BOM's part states one. */
  static Judgement sameWordIfStated(String symbol) {
    return swap -> words(swap, symbol, Demand.IF_STATED);
  }

  private static Optional<Answer> words(SwapCase swap, String symbol, Demand demand) {
    Optional<Evidence> asked = swap.asked().word(symbol);
    Optional<Evidence> offered = swap.offered().word(symbol);
    if (asked.isEmpty() && demand == Demand.IF_STATED) {
      return Optional.empty();
    }
    if (asked.isEmpty() || offered.isEmpty()) {
      return Optional.of(unknown(swap, symbol, asked, offered));
    }
    boolean same = Words.same(asked.get().word(), offered.get().word());
    return Optional.of(
        Answer.of(
            same ? SwapVerdict.FITS : SwapVerdict.DOES_NOT_FIT, asked.get(), offered.get(), ""));
  }

  /** The answer when a datum is missing: whichever part lacks it is named. */
  static Answer unknown(
      SwapCase swap, String symbol, Optional<Evidence> asked, Optional<Evidence> offered) {
    var missing = new ArrayList<String>(2);
    if (asked.isEmpty()) {
      missing.add(swap.asked().missing(symbol));
    }
    if (offered.isEmpty()) {
      missing.add(swap.offered().missing(symbol));
    }
    return Answer.missing(asked, offered, missing, "");
  }

  private static Optional<Answer> judged(SwapCase swap, Way way) {
    if (way.demand() == Demand.IF_STATED && !swap.asked().states(way.symbol())) {
      return Optional.empty();
    }
    List<DatasheetLine> asked = swap.asked().lines(way.symbol());
    List<DatasheetLine> offered = swap.offered().lines(way.symbol());
    Optional<Evidence> needs = way.guarantee().asked(asked);
    Optional<Evidence> gives = way.guarantee().offered(offered);
    if (needs.isEmpty() || gives.isEmpty()) {
      return Optional.of(unknown(swap, way.symbol(), needs, gives));
    }
    Optional<Answer> paired = paired(asked, offered, way);
    Answer headline = paired.orElseGet(() -> compared(needs.get(), gives.get(), way.better()));
    boolean refuses = headline.verdict() == SwapVerdict.DOES_NOT_FIT;
    if (refuses && (paired.isPresent() || way.condition() != Condition.TESTED)) {
      return Optional.of(headline);
    }
    Optional<String> silent =
        swap.offered().silentMaker(offered.stream().filter(way.guarantee()::isIn).toList());
    if (silent.isPresent()) {
      return Optional.of(ofSilent(swap, way.symbol(), silent.get(), needs.get(), gives.get()));
    }
    if (way.condition() == Condition.REMARK) {
      return Optional.of(headline);
    }
    return Optional.of(kept(swap, way, asked, offered));
  }

  /** The answer where another maker's part of the candidate's number may be anything. */
  static Answer ofSilent(
      SwapCase swap, String symbol, String maker, Evidence asked, Evidence offered) {
    return Answer.missing(
        Optional.of(asked),
        Optional.of(offered),
        List.of(
            symbol
                + " of "
                + swap.offered().name()
                + " by "
                + maker
                + ": a row in datasheets.csv, or name the maker of yours"),
        "not every maker of it states that");
  }

  /** The worst of the lines that both have under the same condition. */
  private static Optional<Answer> paired(
      List<DatasheetLine> asked, List<DatasheetLine> offered, Way way) {
    Answer worst = null;
    for (DatasheetLine line : asked) {
      Optional<Evidence> gives = way.guarantee().under(line.condition(), offered);
      Optional<Evidence> needs =
          gives.isEmpty() ? gives : way.guarantee().under(line.condition(), asked);
      if (needs.isPresent()) {
        Answer answer = compared(needs.get(), gives.get(), way.better());
        worst = worst == null || isWorse(answer, worst) ? answer : worst;
      }
    }
    return Optional.ofNullable(worst);
  }

  private static boolean isWorse(Answer one, Answer other) {
    return one.margin().orElse(0) < other.margin().orElse(0);
  }

  /** It fits where all that some maker of the BOM's part promises is kept. */
  private static Answer kept(
      SwapCase swap, Way way, List<DatasheetLine> asked, List<DatasheetLine> offered) {
    Answer open = null;
    for (List<DatasheetLine> promises : makers(asked, way)) {
      Answer worst = null;
      for (DatasheetLine promise : promises) {
        for (List<DatasheetLine> others : makers(offered, way)) {
          Answer answer = kept(swap, way, promise, others);
          boolean worse =
              worst == null
                  || answer.verdict().compareTo(worst.verdict()) > 0
                  || answer.verdict() == worst.verdict() && isWorse(answer, worst);
          worst = worse ? answer : worst;
        }
      }
      if (worst.verdict() == SwapVerdict.FITS) {
        return worst;
      }
      open = open == null ? worst : open;
    }
    return open;
  }

  /** One promise of the BOM's part, and the best that one maker of the candidate says to it. */
  private static Answer kept(
      SwapCase swap, Way way, DatasheetLine promise, List<DatasheetLine> offered) {
    Evidence needs = way.guarantee().of(promise);
    return offered.stream()
        .filter(
            line -> CoveredCondition.covers(way.symbol(), line.condition(), promise.condition()))
        .map(line -> compared(needs, way.guarantee().of(line), way.better()))
        .filter(answer -> answer.verdict() != SwapVerdict.DOES_NOT_FIT)
        .min(Comparator.comparing(Answer::verdict))
        .orElseGet(() -> untold(swap, way, needs, way.guarantee().of(offered.get(0))));
  }

  private static Answer untold(SwapCase swap, Way way, Evidence needs, Evidence gives) {
    return Answer.missing(
        Optional.of(needs),
        Optional.of(gives),
        List.of(
            way.symbol()
                + " of "
                + swap.offered().name()
                + (needs.word().isBlank() ? "" : " at " + needs.word())
                + ": a row in datasheets.csv"),
        "the two datasheets state it under different conditions");
  }

  /** Of each maker the lines that say something. */
  private static Collection<List<DatasheetLine>> makers(List<DatasheetLine> lines, Way way) {
    var makers = new LinkedHashMap<String, List<DatasheetLine>>();
    for (DatasheetLine line : lines) {
      if (way.guarantee().isIn(line)) {
        makers.computeIfAbsent(line.maker(), first -> new ArrayList<>(4)).add(line);
      }
    }
    return makers.values();
  }

  /** Holds two limits against each other. */
  static Answer compared(Evidence asked, Evidence offered, Better better) {
    double margin =
        better.margin(
            asked.quantity().orElseThrow().asDouble(), offered.quantity().orElseThrow().asDouble());
    return Answer.sized(
        margin >= 0 ? SwapVerdict.FITS : SwapVerdict.DOES_NOT_FIT,
        asked,
        offered,
        OptionalDouble.of(margin),
        "");
  }
}
