package lowfirst.assembly;

import java.util.List;
import java.util.OptionalDouble;
import lowfirst.board.Designator;
import lowfirst.board.Placement;
import lowfirst.board.Side;
import lowfirst.part.PartType;

/**
 * One part type at one height on one board: pick, seat, solder, inspect.
 *
 * @param number from 1, over the whole kit, in the order to work
 * @param board the board design's name
 * @param units how many units of that board are built side by side
 * @param partType what to pick
 * @param designators where it goes, in the order to fill
 * @param placements their positions where the placement list has them; may be fewer
 * @param side the side the bodies are on
 * @param seatedHeightMillimetres empty when not known
 * @param rule the rule that put it here
 * @param why the rule in the words of this step, for example {@code 2.4 mm, lowest first}
 * @param stage what kind of work it is
 */
public record Step(
    int number,
    String board,
    int units,
    PartType partType,
    List<Designator> designators,
    List<Placement> placements,
    Side side,
    OptionalDouble seatedHeightMillimetres,
    Rule rule,
    String why,
    Stage stage) {

  /** What kind of work a step is. */
  public enum Stage {
    /** Seat and solder. */
    SOLDER,
    /** Fasten to the heatsink, then solder. */
    FASTEN_AND_SOLDER,
    /** Push into its socket, after the rail check. */
    PLUG_IN
  }

  public Step {
    designators = List.copyOf(designators);
    placements = List.copyOf(placements);
  }

  /** The places on the board: of a socket that no list names, that of its circuit. */
  public List<Designator> spots() {
    return placements.size() == designators.size()
        ? placements.stream().map(Placement::designator).toList()
        : designators;
  }

  /** How many to pick for all units together. */
  public int partsToPick() {
    return designators.size() * units;
  }
}
