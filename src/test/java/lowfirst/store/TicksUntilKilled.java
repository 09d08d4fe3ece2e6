package lowfirst.store;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import lowfirst.board.Designator;
import lowfirst.board.Unit;
import lowfirst.progress.Event;
import lowfirst.progress.State;

/**
 * A process of its own that ticks as fast as it can and prints the id of each tick once it is
 * acknowledged, until it is killed or has done as many as its third argument says.
 */
final class TicksUntilKilled {
  private TicksUntilKilled() {}

  public static void main(String[] arguments) {
    StoreLocation location = StoreLocation.parse(arguments[0], Path.of("").toAbsolutePath());
    int most = Integer.parseInt(arguments[2]);
    try (EventStore store = EventStore.open(location, "kit")) {
      for (int number = 1; number <= most; number++) {
        String id = arguments[1] + "-" + number;
        store.append(
            new Event.Tick(
                id,
                new Unit("driver", 1),
                List.of(Designator.of("R1"), Designator.of("R2")),
                State.SEATED,
                "Ada",
                Instant.EPOCH.plusSeconds(number),
                Optional.empty(),
                Optional.empty()));
        // The mark at the end tells a whole line from one that a kill cut short.
        System.out.println(id + ";");
        System.out.flush();
      }
    }
  }
}
