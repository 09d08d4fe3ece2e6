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
 */
public record KitFiles(String name, Map<String, byte[]> contents, List<Problem> problems) {

  public KitFiles {
    contents = java.util.Collections.unmodifiableMap(new TreeMap<>(contents));
    problems = List.copyOf(problems);
  }

  /** The bytes of one file. */
  public Optional<byte[]> file(String path) {
    return Optional.ofNullable(contents.get(path));
  }
}
