package lowfirst.intake;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import lowfirst.problem.Problem;

/**
 * The files of a kit folder, read into memory by the shell.
 *
 * @param name what the folder is called; the title when the kit states none
 * @param contents path relative to the kit, with {@code /}, to the bytes
 * @param problems what the shell could not read
 * @param given which files are the tables of the one board, when the user names them
 */
public record KitFiles(
    String name, Map<String, byte[]> contents, List<Problem> problems, Optional<Given> given) {

  /** A BOM and placement lists that stand for themselves, without a kit folder. */
  public record Given(Optional<String> bom, List<String> placements) {
    public Given {
      placements = List.copyOf(placements);
    }
  }

  public KitFiles {
    contents = java.util.Collections.unmodifiableMap(new TreeMap<>(contents));
    problems = List.copyOf(problems);
  }

  /** The files of a folder. */
  public KitFiles(String name, Map<String, byte[]> contents, List<Problem> problems) {
    this(name, contents, problems, Optional.empty());
  }

  /** The bytes of one file. */
  public Optional<byte[]> file(String path) {
    return Optional.ofNullable(contents.get(path));
  }
}
