package lowfirst.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** A program that merely reads tables with the library that ours reads them with, every cell. */
final class ReadingFloor {
  private ReadingFloor() {}

  public static void main(String[] files) throws IOException {
    System.out.println(characters(files));
  }

  /** How many characters all cells of these files have. */
  static long characters(String... files) throws IOException {
    long characters = 0;
    for (String file : files) {
      try (CSVParser parser =
          CSVParser.parse(Path.of(file), StandardCharsets.UTF_8, CSVFormat.DEFAULT)) {
        for (CSVRecord record : parser) {
          for (int i = 0; i < record.size(); i++) {
            characters += record.get(i).length();
          }
        }
      }
    }
    return characters;
  }
}
