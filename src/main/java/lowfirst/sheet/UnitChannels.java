package lowfirst.sheet;

import java.util.List;
import lowfirst.board.Kit;
import lowfirst.board.OutputChannel;
import lowfirst.board.Unit;

/** Which output channels are on one unit of a board. */
final class UnitChannels {
  private UnitChannels() {}

  /**
   * The channels whose name starts with the unit's serial, such as {@code driver-1.03}; or all of
   * the board's when no channel names a unit.
   */
  static List<OutputChannel> of(Kit kit, Unit unit) {
    List<OutputChannel> board =
        kit.channels().stream().filter(channel -> channel.board().equals(unit.board())).toList();
    List<Unit> units = kit.board(unit.board()).map(b -> b.units()).orElse(List.of(unit));
    boolean named =
        board.stream().anyMatch(channel -> units.stream().anyMatch(any -> names(channel, any)));
    return named ? board.stream().filter(channel -> names(channel, unit)).toList() : board;
  }

  private static boolean names(OutputChannel channel, Unit unit) {
    String serial = unit.serial();
    String name = channel.name();
    return name.startsWith(serial)
        && (name.length() == serial.length()
            || !Character.isLetterOrDigit(name.charAt(serial.length())));
  }
}
