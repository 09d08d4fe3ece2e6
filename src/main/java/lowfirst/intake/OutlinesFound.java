package lowfirst.intake;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lowfirst.board.Designator;
import lowfirst.board.Item;
import lowfirst.board.Placement;
import lowfirst.part.BodyOutline;
import lowfirst.part.BodyOutlines;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;
import lowfirst.quantity.Source;

/**
 * The body outline of every designator of a board: from the package that the BOM names, else from
 * the one that the placement list names; the BOM's own height wins over either.
 */
final class OutlinesFound {
  private final BodyOutlines table = ShippedTables.bodyOutlines();
  private final Map<Asked, Optional<BodyOutline>> found = new HashMap<>();
  private final List<Placement> placements;
  private final Map<Designator, String> placedPackages = new HashMap<>();
  private final Map<Designator, BodyOutline> outlines = new HashMap<>();

  /** What an outline was looked up by; a board asks for few of them, many times. */
  private record Asked(String packageName, PartKind kind, String typeNumber, String text) {}

  private OutlinesFound(List<Placement> placements) {
    this.placements = placements;
  }

  /** The outlines of what these items and placements name. */
  static Map<Designator, BodyOutline> of(List<Item> items, List<Placement> placements) {
    var search = new OutlinesFound(placements);
    for (Item item : items) {
      item.designators().forEach(designator -> search.add(designator, item));
    }
    for (Placement placement : placements) {
      if (!search.outlines.containsKey(placement.designator())) {
        search
            .look(new Asked(placement.packageText(), PartKind.UNKNOWN, "", ""))
            .ifPresent(outline -> search.outlines.put(placement.designator(), outline));
      }
    }
    return search.outlines;
  }

  private void add(Designator designator, Item item) {
    if (outlines.containsKey(designator)) {
      return;
    }
    PartType type = item.partType();
    var asked = new Asked(type.packageName(), type.kind(), type.typeNumber(), type.text());
    Optional<BodyOutline> outline = look(asked);
    String placed = isTold(outline) ? "" : placedPackage(designator);
    if (!placed.isEmpty()) {
      Optional<BodyOutline> byPlacement =
          look(new Asked(placed, type.kind(), type.typeNumber(), type.text()));
      outline = isTold(byPlacement) || outline.isEmpty() ? byPlacement : outline;
    }
    withOwnHeight(item, outline).ifPresent(known -> outlines.put(designator, known));
  }

  /** The package in the placement list; made a table of when the first is asked for. */
  private String placedPackage(Designator designator) {
    if (placedPackages.isEmpty()) {
      placements.forEach(
          placement -> placedPackages.putIfAbsent(placement.designator(), placement.packageText()));
    }
    return placedPackages.getOrDefault(designator, "");
  }

  private static boolean isTold(Optional<BodyOutline> outline) {
    return outline.isPresent() && outline.get().height().isPresent() && !outline.get().isAssumed();
  }

  private Optional<BodyOutline> look(Asked asked) {
    return found.computeIfAbsent(
        asked,
        key ->
            table
                .find(
                    new PartType(
                        key.kind(),
                        key.text(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        key.typeNumber(),
                        key.packageName()))
                .value());
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
