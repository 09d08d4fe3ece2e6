package lowfirst.sheet;

/** How a sheet of paper lies. */
public enum Orientation {
  PORTRAIT,
  LANDSCAPE
}
