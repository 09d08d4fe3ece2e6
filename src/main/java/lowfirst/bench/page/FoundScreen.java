package lowfirst.bench.page;

import java.util.List;

/**
 * What was found.
 *
 * @param asked what was typed or scanned
 * @param understood how it was understood; may be empty
 * @param hits where it leads
 */
public record FoundScreen(String asked, String understood, List<Hit> hits) {

  /**
   * A step or a place.
   *
   * @param address its page
   * @param title what it is
   * @param detail where, and how it stands
   */
  public record Hit(String address, String title, String detail) {
    public Hit {
      if (!address.startsWith("/")) {
        throw new IllegalArgumentException(address);
      }
    }
  }

  public FoundScreen {
    hits = List.copyOf(hits);
  }
}
