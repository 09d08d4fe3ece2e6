package lowfirst.intake;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;
import lowfirst.board.BoardPart;
import lowfirst.board.BodyFinder;
import lowfirst.board.Item;
import lowfirst.board.Placement;
import lowfirst.intake.shipped.ShippedTables;
import lowfirst.part.BodyOutline;
import lowfirst.part.BodyOutlines;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;
import lowfirst.part.SurfaceMount;
import lowfirst.quantity.Source;

/**
 * The body outline of every part of a board: from the package that the BOM names, else from the one
 * that the placement list names; the BOM's own height wins over either.
 */
final class OutlinesFound implements BodyFinder {
  private final BodyOutlines table = ShippedTables.bodyOutlines();

  /** What the BOM alone tells; a line has many parts. */
  private final IdentityHashMap<Item, Optional<BodyOutline>> told = new IdentityHashMap<>();

  private final Map<PartType, Optional<BodyOutline>> found = new HashMap<>();

  private final Map<PartType, Boolean> flat = new HashMap<>();

  @Override
  public Optional<BodyOutline> of(BoardPart part) {
    for (Item item : part.items()) {
      Optional<BodyOutline> outline = ofAllIn(item);
      if (outline.isEmpty()) {
        outline = withOwnHeight(item, likeliest(item, packagePlaced(part)));
      }
      if (outline.isPresent()) {
        return outline;
      }
    }
    return part.item().isPresent()
        ? Optional.empty()
        : look(PartType.named(PartKind.UNKNOWN, "", "", ""), packagePlaced(part));
  }

  @Override
  public Optional<BodyOutline> ofAllIn(Item line) {
    return told.computeIfAbsent(line, this::toldByBom);
  }

  private static String packagePlaced(BoardPart part) {
    return part.placement().map(Placement::packageText).orElse("");
  }

  private Optional<BodyOutline> toldByBom(Item item) {
    Optional<BodyOutline> outline = look(item.partType(), item.partType().packageName());
    return isTold(outline) ? withOwnHeight(item, outline) : Optional.empty();
  }

  /** Where the BOM doesn't tell: what the placement list tells, or else what the BOM suggests. */
  private Optional<BodyOutline> likeliest(Item item, String placed) {
    Optional<BodyOutline> outline = look(item.partType(), item.partType().packageName());
    if (placed.isEmpty()) {
      return outline;
    }
    Optional<BodyOutline> byPlacement = look(item.partType(), placed);
    boolean flat = outline.isEmpty() && byPlacement.isPresent() && isFlat(item.partType());
    return isTold(byPlacement) || outline.isEmpty() && !flat ? byPlacement : outline;
  }

  /** No body is assumed for what is soldered flat. */
  private boolean isFlat(PartType type) {
    return flat.computeIfAbsent(type, SurfaceMount::isNamed);
  }

  private static boolean isTold(Optional<BodyOutline> outline) {
    return outline.isPresent() && outline.get().height().isPresent() && !outline.get().isAssumed();
  }

  private Optional<BodyOutline> look(PartType type, String packageName) {
    // Letters of a designator alone tell no body.
    if (type.text().isEmpty() && type.typeNumber().isEmpty() && packageName.isEmpty()) {
      return Optional.empty();
    }
    PartType asked = packageName.equals(type.packageName()) ? type : type.in(packageName);
    return found.computeIfAbsent(asked, each -> table.find(each).value());
  }

  private static Optional<BodyOutline> withOwnHeight(Item item, Optional<BodyOutline> outline) {
    if (item.heightMillimetres().isEmpty()) {
      return outline;
    }
    double height = item.heightMillimetres().getAsDouble();
    Source source = Source.kit(item.place() + ", height column");
    BodyOutline body =
        outline.orElseGet(
            () -> new BodyOutline(item.partType().packageName(), 0, 0, 0, 0, 0, 0, source));
    return Optional.of(
        new BodyOutline(
            body.name(),
            height,
            Math.min(body.standOffMillimetres(), height),
            body.lengthMillimetres(),
            body.widthMillimetres(),
            body.pitchMillimetres(),
            body.pins(),
            source));
  }
}
