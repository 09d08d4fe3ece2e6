package lowfirst.intake.bom;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import lowfirst.board.Designator;
import lowfirst.board.Item;
import lowfirst.part.PartKind;

/** BOM lines of sockets under the designators of what sits in them. */
public final class SocketLines {
  private static final Set<PartKind> PLUGGED =
      EnumSet.of(
          PartKind.INTEGRATED_CIRCUIT,
          PartKind.OPTOCOUPLER,
          PartKind.DRIVER_ARRAY,
          PartKind.MODULE,
          PartKind.DISPLAY,
          PartKind.RELAY);

  private SocketLines() {}

  /** Whether one line names a socket and the other what may sit in it. */
  public static boolean are(Item one, Item other) {
    return (isSocket(one) && isPlugged(other)) || (isSocket(other) && isPlugged(one));
  }

  /** The same lines, with sockets below what sits in them: the first line says what a part is. */
  static List<Item> last(List<Item> items) {
    if (items.stream().noneMatch(SocketLines::isSocket)) {
      return items;
    }
    Set<Designator> plugged = new HashSet<>();
    items.stream()
        .filter(SocketLines::isPlugged)
        .forEach(item -> plugged.addAll(item.designators()));
    var first = new ArrayList<Item>();
    var last = new ArrayList<Item>();
    for (Item item : items) {
      boolean shares = isSocket(item) && item.designators().stream().anyMatch(plugged::contains);
      (shares ? last : first).add(item);
    }
    first.addAll(last);
    return first;
  }

  private static boolean isSocket(Item item) {
    return item.partType().kind() == PartKind.SOCKET;
  }

  private static boolean isPlugged(Item item) {
    return PLUGGED.contains(item.partType().kind());
  }
}
