package lowfirst.assembly;

import java.util.Optional;
import java.util.OptionalDouble;
import lowfirst.board.BodyArea;
import lowfirst.board.Designator;
import lowfirst.board.Placement;
import lowfirst.board.Side;
import lowfirst.part.BodyOutline;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;

/**
 * One part on one board, with what decides when it is fitted.
 *
 * @param designator which one; for a socket that the BOM doesn't place, X and its circuit's
 * @param type what to pick
 * @param placement where it sits, if the placement list has it
 * @param side which side its body is on; the top where that isn't known
 * @param outline its body, if found
 * @param height how tall it is seated, bolted to its heatsink if it is
 * @param statedHeight whether the BOM itself gave the height
 * @param stage what kind of work it is
 * @param remark what to say beside the rule; may be empty
 */
record Seat(
    Designator designator,
    PartType type,
    Optional<Placement> placement,
    Side side,
    Optional<BodyOutline> outline,
    OptionalDouble height,
    StatedBy statedHeight,
    Step.Stage stage,
    String remark) {

  /** Who says how tall a part is. */
  enum StatedBy {
    BOM,
    OUTLINE,
    ASSUMPTION,
    NOBODY
  }

  /** Whether both hold one and the same part type, at one height and stage, and no link. */
  @SuppressWarnings("ReferenceEquality") // quick to tell; equal ones may be told apart
  boolean isOfTheSameLine(Seat other) {
    return type == other.type
        && type.kind() != PartKind.WIRE_LINK
        && height.equals(other.height)
        && stage == other.stage
        && statedHeight == other.statedHeight;
  }

  Optional<BodyArea> area() {
    return placement.flatMap(placed -> outline.flatMap(body -> BodyArea.of(placed, body)));
  }

  double standOff() {
    return outline.map(BodyOutline::standOffMillimetres).orElse(0.0);
  }

  /** The same seat at another stage, and why. */
  Seat at(Step.Stage other, String why) {
    return new Seat(designator, type, placement, side, outline, height, statedHeight, other, why);
  }

  /** The same seat as part of a bolted assembly of this height. */
  Seat bolted(OptionalDouble assembly, String why) {
    return new Seat(
        designator,
        type,
        placement,
        side,
        outline,
        assembly,
        assembly.isPresent() ? statedHeight : StatedBy.NOBODY,
        Step.Stage.FASTEN_AND_SOLDER,
        why);
  }
}
