package lowfirst.channel;

import java.util.Locale;
import lowfirst.board.Driver;
import lowfirst.channel.ChannelInputs.Switching;
import lowfirst.part.PartKind;

/** What a driver ends in, from the words of {@code drivers.csv}, and so what it is as a part. */
enum DriverStage {
  LOGIC_PIN(Switching.CURRENT_SINK, PartKind.INTEGRATED_CIRCUIT),
  OPEN_COLLECTOR(Switching.DARLINGTON_ARRAY, PartKind.DRIVER_ARRAY),
  DARLINGTON_ARRAY(Switching.DARLINGTON_ARRAY, PartKind.DRIVER_ARRAY),
  OPTOCOUPLER(Switching.OPTOCOUPLER, PartKind.OPTOCOUPLER),
  CURRENT_SINK(Switching.CURRENT_SINK, PartKind.INTEGRATED_CIRCUIT),
  BIPOLAR_TRANSISTOR(Switching.BIPOLAR_TRANSISTOR, PartKind.BIPOLAR_TRANSISTOR);

  private final Switching switching;
  private final PartKind partKind;

  DriverStage(Switching switching, PartKind partKind) {
    this.switching = switching;
    this.partKind = partKind;
  }

  /** The stage that a driver's kind names; a logic pin where it names none. */
  static DriverStage of(Driver driver) {
    String words = driver.kind().toLowerCase(Locale.ROOT);
    if (words.contains("darlington") || words.contains("array")) {
      return DARLINGTON_ARRAY;
    }
    if (words.contains("opto")) {
      return OPTOCOUPLER;
    }
    if (words.contains("constant") || words.contains("current sink")) {
      return CURRENT_SINK;
    }
    if (words.contains("open")) {
      return OPEN_COLLECTOR;
    }
    return words.contains("bipolar") || words.contains("transistor")
        ? BIPOLAR_TRANSISTOR
        : LOGIC_PIN;
  }

  /** What switches the load in a channel without a MOSFET. */
  Switching switching() {
    return switching;
  }

  /** The kind of part whose datasheet tells of this stage. */
  PartKind partKind() {
    return partKind;
  }
}
