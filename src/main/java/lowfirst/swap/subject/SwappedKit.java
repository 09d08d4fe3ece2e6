package lowfirst.swap.subject;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import lowfirst.board.Board;
import lowfirst.board.Designator;
import lowfirst.board.Driver;
import lowfirst.board.Item;
import lowfirst.board.Kit;
import lowfirst.board.Swap;
import lowfirst.part.BodyOutline;
import lowfirst.part.BodyOutlines;
import lowfirst.part.DatasheetLine;
import lowfirst.part.Datasheets;
import lowfirst.part.PartType;

/**
 * A kit as it will really be built: with its accepted swaps in place of what the BOM asks for.
 * Every step, sheet, sorting list and load check works on it; the fingerprint stays, since {@code
 * swaps.csv} is part of it.
 */
public final class SwappedKit {
  private final Kit kit;
  private final BodyOutlines outlines;
  private final List<DatasheetLine> named = new ArrayList<>();

  private SwappedKit(Kit kit, BodyOutlines outlines) {
    this.kit = kit;
    this.outlines = outlines;
  }

  /** The kit with its accepted swaps applied; the kit itself where there are none. */
  public static Kit of(Kit kit, BodyOutlines outlines) {
    return kit.swaps().isEmpty() ? kit : new SwappedKit(kit, outlines).applied();
  }

  /** The kit with its accepted swaps and one more, to see what that would do. */
  public static Kit trying(Kit kit, Swap swap, BodyOutlines outlines) {
    var swaps = new ArrayList<>(kit.swaps());
    swaps.add(swap);
    return of(with(kit, kit.boards(), kit.drivers(), kit.datasheets(), swaps), outlines);
  }

  private Kit applied() {
    List<Board> boards = kit.boards().stream().map(this::applied).toList();
    List<Swap> swaps = kit.swaps().stream().map(this::withAsked).toList();
    List<Driver> drivers = kit.drivers().stream().map(this::driven).toList();
    return with(kit, boards, drivers, Datasheets.of(named).over(kit::datasheets), swaps);
  }

  /**
   * A driver with the part type that now does its work. Drivers name no designator: where only some
   * of a type's places are swapped, and its name isn't one of them, either type may be meant, and
   * no datasheet is of both.
   */
  private Driver driven(Driver driver) {
    if (driver.partType().isBlank()) {
      return driver;
    }
    var fitted = new LinkedHashSet<String>();
    boolean some = false;
    for (Board board : kit.boards()) {
      for (Item item : board.items()) {
        if (Words.same(item.partType().typeNumber(), driver.partType())) {
          for (Designator place : item.designators()) {
            Optional<Swap> swap = kit.swapAt(board.name(), place);
            String now = swap.map(Swap::fitted).orElse(driver.partType());
            if (place.toString().equals(driver.name())) {
              return driver.withPartType(now);
            }
            some |= swap.isPresent();
            fitted.add(now);
          }
        }
      }
    }
    return some ? driver.withPartType(String.join(" or ", fitted)) : driver;
  }

  private Swap withAsked(Swap swap) {
    return kit.boards().stream()
        .filter(board -> swap.isOn(board.name()))
        .flatMap(board -> swap.designators().stream().flatMap(d -> board.itemOf(d).stream()))
        .findFirst()
        .map(item -> swap.inPlaceOf(item.partType().words()))
        .orElse(swap);
  }

  private static Kit with(
      Kit kit, List<Board> boards, List<Driver> drivers, Datasheets datasheets, List<Swap> swaps) {
    return new Kit(
        kit.settings(),
        boards,
        datasheets,
        kit.rails(),
        kit.supplies(),
        kit.channels(),
        drivers,
        kit.loads(),
        kit.bag(),
        swaps,
        kit.rejected(),
        kit.fingerprint());
  }

  private Board applied(Board board) {
    Map<Designator, Swap> here = new HashMap<>();
    kit.swaps().stream()
        .filter(swap -> swap.isOn(board.name()))
        .forEach(swap -> swap.designators().forEach(place -> here.put(place, swap)));
    if (here.isEmpty()) {
      return board;
    }
    var bodies = new HashMap<Designator, Optional<BodyOutline>>();
    var items = new ArrayList<Item>();
    board.items().forEach(item -> items.addAll(parted(item, here, bodies)));
    return new Board(
        board.name(),
        board.count(),
        board.size(),
        items,
        board.placements(),
        part -> {
          Optional<BodyOutline> changed = bodies.get(part.designator());
          return changed == null ? board.outlineOf(part.designator()) : changed;
        });
  }

  /** What stays of an item, and an item for each swap that takes places from it. */
  private List<Item> parted(
      Item item, Map<Designator, Swap> here, Map<Designator, Optional<BodyOutline>> bodies) {
    var moved = new LinkedHashMap<Swap, List<Designator>>();
    var stay = new ArrayList<Designator>();
    for (Designator place : item.designators()) {
      Swap swap = here.get(place);
      if (swap == null) {
        stay.add(place);
      } else {
        moved.computeIfAbsent(swap, first -> new ArrayList<>()).add(place);
      }
    }
    if (moved.isEmpty()) {
      return List.of(item);
    }
    var parts = new ArrayList<Item>();
    if (!stay.isEmpty()) {
      int left = Math.max(stay.size(), item.quantity() - item.designators().size() + stay.size());
      parts.add(changed(item, stay, left, item.partType(), item.description()));
    }
    moved.forEach((swap, places) -> parts.add(fitted(item, swap, places, bodies)));
    return parts;
  }

  private Item fitted(
      Item item,
      Swap swap,
      List<Designator> places,
      Map<Designator, Optional<BodyOutline>> bodies) {
    PartType type = FittedPart.of(swap.fitted(), item.partType(), kit.datasheets());
    nameLines(type);
    boolean sameBody = type.packageName().equals(item.partType().packageName());
    if (!sameBody) {
      Optional<BodyOutline> body = outlines.find(type).value();
      places.forEach(place -> bodies.put(place, body));
    }
    // No description: what is said of the asked part rates another one, nor does a reason rate any.
    Item fitted = changed(item, places, places.size(), type, "");
    return sameBody ? fitted : withoutHeight(fitted);
  }

  /** A maker's lines get the name with the maker, so that every later look-up finds just them. */
  private void nameLines(PartType type) {
    if (kit.datasheets().know(type.typeNumber())) {
      return;
    }
    for (DatasheetLine line : FittedPart.linesAbout(type.typeNumber(), kit.datasheets())) {
      named.add(
          new DatasheetLine(
              type.typeNumber(),
              line.maker(),
              line.symbol(),
              line.condition(),
              line.min(),
              line.typ(),
              line.max(),
              line.source()));
    }
  }

  private static Item changed(
      Item item, List<Designator> places, int quantity, PartType type, String description) {
    return new Item(
        places,
        quantity,
        type,
        description,
        item.heightMillimetres(),
        item.fitting(),
        item.place());
  }

  private static Item withoutHeight(Item item) {
    return new Item(
        item.designators(),
        item.quantity(),
        item.partType(),
        item.description(),
        OptionalDouble.empty(),
        item.fitting(),
        item.place());
  }
}
