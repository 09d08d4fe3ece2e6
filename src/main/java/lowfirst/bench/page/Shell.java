package lowfirst.bench.page;

/**
 * What every page has around it.
 *
 * @param title the page's title
 * @param kit the kit's title
 * @param sequence the newest event that this page knows of
 * @param person what this device is set to
 * @param said what was just done, told once; empty when nothing was
 */
public record Shell(String title, String kit, long sequence, Person person, String said) {

  /**
   * The choices of the person at this device.
   *
   * @param name who ticks; may be empty
   * @param theme {@code auto}, {@code light} or {@code dark}
   * @param keys whether single keys act: {@code on} or {@code off}
   * @param voice whether each step is read aloud: {@code on} or {@code off}
   * @param pedal the key that the foot switch sends; may be empty
   */
  public record Person(String name, String theme, String keys, String voice, String pedal) {

    /** Where the dark colours hold, as a media query: never on paper. */
    public String darkOn() {
      return switch (theme) {
        case "dark" -> "screen";
        case "light" -> "not all";
        default -> "screen and (prefers-color-scheme: dark)";
      };
    }
  }
}
