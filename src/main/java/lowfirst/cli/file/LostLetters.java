package lowfirst.cli.file;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import picocli.CommandLine.TypeConversionException;

/**
 * Names that Java can't even say: in the bare C locale it loses all letters beyond ASCII, of the
 * command line and of the folder it is started in.
 */
public final class LostLetters {
  /** What Java puts in place of a letter; in a path it becomes a question mark. */
  private static final char LOST = '\ufffd';

  private LostLetters() {}

  /** The path that a word of the command line names. */
  public static Path path(String word) {
    try {
      return Path.of(word);
    } catch (InvalidPathException noName) {
      String remedy = remedy(word);
      throw new TypeConversionException(
          "\""
              + word
              + "\" is no name of a file"
              + (remedy.isEmpty() ? ": " + noName.getReason() : remedy));
    }
  }

  /** What to do, to go on from a message about {@code name}; empty when it has lost nothing. */
  static String remedy(String name) {
    boolean folderLost = System.getProperty("user.dir", "").indexOf(LOST) >= 0;
    return name.indexOf(LOST) >= 0 || (folderLost && name.indexOf('?') >= 0)
        ? "; the locale has no such letters: start it with LC_ALL=C.UTF-8"
        : "";
  }
}
