package lowfirst.sheet.pdf;

/** The program itself is incomplete: a font that it brings along is not there. */
public final class MissingFont extends RuntimeException {
  private static final long serialVersionUID = 1L;

  MissingFont(String resource) {
    super(
        "can't write PDF: the program's own font "
            + resource.substring(resource.lastIndexOf('/') + 1)
            + " is missing; install the program again");
  }
}
