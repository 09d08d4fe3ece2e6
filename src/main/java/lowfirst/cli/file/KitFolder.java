package lowfirst.cli.file;

import java.io.IOException;
import java.nio.file.FileVisitOption;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import lowfirst.cli.process.CannotReadOrWrite;
import lowfirst.intake.KitFiles;
import lowfirst.problem.Kind;
import lowfirst.problem.Place;
import lowfirst.problem.Problem;

/** Reads a kit folder into memory: tables only, bounded in size, never following a link out. */
public final class KitFolder {
  /** No table of parts is larger. */
  static final int LARGEST_FILE = 64 << 20;

  /** Nor are all of a kit's together. */
  private static final long LARGEST_KIT = 192L << 20;

  /** More files than this in one kit are no kit. */
  private static final int MOST_FILES = 1000;

  private static final Set<String> ENDINGS =
      Set.of(
          "csv",
          "tsv",
          "txt",
          "tab",
          "pos",
          "xy",
          "xyr",
          "xyrs",
          "mnt",
          "mnb",
          "pnp",
          "cpl",
          "asc",
          "bom",
          "lst",
          "dat",
          "properties",
          "xlsx",
          "xlsm",
          "md",
          "markdown",
          "org",
          "html",
          "htm",
          "xls",
          "xml",
          "cvg");

  /** Forms that are not read: their names are enough to say so. */
  private static final Set<String> OTHER_ENDINGS =
      Set.of("xlsb", "ods", "numbers", "pdf", "json", "zip", "gz");

  private final Path root;
  private final TreeMap<String, byte[]> contents = new TreeMap<>();
  private final List<Problem> problems = new ArrayList<>();
  private long total;

  private KitFolder(Path root) {
    this.root = root;
  }

  /** The tables of a folder and of the folders in it. */
  public static KitFiles read(Path folder) {
    if (Files.isRegularFile(folder)) {
      throw new CannotReadOrWrite(
          folder + " is a file; name its folder, or say --bom " + folder + " for a BOM alone");
    }
    if (!Files.isDirectory(folder)) {
      throw new CannotReadOrWrite(
          "there is no folder " + folder + LostLetters.remedy(folder.toString()));
    }
    var reader = new KitFolder(folder);
    try (Stream<Path> paths =
        Files.find(folder, 2, (path, attributes) -> true, FileVisitOption.FOLLOW_LINKS)) {
      paths.filter(reader::isTable).sorted().limit(MOST_FILES).forEach(reader::add);
    } catch (IOException | java.io.UncheckedIOException unreadable) {
      throw new CannotReadOrWrite("can't list the folder " + folder + why(unreadable), unreadable);
    }
    return new KitFiles(name(folder), reader.contents, reader.problems);
  }

  /** One BOM, or placement lists, or both, without a kit around them. */
  public static KitFiles read(Path directory, Optional<Path> bom, List<Path> placements) {
    var reader = new KitFolder(directory);
    var all = new ArrayList<>(placements);
    bom.ifPresent(all::add);
    for (Path file : all) {
      Path path = directory.resolve(file.toString());
      if (Files.isDirectory(path)) {
        throw new CannotReadOrWrite(file + " is a folder, not a file");
      }
      if (!Files.exists(path)) {
        throw new CannotReadOrWrite("there is no file " + file);
      }
      reader.add(path, slashed(file));
    }
    Path first = bom.orElseGet(() -> placements.get(0));
    Path parent = directory.resolve(first.toString()).toAbsolutePath().normalize().getParent();
    return new KitFiles(
        parent == null ? "kit" : name(parent),
        reader.contents,
        reader.problems,
        Optional.of(
            new KitFiles.Given(
                bom.map(KitFolder::slashed),
                placements.stream().map(KitFolder::slashed).toList())));
  }

  private static String slashed(Path path) {
    return path.toString().replace(path.getFileSystem().getSeparator(), "/");
  }

  private static String name(Path folder) {
    Path name = folder.toAbsolutePath().normalize().getFileName();
    return name == null ? "kit" : name.toString();
  }

  private boolean isTable(Path path) {
    if (path.equals(root)) {
      return false;
    }
    Path relative = root.relativize(path);
    for (Path part : relative) {
      if (part.toString().startsWith(".")) {
        return false;
      }
    }
    String first = relative.getName(0).toString();
    String name = relative.getFileName().toString();
    return !first.equals("reports")
        && name.lastIndexOf('.') > 0
        && (ENDINGS.contains(ending(name)) || OTHER_ENDINGS.contains(ending(name)));
  }

  private void add(Path path) {
    String name = slashed(root.relativize(path));
    if (OTHER_ENDINGS.contains(ending(name))) {
      contents.put(name, new byte[0]);
    } else {
      add(path, name);
    }
  }

  private static String ending(String name) {
    return name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
  }

  private void add(Path path, String name) {
    try {
      if (Files.isDirectory(path)) {
        problem(Kind.FILE_UNREADABLE, name, "this is a folder, not a file", "put a table here");
      } else if (leavesTheKit(path)) {
        problem(
            Kind.OUTSIDE_THE_KIT,
            name,
            "this is a link that leads out of the kit's folder",
            "copy the file into the kit");
      } else if (!Files.isRegularFile(path)) {
        problem(Kind.FILE_UNREADABLE, name, "this is no ordinary file", "put a table here");
      } else {
        addBytes(path, name);
      }
    } catch (IOException unreadable) {
      problem(
          Kind.FILE_UNREADABLE,
          name,
          "the file can't be read" + why(unreadable),
          "check its permissions and the disk");
    }
  }

  private void addBytes(Path path, String name) throws IOException {
    long most = Math.min(LARGEST_FILE, LARGEST_KIT - total);
    boolean small = Files.size(path) <= most;
    byte[] bytes = small ? Files.readAllBytes(path) : new byte[0];
    // A file may grow while it is read.
    boolean whole = small && bytes.length <= most;
    if (whole) {
      total += bytes.length;
      contents.put(name, bytes);
    } else {
      problem(
          Kind.FILE_TOO_LARGE,
          name,
          "the file is larger than " + (most >> 20) + " MB, so it was not read",
          "export just the table of parts");
    }
  }

  /** Files named on the command line may lie anywhere; links inside a kit may not lead out. */
  private boolean leavesTheKit(Path path) throws IOException {
    return path.startsWith(root)
        && Files.isSymbolicLink(path)
        && !path.toRealPath().startsWith(root.toRealPath());
  }

  private void problem(Kind kind, String file, String message, String remedy) {
    problems.add(new Problem(kind, Place.ofFile(file), message, remedy));
  }

  private static String why(Exception exception) {
    Throwable cause =
        exception instanceof java.io.UncheckedIOException && exception.getCause() != null
            ? exception.getCause()
            : exception;
    return cause instanceof java.nio.file.AccessDeniedException
        ? ": permission denied"
        : cause.getMessage() == null ? "" : ": " + cause.getMessage();
  }
}
