package lowfirst.progress;

import java.util.Arrays;
import java.util.Optional;

/**
 * The usual reasons for setting a placement aside; any other can be written instead.
 *
 * <p>Some take a part out of use: it is neither on the board nor back in its bag.
 */
public enum AsideReason {
  NOT_IN_THE_BAG("not in the bag", false),
  METER_REJECTS_IT("meter rejects it", true),
  PART_DAMAGED("part damaged", true),
  BOARD_DAMAGED("hole or pad damaged", false),
  NOT_SURE("not sure it is the right part", false);

  private final String words;
  private final boolean spoilsPart;

  AsideReason(String words, boolean spoilsPart) {
    this.words = words;
    this.spoilsPart = spoilsPart;
  }

  /** The words that people read, and that are recorded. */
  public String words() {
    return words;
  }

  /** Whether the part is out of use. */
  public boolean spoilsPart() {
    return spoilsPart;
  }

  /** The reason that is recorded in these words; empty when it was written freely. */
  static Optional<AsideReason> of(String words) {
    return Arrays.stream(values()).filter(reason -> reason.words.equals(words)).findFirst();
  }
}
