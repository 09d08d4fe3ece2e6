package lowfirst.board;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Which output channels are on one unit of a board. */
public final class UnitChannels {
  private UnitChannels() {}

  /**
   * The channels whose name starts with the unit's serial, such as {@code driver-1.03}; or all of
   * the board's when no channel names a unit.
   */
  public static List<OutputChannel> of(Kit kit, Unit unit) {
    List<OutputChannel> board = onBoard(kit, unit.board());
    return unitNamedBoards(kit).contains(unit.board())
        ? board.stream().filter(channel -> names(channel, unit)).toList()
        : board;
  }

  /** The boards of which any channel names the unit that it is on. */
  public static Set<String> unitNamedBoards(Kit kit) {
    return kit.channels().stream()
        .filter(channel -> unitOf(kit, channel).isPresent())
        .map(OutputChannel::board)
        .collect(Collectors.toSet());
  }

  /** The unit that a channel's name begins with; empty where it names none. */
  public static Optional<Unit> unitOf(Kit kit, OutputChannel channel) {
    return kit.board(channel.board()).stream()
        .flatMap(board -> board.units().stream())
        .filter(unit -> names(channel, unit))
        .findFirst();
  }

  private static List<OutputChannel> onBoard(Kit kit, String board) {
    return kit.channels().stream().filter(channel -> channel.board().equals(board)).toList();
  }

  private static boolean names(OutputChannel channel, Unit unit) {
    String serial = unit.serial();
    String name = channel.name();
    return name.regionMatches(true, 0, serial, 0, serial.length())
        && (name.length() == serial.length()
            || !Character.isLetterOrDigit(name.charAt(serial.length())));
  }
}
