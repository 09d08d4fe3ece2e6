package lowfirst.cli.process;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;

/** The machine's clock; it loads the table of time zones only when somebody asks for the zone. */
final class MachineClock extends Clock {
  @Override
  public Instant instant() {
    return Instant.now();
  }

  @Override
  public ZoneId getZone() {
    return ZoneId.systemDefault();
  }

  @Override
  public Clock withZone(ZoneId zone) {
    return Clock.system(zone);
  }
}
