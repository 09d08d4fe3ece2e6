package lowfirst.marking;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import lowfirst.problem.Reading;

/**
 * The colour bands of a part in the order they are looked at, which may be the wrong one.
 *
 * @param bands one to six colours
 */
public record BandSequence(List<Colour> bands) {

  /** The most bands that the code has. */
  public static final int MOST = 6;

  private static final String WANTED =
      "write the bands by name or two-letter code, such as \"yellow violet red gold\" or"
          + " \"YE VT RD GD\"";

  public BandSequence {
    bands = List.copyOf(bands);
    if (bands.isEmpty() || bands.size() > MOST) {
      throw new IllegalArgumentException("1 to 6 bands, not " + bands.size());
    }
  }

  /** Trusted bands. */
  public static BandSequence of(Colour... bands) {
    return new BandSequence(List.of(bands));
  }

  /**
   * Reads names, abbreviations or IEC 60757 codes, separated by blanks, commas, dashes or slashes,
   * or two-letter codes run together ({@code YEVTRDGD}). A last {@code none} is a band left out.
   */
  public static Reading<BandSequence> parse(String text) {
    var bands = new ArrayList<Colour>();
    String[] words = text.strip().replaceAll("[\\[\\]()\u00a0]", " ").strip().split("[\\s,;/|-]+");
    for (int i = 0; i < words.length; i++) {
      String word = words[i];
      Optional<List<Colour>> read = colours(word);
      if (read.isPresent()) {
        bands.addAll(read.get());
      } else if (!(word.equalsIgnoreCase("none") && i == words.length - 1 && !bands.isEmpty())) {
        return Reading.fault(
            word.isEmpty() ? "no band is named" : "\"" + word + "\" is not a colour", WANTED);
      }
      if (bands.size() > MOST) {
        return Reading.fault("there are more than six bands", WANTED);
      }
    }
    if (bands.isEmpty()) {
      // Nothing but separators.
      return Reading.fault("no band is named", WANTED);
    }
    return Reading.of(new BandSequence(bands), "colour names or IEC 60757 codes");
  }

  private static Optional<List<Colour>> colours(String word) {
    Optional<Colour> one = Colour.named(word);
    if (one.isPresent()) {
      return one.map(List::of);
    }
    if (word.length() < 4 || word.length() > 2 * MOST || word.length() % 2 != 0) {
      return Optional.empty();
    }
    var colours = new ArrayList<Colour>();
    for (int i = 0; i < word.length(); i += 2) {
      String code = word.substring(i, i + 2);
      Optional<Colour> colour = Colour.named(code).filter(c -> c.code().equalsIgnoreCase(code));
      if (colour.isEmpty()) {
        return Optional.empty();
      }
      colours.add(colour.get());
    }
    return Optional.of(colours);
  }

  /** How many bands there are. */
  public int count() {
    return bands.size();
  }

  /** The same bands looked at from the other end. */
  public BandSequence reversed() {
    int count = bands.size();
    var other = new Colour[count];
    for (int i = 0; i < count; i++) {
      other[i] = bands.get(count - 1 - i);
    }
    return new BandSequence(List.of(other));
  }

  /** Whether it looks the same from both ends. */
  public boolean isPalindrome() {
    for (int i = 0, j = bands.size() - 1; i < j; i++, j--) {
      if (bands.get(i) != bands.get(j)) {
        return false;
      }
    }
    return true;
  }

  /** For example {@code yellow violet red gold}. */
  public String words() {
    return bands.stream().map(Colour::word).collect(Collectors.joining(" "));
  }

  /** For example {@code [YE VT RD GD]}. */
  @Override
  public String toString() {
    return bands.stream().map(Colour::code).collect(Collectors.joining(" ", "[", "]"));
  }
}
