package lowfirst.swap;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lowfirst.board.Board;
import lowfirst.board.Designator;
import lowfirst.board.Item;
import lowfirst.board.Kit;
import lowfirst.part.BodyOutline;
import lowfirst.part.BodyOutlines;
import lowfirst.part.PartType;
import lowfirst.swap.subject.FittedPart;
import lowfirst.swap.subject.SwapCase;
import lowfirst.swap.subject.SwapPart;
import lowfirst.swap.subject.Words;

/**
 * What would be replaced: places of one BOM line on one board.
 *
 * @param board the board design
 * @param item the BOM line
 * @param designators which of its places
 */
public record SwapTarget(Board board, Item item, List<Designator> designators) {

  public SwapTarget {
    designators = List.copyOf(designators);
  }

  /**
   * What a text names in a kit: a designator is that one place, a part type is every place of it.
   * Several boards may have it; each is a target of its own.
   *
   * @param onlyBoard looks on one board alone, if given
   */
  public static List<SwapTarget> named(Kit kit, String text, Optional<String> onlyBoard) {
    var places = new ArrayList<SwapTarget>();
    var types = new ArrayList<SwapTarget>();
    for (Board board : kit.boards()) {
      if (onlyBoard.filter(name -> !name.equals(board.name())).isPresent()) {
        continue;
      }
      for (Item item : board.items()) {
        item.designators().stream()
            .filter(place -> place.text().equalsIgnoreCase(text.strip()))
            .forEach(place -> places.add(new SwapTarget(board, item, List.of(place))));
        if (isNamed(item.partType(), text)) {
          types.add(new SwapTarget(board, item, item.designators()));
        }
      }
    }
    return places.isEmpty() ? types : places;
  }

  /** Whether a designator names different places on different boards. */
  public static boolean isAmbiguous(List<SwapTarget> targets, String text) {
    return targets.size() > 1
        && targets.stream()
            .anyMatch(
                target ->
                    target.designators().stream()
                        .anyMatch(place -> place.text().equalsIgnoreCase(text.strip())));
  }

  private static boolean isNamed(PartType type, String text) {
    return !type.text().isBlank() && Words.same(type.text(), text)
        || !type.typeNumber().isBlank() && Words.same(type.typeNumber(), text);
  }

  /** The swap of these places for what a text names. */
  public SwapCase with(Kit kit, String candidate, BodyOutlines outlines) {
    Optional<BodyOutline> body =
        designators.stream().flatMap(place -> board.outlineOf(place).stream()).findFirst();
    SwapPart asked = SwapPart.asked(item, body, kit.datasheets());
    PartType type = FittedPart.of(candidate, item.partType(), kit.datasheets());
    boolean sameBody = type.packageName().equals(item.partType().packageName());
    SwapPart offered =
        SwapPart.offered(type, sameBody ? body : outlines.find(type).value(), kit.datasheets());
    return SwapCase.of(kit, board, designators, asked, offered);
  }
}
