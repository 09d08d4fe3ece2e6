package lowfirst.cli.file;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lowfirst.board.Designator;
import lowfirst.cli.process.CannotReadOrWrite;
import lowfirst.sheet.csv.CsvWriter;
import lowfirst.swap.subject.SwapCase;

/**
 * The kit's {@code swaps.csv}: the one table that both the user and the tool write.
 *
 * <p>The tool only ever adds whole rows at its end, and only under the header that it writes itself
 * when it makes the file; what stands there stays byte for byte. A table with other columns is left
 * alone and its row is given to the user to add. The new file takes the old one's place in one
 * move, so a crash leaves either.
 */
public final class SwapsFile {
  /** Its name in the folder of a kit. */
  public static final String NAME = "swaps.csv";

  private static final String HEADER = "board,designators,part type fitted,reason,who,date";

  private final Path file;
  private final String text;
  private final StringBuilder added = new StringBuilder();

  private SwapsFile(Path file, String text) {
    this.file = file;
    this.text = text;
  }

  /** The table of a kit; an empty one where the kit has none. */
  public static SwapsFile of(Path folder) {
    Path file = folder.resolve(NAME);
    if (!Files.exists(file)) {
      return new SwapsFile(file, HEADER + "\n");
    }
    try {
      return new SwapsFile(file, Files.readString(file, StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new CannotReadOrWrite("can't read " + NAME + " as UTF-8 text: " + e.getMessage(), e);
    }
  }

  /** Adds one accepted swap. */
  public void add(SwapCase swap, String reason, String who, String date) {
    String places =
        swap.designators().stream().map(Designator::text).collect(Collectors.joining(", "));
    String row =
        Stream.of(swap.board().name(), places, swap.offered().type().text(), reason, who, date)
            .map(SwapsFile::cell)
            .collect(Collectors.joining(","));
    if (!hasOurHeader()) {
      throw new CannotReadOrWrite(
          NAME + " has columns of its own; add this row yourself (" + HEADER + "): " + row);
    }
    added.append(row).append(lineEnd());
  }

  private boolean hasOurHeader() {
    return text.replace("\ufeff", "").lines().findFirst().orElse("").strip().equals(HEADER);
  }

  private String lineEnd() {
    return text.contains("\r\n") ? "\r\n" : "\n";
  }

  private static String cell(String text) {
    String line = CsvWriter.harmless(text.replaceAll("[\\p{Cntrl}]+", " ").strip());
    boolean plain = List.of(",", "\"", ";").stream().noneMatch(line::contains);
    return plain ? line : '"' + line.replace("\"", "\"\"") + '"';
  }

  /** Puts the table with its new rows in the old one's place. */
  public void write() {
    String end = text.endsWith("\n") ? "" : lineEnd();
    ReportFolder.put(file, (text + end + added).getBytes(StandardCharsets.UTF_8));
  }
}
