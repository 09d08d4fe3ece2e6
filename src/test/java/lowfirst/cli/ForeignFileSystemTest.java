package lowfirst.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.common.jimfs.Configuration;
import com.google.common.jimfs.Jimfs;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The verbs on file systems that behave as those of Windows and macOS. */
class ForeignFileSystemTest {
  /** What Windows takes in no name, and the names that it takes for devices. */
  private static final String FORBIDDEN = "<>:\"/\\|?*";

  private static final Set<String> DEVICES = Set.of("con", "prn", "aux", "nul", "com1", "lpt1");

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  static Stream<Arguments> homes() {
    Configuration shares =
        Configuration.windows().toBuilder()
            .setRoots("C:\\", "\\\\bench\\share\\")
            .setWorkingDirectory("C:\\work")
            .build();
    return Stream.of(
        Arguments.of(Configuration.windows(), "C:\\Users\\Zoë Ångström\\My Kits"),
        Arguments.of(shares, "\\\\bench\\share\\kits (old)"),
        Arguments.of(Configuration.osX(), "/Users/Zoë Ångström/My Kits"));
  }

  @ParameterizedTest
  @MethodSource("homes")
  void every_verb_reads_and_writes_there_as_here(Configuration system, String home)
      throws IOException {
    try (FileSystem files = Jimfs.newFileSystem(system)) {
      Path folder = Files.createDirectories(files.getPath(home));
      SampleKit.unpackInto(folder.resolve("bell player"));
      assertEquals(0, run(folder, "check", "bell player"));
      assertTrue(text(out).contains("0 faults"), text(out));
      assertEquals(0, run(folder, "steps", "bell player", "--csv"));
      assertEquals(1, run(folder, "loads", "bell player", "--pdf", "loads.pdf"));
      assertTrue(Files.size(folder.resolve("loads.pdf")) > 1000);
      assertEquals(
          0, run(folder, "steps", "--bom", "bell player/driver/bom.csv", "--csv"), text(err));
      run(
          folder,
          "swap",
          "bell player",
          "Q15",
          "BP-N100L",
          "--accept",
          "--why",
          "none",
          "--who",
          "Ada");
      String swaps = Files.readString(folder.resolve("bell player/swaps.csv"));
      assertTrue(swaps.contains("Q15,BP-N100L,none,Ada"), swaps + text(err));
      assertEquals("", leftovers(folder));
    }
  }

  @ParameterizedTest
  @MethodSource("homes")
  void sheets_of_boards_with_names_that_no_file_may_have_are_written(
      Configuration system, String home) throws IOException {
    try (FileSystem files = Jimfs.newFileSystem(system)) {
      Path kit = Files.createDirectories(files.getPath(home).resolve("kit"));
      Files.writeString(
          kit.resolve("boards.csv"),
          """
          board,count,bom,placements
          CON,1,bom.csv,places.csv
          con,1,bom.csv,places.csv
          "a:b*c?\\d/e|f. ",1,bom.csv,places.csv
          """);
      Files.writeString(kit.resolve("bom.csv"), "designators,value,package\nR1,10k,DIN0207\n");
      Files.writeString(
          kit.resolve("places.csv"), "designator,x mm,y mm,rotation,side\nR1,5,5,0,top\n");
      int status = run(kit.getParent(), "sheets", "kit", "--only", "sign-off");
      List<String> written = text(out).lines().toList();
      assertTrue(status <= 1, text(err));
      assertEquals(3, written.size(), text(out) + text(err));
      for (String name : written) {
        Path sheet = kit.getParent().resolve(name);
        assertTrue(Files.size(sheet) > 1000, name);
        String bare = sheet.getFileName().toString().toLowerCase(Locale.ROOT);
        assertFalse(bare.chars().anyMatch(sign -> FORBIDDEN.indexOf(sign) >= 0), bare);
        assertFalse(DEVICES.contains(bare.substring(0, bare.indexOf('.'))), bare);
      }
    }
  }

  private String leftovers(Path folder) throws IOException {
    try (var all = Files.walk(folder)) {
      return all.map(Path::toString)
          .filter(name -> name.endsWith(".part"))
          .toList()
          .toString()
          .replace("[]", "");
    }
  }

  private int run(Path folder, String... arguments) {
    out.reset();
    err.reset();
    return Lowfirst.run(arguments, Outcome.surroundings(out, err, folder, Clock.systemUTC()));
  }

  private static String text(ByteArrayOutputStream stream) {
    return stream.toString(StandardCharsets.UTF_8);
  }
}
