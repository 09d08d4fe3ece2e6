package lowfirst.intake.placement;

import java.util.List;
import java.util.Optional;
import lowfirst.board.Placement;
import lowfirst.board.Side;
import lowfirst.intake.column.ColumnMap;
import lowfirst.intake.column.TableKind;
import lowfirst.intake.table.Table;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;

/**
 * Placements with x seen from the top on both sides. Some exports mirror the bottom side, as if the
 * board were turned over about the y axis: its x then has the other sign.
 *
 * @param words how x on the bottom side was taken
 */
public record BottomX(List<Placement> placements, String words, List<Problem> problems) {

  /** The placements of one table, set right where its bottom side is mirrored. */
  static BottomX of(Table table, ColumnMap map, List<Placement> read) {
    boolean bottom = read.stream().anyMatch(placement -> placement.side() == Side.BOTTOM);
    if (!bottom) {
      return new BottomX(read, "nothing sits on the bottom side", List.of());
    }
    Optional<String> told = map.bottomX(table.kind(), table.file());
    if (told.isPresent()) {
      boolean mirrored = told.get().equals("mirrored");
      return new BottomX(
          mirrored ? turned(read) : read,
          mirrored ? "x on the bottom side mirrored, as you said" : "x as it is, as you said",
          List.of());
    }
    return !table.header().isStandard() && looksMirrored(read)
        ? new BottomX(
            turned(read),
            "x on the bottom side mirrored, guessed by its signs",
            List.of(mirrored(table.file(), read)))
        : new BottomX(read, "x on both sides seen from the top", List.of());
  }

  /**
   * The same for all lists of a board, which show together what none shows alone: its sides may
   * stand in two, or the bottom be all there is.
   */
  public static BottomX across(ColumnMap map, String file, List<Placement> all) {
    boolean told = map.bottomX(TableKind.PLACEMENTS, file).isPresent();
    boolean bottom = all.stream().anyMatch(placement -> placement.side() == Side.BOTTOM);
    return !told && bottom && (looksMirrored(all) || isNegativeBottom(all))
        ? new BottomX(turned(all), "", List.of(mirrored(file, all)))
        : new BottomX(all, "", List.of());
  }

  /** The origin of a board whose parts all have a negative x is rare, a mirrored side is not. */
  private static boolean isNegativeBottom(List<Placement> all) {
    return all.stream().allMatch(p -> p.side() == Side.BOTTOM && p.xMillimetres() < 0);
  }

  private static Problem mirrored(String file, List<Placement> read) {
    return new Problem(
        Kind.UNIT_GUESSED,
        Place.ofFile(file),
        isNegativeBottom(read)
            ? "all parts are on the bottom side and each x is negative, so they were taken as"
                + " mirrored"
            : "x is positive on the top side and negative on the bottom side, so the bottom"
                + " side was taken as mirrored",
        "if that is wrong, say --column placements.bottom-x=as-is");
  }

  private static boolean looksMirrored(List<Placement> read) {
    double leastTop = Double.MAX_VALUE;
    double mostTop = 0;
    double leastBottom = 0;
    double mostBottom = -Double.MAX_VALUE;
    for (Placement placement : read) {
      double x = placement.xMillimetres();
      if (placement.side() == Side.TOP) {
        leastTop = Math.min(leastTop, x);
        mostTop = Math.max(mostTop, x);
      } else {
        leastBottom = Math.min(leastBottom, x);
        mostBottom = Math.max(mostBottom, x);
      }
    }
    boolean meets = -leastBottom >= leastTop && -leastBottom <= mostTop * 1.5;
    return leastTop >= 0 && mostTop > 0 && mostBottom < 0 && meets;
  }

  private static List<Placement> turned(List<Placement> read) {
    return read.stream()
        .map(placement -> placement.side() == Side.BOTTOM ? turned(placement) : placement)
        .toList();
  }

  private static Placement turned(Placement placement) {
    return new Placement(
        placement.designator(),
        0.0 - placement.xMillimetres(),
        placement.yMillimetres(),
        (540 - placement.rotationDegrees()) % 360,
        placement.isTurnKnown(),
        placement.side(),
        placement.valueText(),
        placement.packageText(),
        placement.descriptionText(),
        placement.place());
  }
}
