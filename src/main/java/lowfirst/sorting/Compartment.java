package lowfirst.sorting;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import lowfirst.board.Designator;
import lowfirst.part.BodyOutline;
import lowfirst.part.PartType;

/**
 * One compartment of the sorting tray: all parts of the kit that are bought as one type.
 *
 * @param number from 1, in sorting order; what the bag label says
 * @param type the part type, as its first item has it
 * @param uses where it goes, board by board
 * @param quantity how many all units need
 * @param outline its body, where known
 * @param roles what its parts do in output channels
 * @param descriptions the further words of its items, each once
 */
public record Compartment(
    int number,
    PartType type,
    List<Use> uses,
    int quantity,
    Optional<BodyOutline> outline,
    Set<Role> roles,
    List<String> descriptions) {

  /**
   * Where it goes on one board design.
   *
   * @param designators empty for parts that have no place
   * @param perUnit how many one unit needs
   * @param units how many units are built
   */
  public record Use(String board, List<Designator> designators, int perUnit, int units) {
    public Use {
      designators = List.copyOf(designators);
    }
  }

  /** What a part does in an output channel. */
  public enum Role {
    PULL_DOWN,
    MOSFET,
    FLYBACK_DIODE,
    FUSE,
    GATE_RESISTOR
  }

  public Compartment {
    uses = List.copyOf(uses);
    roles = Set.copyOf(roles);
    descriptions = List.copyOf(descriptions);
  }

  /** What to expect on its parts. */
  public PartMarking marking() {
    return PartMarking.of(type);
  }
}
