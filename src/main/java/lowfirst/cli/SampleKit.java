package lowfirst.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import lowfirst.cli.file.ReportFolder;
import lowfirst.cli.process.CannotReadOrWrite;

/** The bell player, which is shipped inside the jar: invented, and saying so. */
final class SampleKit {
  /** What the kit's folder is called. */
  static final String NAME = "bell-player";

  /** Every file of the kit, relative to its folder; a jar can't be asked what it holds. */
  static final List<String> FILES =
      List.of(
          "ABOUT.txt",
          "bag.csv",
          "boards.csv",
          "channels.csv",
          "controller/bom.csv",
          "controller/placements.csv",
          "datasheets.csv",
          "driver/bom.csv",
          "driver/placements.csv",
          "drivers.csv",
          "kit.properties",
          "loads.csv",
          "rails.csv",
          "swaps.csv");

  private SampleKit() {}

  /**
   * Puts the kit into {@code folder}. A file that is there already is left as it is: it may be the
   * user's own try.
   *
   * @return the files that were there and differ from the sample
   */
  static List<String> unpackInto(Path folder) {
    var changed = new ArrayList<String>();
    for (String file : FILES) {
      byte[] sample = bytesOf(file);
      Path target = folder.resolve(file);
      try {
        if (Files.exists(target)) {
          if (!Arrays.equals(Files.readAllBytes(target), sample)) {
            changed.add(file);
          }
        } else {
          ReportFolder.put(target, sample);
        }
      } catch (IOException failure) {
        throw new CannotReadOrWrite(
            "the sample kit can't be written to " + target + ": " + failure.getMessage(), failure);
      }
    }
    return List.copyOf(changed);
  }

  private static byte[] bytesOf(String file) {
    try (InputStream in = SampleKit.class.getResourceAsStream("sample/" + NAME + "/" + file)) {
      if (in == null) {
        throw new IllegalStateException("the jar lacks the sample kit's " + file);
      }
      return in.readAllBytes();
    } catch (IOException failure) {
      throw new CannotReadOrWrite("the sample kit's " + file + " can't be read", failure);
    }
  }
}
