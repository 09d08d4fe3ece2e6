package lowfirst.channel;

import java.util.Collections;
import java.util.List;
import java.util.Set;
import lowfirst.board.Board;
import lowfirst.board.Kit;
import lowfirst.board.OutputChannel;
import lowfirst.board.UnitChannels;
import lowfirst.channel.check.Datum;
import lowfirst.channel.check.Term;

/**
 * Loads that hang on a rail once more, if they do: a board is built several times, and no channel
 * says which of the units it is on, so each of them may have it. Rows that share a MOSFET are on
 * units of their own already.
 */
final class UnitCopies {
  private final Kit kit;
  private final Set<String> named;

  UnitCopies(Kit kit) {
    this.kit = kit;
    this.named = UnitChannels.unitNamedBoards(kit);
  }

  /** What may hang on the rail beyond these. */
  RailLoads of(RailLoads on) {
    List<ChannelInputs> copies =
        on.switched().stream()
            .flatMap(in -> Collections.nCopies(copies(in.channel()), in).stream())
            .toList();
    return new RailLoads(copies, List.of());
  }

  private int copies(OutputChannel channel) {
    int built = kit.board(channel.board()).map(Board::count).orElse(1);
    if (built == 1 || named.contains(channel.board())) {
      return 0;
    }
    long listed =
        channel.mosfet().isEmpty()
            ? 1
            : kit.channels().stream()
                .filter(other -> other.board().equals(channel.board()))
                .filter(other -> other.mosfet().equals(channel.mosfet()))
                .count();
    return listed == 1 ? built - 1 : 0;
  }

  /** What would tell how many there are. */
  List<Datum> missing(RailLoads copies) {
    return copies.switched().stream()
        .map(in -> in.channel().board())
        .distinct()
        .map(
            board ->
                Datum.missing(
                    Term.RAIL_SUM,
                    "the unit of each channel of board "
                        + board
                        + ": begin its name with "
                        + board
                        + "-1 and so on in channels.csv"))
        .toList();
  }
}
