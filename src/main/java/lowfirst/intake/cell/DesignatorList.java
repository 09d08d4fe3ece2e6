package lowfirst.intake.cell;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import lowfirst.board.Designator;

/**
 * The designators that a BOM cell lists: {@code R1, R2}, {@code C4 C5}, {@code R1-R4, R7}.
 *
 * @param designators in the order written, ranges filled in
 * @param otherText what stands there but is no designator, such as the name of an accessory
 * @param remarks what was taken for granted while reading
 * @param faults what could not be read
 * @param empties how many places between separators were empty, one at the end not counted
 * @param counted how many the cell itself says there are, as in {@code 2x C1, C2}; 0 without
 */
public record DesignatorList(
    List<Designator> designators,
    String otherText,
    List<String> remarks,
    List<String> faults,
    int empties,
    int counted) {

  public DesignatorList {
    designators = List.copyOf(designators);
    remarks = List.copyOf(remarks);
    faults = List.copyOf(faults);
  }

  /** Reads a cell; never throws. */
  public static DesignatorList parse(String cell) {
    return DesignatorReader.read(cell);
  }

  /** Whether nothing was read but words in capitals, which may be names of parts. */
  public boolean isCapitals() {
    return designators.isEmpty()
        && faults.isEmpty()
        && !otherText.isEmpty()
        && otherText.chars().noneMatch(Character::isLowerCase)
        && LostNames.first(otherText).isEmpty();
  }

  /** One that needs no reading. */
  public static DesignatorList of(Designator designator) {
    return new DesignatorList(List.of(designator), "", List.of(), List.of(), 0, 0);
  }

  /** The same with other designators, such as parts for their units. */
  public DesignatorList naming(List<Designator> others) {
    return new DesignatorList(others, otherText, remarks, faults, empties, counted);
  }

  /** The same where some of its words name parts, such as SWITCH LEFT. */
  public DesignatorList withWords(Map<String, Designator> names) {
    if (otherText.isEmpty() || names.isEmpty()) {
      return this;
    }
    var more = new ArrayList<>(designators);
    var others = new ArrayList<String>();
    for (String words : otherText.split(", ")) {
      if (names.containsKey(words)) {
        more.add(names.get(words));
      } else {
        others.add(words);
      }
    }
    return new DesignatorList(more, String.join(", ", others), remarks, faults, empties, counted);
  }

  /** The one designator that a cell of a placement list names, spelt as a BOM's would be. */
  public static String spelt(String cell) {
    return DesignatorSpelling.inCapitals(
        DesignatorSpelling.isPlain(cell) ? cell : DesignatorSpelling.together(cell).orElse(cell));
  }
}
