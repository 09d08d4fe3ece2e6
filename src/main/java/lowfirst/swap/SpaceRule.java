package lowfirst.swap;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lowfirst.board.Designator;
import lowfirst.board.Placement;
import lowfirst.part.BodyOutline;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Source;

/** Whether the candidate's body has room beside its neighbours. */
enum SpaceRule implements SwapRule {
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

  /** Bodies are taken as upright rectangles about their positions; only new overlaps count. */
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
    for (Placement here : placed) {
      if (swapped.contains(here.designator())) {
        for (Placement there : placed) {
          // of two places of the swap itself the first alone looks at the other
          boolean both = swapped.contains(there.designator());
          Optional<BodyOutline> known = swap.board().outlineOf(there.designator());
          if (there.side() == here.side()
              && (!both || here.designator().compareTo(there.designator()) < 0)
              && touches(here, body, there, both ? body : known)
              && !touches(here, asked, there, known)) {
            touched.add(here.designator() + " and " + there.designator());
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
                List.of("room between " + String.join(", ", touched) + ": try it dry"),
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

  private static boolean touches(
      Placement here, Optional<BodyOutline> body, Placement there, Optional<BodyOutline> other) {
    if (body.isEmpty() || other.filter(SpaceRule::isDrawn).isEmpty()) {
      return false;
    }
    double across = (extentX(here, body.get()) + extentX(there, other.get())) / 2;
    double along = (extentY(here, body.get()) + extentY(there, other.get())) / 2;
    return Math.abs(here.xMillimetres() - there.xMillimetres()) < across
        && Math.abs(here.yMillimetres() - there.yMillimetres()) < along;
  }

  private static double extentX(Placement placement, BodyOutline body) {
    return isTurned(placement) ? body.widthMillimetres() : body.lengthMillimetres();
  }

  private static double extentY(Placement placement, BodyOutline body) {
    return isTurned(placement) ? body.lengthMillimetres() : body.widthMillimetres();
  }

  private static boolean isTurned(Placement placement) {
    double quarter = placement.rotationDegrees() % 180;
    return quarter > 45 && quarter < 135;
  }
}
