package lowfirst.sheet.pdf;

/** How a sheet lies. */
public enum Orientation {
  PORTRAIT,
  LANDSCAPE;

  /** Upright paper, turned this way. */
  public Paper lay(Paper upright) {
    return this == PORTRAIT ? upright : upright.turned();
  }
}
