package lowfirst.assembly;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lowfirst.board.Board;
import lowfirst.board.Designator;
import lowfirst.board.Item;
import lowfirst.board.Placement;
import lowfirst.board.Side;
import lowfirst.part.BodyOutline;
import lowfirst.part.PartKind;
import lowfirst.part.PartType;

/**
 * Which circuits sit in sockets. A kit says so in any of these ways, the plainest first:
 *
 * <ol>
 *   <li>a socket has the circuit's designator with a mark: XU1, SKU1, U1_SOCKET for U1;
 *   <li>a socket's BOM line shares the circuit's designator;
 *   <li>a socket's description names the circuit, "socket for U1", or the circuit's names the
 *       socket, "plugged into J7";
 *   <li>a socket and the circuit are placed on the same spot of the same side;
 *   <li>the circuit's own package or description says "socket";
 *   <li>a BOM line of sockets without designators is for as many circuits with as many pins as the
 *       kit has.
 * </ol>
 *
 * <p>Where the socket has no designator of its own it goes by X and the circuit's.
 */
final class Sockets {
  private static final double SAME_SPOT_MILLIMETRES = 0.5;
  private static final Pattern SOCKET_WORD =
      Pattern.compile("\\b(?:IN |WITH |\\+ ?)?(?:IC[ -])?(?:SOCKET|SOCKEL|SOCKETED)\\b|_SOCKET");
  private static final Pattern NO_SOCKET =
      Pattern.compile("\\b(?:NO|WITHOUT|NOT IN A?) ?SOCKET|SOCKET[- ]?LESS");

  private static final Set<PartKind> MAY_BE_PLUGGED =
      Set.of(
          PartKind.INTEGRATED_CIRCUIT,
          PartKind.OPTOCOUPLER,
          PartKind.DRIVER_ARRAY,
          PartKind.MODULE,
          PartKind.DISPLAY,
          PartKind.RELAY,
          PartKind.REGULATOR,
          PartKind.CRYSTAL,
          PartKind.RESISTOR_NETWORK,
          PartKind.UNKNOWN);

  private final Board board;
  private final Seats seats;
  private final Map<Designator, String> why = new LinkedHashMap<>();
  private final Map<Designator, Seat> added = new LinkedHashMap<>();

  private Sockets(Board board, Seats seats) {
    this.board = board;
    this.seats = seats;
  }

  /** The same seats with socketed circuits plugged in, and with the sockets that had no seat. */
  static Seats applied(Board board, Seats seats) {
    var sockets = new Sockets(board, seats);
    if (!Seats.items(board, PartKind.SOCKET).isEmpty()) {
      sockets.byDesignator();
      sockets.bySharedLine();
      sockets.byDescription();
      sockets.byOwnDescription();
      sockets.bySpot();
    }
    sockets.byOwnWords();
    sockets.byCount();
    var changed = new LinkedHashMap<Designator, Seat>();
    sockets.why.forEach(
        (designator, why) ->
            changed.put(designator, seats.find(designator).at(Step.Stage.PLUG_IN, why)));
    changed.putAll(sockets.added);
    return seats.with(changed);
  }

  private boolean open(Seat seat) {
    return MAY_BE_PLUGGED.contains(seat.type().kind()) && !why.containsKey(seat.designator());
  }

  private void byDesignator() {
    for (Seat seat : seats.all()) {
      String text = seat.designator().text();
      List.of("X" + text, "SK" + text, "SO" + text, text + "_SOCKET", text + "-SOCKET", text + "S")
          .forEach(
              name -> {
                Seat socket = seats.find(Designator.of(name));
                if (open(seat) && socket != null && socket.type().kind() == PartKind.SOCKET) {
                  why.put(seat.designator(), "into its socket " + name);
                }
              });
    }
  }

  private void bySharedLine() {
    for (Item item : Seats.items(board, PartKind.SOCKET)) {
      for (Designator designator : item.designators()) {
        Seat seat = seats.find(designator);
        if (seat != null && open(seat)) {
          add(seat, item.partType(), item.heightMillimetres(), Optional.empty());
        }
      }
    }
  }

  private void byDescription() {
    for (Item item : Seats.items(board, PartKind.SOCKET)) {
      for (Designator word : words(item)) {
        Seat seat = seats.find(word);
        if (seat != null && open(seat)) {
          if (item.designators().isEmpty()) {
            add(seat, item.partType(), item.heightMillimetres(), Optional.empty());
          } else {
            why.put(seat.designator(), "into its socket " + item.designators().get(0));
          }
        }
      }
    }
  }

  /** "Plugged into J7": the circuit's own description names a socket. */
  private void byOwnDescription() {
    for (Item item : board.items()) {
      List<Designator> named = words(item).stream().filter(this::isSocket).toList();
      if (named.size() == 1 && item.designators().size() == 1) {
        Seat seat = seats.find(item.designators().get(0));
        if (seat != null && open(seat)) {
          why.put(seat.designator(), "into its socket " + named.get(0));
        }
      }
    }
  }

  /** The words of a description, any of which may be a designator. */
  private static List<Designator> words(Item item) {
    return Stream.of(item.description().split("[\\s,;/()]+"))
        .filter(word -> !word.isBlank())
        .map(Designator::of)
        .toList();
  }

  private boolean isSocket(Designator designator) {
    Seat seat = seats.find(designator);
    return seat != null && seat.type().kind() == PartKind.SOCKET;
  }

  private void bySpot() {
    var spots = new HashMap<Spot, List<Seat>>();
    for (Seat seat : seats.all()) {
      seat.placement()
          .map(Spot::of)
          .ifPresent(spot -> spots.computeIfAbsent(spot, none -> new ArrayList<>()).add(seat));
    }
    for (List<Seat> here : spots.values()) {
      // More than a socket and its circuit on one spot are placeholders, not places.
      if (here.size() == 2) {
        bySpot(here.get(0), here.get(1));
        bySpot(here.get(1), here.get(0));
      }
    }
  }

  private void bySpot(Seat socket, Seat circuit) {
    if (socket.type().kind() == PartKind.SOCKET && open(circuit)) {
      why.put(circuit.designator(), "into its socket " + socket.designator());
    }
  }

  private record Spot(long x, long y, Side side) {
    static Spot of(Placement placement) {
      return new Spot(
          Math.round(placement.xMillimetres() / SAME_SPOT_MILLIMETRES),
          Math.round(placement.yMillimetres() / SAME_SPOT_MILLIMETRES),
          placement.side());
    }
  }

  private void byOwnWords() {
    var known = new HashMap<String, Boolean>();
    for (Seat seat : seats.all()) {
      if (open(seat) && known.computeIfAbsent(words(seat), Sockets::sayPlugged)) {
        boolean footprintOfSocket =
            seat.type().packageName().toUpperCase(Locale.ROOT).contains("SOCKET");
        add(
            seat,
            AddedSocket.typeFor(seat),
            OptionalDouble.empty(),
            footprintOfSocket ? seat.outline() : Optional.empty());
      }
    }
  }

  /** What a circuit's own line says of it. */
  private String words(Seat seat) {
    String description = board.itemOf(seat.designator()).map(Item::description).orElse("");
    return seat.type().packageName() + " | " + seat.type().text() + " | " + description;
  }

  private static boolean sayPlugged(String words) {
    String capitals = words.toUpperCase(Locale.ROOT);
    return SOCKET_WORD.matcher(capitals).find() && !NO_SOCKET.matcher(capitals).find();
  }

  private void byCount() {
    for (Item item : Seats.items(board, PartKind.SOCKET)) {
      if (!item.designators().isEmpty()) {
        continue;
      }
      int pins =
          AddedSocket.pins(
              item.partType().text()
                  + " "
                  + item.partType().packageName()
                  + " "
                  + item.description());
      List<Seat> circuits =
          seats.all().stream()
              .filter(seat -> open(seat) && seat.type().kind() != PartKind.UNKNOWN)
              .filter(seat -> pins > 0 && AddedSocket.pinsOf(seat) == pins)
              .toList();
      if (circuits.size() == item.quantity()) {
        circuits.forEach(
            seat -> add(seat, item.partType(), item.heightMillimetres(), Optional.empty()));
      }
    }
  }

  /** A socket that has no seat yet, on its circuit's spot. */
  private void add(
      Seat circuit, PartType socket, OptionalDouble stated, Optional<BodyOutline> outline) {
    Designator name = Designator.of("X" + circuit.designator().text());
    if (seats.find(name) != null) {
      return;
    }
    added.put(name, AddedSocket.of(name, circuit, socket, stated, outline));
    why.put(circuit.designator(), "into its socket " + name);
  }
}
