package lowfirst.sheet.drawing;

/** A colour as 0xRRGGBB. */
public record Ink(int rgb) {
  public static final Ink BLACK = new Ink(0x000000);
  public static final Ink WHITE = new Ink(0xFFFFFF);

  public Ink {
    if (rgb < 0 || rgb > 0xFFFFFF) {
      throw new IllegalArgumentException("not a colour: " + rgb);
    }
  }

  /** For example {@code #1a2b3c}. */
  public String hex() {
    return String.format(java.util.Locale.ROOT, "#%06x", rgb);
  }
}
