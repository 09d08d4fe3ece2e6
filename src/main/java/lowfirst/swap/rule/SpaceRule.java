package lowfirst.swap.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import lowfirst.board.Designator;
import lowfirst.board.Placement;
import lowfirst.part.BodyOutline;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Source;
import lowfirst.swap.subject.Evidence;
import lowfirst.swap.subject.SwapCase;

/** Whether the candidate's body has room beside its neighbours. */
public enum SpaceRule implements SwapRule {
  NEIGHBOURS(
      "body against its neighbours",
      "a wider body may press on the part beside it",
      COMMON_PRACTICE,
      SpaceRule::neighbours);

  private final Card card;

  SpaceRule(String words, String why, Source source, Judgement judgement) {
    this.card = Card.of(words, why, source, judgement);
  }

  @Override
  public Card card() {
    return card;
  }

  /**
   * Bodies are taken as upright rectangles about their positions; only new overlaps count. One
   * whose rotation is not known is tried lying and standing.
   */
  private static Optional<Answer> neighbours(SwapCase swap) {
    Optional<BodyOutline> body = swap.offered().outline().filter(SpaceRule::isDrawn);
    Optional<BodyOutline> asked = swap.asked().outline().filter(SpaceRule::isDrawn);
    if (body.isEmpty() || body.equals(asked)) {
      return Optional.empty();
    }
    List<Placement> placed =
        swap.board().parts().stream().flatMap(part -> part.placement().stream()).toList();
    Set<Designator> swapped = Set.copyOf(swap.designators());
    var touched = new ArrayList<String>();
    var unturned = new TreeSet<Designator>();
    for (Placement here : placed) {
      if (swapped.contains(here.designator())) {
        for (Placement there : placed) {
          // of two places of the swap itself the first alone looks at the other
          boolean both = swapped.contains(there.designator());
          Optional<BodyOutline> known = swap.board().outlineOf(there.designator());
          if (there.side() == here.side()
              && (!both || here.designator().compareTo(there.designator()) < 0)
              && presses(here, body, asked, there, both ? body : known, known)) {
            touched.add(here.designator() + " and " + there.designator());
            unturned.addAll(unturned(here, body));
            unturned.addAll(unturned(there, both ? body : known));
          }
        }
      }
    }
    Evidence needs = area(asked, "body now");
    Evidence gives = area(body, "body of the candidate");
    return Optional.of(
        touched.isEmpty()
            ? Answer.of(SwapVerdict.FITS, needs, gives, "")
            : Answer.missing(
                Optional.of(needs),
                Optional.of(gives),
                missing(touched, unturned),
                "drawn as rectangles the bodies would overlap"));
  }

  private static boolean isDrawn(BodyOutline outline) {
    return outline.body().isPresent();
  }

  private static Evidence area(Optional<BodyOutline> outline, String what) {
    return outline
        .map(
            body ->
                Evidence.of(
                    Quantity.of(
                        Math.max(body.lengthMillimetres(), body.widthMillimetres()),
                        Dimension.LENGTH),
                    what + ", " + body.name(),
                    body.source()))
        .orElse(Evidence.of("not known", Source.kit("package")));
  }

  private static List<String> missing(List<String> touched, Set<Designator> unturned) {
    String room = "room between " + String.join(", ", touched) + ": try it dry";
    if (unturned.isEmpty()) {
      return List.of(room);
    }
    String names = unturned.stream().map(Designator::text).collect(Collectors.joining(", "));
    return List.of(
        room, "rotation of " + names + " (tried at 0° and at 90°): a column of the placement list");
  }

  /** The part's name, where it makes a difference that its rotation is not known. */
  private static Set<Designator> unturned(Placement placement, Optional<BodyOutline> body) {
    boolean square = body.filter(b -> b.lengthMillimetres() == b.widthMillimetres()).isPresent();
    return placement.isTurnKnown() || square ? Set.of() : Set.of(placement.designator());
  }

  /** Whether, turned in some way that may be, the new bodies touch where those of now don't. */
  private static boolean presses(
      Placement here,
      Optional<BodyOutline> body,
      Optional<BodyOutline> now,
      Placement there,
      Optional<BodyOutline> other,
      Optional<BodyOutline> otherNow) {
    for (boolean turned : turns(here)) {
      for (boolean otherTurned : turns(there)) {
        if (touches(here, turned, body, there, otherTurned, other)
            && !touches(here, turned, now, there, otherTurned, otherNow)) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean[] turns(Placement placement) {
    return placement.isTurnKnown()
        ? new boolean[] {isTurned(placement)}
        : new boolean[] {false, true};
  }

  private static boolean touches(
      Placement here,
      boolean turned,
      Optional<BodyOutline> body,
      Placement there,
      boolean otherTurned,
      Optional<BodyOutline> other) {
    if (body.isEmpty() || other.filter(SpaceRule::isDrawn).isEmpty()) {
      return false;
    }
    double across = (extent(body.get(), turned) + extent(other.get(), otherTurned)) / 2;
    double along = (extent(body.get(), !turned) + extent(other.get(), !otherTurned)) / 2;
    return Math.abs(here.xMillimetres() - there.xMillimetres()) < across
        && Math.abs(here.yMillimetres() - there.yMillimetres()) < along;
  }

  /** How far a body reaches along an axis: its length, or across it its width. */
  private static double extent(BodyOutline body, boolean across) {
    return across ? body.widthMillimetres() : body.lengthMillimetres();
  }

  private static boolean isTurned(Placement placement) {
    double quarter = placement.rotationDegrees() % 180;
    return quarter > 45 && quarter < 135;
  }
}
