package lowfirst.swap;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import lowfirst.board.Board;
import lowfirst.board.Designator;
import lowfirst.board.Driver;
import lowfirst.board.Fingerprint;
import lowfirst.board.Item;
import lowfirst.board.Kit;
import lowfirst.board.OutputChannel;
import lowfirst.board.Rail;
import lowfirst.board.Settings;
import lowfirst.part.Datasheets;
import lowfirst.part.PartType;
import lowfirst.problem.Place;
import lowfirst.quantity.Dimension;
import lowfirst.quantity.Quantity;
import lowfirst.quantity.Source;
import lowfirst.quantity.Sourced;
import lowfirst.swap.subject.FittedPart;
import lowfirst.swap.subject.SwapCase;
import lowfirst.swap.subject.SwapPart;

/**
 * Kits of one part, for tests of single swaps. A place is written as {@code rail 24}, {@code gate
 * 24}, {@code flyback pwm 24}: what the part does, and the voltage of the load's rail.
 */
final class SwapPlaces {
  static final Designator WHERE = Designator.of("X1");
  private static final Place NOWHERE = Place.ofFile("test");

  private SwapPlaces() {}

  static SwapCase swap(
      PartType asked, String description, String candidate, String place, Datasheets datasheets) {
    var item =
        new Item(
            List.of(WHERE),
            1,
            asked,
            description,
            OptionalDouble.empty(),
            Item.Fitting.FITTED,
            NOWHERE);
    var board =
        new Board("b", 1, Optional.empty(), List.of(item), List.of(), part -> Optional.empty());
    Kit kit = kit(board, place, datasheets);
    SwapPart wanted = SwapPart.asked(item, Optional.empty(), datasheets);
    PartType fitted = FittedPart.of(candidate, asked, datasheets);
    SwapPart offered = SwapPart.offered(fitted, Optional.empty(), datasheets);
    return SwapCase.of(kit, board, List.of(WHERE), wanted, offered);
  }

  private static Kit kit(Board board, String place, Datasheets datasheets) {
    String[] words = place.isBlank() ? new String[0] : place.split(" ");
    var rails = new ArrayList<Rail>();
    var channels = new ArrayList<OutputChannel>();
    var drivers = new ArrayList<Driver>();
    if (words.length > 0) {
      String volts = words[words.length - 1];
      rails.add(rail("load", volts));
      if (!words[0].equals("rail")) {
        rails.add(rail("logic", "5"));
        boolean pwm = place.contains("pwm");
        drivers.add(driver(pwm ? Optional.of(sourced("1000", Dimension.FREQUENCY)) : none()));
        channels.add(channel(words[0]));
      } else if (Double.parseDouble(volts) > 5) {
        rails.add(rail("logic", "5"));
      }
    }
    return new Kit(
        new Settings("test", Optional.empty(), "", "", ""),
        List.of(board),
        datasheets,
        rails,
        List.of(),
        channels,
        drivers,
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        Fingerprint.of(""));
  }

  private static Optional<Sourced> none() {
    return Optional.empty();
  }

  private static Sourced sourced(String amount, Dimension dimension) {
    return Sourced.of(Quantity.of(amount, dimension), Source.kit("test"));
  }

  private static Rail rail(String name, String volts) {
    return new Rail(
        name,
        Optional.of(sourced(volts, Dimension.VOLTAGE)),
        Optional.of(sourced("5", Dimension.PERCENT)),
        none(),
        none(),
        OptionalInt.empty(),
        "",
        none(),
        OptionalInt.empty(),
        none(),
        "",
        NOWHERE);
  }

  private static Driver driver(Optional<Sourced> pwm) {
    return new Driver(
        "pin", "", "", "logic", none(), none(), none(), none(), pwm, none(), none(), "", NOWHERE);
  }

  private static OutputChannel channel(String role) {
    return new OutputChannel(
        "out 1",
        "b",
        when(role.equals("mosfet")),
        when(role.equals("gate")),
        when(role.equals("pulldown")),
        OutputChannel.PullDownSide.GATE,
        when(role.equals("flyback")),
        when(role.equals("fuse")),
        none(),
        "",
        "pin",
        none(),
        none(),
        none(),
        OutputChannel.TraceLayer.EXTERNAL,
        none(),
        "",
        none(),
        OptionalInt.empty(),
        "",
        none(),
        NOWHERE);
  }

  private static Optional<Designator> when(boolean here) {
    return here ? Optional.of(WHERE) : Optional.empty();
  }
}
