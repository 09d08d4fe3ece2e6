package lowfirst.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lowfirst.board.Designator;
import lowfirst.board.Item;
import lowfirst.problem.Excerpt;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;

/** Parts that a placement list calls not fitted, though the BOM fits them: the BOM counts. */
final class ListedNotFitted {
  /** So many are named. */
  private static final int NAMED = 6;

  private ListedNotFitted() {}

  /** That the two lists differ; empty where they don't. */
  static Optional<Problem> said(Map<Designator, Place> listed, List<Item> items) {
    if (listed.isEmpty()) {
      return Optional.empty();
    }
    var fitted = new ArrayList<Designator>();
    items.stream()
        .filter(Item::isFitted)
        .flatMap(item -> item.designators().stream())
        .filter(listed::containsKey)
        .forEach(fitted::add);
    if (fitted.isEmpty()) {
      return Optional.empty();
    }
    String named = Excerpt.of(fitted, NAMED);
    return Optional.of(
        new Problem(
            Kind.OPTIONAL_PART,
            listed.get(fitted.get(0)),
            "this list says that "
                + named
                + (fitted.size() == 1 ? " is" : " are")
                + " not fitted, but the BOM fits "
                + (fitted.size() == 1 ? "it" : "them")
                + ", and counts",
            "if the list is right, write no into a column \"fitted\" of the BOM"));
  }
}
