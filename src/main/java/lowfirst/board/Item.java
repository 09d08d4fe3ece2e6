package lowfirst.board;

import java.util.List;
import java.util.OptionalDouble;
import lowfirst.part.PartType;
import lowfirst.problem.Place;

/**
 * A BOM line: one part type with its designators.
 *
 * @param designators where it goes, in the order written; empty for parts that have no place
 * @param quantity how many the BOM asks for on one board
 * @param partType what to buy
 * @param description further words of the BOM; may be empty
 * @param heightMillimetres the BOM's own seated height, which wins over the package table
 * @param fitting whether it is to be fitted
 * @param place where the line stands
 */
public record Item(
    List<Designator> designators,
    int quantity,
    PartType partType,
    String description,
    OptionalDouble heightMillimetres,
    Fitting fitting,
    Place place) {

  /** Whether a BOM line is to be fitted. */
  public enum Fitting {
    FITTED,
    NOT_FITTED,
    /** Fitted if the builder likes. */
    OPTIONAL
  }

  public Item {
    designators = List.copyOf(designators);
  }

  /** The same line asking for this. */
  public Item with(PartType type) {
    return new Item(designators, quantity, type, description, heightMillimetres, fitting, place);
  }

  /** Whether the builder places it. */
  public boolean isFitted() {
    return fitting != Fitting.NOT_FITTED;
  }
}
